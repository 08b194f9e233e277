import type {
  CardAnswer,
  Conflict,
  DeskEvent,
  DeskFinding,
  DraftAnswer,
  Edit,
  FindingsAnswer,
  FixAnswer,
  SavedAnswer,
  TypedCard,
} from '../../protocol.js';
import { sentenceOf, type Desk } from '../line/desk.js';
import { say } from '../shell/announce.js';
import { begunWith, changeOf, editOf, isSameCard, lookAfter, toSay } from './work-state.js';
import type { Changed, Typing, WorkState } from './work-state.js';

/** Ms after which what is found in a draft is asked for. */
const LONGEST_UNHEARD = 2_000;

/** A card that somebody writes: what is typed, and what the desk says of it. */
export class CardWork {
  #state: WorkState;
  #base: CardAnswer['digest'];
  #from: TypedCard;
  #sequence: number;
  /** What was typed began with a text that this page does not know, until a conflict shows it. */
  #isStale: boolean;
  #hasNews = false;
  /** What the file became, as told while something else was under way. */
  #toldMeanwhile: Changed | null = null;
  /** The last draft of which it was heard what is found in it. */
  #heardOf = -1;
  #sending: Promise<void> | null = null;
  readonly #desk: Desk;
  readonly #shown: (state: WorkState) => void;

  constructor(desk: Desk, answer: CardAnswer, shown: (state: WorkState) => void) {
    this.#desk = desk;
    this.#shown = shown;
    const { draft, digest } = answer;
    this.#base = draft?.base ?? digest;
    this.#from = answer.saved;
    this.#sequence = draft?.sequence ?? 0;
    this.#isStale = this.#base !== digest;
    this.#state = begunWith(answer, this.#isStale);
  }

  get state(): WorkState {
    return this.#state;
  }

  /** Whether words are typed that are not in the file. */
  get isUnsaved(): boolean {
    return this.#base !== this.#state.answer.digest || !isSameCard(this.#from, toSay(this.#state));
  }

  /** Takes what the writer typed and asks for it to be set. */
  type(part: Typing): void {
    this.#put({ typed: { ...this.#state.typed, ...part }, refused: [] });
    this.#ask();
  }

  async save(): Promise<void> {
    await this.#write('Saved.', 'Nothing to save.', () => this.#desk.save(this.#edited()));
  }

