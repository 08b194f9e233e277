import type { Subset } from '../../schema/index.js';
import {
  compareScenes,
  identityOf,
  isIssued,
  isVariation,
  plannedNumbers,
  sceneOf,
  type Card,
  type CardSet,
} from '../model/index.js';
import { nearest } from '../text/index.js';

/** How the numbers of a subset are to be given out anew. */
export type Wish =
  /** One card to a number; those between move up by one place. */
  | { readonly kind: 'move'; readonly card: string; readonly to: string }
  | { readonly kind: 'swap'; readonly cards: readonly [string, string] }
  | { readonly kind: 'by'; readonly key: 'name' | 'story' | 'current' }
  /** Every card that moves, a line each; `#` begins a remark. */
  | { readonly kind: 'order'; readonly lines: readonly string[] };

export interface NumbersOrder {
  readonly set: CardSet;
  readonly plan: Subset;
  readonly wish: Wish;
  /** Gives out the first numbers of the plan, so that no gap stays between the cards. */
  readonly closeGaps: boolean;
}

/** The new numbers of the cards that change theirs, variations too, or every reason why not. */
export type NewNumbers =
  | { readonly ok: true; readonly numbers: ReadonlyMap<Card, string> }
  | { readonly ok: false; readonly why: readonly string[] };

/**
 * Gives the numbers of a subset out anew: those that its cards bear, to the same cards in another
 * order. A card that was pulled keeps its number unless it is named; a variation goes with its parent.
 */
export function newNumbers({ set, plan, wish, closeGaps }: NumbersOrder): NewNumbers {
  const planned = plannedNumbers(plan.numbers);
  if (planned === null) return no(`\`${plan.id}\` has no numbers`);
  const own = set.cards.filter((card) => card.subset === plan.id && !isVariation(card));
  const troubles = troublesOf(own, planned, plan);
  if (troubles.length > 0) return { ok: false, why: troubles };
  const rank = new Map(planned.map((number, at) => [number, at]));
  const rankOf = (card: Card): number => rank.get(card.front.number) ?? 0;
  const inOrder = [...own].sort((a, b) => rankOf(a) - rankOf(b));
  const asked = askedOf(wish, inOrder, set, planned);
  if (!asked.ok) return asked;
  const { order, free } = asked;
  const moving = new Set(order);
  const kept = new Set(
    inOrder.filter((card) => !moving.has(card)).map(({ front }) => front.number),
  );
  const borne = inOrder.filter((card) => moving.has(card)).map(({ front }) => front.number);
  const given = closeGaps ? planned.filter((number) => !kept.has(number)) : (free ?? borne);
  const numbers = new Map(order.map((card, at) => [card, given[at] ?? card.front.number] as const));
  return { ok: true, numbers: changedOnly(numbers, set) };
}

function no(...why: readonly string[]): { readonly ok: false; readonly why: readonly string[] } {
  return { ok: false, why };
}

/** Only where each card has a number of its own can one be given to another. */
function troublesOf(own: readonly Card[], planned: readonly string[], plan: Subset): string[] {
  const known = new Set(planned);
  const bearers = new Map<string, Card>();
  return own.flatMap((card) => {
    const { number } = card.front;
    const other = bearers.get(number);
    bearers.set(number, other ?? card);
    if (!known.has(number)) {
      return [
        `${identityOf(card)} has the number ${number}, which the plan does not give to \`${plan.id}\``,
      ];
    }
    return other
      ? [`${identityOf(card)} and ${identityOf(other)} both have the number ${number}`]
      : [];
  });
}

type Asked =
  | {
      readonly ok: true;
      /** The cards that take part, in the order in which they get their numbers. */
      readonly order: readonly Card[];
      /** The numbers that they get, if these are not their own. */
      readonly free?: readonly string[];
    }
  | { readonly ok: false; readonly why: readonly string[] };

function askedOf(
  wish: Wish,
  inOrder: readonly Card[],
  set: CardSet,
  planned: readonly string[],
): Asked {
  const finder = finderOf(inOrder, set);
  switch (wish.kind) {
    case 'move':
      return moved(finder(wish.card), wish.to, inOrder, planned);
    case 'swap':
      return swapped(wish.cards.map(finder), inOrder);
    case 'by':
      return sorted(wish.key, inOrder.filter(isIssued));
    case 'order':
      return listed(wish.lines, inOrder, finder);
  }
}

type Found = Card | string;
type Finder = (name: string) => Found;

