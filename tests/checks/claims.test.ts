import { describe, expect, test } from 'vitest';

import { listClaims } from '../../pipeline/checks/index.js';
import { keptDictionaries } from '../../pipeline/read/index.js';
import type { ListedNumber } from '../../schema/index.js';
import { CLAIMS, STORY, type Where } from './claim-corpus.js';
import { FULL, fullContent, sells, tells } from './claim-plan.js';
import { changed } from './change.js';
import { lookAt } from './look.js';
import { shelfOf } from './shelf.js';

type Line = readonly [Where, string, readonly string[]];

/** All lines in one content: each sales text a file, each bio a paragraph of one card. */
function listed(lines: readonly Line[]): readonly (readonly ListedNumber[])[] {
  const bios = lines.filter(([where]) => where === 'B').map(([, text]) => text);
  const files = { ...FULL, ...tells(bios.join('\n\n')) };
  const sheets = Object.fromEntries(
    lines.flatMap(([where, text], at) =>
      where === 'B'
        ? []
        : [[`one/sales/s${String(at)}.md`, sells(text)['one/sales/a.md'] ?? ''] as const],
    ),
  );
  const content = fullContent({ ...files, ...sheets });
  const all = listClaims(content, { fonts: shelfOf(content), dictionaries: keptDictionaries });
  let bio = -1;
  return lines.map(([where], at) => {
    if (where === 'S') return all.filter(({ file }) => file === `one/sales/s${String(at)}.md`);
    bio += 1;
    const line = 6 + 2 * bio;
    return all.filter((each) => each.card === 'signals/c003' && each.line === line);
  });
}

const MARKS: Readonly<Record<NonNullable<ListedNumber['stands']>, string>> = {
  holds: '',
  wrong: '!',
  tells: '!',
  doubtful: '!',
  open: '?',
};

describe('claims and story', () => {
  const claims = listed(CLAIMS);
  test.each(CLAIMS.map((line, at) => [line[1], line, claims[at] ?? []] as const))(
    '%s',
    (_, [, , words], numbers) => {
      const found = numbers
        .filter(({ taken }) => taken === 'claim')
        .map(({ stands = 'open', words: own }) => `${MARKS[stands]}${own}`);
      expect(found).toStrictEqual(words.filter((word) => word !== 'Σ'));
    },
  );

  const story = listed(STORY);
  test.each(STORY.map((line, at) => [line[1], line, story[at] ?? []] as const))(
    'no claim: %s',
    (_, [, , words], numbers) => {
      expect(numbers.map((number) => [number.words, number.taken === 'claim'])).toStrictEqual(
        words.map((word) => [word, false]),
      );
    },
  );
});

describe('parts and totals', () => {
  test.each(CLAIMS.filter(([, , words]) => words.includes('Σ')))('%s %s', (_, text) => {
    expect(lookAt(sells(text), ['count-claim']).findings).toMatchObject([
      { message: 'the parts that this sentence lists do not make its total' },
    ]);
  });
});

const SENT = 'sent: "2026-12-01"\n';

describe('what is wrong is found', () => {
  test.each([
    ['S', 'Twenty-one sketch artists have drawn for this set.'],
    ['S', 'Varnished 1-of-1s.'],
    ['S', 'Seven cards in this pack.'],
    ['B', 'There are nine cards in this pack.'],
    ['B', 'The second of sixteen.'],
    ['B', 'Second of sixteen. Nobody rang it.'],
  ])('%s %s', (where, text) => {
    const files = where === 'S' ? sells(text) : tells(text);
    expect(lookAt(files, ['count-claim']).findings).toMatchObject([{ rule: 'count-claim' }]);
  });
});

describe('fixes', () => {
  test.each([
    ['There are fifteen Night Signals.', 'sixteen'],
    ['Fifteen Night Signals glow.', 'Sixteen'],
    ['There are 17 Night Signals.', '16'],
    ['There are two dozen Night Signals.', 'sixteen'],
    ['More than 90 base cards.', undefined],
  ])('%s', (text, fix) => {
    const [finding] = lookAt(sells(text), ['count-claim']).findings;
    expect(finding?.rule).toBe('count-claim');
    expect([finding?.fix, finding?.certain]).toStrictEqual([fix, undefined]);
  });

  test('of a count link are certain, and of a promise there is none', () => {
    const text = 'There are [fifteen](count:signals) Night Signals.';
    expect(lookAt(sells(text), ['count-claim', 'promise-changed']).findings).toMatchObject([
      { rule: 'count-claim', fix: 'sixteen', certain: true },
    ]);
    const [promise, ...more] = lookAt(sells(text, SENT), [
      'count-claim',
      'promise-changed',
    ]).findings;
    expect(more).toStrictEqual([]);
    expect([promise?.rule, promise?.fix]).toStrictEqual(['promise-changed', undefined]);
  });
});

describe('one cause, one finding', () => {
  test('a card that is gone is no wrong claim', () => {
    const files = {
      ...sells('There are sixteen Night Signals.'),
      'one/cards/signals/c009.md': null,
    };
    expect(lookAt(files, ['count-claim']).findings).toStrictEqual([]);
  });

  test('nor is a total that the plan states wrongly', () => {
    const text = sells('There are 43 inserts.');
    const files = { ...text, ...changed('one/plan.yaml', [['inserts: 42', 'inserts: 43']], text) };
    expect(lookAt(files, ['count-claim']).findings).toStrictEqual([]);
  });
});

describe('a claim over cards of which one leaves no trace', () => {
  const held = (text: string, count: string) => {
    const files = sells(text);
    const card = changed('one/cards/signals/c016.md', [['spoiler: open', 'spoiler: last']], files);
    return lookAt({ ...files, ...card }, ['leak', 'count-claim']).findings.map((finding) => [
      count,
      finding.rule,
    ]);
  };

  test.each([
    ['There are [sixteen](count:signals) of them.', 'sixteen'],
    ['There are [fifteen](count:signals) of them.', 'fifteen'],
    ['There are sixteen Night Signals.', 'sixteen, without a link'],
    ['There are nine Night Signals.', 'nine'],
  ])('%s', (text, count) => {
    expect(held(text, count)).toStrictEqual([[count, 'leak']]);
  });

  test('but not in a text that opens as late', () => {
    const files = sells('There are sixteen Night Signals.');
    const late = changed('one/sales/a.md', [['spoiler: open', 'spoiler: last']], files);
    const card = changed('one/cards/signals/c016.md', [['spoiler: open', 'spoiler: last']], files);
    expect(lookAt({ ...files, ...late, ...card }, ['leak', 'count-claim']).findings).toStrictEqual(
      [],
    );
  });
});
