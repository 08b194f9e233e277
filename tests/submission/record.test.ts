import { readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { readReview, diskFolder } from '../../pipeline/read/index.js';
import { sha256 } from '../../pipeline/review/index.js';
import { recordAnswer } from '../../pipeline/submission/index.js';
import type { Decision, PacketRecord } from '../../schema/index.js';
import {
  LAMP,
  NOW,
  QUAY,
  QUAY_FILE,
  decisionOn,
  fileOf,
  placed,
  put,
  sentRecord,
  textsBelow,
  unsigned,
} from './ground.js';

let root: string;
let record: PacketRecord;
beforeEach(async () => {
  root = placed();
  record = await sentRecord(root);
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

const recorded = (decisions: readonly Decision[], dryRun = false) =>
  recordAnswer({
    contentPath: root,
    now: NOW,
    octets: fileOf(unsigned(record, decisions)),
    dryRun,
  });

const changed = (changes: Decision['changes']): Decision =>
  decisionOn(record, QUAY, 'copy', {
    decision: 'approved with changes',
    ...(changes === undefined ? {} : { changes }),
  });

const lastEntry = () => readReview(diskFolder(root)).ledger.entries.at(-1);
const quay = (): string => readFileSync(join(root, QUAY_FILE), 'utf8');

describe('a decision file that is right', () => {
  it('goes into the ledger as it is, and its approved texts are kept', async () => {
    const before = textsBelow(root);
    const hold = decisionOn(record, LAMP, 'web', { decision: 'on hold', with: 'The studio' });
    const copy = decisionOn(record, QUAY, 'copy', { remark: 'Lovely' });
    expect(await recorded([copy, hold])).toEqual({
      done: true,
      lines: [
        `${QUAY} copy: approved`,
        '  remark: Lovely',
        `${LAMP} web: on hold`,
        '  with The studio',
      ],
    });
    const after = textsBelow(root);
    const kept = `review/approved/${copy.digest}.json`;
    expect(Object.keys(after).filter((path) => before[path] !== after[path])).toEqual([
      kept,
      'review/ledger.jsonl',
    ]);
    expect(after[kept]).toBe(before[`review/submitted/${copy.digest}.json`]);
    expect(lastEntry()).toMatchObject({
      kind: 'decided',
      at: '2027-01-18T10:00:00+00:00[Europe/London]',
      answer: { decisions: [copy, hold] },
      approves: [],
    });
  });

  it('keeps the art of an approved picture', async () => {
    const art = '<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>';
    put(root, 'one/art/a1.svg', art);
    put(
      root,
      QUAY_FILE,
      quay().replace('story:', 'image: { file: art/a1.svg, alt: Water }\nstory:'),
    );
    const next = await sentRecord(root);
    const octets = fileOf(unsigned(next, [decisionOn(next, QUAY, 'image')]));
    const order = { contentPath: root, now: NOW, octets, dryRun: false };
    const place = `review/approved/art/${sha256(art)}.svg`;
    expect(await recordAnswer(order)).toMatchObject({ done: true });
    expect(textsBelow(root)[place]).toBe(art);
    expect(Object.keys(textsBelow(root)).filter((path) => path.includes('approved/art/'))).toEqual([
      place,
    ]);
  });

  it('changes nothing with --dry-run', async () => {
    const before = textsBelow(root);
    const outcome = await recorded([changed([{ field: 'name', text: 'The Old Quay' }])], true);
    expect(outcome).toEqual({
      done: true,
      lines: [`${QUAY} copy: approved with changes`, '  name: The {+Old +}Quay'],
    });
    expect(textsBelow(root)).toEqual(before);
  });

  it('is kept as a decision on an older text where the card was changed since', async () => {
    const copy = decisionOn(record, QUAY, 'copy');
    put(root, QUAY_FILE, quay().replace('by day', 'by night'));
    const version = copy.digest.slice(0, 6);
    expect(await recorded([copy])).toEqual({
      done: true,
      lines: [
        `${QUAY} copy: approved`,
        `  the text was changed since: kept as a decision on copy version ${version}`,
      ],
    });
    expect(Object.keys(textsBelow(root))).toContain(`review/approved/${copy.digest}.json`);
  });
});

describe('approved with changes', () => {
  it('changes the words alone, and approves the new text', async () => {
    const before = quay();
    const outcome = await recorded([
      changed([
        { field: 'name', text: 'The Old Quay' },
        {
          field: 'bio',
          text: 'The quay stands in water to the hip. Nobody rows there by day: no one.',
        },
        { field: 'facts.Berth', text: "Lock nine's end" },
      ]),
    ]);
    expect(outcome).toEqual({
      done: true,
      lines: [
        `${QUAY} copy: approved with changes`,
        '  name: The {+Old +}Quay',
        '  bio: The quay stands in water to the [-knee-]{+hip+}. Nobody rows there by day{+: no one+}.',
        "  facts.Berth: Lock nine{+'s end+}",
      ],
    });
    expect(quay()).toBe(
      before
        .replace('name: The Quay', 'name: The Old Quay')
        .replace('the knee*', 'the hip*')
        .replace('by day.', 'by day: no one.')
        .replace("'Lock nine'", "'Lock nine''s end'"),
    );
    const entry = lastEntry();
    const approves = entry?.kind === 'decided' ? entry.approves : [];
    expect(approves.map(({ card, part }) => [card, part])).toEqual([[QUAY, 'copy']]);
    const digest = approves[0]?.digest ?? '';
    expect(Object.keys(textsBelow(root))).toContain(`review/approved/${digest}.json`);
    // The next packet finds that text unchanged since it was approved.
    const next = await sentRecord(root, { now: NOW });
    expect(decisionOn(next, QUAY, 'copy').digest).toBe(digest);
    expect(decisionOn(next, QUAY, 'web').digest).toBe(decisionOn(record, QUAY, 'web').digest);
  });

  it.each<[string, Decision['changes'], string]>([
    [
      'held words',
      [{ field: 'bio', text: 'The quay stands in water to the knee. Nobody swims there by day.' }],
      'the words "Nobody rows there" are held and must stay as they are',
    ],
    [
      'a field that is not there',
      [{ field: 'facts.Height', text: 'Two' }],
      'the card has no field facts.Height',
    ],
    ['a key that nobody may change', [{ field: 'spoiler', text: 'last' }], 'no field spoiler'],
    ['a key of the language', [{ field: 'facts.constructor', text: 'x' }], 'no field facts.cons'],
    ['an empty text', [{ field: 'bio', text: ' ' }], 'the field bio cannot be empty'],
    [
      'one field twice',
      [
        { field: 'name', text: 'A' },
        { field: 'name', text: 'B' },
      ],
      'the field name is changed twice',
    ],
    [
      'words that would be markup',
      [
        {
          field: 'bio',
          text: 'The quay stands in water to the knee. Nobody rows there by day <!-- no -->.',
        },
      ],
      'the new words cannot be put into the file',
    ],
  ])('is refused, and nothing is written: %s', async (_, changes, why) => {
    const before = textsBelow(root);
    const outcome = await recorded([decisionOn(record, LAMP, 'copy'), changed(changes)]);
    expect(outcome).toMatchObject({ done: false });
    expect(outcome.done ? [] : outcome.why).toEqual([expect.stringContaining(why)]);
    expect(textsBelow(root)).toEqual(before);
  });

  it('is refused where `check` would find an error that it does not find now', async () => {
    const before = textsBelow(root);
    const text = 'The quay stands in water to the knee. Nobody rows there by day.\u202e Or night.';
    const outcome = await recorded([changed([{ field: 'bio', text }])]);
    expect(outcome).toMatchObject({ done: false });
    expect(outcome.done ? '' : outcome.why.join('\n')).toMatch(
      /^with these changes `check` would find[^]*control-character: /,
    );
    expect(textsBelow(root)).toEqual(before);
  });

  it('makes no change to a card that was changed since, and approves nothing of it', async () => {
    put(root, QUAY_FILE, quay().replace('by day', 'by night'));
    const before = quay();
    const outcome = await recorded([changed([{ field: 'name', text: 'The Old Quay' }])]);
    expect(outcome.done ? outcome.lines.at(-1) : '').toMatch(
      /the text was changed since: kept as a decision on copy version [0-9a-f]{6}; its changes are not made, so send the text again$/,
    );
    expect(quay()).toBe(before);
    put(root, QUAY_FILE, before.replace('by night', 'by day'));
    let isCurrent: boolean | undefined;
    await sentRecord(root, {
      now: NOW,
      deliver: ({ submission }) => {
        const parts = submission.texts.find(({ key }) => key === QUAY)?.parts;
        isCurrent = parts?.find(({ part }) => part === 'copy')?.last?.isCurrent;
        return Promise.resolve();
      },
    });
    expect(isCurrent).toBe(false);
  });

  it('keeps a byte order mark and Windows line ends', async () => {
    const file = `\ufeff${quay().replaceAll('\n', '\r\n')}`;
    put(root, QUAY_FILE, file);
    expect((await recorded([changed([{ field: 'name', text: 'The Old Quay' }])])).done).toBe(true);
    expect(textsBelow(root)[QUAY_FILE]).toBe(file.replace('The Quay', 'The Old Quay'));
  });
});
