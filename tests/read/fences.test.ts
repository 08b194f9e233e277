import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import matter from 'gray-matter';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';

import { CARD, GOOD_CARD, readCard } from './support.js';

const folder = mkdtempSync(join(tmpdir(), 'holdback-fences-'));
const planted = join(folder, 'planted');
afterAll(() => {
  rmSync(folder, { recursive: true });
});
beforeEach(() => {
  rmSync(planted, { force: true });
  Reflect.deleteProperty(globalThis, 'planted');
});

/** Front matter that, evaluated, leaves a file and a global behind. */
const PROGRAM = `{
  name: 'Ysolde Marrack',
  number: (globalThis.planted = '1', process.getBuiltinModule('node:fs').writeFileSync(${JSON.stringify(planted)}, 'x')),
}`;
const HIDDEN = 'Ysolde Marrack';
const KEYS = `number: "1"\nname: ${HIDDEN}\nspoiler: open`;
const BODY = `${HIDDEN} is steward.\n`;

const never = {
  message: 'the front matter is never closed',
  expected: 'a line that is exactly --- after the last key',
};
const opens = {
  message: 'the file does not open with front matter',
  expected: 'a first line that is exactly ---',
};

interface BadFence {
  readonly what: string;
  readonly text: string;
  readonly at: string;
  readonly found: string;
  readonly why: typeof never | typeof opens;
}

const BAD: readonly BadFence[] = [
  // Each of these languages is evaluated by the splitter unless its engines are shut.
  ...['---js', '---javascript', '---JS', '---Javascript', '--- js', '---node'].map((first) => ({
    what: first,
    text: `${first}\n${PROGRAM}\n---\n${BODY}`,
    at: `1:1-${String(first.length + 1)}`,
    found: first,
    why: opens,
  })),
  {
    what: '---json',
    text: `---json\n{ "number": "1", "name": "${HIDDEN}" }\n---\n${BODY}`,
    at: '1:1-8',
    found: '---json',
    why: opens,
  },
  {
    what: '---yaml',
    text: `---yaml\n${KEYS}\n---\n${BODY}`,
    at: '1:1-8',
    found: '---yaml',
    why: opens,
  },
  {
    what: 'a blank line first',
    text: `\n---js\n${PROGRAM}\n---\n${BODY}`,
    at: '1:1-1',
    found: 'an empty line',
    why: opens,
  },
  {
    what: 'a space first',
    text: ` ---\n${KEYS}\n---\n${BODY}`,
    at: '1:1-5',
    found: ' ---',
    why: opens,
  },
  {
    what: 'a tab first',
    text: `\t---\n${KEYS}\n---\n${BODY}`,
    at: '1:1-5',
    found: '\t---',
    why: opens,
  },
  {
    what: 'a space after the first fence',
    text: `--- \n${KEYS}\n---\n${BODY}`,
    at: '1:1-5',
    found: '--- ',
    why: opens,
  },
  {
    what: 'a tab after the first fence',
    text: `---\t\n${KEYS}\n---\n${BODY}`,
    at: '1:1-5',
    found: '---\t',
    why: opens,
  },
  { what: '+++', text: `+++\n${KEYS}\n+++\n${BODY}`, at: '1:1-4', found: '+++', why: opens },
  {
    what: 'four hyphens first',
    text: `----\n${KEYS}\n----\n${BODY}`,
    at: '1:1-5',
    found: '----',
    why: opens,
  },
  {
    what: 'two byte order marks',
    text: `\ufeff\ufeff---\n${KEYS}\n---\n${BODY}`,
    at: '1:1-5',
    found: '\ufeff---',
    why: opens,
  },
  { what: 'no front matter', text: BODY, at: '1:1-27', found: BODY.trimEnd(), why: opens },
  { what: 'nothing', text: '', at: '1:1-1', found: 'an empty line', why: opens },
  {
    what: 'line ends of CR alone',
    text: `---\r${KEYS.replaceAll('\n', '\r')}\r---\r${BODY}`,
    at: '1:1-4',
    found: '---',
    why: opens,
  },
  {
    what: 'a closer with a word',
    text: `---\n${KEYS}\n---foo\n${BODY}`,
    at: '5:1-7',
    found: '---foo',
    why: never,
  },
  {
    what: 'a closer with a word, and one that would do further down',
    text: `---\n${KEYS}\n---js\n${PROGRAM}\n---\n${BODY}`,
    at: '5:1-6',
    found: '---js',
    why: never,
  },
  {
    what: 'a closer of four hyphens',
    text: `---\n${KEYS}\n----\n${BODY}`,
    at: '5:1-5',
    found: '----',
    why: never,
  },
  {
    what: 'a closer with a space after it',
    text: `---\n${KEYS}\n--- \n${BODY}`,
    at: '5:1-5',
    found: '--- ',
    why: never,
  },
  {
    what: 'a closer with a space before it',
    text: `---\n${KEYS}\n ---\n${BODY}`,
    at: '1:1-4',
    found: '---',
    why: never,
  },
  {
    what: 'a closer of dots',
    text: `---\n${KEYS}\n...\n${BODY}`,
    at: '1:1-4',
    found: '---',
    why: never,
  },
  {
    what: 'a closer after a line separator, which is no line end',
    text: `---\n${KEYS}\u2028---\n${BODY}`,
    at: '1:1-4',
    found: '---',
    why: never,
  },
  {
    what: 'a closer that ends with CR alone',
    text: `---\n${KEYS}\n---\r${BODY}`,
    at: '1:1-4',
    found: '---',
    why: never,
  },
  {
    what: 'a closer with CR alone, and one that would do further down',
    text: `---\n${KEYS}\n---\r${BODY}\n---\n${BODY}`,
    at: '1:1-4',
    found: '---',
    why: never,
  },
  { what: 'no closer', text: `---\n${KEYS}\n${BODY}`, at: '1:1-4', found: '---', why: never },
  { what: 'a first fence alone', text: '---', at: '1:1-4', found: '---', why: opens },
];

