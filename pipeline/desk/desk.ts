import { fixOf, splice } from '../edit/index.js';
import { Session } from '../editor/index.js';
import { applyEdit } from './apply-edit.js';
import { cardAnswer } from './card-answer.js';
import type { CardFile } from './card-files.js';
import { CardTexts, LINKED } from './card-texts.js';
import { standsInTheWay } from './desk-findings.js';
import { DeskGround } from './desk-ground.js';
import type { DeskOrder } from './desk-order.js';
import { Drafts } from './drafts.js';
import { FaceShelf } from './drawn.js';
import { InTurn } from './in-turn.js';
import { FIRST_REST, Pace, REST, TYPING_REST } from './pace.js';
import type {
  BaseRequest,
  CardAnswer,
  CardRequest,
  DraftAnswer,
  DraftRequest,
  Edit,
  FindingsAnswer,
  FixAnswer,
  FixRequest,
  SavedAnswer,
  SaveRequest,
} from './protocol.js';
import { Refusal, badRequest, fixGone, nothingTo, notReady, unsavedBefore } from './refusal.js';
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
  readonly #pace = new Pace();

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
        this.#tell();
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
    this.#session.rest(FIRST_REST);
    this.#session.now();
  }

  /** Somebody waits for answers, so the rules wait: the first time long enough to open a card. */
  rest(): void {
    this.#session.rest(this.ground.hasLooked ? REST : FIRST_REST);
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
    this.#told.asked(card);
    const disk = this.#texts.readOrRefuse(file);
    const versions = this.#texts.versionsOf(file, disk);
    const readOnly = this.#texts.read(file) ? null : LINKED;
    return cardAnswer(this.ground, file, { disk, versions, readOnly });
  }

  draft({ card, base, edit, sequence }: DraftRequest): DraftAnswer {
    const file = this.#texts.find(card);
    const was = this.#texts.baseOf(file, base);
    const { text, unwritten } = applyEdit(file.path, was.text, edit);
    const unsaved = this.#keep(
      file,
      was,
      { text, sequence },
      this.#pace.before(this.ground.hasLooked),
    );
    this.#session.rest(TYPING_REST);
    return {
      card,
      sequence,
      ...this.ground.quick(file, text),
      typed: 'fields' in edit ? typedCard(file.path, text) : null,
      unsaved,
      unwritten,
    };
  }

  /** What is found in the words as they were typed last; the first time once all rules have looked. */
  async findings({ card }: CardRequest): Promise<FindingsAnswer> {
    if (!this.ground.hasLooked) await this.#session.settled();
    const file = this.#texts.find(card);
    const { text, sequence } = this.#texts.textOf(file);
    const findings = this.ground.findings(file, text);
    return { card, sequence, settled: this.#session.isSettled, findings };
  }

  discard({ card }: CardRequest): CardAnswer {
    this.#session.hide(this.#texts.find(card).path);
    this.#drafts.drop(card);
    return this.card({ card });
  }

  fix({ card, base, edit, finding, sequence }: FixRequest): Promise<FixAnswer> {
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
        throw fixGone();
      }
      const fixed = splice(source, [fix.change]).text;
      const unsaved = this.#keep(file, was, { text: fixed, sequence });
      return {
        card,
        sequence,
        look: this.ground.look(file, fixed),
        typed: typedCard(file.path, fixed),
        change: this.ground.change(file),
        unsaved,
        unwritten: [],
      };
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
        this.#keep(file, was, { text: typed, sequence: 0 });
        throw notReady(findings);
      }
      return this.#put(file, was, yours);
    });
  }

  /** Undoes the last save, or makes again what was undone. */
  step(request: BaseRequest, way: 'back' | 'forth'): Promise<SavedAnswer> {
    return this.#turns.of(request.card, () => this.#step(request, way));
  }

  async #step({ card, base }: BaseRequest, way: 'back' | 'forth'): Promise<SavedAnswer> {
    const file = this.#texts.find(card);
    const disk = this.#texts.readOrRefuse(file);
    const versions = this.#texts.versionsOf(file, disk);
    const to = way === 'back' ? versions.before : versions.after;
    if (!to) throw nothingTo(way);
    if (disk.digest !== base || disk.digest !== versions.now.digest) {
      throw this.#texts.conflict(file, versions.now, to, disk);
    }
    if (this.#drafts.of(card)) throw unsavedBefore(way);
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

  /**
   * Keeps what was typed, to be looked at after so many milliseconds.
   * @returns whether it differs from `base`.
   */
  #keep(
    file: CardFile,
    base: FileText,
    { text, sequence }: { readonly text: string; readonly sequence: number },
    after = 0,
  ): boolean {
    const unsaved = text !== base.text;
    if (unsaved) {
      this.#drafts.keep(file.key, { base, text, sequence });
      this.#session.show(file.path, text, after);
    } else {
      this.#drafts.drop(file.key);
      this.#session.hide(file.path, after);
    }
    return unsaved;
  }

  #tell(): void {
    this.#pace.read();
    const settled = this.#session.isSettled;
    if (settled) this.ground.hasLooked = true;
    if (!this.ground.hasLooked) return;
    if (settled) this.#told.settled(this.ground, this.#texts);
    else this.#told.atOnce(this.ground, this.#texts);
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
