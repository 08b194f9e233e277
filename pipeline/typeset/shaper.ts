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

interface Placed {
  readonly id: number;
  readonly advance: number;
}

/** A noncharacter: every font shows its glyph for what is missing. */
const NO_CHARACTER = '\uffff';

/** Gaps after one glyph, by space and by the id of the glyph after it, plus 1. */
type Tail = Map<string, Gap[]>;

/**
 * Widths in one face for one script, kept by word. Glyphs on the two sides of a space may be kerned
 * with it and, over it, with one another; so a gap is kept by the glyph before, the space and the
 * glyph after, and is measured once by shaping two such words together. A word whose glyphs depend
 * on whether a space stands beside it (a contextual ligature) has its gaps measured by itself.
 *
 * Not seen: a rule of a font that looks over a space further into the next word than one glyph, such
 * as the one by which Alegreya sets the numeral after the Spanish word for century in small capitals.
 */
export class Shaper {
  readonly #words = new Map<string, Word>();
  readonly #tails = new Map<number, Tail>();
  readonly #sensitiveGaps = new Map<string, Gap>();
  /** What a character that no font has adds to the first and the last glyph of a word beside it. */
  readonly #heads = new Map<number, number>();
  readonly #feet = new Map<number, number>();
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
      word = this.#measure(text);
      this.#words.set(text, word);
    }
    return word;
  }

  /**
   * Measures words that are new. Shaping them together takes a fraction of the time that it takes
   * one by one, so they are shaped in two rows: once parted by spaces, and once by a character
   * that no font has. A word that takes the same glyphs in both rows takes them by itself too. Its
   * outer glyphs may be kerned with what parts it: that is found once for each outer glyph.
   */
  prepare(texts: Iterable<string>): void {
    if (this.script === undefined) return;
    const fresh = [...new Set(texts)].filter((text) => !this.#words.has(text) && isCommon(text));
    const rowable = fresh.filter((text) => this.#missing(text).length === 0);
    if (rowable.length < 2) return;
    const [spaced, parted] = this.#rows(rowable, [' ', NO_CHARACTER]);
    if (!spaced || !parted) return;
    rowable.forEach((text, index) => {
      const glyphs = parted[index];
      if (!glyphs || !sameIds(glyphs, spaced[index])) return;
      this.#words.set(text, this.#fromRow(text, glyphs));
    });
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

  #measure(text: string): Word {
    const glyphs = this.#glyphs(text);
    const [spaced] = this.#rows([text], [' ']);
    return this.#word(text, glyphs, widthOf(glyphs), text !== '' && !sameIds(glyphs, spaced?.[0]));
  }

  #word(text: string, glyphs: readonly Placed[], units: number, sensitive: boolean): Word {
    return {
      text,
      units,
      glyphs: glyphs.length,
      first: glyphs[0]?.id ?? -1,
      tail: this.#tailAfter(glyphs.at(-1)?.id ?? -1),
      sensitive,
      missing: this.#missing(text),
    };
  }

  /** A word from a row, less what its neighbours there add to its outer glyphs. */
  #fromRow(text: string, glyphs: readonly Placed[]): Word {
    const first = glyphs[0];
    const last = glyphs.at(-1);
    const head = first && this.#heads.get(first.id);
    const foot = last && this.#feet.get(last.id);
    if (glyphs.length > 1 && head !== undefined && foot !== undefined) {
      return this.#word(text, glyphs, widthOf(glyphs) - head - foot, false);
    }
    const alone = this.#glyphs(text);
    if (alone.length > 1 && first && last && sameIds(alone, glyphs)) {
      this.#heads.set(first.id, first.advance - (alone[0]?.advance ?? 0));
      this.#feet.set(last.id, last.advance - (alone.at(-1)?.advance ?? 0));
    }
    return this.#word(text, alone, widthOf(alone), !sameIds(alone, glyphs));
  }

  /**
   * The glyphs of words in a row, once for each character that parts them, all shaped together;
   * none where the words cannot be told apart.
   */
  #rows(
    texts: readonly string[],
    parting: readonly string[],
  ): readonly (readonly (readonly Placed[])[])[] {
    const ids = new Set(parting.map((each) => this.font.glyphForCodePoint(each.charCodeAt(0)).id));
    const words: Placed[][] = [];
    const rows = parting.map((each) => each + texts.join(each) + each).join('');
    for (const glyph of this.#glyphs(rows)) {
      if (ids.has(glyph.id)) words.push([]);
      else words.at(-1)?.push(glyph);
    }
    const step = texts.length + 1;
    if (words.length !== step * parting.length) return [];
    return parting.map((_, row) => words.slice(row * step, row * step + texts.length));
  }

  #glyphs(text: string): readonly Placed[] {
    const { glyphs, positions } = this.#shape(text);
    return glyphs.map(({ id }, index) => ({ id, advance: positions[index]?.xAdvance ?? 0 }));
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

/** Words that can stand in a row: not empty, and not opening with a mark that would join the one before. */
function isCommon(text: string): boolean {
  return text !== '' && !/^\p{M}/u.test(text);
}

function widthOf(glyphs: readonly Placed[]): number {
  return glyphs.reduce((sum, { advance }) => sum + advance, 0);
}

function sameIds(glyphs: readonly Placed[], others: readonly Placed[] | undefined): boolean {
  return (
    glyphs.length === others?.length && glyphs.every(({ id }, index) => id === others[index]?.id)
  );
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
