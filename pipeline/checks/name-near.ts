import type { FormMatch, FormSlip } from '../text/index.js';
import type { NameOwner } from './names/forms.js';
import { placed } from './names/placed.js';
import { isToldEarly, nameScans } from './names/scan.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { namePlaces, type NamePlaces } from './told/early.js';
import type { ToldText } from './told/text.js';

const NAMES = `names:
  - { name: Emeric Hask, kind: character, level: open }
  - { name: Noémie Vance, kind: maker, level: open }
  - { name: Patient Heron, kind: craft, level: open }
  - { name: the Argument, kind: craft, match: exact, level: open }
`;

function told(words: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]),
  };
}

const AT = 'one/cards/base/a2.md:7:13';
const RELATED = ['names.yaml:2:13 the name'];

/** Words that are nearly a known name. */
export const nameNear: Rule = {
  id: 'name-near',
  about: 'names',
  severity: 'error',
  why: 'A misspelt name is the first thing that its bearer sees.',
  look: nearNames,
  examples: {
    passes: [
      { says: 'a name as it is listed', files: told('A lamp that Emeric Hask’s boat lit is red.') },
      { says: 'common words', files: told('A patient heron had an argument about hash.') },
      { says: 'an initial', files: told('A lamp that E. Hask lit is burning.') },
    ],
    fails: [
      {
        says: 'one letter wrong',
        files: told('A lamp that Emerik Hask lit is burning.'),
        gives: {
          at: AT,
          covers: 'Emerik Hask',
          message: 'the bio has words that are nearly a name: letters are wrong',
          found: 'Emerik Hask',
          expected: '`Emeric Hask`',
          fix: 'Emeric Hask',
          certain: true,
          related: RELATED,
        },
      },
      {
        says: 'parts that changed places: a warning',
        files: told('A lamp that Hask Emeric lit is burning.'),
        gives: {
          at: AT,
          covers: 'Hask Emeric',
          message: 'the bio has words that are nearly a name: they stand in another order',
          found: 'Hask Emeric',
          expected: '`Emeric Hask`, or the name in names.yaml if it is another',
          fix: 'Emeric Hask',
          severity: 'warning',
          related: RELATED,
        },
      },
      {
        says: 'a mark that was lost',
        files: told('A lamp that Noemie Vance lit is burning.'),
        gives: {
          at: AT,
          covers: 'Noemie Vance',
          message: 'the bio has words that are nearly a name: marks on letters are wrong',
          found: 'Noemie Vance',
          expected: '`Noémie Vance`',
          fix: 'Noémie Vance',
          certain: true,
          related: ['names.yaml:3:13 the name'],
        },
      },
      {
        says: 'wrong capitals',
        files: told('A lamp that PATIENT heron has is burning.'),
        gives: {
          at: AT,
          covers: 'PATIENT heron',
          message: 'the bio has words that are nearly a name: capitals are wrong',
          found: 'PATIENT heron',
          expected: '`Patient Heron`',
          fix: 'Patient Heron',
          certain: true,
          related: ['names.yaml:4:13 the name'],
        },
      },
    ],
  },
};

const SAY: Readonly<Record<FormSlip, string>> = {
  capitals: 'capitals are wrong',
  marks: 'marks on letters are wrong',
  joined: 'they are parted in another way',
  swapped: 'they stand in another order',
  letters: 'letters are wrong',
};

function* nearNames(subject: Subject): Generator<Remark> {
  const places = namePlaces(subject);
  for (const { text, matches } of nameScans(subject)) {
    for (const match of matches) {
      const slip = slipOf(match);
      if (slip === null || isToldEarly(subject, text, match.from, match.to)) continue;
      yield remarkOn(match, slip, text, places);
    }
  }
}

/** What is wrong with a name; null where nothing is, or another rule speaks of it. */
export function slipOf({ entry, slip }: FormMatch<NameOwner>): FormSlip | null {
  const { role, of } = entry.form;
  if (role === 'avoid' && slip !== 'letters' && slip !== 'swapped') return null;
  if (role === 'other' && (of.listed === null || slip !== 'marks')) return null;
  return slip;
}

function remarkOn(
  match: FormMatch<NameOwner>,
  slip: FormSlip,
  text: ToldText,
  places: NamePlaces,
): Remark {
  const { entry, from, to, put, clear } = match;
  const { listed, path } = entry.form.of;
  const bearer = { name: listed?.name ?? put, hold: null, path: path ?? [], surname: false };
  return {
    ...text.owner,
    ...placed(text, from, to, put, clear),
    message: `${text.what} has ${match.length === 1 ? 'a word that is' : 'words that are'} nearly a name: ${SAY[slip]}`,
    found: text.text.slice(from, to),
    expected: clear ? `\`${put}\`` : `\`${put}\`, or the name in names.yaml if it is another`,
    ...(clear ? {} : { severity: 'warning' }),
    related: path ? places(bearer) : [],
  };
}
