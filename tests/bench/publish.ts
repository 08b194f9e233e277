import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { auditSite } from '../../pipeline/audit/index.js';
import { view, type View } from '../../pipeline/gate/index.js';
import type { Content } from '../../pipeline/model/index.js';
import {
  buildSite,
  drawPictures,
  loadFonts,
  ownTheme,
  publicData,
  renderSite,
} from '../../pipeline/out/site/index.js';
import { drawnBy, diskFolder, rasterise, readProperty } from '../../pipeline/read/index.js';
import { publish } from '../../pipeline/release/index.js';
import { select } from '../../pipeline/select/index.js';
import type { PublicData } from '../../schema/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { prepareBare, runBare } from './bare.js';
import { inTurn, wallTime, type Result } from './measure.js';

interface Ground {
  readonly content: Content;
  readonly seen: View;
  readonly data: PublicData;
}

function groundOf(content: string): Ground {
  const { content: read } = readProperty(diskFolder(content));
  const released = select(read);
  const seen = released && view(released, { kind: 'public', at: DEMO_NOW });
  if (!seen) throw new Error('the bench property cannot be released');
  return { content: read, seen, data: publicData(seen, [], new Map(), false) };
}

/** The Eleventy stage beside a bare Eleventy that writes the same tree from finished strings. */
export async function benchStage(content: string): Promise<Result> {
  const { data } = groundOf(content);
  const fonts = (await loadFonts(null)).map(({ face }) => face);
  const job = () => renderSite(data, { theme: ownTheme(), fonts, downloads: [] });
  const pages = await job();
  const bare = prepareBare(pages);
  try {
    const times = await inTurn(3, job, () => runBare(bare), wallTime);
    return {
      name: `Eleventy stage, ${String(pages.size)} files`,
      milliseconds: times.job,
      floor: 'bare Eleventy, same tree',
      floorMilliseconds: times.floor,
      goal: 2,
    };
  } finally {
    rmSync(bare, { recursive: true, force: true });
  }
}

/** What a release takes besides its pages, each by itself, in milliseconds. */
export async function partsOfRelease(content: string): Promise<readonly [string, number][]> {
  const { content: read, data } = groundOf(content);
  const images = new Map<string, Uint8Array>();
  const build = (printed: boolean) => buildSite(data, { images, printed, inThisProcess: true });
  const site = await build(true);
  const [withSheets, without] = [await timed(() => build(true)), await timed(() => build(false))];
  const art = new TextEncoder().encode(ART);
  const sources = Array.from({ length: 20 }, (_, at) => String(at));
  const draw = () =>
    drawPictures(
      sources,
      () => art,
      (bytes, width) => rasterise(bytes, width, 'webp'),
    );
  return [
    ['audit', await timed(() => auditSite(site, read, DEMO_NOW))],
    ['sheets to print, PDF', withSheets - without],
    ['20 pictures', await timed(draw)],
  ];
}

const ART =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 250 350"><rect width="250" height="350" fill="#0b6e69"/><circle cx="125" cy="150" r="90" fill="#f6f8f7"/></svg>';

async function timed(job: () => unknown): Promise<number> {
  const start = performance.now();
  await job();
  return performance.now() - start;
}

/** A second publish of the same content, all of it, beside a bare Eleventy. */
export async function benchSecondPublish(content: string): Promise<Result> {
  const folder = mkdtempSync(join(tmpdir(), 'publish-'));
  const again = async (): Promise<void> => {
    const outcome = await publish({
      contentPath: join(folder, 'content'),
      folder: diskFolder(content),
      at: DEMO_NOW,
      now: DEMO_NOW,
      preview: false,
      out: join(folder, 'site'),
      plain: false,
      policy: 'refuse',
      draw: {
        picture: (art, width) => rasterise(art, width, 'webp'),
        share: async (svg) => (await rasterise(svg, 1200, 'png')).bytes,
        by: drawnBy,
      },
    });
    if (!outcome.done) throw new Error(JSON.stringify(outcome.refusal).slice(0, 500));
  };
  const fonts = (await loadFonts(null)).map(({ face }) => face);
  const { data } = groundOf(content);
  const bare = prepareBare(await renderSite(data, { theme: ownTheme(), fonts, downloads: [] }));
  try {
    await again();
    const times = await inTurn(3, again, () => runBare(bare), wallTime);
    return {
      name: 'a second publish, 1,000 cards',
      milliseconds: times.job,
      floor: 'bare Eleventy, same tree',
      floorMilliseconds: times.floor,
      goal: 6,
    };
  } finally {
    rmSync(bare, { recursive: true, force: true });
    rmSync(folder, { recursive: true, force: true });
  }
}

/** How much longer the stage takes for ten times the cards. */
export async function stageGrowth(few: string, many: string): Promise<number> {
  const fonts = (await loadFonts(null)).map(({ face }) => face);
  const [small, large] = [groundOf(few).data, groundOf(many).data];
  const stage = (data: PublicData) => () =>
    renderSite(data, { theme: ownTheme(), fonts, downloads: [] });
  const times = await inTurn(2, stage(large), stage(small), wallTime);
  return times.job / times.floor;
}
