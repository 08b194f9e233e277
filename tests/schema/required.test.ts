import { fileURLToPath } from 'node:url';

import { describe, expect, test } from 'vitest';

import { diskFolder, memoryFolder, readContent } from '../../pipeline/read/index.js';
import { told } from '../read/support.js';

const disk = diskFolder(fileURLToPath(new URL('../../content', import.meta.url)));
/** The demo without its pictures: only words are read here. */
const DEMO = new Map(
  disk
    .list()
    .filter(({ path }) => /\.(md|yaml)$/.test(path))
    .map(({ path }) => [path, new TextDecoder().decode(disk.read(path))]),
);
const CARDS = [...DEMO.keys()].filter((path) => path.includes('/cards/'));
const PLANS = [...DEMO.keys()].filter((path) => path.endsWith('plan.yaml'));

const TEXT = 'some text';
const LEVEL = 'an id of small letters, digits and single hyphens, such as high-water';
/** The keys that have no default, and what is said to be expected. */
const ASKED = [
  {
    key: 'zone',
    files: ['property.yaml'],
    expected: 'a time zone of the IANA list, such as Europe/London',
  },
  {
    key: 'since',
    files: ['property.yaml'],
    expected: 'an instant with offset and zone, such as "2027-04-16T09:00:00+01:00[Europe/London]"',
  },
  {
    key: 'approvals',
    files: ['property.yaml'],
    expected: 'a list of which roles approve which parts, or none',
  },
  { key: 'spoiler', files: PLANS, expected: LEVEL },
  { key: 'number', files: CARDS, expected: 'the number as it is printed, or none' },
  { key: 'name', files: CARDS, expected: TEXT },
  { key: 'spoiler', files: CARDS, expected: LEVEL },
];

/** A file without one of its outermost keys and all that lies under it. */
function without(text: string, key: string): string {
  const shorter = text.replace(new RegExp(`^${key}:.*\n(?:[ \t-][^\n]*\n(?<!^---\n))*`, 'm'), '');
  expect(shorter.length, `no key ${key}`).toBeLessThan(text.length);
  return shorter;
}

function faultsWith(changes: ReadonlyMap<string, string>) {
  return readContent(memoryFolder(new Map([...DEMO, ...changes]))).faults.map(told);
}

/** The finding about a missing key stands at the first key that is there. */
function expectedAt(file: string, text: string, key: string, expected: string) {
  const lines = text.split('\n');
  const first = lines.findIndex((line) => /^[a-zA-Z]+:/.test(line));
  const length = lines[first]?.indexOf(':') ?? 0;
  return {
    rule: 'schema',
    at: `${file}:${String(first + 1)}:1-${String(length + 1)}`,
    message: `the key \`${key}\` is missing`,
    expected,
  };
}

test('the demo has no fault', () => {
  expect(CARDS.length).toBeGreaterThan(60);
  expect(PLANS.length).toBeGreaterThan(1);
  expect(faultsWith(new Map())).toStrictEqual([]);
});

describe.each(ASKED.filter(({ files }) => files !== CARDS))(
  'without `$key`',
  ({ key, files, expected }) => {
    test.each(files)('%s has that one fault', (file) => {
      const text = without(DEMO.get(file) ?? '', key);
      expect(faultsWith(new Map([[file, text]]))).toStrictEqual([
        expectedAt(file, text, key, expected),
      ]);
    });
  },
);

describe.each(ASKED.filter(({ files }) => files === CARDS))(
  'without `$key`',
  ({ key, expected }) => {
    test('every card has that one fault, and none hides another', () => {
      const changes = CARDS.map((file) => [file, without(DEMO.get(file) ?? '', key)] as const);
      expect(faultsWith(new Map(changes))).toStrictEqual(
        changes.map(([file, text]) => expectedAt(file, text, key, expected)),
      );
    });
  },
);
