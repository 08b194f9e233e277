import { symlinkSync, unlinkSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import type {
  Conflict,
  DraftAnswer,
  FindingsAnswer,
  FixAnswer,
  NotHandedIn,
  SavedAnswer,
  StatusAnswer,
} from '../../pipeline/desk/protocol.js';
import { DeskGround, type Client } from './ground.js';
import { SET_FILES } from './sample-files.js';

const KEY = 'one/base/a1';
const FILE = 'one/cards/base/a1.md';
const CRLF = `---\r\n# the first\r\nnumber: "1"   # printed\r\nname: 'The Quay'\r\nspoiler: open\r\nstory: 1/1\r\n---\r\n\r\nThe quay stands in *water* to the knee.\r\n\r\n`;

let ground: DeskGround;
let client: Client;
beforeEach(async () => {
  ground = new DeskGround({ ...SET_FILES, [FILE]: CRLF });
  client = await ground.open();
});
afterEach(async () => {
  await ground.end();
  expect(ground.failures).toEqual([]);
});

const bio = (answer: Pick<DraftAnswer, 'look'>): string | undefined =>
  answer.look.sides?.fits.find(({ zone }) => zone === 'bio')?.says;

describe('a card that is written', () => {
  it('is set anew with each draft, and the file stays as it is', async () => {
    const card = await client.card(KEY);
    expect(card.saved.copy).toBe('The quay stands in *water* to the knee.');
    expect(card.saved.fields).toEqual({
      number: '1',
      name: 'The Quay',
      spoiler: 'open',
      story: '1/1',
    });
    const says = [];
    for (const [sequence, times] of [0, 30, 60].entries()) {
      const copy = card.saved.copy + ' More of the water.'.repeat(times);
      const draft = { card: KEY, base: card.digest, edit: { copy }, sequence };
      const { value } = await client.post<DraftAnswer>('/api/draft', draft);
      says.push(bio(value));
      expect(value).toMatchObject({ sequence, unsaved: times > 0 });
    }
    expect(says[0]).toBe('3 lines free');
    expect(says[1]).toMatch(/^overset by \d+ lines$/);
    expect(Number(/\d+/.exec(says[2] ?? '')?.[0])).toBeGreaterThan(
      Number(/\d+/.exec(says[1] ?? '')?.[0]),
    );
    expect(ground.read(FILE)).toBe(CRLF);
    const { value: status } = await client.get<StatusAnswer>('/api/status');
    expect(status.cards.map(({ card, unsaved }) => [card, unsaved])).toEqual([
      [KEY, true],
      ['one/base/a2', false],
      ['one/extra/b1', false],
    ]);
  });

  it('is saved to the byte: what was not touched stays', async () => {
    const { digest } = await client.card(KEY);
    const edit = {
      copy: 'The quay stands in *water* to the hip.\n\nA second paragraph.',
      fields: [
        { path: ['state'], value: 'draft' },
        { path: ['name'], value: 'The Old Quay' },
      ],
    };
    const { status, value } = await client.post<SavedAnswer>('/api/save', {
      card: KEY,
      base: digest,
      edit,
    });
    expect([status, value.written, value.card.canUndo, value.card.draft]).toEqual([
      200,
      true,
      true,
      null,
    ]);
    const now = CRLF.replace('knee.', 'hip.\r\n\r\nA second paragraph.')
      .replace("'The Quay'", "'The Old Quay'")
      .replace('open\r\n', 'open\r\nstate: draft\r\n');
    expect(ground.read(FILE)).toBe(now);
    const again = await client.post<SavedAnswer>('/api/save', {
      card: KEY,
      base: value.card.digest,
      edit,
    });
    expect(again.value).toMatchObject({ saved: true, written: false });
  });

  it('is undone and done again across saves, and what was undone is never lost', async () => {
    const texts: string[] = [CRLF];
    let base = (await client.card(KEY)).digest;
    const put = async (word: string): Promise<void> => {
      const edit = { copy: `The quay stands in ${word}.` };
      const { value } = await client.post<SavedAnswer>('/api/save', { card: KEY, base, edit });
      base = value.card.digest;
      texts.push(ground.read(FILE));
    };
    const step = async (way: 'undo' | 'redo'): Promise<number> => {
      const { status, value } = await client.post<SavedAnswer>(`/api/${way}`, { card: KEY, base });
      if (status === 200) base = value.card.digest;
      return status;
    };
    await put('mud');
    await put('sand');
    expect([await step('undo'), ground.read(FILE)]).toEqual([200, texts[1]]);
    expect([await step('undo'), ground.read(FILE)]).toEqual([200, texts[0]]);
    expect(await step('undo')).toBe(409);
    expect([await step('redo'), ground.read(FILE)]).toEqual([200, texts[1]]);
    await put('reeds');
    const seen = new Set([ground.read(FILE)]);
    while ((await step('undo')) === 200) seen.add(ground.read(FILE));
    expect(seen).toEqual(new Set(texts));
  });

  it('is not undone where the disk has changed, or something is typed', async () => {
    const { digest } = await client.card(KEY);
    const saved = await client.post<SavedAnswer>('/api/save', {
      card: KEY,
      base: digest,
      edit: { copy: 'Mud.' },
    });
    const base = saved.value.card.digest;
    await client.post('/api/draft', { card: KEY, base, edit: { copy: 'Mud!' }, sequence: 1 });
    expect((await client.post('/api/undo', { card: KEY, base })).value).toMatchObject({
      error: 'unsaved',
    });
    await client.post('/api/discard', { card: KEY });
    const theirs = ground.read(FILE).replace('Mud', 'Sand');
    ground.write(FILE, theirs);
    const { status, value } = await client.post<Conflict>('/api/undo', { card: KEY, base });
    expect([status, value.error]).toEqual([409, 'conflict']);
    expect(ground.read(FILE)).toBe(theirs);
  });

  it('is not written over somebody else’s change: both texts are told, and both can be kept', async () => {
    const { digest } = await client.card(KEY);
    const theirs = CRLF.replace('knee', 'hip');
    ground.write(FILE, theirs);
    const edit = { copy: 'The old quay stands in *water* to the knee.' };
    const { status, value } = await client.post<Conflict>('/api/save', {
      card: KEY,
      base: digest,
      edit,
    });
    expect(status).toBe(409);
    expect(ground.read(FILE)).toBe(theirs);
    expect(value).toMatchObject({
      error: 'conflict',
      base: { copy: 'The quay stands in *water* to the knee.' },
      yours: edit,
      disk: { copy: 'The quay stands in *water* to the hip.' },
      merged: { copy: 'The old quay stands in *water* to the hip.' },
    });
    const resolved = { card: KEY, base: value.digest, edit: { copy: value.merged?.copy ?? '' } };
    expect((await client.post('/api/save', resolved)).status).toBe(200);
    expect(ground.read(FILE)).toBe(theirs.replace('The quay', 'The old quay'));
  });

  it('cannot be merged where both changed the same words', async () => {
    const { digest } = await client.card(KEY);
    ground.write(FILE, CRLF.replace('knee', 'hip'));
    const edit = { copy: 'The quay stands in *water* to the neck.' };
    const { value } = await client.post<Conflict>('/api/save', { card: KEY, base: digest, edit });
    expect(value.merged).toBeNull();
  });

  it('is mended by the fix of a finding, which is not saved by itself', async () => {
    const { digest } = await client.card(KEY);
    const edit = { copy: 'The quay knows Miss Thrane.' };
    const draft = { card: KEY, base: digest, edit, sequence: 1 };
    await client.post<DraftAnswer>('/api/draft', draft);
    const { value } = await client.get<FindingsAnswer>(`/api/findings?card=${KEY}`);
    expect(value).toMatchObject({ card: KEY, sequence: 1 });
    const finding = value.findings.find((each) => each.finding.rule === 'name-avoided');
    expect(finding).toMatchObject({ fixable: true, place: { in: 'copy', from: 15, to: 26 } });
    const asked = { ...draft, finding: finding?.id ?? '', sequence: 2 };
    const fixed = await client.post<FixAnswer>('/api/fix', asked);
    expect(fixed.value.typed?.copy).toBe('The quay knows Captain Thrane.');
    expect(fixed.value.look.findings.some((each) => each.finding.rule === 'name-avoided')).toBe(
      false,
    );
    expect(fixed.value.look.names).toMatchObject([
      {
        name: 'Odalys Thrane',
        say: 'oh-DAH-liss',
        found: ['Captain Thrane'],
        avoid: [{ form: 'Miss Thrane' }],
      },
    ]);
    expect(ground.read(FILE)).toBe(CRLF);
    expect((await client.post('/api/fix', { ...asked, finding: 'none' })).status).toBe(409);
  });

  it('is handed in, but not while errors stand', async () => {
    const { digest } = await client.card(KEY);
    const long = { copy: 'More of the water. '.repeat(60) };
    const refused = await client.post<NotHandedIn>('/api/hand-in', {
      card: KEY,
      base: digest,
      edit: long,
    });
    expect([refused.status, refused.value.error]).toEqual([422, 'not ready']);
    expect(refused.value.findings.map((each) => each.finding.rule)).toContain('overset');
    expect(ground.read(FILE)).toBe(CRLF);
    expect((await client.card(KEY)).draft?.typed.copy).toBe(long.copy.trim());
    const empty = await client.post<NotHandedIn>('/api/hand-in', {
      card: KEY,
      base: digest,
      edit: { copy: '' },
    });
    expect(empty.value.findings.map((each) => each.finding.rule)).toEqual(['copy-empty']);
    const done = await client.post<SavedAnswer>('/api/hand-in', {
      card: KEY,
      base: digest,
      edit: {},
    });
    expect([done.status, done.value.card.row?.state]).toEqual([200, 'handed in']);
    expect(ground.read(FILE)).toBe(CRLF.replace('open\r\n', 'open\r\nstate: ready\r\n'));
  });

  it('that is a link is shown, and not written through', async () => {
    unlinkSync(join(ground.content, FILE));
    symlinkSync(join(ground.content, 'one/cards/base/a2.md'), join(ground.content, FILE));
    const card = await client.card(KEY);
    expect(card.readOnly).toContain('link');
    const save = { card: KEY, base: card.digest, edit: { copy: 'x' } };
    expect((await client.post('/api/save', save)).status).toBe(403);
  });

  it('that cannot be read is shown as text, and mended as text', async () => {
    const broken = CRLF.replace('spoiler: open', 'spoiler: [open');
    ground.write(FILE, broken);
    const second = await ground.open();
    const card = await second.card(KEY);
    expect(card.saved.fields).toBeNull();
    expect(card.look.sides).toBeNull();
    expect(card.look.findings.map((each) => each.finding.rule)).toContain('front-matter');
    const edit = { text: card.saved.text.replace('[open', 'open') };
    await second.post('/api/save', { card: KEY, base: card.digest, edit });
    expect(ground.read(FILE)).toBe(CRLF);
  });
});

describe('two desks on one folder', () => {
  it('see each other’s saves as changes from outside, and lose none', async () => {
    const other = await ground.open();
    const [mine, theirs] = [await client.card(KEY), await other.card(KEY)];
    expect(mine.digest).toBe(theirs.digest);
    const save = (desk: Client, copy: string): Promise<{ status: number }> =>
      desk.post('/api/save', { card: KEY, base: mine.digest, edit: { copy } });
    const both = await Promise.all([save(client, 'Mine.'), save(other, 'Theirs.')]);
    expect(both.map(({ status }) => status).sort()).toEqual([200, 409]);
    expect(ground.read(FILE)).toContain(both[0].status === 200 ? 'Mine.' : 'Theirs.');
  });
});
