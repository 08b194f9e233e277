import {
  paragraphText,
  type Copy,
  type SourceFile,
  type Sourced,
  type Spot,
  type YamlPath,
  spotOf,
} from '../model/index.js';
import type { Subject } from './subject.js';

/** Something that a search met in a text. */
export interface Hit {
  /** UTF-16 units from the start of the text that was searched. */
  readonly at: number;
  readonly words: string;
}

/** A hit in a file. `written` if the words stand there as they are, and not as an escape. */
export interface PlacedHit {
  readonly spot: Spot;
  readonly words: string;
  readonly written: boolean;
}

interface Words {
  readonly source: SourceFile;
  readonly value: unknown;
  readonly copy: Copy;
}

/**
 * Searches every file that could be read: first as it was typed, comments included; then values and
 * copy as they were understood, since an escape such as `\u202e` or `&#x202e;` is not typed as such.
 */
export function* scan(
  subject: Subject,
  search: (text: string) => readonly Hit[],
): Generator<PlacedHit> {
  for (const words of textsOf(subject)) {
    const { source } = words;
    for (const hit of search(source.text)) {
      const spot = { source, from: hit.at, to: hit.at + hit.words.length };
      yield { spot, words: hit.words, written: true };
    }
    if (source.text.includes('\\')) yield* escapedValues(words, search);
    yield* understoodCopy(words, search);
  }
}

function* escapedValues(
  { source, value }: Words,
  search: (text: string) => readonly Hit[],
): Generator<PlacedHit> {
  for (const { path, text } of stringsIn(value, [])) {
    for (const { words } of search(text)) {
      if (source.text.normalize('NFC').includes(words)) continue;
      yield { spot: spotOf(source, path), words, written: false };
    }
  }
}

function* understoodCopy(
  { source, copy }: Words,
  search: (text: string) => readonly Hit[],
): Generator<PlacedHit> {
  for (const paragraph of copy) {
    for (const { words } of search(paragraphText(paragraph))) {
      if (source.text.normalize('NFC').includes(words)) continue;
      const from = paragraph[0]?.from ?? 0;
      yield { spot: { source, from, to: paragraph.at(-1)?.to ?? from }, words, written: false };
    }
  }
}

function* stringsIn(value: unknown, path: YamlPath): Generator<{ path: YamlPath; text: string }> {
  if (typeof value === 'string') yield { path, text: value };
  else if (Array.isArray(value)) {
    for (const [at, item] of value.entries()) yield* stringsIn(item, [...path, at]);
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, item] of Object.entries(value)) yield* stringsIn(item, [...path, key]);
  }
}

function* textsOf({ content, cards, sales, sets }: Subject): Generator<Words> {
  const files: (Sourced<unknown> | null)[] = [
    content.property,
    content.names,
    content.people,
    ...content.layouts.values(),
    ...sets.flatMap((set) => [set.plan, set.corrections, ...set.rosters.values()]),
  ];
  for (const file of files) if (file) yield { ...file, copy: [] };
  for (const { source, front, bio } of cards) yield { source, value: front, copy: bio };
  for (const { source, front, words } of sales) yield { source, value: front, copy: words };
}
