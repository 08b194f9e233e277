import { isMap, isPair, isScalar, isSeq } from 'yaml';

/** Where a node, or the key of a pair, starts in its YAML. */
export function startOf(item: unknown): number {
  if (isPair(item)) return startOf(item.key);
  if (isMap(item) || isSeq(item) || isScalar(item)) return item.range?.[0] ?? 0;
  return 0;
}

/** Where the words of a node or pair end: without the line end, or the comment, that follows. */
export function endOf(item: unknown): number {
  if (isPair(item)) {
    const hasValue = isMap(item.value) || isSeq(item.value) || isScalar(item.value);
    return hasValue ? endOf(item.value) : endOf(item.key) + 1;
  }
  if ((isMap(item) || isSeq(item)) && item.flow !== true) {
    const last: unknown = item.items.at(-1);
    return last === undefined ? (item.range?.[1] ?? 0) : endOf(last);
  }
  if (isScalar(item) && /^BLOCK/.test(item.type ?? '')) return (item.range?.[1] ?? 1) - 1;
  if (isMap(item) || isSeq(item) || isScalar(item)) return item.range?.[1] ?? 0;
  return 0;
}

/** Where the line of an offset starts. */
export function lineStart(text: string, at: number): number {
  return Math.max(text.lastIndexOf('\n', at - 1), text.lastIndexOf('\r', at - 1)) + 1;
}

/** Where the line after that of an offset starts; the end of the text if there is none. */
export function afterLine(text: string, at: number): number {
  const end = /\r\n|\n|\r/g;
  end.lastIndex = at;
  return end.exec(text) === null ? text.length : end.lastIndex;
}

/** Whether nothing but room, and for an item of a list its mark, stands before it on its line. */
export function hasOwnLine(text: string, at: number, isItem: boolean): boolean {
  const before = text.slice(lineStart(text, at), at);
  return /^ *$/.test(before) || (isItem && /^ *- +$/.test(before));
}
