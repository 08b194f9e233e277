import { fixOf } from '../style/spot.js';
import type { Remark } from '../rule.js';
import type { ToldText } from '../told/text.js';

/**
 * Where words of a text stand, and what to put there. Of words that markup or a hard line break
 * parts, only those that change are pointed at.
 */
export function placed(
  text: ToldText,
  from: number,
  to: number,
  put: string,
  certain: boolean,
): Pick<Remark, 'spot' | 'fix' | 'certain'> {
  const whole = fixAt(text, { from, to, put });
  if (whole.fix !== undefined) return { ...whole, ...(certain ? { certain } : {}) };
  const { source, from: start, to: end } = whole.spot;
  // An escape may stand for anything, so that no place within it is sure.
  if (/\\[^\r\n]/.test(source.text.slice(start, end))) return { spot: whole.spot };
  const few = fixAt(text, changedWords(text.text, { from, to, put }));
  return few.fix === undefined ? { spot: whole.spot } : { ...few, ...(certain ? { certain } : {}) };
}

/** Words of a text, in UTF-16 units, and what to write for them. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly put: string;
}

function fixAt(text: ToldText, { from, to, put }: Change): Pick<Remark, 'spot' | 'fix'> {
  const spot = text.spotOf(from, to);
  const typed = spot.source.text.slice(spot.from, spot.to);
  return { spot, ...fixOf(spot, text.text.slice(from, to), asParted(typed, put)) };
}

/** Words parted where some typed ones are, by the same white space, if they are as many. */
function asParted(typed: string, put: string): string {
  const gaps = typed.match(/\s+/gu) ?? [];
  const words = put.split(' ');
  if (gaps.length !== words.length - 1) return put;
  return words.map((word, at) => word + (gaps[at] ?? '')).join('');
}

/** A change without the words at either end that stay as they are. */
function changedWords(text: string, { from, to, put }: Change): Change {
  const old = text.slice(from, to).split(' ');
  const own = put.split(' ');
  let start = 0;
  while (start < own.length - 1 && start < old.length - 1 && old[start] === own[start]) start += 1;
  let end = 0;
  const most = Math.min(old.length, own.length) - start - 1;
  while (end < most && old.at(-1 - end) === own.at(-1 - end)) end += 1;
  const lengthOf = (words: readonly string[]): number =>
    words.reduce((sum, word) => sum + word.length + 1, 0);
  return {
    from: from + lengthOf(old.slice(0, start)),
    to: to - lengthOf(old.slice(old.length - end)),
    put: own.slice(start, own.length - end).join(' '),
  };
}
