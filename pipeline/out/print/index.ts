import type { PublicData, PublicSet } from '../../../schema/index.js';
import { checklistSheet } from './checklist.js';
import { counterSheet } from './counter.js';
import type { PrintFaces } from './faces.js';
import type { Paper } from './papers.js';

export { openPrintFaces, type CutFiles, type PrintFaces, type PrintFiles } from './faces.js';
export type { Paper } from './papers.js';

const KINDS = { checklist: checklistSheet, counter: counterSheet } as const;
const PAPERS = ['a4', 'letter'] as const satisfies readonly Paper[];

/**
 * The sheets that collectors and shops print, as PDF: of each set a checklist and a counter sheet,
 * each on both papers. The same data and fonts give the same bytes.
 *
 * @returns every sheet: bytes by path below the site, in the order of the paths
 * @throws RangeError for an instant or a zone that cannot be read
 */
export async function printedSheets(
  data: PublicData,
  faces: PrintFaces,
): Promise<ReadonlyMap<string, Uint8Array>> {
  const sheets: [string, Uint8Array][] = [];
  for (const set of data.sets) sheets.push(...(await sheetsOf(data, set, faces)));
  return new Map(sheets.sort(([a], [b]) => (a < b ? -1 : 1)));
}

async function sheetsOf(
  data: PublicData,
  set: PublicSet,
  faces: PrintFaces,
): Promise<readonly [string, Uint8Array][]> {
  const sheets: [string, Uint8Array][] = [];
  for (const [kind, draw] of Object.entries(KINDS)) {
    for (const paper of PAPERS) {
      sheets.push([`${set.id}/${kind}-${paper}.pdf`, await draw(data, set, paper, faces)]);
    }
  }
  return sheets;
}
