import { earlierViews, view } from '../../pipeline/gate/index.js';
import type { PublicData } from '../../schema/index.js';
import {
  artOf,
  buildSite,
  drawPictures,
  publicData,
  STEPS_TOLD,
} from '../../pipeline/out/site/index.js';
import type { Released } from '../../pipeline/select/index.js';
import { stubPicture } from '../release/site-at.js';
import { releasedOf } from './outputs.js';
import { artBytes, type Plain } from './plain.js';

export type Files = ReadonlyMap<string, Uint8Array>;

/** What a site is made of: the public's data, and the pictures that they ask for. */
export interface Matter {
  readonly data: PublicData;
  readonly images: Files;
}

/** The matter of the public site of an instant; null before anything is public. */
export async function matterOf(
  released: Released,
  at: number,
  art: (source: string) => Uint8Array,
): Promise<Matter | null> {
  const seen = view(released, { kind: 'public', at });
  if (!seen) return null;
  const pictures = await drawPictures(artOf(seen), art, (drawn, width) =>
    Promise.resolve({ bytes: stubPicture(drawn, width), width, height: Math.round(width * 1.4) }),
  );
  const earlier = earlierViews(released, seen, STEPS_TOLD);
  return { data: publicData(seen, earlier, pictures.bySource, false), images: pictures.files };
}

/** The whole public site of a content at an instant, made in this process; null before it is public. */
async function siteOf(plain: Plain, at: number, printed: boolean): Promise<Files | null> {
  const matter = await matterOf(releasedOf(plain), at, (source) => artBytes(plain, source));
  if (!matter) return null;
  const { data, images } = matter;
  const drawShare = (svg: Uint8Array) => Promise.resolve(svg);
  return buildSite(data, { images, drawShare, printed, inThisProcess: true });
}

/**
 * What tells the public sites of two contents apart at an instant, both made at once.
 * @param printed whether the sheets to print are made too, which take far longer than the rest.
 */
export async function apart(
  before: Plain,
  after: Plain,
  at: number,
  printed = false,
): Promise<string | null> {
  const [was, is] = await Promise.all([siteOf(before, at, printed), siteOf(after, at, printed)]);
  if (!was || !is) throw new Error('nothing is public by then');
  return differenceOf(was, is);
}

/**
 * What tells two sites apart: names, order, bytes. Of a text the first line that differs is told.
 * @returns null if nothing does
 */
export function differenceOf(a: Files, b: Files): string | null {
  const [names, others] = [[...a.keys()], [...b.keys()]];
  if (names.join('\n') !== others.join('\n')) {
    const only = (some: string[], rest: string[]) => some.filter((name) => !rest.includes(name));
    const [gone, come] = [only(names, others), only(others, names)];
    return `gone: ${gone.join(', ')}; come: ${come.join(', ')}; or another order`;
  }
  for (const [name, bytes] of a) {
    const other = b.get(name);
    if (other && Buffer.compare(bytes, other) !== 0) return `${name}: ${lineApart(bytes, other)}`;
  }
  return null;
}

function lineApart(a: Uint8Array, b: Uint8Array): string {
  const [lines, others] = [a, b].map((bytes) => new TextDecoder().decode(bytes).split('\n'));
  const at = (lines ?? []).findIndex((line, index) => line !== others?.[index]);
  return `${lines?.[at] ?? ''} | ${others?.[at] ?? ''}`;
}