  async undo(): Promise<void> {
    await this.#write('The last save is undone.', 'Nothing to undo.', () =>
      this.#desk.undo(this.#of()),
    );
  }

  async redo(): Promise<void> {
    await this.#write('Saved again.', 'Nothing to redo.', () => this.#desk.redo(this.#of()));
  }

  async handIn(): Promise<void> {
    await this.#write('Handed in.', 'It was handed in already.', async () => {
      const answer = await this.#desk.handIn(this.#edited());
      if (!('findings' in answer)) return answer;
      this.#put({ refused: answer.findings, trouble: answer.message });
      return null;
    });
  }

  /** Makes one fix in what is typed; saving it is another press. */
  async fix(finding: DeskFinding): Promise<void> {
    await this.#acting(async () => {
      this.#sequence += 1;
      const sent = this.#state.typed;
      const request = { ...this.#edited(), finding: finding.id, sequence: this.#sequence };
      const answer = await this.#desk.fix(request);
      if (this.#state.typed !== sent) {
        say('You typed meanwhile: press it again.');
        return;
      }
      this.#take(answer);
      if (answer.typed) this.#put({ typed: answer.typed, put: this.#state.put + 1 });
      say('Mended. Save to keep it.');
    });
  }

  /** Puts these words into the file, whoever wrote what is in it now. */
  async settle(words: Edit): Promise<void> {
    const { conflict } = this.#state;
    if (!conflict) return;
    await this.#write('Saved. Undo brings back the other text.', 'Both are the same now.', () =>
      this.#desk.save({ card: conflict.card, base: conflict.digest, edit: words }),
    );
  }

  /** Lets go of what was typed; it can be brought back for as long as the card is open. */
  async takeOther(): Promise<void> {
    const letGo = this.#state.typed;
    await this.#acting(async () => {
      this.#restart(await this.#desk.discard({ card: this.#state.answer.card }));
      this.#put({ letGo });
      say('This is what the file says.');
    });
  }

  bringBack(): void {
    const { letGo, put } = this.#state;
    if (!letGo) return;
    this.#put({ typed: letGo, letGo: null, put: put + 1 });
    this.#ask();
    say('Your words are here again, not saved.');
  }

  /** Goes on writing: what was typed is judged against what both began with, if that is known. */
  closeConflict(): void {
    const { conflict } = this.#state;
    if (conflict && conflict.base === null) {
      this.#from = conflict.disk;
      this.#base = conflict.digest;
    }
    this.#put({ conflict: null });
  }

  /** Says again what was typed, after the desk could not be reached. */
  again(): void {
    if (this.isUnsaved) this.#ask();
    else void this.reload();
  }

  /** Takes in what happened at the desk. */
  hear(event: DeskEvent): void {
    const { answer } = this.#state;
    if (event.type === 'findings' && event.card === answer.card) this.#hearFindings(event);
    const isEarly = !answer.look.settled && !this.isUnsaved;
    if (event.type === 'settled' && isEarly) void this.#lookAgain();
    const changed = changeOf(answer.card, event);
    if (!changed) return;
    if (this.#state.isBusy) this.#toldMeanwhile = changed;
    else this.#hearChange(changed);
  }

  /** The file is other than it was: words that are not saved stay, and are told of it. */
  #hearChange({ digest }: Changed): void {
    if (digest === this.#base) return;
    if (this.isUnsaved) this.#put({ isOtherOnDisk: true });
    else void this.reload();
  }

  #hearFindings({ sequence, findings, settled }: Omit<FindingsAnswer, 'card'>): void {
    if ((sequence ?? this.#sequence) < this.#sequence || this.#hasNews) return;
    this.#heardOf = this.#sequence;
    this.#put({ look: { ...this.#state.look, findings, settled } });
  }

  /** The card was told before all rules had looked: now they have. Nobody is kept waiting by it. */
  async #lookAgain(): Promise<void> {
    const sent = this.#state.typed;
    const now = await this.#desk.card(this.#state.answer.card).catch(() => null);
    const { typed, isBusy, answer } = this.#state;
    if (now === null || typed !== sent || isBusy || now.digest !== this.#base) return;
    this.#put({ answer: { ...answer, row: now.row, look: now.look }, look: now.look });
  }

  /** What is found comes as an event; where none comes, for want of a stream, it is asked for. */
  async #askForFindings(sequence: number): Promise<void> {
    await new Promise((resolve) => setTimeout(resolve, LONGEST_UNHEARD));
    if (sequence !== this.#sequence || this.#heardOf >= sequence) return;
    const found = await this.#desk.findings(this.#state.answer.card).catch(() => null);
    if (found) this.#hearFindings(found);
  }

  /** Asks for the card as it is now. */
  async reload(): Promise<void> {
    await this.#acting(async () => {
      const sent = this.#state.typed;
      const answer = await this.#desk.card(this.#state.answer.card);
      if (this.#state.typed === sent) this.#restart(answer);
      else this.#put({ isOtherOnDisk: answer.digest !== this.#base });
    });
  }

  async #write(
    done: string,
    nothing: string,
    act: () => Promise<SavedAnswer | Conflict | null>,
  ): Promise<void> {
    await this.#acting(async () => {
      await this.#sending;
      const sent = this.#state.typed;
      const answer = await act();
      if (answer === null) say(this.#state.trouble ?? '');
      else if ('saved' in answer) {
        this.#restart(answer.card, sent);
        say(answer.written ? done : nothing);
      } else {
        if (answer.base) this.#from = answer.base;
        this.#isStale = false;
        this.#put({ conflict: answer, isOtherOnDisk: true });
        say('Somebody else changed this card: both texts are shown, and nothing was written.');
      }
    });
  }

  async #acting(act: () => Promise<void>): Promise<void> {
    if (this.#state.isBusy) return;
    this.#put({ isBusy: true, trouble: null });
    try {
      await act();
    } catch (thrown) {
      const trouble = sentenceOf(thrown);
      this.#put({ trouble });
      say(trouble);
    }
    this.#put({ isBusy: false });
    if (this.#hasNews) this.#ask();
    const told = this.#toldMeanwhile;
    this.#toldMeanwhile = null;
    if (told !== null) this.#hearChange(told);
  }

  /** Begins again with the file as it is on the disk, and with what was typed since `sent`. */
  #restart(answer: CardAnswer, sent = this.#state.typed): void {
    const { typed, put, isBusy } = this.#state;
    const begun = new CardWork(this.#desk, answer, this.#shown);
    this.#base = begun.#base;
    this.#from = begun.#from;
    this.#sequence = Math.max(this.#sequence, begun.#sequence);
    this.#isStale = begun.#isStale;
    const isNewer = typed !== sent;
    const isOther = !isNewer && !isSameCard(typed, begun.#state.typed);
    this.#hasNews = isNewer;
    const now = isNewer ? typed : begun.#state.typed;
    this.#put({ ...begun.#state, typed: now, isBusy, put: isOther ? put + 1 : put });
  }

  /** One request is under way at a time; what was typed meanwhile goes with the next. */
  #ask(): void {
    this.#hasNews = true;
    if (this.#sending || this.#state.isBusy) return;
    this.#sending = this.#send().finally(() => {
      this.#sending = null;
    });
  }

  async #send(): Promise<void> {
    while (this.#hasNews && !this.#state.isBusy) {
      this.#hasNews = false;
      this.#sequence += 1;
      const request = { ...this.#edited(), sequence: this.#sequence };
      try {
        this.#take(await this.#desk.draft(request));
        if (this.#state.trouble !== null) this.#put({ trouble: null });
      } catch (thrown) {
        this.#put({ trouble: sentenceOf(thrown) });
        return;
      }
    }
    void this.#askForFindings(this.#sequence);
  }

  #take({ sequence, look: set, change, unwritten }: DraftAnswer | FixAnswer): void {
    if (sequence !== this.#sequence) return;
    const look = lookAfter(this.#state.look, set, this.#heardOf === sequence);
    this.#put({ look, change, unwritten });
  }

  #of(): { readonly card: string; readonly base: string } {
    return { card: this.#state.answer.card, base: this.#base };
  }

  #edited(): { readonly card: string; readonly base: string; readonly edit: Edit } {
    const typed = toSay(this.#state);
    const edit = this.#isStale ? { text: typed.text } : editOf(this.#from, typed);
    return { ...this.#of(), edit };
  }

  #put(change: Partial<WorkState>): void {
    this.#state = { ...this.#state, ...change };
    this.#shown(this.#state);
  }
}
