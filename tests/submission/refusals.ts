import { createHash } from 'node:crypto';

import { expect } from 'vitest';

import type { Instant } from '../../pipeline/model/index.js';
import { recordAnswer } from '../../pipeline/submission/index.js';
import { filesBelow } from '../release/site-at.js';

/** One digest over the names and bytes of all files. */
function digestOfAll(root: string): string {
  const hash = createHash('sha256');
  for (const [path, bytes] of filesBelow(root)) {
    hash.update(`${path}\n${String(bytes.length)}\n`).update(bytes);
  }
  return hash.digest('hex');
}

/** Why a decision file is refused. It must be, and no byte below the content folder may change. */
export async function whyRefused(
  root: string,
  octets: Uint8Array,
  now: Instant,
): Promise<readonly string[]> {
  const before = digestOfAll(root);
  const outcome = await recordAnswer({ contentPath: root, now, octets, dryRun: false });
  expect(digestOfAll(root)).toBe(before);
  expect(outcome.done).toBe(false);
  return outcome.done ? [] : outcome.why;
}
