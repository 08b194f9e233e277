import type { Audience } from '../gate/index.js';
import type { Released } from '../select/index.js';
import { UsageError, type Io } from './io.js';

/**
 * Whom a command works for: a person of people.yaml by id, as of now; the house, if nobody is named.
 * @throws UsageError if there is no such person.
 */
export function audienceOf(id: string | undefined, released: Released, io: Io): Audience {
  if (id === undefined) return { kind: 'house' };
  return { kind: 'person', person: personOf(id, released), at: io.now };
}

/**
 * A person of people.yaml by id.
 * @throws UsageError if there is no such person.
 */
export function personOf(id: string, { people }: Released): Released['people'][number] {
  const person = people.find((candidate) => candidate.id === id);
  if (!person) throw new UsageError(`people.yaml knows no ${id}`);
  return person;
}
