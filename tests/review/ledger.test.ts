import { createHash } from 'node:crypto';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { LedgerEntry } from '../../schema/index.js';
import { validate } from '../../pipeline/read/index.js';
import {
  EMPTY_LEDGER,
  appended,
  headOf,
  ledgerText,
  lostHeads,
  merged,
  readLedger,
  type Ledger,
  type LedgerReading,
  type LedgerWords,
} from '../../pipeline/review/index.js';

const AT = '2027-01-11T10:00:00+00:00[Europe/London]';

const checked = (cut: string): LedgerWords => ({
  kind: 'checked',
  at: AT,
  card: 'high-water/crew/c017',
  cut,
  by: 'jonah',
});

function readEntry(value: unknown): LedgerEntry | { why: string } {
  const valid = validate(LedgerEntry, value);
  return valid.ok ? valid.value : { why: 'this is no entry' };
}

const read = (text: string): LedgerReading => readLedger(text, readEntry);
const ledgerOf = (...cuts: string[]): Ledger => appended(EMPTY_LEDGER, cuts.map(checked));
const cutsOf = ({ entries }: Ledger): string[] =>
  entries.flatMap((entry) => (entry.kind === 'checked' ? [entry.cut] : []));

const THREE = ledgerOf('cut-1', 'cut-2', 'cut-3');
const LINES = ledgerText(THREE).trimEnd().split('\n');
const faultsOf = (lines: readonly string[], end = '\n'): readonly [number, string][] => {
  const reading = read(lines.join('\n') + end);
  return reading.ok ? [] : reading.faults.map(({ line, message }) => [line, message]);
};

describe('a ledger', () => {
  test('holds in each line the SHA-256 of the line before, as other programs make it', () => {
    expect(LINES[0]).toBe(
      `{"at":"${AT}","by":"jonah","card":"high-water/crew/c017","cut":"cut-1","kind":"checked","previous":"none"}`,
    );
    for (const [at, line] of LINES.entries()) {
      const before = createHash('sha256')
        .update(LINES[at - 1] ?? '')
        .digest('hex');
      expect(line).toContain(`"previous":"${at === 0 ? 'none' : before}"`);
    }
    expect(headOf(THREE)).toBe(
      createHash('sha256')
        .update(LINES[2] ?? '')
        .digest('hex'),
    );
    expect(headOf(EMPTY_LEDGER)).toBe('none');
  });

  test('is read as it was written', () => {
    expect(read(ledgerText(THREE))).toEqual({ ok: true, ledger: THREE });
    expect(read('')).toEqual({ ok: true, ledger: EMPTY_LEDGER });
  });

  test('is refused, with the line, after any change of any letter of it', () => {
    const text = ledgerText(THREE);
    fc.assert(
      fc.property(fc.nat(text.length - 2), fc.constantFrom('x', '0', '"', '{', ' '), (at, sign) => {
        fc.pre(text[at] !== sign);
        const reading = read(text.slice(0, at) + sign + text.slice(at + 1));
        // In the last line no later one holds its digest: there the kept heads tell.
        if (reading.ok) expect(lostHeads(reading.ledger, [headOf(THREE)])).toHaveLength(1);
        else expect(reading.faults.length).toBeGreaterThan(0);
      }),
    );
  });

  const [one = '', two = '', three = ''] = LINES;
  test.each<[string, readonly string[], number]>([
    ['the first line cut off', [two, three], 1],
    ['a line less', [one, three], 2],
    ['two lines the other way round', [one, three, two], 2],
    ['a line twice', [one, two, two, three], 3],
    ['no JSON', [one, 'two', three], 2],
    ['no entry', [one, '{"kind":"dreamt"}', three], 2],
    ['an empty line', [one, two, '', three], 3],
  ])('with %s is refused at that line', (_, lines, line) => {
    expect(faultsOf(lines)[0]?.[0]).toBe(line);
  });

  test('whose last line was not written whole is refused', () => {
    expect(faultsOf([one, two, three.slice(0, 40)], '')[0]).toEqual([
      3,
      'the last line is cut off: it does not end in a line break',
    ]);
  });

  test('whose end was cut is noticed by whoever kept its head', () => {
    const cut = read(`${one}\n${two}\n`);
    if (!cut.ok) throw new Error('a cut ledger is whole in itself');
    expect(lostHeads(cut.ledger, [headOf(THREE), 'none', ...THREE.digests])).toEqual([
      headOf(THREE),
    ]);
    expect(lostHeads(THREE, THREE.digests)).toEqual([]);
  });
});

describe('two branches of a ledger', () => {
  test('become one: what the other has more is chained to the end', () => {
    const both = merged(ledgerOf('cut-1', 'cut-2'), ledgerOf('cut-1', 'cut-3', 'cut-4'));
    expect(cutsOf(both)).toEqual(['cut-1', 'cut-2', 'cut-3', 'cut-4']);
    expect(read(ledgerText(both))).toEqual({ ok: true, ledger: both });
  });

  test('keep ours to the letter, and nothing is there twice however often they are merged', () => {
    const cuts = fc.uniqueArray(fc.integer({ min: 1, max: 99 }).map((cut) => `cut-${String(cut)}`));
    fc.assert(
      fc.property(cuts, cuts, (mine, other) => {
        const [ours, theirs] = [ledgerOf(...mine), ledgerOf(...other)];
        const both = merged(ours, theirs);
        expect(ledgerText(both).startsWith(ledgerText(ours))).toBe(true);
        expect(cutsOf(both)).toEqual([...new Set([...mine, ...other])]);
        expect(merged(both, theirs)).toEqual(both);
      }),
    );
  });
});
