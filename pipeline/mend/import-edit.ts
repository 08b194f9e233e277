import { isMap, isNode, isScalar, type Node, type Pair, type YAMLMap } from 'yaml';

import { rewriteScalar, splice, type Change } from '../edit/index.js';
import { fenceOf, keyOf, parseYaml, type Fence, type SourceFile } from '../model/index.js';
import type { CellValue } from '../out/sheets/index.js';
import type { Edit } from '../sheet/index.js';
import { mapOf, yamlOf, yamlText } from './import-yaml.js';

/** A card's file with edits made, or why one cannot be made without losing something. */
export type Edited =
  { readonly ok: true; readonly source: SourceFile } | { readonly ok: false; readonly why: string };

/** Something that only a person can change. */
class ByHand extends Error {
  override readonly name = 'ByHand';
}

/**
 * Makes edits in a card's file, one after the other: only the bytes that must change, comments, the
 * order of keys and line ends as they are.
 */
export function editedCard(source: SourceFile, edits: readonly Edit[]): Edited {
  try {
    let now = source;
    for (const { what } of gathered(source, edits)) {
      now =
        what.kind === 'bio'
          ? withBio(now, what.none, what.body)
          : splice(now, [keyChange(now, what.path, what.value)]);
    }
    return { ok: true, source: now };
  } catch (error) {
    if (error instanceof ByHand) return { ok: false, why: error.message };
    throw error;
  }
}

type What =
  Edit['what'] | { readonly kind: 'key'; readonly path: readonly string[]; readonly value: Parts };
type Parts = Map<string, CellValue>;

/** Parts of a key that is not there yet are written together: `image: { file: …, alt: … }`. */
function gathered(source: SourceFile, edits: readonly Edit[]): readonly { readonly what: What }[] {
  const { top } = frontOf(source);
  const news = new Map<string, Map<string, CellValue>>();
  const all: { what: What }[] = [];
  for (const { what } of edits) {
    const [key = '', part] = what.kind === 'key' ? what.path : [];
    if (what.kind !== 'key' || part === undefined || pairOf(top, key)) {
      all.push({ what });
      continue;
    }
    const parts = news.get(key) ?? new Map<string, CellValue>();
    if (!news.has(key)) all.push({ what: { kind: 'key', path: [key], value: parts } });
    news.set(key, parts.set(part, what.value));
  }
  return all;
}

interface Front {
  readonly fence: Fence;
  readonly top: YAMLMap;
}

function frontOf(source: SourceFile): Front {
  const fence = fenceOf(source.text);
  const top = fence && parseYaml(source.text.slice(fence.yamlFrom, fence.yamlTo)).contents;
  if (!isMap(top) || top.flow === true || !fence) {
    throw new ByHand('its front matter is not written as one key a line: change it by hand');
  }
  return { fence, top };
}

function pairOf(map: YAMLMap, key: string): Pair | undefined {
  return map.items.find((pair) => keyOf(pair.key) === key.normalize('NFC'));
}

function keyChange(source: SourceFile, path: readonly string[], value: CellValue | Parts): Change {
  const { fence, top } = frontOf(source);
  const [key = '', part] = path;
  const pair = pairOf(top, key);
  if (!pair) return lineAdded(source, fence, top, key, value);
  if (part === undefined) return replaced(source, fence, pair, path, value);
  if (!isMap(pair.value)) throw new ByHand(`\`${key}\` is not written as a map: change it by hand`);
  const inner = pairOf(pair.value, part);
  return inner
    ? replaced(source, fence, inner, path, value)
    : partAdded(source, fence, pair.value, part, value);
}

/** A line after the last key, in as far as the first one. */
function lineAdded(
  source: SourceFile,
  { yamlFrom, yamlTo }: Fence,
  top: YAMLMap,
  key: string,
  value: CellValue | Parts,
): Change {
  const first = yamlFrom + (rangeOf(top.items[0]?.key)?.[0] ?? 0);
  const start = Math.max(yamlFrom, source.text.lastIndexOf('\n', first - 1) + 1);
  const indent = source.text.slice(start, first);
  if (/\S/.test(indent)) throw new ByHand('its first key does not begin a line: change it by hand');
  const line = `${indent}${yamlText(key)}: ${written(value)}${lineEndOf(source)}`;
  return { spot: { source, from: yamlTo, to: yamlTo }, text: line };
}

