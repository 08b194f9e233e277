import { spotOf, type Card } from '../model/index.js';
import type { Remark } from './rule.js';
import type { Subject } from './subject.js';
import { toldTexts, type ToldText } from './told/texts.js';

const COUNTS: readonly (readonly [RegExp, number])[] = [
  [
    /\b(?:dual|double)[- ](?:autographs?|signatures?|signed)\b|\b(?:two|both|pair of) (?:signatures|autographs|signers)\b/iu,
    2,
  ],
  [
    /\btriple[- ](?:autographs?|signatures?|signed)\b|\b(?:three|all three) (?:signatures|autographs|signers)\b/iu,
    3,
  ],
  [
    /\b(?:quad|quadruple)[- ](?:autographs?|signatures?|signed)\b|\b(?:four|all four) (?:signatures|autographs|signers)\b/iu,
    4,
  ],
];

/** Words of a card for as many signatures as were planned, and will not be. */
export function* stillCounted(subject: Subject): Generator<Remark> {
  const short = new Map<string, Card>();
  for (const card of subject.cards) {
    const signers = card.front.signers ?? [];
    const left = signers.filter(({ state }) => state !== 'withdrawn').length;
    if (left > 0 && left < signers.length) short.set(`${card.set}/${card.subset}/${card.id}`, card);
  }
  if (short.size === 0) return;
  for (const text of toldTexts(subject)) {
    const card = short.get(`${text.owner.set ?? ''}/${text.owner.card ?? ''}`);
    if (!card || text.seams || text.kind === 'id') continue;
    yield* countedIn(text, card);
  }
}

function* countedIn(text: ToldText, card: Card): Generator<Remark> {
  const signers = card.front.signers ?? [];
  const left = signers.filter(({ state }) => state !== 'withdrawn').length;
  const gone = signers.findIndex(({ state }) => state === 'withdrawn');
  for (const [pattern, count] of COUNTS) {
    const found = count > left ? pattern.exec(text.text) : null;
    if (!found) continue;
    const [words] = found;
    yield {
      ...text.owner,
      spot: text.spotOf(found.index, found.index + words.length),
      message: `${text.what} counts on ${String(count)} signatures, and there will be ${String(left)}`,
      found: words,
      expected: `words for ${String(left)} signature${left === 1 ? '' : 's'}`,
      related: [
        { message: 'the withdrawal', spot: spotOf(card.source, ['signers', gone, 'name']) },
      ],
    };
  }
}
