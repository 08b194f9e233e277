import { isMap, isScalar, isSeq, type Scalar } from 'yaml';
import type { TSchema } from 'typebox';

import { fenceOf, keyOf, parseYaml, type YamlPath } from '../model/index.js';
import { branches, keysAt, optionsAt, topOf } from '../read/index.js';

/** A key or a value of a YAML text that a place of the file is in. */
export interface YamlPlace {
  /** From the top to the value, or to the key. */
  readonly path: YamlPath;
  readonly what: 'key' | 'value';
  /** Where it stands in the file, with its quotes, in UTF-16 units. */
  readonly from: number;
  readonly to: number;
  /** As it is understood. */
  readonly text: string;
}

/** Where the YAML of a file stands: all of it, or its front matter; null if that is not closed. */
export function yamlIn(path: string, text: string): { from: number; to: number } | null {
  if (!path.endsWith('.md')) return { from: 0, to: text.length };
  const fence = fenceOf(text);
  return fence && { from: fence.yamlFrom, to: fence.yamlTo };
}

/** The key or value at an offset; null beside all of them. */
export function yamlPlaceAt(path: string, text: string, offset: number): YamlPlace | null {
  const range = yamlIn(path, text);
  if (!range || offset < range.from || offset > range.to) return null;
  const place = placeIn(text.slice(range.from, range.to), offset - range.from);
  return place && { ...place, from: place.from + range.from, to: place.to + range.from };
}

function placeIn(yaml: string, at: number): YamlPlace | null {
  return placeBelow(parseYaml(yaml).contents, at, []);
}

function placeBelow(node: unknown, at: number, path: YamlPath): YamlPlace | null {
  if (isScalar(node)) return placeOfScalar(node, at, path, 'value');
  if (isSeq(node)) {
    for (const [index, item] of node.items.entries()) {
      const found = placeBelow(item, at, [...path, index]);
      if (found) return found;
    }
  }
  if (!isMap(node)) return null;
  for (const { key, value } of node.items) {
    const below = [...path, keyOf(key)];
    const found =
      (isScalar(key) ? placeOfScalar(key, at, below, 'key') : null) ?? placeBelow(value, at, below);
    if (found) return found;
  }
  return null;
}

function placeOfScalar(
  { range, value }: Scalar,
  at: number,
  path: YamlPath,
  what: YamlPlace['what'],
): YamlPlace | null {
  const [from, to] = range ?? [0, -1];
  if (at < from || at > to) return null;
  return { path, what, from, to, text: typeof value === 'string' ? value.normalize('NFC') : '' };
}

/** Letters that stand in no file, by which a place that holds nothing yet can be found. */
const MARK = 'zqxjk';

/** A place where something is being typed. `typed` is what stands before the cursor. */
export interface TypingPlace extends YamlPlace {
  readonly typed: string;
  /** What may stand there. */
  readonly schemas: readonly TSchema[];
}

/**
 * The key or value that is being typed at an offset, or would be. The YAML need not be whole: what is
 * missing of the key or value at the cursor is thought of as there.
 */
export function typingPlaceAt(
  path: string,
  text: string,
  offset: number,
  schema: TSchema,
): TypingPlace | null {
  const range = yamlIn(path, text) ?? openFront(text);
  if (!range || offset < range.from || offset > range.to) return null;
  const yaml = text.slice(range.from, range.to);
  const at = offset - range.from;
  const asKey = mayBeginKey(yaml, at) ? marked(yaml, at, `${MARK}: `) : null;
  const key = asKey?.what === 'key' && takesKeys(containerOf(schema, asKey)) ? asKey : null;
  const place = key ?? marked(yaml, at, MARK);
  if (!place) return null;
  const typed = place.text.slice(0, Math.max(0, place.text.indexOf(MARK)));
  const schemas = schemasAt(schema, place.what === 'key' ? place.path.slice(0, -1) : place.path);
  return {
    ...place,
    text: place.text.replace(MARK, ''),
    from: place.from + range.from,
    to: place.to - MARK.length + range.from,
    typed,
    schemas,
  };
}

/** Front matter that is not closed yet goes on to the end. */
function openFront(text: string): { from: number; to: number } | null {
  const opening = /^---\r?\n/.exec(text)?.[0].length;
  return opening === undefined ? null : { from: opening, to: text.length };
}

/** Whether nothing but a word stands on the line before, and no colon after. */
function mayBeginKey(yaml: string, at: number): boolean {
  const start = Math.max(yaml.lastIndexOf('\n', at - 1), yaml.lastIndexOf('\r', at - 1)) + 1;
  const rest = /^[^\r\n]*/.exec(yaml.slice(at))?.[0] ?? '';
  return /^[ -]*[\p{L}\p{N}_-]*$/u.test(yaml.slice(start, at)) && !rest.includes(':');
}

function marked(yaml: string, at: number, mark: string): YamlPlace | null {
  return placeIn(yaml.slice(0, at) + mark + yaml.slice(at), at + 1);
}

function containerOf(schema: TSchema, { path }: YamlPlace): readonly TSchema[] {
  return schemasAt(schema, path.slice(0, -1));
}

/** The schemas of what stands at a path. */
export function schemasAt(schema: TSchema, path: YamlPath): readonly TSchema[] {
  return path.reduce<readonly TSchema[]>((at, step) => optionsAt(at, step), topOf(schema));
}

function takesKeys(schemas: readonly TSchema[]): boolean {
  return (
    keysAt(schemas).length > 0 || branches(schemas).some((each) => 'patternProperties' in each)
  );
}

/** The keys that stand in a map of a file already. */
export function keysThere(path: string, text: string, map: YamlPath): ReadonlySet<string> {
  const range = yamlIn(path, text) ?? openFront(text);
  if (!range) return new Set();
  const node = parseYaml(text.slice(range.from, range.to)).getIn(map, true);
  const top = map.length === 0 ? parseYaml(text.slice(range.from, range.to)).contents : node;
  return new Set(isMap(top) ? top.items.map(({ key }) => keyOf(key)) : []);
}
