import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { diskFolder, readReview, validate } from '../../pipeline/read/index.js';
import { LedgerEntry, StatusSheet } from '../../schema/index.js';
import { runCli, type CliRun } from '../setup/run-cli.js';
import { DEMO_NOW } from './day.js';
import { makeHistory } from './history/make.js';
import { ROUNDS } from './history/rounds.js';

const content = fileURLToPath(new URL('../../content/', import.meta.url)).replace(/\/$/, '');
const built: typeof import('../../pipeline/cli/index.js') = await import(
  new URL('../../dist/pipeline/cli/index.js', import.meta.url).href
);

/** What a line of a ledger says, without its place in the chain. */
function saidIn(ledger: string): readonly object[] {
  return readFileSync(ledger, 'utf8')
    .trim()
    .split('\n')
    .map((line) => {
      const entry = validate(LedgerEntry, JSON.parse(line));
      if (!entry.ok) throw new Error(line);
      return { ...entry.value, previous: 'before' };
    });
}

describe('the demo’s approval history', () => {
  let place: string;
  beforeAll(() => {
    place = mkdtempSync(join(tmpdir(), 'holdback-history-'));
  });
  afterAll(() => {
    rmSync(place, { recursive: true, force: true });
  });

  it('is whole, with two rounds and what went out since', () => {
    const { ledger, faults } = readReview(diskFolder(content));
    expect(faults).toEqual([]);
    expect(ledger.entries.map(({ kind }) => kind)).toEqual([
      'submitted',
      'submitted',
      'decided',
      'decided',
      'submitted',
      'decided',
      'released',
      'released',
    ]);
    const at = ledger.entries.map((entry) => Date.parse(entry.at.replace(/\[.*$/, '')));
    expect(at).toEqual([...at].sort((a, b) => a - b));
  });

  it('is what the status sheet shows', async () => {
    const { stdout } = await run(content, ['status', '--format', 'json']);
    const sheet = validate(StatusSheet, JSON.parse(stdout));
    if (!sheet.ok) throw new Error(stdout);
    const subsets = sheet.value.sets.flatMap((set) => set.subsets);
    const count = (state: 'approved' | 'not issued' | 'handed in'): number =>
      subsets.reduce((sum, { states }) => sum + states[state], 0);
    expect([count('approved'), count('not issued'), count('handed in')]).toEqual([187, 1, 0]);
  });

  it('comes out again of a packet that is opened, read and answered in a browser', async () => {
    const [round] = ROUNDS;
    if (!round) throw new Error('there is a first round');
    const first = { ...round, packets: round.packets.slice(0, 1) };
    const made = await makeHistory(built.main, content, place, { rounds: [first], releases: [] });
    const packet = 'packets/yewande-1.json';
    expect(readFileSync(join(made, packet), 'utf8')).toBe(
      readFileSync(join(content, 'review', packet), 'utf8'),
    );
    const [submitted, , decided] = saidIn(join(content, 'review/ledger.jsonl'));
    expect(saidIn(join(made, 'ledger.jsonl'))).toEqual([submitted, decided]);
    const where = join(made, '..');
    const { stdout } = await run(where, ['ledger', 'show', 'high-water/benches/be02']);
    expect(stdout).toMatch(/yewande {2}image [0-9a-f]{6}: approved\n/);
  });
});

function run(where: string, args: readonly string[]): Promise<CliRun> {
  return runCli([...args, '--content', where], { cwd: where, now: DEMO_NOW });
}
