import type { BackFile, Subset, Zone } from '../../schema/index.js';
import {
  isIssued,
  legalText,
  owedFor,
  numberOf,
  spotOf,
  zoneTexts,
  type Card,
  type Sourced,
  type Spot,
  type YamlPath,
  type ZoneText,
} from '../model/index.js';
import type { Faces } from '../typeset/index.js';
import { bioSpot } from './bounds.js';
import { ofCard, type Remark } from './rule.js';
import { type Subject, type SubsetView } from './subject.js';

/** A text in its zone. */
export interface FilledZone {
  readonly card: Card;
  readonly name: string;
  readonly side: 'zones' | 'front';
  readonly zone: Zone;
  readonly text: ZoneText;
  readonly faces: Faces;
  /** It is not of the card: what it says may change while the card does not. */
  readonly isShared: boolean;
  /** Where a finding about it belongs: on the card, or in the plan or the layout if cards share the text. */
  readonly place: () => Pick<Remark, 'spot' | 'set' | 'card'>;
}

interface Bench {
  readonly layout: Sourced<BackFile>;
  readonly faces: ReadonlyMap<string, Faces>;
  /** Texts of the layout itself that have been given out: once, not for each card. */
  readonly seen: Set<string>;
}

/** Every zone of every printed card that has a text, where layout and fonts could be read. */
export function* filledZones(subject: Subject): Generator<FilledZone> {
  const benches = benchesOf(subject);
  if (benches.size === 0) return;
  for (const view of subject.subsets) {
    for (const card of view.cards) {
      const bench = benches.get(card.front.back ?? view.plan.back ?? '');
      if (bench && isIssued(card)) yield* zonesOf(card, view, bench, subject);
    }
  }
}

function benchesOf({ content, fonts }: Subject): ReadonlyMap<string, Bench> {
  return new Map(
    [...content.layouts].flatMap(([id, layout]) => {
      const faces = fonts.get(id);
      return faces ? [[id, { layout, faces, seen: new Set<string>() }] as const] : [];
    }),
  );
}

function* zonesOf(
  card: Card,
  view: SubsetView,
  bench: Bench,
  { property }: Subject,
): Generator<FilledZone> {
  const { layout, faces } = bench;
  for (const [name, text] of textsOf(
    card,
    view.plan,
    layout.value,
    legalText(
      property.legal?.line ?? null,
      owedFor(property.legal?.depicts ?? [], card.front.image?.depicts ?? []),
    ),
  )) {
    const path =
      name === 'statement' && view.plan.statement !== undefined ? null : ownPath(name, card);
    for (const side of ['zones', 'front'] as const) {
      const zone =
        layout.value.blank === true && side === 'zones' ? undefined : layout.value[side]?.[name];
      const family = zone && faces.get(zone.font);
      if (!family || (path === null && isRepeated(side, name, text, bench.seen))) continue;
      const place = (): ReturnType<FilledZone['place']> =>
        path === null
          ? sharedPlace(name, side, layout, view)
          : { ...ofCard(card), spot: spotOn(card, path) };
      yield { card, name, side, zone, text, faces: family, isShared: path === null, place };
    }
  }
}

/** Where a text that cards share is said. */
function sharedPlace(
  name: string,
  side: FilledZone['side'],
  layout: Sourced<BackFile>,
  { set, plan, at }: SubsetView,
): ReturnType<FilledZone['place']> {
  return name === 'statement' && plan.statement !== undefined
    ? { set: set.id, spot: spotOf(set.plan.source, ['subsets', at, 'statement']) }
    : { spot: spotOf(layout.source, [side, name], 'key') };
}

/** The texts of a card, and what they were made of besides it. */
interface CardTexts {
  readonly plan: Subset;
  readonly layout: BackFile;
  readonly legal: string | null;
  readonly texts: ReadonlyMap<string, ZoneText>;
}

const cardTexts = new WeakMap<Card, CardTexts>();

function textsOf(
  card: Card,
  plan: Subset,
  layout: BackFile,
  legal: string | null,
): ReadonlyMap<string, ZoneText> {
  const before = cardTexts.get(card);
  const isSame = before?.plan === plan && before.layout === layout && before.legal === legal;
  if (isSame) return before.texts;
  const texts = makeTexts(card, plan, layout, legal);
  cardTexts.set(card, { plan, layout, legal, texts });
  return texts;
}

function makeTexts(
  card: Card,
  { statement }: Subset,
  layout: BackFile,
  legal: string | null,
): ReadonlyMap<string, ZoneText> {
  const { front, bio } = card;
  return zoneTexts({
    number: numberOf(card),
    name: front.name,
    bio,
    facts: Object.entries(front.facts ?? {}).map(([name, value]) => ({ name, value })),
    texts: front.texts ?? {},
    credits: front.credits ?? [],
    legal,
    statement: statement ?? null,
    shared: layout.shared ?? {},
  });
}

/** Where the card itself has the text of a zone; null for what belongs to its layout. */
function ownPath(name: string, { front, bio }: Card): YamlPath | null {
  if (name === 'number' || name === 'name' || (name === 'bio' && bio.length > 0)) return [name];
  if (name === 'facts' && front.facts) return [name];
  if (name === 'credits' && front.credits) return [name];
  return name !== 'legal' && Object.hasOwn(front.texts ?? {}, name) ? ['texts', name] : null;
}

function spotOn(card: Card, path: YamlPath): Spot {
  const [key = ''] = path;
  return key === 'bio' ? bioSpot(card) : spotOf(card.source, path);
}

function isRepeated(side: string, name: string, text: ZoneText, seen: Set<string>): boolean {
  const key = `${side} ${name} ${wordsOf(text)}`;
  if (seen.has(key)) return true;
  seen.add(key);
  return false;
}

/** The words of a text, by which one that is not of the card is known again. */
export function wordsOf(text: ZoneText): string {
  return text.flatMap((runs) => runs.map((run) => run.text)).join('\n');
}
