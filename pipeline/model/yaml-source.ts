import { isMap, isScalar, isSeq, parseDocument, type Document, type Node } from 'yaml';

import type { SourceFile, Spot } from './source.js';

/** Keys and list positions from the top of a YAML text to a value in it. */
export type YamlPath = readonly (string | number)[];

/** Parses YAML with every plain value left as the text that was typed. */
export function parseYaml(text: string): Document {
  return parseDocument(text, {
    schema: 'failsafe',
    version: '1.2',
    strict: true,
    uniqueKeys: true,
    prettyErrors: false,
    logLevel: 'error',
  });
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
  const closing = /^---([^\r\n]*)(\r?\n|$)/m.exec(text.slice(opening));
  if (!closing || closing[1] !== '') return null;
  const yamlTo = opening + closing.index;
  return { yamlFrom: opening, yamlTo, bodyFrom: yamlTo + closing[0].length };
}

/** Where the YAML of a source file starts and ends: the whole file, or its front matter. */
function yamlRange(source: SourceFile): { from: number; to: number } {
  const fence = source.file.endsWith('.md') ? fenceOf(source.text) : null;
  return fence ? { from: fence.yamlFrom, to: fence.yamlTo } : { from: 0, to: source.text.length };
}

/**
 * Where the value (or its key) at a path stands. If there is nothing at the path, the nearest thing
 * above it is taken, so that a finding always has a place.
 */
export function spotOf(source: SourceFile, path: YamlPath, what: 'key' | 'value' = 'value'): Spot {
  const range = yamlRange(source);
  const document = parseYaml(source.text.slice(range.from, range.to));
  const found = nodeAt(document.contents, path, what);
  const [from, to] = found?.range ?? [0, 0];
  return { source, from: range.from + from, to: range.from + to };
}

function nodeAt(top: Node | null, path: YamlPath, what: 'key' | 'value'): Node | null {
  let node = top;
  for (const [depth, step] of path.entries()) {
    if (isMap(node)) {
      const pair = node.items.find((item) => isScalar(item.key) && item.key.value === step);
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
