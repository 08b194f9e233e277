import { bioFits } from '../checks/index.js';
import { groundOf, type Clock, type Known, type Session } from '../editor/index.js';
import type { Card, CardSet } from '../model/index.js';
import { readReview, type Folder, type Review } from '../read/index.js';
import type { FontShelf } from '../typeset/index.js';
import { approvedBefore, changeSince, openedBefore, type Before } from './before-after.js';
import { cardFilesIn, type CardFile } from './card-files.js';
import { findingsOfCard } from './desk-findings.js';
import { cardSides, type FaceShelf } from './drawn.js';
import type { Drafts } from './drafts.js';
import { cardForm } from './form.js';
import { nameNotes } from './name-notes.js';
import type {
  BeforeAfter,
  CardKey,
  CardLook,
  DeskFinding,
  FieldModel,
  StatusRow,
} from './protocol.js';
import { StatusRows } from './status-rows.js';

/** A card as it was read, in its set. */
export interface FoundCard {
  readonly set: CardSet;
  readonly card: Card;
}

/** What the desk knows of the content as it is being written: everything that is asked and not done. */
export class DeskGround {
  #files: ReadonlyMap<CardKey, CardFile> | null = null;
  #review: Review | null = null;
  #rows: { readonly of: Known; readonly unsaved: string; readonly rows: StatusRows } | null = null;
  readonly #opened = new Map<CardKey, Before>();
  readonly #approved = new Map<CardKey, Before | null>();

  constructor(
    readonly folder: Folder,
    readonly session: Session,
    readonly drafts: Drafts,
    readonly faces: FaceShelf,
    readonly now: () => number,
  ) {}

  /** Something on the disk is other than it was. */
  forget(): void {
    this.#files = null;
    this.#review = null;
    this.#approved.clear();
  }

  get files(): ReadonlyMap<CardKey, CardFile> {
    this.#files ??= cardFilesIn(this.folder);
    return this.#files;
  }

  get review(): Review {
    this.#review ??= readReview(this.folder);
    return this.#review;
  }

  /** @throws Error if the disk fails. */
  known(): Known {
    const known = this.session.now();
    if (!known) throw new Error('the content cannot be read');
    return known;
  }

  fonts(): FontShelf {
    return this.known().standing.options.fonts;
  }

  clock(): Clock {
    const zone = this.known().standing.content.property?.value.zone ?? 'UTC';
    return { now: this.now(), zone };
  }

  find(file: CardFile): FoundCard | null {
    const set = this.known().standing.content.sets.find(({ id }) => id === file.set);
    const card = set?.cards.find(({ source }) => source.file === file.path);
    return set && card ? { set, card } : null;
  }

  /** What is to be said at once of a card whose file has this text. */
  look(file: CardFile, text: string): CardLook {
    const known = this.known();
    const { content, options, unreadable } = known.standing;
    const found = unreadable.has(file.path) ? null : this.find(file);
    return {
      sides: found && cardSides(content, found.set, found.card, options.fonts, this.faces),
      findings: this.findings(file, text),
      settled: this.session.isSettled,
      names: found ? nameNotes(content, found.card, this.clock()) : [],
    };
  }

  findings(file: CardFile, text: string): readonly DeskFinding[] {
    return findingsOfCard(this.known().findings, file, text);
  }

  form({ path }: CardFile, text: string): readonly FieldModel[] {
    const ground = groundOf(this.known().standing.content, this.now(), { path, text });
    return ground ? cardForm(ground) : [];
  }

  /** What differs from the last approved copy, else from how the desk found the card. */
  change(file: CardFile): BeforeAfter | null {
    const { content, options, unreadable } = this.known().standing;
    const found = unreadable.has(file.path) ? null : this.find(file);
    const { approvals } = options;
    if (!found || !approvals) return null;
    const { set, card } = found;
    const opened = this.#opened.get(file.key) ?? openedBefore(set, card, approvals);
    this.#opened.set(file.key, opened);
    const approved = this.#approved.has(file.key)
      ? (this.#approved.get(file.key) ?? null)
      : approvedBefore(content, set, card, approvals);
    this.#approved.set(file.key, approved);
    return changeSince(approved ?? opened, set, card, approvals);
  }

  rows(): StatusRows {
    const known = this.known();
    const unsaved = [...this.drafts.all.keys()].join('\n');
    const before = this.#rows;
    if (before?.of === known && before.unsaved === unsaved) return before.rows;
    const { content, options } = known.standing;
    const rows = new StatusRows({
      known,
      review: this.review,
      clock: this.clock(),
      fits: bioFits(content, options.fonts),
      unsaved: new Set(this.drafts.all.keys()),
    });
    this.#rows = { of: known, unsaved, rows };
    return rows;
  }

  rowOf(file: CardFile): StatusRow {
    const found = this.find(file);
    const rows = this.rows();
    return found ? rows.row(found.set, found.card) : rows.unreadable(file);
  }

  /** Its neighbours in the order of the status sheet. */
  neighbours({ key }: CardFile): { previous: CardKey | null; next: CardKey | null } {
    const keys = this.rows()
      .order()
      .map(({ card }) => `${card.set}/${card.subset}/${card.id}`);
    const at = keys.indexOf(key);
    if (at < 0) return { previous: null, next: null };
    return { previous: keys[at - 1] ?? null, next: keys[at + 1] ?? null };
  }
}
