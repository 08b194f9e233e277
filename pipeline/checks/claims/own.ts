import { claimOf, endsAt, wordAt, type Place, type Taken } from './place.js';

/** Whether a number is one as printed: "card 4", "No. 4", "#4", "Night Signal 4". */
export function isPrintedNumber(place: Place, at: number): boolean {
  const before = wordAt(place, at - 1);
  if (/^(?:card|number|no|#)$/.test(before) || wordAt(place, at - 2) === 'no') return true;
  return place.named.some(({ next, plural }) => next === at && !plural);
}

const OPENING = /^(?:(?:this|this card|you hold|it) (?:is )?)?(?:the )?$/;

/**
 * "Card 4 of 16", "This is the fourth of sixteen Night Signals", and "The fourth of sixteen." where
 * a text starts: the number of the card that it stands on. "See card 4 of 16" is of another card.
 */
export function ownNumber(place: Place): Taken | null {
  const { number, numbers, sells, sentence, tokens } = place;
  const link = wordAt(place, number.next);
  if (sells || (link !== 'of' && link !== '/')) return null;
  const start = /^(?:the|all)$/.test(wordAt(place, number.next + 1)) ? 2 : 1;
  const among = numbers.find(({ at }) => at === number.next + start);
  if (!among || among.kind !== 'count' || among.value < number.value) return null;
  const printed = number.kind === 'ordinal' ? -1 : startOfPrinted(place);
  const opening = tokens.slice(sentence.at, printed < 0 ? number.at : printed);
  const said = opening.map(({ word }) => word).join(' ');
  if (!OPENING.test(said === '' ? '' : `${said} `)) return null;
  const isThis = /^(?:this|you)/.test(said);
  const bare = printed === number.at || printed < 0;
  const isPlaced = printed < 0 && isFirstSentence(place, among.next);
  const isPrinted = printed >= 0 && endsAt(place, among.next);
  if (bare && !isThis && !isPlaced && !isPrinted) return null;
  if (bare && number.value === 1 && number.kind !== 'ordinal' && number.form !== 'figures') {
    return null;
  }
  return claimOf(place, [{ kind: 'number', among: among.value }], number.next);
}

/** Whether a text starts with a sentence that ends at a token. */
function isFirstSentence({ sentence, tokens }: Place, at: number): boolean {
  const isEnd = at === sentence.next || (at + 1 === sentence.next && tokens[at]?.word === '.');
  return sentence.at === 0 && isEnd;
}

/** Where "card", "No." or a title before a number starts; the number itself where there is none. */
function startOfPrinted(place: Place): number {
  const { at } = place.number;
  if (/^(?:card|number|no|#)$/.test(wordAt(place, at - 1))) return at - 1;
  if (wordAt(place, at - 2) === 'no' && wordAt(place, at - 1) === '.') return at - 2;
  return place.named.find(({ next, plural }) => next === at && !plural)?.at ?? at;
}
