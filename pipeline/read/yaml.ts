import { isAlias, isMap, isScalar, isSeq, type Document, type Node } from 'yaml';
import type { TSchema } from 'typebox';

import { keyOf, parseYaml, type SourceFile, type Spot } from '../model/index.js';
import { optionsAt, topOf, wantsBoolean, wantsNumber } from './schema-walk.js';

/** Deepest nesting that a file may have. */
const DEEPEST = 12;
const TOO_DEEP = `this is nested more than ${String(DEEPEST)} deep`;
/** Most characters of YAML in one file. */
const LONGEST = 1_000_000;

/** Something wrong with the YAML itself. */
export interface YamlTrouble {
  readonly spot: Spot;
  readonly message: string;
  readonly found?: string;
  readonly expected?: string;
}

export interface YamlReading {
  readonly value: unknown;
  readonly troubles: readonly YamlTrouble[];
}

/**
 * Reads YAML as text that the schema types: a plain `7` is a number only where the schema asks for
 * a number, and `007`, `1e3`, `yes` or `12:30` stay what was typed.
 * @param offset where `yaml` starts in the source, in UTF-16 units.
 */
export function readYaml(
  source: SourceFile,
  yaml: string,
  offset: number,
  schema: TSchema,
): YamlReading {
  const troubles: YamlTrouble[] = [];
  const report = (range: readonly number[], message: string, more: object = {}): void => {
    const [from = 0, to = from] = range;
    troubles.push({ spot: { source, from: offset + from, to: offset + to }, message, ...more });
  };
  if (yaml.length > LONGEST) {
    report([0], `this file is longer than ${String(LONGEST)} characters`);
    return { value: null, troubles };
  }
  const document = parseYaml(yaml);
  reportSyntax(document, yaml, report);
  const value =
    troubles.length > 0
      ? null
      : valueOf(document.contents, topOf(schema), { yaml, report, depth: 0 });
  return { value, troubles };
}

type Report = (range: readonly number[], message: string, more?: object) => void;

function reportSyntax(document: Document, yaml: string, report: Report): void {
  const troubles = [...document.errors, ...document.warnings];
  const tooDeep = troubles.find((trouble) => trouble.code === 'RESOURCE_EXHAUSTION');
  for (const trouble of tooDeep ? [tooDeep] : troubles) {
    const found = lineAt(yaml, trouble.pos[0]);
    report(trouble.pos, sayYamlError(trouble.code, trouble.message), {
      ...(found === '' ? {} : { found }),
      ...(WANT_QUOTES.has(trouble.code) ? { expected: 'quotes around text with such signs' } : {}),
    });
  }
  if (document.directives?.docStart === true) reportDirectives(yaml, report);
}

/** Troubles that text without quotes makes: `name: a: b`, `name: @a`, `name: - a`. */
const WANT_QUOTES = new Set<string>([
  'BLOCK_AS_IMPLICIT_KEY',
  'BAD_SCALAR_START',
  'UNEXPECTED_TOKEN',
]);

/** The words of the line at an offset, cut to what a message can carry. */
function lineAt(yaml: string, at: number): string {
  const start = yaml.lastIndexOf('\n', at - 1) + 1;
  const line = /^[^\r\n]*/.exec(yaml.slice(start, start + 200))?.[0] ?? '';
  return line.trim().slice(0, 60);
}

/** Only lines that begin with % before the first document are directives. */
function reportDirectives(yaml: string, report: Report): void {
  const before = yaml.slice(0, yaml.search(/^---/m));
  for (const line of before.matchAll(/^%[^\r\n]*/gm)) {
    report([line.index, line.index + line[0].length], 'lines that begin with % are not used here');
  }
}

function sayYamlError(code: string, message: string): string {
  if (code === 'RESOURCE_EXHAUSTION') return TOO_DEEP;
  if (code === 'TAG_RESOLVE_FAILED') return 'tags (words that begin with !) are not used here';
  if (code === 'MULTIPLE_DOCS') return 'a second document begins here; a file holds one';
  return `this is not YAML: ${message.charAt(0).toLowerCase()}${message.slice(1).replace(/\.$/, '')}`;
}

interface Walk {
  readonly yaml: string;
  readonly report: Report;
  readonly depth: number;
}

function valueOf(node: unknown, schemas: readonly TSchema[], walk: Walk): unknown {
  if (isAlias(node)) {
    walk.report(node.range ?? [0], 'aliases (words that begin with *) are not used here');
    return null;
  }
  if (!isMap(node) && !isSeq(node) && !isScalar(node)) return '';
  reportUnused(node, walk);
  if (walk.depth > DEEPEST) {
    walk.report(node.range ?? [0], TOO_DEEP);
    return null;
  }
  if (isScalar(node)) return scalarOf(node, schemas, walk);
  const deeper = { ...walk, depth: walk.depth + 1 };
  if (isSeq(node))
    return node.items.map((item, at) => valueOf(item, optionsAt(schemas, at), deeper));
  const keys = new Set<string>();
  return Object.fromEntries(
    node.items.map((pair) => {
      const key = keyOf(pair.key);
      if (isScalar(pair.key)) reportKey(pair.key, key, keys, walk);
      else walk.report(node.range ?? [0], 'a key must be plain text');
      keys.add(key);
      return [key, valueOf(pair.value, optionsAt(schemas, key), deeper)];
    }),
  );
}

function reportKey(node: Node, key: string, earlier: ReadonlySet<string>, walk: Walk): void {
  reportUnused(node, walk);
  if (earlier.has(key)) walk.report(node.range ?? [0], 'this key stands twice', { found: key });
  if (key === '__proto__') walk.report(node.range ?? [0], 'this word cannot be a key');
}

function reportUnused(node: Node & { anchor?: string; tag?: string }, walk: Walk): void {
  if (node.anchor !== undefined) {
    walk.report(node.range ?? [0], `anchors (here &${node.anchor}) are not used here`);
  }
  if (node.tag !== undefined) {
    walk.report(node.range ?? [0], `tags (here ${node.tag}) are not used here`);
  }
}

function scalarOf(
  node: Node & { value: unknown; type?: string },
  schemas: readonly TSchema[],
  walk: Walk,
): unknown {
  const text = typeof node.value === 'string' ? node.value.normalize('NFC') : '';
  if (node.type?.startsWith('BLOCK') !== true && text !== '') reportSwallowed(node, walk);
  if (node.type !== 'PLAIN') return text;
  if (wantsNumber(schemas) && /^-?(0|[1-9]\d{0,14})(\.\d{1,9})?$/.test(text)) return Number(text);
  if (wantsBoolean(schemas) && (text === 'true' || text === 'false')) return text === 'true';
  return text;
}

/** `name: Foo #1` would silently become "Foo": a comment begins with `# `. */
function reportSwallowed(node: Node, walk: Walk): void {
  const [from = 0, end = 0] = node.range ?? [];
  if (walk.yaml[end] !== ' ' && walk.yaml[end] !== '\t') return;
  const rest = /^[ \t]+#(?![ \t\r\n]|$)[^\r\n]*/.exec(walk.yaml.slice(end, end + 200))?.[0];
  if (rest === undefined) return;
  const found = walk.yaml.slice(from, end + rest.length).replace(/\s+/g, ' ');
  walk.report([from, end + rest.length], 'what follows # would be lost as a comment', {
    found,
    expected: `${inQuotes(found)}, or a space after # if it is a comment`,
  });
}

/** In single quotes only a single quote is a sign, and stands for itself when doubled. */
function inQuotes(text: string): string {
  return /["\\]/.test(text) ? `'${text.replaceAll("'", "''")}'` : `"${text}"`;
}
