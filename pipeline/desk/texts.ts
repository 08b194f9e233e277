import { createHash } from 'node:crypto';

import { frontValues } from '../edit/index.js';
import { fenceOf } from '../model/index.js';
import type { FileDigest, TypedCard } from './protocol.js';

const MARK = '\ufeff';
const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true });

/** A file of words: its text without the byte order mark, line ends as they are. */
export interface FileText {
  readonly text: string;
  readonly isMarked: boolean;
  readonly digest: FileDigest;
}

/** Null for bytes that are no UTF-8. */
export function fileText(bytes: Uint8Array): FileText | null {
  try {
    const text = decoder.decode(bytes);
    const isMarked = text.startsWith(MARK);
    return { text: isMarked ? text.slice(1) : text, isMarked, digest: digestOf(bytes) };
  } catch {
    return null;
  }
}

/** The same file with other words. */
export function withText({ isMarked }: FileText, text: string): FileText {
  return { text, isMarked, digest: digestOf(bytesOf({ text, isMarked })) };
}

export function bytesOf({ text, isMarked }: Pick<FileText, 'text' | 'isMarked'>): Uint8Array {
  return new TextEncoder().encode(isMarked ? MARK + text : text);
}

function digestOf(bytes: Uint8Array): FileDigest {
  return createHash('sha256').update(bytes).digest('hex');
}

/** Where the copy stands in a file: below the front matter, without empty lines before and after. */
export function copyRange(text: string): { readonly from: number; readonly to: number } | null {
  const fence = fenceOf(text);
  if (!fence) return null;
  const body = text.slice(fence.bodyFrom);
  const before = /^(?:[ \t]*(?:\r\n|\n|\r))*/.exec(body)?.[0].length ?? 0;
  const from = fence.bodyFrom + before;
  return { from, to: Math.max(from, fence.bodyFrom + endOfWords(body)) };
}

/** The length of a text without the white space at its end. */
function endOfWords(text: string): number {
  let end = text.length;
  while (end > 0 && ' \t\r\n'.includes(text.charAt(end - 1))) end -= 1;
  return end;
}

/** A text with every line end as LF. */
export function withPlainEnds(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

/** A card's file as the page edits it. */
export function typedCard(file: string, text: string): TypedCard {
  const range = copyRange(text);
  return {
    text: withPlainEnds(text),
    copy: range ? withPlainEnds(text.slice(range.from, range.to)) : '',
    fields: frontValues({ file, text }),
  };
}

/**
 * New lines in place of old ones: a line that was there keeps its own end, a new one has that of
 * the first line of the file.
 * @param lineEnd of the file.
 */
export function withOwnEnds(old: string, fresh: string, lineEnd: string): string {
  const [was, is] = [linesOf(old), linesOf(withPlainEnds(fresh))];
  const shorter = Math.min(was.length, is.length);
  let first = 0;
  while (first < shorter && was[first]?.words === is[first]?.words) first += 1;
  let last = 0;
  while (last < shorter - first && was.at(-1 - last)?.words === is.at(-1 - last)?.words) last += 1;
  return is
    .map(({ words, end }, at) => {
      const old =
        at < first ? was[at] : at >= is.length - last ? was[at + was.length - is.length] : null;
      const own = old === null || old === undefined || old.end === '' ? lineEnd : old.end;
      return words + (end === '' ? '' : own);
    })
    .join('');
}

interface TextLine {
  readonly words: string;
  readonly end: string;
}

function linesOf(text: string): readonly TextLine[] {
  const lines: TextLine[] = [];
  let from = 0;
  for (const match of text.matchAll(/\r\n|\n|\r/g)) {
    lines.push({ words: text.slice(from, match.index), end: match[0] });
    from = match.index + match[0].length;
  }
  return [...lines, { words: text.slice(from), end: '' }];
}

/** The line end of a file: that of its first line. */
export function lineEndIn(text: string): string {
  return /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
}
