import { sayHold, type Hold } from '../model/index.js';
import type { NameMatch } from '../text/index.js';
import type { Bearer } from './cast.js';
import { tellingClaims } from './claims/remarks.js';
import { countedTexts } from './claims/claims.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { heldBy, isSure, namePlaces, toldEarly, type NamePlaces } from './told/early.js';
import { toldScans } from './told/scan.js';
import type { ToldText } from './told/text.js';

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
          found: 'Ysolde’s: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'nothing that opens later than open',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'capitals, a line end and letters that look alike',
        files: {
          'names.yaml': NAMES,
          ...edited('one/cards/base/a2.md', [
            'story: 1/4',
            'story: 1/4\ntexts: { keeper: "of YSOLDE-M\u00c1RRACK" }',
          ]),
        },
        gives: {
          at: 'one/cards/base/a2.md:6:22',
          covers: 'YSOLDE-M\u00c1RRACK',
          message: '`texts.keeper` names what opens later than it',
          found: 'YSOLDE-M\u00c1RRACK: Ysolde Marrack is held by later until 16 April 2027, 20:00',
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
          found: 'Isolde: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'nothing that opens later than open, or the name in `except` if it is innocent',
          severity: 'warning',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* leaks(subject: Subject): Generator<Remark> {
  yield* tellingClaims(subject, countedTexts(subject));
  const context = { subject, places: namePlaces(subject) };
  for (const { text, names } of toldScans(subject)) {
    if (text.kind === 'id') continue;
    for (const match of names) {
      if (text.seams && !text.seams.some((at) => match.from < at && at < match.to)) continue;
      const bearer = toldEarly(match, text);
      if (!bearer?.hold || (text.kind === 'name' && isSure(match, bearer))) continue;
      yield remarkOn(match, bearer, bearer.hold, text, context);
    }
  }
}

function remarkOn(
  match: NameMatch<Bearer>,
  bearer: Bearer,
  hold: Hold,
  text: ToldText,
  { subject, places }: { readonly subject: Subject; readonly places: NamePlaces },
): Remark {
  const { from, to } = match;
  const own = text.holdOf(from, to);
  const nothing = `nothing that opens later than ${sayHold(subject.schedule, own)}`;
  const sure = isSure(match, bearer);
  return {
    ...text.owner,
    spot: text.spotOf(from, to),
    message: sure
      ? `${text.what} names what opens later than it`
      : `${text.what} ${sayDoubt(match, bearer)} that opens later than it`,
    found: `${text.text.slice(from, to)}: ${bearer.name} is held by ${heldBy(hold, own, subject)}`,
    expected: sure ? nothing : `${nothing}, or the name in \`except\` if it is innocent`,
    ...(sure ? {} : { severity: 'warning' }),
    related: places(bearer),
  };
}

function sayDoubt({ doubt }: NameMatch<Bearer>, { surname }: Bearer): string {
  if (doubt === 'slip') return 'has a word that is one letter away from a name';
  if (doubt === 'apart') return 'has letters that together are a name';
  if (doubt === 'capitals') return 'has a word in capitals that may be a name';
  return surname ? 'has the last word of a name' : 'names somebody';
}
