import { beforeAll, describe, expect, it } from 'vitest';

import { auditSite } from '../../pipeline/audit/index.js';
import { view } from '../../pipeline/gate/index.js';
import { copyText, stepsUntil } from '../../pipeline/model/index.js';
import { artOf, buildSite, drawPictures, publicData } from '../../pipeline/out/site/index.js';
import { memoryFolder, readArt, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { demoFiles } from '../demo/copy.js';
import { encodeStub } from '../release/site-at.js';

const folder = memoryFolder(demoFiles({ art: true }));
const content = readContent(folder);
const property = content.property?.value;
const STEPS = property ? stepsUntil(property, content.sets, Date.parse('2028-01-01')) : [];

/** The demo's site at each step of time: each is made once. */
const sites = new Map<number, ReadonlyMap<string, Uint8Array>>();
beforeAll(async () => {
  const released = select(content);
  if (!released) throw new Error('the demo cannot be released');
  const art = (source: string): Uint8Array => readArt(folder, source);
  for (const at of STEPS) {
    const seen = view(released, { kind: 'public', at });
    if (!seen) throw new Error(`nothing is public at ${String(at)}`);
    const pictures = await drawPictures(artOf(seen), art, encodeStub);
    const data = publicData(seen, [], pictures.bySource, false);
    sites.set(at, await buildSite(data, { images: pictures.files, inThisProcess: true }));
  }
});

describe('the demo', () => {
  it.each(STEPS.map((at) => [new Date(at).toISOString(), at]))('is quiet at %s', (_day, at) => {
    expect(auditSite(sites.get(at) ?? new Map(), content, at)).toEqual([]);
  });

  it('tells in its last site what was held in its first', () => {
    const [first = 0] = STEPS;
    const last = sites.get(STEPS.at(-1) ?? 0) ?? new Map<string, Uint8Array>();
    const found = new Set(auditSite(last, content, first).map(({ from }) => from));
    const held = content.sets.flatMap((set) =>
      set.cards
        .filter(({ front, bio }) => front.spoiler !== 'open' && copyText(bio) !== '')
        .map((card) => `bio of ${card.set}/${card.subset}/${card.id}`),
    );
    expect(STEPS.length).toBeGreaterThan(6);
    expect(held.length).toBeGreaterThan(10);
    expect(held.filter((from) => !found.has(from))).toEqual([]);
  });
});
