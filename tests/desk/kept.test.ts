import { spawn } from 'node:child_process';
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { cardFileOf, type CardFile } from '../../pipeline/desk/card-files.js';
import { Drafts } from '../../pipeline/desk/drafts.js';
import { writeCard } from '../../pipeline/desk/saving.js';
import { fileText, withText, type FileText } from '../../pipeline/desk/texts.js';
import { realDisk, settle, thisProcess } from '../../pipeline/write/index.js';
import { Died, dyingDisk, type Ending } from '../release/dying-disk.js';
import { DeskGround } from './ground.js';
import { SET_FILES } from './sample-files.js';

const PATH = 'one/cards/base/a1.md';
const place = cardFileOf(PATH);
if (!place) throw new Error('this is no card');
const FILE: CardFile = place;
const textOf = (text: string): FileText => {
  const file = fileText(new TextEncoder().encode(text));
  if (!file) throw new Error('this is no text');
  return file;
};
const [OLD, NEW] = [textOf('old words\n'), textOf('new words, and more of them\n')];

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'holdback-kept-'));
});
afterEach(() => {
  rmSync(root, { recursive: true, force: true });
});

function lay(): void {
  rmSync(join(root, 'content'), { recursive: true, force: true });
  mkdirSync(join(root, 'content', PATH, '..'), { recursive: true });
  writeFileSync(join(root, 'content', PATH), OLD.text);
}

describe('a save', () => {
  it.each<Ending>(['before', 'halfway'])(
    'that dies at any call leaves the old words or the new, and nothing else (%s)',
    async (ending) => {
      const contentPath = join(root, 'content');
      const save = (disk: typeof realDisk): Promise<unknown> =>
        writeCard({ contentPath, now: () => 0, disk }, FILE, OLD, NEW);
      lay();
      const counted = dyingDisk(Infinity, 'before');
      expect(await save(counted)).toBe('written');
      const outcomes = new Set<string>();
      for (let at = 0; at < counted.calls(); at += 1) {
        lay();
        await expect(save(dyingDisk(at, ending))).rejects.toThrow(Died);
        settle(realDisk, contentPath);
        const now = readFileSync(join(contentPath, PATH), 'utf8');
        expect([OLD.text, NEW.text], `call ${String(at)}`).toContain(now);
        expect(readdirSync(join(contentPath, PATH, '..')), `call ${String(at)}`).toEqual(['a1.md']);
        outcomes.add(now);
      }
      expect(outcomes.size).toBe(2);
    },
  );

  it('waits while somebody else writes, and says that it did in vain', async () => {
    lay();
    const contentPath = join(root, 'content');
    const theirs = withText(OLD, 'theirs\n');
    writeFileSync(join(contentPath, PATH), theirs.text);
    expect(await writeCard({ contentPath, now: () => 0 }, FILE, OLD, NEW)).toBe('moved');
    expect(readFileSync(join(contentPath, PATH), 'utf8')).toBe(theirs.text);
  });
});

