import type { PrintFont } from './print-font.js';
import type { Voice } from './voice.js';

/** Words in one voice and size. Their text is clean. */
export interface Span {
  readonly text: string;
  readonly voice: Voice;
  /** Points. */
  readonly size: number;
  readonly ink: Ink;
  /** Figures of one width, for numbers that stand below one another. */
  readonly figures?: boolean;
}

/** Per cent of black. */
export type Ink = 100 | 70 | 35;

/** What one drawing call draws; `x` and `width` are points from the start of the line. */
export interface Piece {
  readonly font: PrintFont;
  readonly text: string;
  readonly size: number;
  readonly ink: Ink;
  readonly figures: boolean;
  readonly x: number;
  readonly width: number;
}

export interface Line {
  readonly pieces: readonly Piece[];
  readonly width: number;
}

/** A word, or as much of it as is never divided. */
interface Token {
  readonly text: string;
  readonly span: Span;
  /** A space stands before it, unless it opens a line. */
  readonly spaced: boolean;
  readonly width: number;
}

const graphemes = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * A text as it can be drawn: spaces of every kind are one space, what cannot be seen is left out,
 * and a control character becomes one that no font has, so that it is replaced where it shows.
 */
export function clean(text: string): string {
  return text
    .normalize('NFC')
    .replace(/\p{Default_Ignorable_Code_Point}/gu, '')
    .replace(/[\s\u0085]+/gu, ' ')
    .replace(/[\p{Cc}\p{Cs}]/gu, '\ufffd')
    .trim();
}

/** Words in a voice, a size in points and so much black. */
export function span(text: string, voice: Voice, size: number, ink: Ink): Span {
  return { text: clean(text), voice, size, ink };
}

/**
 * Sets spans one after another, a space between two, in lines of a measure in points. Lines end
 * after words and after hyphens and dashes inside them; a word wider than the measure is divided
 * where it must be, so that nothing sticks out.
 */
export function setLines(spans: readonly Span[], measure: number): readonly Line[] {
  const filled = spans.filter(({ text }) => text !== '');
  if (filled.length === 0) return [];
  if (widthOf(filled) <= measure) {
    const tokens = filled.map((span, index) => ({
      text: span.text,
      span,
      spaced: index > 0,
      width: 0,
    }));
    return [lineOf(tokens, false)];
  }
  const rows = broken(filled.flatMap(tokensOf), measure);
  return rows.map((row, index) => lineOf(row, rows[index + 1]?.[0]?.spaced === true));
}

/** How many lines `setLines` makes of the spans; it takes less time. */
export function countLines(spans: readonly Span[], measure: number): number {
  const filled = spans.filter(({ text }) => text !== '');
  if (filled.length === 0) return 0;
  return widthOf(filled) <= measure ? 1 : broken(filled.flatMap(tokensOf), measure).length;
}

/** The width in points that the spans take in one line. */
export function widthOf(spans: readonly Span[]): number {
  const last = spans.length - 1;
  return spans.reduce((sum, { text, voice, size, figures }, index) => {
    return sum + voice.ems(index < last ? `${text} ` : text, figures) * size;
  }, 0);
}

function tokensOf(span: Span, spanIndex: number): readonly Token[] {
  return span.text
    .split(' ')
    .flatMap((word, wordIndex) =>
      word
        .split(/(?<=[-\u2010\u2012-\u2014/])(?=[^-\u2010\u2012-\u2014/])/u)
        .map((text, index) => token(text, span, index === 0 && (spanIndex > 0 || wordIndex > 0))),
    );
}

function token(text: string, span: Span, spaced: boolean): Token {
  return { text, span, spaced, width: span.voice.ems(text, span.figures) * span.size };
}

function broken(tokens: readonly Token[], measure: number): readonly (readonly Token[])[] {
  const rows: Token[][] = [];
  let room = 0;
  for (const each of tokens.flatMap((one) => (one.width > measure ? divided(one, measure) : one))) {
    const row = rows.at(-1);
    const space = each.spaced ? each.span.voice.ems(' ') * each.span.size : 0;
    if (row && space + each.width <= room) {
      row.push(each);
      room -= space + each.width;
    } else {
      rows.push([each]);
      room = measure - each.width;
    }
  }
  return rows;
}

/** Parts of a word that is too wide, each of as many letters as the measure takes, at least one. */
function divided({ text, span, spaced }: Token, measure: number): readonly Token[] {
  const parts: Token[] = [];
  let letters = '';
  let width = 0;
  const end = (): void => {
    parts.push(token(letters, span, spaced && parts.length === 0));
    letters = '';
    width = 0;
  };
  for (const { segment } of graphemes.segment(text)) {
    const advance = span.voice.ems(segment, span.figures) * span.size;
    if (letters !== '' && width + advance > measure) end();
    letters += segment;
    width += advance;
  }
  if (letters !== '') end();
  return parts;
}

/** @param runsOn a word follows on the next line: a space ends this one, for whoever has it read. */
function lineOf(tokens: readonly Token[], runsOn: boolean): Line {
  const pieces: Piece[] = [];
  let x = 0;
  stretches(tokens).forEach(({ span, text }, index, all) => {
    const spaceAfter = all[index + 1]?.spaced ?? runsOn;
    const drawn = spaceAfter ? `${text} ` : text;
    const { size, ink, figures = false } = span;
    for (const run of span.voice.runs(drawn)) {
      const width = run.font.ems(run.text, figures) * size;
      pieces.push({ ...run, size, ink, figures, x, width });
      x += width;
    }
    if (index === all.length - 1 && spaceAfter) x -= span.voice.ems(' ', figures) * size;
  });
  return { pieces, width: x };
}

/** Words that follow one another in one span, as one string. */
function stretches(
  tokens: readonly Token[],
): readonly { readonly span: Span; readonly text: string; readonly spaced: boolean }[] {
  const found: { span: Span; text: string; spaced: boolean }[] = [];
  for (const { span, text, spaced } of tokens) {
    const last = found.at(-1);
    if (last?.span === span) last.text += spaced ? ` ${text}` : text;
    else found.push({ span, text, spaced });
  }
  return found;
}
