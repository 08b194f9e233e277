import { describe, expect, it } from 'vitest';

import { audit, auditSite, type Eyes, type Reader } from '../../pipeline/audit/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { SMALL, SMALL_DAY, SMALL_FILES } from './small-property.js';

const blind: Eyes = {
  art: () => null,
  draw: () => Promise.reject(new Error('there is nothing to draw')),
  digest: () => Promise.resolve(new Uint8Array(32)),
};

/** A name of `later`, one of `last`, what leaves no trace until `last`, and an embargo without date. */
const LATER = 'Osk';
const LAST = 'Ysolde Marrack';
const ABSENT = 'A closed door';
const MORE = 'Further pens';
/** Of a signer who has not signed. */
const NEVER = 'Caspar Ellwood';
const ALL = [LATER, LAST, ABSENT, MORE, NEVER];

async function found(reader: Reader, texts = ALL, content = SMALL): Promise<readonly string[]> {
  const files = new Map(texts.map((text) => [`${text}.bin`, Buffer.from(`here is ${text}.`)]));
  const findings = await audit(new Map([...files]), content, reader, blind);
  const names = new Set(findings.map(({ file }) => file.replace(/\.bin$/, '')));
  return texts.filter((text) => names.has(text));
}

const LATER_LIFT = Date.parse('2027-05-14T20:00:00+01:00');
const LAST_LIFT = Date.parse('2027-06-04T20:00:00+01:00');

describe('what is held from a reader', () => {
  it.each<readonly [string, Reader, readonly string[]]>([
    ['the public', { at: SMALL_DAY }, ALL],
    ['cleared for nothing more', { at: SMALL_DAY, clearance: 'open' }, ALL],
    ['cleared for a level', { at: SMALL_DAY, clearance: 'later' }, [LAST, ABSENT, MORE, NEVER]],
    ['cleared for the last level', { at: SMALL_DAY, clearance: 'last' }, [MORE, NEVER]],
    ['cleared for what is no level', { at: SMALL_DAY, clearance: 'more' }, ALL],
    ['just before a lift', { at: LATER_LIFT - 1 }, ALL],
    ['at a lift', { at: LATER_LIFT }, [LAST, ABSENT, MORE, NEVER]],
    ['just before the last lift', { at: LAST_LIFT - 1 }, [LAST, ABSENT, MORE, NEVER]],
    ['after all lifts', { at: LAST_LIFT }, [MORE, NEVER]],
    ['cleared for less than has lifted', { at: LAST_LIFT, clearance: 'open' }, [MORE, NEVER]],
  ])('%s', async (_who, reader, expected) => {
    expect(await found(reader)).toEqual(expected);
  });
});

describe('where open text says the same', () => {
  const path = 'first/cards/wide/w003.md';
  const KIN = 'The pilot and the warden are kin';
  const BEAT = 'The harbour bell is melted down';
  const open = `${String(SMALL_FILES.get(path)).trimEnd()} ${KIN}. ${LAST} heard it: ${BEAT}.\n`;
  const content = readContent(memoryFolder(new Map(SMALL_FILES).set(path, open)));

  it('secrets and names are found, and all else is not', async () => {
    expect(await found({ at: SMALL_DAY }, [KIN, LAST, BEAT])).toEqual([KIN, LAST, BEAT]);
    expect(await found({ at: SMALL_DAY }, [KIN, LAST, BEAT], content)).toEqual([KIN, LAST]);
  });

  it('a long secret is found too', async () => {
    const long = `${KIN}, and have been ever since the town was drowned`;
    const names = String(SMALL_FILES.get('names.yaml')).replace(KIN, `"${long}"`);
    const files = new Map(SMALL_FILES).set('names.yaml', names).set(path, open.replace(KIN, long));
    expect(await found({ at: SMALL_DAY }, [long], readContent(memoryFolder(files)))).toEqual([
      long,
    ]);
  });
});

describe('what could be in any text is not looked for', () => {
  const seen = (from: string, to: string, text: string): number => {
    const files = new Map(
      [...SMALL_FILES].map(([path, source]) => [path, source.replaceAll(from, to)]),
    );
    const content = readContent(memoryFolder(files));
    expect(content.faults).toEqual([]);
    return auditSite(new Map([['a.txt', Buffer.from(text)]]), content, SMALL_DAY).length;
  };

  it('a name of two letters; one of three is', () => {
    expect(seen('name: Osk', 'name: Oz', 'We saw Oz here.')).toBe(0);
    expect(seen('name: Osk', 'name: Ozz', 'We saw Ozz here.')).toBe(1);
  });

  // "Whole" below 6 characters: the space between two words is one of them.
  it('five characters within a word; six are', () => {
    expect(seen('name: Osk', 'name: Oskar', 'weseeoskarhere')).toBe(0);
    expect(seen('name: Osk', 'name: Oskars', 'weseeoskarshere')).toBe(1);
    expect(seen('name: Osk', 'name: Os Ka', 'weseeoskahere')).toBe(0);
    expect(seen('name: Osk', 'name: Os Kar', 'weseeoskarhere')).toBe(1);
  });

  it('a remark of 39 characters; one of 40 is', () => {
    const remark = 'he asked for a month that the printer could not give us';
    const [short, long] = [39, 40].map((size) =>
      'about the lamp of the second quay by noon'.slice(0, size),
    );
    expect(seen(remark, String(short), String(short))).toBe(0);
    expect(seen(remark, String(long), String(long))).toBe(1);
  });

  it('a number without a letter', () => {
    expect(seen('name: Osk', 'name: "1977"', 'In 1977.')).toBe(0);
  });
});
