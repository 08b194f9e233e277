import type { PublicCard, PublicData, PublicSet, PublicSubset } from '../../../schema/index.js';
import { SiteError } from './site-error.js';

/** Letters and digits, parted by single dots, hyphens or underscores: no `..`, nothing hidden. */
const SEGMENT = /^[A-Za-z0-9]+(?:[._-][A-Za-z0-9]+)*$/;
const LONGEST_SEGMENT = 128;
const IMAGE = /\.(?:avif|jpg|png|webp)$/;

/** What stands beside the sets at the top of the site. */
const RESERVED = new Set([
  '404.html',
  'about',
  'assets',
  'checklist.schema.json',
  'corrections',
  'data.json',
  'data.schema.json',
  'feed.atom',
  'index.html',
  'lifts.ics',
  'new',
  'release.json',
  'share.png',
  'signers',
  'sitemap.xml',
  'sw.js',
]);

/** Whether a path below the site, parted by `/`, is one that the site may have. */
export function isSitePath(path: string): boolean {
  return path.split('/').every((part) => part.length <= LONGEST_SEGMENT && SEGMENT.test(part));
}

/**
 * Paths that a file system that does not tell capitals from small letters would take for one.
 *
 * @returns one sentence for each path that was there before
 */
export function pathsThatMeet(paths: Iterable<string>): readonly string[] {
  const seen = new Map<string, string>();
  const faults: string[] = [];
  for (const path of paths) {
    const folded = path.normalize('NFC').toLowerCase();
    const before = seen.get(folded);
    if (before === undefined) seen.set(folded, path);
    else faults.push(`${path} and ${before} are the same address`);
  }
  return faults;
}

/**
 * Checks every address that the data give before a page is made of it.
 *
 * @throws SiteError with one line for each fault
 */
export function checkAddresses(data: PublicData): void {
  const faults = [
    ...data.sets.flatMap(setFaults),
    ...pathsThatMeet(data.sets.map((set) => set.id)),
    ...pathsThatMeet(data.sets.flatMap(pagesOf)),
  ];
  if (faults.length > 0) throw new SiteError(faults.join('\n'));
}

/** Names of the picture files that the data ask for. */
export function imagesOf(data: PublicData): ReadonlySet<string> {
  const cards = data.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
  return new Set(cards.flatMap((card) => card.image?.files.map(({ file }) => file) ?? []));
}

function setFaults(set: PublicSet): readonly string[] {
  const faults = isSegment(set.id) ? [] : [`a set cannot have the address ${quote(set.id)}`];
  return [...faults, ...set.subsets.flatMap((subset) => subsetFaults(set, subset))];
}

function subsetFaults(set: PublicSet, subset: PublicSubset): readonly string[] {
  const faults = SEGMENT.test(subset.id)
    ? []
    : [`a subset cannot have the address ${quote(subset.id)}`];
  return [
    ...faults,
    ...subset.cards.flatMap((card) => cardFaults(`${set.id}/${subset.id}/`, card)),
  ];
}

function cardFaults(folder: string, card: PublicCard): readonly string[] {
  const faults = [];
  if (card.page !== null && !isCardPage(folder, card.page)) {
    faults.push(`a card of ${folder} cannot have the address ${quote(card.page)}`);
  }
  for (const { file } of card.image?.files ?? []) {
    if (!isSitePath(file) || !IMAGE.test(file)) faults.push(`${quote(file)} is no picture file`);
  }
  return faults;
}

function isSegment(id: string): boolean {
  return isSitePath(id) && !id.includes('/') && !RESERVED.has(id.toLowerCase());
}

function isCardPage(folder: string, page: string): boolean {
  if (!page.startsWith(folder) || !page.endsWith('/')) return false;
  const last = page.slice(folder.length, -1);
  return isSitePath(last) && !last.includes('/');
}

function pagesOf(set: PublicSet): readonly string[] {
  return set.subsets.flatMap((subset) => subset.cards.flatMap((card) => card.page ?? []));
}

function quote(text: string): string {
  return JSON.stringify(text);
}
