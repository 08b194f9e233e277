import { fixOf, splice } from '../edit/index.js';
import { Session } from '../editor/index.js';
import { applyEdit } from './apply-edit.js';
import type { CardFile } from './card-files.js';
import { CardTexts, LINKED } from './card-texts.js';
import { standsInTheWay } from './desk-findings.js';
import { DeskGround } from './desk-ground.js';
import type { DeskOrder } from './desk-order.js';
import { Drafts } from './drafts.js';
import { FaceShelf } from './drawn.js';
import { historyNotes } from './history-notes.js';
import { InTurn } from './in-turn.js';
import type {
  BaseRequest,
  CardAnswer,
  CardRequest,
  DraftAnswer,
  DraftRequest,
  Edit,
  FixRequest,
  SavedAnswer,
  SaveRequest,
} from './protocol.js';
import { Refusal, badRequest } from './refusal.js';
import { writeCard } from './saving.js';
import { typedCard, withText, type FileText } from './texts.js';
import { Told } from './told.js';

/** A content folder that is being written in: what the routes of the desk do. */
export class Desk {
  readonly ground: DeskGround;
  readonly #order: DeskOrder;
  readonly #session: Session;
  readonly #drafts: Drafts;
  readonly #told: Told;
  readonly #texts: CardTexts;
  readonly #turns = new InTurn();
  #first: Promise<unknown> | null = null;

  constructor(order: DeskOrder) {
    const { folder, draftsFolder, session, now, disk, tell } = order;
    this.#order = order;
    const fail = (): void => {
      tell({ type: 'trouble', message: 'what is typed cannot be put on the disk: save it soon' });
    };
    const where = { folder: draftsFolder, session, now, fail, ...(disk ? { disk } : {}) };
    this.#drafts = new Drafts(where);
    this.#session = new Session(folder, {
      tell: () => {
        if (this.#session.isSettled)
          this.#told.settled(this.ground, (file) => this.#texts.textOf(file));
      },
      fail: () => {
        tell({ type: 'trouble', message: 'the content folder cannot be read' });
      },
    });
    this.ground = new DeskGround(folder, this.#session, this.#drafts, new FaceShelf(), now);
    this.#texts = new CardTexts(order, this.#drafts, () => this.ground.files);
    this.#told = new Told(tell);
    for (const [key, { text }] of this.#drafts.all) {
      const file = this.ground.files.get(key);
      if (file) this.#session.show(file.path, text);
    }
    this.#session.start();
  }

  /** Once everything was looked at for the first time. */
  ready(): Promise<unknown> {
    this.#first ??= this.#session.settled();
    return this.#first;
  }

  /** Whether all rules have looked at everything as it is. */
  get isSettled(): boolean {
    return this.#session.isSettled;
  }

  /** Puts everything that was typed on the disk. */
  end(): void {
    this.#drafts.sync();
    this.#session.end();
  }

  /** Files on the disk have changed, by whoever it was. */
  changedOnDisk(paths: readonly string[]): void {
    this.ground.forget();
    this.#session.changedOnDisk(paths);
    const cards = paths.flatMap((path) => {
      const file = [...this.ground.files.values()].find((each) => each.path === path);
      return file ? [{ card: file.key, digest: this.#texts.read(file)?.digest ?? null }] : [];
    });
    this.#told.changed(cards, cards.length < paths.length);
  }

  card({ card }: CardRequest): CardAnswer {
    const file = this.#texts.find(card);
    const disk = this.#texts.readOrRefuse(file);
    const draft = this.#drafts.of(card);
    const text = draft?.text ?? disk.text;
    const versions = this.#texts.versionsOf(file, disk);
    const isCurrent = versions.now.digest === disk.digest;
    return {
      card,
      file: file.path,
      digest: disk.digest,
      saved: typedCard(file.path, disk.text),
      draft: draft && {
        base: draft.base.digest,
        typed: typedCard(file.path, draft.text),
        sequence: draft.sequence,
      },
      form: this.ground.form(file, text),
      look: this.ground.look(file, text),
      row: this.ground.rowOf(file),
      history: historyNotes(this.ground.known().standing.content, this.ground.review, card),
      change: this.ground.change(file),
      canUndo: isCurrent && versions.before !== null,
      canRedo: isCurrent && versions.after !== null,
      readOnly: this.#texts.read(file) ? null : LINKED,
      ...this.ground.neighbours(file),
    };
  }

  draft({ card, base, edit, sequence }: DraftRequest): DraftAnswer {
    const file = this.#texts.find(card);
    const was = this.#texts.baseOf(file, base);
    const { text, unwritten } = applyEdit(file.path, was.text, edit);
    return this.#typed(file, was, { text, sequence, unwritten, tells: 'fields' in edit });
  }

  discard({ card }: CardRequest): CardAnswer {
    this.#session.hide(this.#texts.find(card).path);
    this.#drafts.drop(card);
    return this.card({ card });
  }

  fix({ card, base, edit, finding, sequence }: FixRequest): Promise<DraftAnswer> {
    return this.#turns.of(card, async () => {
      const file = this.#texts.find(card);
      const was = this.#texts.baseOf(file, base);
      const { text } = this.#edited(file, was, edit);
      this.#session.show(file.path, text);
      const known = (): readonly { readonly id: string }[] => this.ground.findings(file, text);
      if (!known().some(({ id }) => id === finding)) await this.#session.settled();
      const found = this.ground.findings(file, text).find(({ id }) => id === finding);
      const source = { file: file.path, text };
      const fix = found?.fixable === true ? fixOf(source, found.finding) : null;
      if (!fix) {
        this.#showAgain(file);
        throw new Refusal(409, {
          error: 'unknown',
          message: 'this finding is not there any more, or has no fix: look at the card again',
        });
      }
      const fixed = splice(source, [fix.change]).text;
      return this.#typed(file, was, { text: fixed, sequence, unwritten: [], tells: true });
    });
  }

