import type { PropertyFile } from '../../schema/index.js';
import { check } from '../checks/index.js';
import {
  identityOf,
  scheduleOf,
  subsetOf,
  type Card,
  type CardSet,
  type Content,
  type Instant,
} from '../model/index.js';
import {
  approvedVersions,
  partsForSite,
  scheduleSeen,
  shownBeforeSeen,
  standingsOf,
  type Approvals,
  type CardPart,
  type PartStanding,
  type Version,
} from '../review/index.js';
import { heldBack, withHeldBack } from './held-back.js';
import { isNoStricter } from './no-stricter.js';
import { select, type Released } from './released.js';
import { NO_DICTIONARIES } from '../text/index.js';

/** What becomes of a card that the site would show and that is not approved. */
export const POLICIES = ['refuse', 'hold', 'last-approved'] as const;
export type Policy = (typeof POLICIES)[number];

/** How the public sees a card: what it is, and all that shows of it as text to be compared. */
export interface Sight {
  readonly state: 'shown' | 'placeholder' | 'not issued';
  readonly all: string;
}

/**
 * How the public of the instant sees a card; null if it leaves no trace. The gate says it: an
 * approval is judged on the cut, and the cut is the gate's.
 */
export type See = (property: PropertyFile, set: CardSet, card: Card) => Sight | null;

export interface SiteOrder {
  readonly content: Content;
  readonly approvals: Approvals;
  readonly policy: Policy;
  /** The instant of the site. */
  readonly at: Instant;
  readonly see: See;
}

/** A card that the site would show as it was never approved. */
export interface Unapproved {
  readonly set: CardSet;
  readonly card: Card;
  readonly parts: readonly PartStanding[];
}

export interface SiteSelection {
  readonly released: Released;
  /** What keeps the site from going out. */
  readonly refused: readonly Unapproved[];
  /** Cards that are shown as held since they are not approved, by `set/subset/id`. */
  readonly held: readonly string[];
  /** Cards that are shown as they were last approved. */
  readonly broughtBack: readonly string[];
  /** Where art that was brought back is kept, by where a view says that it is. */
  readonly keptArt: ReadonlyMap<string, string>;
}

/** What becomes of one card. */
type Fate =
  | { readonly is: 'approved' }
  | { readonly is: 'back'; readonly version: Version }
  | { readonly is: 'held' }
  | { readonly is: 'refused' };

/**
 * Selects what goes to the site of an instant: a card may be shown if some version of it that was
 * approved gives the same view of it. A card that is not issued, or leaves no trace, asks for no
 * approval; a placeholder whose `web` part is not approved is refused under every policy. Null as
 * for `select`.
 */
export function selectForSite(order: SiteOrder): SiteSelection | null {
  const released = select(order.content);
  if (!released) return null;
  if (released.property.approvals === 'none') {
    return { released, refused: [], held: [], broughtBack: [], keptArt: new Map() };
  }
  return new SiteSelector(released, order).select();
}

class SiteSelector {
  readonly #property: PropertyFile;
  readonly #ground;

  constructor(
    readonly released: Released,
    readonly order: SiteOrder,
  ) {
    const { property, people } = released;
    this.#property = withHeldBack(property);
    this.#ground = { property, people, decisions: order.approvals.decisions };
  }

  select(): SiteSelection {
    const fates = new Map<Card, Fate>();
    for (const set of this.released.sets) {
      for (const card of set.cards) fates.set(card, this.#fateOf(set, card));
    }
    for (const card of this.#telling(fates)) {
      const set = this.released.sets.find(({ id }) => id === card.set);
      if (set) fates.set(card, this.#heldOrRefused(set, card));
    }
    return this.#selection(fates);
  }

  #fateOf(set: CardSet, card: Card): Fate {
    const seen = this.order.see(this.released.property, set, card);
    if (seen === null || seen.state === 'not issued') return { is: 'approved' };
    const parts = this.#partsOf(seen);
    const versions = this.#versions(set, card, parts);
    const isApproved = versions.some(
      (version) => this.order.see(this.released.property, set, version.card)?.all === seen.all,
    );
    if (isApproved) return { is: 'approved' };
    if (seen.state === 'placeholder' || this.order.policy === 'refuse') return { is: 'refused' };
    const back = this.order.policy === 'last-approved' ? this.#lastOf(set, card, versions) : null;
    return back === null ? this.#heldOrRefused(set, card) : { is: 'back', version: back };
  }

  /** A held card is a placeholder, and that must be approved as such. */
  #heldOrRefused(set: CardSet, card: Card): Fate {
    const today = this.order.see(this.#property, set, heldBack(card));
    const isApproved = this.#versions(set, card, partsForSite(false, false)).some(
      (version) => this.order.see(this.#property, set, heldBack(version.card))?.all === today?.all,
    );
    return { is: today !== null && isApproved ? 'held' : 'refused' };
  }

  #partsOf(seen: Sight): readonly CardPart[] {
    const shows = this.released.property.site?.shows;
    const art = shows === undefined || shows === 'none' ? 'none' : (shows.art ?? 'none');
    return partsForSite(seen.state === 'shown', art !== 'none');
  }

