import type { HouseStyle } from '../../schema/index.js';
import { fenceOf, type Card, type SourceFile } from '../model/index.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { dashSlips, ellipsisSlips } from './style/dashes.js';
import { numberSlips } from './style/numbers.js';
import { englishOf, styleOf } from './style/plan.js';
import { quoteSlips } from './style/quotes.js';
import type { Slip } from './style/slip.js';
import { lineEndSpaces, spaceSlips } from './style/spaces.js';
import { fixOf } from './style/spot.js';
import { unitSlips } from './style/units.js';
import { textsBesideCards, textsOfCard, type RunningText } from './style/texts.js';
import type { Subject } from './subject.js';

const styled = (style: string): Readonly<Record<string, string | null>> =>
  edited('one/plan.yaml', ['style: { english: british }', `style: { english: british, ${style} }`]);

/** Signs, spaces and numbers that are not as the plan has them; what it does not say is not asked. */
export const houseStyle: Rule = {
  id: 'house-style',
  about: 'language',
  severity: 'error',
  why: 'Cards lie side by side, and two ways to write one thing look like a mistake in both.',
  look: findSlips,
  examples: {
    passes: [
      {
        says: 'signs as the plan has them',
        files: {
          ...styled(
            'quotes: curly, speech: single, dash: spaced-en, ellipsis: sign, numbers: { words: 12 }, units: spaced',
          ),
          ...edited('one/cards/base/a2.md', [
            'A lamp that nobody lit is burning.',
            'The ‘lamp’ is lit – ’tis late… All twelve of them, 40 mm high, on card 7 of the ’90s set.',
          ]),
        },
      },
      {
        says: 'signs of which the plan says nothing',
        files: edited('one/cards/base/a2.md', ['is burning', '- "is" -- ’burning’...']),
      },
    ],
    fails: [
      {
        says: 'two spaces',
        files: edited('one/cards/base/a1.md', ['The quay stands', 'The quay  stands']),
        gives: {
          at: 'one/cards/base/a1.md:7:9',
          covers: '  ',
          message: 'two spaces stand where there is to be one',
          expected: 'one space',
          found: 'quay  stands',
          fix: ' ',
          certain: true,
        },
      },
      {
        says: 'a straight apostrophe where all are curly',
        files: {
          ...styled('quotes: curly'),
          ...edited('one/cards/base/a1.md', ['The quay stands', "The lake's quay stands"]),
        },
        gives: {
          at: 'one/cards/base/a1.md:7:9',
          covers: "'",
          message: 'an apostrophe that is straight',
          found: "lake's",
          expected: '’',
          fix: '’',
          certain: true,
        },
      },
      {
        says: 'two hyphens for a dash',
        files: {
          ...styled('dash: spaced-en'),
          ...edited('one/cards/base/a1.md', ['stands in', 'stands -- in']),
        },
        gives: {
          at: 'one/cards/base/a1.md:7:16',
          covers: ' -- ',
          message: 'a row of hyphens stands between parts of a sentence',
          found: 'stands -- in',
          expected: 'an en dash between spaces',
          fix: ' – ',
          certain: true,
        },
      },
      {
        says: 'a small number in figures',
        files: {
          ...styled('numbers: { words: 12 }'),
          ...edited('one/cards/base/a1.md', ['stands in water', 'stands on 9 legs in water']),
        },
        gives: {
          at: 'one/cards/base/a1.md:7:20',
          covers: '9',
          message: '9 stands in figures',
          found: '9',
          expected: 'in words, as all numbers up to 12',
          fix: 'nine',
          certain: true,
        },
      },
    ],
  },
};

const found = new WeakMap<Card, { readonly key: string; readonly remarks: readonly Remark[] }>();

function* findSlips(subject: Subject): Generator<Remark> {
  const keys = new Map(subject.sets.map(({ id }) => [id, JSON.stringify(styleOf(subject, id))]));
  for (const card of subject.cards) {
    const key = keys.get(card.set) ?? '';
    let known = found.get(card);
    if (known?.key !== key) {
      known = { key, remarks: [...cardSlips(card, styleOf(subject, card.set))] };
      found.set(card, known);
    }
    yield* known.remarks;
  }
  for (const text of textsBesideCards(subject)) {
    yield* slipsIn(text, styleOf(subject, text.owner.set), englishOf(subject, text.owner.set));
  }
  for (const { source, set } of subject.sales) yield* lineEnds(source, { set });
}

function* cardSlips(card: Card, style: HouseStyle): Generator<Remark> {
  for (const text of textsOfCard(card)) yield* slipsIn(text, style, style.english ?? 'american');
  yield* lineEnds(card.source, ofCard(card));
}

function slipsIn(
  text: RunningText,
  style: HouseStyle,
  english: NonNullable<HouseStyle['english']>,
): Remark[] {
  const { text: words, manner, counts } = text;
  const { numbers } = style;
  const slips = [
    ...spaceSlips(words),
    ...quoteSlips(words, style),
    ...(manner === 'notice' ? [] : dashSlips(words, style.dash)),
    ...ellipsisSlips(words, style.ellipsis),
    ...unitSlips(words, style.units),
    ...(numbers && manner === 'prose'
      ? numberSlips(words, { words: numbers.words, english, counts })
      : []),
  ];
  return slips.map((slip) => remarkOn(text, slip));
}

function remarkOn(text: RunningText, slip: Slip): Remark {
  const { from, to, message, expected, fix, certain } = slip;
  const spot = text.spotOf(from, to);
  const fixed = fix === null ? {} : fixOf(spot, text.text.slice(from, to), fix);
  return {
    ...text.owner,
    spot,
    message,
    found: around(text.text, from, to),
    expected,
    ...fixed,
    ...(certain && fixed.fix !== undefined ? { certain: true } : {}),
  };
}

/** A stretch with the words that it touches, since a sign alone says little. */
function around(text: string, from: number, to: number): string {
  const before = /[^\s]*$/u.exec(text.slice(Math.max(0, from - 24), from))?.[0] ?? '';
  const after = /^[^\s]*/u.exec(text.slice(to, to + 24))?.[0] ?? '';
  return before + text.slice(from, to) + after;
}

function lineEnds(source: SourceFile, owner: Pick<Remark, 'set' | 'card'>): Remark[] {
  const bodyFrom = fenceOf(source.text)?.bodyFrom;
  if (bodyFrom === undefined || !/[ \t](?:[\r\n]|$)/.test(source.text)) return [];
  return lineEndSpaces(source.text, bodyFrom).map((end) => ({
    ...owner,
    spot: { source, ...end },
    message: 'the line ends with a space that makes no line break',
    found: source.text.slice(end.from, end.to),
    expected: 'no space there',
    fix: '',
    certain: true,
  }));
}
