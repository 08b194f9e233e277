import { paragraphText, type Card, type Content } from '../model/index.js';
import { readingOf, type Reading } from '../text/index.js';

/** A bio with how hard it is to read. */
export interface BioReading {
  readonly card: Card;
  readonly reading: Reading;
}

type Said = ReadonlyMap<string, number>;

const known = new WeakMap<Card, { readonly said: Said; readonly reading: Reading | null }>();
const spoken = new WeakMap<object, Said>();
const NOBODY: Said = new Map();

/** How hard each bio of these cards is to read; those without words are left out. */
export function bioReadings(
  cards: readonly Card[],
  names: Content['names'],
): readonly BioReading[] {
  const said = saidNames(names);
  return cards.flatMap((card) => {
    const reading = readingOfBio(card, said);
    return reading ? [{ card, reading }] : [];
  });
}

function readingOfBio(card: Card, said: Said): Reading | null {
  const before = known.get(card);
  if (before?.said === said) return before.reading;
  const reading = readingOf(card.bio.map(paragraphText), (word) => said.get(word));
  known.set(card, { said, reading });
  return reading;
}

/**
 * The syllables of the words of names, as `say` parts them: "oh-DAH-liss THRAYN" are three and one.
 * A `say` of more or fewer words than the name tells nothing.
 */
function saidNames(names: Content['names']): Said {
  if (!names) return NOBODY;
  const before = spoken.get(names);
  if (before) return before;
  const said = new Map<string, number>();
  for (const { name, say } of names.value.names) {
    const words = name.split(/\s+/u);
    const parts = say?.trim().split(/\s+/u) ?? [];
    if (words.length !== parts.length) continue;
    for (const [at, word] of words.entries()) {
      const syllables = (parts[at] ?? '').split(/[-·‧]/u).filter((part) => part !== '').length;
      if (syllables > 0) said.set(word, syllables);
    }
  }
  spoken.set(names, said);
  return said;
}
