import type { Run } from '../model/index.js';

/** What a stretch of words is set in. */
export type Face = Pick<Run, 'italic' | 'bold' | 'hold' | 'count'>;

/** A UTF-16 unit of words with its face. */
export interface Faced {
  readonly sign: string;
  readonly face: Face;
}

export const PLAIN: Face = { italic: false, bold: false, hold: null, count: null };

/**
 * Words as Markdown that reads as these words again. An empty line parts paragraphs, any other line
 * end is a hard break.
 * @param startsLine whether they come to stand first on a line, where more signs are markup.
 */
export function written(words: string, startsLine: boolean, lineEnd: string): string {
  return words
    .split('\n\n')
    .map((paragraph, at) => lines(paragraph, startsLine || at > 0, lineEnd))
    .join(`${lineEnd}${lineEnd}`);
}

function lines(paragraph: string, startsLine: boolean, lineEnd: string): string {
  return paragraph
    .split('\n')
    .map((line, at) => {
      const escaped = line.replace(/[\\*_[\]<>`]|&(?=[#A-Za-z])/g, '\\$&');
      return startsLine || at > 0 ? escapedStart(escaped) : escaped;
    })
    .join(`\\${lineEnd}`);
}

/** What would begin a heading, a list, a rule or a fence. */
function escapedStart(line: string): string {
  return line.replace(/^([#+=~-])/, '\\$1').replace(/^(\d+)([.)])/, '$1\\$2');
}

/** A paragraph of faced units as Markdown. */
export function writtenParagraph(units: readonly Faced[], lineEnd: string): string {
  return inHold(units, true, lineEnd);
}

function inHold(units: readonly Faced[], startsLine: boolean, lineEnd: string): string {
  return grouped(units, ({ face }) => face.hold)
    .map(({ key, own }, at) => {
      const inner = inCount(own, startsLine && at === 0 && key === null, lineEnd);
      return key === null ? inner : `[${inner}](held:${key})`;
    })
    .join('');
}

function inCount(units: readonly Faced[], startsLine: boolean, lineEnd: string): string {
  return grouped(units, ({ face }) => face.count)
    .map(({ key, own }, at) => {
      const inner = inFace(own, startsLine && at === 0 && key === null, lineEnd);
      return key === null ? inner : `[${inner}](count:${key})`;
    })
    .join('');
}

const MARKS = { none: '', italic: '*', bold: '**', both: '***' } as const;

function inFace(units: readonly Faced[], startsLine: boolean, lineEnd: string): string {
  const markOf = ({ face: { italic, bold } }: Faced): keyof typeof MARKS => {
    if (italic && bold) return 'both';
    return bold ? 'bold' : italic ? 'italic' : 'none';
  };
  return grouped(units, markOf)
    .map(({ key, own }, at) => {
      const words = own.map(({ sign }) => sign).join('');
      const [, before = '', inner = '', after = ''] = /^(\s*)([^]*?)(\s*)$/.exec(words) ?? [];
      const mark = inner === '' ? '' : MARKS[key];
      const isFirst = startsLine && at === 0;
      if (mark === '') return written(words, isFirst, lineEnd);
      return `${written(before, isFirst, lineEnd)}${mark}${written(inner, false, lineEnd)}${mark}${written(after, false, lineEnd)}`;
    })
    .join('');
}

function grouped<K>(
  units: readonly Faced[],
  keyOf: (unit: Faced) => K,
): readonly { readonly key: K; readonly own: readonly Faced[] }[] {
  const groups: { key: K; own: Faced[] }[] = [];
  for (const unit of units) {
    const key = keyOf(unit);
    const last = groups.at(-1);
    if (last?.key === key) last.own.push(unit);
    else groups.push({ key, own: [unit] });
  }
  return groups;
}
