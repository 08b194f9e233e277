import { sayHold, type CardSet, type Hold, type Spot } from '../../model/index.js';
import type { OddsClaim } from './odds.js';
import { titleOf } from './odds-kinds.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';

/** Most kinds that a finding names. */
const MOST_NAMED = 3;

/** The words of a claim. */
export function sayOdds({ text, from, to }: OddsClaim): string {
  return text.told.text.slice(from, to);
}

/** The number that is wrong; what is found, where none is written. */
export function spotOfOdds({ text, spot: [from, to] }: OddsClaim): Spot {
  return text.told.spotOf(from, to);
}

/** "Lake Charts", "Lake Charts and Night Signals together", "12 kinds together". */
export function sayKinds(kinds: readonly string[], set: CardSet): string {
  const titles = kinds.map((kind) => titleOf(kind, set));
  const last = titles.at(-1) ?? '';
  if (titles.length === 1) return last;
  if (titles.length > MOST_NAMED) return `${String(titles.length)} kinds together`;
  return `${titles.slice(0, -1).join(', ')} and ${last} together`;
}

/** What is said of odds from which those of something held follow. */
export function tellingOdds(
  claim: OddsClaim,
  { id, hold }: { readonly id: string; readonly hold: Hold },
  subject: Subject,
): Remark {
  const { text } = claim;
  return {
    ...text.told.owner,
    spot: spotOfOdds(claim),
    message: `${text.told.what} says odds from which those of something held can be subtracted`,
    found: `${sayOdds(claim)}: \`${id}\` is held by ${sayHold(subject.schedule, hold)}`,
    expected: 'odds of what may be told alone, or a text that is held as long',
  };
}
