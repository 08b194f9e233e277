import { describe, expect, test } from 'vitest';

import { check, listClaims } from '../../pipeline/checks/index.js';
import { keptDictionaries } from '../../pipeline/read/index.js';
import type { Finding, ListedNumber } from '../../schema/index.js';
import { NO_ODDS, ODDS, type Where } from './claim-odds-corpus.js';
import { PACKED, sells, sold } from './claim-odds-plan.js';
import { contentWith } from './look.js';
import { shelfOf } from './shelf.js';

type Line = readonly [Where, string, ...unknown[]];

interface Read {
  readonly numbers: readonly ListedNumber[];
  readonly findings: readonly Finding[];
}

/** All lines in one content: each sales text a file, each bio a paragraph of one card. */
function read(lines: readonly Line[]): readonly Read[] {
  const bios = lines.filter(([where]) => where === 'B').map(([, text]) => text);
  const texts = lines.map(([, text], at) => [`one/sales/s${String(at)}.md`, sold(text)] as const);
  const content = contentWith({
    ...PACKED,
    ...sells('Nothing is said here.', bios.join('\n\n')),
    ...Object.fromEntries(texts.filter((_, at) => lines[at]?.[0] === 'S')),
  });
  const beside = { fonts: shelfOf(content), dictionaries: keptDictionaries };
  const numbers = listClaims(content, beside);
  const { findings } = check(content, { ...beside, only: ['odds-stated', 'leak'] });
  let bio = -1;
  return lines.map(([where], at) => {
    if (where === 'B') bio += 1;
    const file = where === 'S' ? `one/sales/s${String(at)}.md` : 'one/cards/signals/c3.md';
    const line = where === 'S' ? 6 : 6 + 2 * bio;
    const isHere = (each: Finding | ListedNumber): boolean =>
      each.file === file && each.line === line;
    return { numbers: numbers.filter(isHere), findings: findings.filter(isHere) };
  });
}

const OF_PACKS = /^packs of|, sure in each/;

/** The odds of a line in words, with what is found of each. */
function oddsOf({ numbers, findings }: Read): readonly string[] {
  return numbers.flatMap(({ taken, real = [], words, line, column, stands }) => {
    const own = findings.find((each) => each.line === line && each.column === column);
    const isOdds = real.length > 0 && real.every(({ of }) => OF_PACKS.test(of));
    if (taken !== 'claim' || (!isOdds && own === undefined)) return [];
    const mark = own === undefined ? '' : own.severity === 'error' ? '!' : '~';
    expect(stands).toBe(mark === '!' ? 'wrong' : 'holds');
    return [`${mark}${words}`];
  });
}

describe('odds that texts say', () => {
  const all = read(ODDS);
  test.each(ODDS.map((line, at) => [line[1], line, all[at]] as const))('%s', (_, line, each) => {
    expect(each && oddsOf(each)).toStrictEqual(line[2]);
  });

  test('have one finding for each that is wrong', () => {
    const marked = ODDS.flatMap(([, , words]) => words).filter((word) => /^[!~]/.test(word));
    expect(all.flatMap(({ findings }) => findings)).toHaveLength(marked.length);
  });
});

describe('no odds', () => {
  const all = read(NO_ODDS);
  test.each(NO_ODDS.map((line, at) => [`${line[0]} ${line[1]}`, all[at]] as const))(
    '%s',
    (_, each) => {
      expect(each && [oddsOf(each), each.findings]).toStrictEqual([[], []]);
    },
  );
});
