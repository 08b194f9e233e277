import { expect, test, vi } from 'vitest';

import { countedFolder, withProgress } from '../../pipeline/cli/progress.js';
import { memoryFolder } from '../../pipeline/read/index.js';
import { DEMO_NOW } from '../demo/day.js';

/** A world whose clock is moved by hand. */
function worldOf(terminal: boolean) {
  const world = { clock: 0, said: '' };
  const io = {
    now: DEMO_NOW,
    cwd: '/',
    env: {},
    elapsed: () => world.clock,
    random: (octets: number) => new Uint8Array(octets),
    terminal,
    out: () => undefined,
    err: (text: string) => {
      world.said += text;
    },
  };
  return { world, io };
}

test('a job of less than a second says nothing', async () => {
  const { world, io } = worldOf(true);
  await withProgress(io, (progress) => {
    world.clock = 999;
    progress('almost done');
  });
  expect(world.said).toBe('');
});

test('a longer one says its newest step, once a second', async () => {
  const { world, io } = worldOf(true);
  await withProgress(io, (progress) => {
    for (let step = 1; step <= 30; step += 1) {
      world.clock = step * 100;
      progress(`step ${String(step)}`);
    }
  });
  expect(world.said).toBe('step 10 …\nstep 20 …\nstep 30 …\n');
});

test('a step that goes on is said while it does, and not when all is over', async () => {
  vi.useFakeTimers();
  try {
    const { world, io } = worldOf(true);
    await withProgress(io, async (progress) => {
      progress('a long step');
      await vi.advanceTimersByTimeAsync(999);
      expect(world.said).toBe('');
      world.clock = 1000;
      await vi.advanceTimersByTimeAsync(1);
      expect(world.said).toBe('a long step …\n');
      progress('a short one');
    });
    await vi.advanceTimersByTimeAsync(5000);
    expect(world.said).toBe('a long step …\n');
  } finally {
    vi.useRealTimers();
  }
});

test('nobody looks, nothing is said', async () => {
  const { world, io } = worldOf(false);
  await withProgress(io, (progress) => {
    world.clock = 5000;
    progress('a step');
  });
  expect(world.said).toBe('');
});

test('a folder tells how many of its files have been read', () => {
  const steps: string[] = [];
  const files = new Map([
    ['a', '1'],
    ['b', '2'],
  ]);
  const folder = countedFolder(memoryFolder(files), (step) => steps.push(step));
  for (const { path } of folder.list()) folder.read(path);
  expect(steps).toStrictEqual(['reading: 1 of 2 files', 'reading: 2 of 2 files']);
});