  /** Approved versions of which nothing shows earlier than whoever approved them saw. */
  #versions(set: CardSet, card: Card, parts: readonly CardPart[]): readonly Version[] {
    const { property } = this.released;
    const plan = set.plan.value;
    const subset = subsetOf(plan, card.subset) ?? null;
    const { approvals, at } = this.order;
    return approvedVersions({ set, card, subset, parts }, this.#ground, approvals).filter(
      ({ card: own, by }) => {
        const now = scheduleSeen(property, plan, own);
        return by.every(({ seen }) => shownBeforeSeen(seen, now, at).length === 0);
      },
    );
  }

  #lastOf(set: CardSet, card: Card, versions: readonly Version[]): Version | null {
    const schedule = scheduleOf(this.released.property);
    const shows = (version: Version): boolean =>
      this.order.see(this.released.property, set, version.card)?.state === 'shown';
    return (
      versions.find(
        (version) =>
          version.isWhole && isNoStricter(schedule, set, card, version.card) && shows(version),
      ) ?? null
    );
  }

  /** Cards that would be brought back and tell something under today's names. */
  #telling(fates: ReadonlyMap<Card, Fate>): readonly Card[] {
    const back = [...fates].filter(([, fate]) => fate.is === 'back').map(([card]) => card);
    if (back.length === 0) return [];
    const sets = this.released.sets.map((set) => this.#setOf(set, fates));
    const report = check(
      { ...this.order.content, sets },
      { fonts: new Map(), dictionaries: NO_DICTIONARIES, only: ['leak', 'secret'] },
    );
    const told = new Set(report.findings.map(({ set, card }) => `${set ?? ''}/${card ?? ''}`));
    return back.filter((card) => told.has(keyOf(card)));
  }

  #selection(fates: ReadonlyMap<Card, Fate>): SiteSelection {
    const having = (is: Fate['is']): readonly Card[] =>
      [...fates].filter(([, fate]) => fate.is === is).map(([card]) => card);
    const held = having('held');
    return {
      released: {
        ...this.released,
        property: held.length > 0 ? this.#property : this.released.property,
        sets: this.released.sets.map((set) => this.#setOf(set, fates)),
      },
      refused: having('refused').flatMap((card) => this.#unapproved(card)),
      held: held.map(keyOf),
      broughtBack: having('back').map(keyOf),
      keptArt: new Map(
        [...fates].flatMap(([card, fate]) =>
          fate.is === 'back' && fate.version.art !== null
            ? [[`${card.set}/${fate.version.art}`, fate.version.art] as const]
            : [],
        ),
      ),
    };
  }

  #setOf(set: CardSet, fates: ReadonlyMap<Card, Fate>): CardSet {
    return {
      ...set,
      cards: set.cards.map((card) => {
        const fate = fates.get(card);
        if (fate?.is === 'back') return fate.version.card;
        return fate?.is === 'held' ? heldBack(card) : card;
      }),
    };
  }

  #unapproved(card: Card): readonly Unapproved[] {
    const set = this.released.sets.find(({ id }) => id === card.set);
    const seen = set && this.order.see(this.released.property, set, card);
    if (!set || !seen) return [];
    const ground = { ...this.#ground, approvals: this.order.approvals };
    const parts = standingsOf(this.#partsOf(seen), set, card, ground);
    return [{ set, card, parts: parts.filter(({ roles }) => roles.some(({ lack }) => lack)) }];
  }
}

function keyOf(card: Card): string {
  return `${card.set}/${identityOf(card)}`;
}
