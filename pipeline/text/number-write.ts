import { countInWords } from './number-words.js';

/**
 * A count in the form of another that stands for it: figures stay figures (with their sign between
 * thousands), words stay words, and a capital or capitals are kept.
 */
export function countLike(typed: string, count: number): string {
  if (/\d/.test(typed)) return figuresLike(typed, count);
  const words = count === 0 ? 'no' : countInWords(count);
  if (typed.length > 1 && typed === typed.toUpperCase()) return words.toUpperCase();
  const capital = /^\p{Lu}/u.test(typed);
  return capital ? words.charAt(0).toUpperCase() + words.slice(1) : words;
}

function figuresLike(typed: string, count: number): string {
  const digits = String(count);
  const sign = /\d([^\d])\d{3}/.exec(typed)?.[1];
  // A number without thousands says nothing about how they are parted.
  if (sign === undefined || digits.length < 4) return digits;
  const head = digits.length % 3 || 3;
  const parts = [digits.slice(0, head)];
  for (let at = head; at < digits.length; at += 3) parts.push(digits.slice(at, at + 3));
  return parts.join(sign);
}
