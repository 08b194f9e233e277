import { mayHaveNumber } from '../../text/index.js';
import type { ReadBy } from './read.js';

/** Words without one of which, or a word of the plan, no number is a claim. */
const COLLECTING =
  /card|set|series|pack|box|collect|find|chas|gather|hunt|seek|number|limit|cop(?:y|ies)|each|artist|illustrator|insert|parallel|sign|exist|run|edition|print|one.of.one|1.of.1|1\/1|put|look|^(?:the )?[\w-]+ of [\w -]+\.(?:\s|$)/i;

const patterns = new WeakMap<ReadBy, RegExp>();

/**
 * Whether a text can claim a count at all, told quickly and never no where it does; without what it
 * is read by, whether it has a number.
 */
export function isTextWithNumber(text: string, by: ReadBy | null): boolean {
  if (!mayHaveNumber(text)) return false;
  return by === null || COLLECTING.test(text) || patternOf(by).test(text);
}

/** Any first word of a phrase of the plan, or a prefix of its numbers. */
function patternOf(by: ReadBy): RegExp {
  const before = patterns.get(by);
  if (before) return before;
  const words = [...by.vocabulary.keys(), ...[...by.prefixes.keys()].map((prefix) => `${prefix}-`)];
  const stems = words.map((word) => word.replace(/y$/, '').replace(/[^\p{L}\p{N}]/gu, '.'));
  const pattern = new RegExp(stems.length > 0 ? stems.join('|') : '(?!)', 'iu');
  patterns.set(by, pattern);
  return pattern;
}
