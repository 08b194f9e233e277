import { TableError } from './grid.js';

/** Told what stands in an XML text, in its order. Prefixes of names are left out. */
export interface XmlListener {
  readonly open?: (name: string, attributes: ReadonlyMap<string, string>) => void;
  readonly close?: (name: string) => void;
  /** Words; those of one element may come in several pieces. */
  readonly text?: (text: string) => void;
}

/** Deepest nesting that is read; a sheet of a workbook has less than ten. */
const DEEPEST = 200;

const NAME = /<([^\s<>/="']+)/y;
const ATTRIBUTE = /\s+([^\s<>/="']+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/y;
const END = /\s*(\/?)>/y;
const CLOSING = /<\/([^\s<>/="']+)\s*>/y;

/**
 * Reads XML 1.0 as a workbook has it: elements, attributes, words, CDATA, comments. A document type
 * is refused, so that no entity is ever made.
 * @throws TableError for what is not well-formed.
 */
export function readXml(xml: string, { open, close, text }: XmlListener): void {
  const inside: string[] = [];
  let at = xml.startsWith('\ufeff') ? 1 : 0;
  while (at < xml.length) {
    const next = xml.indexOf('<', at);
    const end = next < 0 ? xml.length : next;
    if (end > at && inside.length > 0) text?.(decoded(xml.slice(at, end)));
    if (next < 0) break;
    const skipped = skippedFrom(xml, next, text);
    if (skipped !== null) {
      at = skipped;
      continue;
    }
    if (xml.startsWith('</', next)) {
      const [tag, name = ''] = matchAt(CLOSING, xml, next);
      if (inside.pop() !== name) throw malformed();
      close?.(localName(name));
      at = next + tag.length;
      continue;
    }
    const element = elementAt(xml, next);
    open?.(localName(element.name), element.attributes);
    if (element.isEmpty) close?.(localName(element.name));
    else inside.push(element.name);
    if (inside.length > DEEPEST) throw malformed();
    at = element.end;
  }
  if (inside.length > 0) throw malformed();
}

/** Where what is no element ends; null if an element begins there. CDATA is words. */
function skippedFrom(xml: string, at: number, text: XmlListener['text']): number | null {
  if (xml.startsWith('<![CDATA[', at)) {
    const end = endAt(xml, ']]>', at);
    text?.(withLineEnds(xml.slice(at + 9, end - 3)));
    return end;
  }
  if (xml.startsWith('<!--', at)) return endAt(xml, '-->', at + 4);
  if (xml.startsWith('<?', at)) return endAt(xml, '?>', at);
  if (xml.startsWith('<!', at)) throw malformed();
  return null;
}

function endAt(xml: string, sign: string, at: number): number {
  const end = xml.indexOf(sign, at);
  if (end < 0) throw malformed();
  return end + sign.length;
}

function elementAt(
  xml: string,
  at: number,
): { name: string; attributes: ReadonlyMap<string, string>; isEmpty: boolean; end: number } {
  const [start, name = ''] = matchAt(NAME, xml, at);
  const attributes = new Map<string, string>();
  let end = at + start.length;
  for (;;) {
    ATTRIBUTE.lastIndex = end;
    const found = ATTRIBUTE.exec(xml);
    if (!found) break;
    const [all, key = '', double, single] = found;
    if (!key.startsWith('xmlns')) attributes.set(localName(key), decoded(double ?? single ?? ''));
    end += all.length;
  }
  const [closing, slash] = matchAt(END, xml, end);
  return { name, attributes, isEmpty: slash === '/', end: end + closing.length };
}

function matchAt(pattern: RegExp, xml: string, at: number): RegExpExecArray {
  pattern.lastIndex = at;
  const found = pattern.exec(xml);
  if (!found) throw malformed();
  return found;
}

function localName(name: string): string {
  return name.slice(name.indexOf(':') + 1);
}

const SIGNS: Readonly<Record<string, string>> = {
  lt: '<',
  gt: '>',
  amp: '&',
  quot: '"',
  apos: "'",
};

/** Words with their references resolved (XML 1.0, 4.1 and 4.6). */
function decoded(text: string): string {
  const words = withLineEnds(text);
  if (!words.includes('&')) return words;
  return words.replace(/&([^;&]{0,10};)?/g, (_, reference: string | undefined) => {
    const sign = reference === undefined ? undefined : signOf(reference.slice(0, -1));
    if (sign === undefined) throw malformed();
    return sign;
  });
}

function signOf(reference: string): string | undefined {
  const [, hex, decimal] = /^#(?:x([\da-fA-F]{1,6})|(\d{1,7}))$/.exec(reference) ?? [];
  if (hex === undefined && decimal === undefined) {
    return Object.hasOwn(SIGNS, reference) ? SIGNS[reference] : undefined;
  }
  const code = hex === undefined ? Number(decimal) : parseInt(hex, 16);
  return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : undefined;
}

/** A line end is one LF (XML 1.0, 2.11). */
function withLineEnds(text: string): string {
  return text.includes('\r') ? text.replace(/\r\n?/g, '\n') : text;
}

function malformed(): TableError {
  return new TableError('the workbook is damaged: open it and save it again as .xlsx');
}
