import matter from 'gray-matter';

import { fenceOf, startOf, type Fault, type Fence, type SourceFile } from '../model/index.js';

/** Executable engines and every other alias that the splitter knows are shut. */
const SHUT = { parse: refuse, stringify: refuse };
const LANGUAGES = ['js', 'javascript', 'json', 'coffee', 'coffeescript', 'cson', 'toml', 'node'];
const SPLITTING = {
  language: 'yaml',
  engines: {
    ...Object.fromEntries(LANGUAGES.map((language) => [language, SHUT])),
    yaml: { parse: () => ({}), stringify: refuse },
  },
};

function refuse(): never {
  throw new Error('front matter is data');
}

/** Most characters of front matter; the splitter takes quadratic time over blank lines. */
const LONGEST = 10_000;

export type FrontMatter =
  | { readonly ok: true; readonly fence: Fence; readonly yaml: string }
  | { readonly ok: false; readonly fault: Fault };

/**
 * Splits front matter from body. Only a first line that is exactly `---` opens it and only such a
 * line closes it; anything else is refused before the splitter sees it, and nothing of it is run.
 */
export function splitFrontMatter(source: SourceFile): FrontMatter {
  const fence = fenceOf(source.text);
  if (!fence) return { ok: false, fault: badFence(source) };
  const yaml = source.text.slice(fence.yamlFrom, fence.yamlTo);
  if (yaml.length > LONGEST) return { ok: false, fault: tooLong(source) };
  const body = source.text.slice(fence.bodyFrom);
  const split = matter(source.text, SPLITTING);
  if (split.matter.trim() !== yaml.trim() || split.content.trim() !== body.trim()) {
    return { ok: false, fault: badFence(source) };
  }
  return { ok: true, fence, yaml };
}

function tooLong(source: SourceFile): Fault {
  return {
    rule: 'front-matter',
    spot: startOf(source),
    message: `the front matter is longer than ${String(LONGEST)} characters`,
    expected: 'keys and values only; words belong below the second ---',
  };
}

function badFence(source: SourceFile): Fault {
  const first = /^[^\r\n]*/.exec(source.text)?.[0] ?? '';
  const opens = /^---\r?\n/.test(source.text);
  const closing = opens ? /^---[^\r\n]+/m.exec(source.text.slice(3)) : null;
  const from = closing ? closing.index + 3 : 0;
  const found = closing ? closing[0] : first;
  return {
    rule: 'front-matter',
    spot: { source, from, to: from + found.length },
    message: opens
      ? 'the front matter is never closed'
      : 'the file does not open with front matter',
    found: found === '' ? 'an empty line' : found.slice(0, 40),
    expected: opens
      ? 'a line that is exactly --- after the last key'
      : 'a first line that is exactly ---',
  };
}

const decoder = new TextDecoder('utf-8', { fatal: true });

/** The text of a file: UTF-8, with the byte order mark taken off. Null if it is not UTF-8. */
export function decode(bytes: Uint8Array): string | null {
  try {
    return decoder.decode(bytes);
  } catch {
    return null;
  }
}

/** The finding about a file that is not text. */
export function notText(file: string): Fault {
  return wholeFile(file, 'the file is not UTF-8 text', 'a text file saved as UTF-8');
}

/** The finding about a file of more bytes than are read. */
export function tooLarge(file: string, largest: number): Fault {
  return wholeFile(file, 'the file is too large', `at most ${String(largest)} bytes`);
}

function wholeFile(file: string, message: string, expected: string): Fault {
  const rule = file.endsWith('.md') ? 'front-matter' : 'schema';
  return { rule, spot: startOf({ file, text: '' }), message, expected };
}
