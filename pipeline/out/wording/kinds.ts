import type { PublicSubset } from '../../../schema/index.js';

const FOUND: ReadonlyMap<string, string> = new Map([
  ['pack', 'found in packs'],
  ['box', 'found in boxes'],
  ['redemption', 'found as a redemption card'],
  ['event', 'handed out at an event'],
]);

/** "Base set, found in packs": the group of a subset, and how a collector comes by its cards. */
export function kindWords({ group, found }: PublicSubset): string {
  return found === null ? groupName(group) : `${groupName(group)}, ${foundWords(found)}`;
}

/** "Base set" for base, "Box toppers" for box-toppers. */
export function groupName(group: string): string {
  return group === 'base' ? 'Base set' : capital(group.replaceAll('-', ' '));
}

/** "found in packs" for pack. */
export function foundWords(way: string): string {
  return FOUND.get(way) ?? `found: ${way}`;
}

/** "UK" for uk, "Benelux" for benelux. */
export function regionName(region: string): string {
  return region.length <= 3 ? region.toUpperCase() : capital(region);
}

/** With a capital letter first. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
