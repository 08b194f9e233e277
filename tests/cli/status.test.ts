import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { runMain } from './run-main.js';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(
    sampleWith({
      ...edited('property.yaml', [
        'approvals: none',
        'approvals:\n  - { parts: [copy, image, layout, web, sales], roles: [licensor] }\ncuts: [{ id: cut-1, received: "2026-06-01" }]',
      ]),
      ...edited('one/cards/base/a1.md', ['spoiler: open', 'spoiler: open\nwriter: jonah']),
      ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: open\ncheckedAgainst: cut-1']),
    }),
  );
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

const status = (...more: string[]) => runMain(['status', ...more], placed.root);

describe('status', () => {
  it('tells what is not approved of each release to come', async () => {
    const run = await status();
    expect(run).toMatchObject({ code: 0, stderr: '' });
    expect(run.stdout).toMatch(/^INTERNAL\n\nOne \(locked\)\nSubset {2}no copy {2}draft/);
    expect(run.stdout).toContain('    not approved by licensor: 3 cards\n');
    expect(run.stdout).toContain('Writers:\n  Jonah Prewett: 1 draft\n');
  });

  it('lists cards of a writer, and those that were not read against the current cut', async () => {
    expect(await status('--mine', 'jonah')).toEqual({
      code: 0,
      stdout: 'INTERNAL\n\nCards of jonah:\n  one/base/a1  1  The Quay: draft\n',
      stderr: '',
    });
    const cut = await status('--cut');
    expect(cut.stdout).toBe(`INTERNAL

Cards that were not read against cut-1:
  one/base/a1  1  The Quay: draft, read against none
  one/extra/b1  X-1  The Chart: draft, read against none
`);
    const both = await status('--cut', '--mine', 'jonah', '--format', 'json');
    expect(JSON.parse(both.stdout)).toMatchObject({
      asked: { cut: 'cut-1', writer: 'jonah', cards: [{ card: 'one/base/a1', state: 'draft' }] },
    });
  });

  it('knows nobody who is not in people.yaml', async () => {
    const run = await status('--mine', 'pim');
    expect(run).toMatchObject({ code: 2, stdout: '' });
    expect(run.stderr).toContain('people.yaml knows no pim');
  });
});
