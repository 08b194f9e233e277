import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { realDisk, settle, writeAll } from '../../pipeline/write/index.js';
import { Died, dyingDisk, type Ending } from '../release/dying-disk.js';
import { filesBelow } from '../release/site-at.js';

const OLD = { 'a/one.md': 'old one', 'a/two.md': 'old two', 'three.jsonl': 'old' };
const NEW = { 'a/one.md': 'new one, longer', 'b/four.md': 'new four', 'three.jsonl': 'new' };
const BOTH = { ...OLD, ...NEW };

let folder: string;
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'holdback-journal-'));
});
afterEach(() => {
  rmSync(folder, { recursive: true, force: true });
});

function lay(): void {
  rmSync(folder, { recursive: true, force: true });
  for (const [path, text] of Object.entries(OLD)) {
    mkdirSync(join(folder, path, '..'), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
}

const octets = (files: Record<string, string>): Map<string, Uint8Array> =>
  new Map(Object.entries(files).map(([path, text]) => [path, new TextEncoder().encode(text)]));
const there = (): Record<string, string> =>
  Object.fromEntries(
    [...filesBelow(folder)].map(([path, bytes]) => [path, new TextDecoder().decode(bytes)]),
  );

describe('several files', () => {
  it('are written, and nothing else is left', () => {
    lay();
    writeAll(realDisk, folder, octets(NEW));
    expect(there()).toEqual(BOTH);
    expect(settle(realDisk, folder)).toBe('nothing');
  });

  it.each<Ending>(['before', 'halfway'])(
    'are all old or all new after a crash at any call, once it is settled (%s)',
    (ending) => {
      lay();
      const counted = dyingDisk(Infinity, 'before');
      writeAll(counted, folder, octets(NEW));
      const outcomes = new Set<string>();
      for (let at = 0; at < counted.calls(); at += 1) {
        lay();
        const disk = dyingDisk(at, ending);
        expect(() => {
          writeAll(disk, folder, octets(NEW));
        }).toThrow(Died);
        settle(realDisk, folder);
        const isNew = there()['three.jsonl'] === 'new';
        expect(there(), `call ${String(at)}`).toEqual(isNew ? BOTH : OLD);
        outcomes.add(isNew ? 'new' : 'old');
      }
      expect([...outcomes].sort()).toEqual(['new', 'old']);
    },
  );

  it('are settled after a crash in the settling too', () => {
    lay();
    const counted = dyingDisk(Infinity, 'before');
    writeAll(counted, folder, octets(NEW));
    for (let at = 0; at < counted.calls(); at += 1) {
      for (let again = 0; again < 8; again += 1) {
        lay();
        expect(() => {
          writeAll(dyingDisk(at, 'halfway'), folder, octets(NEW));
        }).toThrow(Died);
        try {
          settle(dyingDisk(again, 'halfway'), folder);
        } catch (error) {
          expect(error).toBeInstanceOf(Died);
        }
        settle(realDisk, folder);
        expect([OLD, BOTH]).toContainEqual(there());
      }
    }
  });

  it.each(['../out.md', '/out.md', 'a/../../out.md', 'a\nb.md', 'a//b.md'])(
    'are refused whole if one leads out of the folder: %j',
    (path) => {
      lay();
      expect(() => {
        writeAll(realDisk, folder, octets({ 'a/one.md': 'new', [path]: 'new' }));
      }).toThrow(RangeError);
      expect(there()).toEqual(OLD);
    },
  );
});

describe('a journal', () => {
  it.each(['dreamt\na/one.md\n', 'ready\n../out.md\n', ''])(
    'that is none is refused: %j',
    (text) => {
      lay();
      writeFileSync(join(folder, '.holdback-journal'), text);
      expect(() => settle(realDisk, folder)).toThrow(RangeError);
      expect(existsSync(join(folder, '.holdback-journal'))).toBe(true);
    },
  );
});
