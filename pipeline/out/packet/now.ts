import type { ViewCard, ViewRun } from '../../gate/index.js';
import { plainBio } from './bio-words.js';
import type { FieldText } from './submission.js';

/**
 * The fields of a card as texts, in the order in which they are read; a field without a text is left
 * out. Credits and signers are one a line.
 */
export function fieldsNow(card: ViewCard): readonly FieldText[] {
  const { review, image } = card;
  const all: readonly FieldText[] = [
    { field: 'name', text: card.name },
    { field: 'bio', text: plainWords(card.bio) },
    ...card.facts.map(({ name, value }) => ({ field: `facts.${name}`, text: value })),
    ...card.texts.map(({ zone, value }) => ({ field: `texts.${zone}`, text: value })),
    {
      field: 'credits',
      text: card.credits.map(({ role, name }) => `${role}: ${name}`).join('; '),
    },
    {
      field: 'signers',
      text: (review?.signers ?? []).map(({ name, state }) => `${name} (${state})`).join('; '),
    },
    { field: 'publicName', text: review?.publicName ?? '' },
    { field: 'alt', text: image?.alt ?? '' },
  ];
  return all.filter(({ text }) => text !== '');
}

/** The plain words of a text, paragraphs parted by an empty line. */
export function plainWords(words: readonly (readonly ViewRun[])[]): string {
  return plainBio(words.map((runs) => runs.map((run) => ('held' in run ? { text: HELD } : run))));
}

/** Stands for words that are held from whoever reads. */
const HELD = '[…]';
