import { spotOf, subsetOf, type Card, type CardSet, type YamlPath } from '../../model/index.js';
import { knownField, knownHold, traceHold } from '../known-hold.js';
import { ofCard } from '../rule.js';
import type { Subject } from '../subject.js';
import { copyTexts, pairText, valueText, type Around, type ToldText } from './text.js';

/** Every text of a card that is read outside, each under the field that may hold it. */
export function* cardTexts(card: Card, set: CardSet, subject: Subject): Generator<ToldText> {
  const { schedule, holds } = subject;
  const { front, source, bio } = card;
  const hold = holds.get(card);
  if (!hold) return;
  const owner = ofCard(card);
  const around = (field: string): Around | null => {
    const own = knownField(card, field, hold, schedule);
    return own && { hold: own, source, owner };
  };
  for (const { field, path, text } of valuesOf(card)) {
    const own = around(field);
    const kind = field === 'name' ? 'name' : 'text';
    if (own) yield valueText(`\`${path.join('.')}\``, text, path, { ...own, kind });
  }
  for (const { field, what, paths, texts } of pairsOf(card)) {
    const own = around(field);
    if (!own) continue;
    const [first, second] = paths.map(
      ({ path, of }) =>
        () =>
          spotOf(source, path, of),
    );
    if (first && second) yield pairText(what, texts, [first, second], own);
  }
  if (front.publicName !== undefined) {
    const whole = knownHold(
      schedule,
      set.plan.value,
      subsetOf(set.plan.value, card.subset) ?? {},
      front,
    );
    const shown = { hold: traceHold(schedule, whole ?? hold), source, owner };
    yield valueText('`publicName`', front.publicName, ['publicName'], shown);
  }
  const ownBio = around('bio');
  if (ownBio) yield* copyTexts('the bio', bio, ownBio, schedule);
}

interface Value {
  readonly field: string;
  readonly path: YamlPath;
  readonly text: string;
}

function valuesOf({ front }: Card): readonly Value[] {
  const { name, image, variation, texts = {}, signers = [] } = front;
  const own = (field: string, path: YamlPath, text: string | undefined): readonly Value[] =>
    text === undefined ? [] : [{ field, path, text }];
  return [
    ...own('name', ['name'], name),
    ...own('image.alt', ['image', 'alt'], image?.alt),
    ...own('variation', ['variation', 'tell'], variation?.tell),
    ...Object.entries(texts).flatMap(([key, text]) => own(`texts.${key}`, ['texts', key], text)),
    ...signers.flatMap(({ name: who, as }, at) =>
      as === undefined ? own('signers', ['signers', at, 'name'], who) : [],
    ),
  ];
}

interface Place {
  readonly path: YamlPath;
  readonly of: 'key' | 'value';
}

/** Two values that are read as one line, as a fact is with its name. */
interface Pair {
  readonly field: string;
  readonly what: string;
  readonly texts: readonly [string, string];
  readonly paths: readonly [Place, Place];
}

function pairsOf({ front }: Card): readonly Pair[] {
  const { facts = {}, signers = [], credits = [] } = front;
  const both = (list: string, at: number, keys: readonly [string, string]): Pair['paths'] => [
    { path: [list, at, keys[0]], of: 'value' },
    { path: [list, at, keys[1]], of: 'value' },
  ];
  return [
    ...Object.entries(facts).map(([key, value]): Pair => {
      const path = ['facts', key];
      const paths = [{ path, of: 'key' } as const, { path, of: 'value' } as const] as const;
      return { field: `facts.${key}`, what: `\`facts.${key}\``, texts: [key, value], paths };
    }),
    ...signers.flatMap(({ name, as }, at): readonly Pair[] =>
      as === undefined
        ? []
        : [
            {
              field: 'signers',
              what: `\`signers.${String(at)}\``,
              texts: [name, as],
              paths: both('signers', at, ['name', 'as']),
            },
          ],
    ),
    ...credits.map(({ role, name }, at): Pair => ({
      field: 'credits',
      what: `\`credits.${String(at)}\``,
      texts: [role, name],
      paths: both('credits', at, ['role', 'name']),
    })),
  ];
}
