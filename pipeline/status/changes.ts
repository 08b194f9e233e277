import { difference, type View, type ViewCard } from '../gate/index.js';

/** How a card looks after an instant, beside how it looked before it. */
export type CardChange = 'listed' | 'revealed' | 'more shown' | 'otherwise shown' | 'gone';

/** A card that an audience sees otherwise after an instant. */
export interface ChangedCard {
  readonly set: string;
  readonly subset: string;
  /** With its letter. */
  readonly number: string | null;
  readonly name: string;
  readonly change: CardChange;
  /** What of it is otherwise, in the words of the card file. */
  readonly fields: readonly string[];
}

export interface Changes {
  readonly cards: readonly ChangedCard[];
  /** Titles of sets, subsets and parallels that are new. */
  readonly titles: readonly string[];
  /** Names, and forms of them, that may be told and could not before. */
  readonly names: readonly string[];
}

/** The exact difference of two views, the later one second; null is a view of nothing. */
export function changesOf(before: View | null, after: View | null): Changes {
  if (!after) return { cards: [], titles: [], names: [] };
  const nothing = { ...after, sets: [], names: [] };
  const { cards, titles, names } = difference(before ?? nothing, after);
  return {
    titles,
    names,
    cards: cards.flatMap(({ set, subset, before: was, after: is }) => {
      const card = is ?? was;
      if (!card) return [];
      const number = card.number === null ? null : `${card.number}${card.letter ?? ''}`;
      const change = kindOf(was, is);
      const fields = was && is ? fieldsThatDiffer(was, is) : [];
      return [{ set, subset, number, name: card.name, change, fields }];
    }),
  };
}

function kindOf(was: ViewCard | null, is: ViewCard | null): CardChange {
  if (!is) return 'gone';
  if (was?.state === is.state) return showsLess(was, is) ? 'otherwise shown' : 'more shown';
  return is.state === 'placeholder' ? 'listed' : 'revealed';
}

/** Whether something that was shown is not any more. */
function showsLess(was: ViewCard, is: ViewCard): boolean {
  const all = ({ facts, texts, signers, credits }: ViewCard): readonly unknown[] => [
    ...facts,
    ...texts,
    ...signers,
    ...credits,
  ];
  const now = new Set(all(is).map((part) => JSON.stringify(part)));
  return (
    (was.image !== null && is.image === null) ||
    all(was).some((part) => !now.has(JSON.stringify(part)))
  );
}

/** What each key of a card is called; null for those that the kind of a change tells already. */
const CALLED: { readonly [K in keyof ViewCard]-?: string | null } = {
  state: null,
  identity: null,
  number: 'number',
  letter: 'letter',
  name: 'name',
  level: null,
  nameLevel: null,
  opens: 'announced opening',
  revealed: null,
  bio: 'bio',
  bioHeld: 'bio',
  facts: 'facts',
  texts: 'texts',
  image: 'image',
  signers: 'signers',
  signersLevel: null,
  credits: 'credits',
  creditsLevel: null,
  tell: 'tell',
  shortPrint: 'short print',
  run: 'run',
  layout: null,
  notes: null,
  review: null,
};

function fieldsThatDiffer(was: ViewCard, is: ViewCard): readonly string[] {
  const words = Object.entries(CALLED).flatMap(([key, called]) => {
    if (called === null) return [];
    const differs = JSON.stringify(Reflect.get(was, key)) !== JSON.stringify(Reflect.get(is, key));
    return differs ? [called] : [];
  });
  return [...new Set(words)];
}
