import { readFileSync } from 'node:fs';
import { join } from 'node:path';

import { describe, expect, it } from 'vitest';

import { withEdits } from '../demo/apply.js';
import { demoFiles, placeContent } from '../demo/copy.js';
import { pageLines } from '../proof/tools.js';
import { runMain } from './run-main.js';

const files = demoFiles({ art: true, approvals: true });
const TYPO = {
  'high-water/cards/crew/c006.md': [['sorted by how they feel', 'sorted by the way they feel']],
} as const;
const PROMO_TYPO = {
  'high-water/cards/promos/pr01.md': [['wipe your feet', 'wipe your boots']],
} as const;
const PROOF = ['proof', '--final', '--kind', 'deck', '--out', 'proof.pdf'] as const;

describe('a final proof', () => {
  it('is made of what is approved', async () => {
    await using placed = await placeContent(files);
    const run = await runMain([...PROOF], placed.root);
    expect([run.code, run.stderr]).toEqual([0, '']);
  });

  it('is refused for a late typo fix, with the words that were changed', async () => {
    await using placed = await placeContent(withEdits(files, TYPO));
    const run = await runMain([...PROOF], placed.root);
    expect(run.code).toBe(1);
    const { stderr } = run;
    expect(stderr).toContain('there is no final proof: not everything that prints is approved\n');
    expect(stderr).toMatch(
      /high-water\/crew\/c006, copy [0-9a-f]{6}: Amara Linde approved version/,
    );
    expect(stderr).toContain('sorted by [-how-]{+the+} {+way +}they feel');
    const other = await runMain([...PROOF, '--subset', 'charts'], placed.root);
    expect(other.code).toBe(0);
  });
});

describe('a proof that is not final', () => {
  it('says beside each card how far its approval is', async () => {
    await using placed = await placeContent(withEdits(files, PROMO_TYPO));
    const run = await runMain(['proof', '--subset', 'promos', '--out', 'p.pdf'], placed.root);
    expect(run.code).toBe(0);
    const text = pageLines(readFileSync(join(placed.root, 'p.pdf'))).join('\n');
    expect(text.match(/(?:Approved|Not approved): [a-z]+(?:, [a-z]+)*/g)).toEqual([
      'Not approved: copy',
      'Approved: copy, image, layout',
    ]);
  });
});

describe('publish', () => {
  it(
    'refuses a late typo fix, holds it, or shows what was approved',
    { timeout: 240_000 },
    async () => {
      await using placed = await placeContent(withEdits(files, TYPO));
      const publish = ['publish', '--plain', '--no-discreet', '--out'];
      const refused = await runMain([...publish, 'a'], placed.root);
      expect([refused.code, refused.stdout]).toEqual([1, '']);
      expect(refused.stderr).toContain('sorted by [-how-]{+the+} {+way +}they feel');
      const held = await runMain([...publish, 'b', '--unapproved', 'hold'], placed.root);
      expect(held.stdout).toContain(
        'shown as held, since they are not approved:\n  high-water/crew/c006\n',
      );
      const back = await runMain([...publish, 'c', '--unapproved', 'last-approved'], placed.root);
      expect(back.stdout).toContain('shown as they were last approved:\n  high-water/crew/c006\n');
      expect(back.code).toBe(0);
    },
  );
});