/** The card of a name such as `c017` or `crew/c017`, or why there is none. */
function finderOf(own: readonly Card[], set: CardSet): Finder {
  const byId = new Map(own.map((card) => [card.id, card]));
  const subset = own[0]?.subset ?? '';
  return (name) => {
    const id = name.startsWith(`${subset}/`) ? name.slice(subset.length + 1) : name;
    const card = byId.get(id);
    if (card) return card;
    const other = set.cards.find((each) => each.subset === subset && each.id === id);
    if (other) {
      return `${name} is a variation of ${other.front.variation?.of ?? ''} and goes where that one goes`;
    }
    const near = nearest(id, byId.keys());
    return `there is no card ${name} in \`${subset}\`${near === null ? '' : `; did you mean ${near}?`}`;
  };
}

function moved(
  found: Found,
  to: string,
  inOrder: readonly Card[],
  planned: readonly string[],
): Asked {
  const why = [
    ...(typeof found === 'string' ? [found] : []),
    ...(planned.includes(to) ? [] : [`the plan gives no number ${to} here: ${sayRange(planned)}`]),
  ];
  if (why.length > 0 || typeof found === 'string') return no(...why);
  const holder = inOrder.find(({ front }) => front.number === to);
  if (!holder) return { ok: true, order: [found], free: [to] };
  if (holder !== found && !isIssued(holder)) {
    return no(
      `${identityOf(holder)} was pulled and keeps the number ${to}: swap the two to move it`,
    );
  }
  const takePart = inOrder.filter((card) => isIssued(card) || card === found);
  const at = takePart.indexOf(holder);
  const others = takePart.filter((card) => card !== found);
  return { ok: true, order: [...others.slice(0, at), found, ...others.slice(at)] };
}

function swapped(found: readonly Found[], inOrder: readonly Card[]): Asked {
  const why = found.filter((each) => typeof each === 'string');
  const cards = found.filter((each) => typeof each !== 'string');
  const [first, second] = cards;
  if (why.length > 0 || !first || !second) return no(...why);
  if (first === second) return no(`${identityOf(first)} cannot be swapped with itself`);
  return { ok: true, order: inOrder.filter((card) => cards.includes(card)).reverse() };
}

function sorted(key: 'name' | 'story' | 'current', cards: readonly Card[]): Asked {
  if (key === 'current') return { ok: true, order: cards };
  if (key === 'name') {
    const named = cards.map((card) => [plainName(card.front.name), card] as const);
    const order = named.sort(([a], [b]) => (a < b ? -1 : a > b ? 1 : 0)).map(([, card]) => card);
    return { ok: true, order };
  }
  const untold = cards.filter(({ front }) => front.story === undefined);
  if (untold.length > 0) {
    return no(
      ...untold.map((card) => `${identityOf(card)} has no \`story\`, so it has no place in it`),
    );
  }
  const scene = (card: Card) => sceneOf(card.front.story ?? '0/0');
  return { ok: true, order: [...cards].sort((a, b) => compareScenes(scene(a), scene(b))) };
}

/** Letters without marks and capitals. */
function plainName(name: string): string {
  return name
    .normalize('NFKD')
    .replace(/\p{M}+/gu, '')
    .toLowerCase();
}

function listed(lines: readonly string[], inOrder: readonly Card[], finder: Finder): Asked {
  const why: string[] = [];
  const seen = new Map<Card, number>();
  for (const [at, line] of lines.entries()) {
    const name = line.replace(/#.*$/, '').trim();
    if (name === '') continue;
    const found = finder(name);
    const before = typeof found === 'string' ? undefined : seen.get(found);
    if (typeof found === 'string') why.push(`line ${String(at + 1)}: ${found}`);
    else if (before === undefined) seen.set(found, at + 1);
    else why.push(`line ${String(at + 1)}: ${name} stands in line ${String(before)} already`);
  }
  for (const card of inOrder) {
    if (isIssued(card) && !seen.has(card)) why.push(`${identityOf(card)} is not in the list`);
  }
  return why.length > 0 ? no(...why) : { ok: true, order: [...seen.keys()] };
}

function sayRange(planned: readonly string[]): string {
  return planned.length < 4 ? planned.join(', ') : `${planned[0] ?? ''} to ${planned.at(-1) ?? ''}`;
}

/** Cards whose number changes, each with its variations. */
function changedOnly(numbers: ReadonlyMap<Card, string>, set: CardSet): ReadonlyMap<Card, string> {
  const byIdentity = new Map([...numbers].map(([card, number]) => [identityOf(card), number]));
  return new Map(
    set.cards.flatMap((card) => {
      const number = byIdentity.get(card.front.variation?.of ?? identityOf(card));
      return number === undefined || number === card.front.number ? [] : [[card, number] as const];
    }),
  );
}
