import { join } from 'node:path';

import { expect, it } from 'vitest';

import { auditSite } from '../../pipeline/audit/index.js';
import { copyText, stepsUntil } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { demoFiles, placeContent } from '../demo/copy.js';
import { filesBelow, publishAt } from '../release/site-at.js';

const files = demoFiles({ art: true });
const content = readContent(memoryFolder(files));
const property = content.property?.value;
const STEPS = property ? stepsUntil(property, content.sets, Date.parse('2028-01-01')) : [];

it('lets the demo out at each of its lifts, and finds in the last what was held before', async () => {
  await using placed = await placeContent(files);
  expect(STEPS.length).toBeGreaterThan(6);
  for (const step of STEPS) {
    const outcome = await publishAt(placed, step);
    expect(outcome).toMatchObject({ done: true });
  }
  const last = filesBelow(join(placed.root, 'site'));
  const [first = 0] = STEPS;
  const found = new Set(auditSite(last, content, first).map(({ from }) => from));
  const held = content.sets.flatMap((set) =>
    set.cards
      .filter(({ front, bio }) => front.spoiler !== 'open' && copyText(bio) !== '')
      .map((card) => `bio of ${card.set}/${card.subset}/${card.id}`),
  );
  expect(held.length).toBeGreaterThan(10);
  expect(held.filter((from) => !found.has(from))).toEqual([]);
}, 120_000);
