import { opensLater, sayHold, spotOf, type Hold } from '../model/index.js';
import { NameIndex, type NameMatch } from '../text/index.js';
import { castForms, type Bearer } from './cast.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { toldTexts, type ToldText } from './told-texts.js';

const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later }
  - { name: Sister Quillon Ash, kind: character, level: open }
  - { name: Ash, kind: character, level: later, match: exact, except: [Ash Lane] }
`;

/** The sample with a name that opens later, and these words on a card that is open. */
function told(words: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]),
  };
}

/** A text that names somebody or something that opens later than the text. */
export const leak: Rule = {
  id: 'leak',
  about: 'spoilers',
  severity: 'error',
  why: 'One name is enough to give an ending away, and a licence with it.',
  acceptable: false,
  look: leaks,
  examples: {
    passes: [
      { says: 'a longer name that is open', files: told('A lamp of Sister Quillon Ash burns.') },
      { says: 'the same letters as a common word', files: told('The ash of a lamp is warm.') },
      { says: 'an innocent phrase', files: told('A lamp in Ash Lane is burning.') },
      {
        says: 'a name inside a span that is held as long',
        files: told('A lamp that [Ysolde](held:later) lit is burning.'),
      },
    ],
    fails: [
      {
        says: 'an alias, possessive',
        files: told('Ysolde’s lamp is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers: 'Ysolde’s',
          message: 'the bio names what opens later than it',
          found: 'Ysolde’s: Ysolde Marrack is held by later',
          expected: 'nothing that opens later than open',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'capitals, a line end and letters that look alike',
        files: {
          'names.yaml': NAMES,
          ...edited('one/cards/base/a2.md', ['The Lamp', '"YSOLDE-M\u00c1RRACK"']),
        },
        gives: {
          at: 'one/cards/base/a2.md:3:8',
          covers: 'YSOLDE-M\u00c1RRACK',
          message: '`name` names what opens later than it',
          found: 'YSOLDE-M\u00c1RRACK: Ysolde Marrack is held by later',
          expected: 'nothing that opens later than open',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'one letter wrong: a warning',
        files: told('A lamp that Isolde lit is burning.'),
        gives: {
          at: 'one/cards/base/a2.md:7:13',
          covers: 'Isolde',
          message:
            'the bio has a word that is one letter away from a name that opens later than it',
          found: 'Isolde: Ysolde Marrack is held by later',
          expected: 'nothing that opens later than open, or the name in `except` if it is innocent',
          severity: 'warning',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* leaks(subject: Subject): Generator<Remark> {
  const forms = [...castForms(subject)];
  if (!forms.some(({ of }) => of.hold && opensLater(of.hold, NOTHING))) return;
  const index = new NameIndex(forms);
  for (const text of toldTexts(subject)) {
    for (const match of index.find(text.text)) {
      const bearer = leaked(match, text);
      if (bearer?.hold) yield remarkOn(match, bearer, bearer.hold, text, subject);
    }
  }
}

const NOTHING: Hold = { level: 0, embargoes: [] };

/** Who is told too early; null if anybody who bears the form may be told with the text. */
function leaked({ from, to, of }: NameMatch<Bearer>, text: ToldText): Bearer | null {
  const own = text.holdOf(from, to);
  const early = of.filter(({ hold }) => hold !== null && opensLater(hold, own));
  return early.length === of.length ? (early[0] ?? null) : null;
}

function remarkOn(
  { from, to, slip }: NameMatch<Bearer>,
  { name, path }: Bearer,
  hold: Hold,
  text: ToldText,
  { schedule, content }: Subject,
): Remark {
  const words = text.text.slice(from, to);
  const own = sayHold(schedule, text.holdOf(from, to));
  const source = content.names?.source;
  return {
    ...text.owner,
    spot: text.spotOf(from, to),
    message: slip
      ? `${text.what} has a word that is one letter away from a name that opens later than it`
      : `${text.what} names what opens later than it`,
    found: `${words}: ${name} is held by ${heldBy(hold, text.holdOf(from, to), schedule)}`,
    expected: slip
      ? `nothing that opens later than ${own}, or the name in \`except\` if it is innocent`
      : `nothing that opens later than ${own}`,
    ...(slip ? { severity: 'warning' } : {}),
    related: source ? [{ message: 'the name', spot: spotOf(source, path) }] : [],
  };
}

/** What of a hold the text itself is not held by. */
function heldBy(hold: Hold, own: Hold, schedule: Subject['schedule']): string {
  const level = hold.level > own.level ? [schedule.levels[hold.level]?.id ?? 'no level'] : [];
  const embargoes = hold.embargoes.filter((id) => !own.embargoes.includes(id));
  return [...level, ...embargoes].join(' and ');
}
