import { isIssued, paragraphText, type Card } from '../model/index.js';
import { likenesses, printOf, type Likeness, type TextPrint } from '../text/index.js';
import { bioSpot } from './bounds.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const LAMP =
  'A lamp that nobody lit is burning on the quay tonight, and the cat who sleeps beneath it has not come home for supper.';

/** Two bios that are nearly one: by their words, their opening, their end, or how they are built. */
export const alike: Rule = {
  id: 'alike',
  about: 'language',
  severity: 'warning',
  why: 'Whoever reads two cards in a row hears at once that they are one.',
  look: findAlike,
  examples: {
    passes: [
      {
        says: 'two bios about one lamp',
        files: bios(
          LAMP,
          'Nobody has ever found out who fills the lamp on the quay. By morning the oil is back, and so, as a rule, is the cat.',
        ),
      },
      {
        says: 'a variation with the words of its parent',
        files: {
          ...bios(LAMP, LAMP),
          ...edited(
            'one/cards/base/a2.md',
            ['number: "2"', 'number: "1"'],
            [
              'story: 1/4',
              'story: 1/1\nvariation: { of: base/a1, letter: b, tell: The lamp is lit }',
            ],
            ['A lamp that nobody lit is burning.', LAMP],
          ),
          ...edited(
            'one/plan.yaml',
            ['to: 2', 'to: 1'],
            ['base: 2', 'base: 1'],
            ['is: 3', 'is: 2'],
          ),
        },
      },
    ],
    fails: [
      {
        says: 'the same bio with other words here and there',
        files: bios(LAMP, LAMP.replace('A lamp', 'The light').replace('cat', 'dog')),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers: LAMP.replace('A lamp', 'The light').replace('cat', 'dog'),
          message: 'the bio has most of its words in common with that of 1',
          found: '71 % of its runs of four words',
          expected: 'words of its own',
          related: ['one/cards/base/a1.md:7:1 the bio of 1'],
        },
      },
      {
        says: 'the same opening',
        files: bios(
          LAMP,
          'A lamp that swings at the bow of every ferry is how children learn to count: one for home, and two for fog.',
        ),
        gives: {
          at: 'one/cards/base/a2.md:7:1',
          covers:
            'A lamp that swings at the bow of every ferry is how children learn to count: one for home, and two for fog.',
          message: 'the bio begins like that of 1',
          found: 'a lamp that',
          expected: 'an opening of its own',
          related: ['one/cards/base/a1.md:7:1 the bio of 1'],
        },
      },
    ],
  },
};

function bios(first: string, second: string): Readonly<Record<string, string | null>> {
  return {
    ...edited('one/cards/base/a1.md', ['The quay stands in water to the knee.', first]),
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', second]),
  };
}

const prints = new WeakMap<Card, TextPrint>();

function printOfCard(card: Card): TextPrint {
  const before = prints.get(card);
  if (before) return before;
  const print = printOf(card.bio.map(paragraphText));
  prints.set(card, print);
  return print;
}

function* findAlike({ cards }: Subject): Generator<Remark> {
  const told = cards.filter((card) => isIssued(card) && card.bio.length > 0);
  const texts = told.map((card) => ({ print: printOfCard(card), group: card.set }));
  const areRelated = (earlier: number, later: number): boolean =>
    areOneCard(told[earlier], told[later]);
  for (const likeness of likenesses(texts, areRelated)) {
    const [earlier, later] = [told[likeness.earlier], told[likeness.later]];
    if (earlier && later) yield remarkOn(earlier, later, likeness);
  }
}

/** Variations of one card may say the same. */
function areOneCard(a: Card | undefined, b: Card | undefined): boolean {
  if (!a || !b || a.set !== b.set) return false;
  const [first, second] = [a, b].map(
    ({ subset, id, front }) => front.variation?.of ?? `${subset}/${id}`,
  );
  return first === second;
}

const EXPECTED = {
  words: 'words of its own',
  opening: 'an opening of its own',
  ending: 'an end of its own',
  shape: 'sentences that are built in another way',
} as const;

function remarkOn(earlier: Card, later: Card, { kind, share }: Likeness): Remark {
  const other = sayCard(earlier, later);
  const percent = `${String(Math.round(share * 100))} %`;
  const message = {
    words: `the bio has most of its words in common with that of ${other}`,
    opening: `the bio begins like that of ${other}`,
    ending: `the bio ends with the sentence of ${other}`,
    shape: `the bio is built like that of ${other}`,
  }[kind];
  const { opening, ending } = printOfCard(later);
  const found = {
    words: `${percent} of its runs of four words`,
    opening,
    ending,
    shape: `${percent} of the way that its small words and stops follow each other`,
  }[kind];
  return {
    ...ofCard(later),
    spot: bioSpot(later),
    message,
    found,
    expected: EXPECTED[kind],
    related: [{ message: `the bio of ${other}`, spot: bioSpot(earlier) }],
  };
}

/** A card by its number; of another set, with that set's id. */
function sayCard({ front, id, subset, set }: Card, beside: Card): string {
  const number = front.number === 'none' ? `${subset}/${id}` : front.number;
  return set === beside.set ? number : `${number} of \`${set}\``;
}