/** Before the first part of a map, where it stands in the same manner whatever follows. */
function partAdded(
  source: SourceFile,
  { yamlFrom }: Fence,
  map: YAMLMap,
  part: string,
  value: CellValue | Parts,
): Change {
  const text = `${yamlText(part)}: ${written(value)}`;
  const first = rangeOf(map.items[0]?.key);
  const [start] = rangeOf(map) ?? [0];
  if (map.flow === true) {
    const at = yamlFrom + start + 1;
    const spot = { source, from: at, to: at };
    return { spot, text: first ? ` ${text},` : ` ${text} ` };
  }
  const from = yamlFrom + (first?.[0] ?? start);
  const line = source.text.lastIndexOf('\n', from - 1) + 1;
  const indent = source.text.slice(line, from);
  if (/\S/.test(indent)) throw new ByHand(`\`${part}\` has no line of its own: add it by hand`);
  return { spot: { source, from, to: from }, text: `${text}${lineEndOf(source)}${indent}` };
}

/** A value that stands is replaced: a text in the quotes that it has, all else in one line. */
function replaced(
  source: SourceFile,
  { yamlFrom }: Fence,
  { key, value: was }: Pair,
  path: readonly string[],
  value: CellValue | Parts,
): Change {
  const name = path.join('.');
  const [keyRange, range] = [rangeOf(key), rangeOf(was)];
  if (!keyRange || !range) throw new ByHand(`\`${name}\` cannot be found: change it by hand`);
  if (isScalar(was) && typeof value === 'string' && value !== '') {
    const change = rewriteScalar(source, path, value);
    return isSafelyBare(change.text) ? change : { ...change, text: yamlOf(value) };
  }
  const between = source.text.slice(yamlFrom + keyRange[1], yamlFrom + range[1]);
  if (!isScalar(was) && between.includes('#')) {
    throw new ByHand(
      `a comment may stand inside \`${name}\`, and would be lost: change it by hand`,
    );
  }
  const tail = /\s*$/.exec(between)?.[0] ?? '';
  const spot = { source, from: yamlFrom + keyRange[1], to: yamlFrom + range[1] - tail.length };
  return { spot, text: `: ${written(value)}` };
}

/** Bare words that other readers of YAML take for true or nothing get quotes. */
function isSafelyBare(text: string): boolean {
  return !/^\p{L}/u.test(text) || yamlText(text) === text;
}

function written(value: CellValue | Parts): string {
  return value instanceof Map ? mapOf([...value]) : yamlOf(value);
}

/** The card with another body, the empty lines around it as they are, and with or without `bio: none`. */
function withBio(source: SourceFile, none: boolean, body: string): SourceFile {
  const { fence, top } = frontOf(source);
  const lineEnd = lineEndOf(source);
  const was = source.text.slice(fence.bodyFrom);
  const lead = /^(?:[^\S\r\n]*(?:\r\n|\n|\r))*/.exec(was)?.[0] ?? '';
  const words = was.slice(lead.length).trimEnd();
  const from = fence.bodyFrom + lead.length;
  // Where there were no words, the fence may lack its line end, and the words need one of their own.
  const isNew = words === '' && body !== '';
  const start = isNew && !source.text.slice(0, from).endsWith('\n') ? lineEnd : '';
  const text = `${start}${body.replaceAll('\n', lineEnd)}${isNew ? lineEnd : ''}`;
  const bodyChange: Change = { spot: { source, from, to: from + words.length }, text };
  const stands = pairOf(top, 'bio');
  const changes = [bodyChange];
  if (none && !stands) changes.push(lineAdded(source, fence, top, 'bio', 'none'));
  if (!none && stands) changes.push(lineRemoved(source, fence, stands));
  return splice(source, changes);
}

function lineRemoved(source: SourceFile, { yamlFrom }: Fence, { key, value }: Pair): Change {
  const from = source.text.lastIndexOf('\n', yamlFrom + (rangeOf(key)?.[0] ?? 0) - 1) + 1;
  const end = source.text.indexOf('\n', yamlFrom + (rangeOf(value)?.[1] ?? 0)) + 1;
  if (source.text.slice(from, end).includes('#')) {
    throw new ByHand('a comment stands beside `bio`, and would be lost: change it by hand');
  }
  return { spot: { source, from, to: end }, text: '' };
}

function lineEndOf({ text }: SourceFile): string {
  return /\r\n|\n/.exec(text)?.[0] ?? '\n';
}

function rangeOf(node: unknown): Node['range'] {
  return isNode(node) ? node.range : null;
}
