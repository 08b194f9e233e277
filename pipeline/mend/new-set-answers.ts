import type { Instant } from '../model/index.js';
import type { Looked } from './look.js';

/** What is asked of whoever starts a set; each is the name of an option too. */
export const KEYS = [
  'property-title',
  'property-id',
  'zone',
  'levels',
  'licensor',
  'legal',
  'editor',
  'writer',
  'spoiler',
  'title',
  'id',
  'short',
  'street',
  'since',
  'subset',
  'stage',
  'stubs',
] as const;
export type Key = (typeof KEYS)[number];

/** What was answered, as it was typed: several texts for what may be said again. */
export type Answers = ReadonlyMap<Key, readonly string[]>;

/** The property that a set is added to. */
export interface Home {
  readonly zone: string;
  /** Ids of its levels, from least to most revealing. */
  readonly levels: readonly string[];
  readonly layouts: readonly string[];
  readonly people: readonly string[];
}

/** Where a set is started. */
export interface Ground {
  readonly now: Instant;
  /** Null where there is no property yet. */
  readonly home: Home | null;
  /** First parts of all paths that are there, in small letters. */
  readonly taken: ReadonlySet<string>;
  /** The files of the property, without its sets. */
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** What `check` says of those. */
  readonly was: Looked;
}

/** One answer; null if there is none, or an empty one. */
export function answerOf(answers: Answers, key: Key): string | null {
  const text = answers.get(key)?.[0]?.trim() ?? '';
  return text === '' ? null : text;
}

/** Every answer to what may be said again. */
export function answersOf(answers: Answers, key: Key): readonly string[] {
  return (answers.get(key) ?? []).filter((text) => text.trim() !== '');
}

/** The answers with one more, or another one. */
export function withAnswer(answers: Answers, key: Key, texts: readonly string[]): Answers {
  return new Map(answers).set(key, texts);
}
