import {
  view,
  type Audience,
  type View,
  type ViewCard,
  type ViewRun,
} from '../../pipeline/gate/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { cardOf, exampleWith } from '../law/example.js';
import { DAY, START } from '../law/generate-words.js';
import { releasedOf } from '../law/outputs.js';
import { filesOf, type Plain, type PlainCard } from '../law/plain.js';

/** The instant of a day of the example content; day 0 is its first public day. */
export function dayAt(day: number): number {
  return START + day * DAY;
}

export function publicAt(day: number): Audience {
  return { kind: 'public', at: dayAt(day) };
}

export const HOUSE: Audience = { kind: 'house' };

/** A person of the example content, by id. */
export function personAt(plain: Plain, id: string, day: number): Audience {
  const person = plain.people.people.find((candidate) => candidate.id === id);
  if (!person) throw new Error(`nobody is called ${id}`);
  return { kind: 'person', person, at: dayAt(day) };
}

export function seen(plain: Plain, audience: Audience): View {
  const made = view(releasedOf(plain), audience);
  if (!made) throw new Error('nothing is public then');
  return made;
}

/** All cards of a view, in its order. */
export function cardsIn(made: View): ViewCard[] {
  return made.sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
}

/** The cards of a subset that has only these, as somebody sees them. */
export function shown(audience: Audience, ...cards: PlainCard[]): ViewCard[] {
  return cardsIn(seen(exampleWith(...cards), audience));
}

/** The one card of a content, as somebody sees it. */
export function shownOne(audience: Audience, card: PlainCard): ViewCard {
  const [only] = shown(audience, card);
  if (!only) throw new Error('the card leaves no trace');
  return only;
}

/** The bio of a card whose body is this Markdown, as somebody reads it. */
export function bioOf(body: string, audience: Audience): ViewCard['bio'] {
  const files = filesOf(exampleWith(cardOf('crew', 'c001', { number: '1' })));
  const path = 'high-water/cards/crew/c001.md';
  files.set(path, (files.get(path) ?? '') + body);
  const content = readContent(memoryFolder(files));
  const released = select(content);
  const made = released && view(released, audience);
  if (!made) throw new Error(content.faults.map(({ message }) => message).join('\n'));
  return cardsIn(made).flatMap((card) => card.bio);
}

/** Words of a bio, a mark as `▇`, a hard break as `/`, italics between `_`, bold between `*`. */
export function sayBio(bio: ViewCard['bio']): string[] {
  return bio.map((paragraph) => paragraph.map(sayRun).join(''));
}

function sayRun(run: ViewRun): string {
  if ('held' in run) return '▇';
  if (run.text === '\n') return '/';
  const face = run.italic ? `_${run.text}_` : run.text;
  return run.bold ? `*${face}*` : face;
}
