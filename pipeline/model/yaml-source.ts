import {
  Composer,
  Document,
  Parser,
  YAMLParseError,
  isMap,
  isScalar,
  isSeq,
  type CST,
  type Node,
  type Pair,
  type YAMLMap,
} from 'yaml';

import type { SourceFile, Spot } from './source.js';

/** Keys and list positions from the top of a YAML text to a value in it. */
export type YamlPath = readonly (string | number)[];

const OPTIONS = {
  schema: 'failsafe',
  version: '1.2',
  strict: true,
  uniqueKeys: false,
  prettyErrors: false,
  logLevel: 'error',
} as const;

/** Deepest nesting that is composed: the composer recurses, and a full stack can end the process. */
const DEEPEST_COMPOSED = 100;

/**
 * Parses YAML with every plain value left as the text that was typed. Keys that stand twice are for
 * the reader to find: the library takes quadratic time for it.
 */
export function parseYaml(text: string): Document {
  const tokens = [...new Parser().parse(text)];
  const deep = mayBeDeep(text) ? firstTooDeep(tokens) : undefined;
  if (deep) return refused(deep.offset, 'RESOURCE_EXHAUSTION', 'nested too deep');
  const [first, second] = new Composer(OPTIONS).compose(tokens, true, text.length);
  if (!first) return refused(0, 'UNEXPECTED_TOKEN', 'no document');
  if (second) first.errors.push(trouble(second.range[0], 'MULTIPLE_DOCS', 'a second document'));
  return first;
}

function refused(at: number, code: YAMLParseError['code'], message: string): Document {
  const document = new Document(null, OPTIONS);
  document.errors.push(trouble(at, code, message));
  return document;
}

function trouble(at: number, code: YAMLParseError['code'], message: string): YAMLParseError {
  return new YAMLParseError([at, at + 1], code, message);
}

/** Each level of nesting needs a bracket, a colon, a dash or a question mark of its own. */
function mayBeDeep(text: string): boolean {
  return (text.match(/[[{:?-]/g)?.length ?? 0) > DEEPEST_COMPOSED;
}

function firstTooDeep(top: readonly CST.Token[]): CST.Token | undefined {
  let layer = top;
  for (let depth = 0; depth <= DEEPEST_COMPOSED && layer.length > 0; depth++) {
    layer = layer.flatMap(tokensIn);
  }
  return layer[0];
}

function tokensIn(token: CST.Token): CST.Token[] {
  if (token.type === 'document') return token.value ? [token.value] : [];
  if (!('items' in token)) return [];
  return token.items.flatMap((item) => [item.key, item.value].filter((part) => part != null));
}

/** The parts of a Markdown file with front matter, as offsets: `---`, YAML, `---`, body. */
export interface Fence {
  readonly yamlFrom: number;
  readonly yamlTo: number;
  readonly bodyFrom: number;
}

/**
 * Finds the front matter of a Markdown file: the first line is exactly `---`, and so is a later one.
 * Null if there is none, or if a line in between only begins with `---`: it would end the front
 * matter for some readers and not for others.
 */
export function fenceOf(text: string): Fence | null {
  const opening = /^---\r?\n/.exec(text)?.[0].length;
  if (opening === undefined) return null;
  const closing = /(?<![^\n])---([^\r\n]*)(\r?\n|$)/.exec(text.slice(opening));
  if (!closing || closing[1] !== '') return null;
  const yamlTo = opening + closing.index;
  return { yamlFrom: opening, yamlTo, bodyFrom: yamlTo + closing[0].length };
}

/** Where the YAML of a source file starts and ends: the whole file, or its front matter. */
function yamlRange(source: SourceFile): { from: number; to: number } {
  const fence = source.file.endsWith('.md') ? fenceOf(source.text) : null;
  return fence ? { from: fence.yamlFrom, to: fence.yamlTo } : { from: 0, to: source.text.length };
}

/** Finds the spot of a path, or of its key, in one source. */
export type Locator = (path: YamlPath, what?: 'key' | 'value') => Spot;

/**
 * Where the value (or its key) at a path stands. If there is nothing at the path, the nearest thing
 * above it is taken, so that a finding always has a place.
 */
export function spotOf(source: SourceFile, path: YamlPath, what: 'key' | 'value' = 'value'): Spot {
  return locatorOf(source)(path, what);
}

/** `spotOf` for many places in one source, which is parsed once. */
export function locatorOf(source: SourceFile): Locator {
  const range = yamlRange(source);
  const document = parseYaml(source.text.slice(range.from, range.to));
  const pairs = pairFinder();
  return (path, what = 'value') => {
    const [from, to] = nodeAt(document.contents, path, what, pairs)?.range ?? [0, 0];
    return { source, from: range.from + from, to: range.from + to };
  };
}

/** Keys as they are compared: normalised, so that one letter has one spelling. */
export function keyOf(key: unknown): string {
  return isScalar(key) && typeof key.value === 'string' ? key.value.normalize('NFC') : '';
}

type PairFinder = (map: YAMLMap, key: string) => Pair | undefined;

function pairFinder(): PairFinder {
  const known = new Map<YAMLMap, Map<string, Pair>>();
  return (map, key) => {
    const pairs =
      known.get(map) ?? new Map(map.items.toReversed().map((pair) => [keyOf(pair.key), pair]));
    known.set(map, pairs);
    return pairs.get(key);
  };
}

function nodeAt(
  top: Node | null,
  path: YamlPath,
  what: 'key' | 'value',
  pairs: PairFinder,
): Node | null {
  let node = top;
  for (const [depth, step] of path.entries()) {
    if (isMap(node)) {
      const pair = pairs(node, String(step));
      if (!pair) return firstKey(node);
      const last = depth === path.length - 1;
      const key = asNode(pair.key);
      node = last && what === 'key' ? key : (asNode(pair.value) ?? key);
    } else if (isSeq(node)) {
      node = asNode(node.items[Number(step)]) ?? node;
    } else return node;
  }
  return firstKey(node);
}

/** A whole map is too long to point at: its first key stands for it. */
function firstKey(node: Node | null): Node | null {
  return isMap(node) ? asNode(node.items[0]?.key) : node;
}

function asNode(value: unknown): Node | null {
  return isMap(value) || isSeq(value) || isScalar(value) ? value : null;
}
