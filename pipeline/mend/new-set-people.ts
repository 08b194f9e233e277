import { answerOf, type Answers } from './new-set-answers.js';
import { freeId, idFrom } from './new-set-ids.js';

/** A person of a new property. */
export interface PersonDraft {
  readonly id: string;
  readonly name: string;
  readonly role: 'writer' | 'editor' | 'licensor';
}

/** Said of the licensor where nobody outside approves anything. */
export const NOBODY = 'none';

/**
 * The people of a new property. Whoever is not named is left out; if nobody is, the editor stands
 * there without a name, since a property has somebody.
 */
export function peopleOf(answers: Answers): readonly PersonDraft[] {
  const people: PersonDraft[] = [];
  const taken = new Set<string>();
  for (const role of ['writer', 'editor', 'licensor'] as const) {
    const name = answerOf(answers, role);
    if (name === null || (role === 'licensor' && name === NOBODY)) continue;
    const id = freeId(idFrom(name) || role, taken);
    taken.add(id);
    people.push({ id, name, role });
  }
  if (people.some(({ role }) => role !== 'licensor')) return people;
  return [{ id: freeId('editor', taken), name: 'Set editor', role: 'editor' }, ...people];
}
