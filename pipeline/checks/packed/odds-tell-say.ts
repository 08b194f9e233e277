import { OPEN, join, spotOf, type CardSet, type Hold } from '../../model/index.js';
import { askedOf, coarserOdds, type Made } from './odds-tell-fit.js';
import type { Unseen } from './odds-tell-held.js';
import type { SeenKind } from './odds-tell-seen.js';
import { grouped } from './expected.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';
import { heldBy } from '../told/early.js';

/** The remark on odds of a kind that ask for other copies than those of the cards that are listed. */
export function oddsTellRemark(
  kind: SeenKind,
  unseen: readonly Unseen[],
  products: readonly Made[],
  set: CardSet,
  subject: Subject,
): Remark | null {
  const { source, value } = set.plan;
  const [first] = kind.odds;
  const at = value.products?.findIndex(({ id }) => id === first?.product) ?? -1;
  const product = value.products?.[at];
  if (first === undefined || product === undefined) return null;
  const line = product.contents?.findIndex(({ of }) => of === kind.id) ?? 0;
  const hold = unseen.map((each) => each.hold).reduce(join, OPEN);
  const what = unseen.map((each) => each.what).join(' and ');
  return {
    spot: spotOf(source, ['products', at, 'contents', line, 'odds']),
    message: `\`${product.title}\`: 1:${grouped(first.oneIn)} packs for ${kind.title} tell that something is held: ${listed(kind)}, and ${asked(kind, products)}`,
    found: `1:${grouped(first.oneIn)}, while ${what} ${isOne(unseen) ? 'is' : 'are'} held by ${heldBy(hold, OPEN, subject)}`,
    expected: `${holding(hold, subject)} on \`${kind.id}\` too${coarser(kind, products)}`,
    related: unseen.map(({ spot }) => ({ message: 'what is held', spot })),
    set: set.id,
  };
}

function isOne(unseen: readonly Unseen[]): boolean {
  return unseen.length === 1 && unseen[0]?.count === 1;
}

function listed({ cards, run, copies }: SeenKind): string {
  const own = run === null && copies !== null ? ` with ${grouped(copies)} copies` : '';
  return `${grouped(cards)} ${cards === 1 ? 'card' : 'cards'}${own} ${cards === 1 ? 'is' : 'are'} listed`;
}

/** In cards of a run, if they come to whole ones; else in copies. */
function asked(kind: SeenKind, products: readonly Made[]): string {
  const { least, most } = askedOf(kind, products);
  const { run, each } = kind;
  if (run !== null && each !== null) {
    const from = Math.ceil(least / each);
    const to = most === null ? null : Math.floor(most / each);
    if (to === null || from <= to) {
      return `a run of ${grouped(run)} at these odds is of ${between(from, to)}`;
    }
  }
  return `these odds are of ${between(least, most)} copies`;
}

function between(from: number, to: number | null): string {
  if (to === null) return `at least ${grouped(from)}`;
  return from === to ? grouped(from) : `${grouped(from)} to ${grouped(to)}`;
}

/** "`spoiler: last`": what a plan says to hold a thing so. */
function holding({ level, embargoes }: Hold, { schedule }: Subject): string {
  const id = level > OPEN.level ? schedule.levels[level]?.id : undefined;
  return [
    ...(id === undefined ? [] : [`\`spoiler: ${id}\``]),
    ...(embargoes.length === 0 ? [] : [`\`embargo: [${embargoes.join(', ')}]\``]),
  ].join(' and ');
}

function coarser(kind: SeenKind, products: readonly Made[]): string {
  const odds = coarserOdds(kind, products);
  if (odds === null) return '';
  return `, or ${odds.map((oneIn) => `1:${grouped(oneIn)}`).join(' and ')} packs`;
}
