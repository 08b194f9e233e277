import { bioFits } from '../checks/index.js';
import { groundOf, type Clock, type Known, type Session } from '../editor/index.js';
import { subsetOf, type Card, type CardSet, type Content, type Fault } from '../model/index.js';
import { readReview, rereadCard, type Folder, type Review } from '../read/index.js';
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
  SetLook,
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
  #rows: {
    readonly of: Known;
    readonly unsaved: string;
    readonly hasLooked: boolean;
    readonly rows: StatusRows;
  } | null = null;
  readonly #opened = new Map<CardKey, Before>();
  readonly #approved = new Map<CardKey, Before | null>();

  constructor(
    readonly folder: Folder,
    readonly session: Session,
    readonly drafts: Drafts,
    readonly faces: FaceShelf,
    readonly now: () => number,
  ) {}

  /** Whether all rules have looked at everything once: until then nothing is said of what they find. */
  hasLooked = false;

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
    const { standing } = this.session.last ?? this.known();
    const zone = standing.content.property?.value.zone ?? 'UTC';
    return { now: this.now(), zone };
  }

  find(file: CardFile): FoundCard | null {
    return cardIn(this.known().standing.content, file);
  }

  /**
   * A card with this text in its file, set and told at once: no other file is read, no rule looks.
   * What else the content holds is as it was last read.
   */
  quick(
    file: CardFile,
    text: string,
  ): { readonly look: SetLook; readonly change: BeforeAfter | null } {
    const { standing } = this.session.last ?? this.known();
    const { content, options } = standing;
    const found = foundAgain(content, file, text);
    if (!found) return { look: { sides: null, names: [] }, change: null };
    const { set, card } = found;
    this.#noteOpened(file, cardIn(content, file) ?? found, standing);
    return {
      look: {
        sides: cardSides(content, set, card, options.fonts, this.faces),
        names: nameNotes(content, card, this.clock()),
      },
      change: this.#changeOf(file, found, standing),
    };
  }

  /** What is to be said of a card whose file has this text. */
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
    const { standing } = this.known();
    const found = standing.unreadable.has(file.path) ? null : this.find(file);
    return found && this.#changeOf(file, found, standing);
  }

  #changeOf(
    file: CardFile,
    { set, card }: FoundCard,
    standing: Known['standing'],
  ): BeforeAfter | null {
    const { content } = standing;
    const { approvals } = standing.options;
    if (!approvals) return null;
    const opened = this.#noteOpened(file, { set, card }, standing);
    const approved = this.#approved.has(file.key)
      ? (this.#approved.get(file.key) ?? null)
      : approvedBefore(content, set, card, approvals);
    this.#approved.set(file.key, approved);
    const before = approved ?? opened;
    return before && changeSince(before, set, card, approvals);
  }

  /** How the desk found the card; what was first noted stands. */
  #noteOpened(
    file: CardFile,
    { set, card }: FoundCard,
    { options: { approvals } }: Known['standing'],
  ): Before | null {
    const known = this.#opened.get(file.key);
    if (known || !approvals) return known ?? null;
    const opened = openedBefore(set, card, approvals);
    this.#opened.set(file.key, opened);
    return opened;
  }

  rows(): StatusRows {
    const known = this.known();
    const unsaved = [...this.drafts.all.keys()].join('\n');
    const before = this.#rows;
    const isSame = before?.of === known && before.unsaved === unsaved;
    if (isSame && before.hasLooked === this.hasLooked) return before.rows;
    const { content, options } = known.standing;
    const rows = new StatusRows({
      known,
      review: this.review,
      clock: this.clock(),
      fits: this.hasLooked ? bioFits(content, options.fonts) : new Map(),
      unsaved: new Set(this.drafts.all.keys()),
    });
    this.#rows = { of: known, unsaved, hasLooked: this.hasLooked, rows };
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

function cardIn(content: Content, file: CardFile): FoundCard | null {
  const set = content.sets.find(({ id }) => id === file.set);
  const card = set?.cards.find(({ source }) => source.file === file.path);
  return set && card ? { set, card } : null;
}

/** A card as it reads with another text; null where it cannot be read or has no place in the plan. */
function foundAgain(content: Content, file: CardFile, text: string): FoundCard | null {
  const set = content.sets.find(({ id }) => id === file.set);
  if (!set || !subsetOf(set.plan.value, file.subset)) return null;
  const card = rereadCard(file, { file: file.path, text });
  return isFaults(card) ? null : { set, card };
}

function isFaults(read: Card | readonly Fault[]): read is readonly Fault[] {
  return Array.isArray(read);
}
