import type { PropertyFile } from '../../schema/index.js';
import { shownWhole } from '../gate/index.js';
import { isIssued, writeInstant, type Card } from '../model/index.js';
import { appended, ledgerText } from '../review/index.js';
import { select } from '../select/index.js';
import { nearest } from '../text/index.js';
import { writeAll } from '../write/index.js';
import { CardNames } from './checked-cards.js';
import { stamped } from './checked-stamp.js';
import type { Person } from './choose.js';
import { readGround, type Found, type Ground } from './ground.js';
import { HOUSE_ROLES } from './house.js';
import { octetsOf, type Files } from './kept-files.js';
import { LEDGER, locked, refused, type Place, type Refused } from './lock.js';
import { cardOctets, type Recorded } from './record.js';

/** Copy that somebody has read against a cut. */
export interface CheckedOrder extends Place {
  /** Each `set/subset/id`, or `subset/id` or a number where only one card has it. */
  readonly cards: readonly string[];
  readonly cut: string;
  /** Who read it, by id: a person of the house. */
  readonly by: string;
  /** The id of the one set in which the cards are looked for. */
  readonly set?: string;
}

/** What was stamped, and what there was to do. */
export interface Checked extends Recorded {
  /** How many cards were stamped: none where all were read against that cut already. */
  readonly stamped: number;
}

/**
 * Stamps cards as read against a cut, and puts it into the ledger. All of it is written, or, if
 * anything is wrong, nothing.
 */
export function recordChecked(order: CheckedOrder): Promise<Checked | Refused> {
  return locked(order, (disk) => {
    const planned = plan(order);
    if (!planned.done) return planned;
    const { files, lines, stamped: count } = planned;
    if (count > 0) writeAll(disk, order.contentPath, files);
    return { done: true, lines, stamped: count };
  });
}

interface Planned extends Checked {
  readonly files: Files;
}

function plan(order: CheckedOrder): Planned | Refused {
  const ground = readGround(order.contentPath);
  if ('done' in ground) return ground;
  const cuts = ground.property.cuts ?? [];
  const person = ground.content.people?.value.people.find(({ id }) => id === order.by);
  const names = new CardNames(ground, order.set);
  const named = order.cards.map((typed) => names.find(typed));
  const cards = new Map(
    named.flatMap((each) => (each.ok ? [[each.key, each.found] as const] : [])),
  );
  const wrong = [
    ...wrongSet(order, ground),
    ...wrongCut(order.cut, cuts),
    ...wrongPerson(order.by, person, ground),
    ...named.flatMap((each) => (each.ok ? [] : [each.why])),
    ...wrongCards(order, cards, cuts),
    ...(person ? unread(person, cards, ground, order) : []),
  ];
  const fates = [...cards].map(([key, { card }]) => fateOf(key, card, order.cut));
  const failed = fates.flatMap(({ why }) => (why === null ? [] : [why]));
  if (wrong.length + failed.length > 0) return refused(...new Set([...wrong, ...failed]));
  return planned(order, ground, fates);
}

/** What becomes of one card. */
interface Fate {
  readonly key: string;
  readonly was: string | null;
  /** The card as it is to be; null where there is nothing to do. */
  readonly card: Card | null;
  readonly why: string | null;
}

function fateOf(key: string, card: Card, cut: string): Fate {
  const was = card.front.checkedAgainst ?? null;
  if (was === cut) return { key, was, card: null, why: null };
  const after = stamped(card, cut);
  const why = `${key}: \`checkedAgainst: ${cut}\` cannot be put into ${card.source.file} without changing what else stands there: type it in by hand`;
  return { key, was, card: after, why: after === null ? why : null };
}

function planned({ cut, by, now }: CheckedOrder, ground: Ground, fates: readonly Fate[]): Planned {
  const at = writeInstant(now, ground.property.zone);
  const changed = fates.flatMap(({ key, card }) => (card === null ? [] : [{ key, card }]));
  const ledger = appended(
    ground.review.ledger,
    changed.map(({ key }) => ({ kind: 'checked', at, card: key, cut, by })),
  );
  const cuts = ground.property.cuts ?? [];
  const later = cuts.slice(cuts.findIndex(({ id }) => id === cut) + 1).map(({ id }) => id);
  const lines = [
    ...fates.map(({ key, was, card }) =>
      card === null
        ? `${key}: was read against ${cut} already`
        : `${key}: read against ${cut}, before against ${was ?? 'none'}`,
    ),
    ...(later.length === 0 || changed.length === 0
      ? []
      : [`${cut} is not the current cut: ${later.join(', ')} came in after it`]),
  ];
  const files = new Map([
    ...changed.map(({ card }) => [card.source.file, cardOctets(ground, card)] as const),
    [LEDGER, octetsOf(ledgerText(ledger))] as const,
  ]);
  return { done: true, lines, stamped: changed.length, files };
}

type Cuts = NonNullable<PropertyFile['cuts']>;

function wrongSet({ set }: CheckedOrder, { content }: Ground): readonly string[] {
  const ids = content.sets.map(({ id }) => id);
  return set === undefined || ids.includes(set)
    ? []
    : [`there is no set ${set}${sayNear(set, ids)}`];
}

function wrongCut(cut: string, cuts: Cuts): readonly string[] {
  const ids = cuts.map(({ id }) => id);
  if (ids.includes(cut)) return [];
  const current = ids.at(-1);
  const none =
    current === undefined ? ': it lists none in `cuts`' : `: the current one is ${current}`;
  // Of two that are as near, the later is likelier meant.
  return [`property.yaml knows no cut ${cut}${sayNear(cut, ids.toReversed()) || none}`];
}

function wrongPerson(
  by: string,
  person: Person | undefined,
  { content }: Ground,
): readonly string[] {
  const ids = (content.people?.value.people ?? []).map(({ id }) => id);
  if (!person) return [`people.yaml knows no ${by}${sayNear(by, ids)}`];
  return HOUSE_ROLES.includes(person.role)
    ? []
    : [`${by} is not of the house: --by names a ${HOUSE_ROLES.join(', ')}`];
}

function sayNear(typed: string, known: readonly string[]): string {
  const near = nearest(typed, known);
  return near === null ? '' : `: the nearest is ${near}`;
}

type Cards = ReadonlyMap<string, Found>;

function wrongCards({ cut }: CheckedOrder, cards: Cards, cuts: Cuts): readonly string[] {
  const place = (id: string | undefined): number => cuts.findIndex((each) => each.id === id);
  const asked = place(cut);
  return [...cards].flatMap(([key, { card }]) => {
    const was = card.front.checkedAgainst;
    if (!isIssued(card)) return [`${key}: it is not issued, so that no copy of it prints`];
    if (was === undefined || asked < 0 || place(was) <= asked) return [];
    return [`${key}: it was read against ${was}, which came in after ${cut}`];
  });
}

/** Cards of which something is held from who says that they have read them. */
function unread(
  { id, clearance }: Person,
  cards: Cards,
  { content }: Ground,
  { now }: CheckedOrder,
): readonly string[] {
  const released = select(content);
  const person = content.people?.value.people.find((each) => each.id === id);
  if (!released || !person) return [];
  const whole = shownWhole(released, { kind: 'person', person, at: now });
  return [...cards]
    .filter(([key, { card }]) => isIssued(card) && whole.get(key)?.includes('copy') !== true)
    .map(
      ([key]) =>
        `${key}: ${id}, who is cleared for ${clearance}, is not told all of its copy and cannot have read it: name with --by who has`,
    );
}
