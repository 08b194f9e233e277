import { readFileSync, readdirSync, rmSync, mkdtempSync, existsSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import type { PublicData, ReleaseRecord } from '../../schema/index.js';
import { siteFiles } from '../../pipeline/out/site/index.js';
import { sendOut, verifySite, type Sending, type Sent } from '../../pipeline/release/index.js';
import {
  PlaceError,
  realDisk,
  takeLock,
  type Asker,
  type Disk,
} from '../../pipeline/write/index.js';
import { Died, dyingDisk, type Ending } from './dying-disk.js';
import { filesBelow } from './site-at.js';
import { bytesOf, card, dataWith, placeholder, recordOf, siteOf } from './small-site.js';

const LATER = '2027-04-16T09:00:00+01:00[Europe/London]';
const OLD = dataWith([card('1'), placeholder('2')]);
const NEW = dataWith([card('1'), card('2')], LATER);

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'holdback-send-'));
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const asker = (pid: number): Asker => ({ pid, host: 'dock', runs: () => false });

function send(
  data: PublicData,
  id: string,
  more: Partial<Sending> & { readonly disk?: Disk; readonly pid?: number } = {},
): Sent {
  return sendFiles(siteOf(data), recordOf(data, id), {
    at: Date.parse(data.asOf.replace(/\[.*/, '')),
    ...more,
  });
}

function sendFiles(
  files: ReadonlyMap<string, Uint8Array>,
  record: ReleaseRecord,
  more: Partial<Sending> & { readonly disk?: Disk; readonly pid?: number },
): Sent {
  const { disk = realDisk, pid = 1, ...sending } = more;
  const out = join(root, 'site');
  const lock = takeLock(disk, out, asker(pid), 0);
  if (!lock.free) throw new Error('locked');
  try {
    const order = {
      contentPath: join(root, 'content'),
      out,
      plain: false,
      at: Date.parse(LATER.replace(/\[.*/, '')),
      earlier: false,
      takeBack: false,
      mayKeep: () => true,
      ...sending,
    };
    return sendOut(disk, order, record, files);
  } finally {
    lock.release();
  }
}

/** Words by path: what differs is told in words. */
type Words = Record<string, string>;

function wordsOf(files: ReadonlyMap<string, Uint8Array>): Words {
  return Object.fromEntries([...files].map(([path, bytes]) => [path, decoder.decode(bytes)]));
}

const decoder = new TextDecoder();
const outNow = (): Words | null =>
  existsSync(join(root, 'site')) ? wordsOf(filesBelow(join(root, 'site'))) : null;
const records = (): string[] => readdirSync(join(root, 'content', 'review', 'releases'));
const everything = (): Words => wordsOf(filesBelow(root));
const OLD_SITE = wordsOf(siteOf(OLD));
const NEW_SITE = wordsOf(siteOf(NEW));

/** How many calls of the disk one publish makes. */
function callsOf(before: () => void, plain: boolean): number {
  before();
  const disk = dyingDisk(Infinity, 'before');
  expect(send(NEW, 'new', { disk, plain })).toMatchObject({ is: 'out' });
  rmSync(root, { recursive: true });
  return disk.calls();
}

describe('a publish that stops at a call of the disk', () => {
  it.each<[string, () => void, boolean, Ending]>([
    ['with a site before it', () => send(OLD, 'old'), false, 'before'],
    ['with a site before it, half done', () => send(OLD, 'old'), false, 'halfway'],
    ['into a place that is not there', () => undefined, false, 'halfway'],
    ['into a plain folder', () => undefined, true, 'halfway'],
  ])('leaves the old or the new site whole, and the next one succeeds: %s', (...row) => {
    const [, before, plain, ending] = row;
    const calls = callsOf(before, plain);
    expect(calls).toBeGreaterThan(25);
    const left = new Set<string>();
    for (let at = 0; at < calls; at += 1) {
      before();
      const old = outNow();
      const disk = dyingDisk(at, ending);
      expect(() => send(NEW, 'new', { disk, plain, pid: 2 }), `call ${at}`).toThrow(Died);
      const isOut = isDeepStrictEqual(outNow(), NEW_SITE);
      expect(outNow(), `call ${at}`).toEqual(isOut ? NEW_SITE : old);
      left.add(isOut ? 'new' : 'old');
      again(isOut, plain, `call ${at}`);
      rmSync(root, { recursive: true });
    }
    expect([...left].sort()).toEqual(['new', 'old']);
  });
});

/** The next publish, by another process: it succeeds and leaves nothing of the one that died. */
function again(isOut: boolean, plain: boolean, call: string): void {
  if (isOut && plain) {
    expect(() => send(NEW, 'new', { plain, pid: 3 }), call).toThrow(PlaceError);
  } else {
    expect(send(NEW, 'new', { plain, pid: 3 }).is, call).toBe(isOut ? 'unchanged' : 'out');
  }
  expect(outNow(), call).toEqual(NEW_SITE);
  expect(records(), call).toContain('new.json');
  const all = plain ? ['content', 'site'] : ['content', 'site', 'site.releases'];
  expect(readdirSync(root), call).toEqual(all);
}

describe('the same site again', () => {
  it('is not published: nothing on the disk changes', () => {
    send(OLD, 'old');
    const before = everything();
    expect(send(OLD, 'old')).toEqual({ is: 'unchanged', asOf: OLD.asOf });
    expect(everything()).toEqual(before);
    expect(records()).toEqual(['old.json']);
  });

  it('is published, under another name, if the one that is out was damaged', () => {
    send(OLD, 'old');
    for (let times = 0; times < 3; times += 1) {
      realDisk.writeSynced(join(root, 'site', 'index.html'), bytesOf('broken'));
      expect(send(OLD, 'old').is).toBe('out');
      expect(outNow()).toEqual(OLD_SITE);
    }
  });
});

describe('a site that shows less, or of an earlier instant', () => {
  const less = {
    is: 'less',
    since: LATER,
    goes: ['high-water/crew 2: name', 'high-water/crew 2: bio', 'high-water/crew 2: fact Boat'],
  };

  it('is refused, and what is out stays', () => {
    send(NEW, 'new');
    const before = everything();
    expect(send(OLD, 'old')).toEqual(less);
    expect(everything()).toEqual(before);
  });

  it('is refused for its instant alone, and for a file alone', () => {
    send(NEW, 'new');
    const at = Date.parse('2027-04-16T09:00:00+01:00');
    const same = { ...NEW, property: { ...NEW.property, title: 'The Ferrymen' } };
    expect(send(same, 'same', { at: at - 1 })).toEqual({ is: 'less', since: LATER, goes: [] });
    expect(send(dataWith([card('1', { page: null }), card('2')], LATER), 'gone')).toEqual({
      is: 'less',
      since: null,
      goes: ['file high-water/crew/1/index.html'],
    });
    expect(send(same, 'same', { at }).is).toBe('out');
  });

  it('is allowed as earlier, and the record says nothing of it', () => {
    send(NEW, 'new');
    expect(send(OLD, 'old', { earlier: true })).toEqual({
      is: 'out',
      record: recordOf(OLD, 'old'),
    });
    expect(outNow()).toEqual(OLD_SITE);
  });

  it('is taken back: what went and what caches must forget stand in the record', () => {
    send(NEW, 'new');
    const record: ReleaseRecord = {
      ...recordOf(OLD, 'old'),
      takenBack: {
        parts: [...less.goes],
        addresses: [
          '/data.json',
          '/high-water/crew/2/',
          '/high-water/crew/2/index.html',
          '/',
          '/index.html',
          '/release.json',
        ],
      },
    };
    expect(send(OLD, 'old', { takeBack: true })).toEqual({ is: 'out', record });
    const path = join(root, 'content', 'review', 'releases', 'old.json');
    expect(JSON.parse(readFileSync(path, 'utf8'))).toEqual(record);
  });

  it('takes nothing from the public where the last release was a preview', () => {
    send({ ...NEW, preview: true }, 'new');
    expect(send(OLD, 'old').is).toBe('out');
  });
});

describe('a last release that cannot be read', () => {
  it.each(['data.json', 'release.json'])('%s: is replaced only if it is said', (file) => {
    send(OLD, 'old');
    realDisk.writeSynced(join(root, 'site', file), bytesOf('{'));
    expect(send(NEW, 'new')).toEqual({ is: 'unread' });
    expect(send(NEW, 'new', { earlier: true }).is).toBe('out');
    expect(outNow()).toEqual(NEW_SITE);
  });
});

describe('what a page of the release before asks for', () => {
  const assets = (names: Record<string, string>) => (data: PublicData) => {
    const files = Object.entries(names).map(([path, text]) => [path, bytesOf(text)] as const);
    return siteFiles(data, new Map(files), []);
  };
  const first = assets({
    'index.html': '1',
    'assets/a.css': 'one',
    'assets/b.css': 'two',
    'assets/c.woff2': 'font',
    'assets/d.webp': 'art',
  });
  const second = assets({ 'index.html': '2', 'assets/b.css': 'two', 'assets/e.js': 'three' });
  const third = assets({ 'index.html': '3' });

  function sendSite(make: typeof first, id: string, more: Partial<Sending> = {}): Sent {
    return sendFiles(make(OLD), recordOf(OLD, id), more);
  }

  const paths = (): string[] => Object.keys(outNow() ?? {}).filter((path) => /^assets/.test(path));

  it('stands in the new one, for one release; pictures do not', () => {
    sendSite(first, 'first');
    sendSite(second, 'second');
    expect(paths()).toEqual(['assets/a.css', 'assets/b.css', 'assets/c.woff2', 'assets/e.js']);
    expect(verifySite(join(root, 'site'))).toMatchObject({ missing: [], changed: [], extra: [] });
    expect(sendSite(second, 'second').is).toBe('unchanged');
    sendSite(third, 'third');
    expect(paths()).toEqual(['assets/b.css', 'assets/e.js']);
  });

  it('is left out if it was tampered with', () => {
    sendSite(first, 'first');
    realDisk.writeSynced(join(root, 'site', 'assets', 'a.css'), bytesOf('Ysolde Marrack'));
    sendSite(second, 'second');
    expect(paths()).toEqual(['assets/b.css', 'assets/c.woff2', 'assets/e.js']);
  });

  it.each<[string, Partial<Sending>]>([
    ['goes back in time', { earlier: true }],
    ['takes something back', { takeBack: true }],
    ['would tell what is held by it', { mayKeep: () => false }],
  ])('is left out of a release that %s', (_, more) => {
    sendSite(first, 'first');
    sendSite(second, 'second', more);
    expect(paths()).toEqual(['assets/b.css', 'assets/e.js']);
  });
});
