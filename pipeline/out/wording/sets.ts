import type { PublicData, PublicParallel, PublicSet } from '../../../schema/index.js';
import { runWords, series } from './counts.js';
import { regionName } from './kinds.js';
import { dayWords, momentWords } from './times.js';

/** The title of a set in two: what it opens with of the property's title, and the rest. */
export function titleParts(set: PublicSet, data: PublicData): readonly [string, string] {
  const opening = `${data.property.title}: `;
  if (!set.title.startsWith(opening)) return ['', set.title];
  return [opening, set.title.slice(opening.length)];
}

/** "16 April 2027 (UK), 17 April 2027 (AU)"; nothing for a set without a street date. */
export function streetWords({ street }: PublicSet, zone: string): string {
  return street
    .map(({ region, at }) => {
      return dayWords(at, zone) + (region === null ? '' : ` (${regionName(region)})`);
    })
    .join(', ');
}

/** "84 copies of each"; nothing where it is not told. */
export function parallelRun({ run }: PublicParallel): string {
  if (run === null) return '';
  return run === 1 ? runWords(run) : `${runWords(run)} of each`;
}

/** What a parallel is of, by the titles of the subsets. */
export function parallelOf({ of }: PublicParallel, { subsets }: PublicSet): string {
  return series(of.map((id) => subsets.find((subset) => subset.id === id)?.title ?? id));
}

/** "As of 14 May 2027, 20:00 (London time)." with what else is to be known of a list. */
export function asOfWords({ asOf, property }: PublicData): string {
  return `As of ${momentWords(asOf, property.zone)}. The list may change.`;
}

/** What a preview says of itself; null for what is public. */
export function previewWords({ preview, asOf, property }: PublicData): string | null {
  if (!preview) return null;
  return `Preview: not to be passed on before ${momentWords(asOf, property.zone)}.`;
}

/** The legal line, and the terms of the data. */
export function rightsLines({ property }: PublicData): readonly string[] {
  return [property.legal, property.dataTerms].filter((line) => line !== null);
}
