import { drawn, drawnAtEnd } from './characters.js';
import type { Face } from './face.js';
import type { Shaper, Word } from './shaper.js';
import type { Span } from './spans.js';

/** Words without a space among them, in one face, and the space that follows. */
export interface Segment {
  /** As written, soft hyphens too. */
  readonly text: string;
  readonly face: Face;
  readonly shaper: Shaper;
  readonly word: Word;
  /** The word as the last one of a line: without a space of another kind at its end. */
  readonly lastWord: Word;
  /** Offset in the text of the stretch. */
  readonly from: number;
  /** U+0020, U+00A0 (at which no line is broken), or nothing where only the face changes. */
  readonly space: string;
  /** The face that the space is in. */
  readonly spaceFace: Face;
  readonly spaceShaper: Shaper;
}

/** A place in a stretch: characters before it in one segment. */
export interface Place {
  readonly segment: number;
  readonly offset: number;
}

/** A text without hard breaks, measured once for all sizes: lengths are in ems. */
export interface Stretch {
  readonly text: string;
  readonly segments: readonly Segment[];
  /** `starts[k]`: from the start of the first segment to the start of segment k. */
  readonly starts: readonly number[];
  /** `spaces[k]`: natural width of the word spaces before segment k. */
  readonly spaces: readonly number[];
  /** Added after every glyph. */
  readonly tracking: number;
}

type Draft = { -readonly [K in keyof Segment]: Segment[K] };

/** Measures spans. `tracking` is in ems; where it is not 0 no ligatures are formed. */
export function measureStretch(spans: readonly Span[], tracking: number): Stretch {
  const segments: Draft[] = [];
  let text = '';
  for (const span of spans) {
    addSegments(segments, span, text.length, tracking === 0);
    text += span.text;
  }
  const starts = [0];
  const spaces = [0];
  let end = 0;
  let space = 0;
  segments.forEach((segment, index) => {
    const next = segments[index + 1];
    end += emsOf(segment.face, segment.word, tracking);
    if (next && segment.space !== '') {
      end += gapAfter(segment, segment.word, next, next.word, tracking);
      space += segment.spaceFace.space;
    }
    starts.push(end);
    spaces.push(space);
  });
  return { text, segments, starts, spaces, tracking };
}

/** Cuts a span at its spaces; a space belongs to the segment before it. */
function addSegments(segments: Draft[], span: Span, offset: number, ligatures: boolean): void {
  const { text, face } = span;
  const shaper = face.shaperFor(text, ligatures);
  shaper.prepare(drawn(text).split(/[ \u00a0]/u));
  let from = 0;
  for (let at = 0; at <= text.length; at += 1) {
    const character = text[at];
    if (character !== undefined && character !== ' ' && character !== '\u00a0') continue;
    if (at > from) segments.push(draft(text.slice(from, at), face, shaper, offset + from));
    from = at + 1;
    if (character === undefined) continue;
    let last = segments.at(-1);
    if (last?.space !== '') segments.push((last = draft('', face, shaper, offset + at)));
    last.space = character;
    last.spaceFace = face;
    last.spaceShaper = shaper;
  }
}

function draft(text: string, face: Face, shaper: Shaper, from: number): Draft {
  const word = shaper.word(drawn(text));
  const end = drawnAtEnd(text);
  const lastWord = end === word.text ? word : shaper.word(end);
  return {
    text,
    face,
    shaper,
    word,
    lastWord,
    from,
    space: '',
    spaceFace: face,
    spaceShaper: shaper,
  };
}

/** Length of a word in ems, tracking after its last letter too. */
export function emsOf(face: Face, word: Word, tracking: number): number {
  return word.units / face.unitsPerEm + word.glyphs * tracking;
}

/**
 * Length in ems that lies between two neighbours. A space is shaped with the words of its own face;
 * over a change of face nothing is kerned, because the two are drawn apart.
 */
export function gapAfter(
  segment: Segment,
  word: Word,
  next: Segment,
  nextWord: Word,
  tracking: number,
): number {
  const { space, spaceFace, spaceShaper } = segment;
  if (space === '') return 0;
  const left = segment.shaper === spaceShaper ? word : spaceShaper.word('');
  const right = next.shaper === spaceShaper ? nextWord : spaceShaper.word('');
  const gap = spaceShaper.gap(left, space, right);
  return gap.units / spaceFace.unitsPerEm + gap.glyphs * tracking;
}

/** The word that is drawn of one segment where a line starts or ends inside it. */
export function partOf(segment: Segment, from: number, to: number, endsLine: boolean): Word {
  if (from === 0 && to === segment.text.length) return endsLine ? segment.lastWord : segment.word;
  const text = segment.text.slice(from, to);
  return segment.shaper.word(endsLine ? drawnAtEnd(text) : drawn(text));
}
