import { isToldEarly, nameScans, type NameScan } from './names/scan.js';
import { spellingsOf } from './names/spellings.js';
import type { NameRun } from './names/runs.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import type { ToldText } from './told/text.js';

function told(words: string): Record<string, string | null> {
  return edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]);
}

/** A name in running copy that names.yaml does not know. */
export const nameUnknown: Rule = {
  id: 'name-unknown',
  about: 'names',
  severity: 'warning',
  why: 'A name that is listed nowhere is spelt by guess, and held by nothing.',
  look: unknownNames,
  examples: {
    passes: [
      { says: 'no name at all', files: told('A lamp that nobody lit on Friday is burning.') },
      {
        says: 'a name that is listed',
        files: {
          ...told('A lamp that Corvin Dray lit is burning.'),
          'names.yaml': 'names:\n  - { name: Corvin Dray, kind: character, level: open }\n',
        },
      },
      { says: 'somebody of the house', files: told('A lamp that Jonah Prewett lit is burning.') },
    ],
    fails: [
      {
        says: 'somebody whom nothing lists',
        files: told('A lamp that Corvin Dray lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:13',
          covers: 'Corvin Dray',
          message: 'the bio has a name that names.yaml does not know',
          found: 'Corvin Dray',
          expected: 'a name of names.yaml, or the word in its `words` if it is none',
        },
      },
    ],
  },
};

function* unknownNames(subject: Subject): Generator<Remark> {
  const spellings = spellingsOf(subject);
  const said = new Set<string>();
  for (const scan of nameScans(subject)) {
    if (!isRunningCopy(scan.text)) continue;
    for (const run of scan.runs) {
      if (spellings.varied.has(run.name) || isSaid(said, scan, run)) continue;
      if (isLineStart(scan.text, run) || isToldEarly(subject, scan.text, run.from, run.to))
        continue;
      yield remarkOn(run, scan.text);
    }
  }
}

/** Whether a card or file was told of a name before. */
function isSaid(said: Set<string>, { text }: NameScan, { name, from, to }: NameRun): boolean {
  const { set = '', card } = text.owner;
  const key = [set, card ?? text.spotOf(from, to).source.file, name].join('\n');
  if (said.has(key)) return true;
  said.add(key);
  return false;
}

/** What is read as sentences: titles and lists of names have capitals of their own. */
export function isRunningCopy({ kind, what }: ToldText): boolean {
  if (kind !== 'text') return false;
  return /^the bio|^this text|^the statement|^`(?:texts|facts|shared)\.|^`(?:image\.alt|variation\.tell)`/u.test(
    what,
  );
}

/** Whether a line of verse begins here, with a capital that means nothing. */
function isLineStart(text: ToldText, { from, to, name }: NameRun): boolean {
  const { source, from: at } = text.spotOf(from, to);
  return (
    !name.includes(' ') &&
    /(?:\\| {2})\r?\n[*_[]*$/u.test(source.text.slice(Math.max(0, at - 8), at))
  );
}

function remarkOn({ from, to, name }: NameRun, text: ToldText): Remark {
  return {
    ...text.owner,
    spot: text.spotOf(from, to),
    message: `${text.what} has a name that names.yaml does not know`,
    found: name,
    expected: 'a name of names.yaml, or the word in its `words` if it is none',
  };
}
