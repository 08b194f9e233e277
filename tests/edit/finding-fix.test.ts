import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { apart, fixOf, offsetOf, patchText, splice } from '../../pipeline/edit/index.js';
import { placeOf } from '../../pipeline/model/index.js';
import type { Finding } from '../../schema/index.js';

/** A finding over words that stand once in a file. */
function findingOn(file: string, text: string, covers: string, fix: string): Finding {
  const from = text.indexOf(covers);
  const start = placeOf(text, from);
  const end = placeOf(text, from + covers.length);
  return {
    rule: 'a-rule',
    severity: 'error',
    message: 'wrong',
    set: null,
    card: null,
    file,
    ...start,
    endLine: end.line,
    endColumn: end.column,
    related: [],
    fix,
    certain: true,
  };
}

/** The text after a fix of words that stand once in it. */
function fixed(file: string, text: string, covers: string, fix: string): string {
  const found = fixOf({ file, text }, findingOn(file, text, covers, fix));
  if (!found) throw new Error('there is no fix');
  return splice({ file, text }, [found.change]).text;
}

describe('an offset', () => {
  test('is where its place is, whatever ends the lines', () => {
    const lines = fc.array(fc.constantFrom('a', '😀', '\n', '\r\n', '\r', 'bc '), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(lines, fc.nat(60), (parts, wish) => {
        const text = parts.join('');
        const at = Math.min(wish, text.length);
        // Between CR and LF there is no place: it is that of the CR.
        fc.pre(!(text[at - 1] === '\r' && text[at] === '\n'));
        expect(offsetOf(text, placeOf(text, at))).toBe(at);
      }),
    );
  });

  test('beyond the text is its end', () => {
    expect(offsetOf('ab\n', { line: 9, column: 4 })).toBe(3);
  });
});

describe('a fix', () => {
  const card = '---\nnumber: "07"  # as printed\nname: \'The 07\'\nstory: 1/04\n---\nSay "07".\n';

  test.each([
    ['a value in double quotes stays in them', '"07"', '7', 'number: "7"  # as printed'],
    ['a value in single quotes stays in them', "'The 07'", "Pell's", "name: 'Pell''s'"],
    ['a bare value stays bare', '1/04', '1/4', 'story: 1/4'],
  ])('%s', (_, covers, fix, expected) => {
    expect(fixed('one/cards/base/a1.md', card, covers, fix)).toContain(expected);
  });

  test('words in quotes of a bio are replaced as they stand', () => {
    const text = '---\nnumber: 1\n---\nSay "aye".\n';
    expect(fixed('one/cards/base/a1.md', text, '"aye"', '“aye”')).toBe(
      '---\nnumber: 1\n---\nSay “aye”.\n',
    );
    expect(fixed('one/cards/base/a1.md', text, '"aye"', 'aye')).toContain('Say aye.');
  });

  test('a list of values in quotes is no value', () => {
    expect(fixed('a.yaml', 'of: ["a", "b"]\n', '"a", "b"', 'c')).toBe('of: [c]\n');
  });

  test('a fix with its own quotes is not quoted again', () => {
    expect(fixed('a.yaml', 'a: "x"\n', '"x"', '"y"\nb: z')).toBe('a: "y"\nb: z\n');
  });

  test('is nothing where a finding offers none', () => {
    const bare: Finding = { ...findingOn('a.yaml', 'a: x', 'x', 'y') };
    delete bare.fix;
    expect(fixOf({ file: 'a.yaml', text: 'a: x' }, bare)).toBeNull();
  });
});

describe('fixes that stand apart', () => {
  const text = '0123456789';
  const source = { file: 'a.yaml', text };
  const on = (from: number, to: number) => ({
    finding: findingOn(
      'a.yaml',
      text,
      text.slice(from, Math.max(to, from + 1)),
      `${String(from)}-${String(to)}`,
    ),
    change: { spot: { source, from, to }, text: 'x' },
  });
  const spans = (fixes: readonly ReturnType<typeof on>[]) =>
    fixes.map(({ change: { spot } }) => [spot.from, spot.to]);

  test.each([
    [
      'overlap',
      [
        [0, 3],
        [2, 5],
      ],
      [],
    ],
    [
      'touch',
      [
        [0, 3],
        [3, 5],
      ],
      [],
    ],
    [
      'the same place',
      [
        [1, 3],
        [1, 3],
      ],
      [],
    ],
    [
      'one within another',
      [
        [0, 9],
        [2, 3],
        [5, 6],
      ],
      [],
    ],
    [
      'a chain',
      [
        [0, 3],
        [2, 5],
        [5, 7],
      ],
      [],
    ],
    [
      'an insertion at an end',
      [
        [0, 3],
        [3, 3],
      ],
      [],
    ],
    [
      'a unit between them',
      [
        [4, 5],
        [0, 3],
      ],
      [
        [0, 3],
        [4, 5],
      ],
    ],
    [
      'one apart from two that touch',
      [
        [0, 1],
        [1, 2],
        [5, 6],
      ],
      [[5, 6]],
    ],
  ])('%s', (_, all, alone) => {
    const found = apart(all.map(([from = 0, to = 0]) => on(from, to)));
    expect(spans(found.alone)).toEqual(alone);
    expect(found.alone.length + found.crowded.length).toBe(all.length);
  });

  test('are those that neither overlap nor touch any other, one by one', () => {
    const span = fc.tuple(fc.nat(10), fc.nat(4)).map(([from, length]) => on(from, from + length));
    fc.assert(
      fc.property(fc.array(span, { maxLength: 8 }), (all) => {
        const meets = (a: (typeof all)[number], b: (typeof all)[number]): boolean =>
          a.change.spot.from <= b.change.spot.to && b.change.spot.from <= a.change.spot.to;
        const lonely = all.filter((fix) =>
          all.every((other) => other === fix || !meets(fix, other)),
        );
        const found = apart(all);
        expect(new Set(found.alone)).toEqual(new Set(lonely));
        expect(new Set(found.crowded)).toEqual(new Set(all.filter((fix) => !lonely.includes(fix))));
      }),
    );
  });
});

describe('a patch', () => {
  test('is a unified diff, with what does not show as its code', () => {
    expect(patchText('a/b.md', 'one\r\ntw\u200bo\r\nthree\r\n', 'one\r\ntwo\r\nthree\r\n')).toBe(
      '--- a/b.md\n+++ a/b.md\n@@ -1,3 +1,3 @@\n one\n-tw\\u{200b}o\n+two\n three\n',
    );
  });

  test('is nothing where nothing differs', () => {
    expect(patchText('a', 'x\n', 'x\n')).toBe('');
  });
});
