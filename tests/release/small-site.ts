import type { PublicCard, PublicData, ReleaseRecord } from '../../schema/index.js';
import { siteFiles } from '../../pipeline/out/site/index.js';
import { PLAIN_CARD } from '../site/plain-card.js';

/** A shown card with one of everything. */
export function card(number: string | null, more: Partial<PublicCard> = {}): PublicCard {
  return {
    ...PLAIN_CARD,
    number,
    page: number === null ? null : `high-water/crew/${number}/`,
    name: `Card ${number ?? 'without'}`,
    bio: [[{ text: 'Rows by night.', italic: false, bold: false, level: 0 }]],
    facts: [{ name: 'Boat', value: 'Heron', level: 0 }],
    ...more,
  };
}

/** A placeholder, with no more than its number and name. */
export function placeholder(number: string | null): PublicCard {
  return card(number, { state: 'placeholder', name: 'To be revealed', bio: [], facts: [] });
}

/** Public data of one set with one subset. */
export function dataWith(cards: readonly PublicCard[], asOf = STEP): PublicData {
  return {
    format: 1,
    asOf,
    preview: false,
    property: {
      title: 'The Ferrywrights',
      zone: 'Europe/London',
      legal: null,
      look: { accent: null, paper: null, ink: null, type: null },
      siteTitle: 'The Ferrywrights',
      address: null,
      dataTerms: null,
      levels: ['Open'],
    },
    openings: [],
    news: [],
    sets: [
      {
        id: 'high-water',
        title: 'High Water',
        short: 'HW',
        street: [],
        listed: cards.length,
        products: [],
        subsets: [
          {
            id: 'crew',
            title: 'Crew',
            group: 'base',
            found: null,
            listed: cards.length,
            artists: [],
            cards: [...cards],
          },
        ],
        parallels: [],
        corrections: [],
      },
    ],
  };
}

export const STEP = '2027-03-01T00:00:00+00:00[Europe/London]';

/** A site of data: a page of each card that has one, and one for all. */
export function siteOf(data: PublicData): ReadonlyMap<string, Uint8Array> {
  const cards = data.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
  const pages = cards.flatMap(({ page, name }) =>
    page === null ? [] : [[`${page}index.html`, bytesOf(name)] as const],
  );
  const front = bytesOf(cards.map(({ name }) => name).join());
  return siteFiles(data, new Map([['index.html', front], ...pages]), []);
}

export function bytesOf(text: string): Uint8Array {
  return new TextEncoder().encode(text);
}

/** The private record of a small site. */
export function recordOf(data: PublicData, id: string): ReleaseRecord {
  return {
    format: 1,
    id,
    made: data.asOf,
    at: data.asOf,
    asOf: data.asOf,
    preview: data.preview,
    digest: '0'.repeat(64),
    files: 1,
    shown: [],
    placeholders: [],
    left: [],
    zoneData: 'unknown',
  };
}

function numbered(from: number, to: number): PublicCard[] {
  return Array.from({ length: to - from + 1 }, (_, at) => card(String(from + at)));
}

/** Two sites with many files each, most of them alike. */
export const LARGE = dataWith(numbered(1, 20));
export const LARGER = dataWith(numbered(2, 30));
