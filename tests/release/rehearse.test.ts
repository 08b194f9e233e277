import { readFileSync, readdirSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { RehearsalRecord } from '../../schema/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { diskFolder, readContent, validate } from '../../pipeline/read/index.js';
import { readRehearsal, rehearse, type Rehearsed } from '../../pipeline/release/index.js';
import { openingsAhead } from '../../pipeline/status/ahead.js';
import { select } from '../../pipeline/select/index.js';
import { demoFiles, placeContent, withEdit, type Placed } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { digestsBelow, drawStub, publishAt } from './site-at.js';

const files = demoFiles({ art: true });

/** Written down from property.yaml and the plans: lifts and street dates after the demo's day. */
const TO_COME = [
  '2027-04-16T09:00:00+01:00[Europe/London]',
  '2027-04-16T20:00:00+01:00[Europe/London]',
  '2027-05-14T20:00:00+01:00[Europe/London]',
  '2027-06-04T20:00:00+01:00[Europe/London]',
];

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(files);
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

const rehearseAt = (where: Placed, out?: string): Promise<Rehearsed> =>
  rehearse({
    policy: 'refuse',
    contentPath: where.content,
    folder: diskFolder(where.content),
    now: DEMO_NOW,
    draw: drawStub,
    ...(out === undefined ? {} : { out: join(where.root, out) }),
  });

function recordOf(rehearsed: Rehearsed): RehearsalRecord {
  if (!rehearsed.done) throw new Error('nothing was rehearsed');
  return rehearsed.record;
}

/** What the status sheet says of each instant to come. */
function saidOf(where: Placed): readonly string[] {
  const folder = diskFolder(where.content);
  const released = select(readContent(folder));
  if (!released) throw new Error('the demo can be read');
  const ground = {
    released,
    report: {
      ok: true,
      counts: { sets: 0, cards: 0, errors: 0, warnings: 0, accepted: 0 },
      findings: [],
    },
    fits: new Map(),
    rehearsal: readRehearsal(where.content, folder),
    reviewed: null,
    now: DEMO_NOW,
  };
  return openingsAhead(ground).map(({ rehearsed }) => rehearsed);
}

describe('a rehearsal', () => {
  let record: RehearsalRecord;
  beforeAll(async () => {
    expect(saidOf(placed)).toEqual(TO_COME.map(() => 'not yet'));
    record = recordOf(await rehearseAt(placed, 'private'));
  });

  it('takes every lift to come, and finds nothing in the way of the demo', () => {
    expect(record.lifts.map(({ at }) => at)).toEqual(TO_COME);
    expect(record.lifts.flatMap(({ blocks }) => blocks)).toEqual([]);
    expect(new Set(record.lifts.map(({ digest }) => digest)).size).toBe(TO_COME.length);
  });

  it('writes a record of its shape, and publishes nothing', () => {
    const text = readFileSync(join(placed.content, 'review', 'rehearsal.json'), 'utf8');
    expect(validate(RehearsalRecord, JSON.parse(text))).toEqual({ ok: true, value: record });
    expect(readdirSync(placed.root)).toEqual(['content', 'private']);
    expect(readdirSync(join(placed.content, 'review'))).toEqual(['rehearsal.json']);
  });

  it('keeps the sites where only their owner can look', () => {
    const folder = join(placed.root, 'private');
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect(readdirSync(folder)).toEqual(
      TO_COME.map((at) => at.replace(/\[.*$/, '').replaceAll(':', '')),
    );
  });

  it('says of each the digest and the bytes that the release then has', async () => {
    for (const at of [TO_COME[0], TO_COME[2]]) {
      const instant = instantOf(at ?? '');
      const outcome = await publishAt(placed, instant, { now: instant, out: `at-${at ?? ''}` });
      const lift = record.lifts.find((one) => one.at === at);
      expect(outcome).toMatchObject({ done: true, record: { digest: lift?.digest } });
      const name = (at ?? '').replace(/\[.*$/, '').replaceAll(':', '');
      expect(digestsBelow(join(placed.root, 'private', name))).toEqual(
        digestsBelow(join(placed.root, `at-${at ?? ''}`)),
      );
    }
  });

  it('is of today’s content until a byte of it changes, but for what releases write', () => {
    expect(saidOf(placed)).toEqual(TO_COME.map(() => 'on this content'));
    const path = join(placed.content, 'names.yaml');
    writeFileSync(path, `${readFileSync(path, 'utf8')}\n`);
    expect(saidOf(placed)).toEqual(TO_COME.map(() => 'on other content'));
  });
});

describe('a rehearsal of a release that would be refused', () => {
  it('says what is in the way, from the lift on at which it is', async () => {
    // The card opens in May: from then on what is wrong with its copy is in the way.
    const path = 'high-water/cards/letters/le01.md';
    const whole = String(files.get(path));
    expect(whole).toContain('spoiler: spring');
    const [, front = ''] = /^(---\n[\s\S]*?\n---\n)/.exec(whole) ?? [];
    await using other = await placeContent(new Map(files).set(path, front));
    const { lifts } = recordOf(await rehearseAt(other));
    expect(lifts.map(({ digest }) => digest !== null)).toEqual([true, true, false, false]);
    expect(lifts[2]?.blocks).toEqual([expect.stringMatching(/le01\.md:\d+: .*\[copy-empty\]$/)]);
    expect(saidOf(other)).toEqual([
      'on this content',
      'on this content',
      'refused on this content',
      'refused on this content',
    ]);
  });

  it('is not made at all where the files cannot be read', async () => {
    const broken = withEdit(files, 'property.yaml', 'title: The', 'title: [The');
    await using other = await placeContent(broken);
    const rehearsed = await rehearseAt(other);
    expect(rehearsed).toMatchObject({ done: false, unready: { why: 'blocked' } });
    expect(readdirSync(other.content)).not.toContain('review');
  });
});
