import type { Files } from './rule.js';

/**
 * A small property on which every rule is content: what the examples of a rule change. Two base
 * cards, an insert set of one; the levels `open`, `later` and, without a trace, `last`.
 */
const SAMPLE: Readonly<Record<string, string>> = {
  'property.yaml': `id: lake
title: The Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known }
  - { id: later, label: Episode 1, lift: "2027-04-16T20:00:00+01:00[Europe/London]" }
  - { id: last, label: Episode 2, lift: "2027-06-04T20:00:00+01:00[Europe/London]", held: absent }
embargoes:
  - { id: guest, label: A guest, lift: unset }
approvals: none
beats:
  - { at: 1/1, says: The water rises, level: open }
legal: { line: "© 2027 Lantern & Oar" }
`,
  'people.yaml': `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }
`,
  'one/plan.yaml': `id: one
title: One
spoiler: open
stage: locked
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: 2 }, order: story, coverage: { from: 1/1, to: 1/9 } }
  - { id: extra, title: Extra, group: inserts, numbers: { prefix: X-, from: 1, to: 1 }, bio: { words: { min: 3, max: 20 }, characters: { max: 90 } } }
totals: { base: 2, inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 } }
style: { english: british }
`,
  'one/cards/base/a1.md': `---
number: "1"
name: The Quay
spoiler: open
story: 1/1
---
The quay stands in water to the knee.
`,
  'one/cards/base/a2.md': `---
number: "2"
name: The Lamp
spoiler: open
story: 1/4
---
A lamp that nobody lit is burning.
`,
  'one/cards/extra/b1.md': `---
number: X-1
name: The Chart
spoiler: open
---
Ink, and a thumbprint of the lake.
`,
};

/** The sample with files laid over it; null takes a file away. */
export function sampleWith(files: Files): ReadonlyMap<string, string> {
  const all = { ...SAMPLE, ...files };
  return new Map(
    Object.entries(all).flatMap(([path, text]) => (text === null ? [] : [[path, text] as const])),
  );
}

/**
 * A file of the sample with some words of it replaced, each where it first stands.
 * @throws RangeError if the file or the words are not there.
 */
export function edited(file: string, ...changes: readonly [from: string, to: string][]): Files {
  const start = SAMPLE[file];
  if (start === undefined) throw new RangeError(`the sample has no ${file}`);
  const text = changes.reduce((sum, [from, to]) => {
    if (!sum.includes(from)) throw new RangeError(`${file} has no "${from}"`);
    return sum.replace(from, () => to);
  }, start);
  return { [file]: text };
}
