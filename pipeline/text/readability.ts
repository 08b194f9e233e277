import { flesch } from 'flesch';
import { fleschKincaid } from 'flesch-kincaid';

import { runningWords } from './running-words.js';
import { sentences } from './sentences.js';
import { countSyllables } from './syllables.js';

/** A sentence with its words: UTF-16 units from the start of its paragraph. */
export interface ReadSentence {
  readonly paragraph: number;
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly words: number;
}

/** How hard a text is to read. */
export interface Reading {
  readonly words: number;
  readonly sentences: number;
  readonly syllables: number;
  /** Reading ease: 206.835 − 1.015 w/s − 84.6 syl/w (Flesch 1948); 121.22 at most, hard below 50. */
  readonly ease: number;
  /**
   * School grade: 0.39 w/s + 11.8 syl/w − 15.59 (Kincaid, Fishburne, Rogers and Chissom 1975);
   * −3.40 at least.
   */
  readonly grade: number;
  /** The two sentences with the most words, the longest first. */
  readonly longest: readonly ReadSentence[];
  /** Up to three words with the most syllables, of three at least. */
  readonly hardest: readonly string[];
}

/** A child in the first grade of an American school is six: age is grade and five. */
export const YEARS_BEFORE_SCHOOL = 5;

const HARD_SYLLABLES = 3;

/**
 * Reads paragraphs as Flesch and Kincaid did: words between spaces, sentences by UAX #29, syllables
 * as they are spoken. Null for what has no words.
 * @param said syllables of a word that is not said as it is written, such as a name.
 */
export function readingOf(
  paragraphs: readonly string[],
  said: (word: string) => number | undefined = () => undefined,
): Reading | null {
  const parts = paragraphs.flatMap((text, paragraph) =>
    sentences(text).flatMap(({ from, to }): ReadSentence[] => {
      const own = text.slice(from, to).trimEnd();
      const words = spokenWords(own).length;
      return words === 0 ? [] : [{ paragraph, from, to: from + own.length, text: own, words }];
    }),
  );
  const words = paragraphs.flatMap(spokenWords);
  if (words.length === 0) return null;
  const counted = words.map((word) => ({ word, syllables: syllablesOf(word, said) }));
  const counts = {
    sentence: parts.length,
    word: words.length,
    syllable: counted.reduce((sum, { syllables }) => sum + syllables, 0),
  };
  const hard = counted
    .filter(({ syllables }) => syllables >= HARD_SYLLABLES)
    .sort((a, b) => b.syllables - a.syllables);
  return {
    words: counts.word,
    sentences: counts.sentence,
    syllables: counts.syllable,
    ease: flesch(counts),
    grade: fleschKincaid(counts),
    longest: parts.toSorted((a, b) => b.words - a.words).slice(0, 2),
    hardest: [...new Set(hard.map(({ word }) => word))].slice(0, 3),
  };
}

/** Words as a person counts them, without the stops around them. */
function spokenWords(text: string): string[] {
  return text
    .split(/[\s–—]+/u)
    .map((word) => word.replace(/^[^\p{L}\p{N}]+|[^\p{L}\p{N}]+$/gu, ''))
    .filter((word) => word !== '');
}

function syllablesOf(word: string, said: (word: string) => number | undefined): number {
  return runningWords(word).reduce((sum, { text }) => {
    const bare = text.replace(/['’]s?$/u, '');
    return sum + (said(bare) ?? countSyllables(text));
  }, 0);
}
