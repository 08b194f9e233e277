import canonicalize from 'canonicalize';

import type { PublicChecklist, PublicData, PublicSet } from '../../../schema/index.js';

/** A set as canonical JSON (RFC 8785) with a line break at its end. */
export function checklistJson({ asOf, preview, property }: PublicData, set: PublicSet): string {
  const { title, legal, dataTerms, zone, levels } = property;
  const checklist: PublicChecklist = {
    format: 1,
    asOf,
    preview,
    property: { title, legal, dataTerms, zone, levels },
    set,
  };
  const text = canonicalize(checklist);
  if (text === undefined) throw new TypeError('this set cannot be written as JSON');
  return `${text}\n`;
}