  save(request: SaveRequest): Promise<SavedAnswer> {
    return this.#turns.of(request.card, async () => {
      const file = this.#texts.find(request.card);
      const was = this.#texts.baseOf(file, request.base);
      const yours = withText(was, this.#edited(file, was, request.edit).text);
      return this.#put(file, was, yours);
    });
  }

  handIn(request: SaveRequest): Promise<SavedAnswer> {
    return this.#turns.of(request.card, async () => {
      const file = this.#texts.find(request.card);
      const was = this.#texts.baseOf(file, request.base);
      const typed = this.#edited(file, was, request.edit).text;
      this.#refuseMoved(file, was, withText(was, typed));
      const fields = [{ path: ['state'], value: 'ready' }];
      const yours = withText(was, this.#edited(file, { text: typed }, { fields }).text);
      this.#session.show(file.path, yours.text);
      await this.#session.settled();
      const findings = this.ground.findings(file, yours.text).filter(standsInTheWay);
      if (findings.length > 0) {
        this.#typed(file, was, { text: typed, sequence: 0, unwritten: [], tells: false });
        const count = `${String(findings.length)} ${findings.length === 1 ? 'finding' : 'findings'}`;
        const message = `${count} to mend before this card can be handed in`;
        throw new Refusal(422, { error: 'not ready', message, findings });
      }
      return this.#put(file, was, yours);
    });
  }

  undo(request: BaseRequest): Promise<SavedAnswer> {
    return this.#turns.of(request.card, () => this.#step(request, 'back'));
  }

  redo(request: BaseRequest): Promise<SavedAnswer> {
    return this.#turns.of(request.card, () => this.#step(request, 'forth'));
  }

  async #step({ card, base }: BaseRequest, way: 'back' | 'forth'): Promise<SavedAnswer> {
    const file = this.#texts.find(card);
    const disk = this.#texts.readOrRefuse(file);
    const versions = this.#texts.versionsOf(file, disk);
    const to = way === 'back' ? versions.before : versions.after;
    const un = way === 'back' ? 'undo' : 'redo';
    if (!to) {
      throw new Refusal(409, { error: `nothing to ${un}`, message: `there is nothing to ${un}` });
    }
    if (disk.digest !== base || disk.digest !== versions.now.digest) {
      throw this.#texts.conflict(file, versions.now, to, disk);
    }
    if (this.#drafts.of(card)) {
      const message = `save what you typed, or let it go, before you ${un}`;
      throw new Refusal(409, { error: 'unsaved', message });
    }
    await this.#write(file, disk, to);
    if (way === 'back') versions.back();
    else versions.forth();
    return this.#saved(file, true);
  }

  /** Writes a card that was edited against `was`, unless the disk has something else by now. */
  async #put(file: CardFile, was: FileText, yours: FileText): Promise<SavedAnswer> {
    const disk = this.#refuseMoved(file, was, yours);
    const versions = this.#texts.versionsOf(file, disk);
    const isNew = disk.digest !== yours.digest;
    if (isNew) await this.#write(file, disk, yours);
    versions.put(disk);
    versions.put(yours);
    this.#drafts.drop(file.key);
    this.#session.hide(file.path);
    return this.#saved(file, isNew);
  }

  #saved(file: CardFile, written: boolean): SavedAnswer {
    if (written) this.changedOnDisk([file.path]);
    return { saved: true, written, card: this.card({ card: file.key }) };
  }

  async #write(file: CardFile, before: FileText, after: FileText): Promise<void> {
    this.#texts.note(after);
    const outcome = await writeCard(this.#order, file, before, after);
    if (outcome === 'moved')
      throw this.#texts.conflict(file, before, after, this.#texts.readOrRefuse(file));
    if (outcome === 'busy') {
      const message = 'somebody else is writing in the content just now: save again in a moment';
      throw new Refusal(503, { error: 'busy', message });
    }
  }

  /** What is on the disk, if that may be written over. */
  #refuseMoved(file: CardFile, was: FileText, yours: FileText): FileText {
    const disk = this.#texts.readOrRefuse(file);
    if (!this.#texts.read(file)) throw new Refusal(403, { error: 'not writable', message: LINKED });
    if (disk.digest === was.digest || disk.digest === yours.digest) return disk;
    throw this.#texts.conflict(file, was, yours, disk);
  }

  /** Keeps what was typed, and looks at it. */
  #typed(
    file: CardFile,
    base: FileText,
    typed: {
      readonly text: string;
      readonly sequence: number;
      readonly unwritten: DraftAnswer['unwritten'];
      readonly tells: boolean;
    },
  ): DraftAnswer {
    const { text, sequence, unwritten, tells } = typed;
    const unsaved = text !== base.text;
    if (unsaved) {
      this.#drafts.keep(file.key, { base, text, sequence });
      this.#session.show(file.path, text);
    } else {
      this.#drafts.drop(file.key);
      this.#session.hide(file.path);
    }
    return {
      card: file.key,
      sequence,
      look: this.ground.look(file, text),
      typed: tells ? typedCard(file.path, text) : null,
      change: this.ground.change(file),
      unsaved,
      unwritten,
    };
  }

  #showAgain(file: CardFile): void {
    const draft = this.#drafts.of(file.key);
    if (draft) this.#session.show(file.path, draft.text);
    else this.#session.hide(file.path);
  }

  #edited(file: CardFile, base: Pick<FileText, 'text'>, edit: Edit): { readonly text: string } {
    const { text, unwritten } = applyEdit(file.path, base.text, edit);
    const [first] = unwritten;
    if (first) throw badRequest(first.why);
    return { text };
  }
}
