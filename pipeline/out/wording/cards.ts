import type { PublicCard } from '../../../schema/index.js';
import { runWords, series } from './counts.js';
import { dayWords } from './times.js';

/** What stands as the name of a placeholder that has none of its own. */
const NAMELESS = 'To be revealed';

const SHORT_PRINTS = { SP: 'short print (SP)', SSP: 'super short print (SSP)' } as const;

/** "17b", or nothing for a card without a number. */
export function printed({ number, letter }: PublicCard): string {
  return number === null ? '' : `${number}${letter ?? ''}`;
}

/** Whether a card is a placeholder without a name of its own. */
export function isNameless({ state, name }: PublicCard): boolean {
  return state === 'placeholder' && name === NAMELESS;
}

/** How much of the story the name of a card tells: an index into the levels of the property. */
export function nameTells({ level, nameLevel }: PublicCard): number {
  return Math.max(level, nameLevel);
}

/** A short phrase about a card, and how much of the story it tells. */
export interface Note {
  readonly words: string;
  readonly level: number;
}

/** What is said beside the name of a card in a list. */
export function notes(card: PublicCard, zone: string): readonly Note[] {
  const { state, letter, tell, shortPrint, run, signers, level, signersLevel } = card;
  const variation = tell === null ? 'variation' : `variation: ${tell}`;
  const about = letter === null ? tell : variation;
  const all = [
    { words: state === 'not issued' ? 'not issued' : null, level: 0 },
    { words: openingWords(card, zone), level: 0 },
    { words: about, level },
    { words: shortPrint === null ? null : SHORT_PRINTS[shortPrint], level: 0 },
    { words: run === null ? null : runWords(run), level: 0 },
    {
      words: signers.length === 0 ? null : `signed by ${series(signers.map(signerWords))}`,
      level: signersLevel,
    },
  ];
  return all.flatMap(({ words, level: told }) => (words === null ? [] : [{ words, level: told }]));
}

/** "to be revealed on 14 May 2027"; without the words that the name has said already. */
function openingWords(card: PublicCard, zone: string): string | null {
  if (card.state !== 'placeholder') return null;
  if (card.opens === null) return isNameless(card) ? null : 'to be revealed';
  const on = `on ${dayWords(card.opens, zone)}`;
  return isNameless(card) ? on : `to be revealed ${on}`;
}

/** "Ines Albarran as Odalys Thrane (redemption)". */
export function signerWords({ name, as, redemption }: PublicCard['signers'][number]): string {
  return `${name}${as === null ? '' : ` as ${as}`}${redemption ? ' (redemption)' : ''}`;
}
