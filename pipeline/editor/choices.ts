import { RULES } from '../checks/index.js';
import { identityOf, isVariation, subsetOf, type CardSet } from '../model/index.js';
import type { Ground } from './ground.js';
import { sayBriefly } from './hover.js';
import { formsOf } from './names.js';
import { sayOpeningOf } from './openings.js';
import { linesOfCount } from './told-things.js';
import { asPlain } from './shown.js';
import type { ValueKind } from './value-kinds.js';

/** Something that may be written at a place. */
export interface Choice {
  readonly text: string;
  /** What it is, in a few words. */
  readonly detail: string;
  /** Other words by which somebody may look for it: a label or a title. */
  readonly label?: string;
}

/** Everything of a kind that there is. */
export function choicesOf(kind: ValueKind, ground: Ground): readonly Choice[] {
  const { content, property, set } = ground;
  const sets = set ? [set] : content.sets;
  switch (kind) {
    case 'level':
      return property.levels.map((each) => holdChoice(each, ground));
    case 'embargo':
      return (property.embargoes ?? []).map((each) => holdChoice(each, ground));
    case 'hold':
      return [...choicesOf('level', ground), ...choicesOf('embargo', ground)];
    case 'subset':
    case 'group':
    case 'countable':
      return countChoices(kind, sets, ground);
    case 'document':
      return (property.documents ?? []).map(({ id, title, withdrawn }) => ({
        text: id,
        label: title,
        detail: withdrawn === undefined ? title : `${title}, withdrawn on ${withdrawn}`,
      }));
    case 'cut':
      return (property.cuts ?? [])
        .map(({ id, received }) => ({ text: id, detail: `Received on ${received}` }))
        .reverse();
    case 'person':
      return (content.people?.value.people ?? []).map(({ id, name, role }) => ({
        text: id,
        label: name,
        detail: `${name}, ${role}`,
      }));
    case 'role':
      return once((content.people?.value.people ?? []).map(({ role }) => role)).map(plain('Role'));
    case 'layout':
      return [...content.layouts.keys()].map(plain('Card layout'));
    case 'font':
      return fontChoices(ground);
    case 'card':
      return sets.flatMap(({ cards }) =>
        cards
          .filter((card) => ground.shape.kind !== 'card' || !isVariation(card))
          .map((card) => ({
            text: identityOf(card),
            label: card.front.name,
            detail: `${card.front.number} ${card.front.name}`,
          })),
      );
    case 'rule':
      return RULES.filter(({ acceptable }) => acceptable !== false).map(({ id, why }) => ({
        text: id,
        detail: why,
      }));
    case 'name':
      return nameChoices(ground);
    case 'public name':
      return (content.names?.value.names ?? []).flatMap(({ name, publicName }) =>
        publicName === undefined ? [] : [{ text: publicName, detail: `For ${name}`, label: name }],
      );
    case 'art':
      return set ? [...set.art].map(plain('Picture')) : [];
    case 'roster':
      return set ? [...set.rosters.keys()].map(plain('Roster')) : [];
    case 'fact':
      return factChoices(ground);
    case 'zone':
      return zoneChoices(ground);
    case 'field':
      return fieldChoices(ground);
  }
}

function plain(detail: string): (text: string) => Choice {
  return (text) => ({ text, detail });
}

function once(texts: readonly string[]): readonly string[] {
  return [...new Set(texts)];
}

function holdChoice(
  { id, label }: { readonly id: string; readonly label?: string },
  { schedule, clock }: Ground,
): Choice {
  const opening = sayOpeningOf(schedule, id, clock) ?? '';
  return { text: id, label: label ?? id, detail: `${label ?? id}: ${opening}` };
}

function countChoices(
  kind: 'subset' | 'group' | 'countable',
  sets: readonly CardSet[],
  ground: Ground,
): readonly Choice[] {
  const ids = sets.flatMap(({ plan: { value } }) => [
    ...(kind === 'group' ? [] : value.subsets.map(({ id }) => id)),
    ...(kind === 'subset' ? [] : value.subsets.map(({ group }) => group)),
    ...(kind === 'countable' ? Object.keys(value.totals ?? {}) : []),
  ]);
  return once(ids).map((text) => ({
    text,
    detail: asPlain((linesOfCount(text, ground) ?? []).slice(0, 2)).replaceAll('\n', ': '),
  }));
}

function fontChoices({ content, path }: Ground): readonly Choice[] {
  const layout = [...content.layouts.values()].find(({ source }) => source.file === path);
  return Object.keys(layout?.value.fonts ?? {}).map(plain('Font of this layout'));
}

function nameChoices(ground: Ground): readonly Choice[] {
  return (ground.content.names?.value.names ?? []).flatMap((name) =>
    formsOf(name)
      .filter(({ avoid }) => avoid === null)
      .map((form) => ({ text: form.form, label: name.name, detail: sayBriefly(form, ground) })),
  );
}

/** The facts that cards of the subset carry; in a plan, of all its subsets. */
function factChoices({ set, shape }: Ground): readonly Choice[] {
  const subsets = set?.plan.value.subsets ?? [];
  const own = shape.subset === null ? subsets : subsets.filter(({ id }) => id === shape.subset);
  return once(own.flatMap(({ facts }) => facts ?? [])).map(plain('Fact'));
}

/** Zones of the card's layout that hold words of their own. */
function zoneChoices({ content, set, shape, path }: Ground): readonly Choice[] {
  const card = set?.cards.find(({ source }) => source.file === path);
  const plan = set && subsetOf(set.plan.value, shape.subset ?? '');
  const layout = content.layouts.get(card?.front.back ?? plan?.back ?? '')?.value;
  const zones = [...Object.keys(layout?.zones ?? {}), ...Object.keys(layout?.front ?? {})];
  return once(zones)
    .filter((zone) => !OWN_FIELDS.includes(zone))
    .map(plain('Zone of the layout'));
}

/** Fields of a card that fill the zones of their name. */
const OWN_FIELDS = ['number', 'name', 'bio', 'facts', 'credits', 'legal', 'image'];

/** Fields that may be held longer than the card. */
function fieldChoices(ground: Ground): readonly Choice[] {
  const parts = [
    ...factChoices(ground).map(({ text }) => `facts.${text}`),
    ...zoneChoices(ground).map(({ text }) => `texts.${text}`),
  ];
  return [
    ...['name', 'bio', 'image', 'image.alt', 'facts', 'texts', 'signers', 'credits', 'variation'],
    ...parts,
  ].map(plain('Field of the card'));
}
