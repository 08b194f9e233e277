import type { CardState, CardStatus, PacketRecord, SubsetStatus } from '../../schema/index.js';
import {
  cardsOf,
  identityOf,
  isIssued,
  subsetOf,
  type Card,
  type CardSet,
  type Content,
  type Instant,
} from '../model/index.js';
import { CARD_PARTS, standingsOf, type Approvals, type Ledger } from '../review/index.js';
import type { Released } from '../select/index.js';
import { tallyFits, type Fit } from '../typeset/index.js';
import { approvalState, remarksOn } from './approval-state.js';
import { pendingAt, type Pending } from './submitted.js';

export type States = SubsetStatus['states'];

/** What tells how far approval is. */
export interface Reviewed {
  readonly content: Content;
  readonly ledger: Ledger;
  readonly packets: ReadonlyMap<string, PacketRecord>;
  readonly approvals: Approvals;
}

/** The state of every card, looked up once. Without `reviewed` nobody must approve. */
export class StateOfCards {
  readonly pending: readonly Pending[];
  readonly #read: ReadonlyMap<string, string>;

  constructor(
    readonly released: Released,
    readonly fits: ReadonlyMap<Card, Fit>,
    readonly reviewed: Reviewed | null,
    now: Instant,
  ) {
    this.pending = reviewed ? pendingAt(reviewed.ledger, reviewed.packets, now) : [];
    this.#read = new Map(
      (reviewed?.ledger.entries ?? []).flatMap((entry) =>
        entry.kind === 'checked' ? [[entry.card, entry.cut] as const] : [],
      ),
    );
  }

  /** Cards of a subset by their state. */
  tally(set: CardSet, subset: string): States {
    return tallied(cardsOf(set, subset).map((card) => this.of(set, card)));
  }

  of(set: CardSet, card: Card): CardState {
    const written = writtenState(set, card);
    if (!this.reviewed || written === 'not issued' || written === 'no copy') return written;
    const key = keyOf(card);
    const people = this.released.people;
    const state = approvalState(this.#parts(set, card), (role, part, digest) =>
      this.pending.some(
        (one) =>
          one.card === key &&
          one.part === part &&
          one.digest === digest &&
          people.some((person) => person.id === one.person && person.role === role),
      ),
    );
    if (state !== 'open') return state;
    return written === 'handed in' && this.#isOverset(card) ? 'overset' : written;
  }

  /** A card with all that is known of where it is. */
  status(set: CardSet, card: Card): CardStatus {
    const { number, name, writer } = card.front;
    const key = keyOf(card);
    const holders = this.pending.filter((one) => one.card === key).map(({ person }) => person);
    return {
      card: key,
      number,
      name,
      state: this.of(set, card),
      writer: writer ?? null,
      checkedAgainst: this.cutOf(card),
      waitsFor: [...new Set(holders)],
      remarks: this.reviewed ? [...remarksOn(this.#parts(set, card))] : [],
    };
  }

  /** The later of the cuts that a card's file and the ledger say it was read against. */
  cutOf(card: Card): string | null {
    const order = this.released.property.cuts?.map(({ id }) => id) ?? [];
    const named = [card.front.checkedAgainst, this.#read.get(keyOf(card))];
    const known = named.filter((cut) => cut !== undefined);
    return known.sort((one, other) => order.indexOf(other) - order.indexOf(one))[0] ?? null;
  }

  #parts(set: CardSet, card: Card): ReturnType<typeof standingsOf> {
    if (!this.reviewed) return [];
    const { property, people } = this.released;
    const { approvals } = this.reviewed;
    const { decisions } = approvals;
    return standingsOf(CARD_PARTS, set, card, { property, people, decisions, approvals });
  }

  #isOverset(card: Card): boolean {
    const fit = this.fits.get(card);
    return fit !== undefined && tallyFits([fit]).overset > 0;
  }
}

function writtenState({ plan }: CardSet, card: Card): CardState {
  if (!isIssued(card)) return 'not issued';
  const bare = subsetOf(plan.value, card.subset)?.bio === 'none' || card.front.bio === 'none';
  if (!bare && card.bio.length === 0) return 'no copy';
  return card.front.state === 'ready' ? 'handed in' : 'draft';
}

export function tallied(states: readonly CardState[]): States {
  const count = (state: CardState): number => states.filter((each) => each === state).length;
  return {
    'no copy': count('no copy'),
    draft: count('draft'),
    'handed in': count('handed in'),
    overset: count('overset'),
    submitted: count('submitted'),
    'on hold': count('on hold'),
    approved: count('approved'),
    'changed since approval': count('changed since approval'),
    'revise and resubmit': count('revise and resubmit'),
    rejected: count('rejected'),
    'not issued': count('not issued'),
  };
}

function keyOf(card: Card): string {
  return `${card.set}/${identityOf(card)}`;
}