describe('what was typed', () => {
  const KEY = FILE.key;
  const draft = { base: OLD, text: NEW.text, sequence: 3 };
  const opened = (session: string, pid: number, runs: boolean): Drafts =>
    new Drafts({
      folder: join(root, 'drafts'),
      session,
      now: () => 1,
      asker: { ...thisProcess, pid, runs: () => runs },
    });

  it('is taken up by the next desk, once the one that kept it has ended', () => {
    opened('aa', 11, true).keep(KEY, draft);
    expect(opened('bb', 12, true).of(KEY)).toBeNull();
    const next = opened('cc', 13, false);
    expect(next.of(KEY)).toEqual(draft);
    expect(readdirSync(join(root, 'drafts')).map((name) => name.split('.')[1])).toEqual(['cc']);
    next.drop(KEY);
    expect(readdirSync(join(root, 'drafts'))).toEqual([]);
  });

  it('is for its owner’s eyes', () => {
    opened('aa', 11, true).keep(KEY, draft);
    const [name = ''] = readdirSync(join(root, 'drafts'));
    expect(statSync(join(root, 'drafts')).mode & 0o777).toBe(0o700);
    expect(statSync(join(root, 'drafts', name)).mode & 0o777).toBe(0o600);
    expect(name).not.toContain('a1');
  });

  it('is not lost for a file beside it that cannot be understood', () => {
    opened('aa', 11, true).keep(KEY, draft);
    writeFileSync(join(root, 'drafts', 'broken.zz.json'), '{"card":');
    expect(opened('cc', 13, false).of(KEY)).toEqual(draft);
  });

  it.each<Ending>(['before', 'halfway'])('dies at no call so that both are lost (%s)', (ending) => {
    const disks = (at: number): Drafts =>
      new Drafts({
        folder: join(root, 'drafts'),
        session: 'aa',
        now: () => 1,
        disk: dyingDisk(at, ending),
      });
    let died = 0;
    for (let at = 0; ; at += 1) {
      rmSync(join(root, 'drafts'), { recursive: true, force: true });
      opened('aa', process.pid, true).keep(KEY, draft);
      const later = { ...draft, text: 'later words\n', sequence: 4 };
      try {
        disks(at).keep(KEY, later);
        break;
      } catch (error) {
        expect(error).toBeInstanceOf(Died);
        died += 1;
      }
      const found = opened('zz', 99, false).of(KEY);
      expect([draft.text, later.text], `call ${String(at)}`).toContain(found?.text);
    }
    expect(died).toBeGreaterThan(3);
  });

  it('comes back when the desk is opened again', async () => {
    const ground = new DeskGround(SET_FILES);
    try {
      const first = await ground.open();
      const { digest, saved } = await first.card(KEY);
      const edit = { copy: `${saved.copy} And more.` };
      await first.post('/api/draft', { card: KEY, base: digest, edit, sequence: 7 });
      await first.desk.close();
      const again = await (await ground.open()).card(KEY);
      expect(again.draft).toMatchObject({ base: digest, sequence: 7, typed: edit });
      expect(again.saved).toEqual(saved);
    } finally {
      await ground.end();
    }
  });
});

it('20 real kills in the middle of saves lose no saved words and leave no broken file', async () => {
  const script = fileURLToPath(new URL('save-on-and-on.mjs', import.meta.url));
  const kill = async (number: number): Promise<boolean> => {
    const content = join(root, String(number), 'content');
    mkdirSync(join(content, PATH, '..'), { recursive: true });
    writeFileSync(join(content, PATH), 'words 0\n');
    const child = spawn(process.execPath, [script, content], {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    let said = '';
    child.stdout.on('data', (bytes: Buffer) => (said += bytes.toString()));
    await new Promise((resolve) => child.stdout.once('data', resolve));
    await new Promise((resolve) => setTimeout(resolve, (number * 13) % 97));
    const ended = new Promise((resolve) => child.once('close', resolve));
    child.kill('SIGKILL');
    await ended;
    const notes = join(content, 'review');
    const wasWriting = existsSync(notes) && readdirSync(notes, { recursive: true }).length > 0;
    settle(realDisk, content);
    const saved = Number(said.trim().split('\n').at(-1));
    const [, is] =
      /^words (\d+)\n(?:more\n)*$/.exec(readFileSync(join(content, PATH), 'utf8')) ?? [];
    // What was said to be saved is there, or the save that was under way after it.
    expect([saved, saved + 1], `kill ${String(number)}`).toContain(Number(is));
    const before = textOf(readFileSync(join(content, PATH), 'utf8'));
    expect(await writeCard({ contentPath: content, now: () => 0 }, FILE, before, NEW)).toBe(
      'written',
    );
    expect(readdirSync(join(content, PATH, '..'))).toEqual(['a1.md']);
    return wasWriting;
  };
  let interrupted = 0;
  for (let at = 0; at < 20; at += 5) {
    const all = await Promise.all([0, 1, 2, 3, 4].map((step) => kill(at + step)));
    interrupted += all.filter(Boolean).length;
  }
  // They are killed in the middle of their work, or nothing is shown by what is whole.
  expect(interrupted).toBeGreaterThan(5);
}, 240_000);
