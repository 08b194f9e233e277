import {
  compareNumbers,
  identityOf,
  isIssued,
  placeOf,
  spotOf,
  type Card,
  type CardSet,
  type Content,
  type Instant,
  type Place,
  type SourceFile,
} from '../model/index.js';
import { view, type View } from '../gate/index.js';
import { pageOf } from '../out/site/index.js';
import { standingsOf } from '../review/index.js';
import { select } from '../select/index.js';
import type { Looked } from './look.js';

type Numbers = ReadonlyMap<Card, string>;

/** Who approved the layout of a card with the number that it has. */
export interface VoidedApproval {
  readonly card: string;
  readonly person: string;
  readonly role: string;
}

/** Approvals of `layout` that hold now and will not, since they are of the old number. */
export function voidedApprovals(
  { content, approvals }: Looked,
  set: CardSet,
  numbers: Numbers,
): readonly VoidedApproval[] {
  if (!content.property) return [];
  const ground = {
    property: content.property.value,
    people: content.people?.value.people ?? [],
    decisions: approvals.decisions,
    approvals,
  };
  return [...numbers.keys()]
    .filter(isIssued)
    .flatMap((card) =>
      standingsOf(['layout'], set, card, ground).flatMap(({ roles }) =>
        roles.flatMap(({ role, approvedBy }) =>
          approvedBy === null ? [] : [{ card: identityOf(card), person: approvedBy.person, role }],
        ),
      ),
    );
}

/** A public address that a card has now, and the one that it will have. */
export interface MovedAddress {
  readonly card: string;
  readonly from: string;
  readonly to: string;
}

/** Addresses of cards that the public can see now, by today's files. */
export function movedAddresses(
  content: Content,
  set: CardSet,
  numbers: Numbers,
  now: Instant,
): readonly MovedAddress[] {
  const released = select(content);
  const seen = released && view(released, { kind: 'public', at: now });
  const pages = seen ? pagesIn(seen, set.id) : new Set<string>();
  return [...numbers].flatMap(([card, number]) => {
    const letter = card.front.variation?.letter ?? null;
    const address = (of: string): string | null =>
      pageOf({ id: set.id }, { id: card.subset }, { number: of, letter });
    const [from, to] = [address(card.front.number), address(number)];
    return from !== null && to !== null && pages.has(from)
      ? [{ card: identityOf(card), from, to }]
      : [];
  });
}

function pagesIn({ sets }: View, id: string): ReadonlySet<string> {
  const own = sets.filter((set) => set.id === id);
  return new Set(
    own.flatMap((set) =>
      set.subsets.flatMap((subset) =>
        subset.cards.flatMap((card) => pageOf(set, subset, card) ?? []),
      ),
    ),
  );
}

/** A place whose words name a number that moves. */
export interface Mention extends Place {
  readonly file: string;
  readonly words: string;
}

/** Where the files of a set speak of numbers that move: nobody but a person can tell what is meant. */
export function mentions(set: CardSet, numbers: Numbers): readonly Mention[] {
  const pattern = patternOf([...numbers.keys()].map(({ front }) => front.number));
  const sources: readonly SourceFile[] = [
    set.plan.source,
    ...set.cards.map(({ source }) => source),
    ...set.sales.map(({ source }) => source),
    ...[...set.rosters.values()].map(({ source }) => source),
    ...(set.corrections ? [set.corrections.source] : []),
  ];
  const own = new Map(set.cards.map((card) => [card.source, card]));
  return sources.flatMap((source) =>
    [...source.text.matchAll(pattern)].flatMap(({ 0: words, index }): Mention[] => {
      if (isOwnNumber(own.get(source), index, words) || isPlanned(source, set, index)) return [];
      return [{ file: source.file, ...placeOf(source.text, index), words: words.trim() }];
    }),
  );
}

/** A bare number is a card only after a word that says so; one with letters speaks for itself. */
function patternOf(numbers: readonly string[]): RegExp {
  const all = [...new Set(numbers)].sort((a, b) => b.length - a.length || compareNumbers(a, b));
  const bare = all.filter((number) => /^\d+$/.test(number)).map(escaped);
  const telling = all.filter((number) => !/^\d+$/.test(number)).map(escaped);
  const parts = [
    ...(bare.length === 0
      ? []
      : [
          `(?:\\bcards?|\\bnumbers?|\\bno\\.?|#|№)[\\s:"']{0,3}(?:${bare.join('|')})(?![\\p{L}\\p{N}])`,
        ]),
    ...(telling.length === 0
      ? []
      : [`(?<![\\p{L}\\p{N}-])(?:${telling.join('|')})(?![\\p{L}\\p{N}])`]),
  ];
  return new RegExp(parts.length === 0 ? '(?!)' : parts.join('|'), 'giu');
}

function escaped(words: string): string {
  return words.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
}

/** The number that a card bears is moved with it. */
function isOwnNumber(card: Card | undefined, at: number, words: string): boolean {
  if (!card) return false;
  const key = spotOf(card.source, ['number'], 'key');
  const value = spotOf(card.source, ['number']);
  return at >= key.from && at + words.length <= value.to;
}

/** Numbers that the plan gives out stay in it. */
function isPlanned(source: SourceFile, { plan }: CardSet, at: number): boolean {
  if (source !== plan.source) return false;
  return plan.value.subsets.some((_, index) => {
    const { from, to } = spotOf(source, ['subsets', index, 'numbers', 'codes']);
    return at >= from && at < to;
  });
}
