import {
  formsOf,
  holdOfForm,
  sayOpening,
  type Clock,
  type Name,
  type NameForm,
} from '../editor/index.js';
import { liftOf, scheduleOf, type Card, type Content, type Schedule } from '../model/index.js';
import { NameIndex } from '../text/index.js';
import type { NameNote } from './protocol.js';

type Index = NameIndex<NameForm>;

/** Names are looked for by an index that is made once for a cast. */
const indexes = new WeakMap<object, Index>();

/** The names that stand in a card, and whoever is in its picture, in the order of names.yaml. */
export function nameNotes(content: Content, card: Card, clock: Clock): readonly NameNote[] {
  const { names, property } = content;
  if (!names || !property) return [];
  const schedule = scheduleOf(property.value);
  const index = indexOf(names.value, names.value.names);
  const found = new Map<Name, Set<string>>();
  for (const text of textsOf(card)) {
    for (const { of, from, to } of index.find(text)) {
      for (const { name } of of) {
        found.set(name, (found.get(name) ?? new Set()).add(text.slice(from, to)));
      }
    }
  }
  const depicts = new Set(card.front.image?.depicts ?? []);
  return names.value.names
    .filter((name) => found.has(name) || depicts.has(name.name))
    .map((name) => noteOf(name, [...(found.get(name) ?? [])], depicts, schedule, clock));
}

function indexOf(file: object, names: readonly Name[]): Index {
  const known = indexes.get(file);
  if (known) return known;
  const forms = names.flatMap((name) =>
    formsOf(name).map((of) => ({ form: of.form, exact: name.match === 'exact', of })),
  );
  const index = new NameIndex(forms, { slips: false });
  indexes.set(file, index);
  return index;
}

function textsOf({ front, bio }: Card): readonly string[] {
  return [
    front.name,
    ...bio.map((runs) => runs.map(({ text }) => text).join('')),
    ...Object.values(front.facts ?? {}),
    ...Object.values(front.texts ?? {}),
    ...(front.signers ?? []).flatMap(({ name, as }) => [name, as ?? '']),
    ...(front.credits ?? []).map(({ name }) => name),
  ];
}

function noteOf(
  name: Name,
  found: readonly string[],
  depicts: ReadonlySet<string>,
  schedule: Schedule,
  clock: Clock,
): NameNote {
  const forms = formsOf(name);
  const [own] = forms;
  const hold = own && holdOfForm(own, schedule);
  return {
    name: name.name,
    kind: name.kind,
    say: name.say ?? null,
    found,
    depicted: depicts.has(name.name),
    also: forms
      .filter(({ avoid, form }) => avoid === null && form !== name.name)
      .map((form) => ({
        form: form.form,
        opens: sayOpening(schedule, holdOfForm(form, schedule), clock),
      })),
    avoid: forms.flatMap(({ form, avoid }) =>
      avoid === null ? [] : [{ form, use: avoid.use, why: avoid.why ?? null }],
    ),
    opens: hold ? sayOpening(schedule, hold, clock) : 'open',
    opensLater: hold !== undefined && liftOf(schedule, hold) > clock.now,
    publicName: name.publicName ?? null,
    italic: name.style === 'italic',
  };
}
