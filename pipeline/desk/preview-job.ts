import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';

import { readInstant } from '../model/index.js';
import type { Draw } from '../out/site/index.js';
import type { Folder } from '../read/index.js';
import { makeSite, prepareInSteps, type Refusal as Unpublished } from '../release/index.js';
import { realDisk, stagePlain } from '../write/index.js';
import { JobFailure, type Working } from './jobs.js';
import { servePreview, type Preview } from './preview.js';
import type { PreviewRequest } from './protocol.js';

/** What a preview is made of. */
export interface PreviewGround {
  readonly folder: Folder;
  readonly now: number;
  readonly draw: Draw;
  /** A folder for things that are thrown away. */
  readonly temporary: string;
  /** Why nothing was made, in lines. */
  readonly sayRefusal: (refusal: Unpublished) => string;
}

/**
 * The public site of an instant, on a port of its own, from a folder for its owner's eyes that goes
 * when it is closed. It is made and searched as for a release, but nothing is noted anywhere: it is
 * none. Of an instant to come every page says so.
 * @throws JobFailure where it cannot be made.
 */
export async function makePreview(
  ground: PreviewGround,
  { at: written, policy = 'hold' }: PreviewRequest,
  { step, pause, signal }: Working,
): Promise<Preview> {
  const reading = readInstant(written);
  if (!reading.ok) throw new JobFailure(`${written}: ${reading.why}`);
  step('reading and checking');
  const steps = prepareInSteps(ground.folder);
  let next = steps.next();
  while (next.done !== true) {
    await pause();
    next = steps.next();
  }
  const prepared = next.value;
  if ('why' in prepared) throw new JobFailure(ground.sayRefusal(prepared));
  const made = await makeSite(prepared, {
    at: reading.at,
    preview: reading.at > ground.now,
    policy,
    draw: ground.draw,
    signal,
    progress: step,
    whole: async (job) => {
      await pause();
      return job();
    },
  });
  if (!made.ok) throw new JobFailure(ground.sayRefusal(made.unmade));
  signal.throwIfAborted();
  const place = mkdtempSync(join(ground.temporary, 'holdback-preview-'));
  const remove = (): void => {
    rmSync(place, { recursive: true, force: true });
  };
  try {
    stagePlain(realDisk, join(place, 'site'), made.files, 'private')();
    const preview = await servePreview(join(place, 'site'), 0);
    const close = async (): Promise<void> => {
      await preview.close();
      remove();
    };
    return { address: preview.address, close };
  } catch (error) {
    remove();
    throw error;
  }
}
