import type { Paragraph, SourceFile, Spot } from '../../model/index.js';
import type { Remark } from '../rule.js';

/**
 * Where a stretch of a value stands in its file: exactly, if the value is typed as it is read; else
 * where its words stand for the first time, or the whole value.
 */
export function spotInValue(spot: Spot, text: string, from: number, to: number): Spot {
  const { source } = spot;
  const typed = source.text.slice(spot.from, spot.to);
  const whole = typed.indexOf(text);
  if (whole >= 0) {
    return { source, from: spot.from + whole + from, to: spot.from + whole + to };
  }
  const words = text.slice(from, to);
  const isWord = /\p{L}{2}/u.test(words);
  let at = isWord ? typed.indexOf(words) : -1;
  for (let seen = text.indexOf(words); at >= 0 && seen >= 0 && seen < from;) {
    at = typed.indexOf(words, at + 1);
    seen = text.indexOf(words, seen + 1);
  }
  return at < 0 ? spot : { source, from: spot.from + at, to: spot.from + at + words.length };
}

/** Where a stretch of a paragraph stands in its file; whole runs where they are typed in escapes. */
export function spotInParagraph(
  paragraph: Paragraph,
  from: number,
  to: number,
  source: SourceFile,
): Spot {
  let start = 0;
  let first: number | null = null;
  let end = 0;
  for (const run of paragraph) {
    const stop = start + run.text.length;
    if (start < to && stop > from) {
      const places = placesOf(run, source);
      first ??= places?.[Math.max(0, from - start)] ?? run.from;
      end = to < stop ? (places?.[to - start] ?? run.to) : (places?.[run.text.length] ?? run.to);
    }
    start = stop;
  }
  return { source, from: first ?? paragraph[0]?.from ?? 0, to: Math.max(first ?? 0, end) };
}

/**
 * The offset of each unit of a run in its file, and of its end; null where an escape stands for a
 * character. A line end that is read as a space may have spaces on both sides.
 */
function placesOf(run: Paragraph[number], { text }: SourceFile): readonly number[] | null {
  const places: number[] = [];
  let at = run.from;
  for (const unit of run.text) {
    if (unit === ' ' && /[ \t]*[\r\n]/y.test(text.slice(at, run.to))) {
      places.push(at);
      while (at < run.to && /[ \t\r\n]/.test(text.charAt(at))) at += 1;
      continue;
    }
    if (text.startsWith(`\\${unit}`, at)) at += 1;
    if (!text.startsWith(unit, at)) return run.text === '\n' ? [run.from, run.to] : null;
    for (let step = 0; step < unit.length; step++) places.push(at + step);
    at += unit.length;
  }
  return at > run.to ? null : [...places, at];
}

/** The fix of a stretch, if exactly its words stand there and the file stays sound with others. */
export function fixOf(spot: Spot, words: string, fix: string): Pick<Remark, 'fix'> {
  const { source, from, to } = spot;
  const typed = source.text.slice(from, to);
  if (typed !== words && typed.replace(/\s*[\r\n]\s*/gu, ' ') !== words) return {};
  return isInFront(spot) && !suitsYaml(spot, fix) ? {} : { fix };
}

/** Whether a place is in YAML and not in the words below a front matter. */
function isInFront({ source: { file, text }, from }: Spot): boolean {
  return file.endsWith('.yaml') || from < text.indexOf('\n---', 3) + 1;
}

/**
 * Signs that may mean something else to YAML are put there only within double quotes, which keep
 * them, and an apostrophe after a letter where nothing is quoted.
 */
function suitsYaml({ source: { text }, from }: Spot, fix: string): boolean {
  if (fix.trim() === '') return false;
  if (!/["'\\:#,[\]{}]|^[&*!|>%@`-]/.test(fix)) return true;
  const line = text.slice(text.lastIndexOf('\n', from - 1) + 1, from);
  if ((line.replace(/\\./g, '').split('"').length - 1) % 2 === 1) return !/["\\]/.test(fix);
  if (!/^(?:\p{L}[^"\\:#,[\]{}]*|')$/u.test(fix) || !/^[^"']*$/u.test(line)) return false;
  return fix !== "'" || /\p{L}$/u.test(line);
}
