import type { NamesFile, PeopleFile, PropertyFile } from '../../schema/index.js';
import type { CardSet, Content } from '../model/index.js';

/** The sets as they are to be released: what the gate makes views of. */
export interface Released {
  readonly property: PropertyFile;
  readonly names: NamesFile['names'];
  readonly people: PeopleFile['people'];
  readonly layouts: Content['layouts'];
  readonly sets: readonly CardSet[];
}

/**
 * Selects what is to be released. While a property asks for no approvals, that is what is in the
 * files; null if its property.yaml cannot be read or any file has a fault, since a part that was
 * not understood may hold something.
 */
export function select(content: Content): Released | null {
  if (!content.property || content.faults.length > 0) return null;
  return {
    property: content.property.value,
    names: content.names?.value.names ?? [],
    people: content.people?.value.people ?? [],
    layouts: content.layouts,
    sets: content.sets,
  };
}