describe('a fence that is not as it should be', () => {
  test.each(['---js', '---javascript', '---JS'])('%s runs when nobody forbids it', (first) => {
    matter(`${first}\n${PROGRAM}\n---\n`, {});
    expect(Reflect.get(globalThis, 'planted')).toBe('1');
    expect(existsSync(planted)).toBe(true);
  });

  test.each(BAD)('is refused and nothing of it is run or shown: $what', (bad) => {
    const { card, faults } = readCard(bad.text);
    expect(card).toBeUndefined();
    expect(faults).toStrictEqual([
      { rule: 'front-matter', at: `${CARD}:${bad.at}`, found: bad.found, ...bad.why },
    ]);
    if (bad.found !== BODY.trimEnd()) expect(JSON.stringify(faults)).not.toContain(HIDDEN);
    expect(Reflect.get(globalThis, 'planted')).toBeUndefined();
    expect(existsSync(planted)).toBe(false);
  });

  test('is not shown beyond its first forty characters', () => {
    const { faults } = readCard(`---js ${'x'.repeat(200)}\n${PROGRAM}\n---\n`);
    expect(faults[0]?.found).toBe(`---js ${'x'.repeat(34)}`);
  });

  test('is refused a second time too', () => {
    const text = `---js\n${PROGRAM}\n---\n`;
    expect(readCard(text)).toStrictEqual(readCard(text));
    expect(existsSync(planted)).toBe(false);
  });
});

describe('a fence that is as it should be', () => {
  test.each([
    ['LF', GOOD_CARD],
    ['CRLF', GOOD_CARD.replaceAll('\n', '\r\n')],
    ['a byte order mark', `\ufeff${GOOD_CARD}`],
    ['a byte order mark and CRLF', `\ufeff${GOOD_CARD.replaceAll('\n', '\r\n')}`],
    ['mixed line ends', GOOD_CARD.replace('\n', '\r\n')],
    ['a rule of --- in the text of a value', GOOD_CARD.replace('open', 'open # ---')],
  ])('is read: %s', (_, text) => {
    const { card, faults } = readCard(text);
    expect(faults).toStrictEqual([]);
    expect(card?.front).toStrictEqual({ number: '1', name: 'Odalys Thrane', spoiler: 'open' });
    expect(card?.bio).toHaveLength(1);
  });

  test('needs no line end after the last one', () => {
    const { card, faults } = readCard('---\nnumber: "1"\nname: Dace Sill\nspoiler: open\n---');
    expect(faults).toStrictEqual([]);
    expect(card?.bio).toStrictEqual([]);
  });

  test('may hold nothing: then keys are missing', () => {
    const { faults } = readCard('---\n---\nWords.\n');
    expect(faults.map((fault) => fault.rule)).toStrictEqual(['schema']);
  });
});

test('front matter longer than is read is refused before anything looks into it', () => {
  const { faults } = readCard(`---\n${'\n'.repeat(10_001)}---\n`);
  expect(faults).toMatchObject([
    { rule: 'front-matter', message: 'the front matter is longer than 10000 characters' },
  ]);
  expect(readCard(`---\n${'\n'.repeat(5_000)}${KEYS}\n---\n`).faults).toStrictEqual([]);
});
