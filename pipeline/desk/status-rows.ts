import type { Finding } from '../../schema/index.js';
import { sayOpening, type Clock, type Known } from '../editor/index.js';
import {
  cardHold,
  compareNumbers,
  identityOf,
  numberOf,
  scheduleOf,
  subsetOf,
  type Card,
  type CardSet,
  type Content,
} from '../model/index.js';
import type { Review } from '../read/index.js';
import { CARD_PARTS, sayLack, standingsOf } from '../review/index.js';
import { select } from '../select/index.js';
import { StateOfCards, type Reviewed } from '../status/index.js';
import type { Fit } from '../typeset/index.js';
import type { CardFile } from './card-files.js';
import { zoneFit } from './fit-words.js';
import type { CardKey, StatusRow } from './protocol.js';

/** What rows are made of. */
export interface RowGround {
  readonly known: Known;
  readonly review: Review;
  readonly clock: Clock;
  readonly fits: ReadonlyMap<Card, Fit>;
  readonly unsaved: ReadonlySet<CardKey>;
}

/** Most words that say what stands in the way of one card. */
const MOST_BLOCKS = 6;

/** Makes the rows of a status sheet, one card at a time. */
export class StatusRows {
  readonly #ground: RowGround;
  readonly #content: Content;
  readonly #states: StateOfCards | null;
  readonly #reviewed: Reviewed | null;
  readonly #byFile = new Map<string, Finding[]>();

  constructor(ground: RowGround) {
    this.#ground = ground;
    const { content, options } = ground.known.standing;
    this.#content = content;
    const released = select({ ...content, faults: [] });
    const { approvals } = options;
    const isJudged = released?.property.approvals !== 'none' && ground.review.faults.length === 0;
    this.#reviewed = isJudged && approvals ? { content, approvals, ...ground.review } : null;
    this.#states =
      released && new StateOfCards(released, ground.fits, this.#reviewed, ground.clock.now);
    for (const finding of ground.known.findings) {
      const own = this.#byFile.get(finding.file);
      if (own) own.push(finding);
      else this.#byFile.set(finding.file, [finding]);
    }
  }

  get reviewed(): Reviewed | null {
    return this.#reviewed;
  }

  /** All cards, in the order of sets, subsets and numbers; what cannot be read stands at its end. */
  all(files: ReadonlyMap<CardKey, CardFile>): readonly StatusRow[] {
    const read = this.order().map(({ set, card }) => this.row(set, card));
    const known = new Set(read.map(({ card }) => card));
    const lost = [...files.values()].filter(({ key }) => !known.has(key));
    return [...read, ...lost.map((file) => this.unreadable(file))];
  }

  order(): readonly { readonly set: CardSet; readonly card: Card }[] {
    return this.#content.sets.flatMap((set) => {
      const places = new Map(set.plan.value.subsets.map(({ id }, at) => [id, at]));
      const placeOf = (card: Card): number => places.get(card.subset) ?? Infinity;
      return set.cards
        .toSorted(
          (a, b) => placeOf(a) - placeOf(b) || compareNumbers(a.front.number, b.front.number),
        )
        .map((card) => ({ set, card }));
    });
  }

  row(set: CardSet, card: Card): StatusRow {
    const { unreadable } = this.#ground.known.standing;
    const path = card.source.file;
    const status = this.#states?.status(set, card) ?? null;
    const people = this.#content.people?.value.people ?? [];
    const nameOf = (id: string): string => people.find((one) => one.id === id)?.name ?? id;
    const { writer, spoiler, name } = card.front;
    const property = this.#content.property?.value;
    const schedule = property && scheduleOf(property);
    const fit = this.#ground.fits.get(card);
    const key = `${set.id}/${identityOf(card)}`;
    return {
      card: key,
      set: set.id,
      subset: card.subset,
      subsetTitle: subsetOf(set.plan.value, card.subset)?.title ?? card.subset,
      number: numberOf(card),
      name,
      state: unreadable.has(path) ? 'unreadable' : (status?.state ?? null),
      writer: writer ?? null,
      writerName: writer === undefined ? null : nameOf(writer),
      waitsFor: (status?.waitsFor ?? []).map(nameOf),
      level: spoiler,
      levelLabel: property?.levels.find(({ id }) => id === spoiler)?.label ?? spoiler,
      opens: schedule
        ? sayOpening(schedule, cardHold(schedule, set.plan.value, card), this.#ground.clock)
        : '',
      fit: fit ? zoneFit('bio', 'back', fit) : null,
      ...this.#counts(path),
      blocks: this.#blocks(set, card, nameOf),
      remarks: status?.remarks ?? [],
      unsaved: this.#ground.unsaved.has(key),
    };
  }

  /** A card of which nothing could be read since the desk was opened. */
  unreadable({ key, set, subset, id, path }: CardFile): StatusRow {
    return {
      card: key,
      set,
      subset,
      subsetTitle: subset,
      number: null,
      name: id,
      state: 'unreadable',
      writer: null,
      writerName: null,
      waitsFor: [],
      level: '',
      levelLabel: '',
      opens: '',
      fit: null,
      ...this.#counts(path),
      blocks: this.#errorsOf(path),
      remarks: [],
      unsaved: this.#ground.unsaved.has(key),
    };
  }

  #standing(path: string): readonly Finding[] {
    return (this.#byFile.get(path) ?? []).filter(({ accepted }) => accepted === undefined);
  }

  #counts(path: string): Pick<StatusRow, 'errors' | 'warnings'> {
    const all = this.#standing(path);
    const errors = all.filter(({ severity }) => severity === 'error').length;
    return { errors, warnings: all.length - errors };
  }

  #errorsOf(path: string): readonly string[] {
    const errors = this.#standing(path).filter(({ severity }) => severity === 'error');
    return [...new Set(errors.map(({ message }) => message))].slice(0, MOST_BLOCKS);
  }

  /** Errors, and who has not approved which of its parts. */
  #blocks(set: CardSet, card: Card, nameOf: (id: string) => string): readonly string[] {
    const reviewed = this.#reviewed;
    const property = this.#content.property?.value;
    const errors = this.#errorsOf(card.source.file);
    if (!reviewed || !property || card.front.issued === 'no') return errors;
    const { approvals } = reviewed;
    const people = this.#content.people?.value.people ?? [];
    const ground = { property, people, decisions: approvals.decisions, approvals };
    const lacks = new Map<string, string[]>();
    for (const { part, roles } of standingsOf(CARD_PARTS, set, card, ground)) {
      for (const { role, lack } of roles) {
        if (lack === null) continue;
        const says = sayLack(lack, role, nameOf);
        lacks.set(says, [...(lacks.get(says) ?? []), part]);
      }
    }
    const said = [...lacks].map(([says, parts]) => `${parts.join(', ')}: ${says}`);
    return [...new Set([...errors, ...said])].slice(0, MOST_BLOCKS);
  }
}
