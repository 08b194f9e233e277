import { isMap, isScalar, isSeq, type Node, type Pair, type YAMLMap, type YAMLSeq } from 'yaml';

import { fenceOf, keyOf, parseYaml, type SourceFile, type YamlPath } from '../model/index.js';
import { afterLine, endOf, hasOwnLine, lineStart, startOf } from './yaml-ends.js';
import { rewriteScalar } from './scalar.js';
import {
  flow,
  isList,
  isMapping,
  isSame,
  keyText,
  valueOf,
  type Record,
  type YamlValue,
} from './yaml-values.js';

export type { YamlValue } from './yaml-values.js';

/** A file with its YAML parsed; offsets of nodes are moved by `from`. */
interface Parsed {
  readonly source: SourceFile;
  readonly from: number;
  readonly top: Node | null;
}

/**
 * The front matter of a file, or all of a YAML file, as text values; null if it cannot be parsed, has
 * a key twice, or is no map.
 */
export function frontValues(source: SourceFile): Record | null {
  const parsed = parse(source);
  if (!parsed) return null;
  if (parsed.top === null || (isScalar(parsed.top) && parsed.top.source === '')) return {};
  const value = valueOf(parsed.top);
  return typeof value === 'string' || isList(value) ? null : value;
}

/**
 * The source with another value at a path, or without it where the value is null: nothing but what
 * must change does. Comments, the order of keys, quotes and line ends stay; a new key stands where
 * `order` puts it, a list or map that is left empty goes.
 * @throws RangeError where it cannot be written so that it reads as this value again.
 */
export function withValue(
  source: SourceFile,
  path: YamlPath,
  value: YamlValue | null,
  order: readonly string[] = [],
): SourceFile {
  if (isSame(valueAt(source, path), value)) return source;
  for (const way of [changed, replaced]) {
    const after = way(source, path, value, order);
    if (after && isSame(valueAt(after, path), value) && isElseSame(source, after, path)) {
      return after;
    }
  }
  throw new RangeError(`${path.join('.')} cannot be changed here: change it in the text itself`);
}

function parse(source: SourceFile): Parsed | null {
  const fence = source.file.endsWith('.md') ? fenceOf(source.text) : undefined;
  if (fence === null) return null;
  const [from, to] = fence ? [fence.yamlFrom, fence.yamlTo] : [0, source.text.length];
  const document = parseYaml(source.text.slice(from, to));
  return document.errors.length > 0 ? null : { source, from, top: document.contents };
}

/** Whether nothing but the key at the top of the path reads otherwise, and no key stands twice. */
function isElseSame(before: SourceFile, after: SourceFile, [top]: YamlPath): boolean {
  const [was, is] = [frontValues(before), frontValues(after)];
  if (!was || !is) return false;
  const rest = (all: Record): Record =>
    Object.fromEntries(Object.entries(all).filter(([key]) => key !== top));
  return isSame(rest(was), rest(is));
}

function nodeAt(parsed: Parsed | null, path: YamlPath): unknown {
  return path.reduce<unknown>((node, step) => {
    if (isMap(node)) return pairOf(node, step)?.value;
    return isSeq(node) && typeof step === 'number' ? node.items[step] : undefined;
  }, parsed?.top);
}

function pairOf(map: YAMLMap, key: string | number): Pair | undefined {
  return map.items.find((pair) => keyOf(pair.key) === String(key));
}

function valueAt(source: SourceFile, path: YamlPath): YamlValue | null {
  const parsed = parse(source);
  const node = nodeAt(parsed, path);
  if (node !== undefined && node !== null) return valueOf(node);
  const parent = nodeAt(parsed, path.slice(0, -1));
  return isMap(parent) && pairOf(parent, path.at(-1) ?? '') ? '' : null;
}

type Way = (
  source: SourceFile,
  path: YamlPath,
  value: YamlValue | null,
  order: readonly string[],
) => SourceFile | null;

/** Changes what differs within the value, and leaves the rest of it. */
const changed: Way = (source, path, value, order) => {
  const parsed = parse(source);
  const parent = nodeAt(parsed, path.slice(0, -1));
  const step = path.at(-1);
  if (!parsed || step === undefined) return null;
  if (value === null) return removed(parsed, path, order);
  const node = nodeAt(parsed, path);
  if (valueAt(source, path) !== null) return within(parsed, path, node, value, order);
  if (isMap(parent)) return withPair(parsed, parent, String(step), value, path.length, order);
  if (isSeq(parent)) return withItem(parsed, parent, Number(step), value);
  if (path.length > 1) {
    const whole = typeof step === 'number' ? [value] : { [step]: value };
    return withValue(source, path.slice(0, -1), whole, order);
  }
  const key = `${keyText(String(step))}: ${flow(value)}${lineEndOf(source)}`;
  return parsed.top === null || !isMap(parsed.top)
    ? spliced(source, parsed.from, parsed.from, key)
    : null;
};

/** Writes the whole value anew, on one line. */
const replaced: Way = (source, path, value) => {
  const parsed = parse(source);
  const node = nodeAt(parsed, path);
  if (!parsed || value === null || !isNode(node)) return null;
  return spliced(source, parsed.from + startOf(node), parsed.from + endOf(node), flow(value));
};

function isNode(node: unknown): node is Node {
  return isMap(node) || isSeq(node) || isScalar(node);
}

