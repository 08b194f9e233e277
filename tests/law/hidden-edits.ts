import type { HiddenEdit } from './edit.js';
import { CARD_EDITS } from './hidden-cards.js';
import { FIELD_EDITS } from './hidden-fields.js';
import { FILE_EDITS } from './hidden-files.js';
import { NAME_EDITS } from './hidden-names.js';
import { PROPERTY_EDITS } from './hidden-property.js';
import { PART_EDITS } from './hidden-parts.js';
import { SET_EDITS } from './hidden-sets.js';
import { WORD_EDITS } from './hidden-words.js';

/**
 * The law's list: edits that an audience must not be able to notice. Each is worked out from the
 * plain content and from `held.ts` alone; none calls the gate.
 */
export const HIDDEN_EDITS: readonly HiddenEdit[] = [
  ...CARD_EDITS,
  ...FIELD_EDITS,
  ...WORD_EDITS,
  ...SET_EDITS,
  ...PART_EDITS,
  ...PROPERTY_EDITS,
  ...FILE_EDITS,
  ...NAME_EDITS,
];

/** Kinds of edits that one audience must not notice. */
export function editsFor(audience: 'public' | 'person'): readonly HiddenEdit[] {
  return HIDDEN_EDITS.filter(({ from }) => from === 'all' || from === audience);
}
