import { execFileSync } from 'node:child_process';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { PublicCard, PublicData } from '../../schema/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { runMain, type MainRun } from '../cli/run-main.js';
import { dataOf, filesBelow } from '../release/site-at.js';
import { programPath } from '../setup/programs.mjs';
import { demoFiles, placeContent, type Placed } from './copy.js';
import { HELD_WORDS, NEVER_WORDS } from './held-words.js';
import { ARTISTS, AS_OF, COUNTS, INSTANTS, LISTED, PARALLELS, TELLING } from './instants.js';

/** What was published at an instant, and what was said of it. */
interface Published {
  readonly publish: MainRun;
  readonly audit: MainRun;
  readonly data: PublicData;
  readonly files: number;
  /** Every byte of it and every file name, in small letters, as if on one line. */
  readonly told: string;
  /** The same of pages, lists and data: what is not a picture or a font. */
  readonly written: string;
}

const content = demoFiles({ art: true });
const published = new Map<string, Published>();
let placed: Placed;

/** As a publisher does it: each release in the place of the last, on its own day. */
beforeAll(async () => {
  placed = await placeContent(content);
  for (const at of INSTANTS) published.set(at, await publishAt(at));
}, 900_000);
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

async function publishAt(at: string): Promise<Published> {
  const now = instantOf(at);
  const publish = await runMain(['publish', '--out', 'site'], placed.root, {}, now);
  if (publish.code !== 0) throw new Error(`${at}: ${publish.stderr}`);
  const audit = await runMain(['audit', 'site', '--at', at], placed.root, {}, now);
  const files = filesBelow(join(placed.root, 'site'));
  const [whole, written] = [[...files], [...files].filter(([path]) => !PICTURE.test(path))].map(
    (list) => onOneLine(list.map(([path, bytes]) => `${path}\n${textIn(path, bytes)}`).join('\n')),
  );
  return {
    publish,
    audit,
    data: dataOf(files),
    files: files.size,
    told: whole ?? '',
    written: written ?? '',
  };
}

const PICTURE = /\.(?:webp|png|woff2)$/;

/** Letters as they stand; of a sheet to print, what is printed on it too. */
function textIn(path: string, bytes: Uint8Array): string {
  const plain = Buffer.from(bytes).toString('latin1');
  if (!path.endsWith('.pdf')) return plain;
  const printed = execFileSync(programPath('pdftotext'), ['-', '-'], { input: bytes });
  return `${plain}\n${printed.toString('latin1')}`;
}

/** Lines of a calendar go on after a fold of a line end and a space (RFC 5545, 3.1). */
function onOneLine(text: string): string {
  return text.replaceAll('\r\n ', '').replace(/\s+/g, ' ').toLowerCase();
}

function at(index: number): Published {
  const found = published.get(INSTANTS[index] ?? '');
  if (!found) throw new Error(`nothing was published at instant ${String(index)}`);
  return found;
}

function subsetsOf({ sets }: PublicData): ReadonlyMap<string, readonly PublicCard[]> {
  return new Map(
    sets.flatMap((set) => set.subsets.map(({ id, cards }) => [`${set.id}/${id}`, cards] as const)),
  );
}

function countsIn(cards: readonly PublicCard[] | undefined): string {
  if (!cards) return '-';
  const count = (state: PublicCard['state']): number =>
    cards.filter((card) => card.state === state).length;
  return [count('shown'), count('placeholder'), count('not issued')].join('/');
}

/** What the list says of the cards of a row such as `crew 17 b`. */
function toldOf(row: string, data: PublicData): string {
  const [, subset, number, letter] = /^(\w+) (\S+)(?: (\w+))?$/.exec(row) ?? [];
  const printed = number === 'without' ? null : number;
  const cards = subsetsOf(data).get(`high-water/${subset ?? ''}`) ?? [];
  const meant = cards.filter(
    (card) =>
      card.number === printed && card.letter === (printed === null ? null : (letter ?? null)),
  );
  return meant.map(lineOf).join('; ') || '-';
}

