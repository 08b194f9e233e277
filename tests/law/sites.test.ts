import { fileURLToPath } from 'node:url';

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { buildSite } from '../../pipeline/out/site/index.js';
import { diskFolder, readArt, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { diceOf, draftOf, inSomeOrder } from './edit.js';
import { followed } from './followed.js';
import { editsFor } from './hidden-edits.js';
import { releasedOf } from './outputs.js';
import { artBytes } from './plain.js';
import { looking } from './property.js';
import { apart, differenceOf, matterOf, type Matter } from './sites.js';

const DEMO = fileURLToPath(new URL('../../content', import.meta.url));

/** So many kinds of edits are made on top of one another before the second site is made. */
const TOGETHER = 40;

/** Of so many sites one has its sheets drawn: they are made of the same data as all the rest. */
const PRINTED_EVERY = 10;

/**
 * A site says what was new at the steps before, so the edits are those that are hidden from whoever
 * has seen all its releases.
 */
describe('whole sites', () => {
  test('300 contents give the same site, byte for byte, after hidden edits', async () => {
    const tally = new Map(editsFor('public').map(({ name }) => [name, 0]));
    let sites = 0;
    await fc.assert(
      fc.asyncProperty(looking('public'), fc.nat(), async ({ plain, eye }, seed) => {
        const draft = draftOf(plain);
        const all = followed(plain, eye);
        const made: string[] = [];
        for (const { name, change } of inSomeOrder(editsFor('public'), seed)) {
          if (made.length === TOGETHER) break;
          if (change(draft, all, diceOf(seed, name))) made.push(name);
        }
        expect(await apart(plain, draft, eye.at, sites % PRINTED_EVERY === 0)).toBeNull();
        for (const name of made) tally.set(name, (tally.get(name) ?? 0) + 1);
        sites++;
      }),
      { numRuns: 300, endOnFailure: true },
    );
    expect(sites).toBe(300);
    expect([...tally].filter(([, times]) => times < 10)).toEqual([]);
  }, 300_000);

  test('a visible edit changes the site', async () => {
    const [looked] = fc.sample(looking('public'), { numRuns: 1, seed: 20270604 });
    if (!looked) throw new Error('nothing was generated');
    const draft = draftOf(looked.plain);
    draft.property.title += ' again';
    expect(await apart(looked.plain, draft, looked.eye.at)).toContain('again');
  });

  test('made in this process and in one of its own they are the same: the demo', async () => {
    const folder = diskFolder(DEMO);
    const released = select(readContent(folder));
    if (!released) throw new Error('the demo can be released');
    const read = (source: string): Uint8Array => readArt(folder, source);
    await sameInBoth(await matterOf(released, DEMO_NOW, read));
  });

  test('made in this process and in one of its own they are the same: generated', async () => {
    const looked = fc
      .sample(looking('public'), { numRuns: 50, seed: 20270604 })
      .find(({ plain }) => JSON.stringify(plain.property.site?.shows).includes('front'));
    if (!looked) throw new Error('none shows art');
    const { plain, eye } = looked;
    const read = (source: string): Uint8Array => artBytes(plain, source);
    await sameInBoth(await matterOf(releasedOf(plain), eye.at, read));
  });
});

async function sameInBoth(matter: Matter | null): Promise<void> {
  if (!matter) throw new Error('nothing is public by then');
  const { data, images } = matter;
  expect(images.size).toBeGreaterThan(0);
  const here = await buildSite(data, { images, inThisProcess: true });
  const child = await buildSite(data, { images });
  expect(differenceOf(here, child)).toBeNull();
  expect(here.size).toBeGreaterThan(30);
}
