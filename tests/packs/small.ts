import type { Entry, Kind, PlannedCard, Product, ReleasePlan } from '../../pipeline/packs/index.js';

/** So many cards, `A-1`, `A-2`, … */
export function cardsOf(prefix: string, count: number): readonly PlannedCard[] {
  return Array.from({ length: count }, (_, at) => {
    const label = `${prefix}${String(at + 1)}`;
    return { id: label, label };
  });
}

export const HOBBY: Product = {
  id: 'hobby',
  title: 'Hobby',
  cardsAPack: 5,
  packsABox: 10,
  boxesACase: 4,
  cases: 3,
  collation: 'random',
};

export const RETAIL: Product = { ...HOBBY, id: 'retail', title: 'Retail', cases: 2 };

const BASE: Kind = {
  id: 'base',
  title: 'Ferries',
  what: 'subset',
  base: true,
  cards: cardsOf('', 10),
};
const CHARTS: Kind = {
  id: 'charts',
  title: 'Lake Charts',
  what: 'subset',
  cards: cardsOf('LC-', 6),
};
const RELICS: Kind = {
  id: 'relics',
  title: 'Timber Relics',
  what: 'subset',
  cards: cardsOf('TR-', 3),
  places: 4,
};
const VARNISHED: Kind = {
  id: 'varnished',
  title: 'Varnished',
  what: 'parallel',
  cards: cardsOf('varnished ', 10),
  run: 3,
};
const SIGNATURES: Kind = {
  id: 'signatures',
  title: 'Signatures',
  what: 'subset',
  cards: cardsOf('SG-', 4),
};
const BLANKS: Kind = { id: 'blanks', title: 'blanks', what: 'decoy', cards: [], places: 2 };

/** The kinds of the plan below by id. */
export const KINDS = {
  base: BASE,
  charts: CHARTS,
  relics: RELICS,
  varnished: VARNISHED,
  signatures: SIGNATURES,
  blanks: BLANKS,
};

const inHobby = (kind: string, amount: Entry['amount']): Entry => ({
  product: 'hobby',
  kind,
  amount,
});

/** The entries of the plan below by kind. */
export const ENTRIES = {
  charts: inHobby('charts', { by: 'odds', packs: 4 }),
  relics: inHobby('relics', { by: 'copies', copies: 6 }),
  varnished: inHobby('varnished', { by: 'run' }),
  signatures: inHobby('signatures', { by: 'box', copies: 1 }),
  blanks: inHobby('blanks', { by: 'copies', copies: 2 }),
};

interface Changes {
  readonly kinds?: Partial<Record<keyof typeof KINDS, Kind>>;
  readonly entries?: Partial<Record<keyof typeof ENTRIES, Entry>>;
  readonly plan?: Partial<ReleasePlan>;
}

/** 120 packs and 600 places, of which 100 are taken: 50 of each of ten base cards are left. */
export function smallPlan({ kinds = {}, entries = {}, plan = {} }: Changes = {}): ReleasePlan {
  return {
    products: [HOBBY],
    kinds: Object.values({ ...KINDS, ...kinds }),
    entries: Object.values({ ...ENTRIES, ...entries }),
    ...plan,
  };
}
