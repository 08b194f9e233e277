import type { Fraction } from '../../packs/index.js';

/** "4000", "28000/7": in lowest terms. */
export function exact({ over, under }: Fraction): string {
  return under === 1n ? String(over) : `${String(over)}/${String(under)}`;
}
