import { fixOf, splice } from '../../pipeline/edit/index.js';
import type { Files } from '../../pipeline/checks/index.js';
import { contentWith, lookAt } from './look.js';

/** A card's file as the fix of its only finding leaves it, and the lines of its list then. */
export interface Mended {
  readonly text: string;
  readonly list: readonly string[];
}

/**
 * Makes the certain fix of the one finding that a rule has about a card.
 * @throws if there is another number of findings, or no certain fix.
 */
export function spliceFinding(files: Files, rules: readonly string[], card: string): Mended {
  const own = lookAt(files, rules).findings.filter(({ file }) => file === card);
  const [finding] = own;
  const cardIn = (all: Files) =>
    contentWith(all)
      .sets.flatMap(({ cards }) => cards)
      .find(({ source }) => source.file === card);
  const before = cardIn(files);
  if (!finding || own.length > 1 || !before || finding.certain !== true) {
    throw new Error(`not one certain fix: ${JSON.stringify(own)}`);
  }
  const change = fixOf(before.source, finding)?.change;
  const { text } = splice(before.source, change ? [change] : []);
  const list = cardIn({ ...files, [card]: text })?.front.texts?.['list'] ?? '';
  return { text, list: list.trim().split('\n') };
}
