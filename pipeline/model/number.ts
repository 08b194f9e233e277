import type { Subset } from '../../schema/index.js';

const collator = new Intl.Collator('en', { numeric: true });

/** Natural order of printed numbers: LC-2 before LC-10. Ties are broken by code unit, so it is total. */
export function compareNumbers(a: string, b: string): number {
  return collator.compare(a, b) || (a < b ? -1 : a > b ? 1 : 0);
}

/** The numbers that a subset's plan gives out, in order; null for a subset without numbers. */
export function plannedNumbers(numbers: Subset['numbers']): readonly string[] | null {
  if (numbers === 'none') return null;
  if ('codes' in numbers) return numbers.codes;
  const count = Math.max(0, Math.min(numbers.to - numbers.from + 1, 100_000));
  return Array.from({ length: count }, (_, index) => {
    return `${numbers.prefix ?? ''}${String(numbers.from + index)}`;
  });
}

/** Whether the numbers of a subset are codes, which are held together with their card. */
export function isCoded(numbers: Subset['numbers']): boolean {
  return numbers !== 'none' && 'codes' in numbers;
}

/**
 * The running part of a number in a subset's range: 12 for LC-12 under prefix LC-; null if the
 * number is not of that form, leading zeros included.
 */
export function runningNumber(printed: string, prefix: string): number | null {
  if (!printed.startsWith(prefix)) return null;
  const digits = printed.slice(prefix.length);
  return /^(0|[1-9]\d{0,8})$/.test(digits) ? Number(digits) : null;
}
