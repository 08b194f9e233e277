import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

import { afterAll, beforeAll, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { placeContent, type Placed } from '../demo/copy.js';
import { runMain } from './run-main.js';

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(
    sampleWith(edited('one/plan.yaml', ['stage: locked', 'stage: locked\nreadingAge: 8'])),
  );
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

it('prints how hard each bio is, for the house', async () => {
  const { code, stdout, stderr } = await runMain(['status', '--readability'], placed.root);
  expect({ code, stderr }).toEqual({ code: 0, stderr: '' });
  const lines = stdout.split('\n');
  expect(lines[0]).toMatch(/^INTERNAL/);
  // "The quay stands in water to the knee.": 8 words, 9 syllables.
  const [quay = ''] = lines.filter((line) => line.includes('The Quay'));
  expect(quay.replace(/\s+/gu, ' ').trim()).toBe('0.8 6 103.5 8 1 9 1 The Quay');
  expect(lines.filter((line) => /The (?:Quay|Lamp|Chart)/u.test(line))).toHaveLength(3);
});

it('writes the picture beside it, marked too', async () => {
  const run = await runMain(['status', '--readability', 'grades.svg'], placed.root);
  expect(run).toMatchObject({ code: 0, stderr: 'wrote grades.svg\n' });
  const file = join(placed.root, 'grades.svg');
  expect(existsSync(file)).toBe(true);
  const picture = readFileSync(file, 'utf8');
  expect(picture).toMatch(/^<svg /);
  expect(picture).toContain('INTERNAL');
  expect(picture.match(/<circle/g)).toHaveLength(3);
  expect(picture).toContain('The Quay');
});
