import { pngChunks } from './decode/png.js';
import { unfiltered } from './decode/png-rows.js';
import { unpack } from './decode/unpack.js';
import { highFirst, joinBytes } from './decode/view.js';

/**
 * What a picture looks like, coarsely: after N. Krawetz, "Kind of Like That", 2013 (difference
 * hashing). The picture is laid over ROWS times COLUMNS fields, and each field is brighter than its
 * right neighbour, darker, or as bright. Size, compression and small changes of colour leave nearly
 * all of that as it is; a picture that is cut, turned or mirrored is another one.
 */
export type Likeness = Uint8Array;

const ROWS = 16;
const COLUMNS = 17;
/** Brightness, of 255, by which two fields must differ to count as different. */
const AS_BRIGHT = 4;

/** Of the 256 comparisons, how many may come out otherwise in two pictures that are alike. */
export const ALIKE = 32;
/** Width in pixels at which pictures are drawn to be compared. */
export const DRAWN_AT = 64;
/** A picture that is all of one brightness says nothing: so many comparisons must tell something. */
const FEWEST_TELLING = 24;

/** What a drawn picture looks like; null if nothing is to be seen, or it is no PNG of 8 bits. */
export function likenessOf(drawn: Uint8Array): Likeness | null {
  const grey = greyOf(drawn);
  if (!grey || grey.width < COLUMNS || grey.height < ROWS) return null;
  const fields = Array.from({ length: ROWS * COLUMNS }, (_, index) =>
    brightness(grey, Math.floor(index / COLUMNS), index % COLUMNS),
  );
  const likeness = new Uint8Array(ROWS * (COLUMNS - 1));
  for (let row = 0; row < ROWS; row += 1) {
    for (let column = 0; column + 1 < COLUMNS; column += 1) {
      const at = row * COLUMNS + column;
      const step = (fields[at + 1] ?? 0) - (fields[at] ?? 0);
      likeness[row * (COLUMNS - 1) + column] = Math.abs(step) < AS_BRIGHT ? 0 : step > 0 ? 1 : 2;
    }
  }
  return likeness.filter((step) => step > 0).length < FEWEST_TELLING ? null : likeness;
}

/** In how many comparisons two pictures differ. */
export function distance(one: Likeness, other: Likeness): number {
  let differing = 0;
  for (let at = 0; at < one.length; at += 1) if (one[at] !== other[at]) differing += 1;
  return differing;
}

interface Grey {
  readonly width: number;
  readonly height: number;
  /** From 0 to 255, row by row. */
  readonly pixels: Float64Array;
}

function brightness({ width, height, pixels }: Grey, row: number, column: number): number {
  const [top, bottom] = [row, row + 1].map((edge) => Math.floor((edge * height) / ROWS));
  const [left, right] = [column, column + 1].map((edge) => Math.floor((edge * width) / COLUMNS));
  let sum = 0;
  let count = 0;
  for (let y = top ?? 0; y < (bottom ?? 0); y += 1) {
    for (let x = left ?? 0; x < (right ?? 0); x += 1) {
      sum += pixels[y * width + x] ?? 0;
      count += 1;
    }
  }
  return sum / Math.max(1, count);
}

/** Samples of a pixel by the colour type of a PNG: grey, colours, either with its cover. */
const SAMPLES = new Map([
  [0, 1],
  [2, 3],
  [4, 2],
  [6, 4],
]);

/** All that a picture drawn at DRAWN_AT may unpack to, in bytes. */
const LARGEST = 4 * 1024 * 1024;

function greyOf(bytes: Uint8Array): Grey | null {
  const chunks = pngChunks(bytes)?.chunks ?? [];
  const [head] = chunks;
  if (head?.kind !== 'IHDR') return null;
  const [width, height] = [highFirst(head.data, 0, 4), highFirst(head.data, 4, 4)];
  const samples = SAMPLES.get(head.data[9] ?? -1);
  if (samples === undefined || head.data[8] !== 8 || head.data[12] !== 0) return null;
  const packed = chunks.filter(({ kind }) => kind === 'IDAT').map(({ data }) => data);
  const stream = unpack(joinBytes(packed), { left: LARGEST });
  const rows = stream.ok ? unfiltered(stream.bytes, width * samples, samples) : null;
  if (!rows || rows.length < width * height * samples) return null;
  const pixels = new Float64Array(width * height);
  for (let at = 0; at < pixels.length; at += 1) pixels[at] = pixelAt(rows, at * samples, samples);
  return { width, height, pixels };
}

/** Brightness on white paper, with the weights of Rec. 709. */
function pixelAt(rows: Uint8Array, at: number, samples: number): number {
  const sample = (index: number): number => rows[at + index] ?? 0;
  const colours = samples > 2;
  const grey = colours ? 0.2126 * sample(0) + 0.7152 * sample(1) + 0.0722 * sample(2) : sample(0);
  const cover = samples % 2 === 0 ? sample(samples - 1) / 255 : 1;
  return grey * cover + 255 * (1 - cover);
}
