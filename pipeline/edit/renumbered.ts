import { spotOf, type SourceFile } from '../model/index.js';
import { rewriteScalar } from './scalar.js';
import type { Change } from './splice.js';

/**
 * The change that gives a card another number, in the quotes of the one that it has, or without any:
 * nothing but the value itself differs.
 */
export function renumbered(source: SourceFile, number: string): Change {
  const spot = spotOf(source, ['number']);
  const isBare = /^[A-Za-z0-9]/.test(source.text.slice(spot.from, spot.to));
  return isBare && /^[A-Za-z0-9]+(?:[./-][A-Za-z0-9]+)*$/.test(number)
    ? { spot, text: number }
    : rewriteScalar(source, ['number'], number);
}