function within(
  { source, from }: Parsed,
  path: YamlPath,
  node: unknown,
  value: YamlValue,
  order: readonly string[],
): SourceFile | null {
  const old = valueOf(node);
  if (isScalar(node) && typeof value === 'string') {
    const [start, end] = [startOf(node), endOf(node)];
    if (start === end) return spliced(source, from + start, from + end, ` ${flow(value)}`);
    const { spot, text } = rewriteScalar(source, path, value);
    return spliced(source, spot.from, spot.to, text);
  }
  if (isMap(node) && isMapping(value) && isMapping(old)) {
    const gone = Object.keys(old).filter((key) => !Object.hasOwn(value, key));
    const less = gone.reduce((at, key) => withValue(at, [...path, key], null, order), source);
    return Object.entries(value).reduce(
      (at, [key, each]) => withValue(at, [...path, key], each, order),
      less,
    );
  }
  if (isSeq(node) && isList(value) && isList(old)) return withList(source, path, old, value, order);
  return null;
}

/** Of a list only the items between those that both have at its start and at its end change. */
function withList(
  source: SourceFile,
  path: YamlPath,
  old: readonly YamlValue[],
  value: readonly YamlValue[],
  order: readonly string[],
): SourceFile {
  const shorter = Math.min(old.length, value.length);
  let first = 0;
  while (first < shorter && isSame(old[first] ?? null, value[first] ?? null)) first += 1;
  let last = 0;
  while (last < shorter - first && isSame(old.at(-1 - last) ?? null, value.at(-1 - last) ?? null)) {
    last += 1;
  }
  const [was, is] = [old.length - last, value.length - last];
  let after = source;
  for (let at = first; at < Math.min(was, is); at += 1) {
    after = withValue(after, [...path, at], value[at] ?? '', order);
  }
  for (let at = was - 1; at >= is; at -= 1) after = removedAt(after, [...path, at], order);
  for (let at = was; at < is; at += 1) {
    const parsed = parse(after);
    const list = nodeAt(parsed, path);
    const more = parsed && isSeq(list) ? withItem(parsed, list, at, value[at] ?? '') : null;
    if (more) after = more;
  }
  return after;
}

function removedAt(source: SourceFile, path: YamlPath, order: readonly string[]): SourceFile {
  const parsed = parse(source);
  return (parsed && removed(parsed, path, order)) ?? source;
}

function removed(parsed: Parsed, path: YamlPath, order: readonly string[]): SourceFile | null {
  const parent = nodeAt(parsed, path.slice(0, -1));
  const step = path.at(-1);
  if (!(isMap(parent) || isSeq(parent)) || step === undefined) return null;
  const items: readonly unknown[] = parent.items;
  const at = isMap(parent)
    ? parent.items.findIndex(({ key }) => keyOf(key) === step)
    : Number(step);
  if (items.length === 1 && path.length > 1) return removed(parsed, path.slice(0, -1), order);
  const { source, from } = parsed;
  const { text } = source;
  const [item, next, before] = [items[at], items[at + 1], items[at - 1]];
  const [start, end] = [from + startOf(item), from + endOf(item)];
  if (parent.flow === true || !hasOwnLine(text, start, isSeq(parent))) {
    if (next !== undefined) return spliced(source, start, from + startOf(next), '');
    return before === undefined ? null : spliced(source, from + endOf(before), end, '');
  }
  return spliced(source, lineStart(text, start), afterLine(text, end), '');
}

function withPair(
  { source, from }: Parsed,
  map: YAMLMap,
  key: string,
  value: YamlValue,
  depth: number,
  order: readonly string[],
): SourceFile | null {
  const pair = `${keyText(key)}: ${flow(value)}`;
  const last = map.items.at(-1);
  if (last === undefined) {
    return spliced(source, from + startOf(map), from + endOf(map), `{ ${pair} }`);
  }
  if (map.flow === true) {
    const end = from + endOf(last);
    return spliced(source, end, end, `, ${pair}`);
  }
  const { text } = source;
  const rank = order.indexOf(key);
  const isTop = depth === 1 && rank >= 0;
  const stands = ({ key: each }: Pair): boolean => {
    const own = order.indexOf(keyOf(each));
    return own >= 0 && own < rank;
  };
  const before = isTop ? map.items.findLast(stands) : last;
  const [first] = map.items;
  const column = from + startOf(first) - lineStart(text, from + startOf(first));
  const indent = ' '.repeat(column);
  const end = lineEndOf(source);
  if (before === undefined) {
    const at = lineStart(text, from + startOf(first));
    return spliced(source, at, at, `${indent}${pair}${end}`);
  }
  const at = afterLine(text, from + endOf(before));
  const isOpen = at === text.length && !/[\r\n]$/.test(text);
  return spliced(source, at, at, isOpen ? `${end}${indent}${pair}` : `${indent}${pair}${end}`);
}

function withItem(
  { source, from }: Parsed,
  list: YAMLSeq,
  at: number,
  value: YamlValue,
): SourceFile | null {
  const { text } = source;
  const [here, before, first] = [list.items[at], list.items[at - 1], list.items[0]];
  if (first === undefined) {
    return spliced(source, from + startOf(list), from + endOf(list), `[${flow(value)}]`);
  }
  if (list.flow === true) {
    if (here !== undefined) {
      const start = from + startOf(here);
      return spliced(source, start, start, `${flow(value)}, `);
    }
    const end = from + endOf(before);
    return before === undefined ? null : spliced(source, end, end, `, ${flow(value)}`);
  }
  const start = from + startOf(first);
  const mark = text.slice(lineStart(text, start), start);
  if (!/^ *- +$/.test(mark)) return null;
  const place =
    before === undefined ? lineStart(text, start) : afterLine(text, from + endOf(before));
  return spliced(source, place, place, `${mark}${flow(value)}${lineEndOf(source)}`);
}

function spliced(source: SourceFile, from: number, to: number, text: string): SourceFile {
  return { file: source.file, text: source.text.slice(0, from) + text + source.text.slice(to) };
}

function lineEndOf({ text }: SourceFile): string {
  return /\r\n|\n|\r/.exec(text)?.[0] ?? '\n';
}
