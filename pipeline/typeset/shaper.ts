import type { Font } from 'fontkit';
import { needsGlyph } from './characters.js';

/** A string shaped by itself, in font units. */
export interface Word {
  readonly text: string;
  readonly units: number;
  readonly glyphs: number;
  /** Id of the first glyph; -1 for an empty string. */
  readonly first: number;
  /** What follows words that end in the same glyph. */
  readonly tail: Tail;
  /** A space beside it changes which glyphs it takes: what it adds to a pair is then its own. */
  readonly sensitive: boolean;
  readonly missing: readonly string[];
}

/** A space between two words: what it adds to the widths of both, kerning on each side included. */
export interface Gap {
  readonly units: number;
  readonly glyphs: number;
}

/** Gaps after one glyph, by space and by the id of the glyph after it, plus 1. */
type Tail = Map<string, Gap[]>;

/**
 * Widths in one face for one script, kept by word. Glyphs on the two sides of a space may be kerned
 * with it and, over it, with one another; so a gap is kept by the glyph before, the space and the
 * glyph after, and is measured once by shaping two such words together. A word whose glyphs depend
 * on whether a space stands beside it (a contextual ligature) has its gaps measured by itself.
 */
export class Shaper {
  readonly #words = new Map<string, Word>();
  readonly #tails = new Map<number, Tail>();
  readonly #sensitiveGaps = new Map<string, Gap>();
  readonly #features: Readonly<Record<string, boolean>>;

  /** `script` is an OpenType script tag; without one the font library looks at each string. */
  constructor(
    readonly font: Font,
    readonly script: string | undefined,
    readonly ligatures: boolean,
  ) {
    this.#features = featureSet(ligatures);
  }

  /** Width of a string shaped by itself; kept. */
  word(text: string): Word {
    let word = this.#words.get(text);
    if (!word) {
      word = this.#measure(text, this.#glyphsAmongSpaces([text])[0]);
      this.#words.set(text, word);
    }
    return word;
  }

  /** Measures words that are new; to look at them together takes far less time than one by one. */
  prepare(texts: Iterable<string>): void {
    const fresh = [...new Set(texts)].filter((text) => text !== '' && !this.#words.has(text));
    if (fresh.length < 2) return;
    const glyphs = this.#glyphsAmongSpaces(fresh);
    fresh.forEach((text, index) => this.#words.set(text, this.#measure(text, glyphs[index])));
  }

  /** What `space` adds between two words; `word('')` stands for the end of a piece. */
  gap(left: Word, space: string, right: Word): Gap {
    if (left.sensitive || right.sensitive) return this.#sensitiveGap(left, space, right);
    const gaps = left.tail.get(space) ?? startList(left.tail, space);
    return (gaps[right.first + 1] ??= this.#measureGap(left, space, right));
  }

  #sensitiveGap(left: Word, space: string, right: Word): Gap {
    const key = `${left.text}\n${space}\n${right.text}`;
    let gap = this.#sensitiveGaps.get(key);
    if (!gap) this.#sensitiveGaps.set(key, (gap = this.#measureGap(left, space, right)));
    return gap;
  }

  #measureGap(left: Word, space: string, right: Word): Gap {
    const whole = this.#shape(left.text + space + right.text);
    return {
      units: whole.advanceWidth - left.units - right.units,
      glyphs: whole.glyphs.length - left.glyphs - right.glyphs,
    };
  }

  #measure(text: string, amongSpaces: readonly number[] | undefined): Word {
    const run = this.#shape(text);
    const ids = run.glyphs.map((glyph) => glyph.id);
    return {
      text,
      units: run.advanceWidth,
      glyphs: ids.length,
      first: ids[0] ?? -1,
      tail: this.#tailAfter(ids.at(-1) ?? -1),
      sensitive: ids.join() !== amongSpaces?.join(),
      missing: this.#missing(text),
    };
  }

  /** The glyphs that words take with a space on each side; none where they cannot be told apart. */
  #glyphsAmongSpaces(texts: readonly string[]): readonly (readonly number[])[] {
    const words: number[][] = [];
    const space = this.font.glyphForCodePoint(0x20).id;
    for (const { id } of this.#shape(` ${texts.join(' ')} `).glyphs) {
      if (id === space) words.push([]);
      else words.at(-1)?.push(id);
    }
    words.pop();
    return words.length === texts.length ? words : [];
  }

  #tailAfter(glyph: number): Tail {
    let tail = this.#tails.get(glyph);
    if (!tail) this.#tails.set(glyph, (tail = new Map<string, Gap[]>()));
    return tail;
  }

  #missing(text: string): readonly string[] {
    return [...new Set(text)].filter((character) => {
      const codePoint = character.codePointAt(0);
      return (
        codePoint !== undefined &&
        needsGlyph(character) &&
        !this.font.hasGlyphForCodePoint(codePoint)
      );
    });
  }

  #shape(text: string) {
    return this.font.layout(text, { ...this.#features }, this.script);
  }
}

function startList(tail: Tail, space: string): Gap[] {
  const gaps: Gap[] = [];
  tail.set(space, gaps);
  return gaps;
}

/**
 * The features to pass with a drawing call, as a new object each time, because the font library
 * writes into it.
 */
export function featureSet(ligatures: boolean): Record<string, boolean> {
  return ligatures ? { kern: true, liga: true } : { kern: true, liga: false, clig: false };
}
