import { countInWords, endsSentence, spokenNumbers, type English } from '../../text/index.js';
import type { Slip } from './slip.js';

/** What a number stands in, besides its text. */
export interface NumberStyle {
  /** Whole numbers up to this are written in words, greater ones in figures. */
  readonly words: number;
  readonly english: English;
  /** Stretches that are counts of the plan, which other rules look at. */
  readonly counts: readonly { readonly from: number; readonly to: number }[];
}

const FIGURE =
  /(?<![\p{L}\p{N}.,:/\u2044$£€¥#№–—×+=<>~≈^_'’-])\d{1,6}(?![\p{L}\p{N}:/\u2044%‰°–—×+=<>^_'’"″′½¼¾-]|[.,]\d)/gu;

/** Words before which a figure is a label and not a number of things. */
const LABEL =
  /(?:\b(?:card|cards|number|numbers|no|nos|nr|page|pages|p|pp|episode|episodes|chapter|chapters|scene|scenes|series|season|part|parts|volume|vol|issue|book|act|verse|line|lines|level|lock|gate|step|day|week|year|room|row|bench|sheet|shot|still|figure|fig|table|version|round|phase|stage|grade|age|aged|type|size|scale|page|track|route|platform|bus|pier|set|of|plus|minus|times|by|versus|vs|to|at|before|after|past|until|till|circa|c|ca|since|in)\.? |\p{L}*\p{Lu}\p{L}* )$/u;
/** A word that has its capital for its place in the sentence alone. */
const OPENING =
  /(?:^|[.!?:…]["'”’)]? |[“‘"(])(?:The|All|Only|Then|Not|These|Those|About|Some|Nearly|Almost|Over|Under|Just|Even|Her|His|Its|Their|Our|My|And|But|Or|So|With|For|From|Another|Every|Exactly|Barely|Hardly|Fully|He|She|It|They|We|There|Here|Both|Another|Perhaps|Count|Take|Add|Find) $/u;
/** Words after which it is a count of each copy, a measure, a time or a date. */
const MEASURED =
  /^(?: |\u00a0|\u202f)(?:of (?:each|every|\d)|each\b|every\b|copies of|or \d|and \d|to \d|by \d|x \d|× ?\d|in \d|out of \d|a\.?m\b|p\.?m\b|o['’]clock|hours\b|GMT|UTC|BST|years? old|year-olds?|mm|cm|m|km|in|ft|yd|mi|miles?\b|g|kg|mg|oz|lb|lbs|st|t|l|ml|cl|pt|gal|s|min|h|hz|Hz|kHz|W|kW|V|A|dpi|px|mph|kph|km\/h|knots?\b|fathoms?\b|°\s?[CF]?|%|‰|℃|℉|feet\b|foot\b|inch(?:es)?\b|metres?\b|meters?\b|litres?\b|degrees?\b|per ?cent\b|percent\b|points?\b|million|billion|thousand|hundred|AD|BC|BCE|CE|January|February|March|April|May|June|July|August|September|October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)(?![\p{L}])/u;
const MONTH_BEFORE =
  /(?:January|February|March|April|May|June|July|August|September|October|November|December|Jan|Feb|Mar|Apr|Jun|Jul|Aug|Sept?|Oct|Nov|Dec)\.?,? $/u;
/** In a list of figures each stands as the others do: "2, 4 and 11". */
const LIST_BEFORE = /\d(?:,| and| or| to|,? &)? $/u;

/** Numbers that are to be in words and stand in figures, or the other way round. */
export function numberSlips(text: string, style: NumberStyle): Slip[] {
  const isCount = (from: number, to: number): boolean =>
    style.counts.some((count) => count.from < to && from < count.to);
  return [...inFigures(text, style), ...inWords(text, style)].filter(
    ({ from, to }) => !isCount(from, to),
  );
}

function inFigures(text: string, { words, english }: NumberStyle): Slip[] {
  if (!/\d/.test(text)) return [];
  return Array.from(text.matchAll(FIGURE), ({ 0: figure, index }): Slip[] => {
    const value = Number(figure);
    const before = text.slice(Math.max(0, index - 24), index);
    const after = text.slice(index + figure.length, index + figure.length + 24);
    const begins = endsSentence(text.slice(0, index).replace(/[“‘"'(]+$/u, ''));
    if (isLabelled(before, after, begins) || String(value) !== figure || value === 0) return [];
    const isYear = value >= 1000 && value <= 2199;
    if (begins ? isYear || value >= 1000 : value > words) return [];
    const spoken = inEnglish(value, english);
    return [
      {
        from: index,
        to: index + figure.length,
        message: begins
          ? `a sentence begins with the figure ${figure}`
          : `${figure} stands in figures`,
        expected: begins ? 'a word' : `in words, as all numbers up to ${String(words)}`,
        fix: begins ? spoken.charAt(0).toUpperCase() + spoken.slice(1) : spoken,
        certain: !begins || value <= words,
      },
    ];
  }).flat();
}

function isLabelled(before: string, after: string, begins: boolean): boolean {
  if (MEASURED.test(after) || MONTH_BEFORE.test(before)) return true;
  if (/^, \d/.test(after) || LIST_BEFORE.test(before)) return true;
  if (/\b(?:Nos?|Nr|Figs?|Vols?|Ch|Ep|pp?|Pp?)\. $/.test(before)) return true;
  return !begins && LABEL.test(before) && !OPENING.test(before);
}

/** Numbers from here on that are whole hundreds are as often a manner of speaking as a count. */
const ROUND = 100;

function inWords(text: string, { words }: NumberStyle): Slip[] {
  return spokenNumbers(text).flatMap(({ from, to, value }): Slip[] => {
    if (value <= words || value % ROUND === 0) return [];
    if (/[-‑’']/u.test(text.charAt(to)) || /[-‑]/u.test(text.charAt(from - 1))) return [];
    if (endsSentence(text.slice(0, from).replace(/[“‘"'(]+$/u, ''))) return [];
    if (isTitle(text, from, to)) return [];
    const digits = String(value);
    const figure = value < 10_000 ? digits : `${digits.slice(0, -3)},${digits.slice(-3)}`;
    return [
      {
        from,
        to,
        message: `\`${text.slice(from, to)}\` stands in words`,
        expected: `in figures, as all numbers above ${String(words)}`,
        fix: figure,
        certain: false,
      },
    ];
  });
}

/** A number with a capital is part of a name. */
function isTitle(text: string, from: number, to: number): boolean {
  return /\p{Lu}/u.test(text.slice(from, to)) || /^ \p{Lu}\p{Ll}/u.test(text.slice(to, to + 3));
}

/** British English says "one hundred and six", American "one hundred six". */
function inEnglish(value: number, english: English): string {
  const spoken = value === 0 ? 'zero' : countInWords(value);
  return english === 'american' ? spoken.replace(' and ', ' ') : spoken;
}
