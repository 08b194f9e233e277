/** Words of the lake, forty of a kind, for bios that are worth setting and unlike one another. */
const KINDS = [
  'cold dark damp early empty far flat glad gray green heavy idle kind late lean long loud low mild narrow odd old pale plain quick quiet red rough round short slow small soft steep still tall thin warm wet wide',
  'anchor barge basket boat bucket candle chart chimney cook crate door duck eel ferry gate goose gull hat kettle ladder lamp lantern lock moth net oar otter pail pilot plank pump quay raft rope sail spoon stair swan tub window',
  'answers borrows carries catches counts covers crosses draws empties fills finds follows guards hears hides holds keeps lifts lights loses marks meets mends minds moves names paints passes pulls rings rows seals sees sells sinks steers ties wakes warms washes',
].map((words) => words.split(' '));

/** The word of a kind that a number gives. */
function wordOf(kind: number, number: number): string {
  const words = KINDS[kind] ?? [];
  return words[number % words.length] ?? 'lake';
}

/**
 * A property of so many cards in sets of a thousand: numbers, counts, holds and bios of about fifty
 * words, with nothing for `check` to find. The same number gives the same files.
 */
export function benchProperty(cards: number): Map<string, string> {
  const sets = Math.ceil(cards / 1000);
  const files = new Map<string, string>([
    ['property.yaml', PROPERTY],
    ['people.yaml', PEOPLE],
    ['names.yaml', namesFile()],
    ['backs/standard.yaml', LAYOUT],
  ]);
  for (let set = 0; set < sets; set++) {
    const count = Math.min(1000, cards - set * 1000);
    const id = `set-${String(set + 1)}`;
    files.set(`${id}/plan.yaml`, planOf(id, count));
    for (let number = 1; number <= count; number++) {
      const name = `c${String(number).padStart(4, '0')}`;
      files.set(`${id}/cards/base/${name}.md`, cardOf(number, set));
    }
  }
  return files;
}

const PROPERTY = `id: bench
title: The Long Lake
zone: Europe/London
since: "2026-09-01T09:00:00+01:00[Europe/London]"
levels:
  - { id: open, label: Known }
  - { id: later, label: Later, print: "2027-04-16T09:00:00+01:00[Europe/London]", lift: "2027-04-16T20:00:00+01:00[Europe/London]" }
approvals: none
documents: [{ id: script-1, title: Script 1, level: open }]
legal: { line: "© 2027 Lantern & Oar" }
site: { shows: { bio: full, art: front, facts: full, credits: full } }
`;

const PEOPLE = `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: later }
`;

/** A cast of sixty, a quarter of it held, and a secret. */
function namesFile(): string {
  const names = Array.from({ length: 60 }, (_, at) => {
    const level = at % 4 === 0 ? 'later' : 'open';
    return `  - { name: Warden Odal${String.fromCharCode(97 + (at % 26))}${at < 26 ? 'r' : 'n'}th Hask${String(at)}, kind: character, level: ${level} }\n`;
  });
  return `names:\n${names.join('')}secrets:\n  - { id: kin, level: later, says: Kin, allOf: [[bell], [sister, brother], [oars]] }\n`;
}

const LAYOUT = `id: standard
trim: { width: 63.5, height: 88.9 }
bleed: 3.175
safe: 3.175
fonts:
  body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff, italic: files/alegreya-sans-latin-400-italic.woff, bold: files/alegreya-sans-latin-700-normal.woff }
zones:
  number: { x: 4, y: 4, width: 12, height: 5, font: body, size: 8, leading: 10 }
  name: { x: 18, y: 4, width: 41, height: 5, font: body, size: 9, leading: 11 }
  facts: { x: 5, y: 12, width: 53.5, height: 12, font: body, size: 6.8, leading: 8.4 }
  bio: { x: 5, y: 28, width: 53.5, height: 44, font: body, size: 6.8, leading: 8.4 }
  legal: { x: 5, y: 81, width: 53.5, height: 4, font: body, size: 4.5, leading: 5.2 }
`;

function planOf(id: string, count: number): string {
  return `id: ${id}
title: "${id}"
spoiler: open
stage: locked
street: "2027-04-16T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: ${String(count)} }, back: standard, bio: { words: { min: 20, max: 90 } }, facts: [Berth] }
totals: { base: ${String(count)} }
`;
}

function cardOf(number: number, set: number): string {
  const held = number % 7 === 0 ? 'spoiler: later\npublicName: Somebody\n' : 'spoiler: open\n';
  const at = set * 1000 + number;
  const bio = [0, 1, 2].map((sentence) => sentenceOf(at, sentence)).join(' ');
  const span = number % 5 === 0 && number % 7 !== 0 ? ` [${sentenceOf(at, 4)}](held:later)` : '';
  return `---
number: "${String(number)}"
name: Keeper ${String(number)} of the quay
${held}state: ready
facts: { Berth: Lock ${String(number % 9)} }
writer: jonah
sources: [{ doc: script-1, ref: p. ${String(number)}, for: Berth }]
---
${bio} *${sentenceOf(at, 5)}* **${sentenceOf(at, 6)}**${span}
`;
}

/** Small words, by whose order bios are told apart. */
const SMALL =
  'the a its this that each some any and but so or for with from to under over past until while because where when by near after before into upon along'.split(
    ' ',
  );

/** The number of a card and of a sentence give it its first three words; the others look as by chance. */
function sentenceOf(at: number, sentence: number): string {
  const first = at + sentence * 10_007;
  let state = (first * 7919 + 104_729) % 2_147_483_647;
  const next = (): number => (state = (state * 16_807) % 2_147_483_647);
  const opening = [0, 1, 2].map((kind) => wordOf(kind, Math.floor(first / 40 ** kind)));
  const rest = Array.from({ length: 6 + (next() % 4) }, (_, place) =>
    place % 2 === next() % 2 ? (SMALL[next() % SMALL.length] ?? 'the') : wordOf(next() % 3, next()),
  );
  const words = [...opening, ...rest].filter((word, place, all) => word !== all[place - 1]);
  const text = words.join(' ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}
