import type { View, ViewCard, ViewName, ViewSet, ViewSubset } from '../../gate/index.js';
import { sayDay, sayInstant } from '../../model/index.js';
import { countInWords } from '../../text/index.js';

/** What a host says about everything else; the same whether or not there is anything. */
export const HOLDING_SENTENCE =
  'We talk about what the checklist shows. Everything else we leave to the story.';

/** What may be said on camera. */
export interface Brief {
  readonly title: string;
  /** From when on it may be said, in the property's zone. */
  readonly from: string;
  readonly zone: string;
  readonly preview: boolean;
  readonly sets: readonly BriefSet[];
  readonly names: readonly ViewName[];
  /** Announced instants at which more opens. */
  readonly openings: readonly string[];
  readonly legal: string | null;
}

export interface BriefSet {
  readonly title: string;
  readonly short: string;
  /** Sentences that may be said as they stand. */
  readonly sentences: readonly string[];
  readonly subsets: readonly {
    readonly title: string;
    readonly sentence: string;
    /** Cards that may be named, as the checklist has them. */
    readonly cards: readonly string[];
  }[];
}

/**
 * What may be said on camera of what the public sees: counts in words with what they count, names
 * with how they are said, announced openings.
 * @param preview whether the instant is still to come.
 * @throws RangeError for a view that is not the public's.
 */
export function briefOf(view: View, preview: boolean): Brief {
  if (view.audience !== 'public' || view.asOf === null) {
    throw new RangeError('a brief is made of the public’s view alone');
  }
  const { title, zone, legal } = view.property;
  return {
    title,
    from: sayInstant(view.asOf, zone),
    zone,
    preview,
    sets: view.sets.map((set) => briefSet(set, zone)),
    names: view.names,
    openings: openingsOf(view).map((at) => sayInstant(at, zone)),
    legal,
  };
}

function briefSet(set: ViewSet, zone: string): BriefSet {
  const cards = set.subsets.flatMap((subset) => subset.cards);
  return {
    title: set.title,
    short: set.short,
    sentences: [
      `The checklist of ${set.short} lists ${sayCards(set.listed)}. ${sayStates(cards)}`.trim(),
      ...sayStreet(set, zone),
    ],
    subsets: set.subsets.map((subset) => ({
      title: subset.title,
      sentence: sentenceOf(subset),
      cards: subset.cards.filter(({ state }) => state === 'shown').map(nameOf),
    })),
  };
}

function sentenceOf(subset: ViewSubset): string {
  const { artists, cards, listed } = subset;
  const artistWords = `${countInWords(artists.length)} ${artists.length === 1 ? 'artist' : 'artists'}`;
  if (cards.length === 0 && artists.length > 0) return `Cards by ${artistWords}.`;
  return `${capital(sayCards(listed))} listed. ${sayStates(cards)}`.trim();
}

/** "Fifteen are revealed, three are to be revealed." */
function sayStates(cards: readonly ViewCard[]): string {
  const shown = cards.filter(({ state }) => state === 'shown').length;
  const held = cards.filter(({ state }) => state === 'placeholder').length;
  if (held === 0 && shown === 0) return '';
  if (held === 0) return shown === 1 ? 'It is revealed.' : 'All are revealed.';
  if (shown === 0) return held === 1 ? 'It is to be revealed.' : 'All are to be revealed.';
  return `${capital(countInWords(shown))} ${areOrIs(shown)} revealed, ${countInWords(held)} ${areOrIs(held)} to be revealed.`;
}

function sayCards(count: number): string {
  return `${countInWords(count)} ${count === 1 ? 'card' : 'cards'}`;
}

function areOrIs(count: number): string {
  return count === 1 ? 'is' : 'are';
}

function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

function sayStreet({ street, short }: ViewSet, zone: string): readonly string[] {
  const [first] = street;
  if (!first) return [];
  const when =
    street.length === 1
      ? sayDay(first.at, zone)
      : street
          .map(({ region, at }) => `${sayDay(at, zone)}${region === null ? '' : ` (${region})`}`)
          .join(', ');
  return [`The street date of ${short} is ${when}.`];
}

function nameOf({ number, letter, name }: ViewCard): string {
  return number === null ? name : `${number}${letter ?? ''} ${name}`;
}

function openingsOf(view: View): readonly number[] {
  const cards = view.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
  return [...new Set(cards.flatMap(({ opens }) => opens ?? []))].sort((a, b) => a - b);
}
