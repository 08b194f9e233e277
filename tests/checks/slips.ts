import type { Disguise } from './disguises.js';
import type { Dice } from './dice.js';

/** Of a plain word of six letters or more, one letter changed; a name without one stays as it is. */
function slipped(name: string, dice: Dice, change: (word: string, at: number) => string): string {
  const long = [...name.matchAll(/[A-Za-z]{6,}/g)];
  if (long.length === 0) return name;
  const { 0: word, index } = dice.pick(long);
  return (
    name.slice(0, index) +
    change(word, 1 + dice.below(word.length - 2)) +
    name.slice(index + word.length)
  );
}

/** One letter wrong in a name of six letters or more: found, if only as a warning. */
export const SLIPS: readonly Disguise[] = [
  {
    says: 'a letter dropped',
    doubtful: true,
    put: (name, dice) => slipped(name, dice, (word, at) => word.slice(0, at) + word.slice(at + 1)),
  },
  {
    says: 'a letter doubled',
    doubtful: true,
    put: (name, dice) => slipped(name, dice, (word, at) => word.slice(0, at) + word.slice(at - 1)),
  },
  {
    says: 'a letter changed',
    doubtful: true,
    put: (name, dice) =>
      slipped(name, dice, (word, at) => `${word.slice(0, at)}x${word.slice(at + 1)}`),
  },
  {
    says: 'neighbours that changed places',
    doubtful: true,
    put: (name, dice) =>
      slipped(
        name,
        dice,
        (word, at) =>
          word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2),
      ),
  },
  {
    says: 'a space inside a word',
    doubtful: true,
    put: (name) => name.replace(/(\p{Lu}\p{L}{2})(\p{L}{3})/u, '$1 $2'),
  },
  {
    says: 'the first letter dropped',
    doubtful: true,
    put: (name) => name.replace(/\p{Lu}(?=\p{L}{5})/u, ''),
  },
  {
    says: 'the first letter changed',
    doubtful: true,
    put: (name) => name.replace(/\p{Lu}(?=\p{L}{5})/u, 'z'),
  },
];

/** Every word with one letter wrong that each letter of a name gives, in each of the four kinds. */
export function slipsOf(name: string): readonly string[] {
  return [...name.matchAll(/\p{L}/gu)].flatMap(({ 0: letter, index }) => {
    const before = name.slice(0, index);
    const after = name.slice(index + 1);
    const next = /^\p{L}/u.exec(after)?.[0] ?? letter;
    const swapped = next.toLowerCase() === letter.toLowerCase() ? [] : [next + letter];
    const ways = [`z${letter}`, `${letter}z`, '', 'z', 'Z'].map((way) => before + way + after);
    return [...ways, ...swapped.map((pair) => before + pair + after.slice(1))];
  });
}
