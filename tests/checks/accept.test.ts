import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { lookAt, said } from './look.js';

const FRONT = 'number: X-1\nname: The Chart\nspoiler: open\n';
const SHORT = 'Only ink.';

/** The card of the second subset, too short by a word, with these acceptances. */
function accepting(...entries: readonly string[]): Files {
  const list = entries.map((entry) => `  - ${entry}\n`).join('');
  return { 'one/cards/extra/b1.md': cardText(`${FRONT}accepted:\n${list}`, SHORT) };
}

function inPlan(entry: string): Files {
  return changed('one/plan.yaml', [['totals:', `accepted: [${entry}]\ntotals:`]]);
}

const WORDS = '{ rule: copy-words, words: 2 words, why: a riddle, by: jonah }';

describe('an accepted finding', () => {
  test('stands, with the reason and the person, and no longer counts', () => {
    const report = lookAt(accepting(WORDS));
    expect(report.ok).toBe(true);
    expect(report.counts).toMatchObject({ errors: 0, warnings: 0, accepted: 1 });
    expect(report.findings).toMatchObject([{ rule: 'copy-words', accepted: 'a riddle (jonah)' }]);
  });

  test('may be accepted in the plan, for the whole set', () => {
    const files = { 'one/cards/extra/b1.md': cardText(FRONT, SHORT), ...inPlan(WORDS) };
    expect(lookAt(files).counts).toMatchObject({ errors: 0, accepted: 1 });
  });

  test('is bound to its set', () => {
    const other = (sampleWith(inPlan(WORDS)).get('one/plan.yaml') ?? '')
      .replace('id: one', 'id: two')
      .replace(/^ {2}- \{ id: base.*\n/m, '')
      .replace(/^totals: .*\n/m, '');
    const files = {
      'one/cards/extra/b1.md': cardText(FRONT, SHORT),
      'two/plan.yaml': other,
      'two/cards/extra/b1.md': cardText(FRONT),
    };
    expect(said(lookAt(files).findings)).toStrictEqual([
      'copy-words one/cards/extra/b1.md:6:1 the bio is too short by 1 word',
      'accepted-unused two/plan.yaml:8:20 this accepts a finding that is not there',
    ]);
  });

  test('is bound to its card', () => {
    const elsewhere = changed('one/cards/base/a1.md', [['story:', `accepted: [${WORDS}]\nstory:`]]);
    const files = { 'one/cards/extra/b1.md': cardText(FRONT, SHORT), ...elsewhere };
    expect(said(lookAt(files).findings)).toStrictEqual([
      'accepted-unused one/cards/base/a1.md:5:20 this accepts a finding that is not there',
      'copy-words one/cards/extra/b1.md:6:1 the bio is too short by 1 word',
    ]);
  });

  test.each([
    ['other words', '{ rule: copy-words, words: 1 word, why: a riddle, by: jonah }'],
    ['another rule', '{ rule: copy-characters, words: 2 words, why: a riddle, by: jonah }'],
  ])('is bound to rule and words: %s', (_, entry) => {
    const { findings, counts } = lookAt(accepting(entry));
    expect(findings.map(({ rule }) => rule)).toStrictEqual(['accepted-unused', 'copy-words']);
    expect(counts).toMatchObject({ errors: 2, accepted: 0 });
  });

  test('of two acceptances of one finding, the second is used up by nothing', () => {
    expect(lookAt(accepting(WORDS, WORDS)).findings.map(({ rule }) => rule)).toStrictEqual([
      'accepted-unused',
      'copy-words',
    ]);
  });
});

describe('what can never be accepted', () => {
  const early: Files = {
    'one/cards/extra/b1.md': cardText(
      `${FRONT.replace('open', 'later')}ships: "2027-04-16T09:00:00+01:00[Europe/London]"
accepted: [{ rule: early-print, words: "in hands 16 April 2027, 09:00", why: nobody reads it, by: jonah }]`,
    ),
  };

  test('stays an error, and so does the attempt', () => {
    const { findings } = lookAt(early);
    expect(said(findings)).toStrictEqual([
      'early-print one/cards/extra/b1.md:4:10 this card is in hands before what it tells may be in shops',
      'accepted-unused one/cards/extra/b1.md:6:20 a finding of `early-print` can never be accepted',
    ]);
  });
});

describe('acceptances that meet nothing', () => {
  const unused = inPlan(WORDS);

  test('are told', () => {
    expect(lookAt(unused).findings.map(({ rule }) => rule)).toStrictEqual(['accepted-unused']);
  });

  test('are told alone where they alone are asked for', () => {
    expect(lookAt(accepting(WORDS), ['accepted-unused']).findings).toStrictEqual([]);
    expect(lookAt(unused, ['accepted-unused']).findings).toHaveLength(1);
  });

  test('are not told where other rules are asked for, whose silence means nothing', () => {
    expect(lookAt(unused, ['overset']).findings).toStrictEqual([]);
  });

  test.each([
    ['a card of the set', { 'one/cards/base/a2.md': 'x' }],
    ['a file that all sets share', { 'names.yaml': 'names: x' }],
  ])('are not told while something cannot be read: %s', (_, files) => {
    expect(lookAt({ ...unused, ...files }).findings.map(({ rule }) => rule)).not.toContain(
      'accepted-unused',
    );
  });
});
