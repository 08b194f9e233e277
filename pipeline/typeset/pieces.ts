import { drawn } from './characters.js';
import type { Break } from './break-list.js';
import type { Face } from './face.js';
import type { FoundLine } from './greedy.js';
import type { Gap, Shaper, Word } from './shaper.js';
import { emsOf, gapAfter, partOf, type Segment, type Stretch } from './stretch.js';
import type { SetPiece, SetWord } from './types.js';

/** A word of a line with its place, in ems from the start of the line. */
interface PlacedWord {
  readonly segment: Segment;
  readonly word: Word;
  readonly at: number;
  readonly width: number;
}

/** A line at one size; the tracking is in ems. */
interface Line {
  readonly placed: readonly PlacedWord[];
  readonly tracking: number;
  readonly size: number;
}

/** The pieces and words of a line. Lengths are points. */
export interface LinePieces {
  readonly pieces: readonly SetPiece[];
  readonly words: readonly SetWord[];
  readonly width: number;
}

/**
 * What is drawn of a line at one size. `stretch` is what each word space gains, as a share of its
 * natural width: where it is not 0, each word is a piece of its own, because the spaces are drawn as
 * distances. The hyphen of a divided word is a piece of its own too.
 */
export function piecesOf(
  stretch: Stretch,
  line: FoundLine,
  size: number,
  spaceStretch: number,
): LinePieces {
  const placed = placeWords(stretch, line, spaceStretch);
  const groups = spaceStretch === 0 ? byFace(placed) : placed.map((word) => [word]);
  const pieces = groups.flatMap((group) =>
    pieceOf(group, { placed, tracking: stretch.tracking, size }),
  );
  const hyphen = hyphenOf(stretch, line.end, placed, size);
  if (hyphen) pieces.push(hyphen);
  const last = pieces.at(-1);
  return { pieces, words: joinWords(placed, hyphen, size), width: last ? last.x + last.width : 0 };
}

function placeWords(stretch: Stretch, line: FoundLine, spaceStretch: number): PlacedWord[] {
  const { segments, tracking } = stretch;
  const { start, end } = line;
  const placed: PlacedWord[] = [];
  let at = 0;
  for (let index = start.segment; index <= end.segment; index += 1) {
    const segment = segments[index];
    if (!segment) break;
    const ends = index === end.segment;
    const from = index === start.segment ? start.offset : 0;
    const word = partOf(segment, from, ends ? end.offset : segment.text.length, ends);
    const before = placed.at(-1);
    if (before) {
      at += gapAfter(before.segment, before.word, segment, word, tracking);
      if (before.segment.space !== '') at += before.segment.spaceFace.space * spaceStretch;
    }
    const length = emsOf(segment.face, word, tracking);
    placed.push({ segment, word, at, width: word.glyphs > 0 ? length - tracking : 0 });
    at += length;
  }
  return placed;
}

/** Neighbours that one drawing call can draw: of one face, spaces among them included. */
function byFace(placed: readonly PlacedWord[]): PlacedWord[][] {
  const groups: PlacedWord[][] = [];
  for (const word of placed) {
    const group = groups.at(-1);
    const last = group?.at(-1);
    const joins =
      last?.segment.shaper === word.segment.shaper &&
      (last.segment.space === '' || last.segment.spaceShaper === word.segment.shaper);
    if (group && joins) group.push(word);
    else groups.push([word]);
  }
  return groups;
}

/**
 * The piece of a group; none where it would draw nothing. A space beside the group that is of its
 * face is drawn with it, so that a reader of the page finds one between the words.
 */
function pieceOf(group: readonly PlacedWord[], line: Line): SetPiece[] {
  const [first] = group;
  const last = group.at(-1);
  if (!first || !last) return [];
  const { placed, tracking, size } = line;
  const { face, shaper } = first.segment;
  const lead = spaceBefore(placed[placed.indexOf(first) - 1], shaper);
  const trail = last !== placed.at(-1) && last.segment.spaceShaper === shaper && last.segment.space;
  const inner = group.map(
    ({ word, segment }, index) => word.text + (index < group.length - 1 ? segment.space : ''),
  );
  const text = [lead, ...inner, trail === false ? '' : trail].join('');
  if (text === '') return [];
  const before = gapEms(face, shaper.gap(shaper.word(''), lead, first.word), tracking);
  const after =
    trail === false ? 0 : gapEms(face, shaper.gap(last.word, trail, shaper.word('')), tracking);
  const own = face.shaperFor(text, shaper.ligatures);
  // A piece without a letter is drawn without a script, whatever the words around it are.
  const width =
    own === shaper
      ? before + last.at + last.width - first.at + after
      : emsOf(face, own.word(text), tracking) - tracking;
  return [
    {
      text,
      face,
      x: (first.at - before) * size,
      width: width * size,
      tracking: tracking * size,
      ligatures: shaper.ligatures,
      words: wordsOf(group).map((word) => scaled(word, size)),
    },
  ];
}

/** The space before a group, where it is of the group's face and the piece before has not drawn it. */
function spaceBefore(before: PlacedWord | undefined, shaper: Shaper): string {
  if (!before || before.segment.spaceShaper !== shaper) return '';
  return before.segment.shaper === shaper ? '' : before.segment.space;
}

function gapEms(face: Face, gap: Gap, tracking: number): number {
  return gap.units / face.unitsPerEm + gap.glyphs * tracking;
}

function hyphenOf(
  stretch: Stretch,
  end: Break,
  placed: readonly PlacedWord[],
  size: number,
): SetPiece | null {
  const last = placed.at(-1);
  if (end.kind !== 'hyphen' || !last) return null;
  const { face, shaper } = last.segment;
  const x = (last.at + last.width + stretch.tracking) * size;
  const width = (shaper.word(face.hyphen).units / face.unitsPerEm) * size;
  const { tracking } = stretch;
  return {
    text: face.hyphen,
    face,
    x,
    width,
    tracking: tracking * size,
    ligatures: shaper.ligatures,
    words: [{ text: face.hyphen, x, width }],
  };
}

interface Span {
  readonly text: string;
  readonly at: number;
  readonly end: number;
}

/** Joins neighbours that no space parts. */
function wordsOf(placed: readonly PlacedWord[]): Span[] {
  const words: Span[] = [];
  placed.forEach(({ word, at, width }, index) => {
    const text = drawn(word.text);
    const last = placed[index - 1]?.segment.space === '' ? words.at(-1) : undefined;
    if (last) words[words.length - 1] = { text: last.text + text, at: last.at, end: at + width };
    else if (text !== '') words.push({ text, at, end: at + width });
  });
  return words;
}

function scaled(word: Span, size: number): SetWord {
  return { text: word.text, x: word.at * size, width: (word.end - word.at) * size };
}

function joinWords(
  placed: readonly PlacedWord[],
  hyphen: SetPiece | null,
  size: number,
): readonly SetWord[] {
  const words = wordsOf(placed).map((word) => scaled(word, size));
  const last = words.at(-1);
  if (!hyphen || !last) return words;
  const whole = { ...last, text: last.text + hyphen.text, width: hyphen.x + hyphen.width - last.x };
  return [...words.slice(0, -1), whole];
}
