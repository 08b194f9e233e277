import { MARGIN_YEARS, bioReadings, gradeFor } from '../checks/index.js';
import {
  cardsOf,
  compareNumbers,
  isIssued,
  numberOf,
  type Card,
  type Content,
} from '../model/index.js';
import type { Reading } from '../text/index.js';

/** How hard one bio is to read. */
export interface ReadingOfCard {
  /** Its number, or `subset/id` without one. */
  readonly card: string;
  readonly name: string;
  readonly reading: Reading;
}

/** How hard the bios of a set are to read, in the order of their numbers. */
export interface SetReadings {
  readonly title: string;
  /** The age in years that the set is for, its school grade, and the grade above which a bio is told of; or null. */
  readonly wanted: { readonly age: number; readonly grade: number; readonly most: number } | null;
  readonly bios: readonly ReadingOfCard[];
}

/** How hard the bios of each set are to read; sets without bios are left out. */
export function readingLevels({ sets, names }: Content): readonly SetReadings[] {
  return sets.flatMap((set): SetReadings[] => {
    const { title, subsets, readingAge } = set.plan.value;
    const cards = subsets.flatMap(({ id }) => inOrder(cardsOf(set, id).filter(isIssued)));
    const bios = bioReadings(cards, names).map(({ card, reading }) => ({
      card: sayNumber(card),
      name: card.front.name,
      reading,
    }));
    if (bios.length === 0) return [];
    const grade = readingAge === undefined ? null : gradeFor(readingAge);
    return [
      {
        title,
        wanted:
          readingAge === undefined || grade === null
            ? null
            : { age: readingAge, grade, most: grade + MARGIN_YEARS },
        bios,
      },
    ];
  });
}

function inOrder(cards: readonly Card[]): readonly Card[] {
  return cards.toSorted((a, b) => compareNumbers(a.front.number, b.front.number));
}

function sayNumber(card: Card): string {
  const number = numberOf(card) ?? `${card.subset}/${card.id}`;
  const letter = card.front.variation?.letter;
  return letter === undefined ? number : `${number} ${letter}`;
}
