import type { Subset } from '../../schema/index.js';

/** "LC-1 to LC-8": the numbers that a plan gives to a subset, in words. */
export function sayPlanned(numbers: Subset['numbers']): string {
  if (numbers === 'none') return 'none: this subset has no numbers';
  if ('codes' in numbers) {
    const [first = '', second, ...more] = numbers.codes;
    if (second === undefined) return first;
    return more.length === 0
      ? `${first} or ${second}`
      : `${first}, ${second} or another code of the plan`;
  }
  const { prefix = '', from, to } = numbers;
  return from === to ? `${prefix}${from}` : `${prefix}${from} to ${prefix}${to}`;
}

/** The key by which a plan gives numbers out: where a finding about them stands. */
export function numbersKey({ numbers }: Subset): 'codes' | 'from' {
  return numbers !== 'none' && 'codes' in numbers ? 'codes' : 'from';
}
