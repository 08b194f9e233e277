import { view, type Audience, type View } from '../../pipeline/gate/index.js';
import { select, type Released } from '../../pipeline/select/index.js';
import type { Eye } from './held.js';
import { contentOf, type Plain } from './plain.js';

/** What can be made of a content for an audience, each as text. Equal text is an equal output. */
export interface Output {
  readonly name: string;
  readonly of: (released: Released, audience: Audience) => string;
}

export const OUTPUTS: readonly Output[] = [
  { name: 'view', of: (released, audience) => viewText(view(released, audience)) },
];

/** A view as text, with every value and every order in it. */
export function viewText(view: View | null): string {
  return JSON.stringify(view && { ...view, layouts: [...view.layouts] });
}

export function releasedOf(plain: Plain): Released {
  const released = select(contentOf(plain));
  if (!released) throw new Error('a generated content has no faults');
  return released;
}

/** Who looks, as the gate is told it: a person as people.yaml has them. */
export function audienceOf(plain: Plain, { at, person }: Eye): Audience {
  if (person === null) return { kind: 'public', at };
  const listed = plain.people.people.find(({ id }) => id === person.id);
  return { kind: 'person', person: listed ?? person, at };
}

/** Everything that is made of a content for whoever looks. */
export function outputsOf(plain: Plain, eye: Eye): readonly string[] {
  const released = releasedOf(plain);
  return OUTPUTS.map((output) => output.of(released, audienceOf(plain, eye)));
}
