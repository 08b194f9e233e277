import type { PrintFont } from './print-font.js';

/** Letters that one font draws. */
export interface FontRun {
  readonly font: PrintFont;
  readonly text: string;
}

/** Widths that are kept. */
const KEPT = 20_000;

const REPLACEMENT = '\ufffd';

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** One cut of a family, in as many files as it takes. */
export class Voice {
  readonly #fonts: readonly [PrintFont, ...PrintFont[]];
  /** What stands for a character that no file has: U+FFFD, or a question mark. */
  readonly #stand: string;
  readonly #widths = { words: new Map<string, number>(), figures: new Map<string, number>() };

  constructor(fonts: readonly [PrintFont, ...PrintFont[]]) {
    this.#fonts = fonts;
    this.#stand = fonts.some((font) => hasAll(font, REPLACEMENT)) ? REPLACEMENT : '?';
  }

  /** The text in runs of one font each. A character that none has is replaced, never left out. */
  runs(text: string): readonly FontRun[] {
    if (text === '') return [];
    const whole = this.#fonts.find((font) => hasAll(font, text));
    if (whole) return [{ font: whole, text }];
    const runs: { font: PrintFont; text: string }[] = [];
    for (const { segment } of graphemes.segment(text)) {
      for (const { font, text: letters } of this.#letters(segment)) {
        const last = runs.at(-1);
        if (last?.font === font) last.text += letters;
        else runs.push({ font, text: letters });
      }
    }
    return runs;
  }

  /** The width of a text in ems, as it is drawn. */
  ems(text: string, figures = false): number {
    const widths = this.#widths[figures ? 'figures' : 'words'];
    const known = widths.get(text);
    if (known !== undefined) return known;
    const width = this.runs(text).reduce((sum, run) => sum + run.font.ems(run.text, figures), 0);
    if (widths.size >= KEPT) widths.clear();
    widths.set(text, width);
    return width;
  }

  /** Whether every character of the text is drawn as itself. */
  shows(text: string): boolean {
    return Array.from(text).every((letter) => this.#fonts.some((font) => hasAll(font, letter)));
  }

  /** A letter with its accents comes from one file if any has all of it, else sign by sign. */
  #letters(segment: string): readonly FontRun[] {
    const whole = this.#fonts.find((font) => hasAll(font, segment));
    if (whole) return [{ font: whole, text: segment }];
    return Array.from(segment, (letter) => {
      const has = this.#fonts.find((font) => hasAll(font, letter));
      return has ? { font: has, text: letter } : this.#standIn();
    });
  }

  #standIn(): FontRun {
    const [first] = this.#fonts;
    const font = this.#fonts.find((each) => hasAll(each, this.#stand)) ?? first;
    return { font, text: this.#stand };
  }
}

function hasAll(font: PrintFont, text: string): boolean {
  for (const letter of text) if (!font.covers(letter.codePointAt(0) ?? 0)) return false;
  return true;
}