function lineOf({ state, name, opens }: PublicCard): string {
  if (state === 'shown') return name;
  if (state === 'not issued') return `${name}, not issued`;
  return opens === null ? `${name}, without a day` : `${name}, until ${opens.slice(0, 16)}`;
}

/** Fewer letters than this stand in a large picture by chance. */
const BY_CHANCE = 6;

function isTold(words: string, { told, written }: Published): boolean {
  return (words.length < BY_CHANCE ? written : told).includes(words.toLowerCase());
}

describe.each(INSTANTS.map((day, index) => [day, index] as const))('the demo on %s', (_, i) => {
  it('is published as of the step that has just passed', () => {
    const { publish, files } = at(i);
    expect(publish).toEqual({
      code: 0,
      stdout: `published: ${String(files)} files as of ${AS_OF[i] ?? ''} in site\n`,
      stderr: '',
    });
    expect(at(i).data.asOf).toBe(AS_OF[i]);
    expect(at(i).data.preview).toBe(false);
  });

  it('has in each subset so many cards shown, held and not issued', () => {
    const told = subsetsOf(at(i).data);
    const expected = Object.entries(COUNTS).map(([subset, counts]) => [subset, counts[i]]);
    const known = new Set([...Object.keys(COUNTS), ...told.keys()]);
    expect(Object.fromEntries([...known].map((id) => [id, countsIn(told.get(id))]))).toEqual(
      Object.fromEntries(expected),
    );
  });

  it('lists so many cards, and the parallels and artists that may be told', () => {
    const { sets } = at(i).data;
    expect(Object.fromEntries(sets.map(({ id, listed }) => [id, listed]))).toEqual(
      Object.fromEntries(Object.entries(LISTED).map(([id, counts]) => [id, counts[i]])),
    );
    const water = sets.find(({ id }) => id === 'high-water');
    expect(water?.parallels.map(({ id }) => id).join(' ')).toBe(PARALLELS[i]);
    const sketches = water?.subsets.find(({ id }) => id === 'sketches');
    expect(sketches?.artists.length).toBe(ARTISTS);
  });

  it('names the telling cards as it should', () => {
    const told = Object.keys(TELLING).map((row) => [row, toldOf(row, at(i).data)]);
    expect(Object.fromEntries(told)).toEqual(
      Object.fromEntries(Object.entries(TELLING).map(([row, names]) => [row, names[i]])),
    );
  });

  it('has no word in any byte before its day, and has it from then on', () => {
    const words = HELD_WORDS.flat();
    expect(words.filter((word) => isTold(word, at(i)))).toEqual(HELD_WORDS.slice(0, i + 1).flat());
    expect(NEVER_WORDS.filter((word) => isTold(word, at(i)))).toEqual([]);
  });

  it('is quiet under the audit', () => {
    expect(at(i).audit).toEqual({
      code: 0,
      stdout: `${String(at(i).files)} files searched: nothing held was found\n`,
      stderr: '',
    });
  });
});

describe('the list of words', () => {
  it('is of words that stand in the content', () => {
    const all = [...content]
      .flatMap(([, text]) => (typeof text === 'string' ? [text] : []))
      .map((text) => onOneLine(text))
      .join('\n');
    const paths = [...content.keys()].join('\n');
    const missing = [...HELD_WORDS.flat(), ...NEVER_WORDS].filter(
      (word) => !all.includes(word.toLowerCase()) && !paths.includes(word),
    );
    expect(missing).toEqual([]);
  });

  it('would be found by the audit, were it told too early', async () => {
    const early = INSTANTS[0];
    const run = await runMain(['audit', 'site', '--at', early], placed.root, {}, instantOf(early));
    expect(run.code).toBe(1);
    expect(run.stdout).toContain('the name Ysolde Marrack');
  });
});
