import type { Card, Content, Fault } from '../../pipeline/model/index.js';
import { placeOf } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';

const PROPERTY = `id: lake
title: The Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels: [{ id: open }, { id: later, lift: "2027-04-16T20:00:00+01:00[Europe/London]" }]
approvals: none
`;

const PLAN = `id: quay
title: The Quay
spoiler: open
stage: writing
subsets: [{ id: base, title: Base, group: base, numbers: { from: 1, to: 3 } }]
`;

/** Where the only card of the small property lies. */
export const CARD = 'quay/cards/base/b001.md';

/** A card that is as it should be. */
export const GOOD_CARD = `---
number: "1"
name: Odalys Thrane
spoiler: open
---
The quay stands in water to the knee.
`;

export type Files = Readonly<Record<string, string | Uint8Array | null>>;

/** The small property with some files changed, added or (null) taken away. */
export function filesWith(changes: Files): Map<string, string | Uint8Array> {
  const files = new Map<string, string | Uint8Array>([
    ['property.yaml', PROPERTY],
    ['quay/plan.yaml', PLAN],
    [CARD, GOOD_CARD],
  ]);
  for (const [path, text] of Object.entries(changes)) {
    if (text === null) files.delete(path);
    else files.set(path, text);
  }
  return files;
}

export function contentWith(changes: Files): Content {
  return readContent(memoryFolder(filesWith(changes)));
}

/** A fault with its place in lines and columns: `file:line:column-column`, or over lines. */
export interface Told {
  readonly rule: string;
  readonly at: string;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
  readonly fix?: string;
}

export function told({ spot, ...fault }: Fault): Told {
  return { ...fault, at: `${spot.source.file}:${rangeText(spot)}` };
}

/** `3:7-12`; `3:7-4:1` over lines. */
export function rangeText({ source, from, to }: Fault['spot']): string {
  const start = placeOf(source.text, from);
  const end = placeOf(source.text, to);
  const last = start.line === end.line ? '' : `${String(end.line)}:`;
  return `${String(start.line)}:${String(start.column)}-${last}${String(end.column)}`;
}

/** The card at `CARD` if it could be read, and everything wrong with the content. */
export function readCard(text: string | Uint8Array): { card: Card | undefined; faults: Told[] } {
  const content = contentWith({ [CARD]: text });
  return { card: content.sets[0]?.cards[0], faults: content.faults.map(told) };
}
