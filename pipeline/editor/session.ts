import type { Finding } from '../../schema/index.js';
import type { Folder } from '../read/index.js';
import { Checker, type Known } from './checker.js';
import { EditedFolder } from './edited-folder.js';
import { Reader } from './reader.js';

/** Milliseconds without a change before everything is looked at: somebody who types has stopped. */
const QUIET = 60;

/** Milliseconds of looking at everything that nobody notices: then there is one answer, exact. */
const UNNOTICED = 30;

/** How often a folder is read before it is said that it cannot be: a file may just have gone. */
const MOST_TRIES = 3;

/** What a session tells, and by whom. */
export interface Telling {
  /** Everything that is known, whenever it may have changed. */
  readonly tell: (findings: readonly Finding[]) => void;
  /** The disk has failed. */
  readonly fail: (error: unknown) => void;
}

/**
 * A content folder that somebody is writing in. After each change it tells what is known at once,
 * and, once nothing has changed for a moment, all that `check` finds; of a small folder that at once. It
 * tells nothing before it has looked at everything once: that nothing is found would not be true.
 */
export class Session {
  readonly #folder: EditedFolder;
  readonly #reader: Reader;
  readonly #checker: Checker;
  readonly #telling: Telling;
  /** What is waited for, each with its end. */
  #reading: Stop | null = null;
  #quiet: NodeJS.Timeout | null = null;
  #stepping: Stop | null = null;
  #steps: Steps | null = null;
  /** Until then no rule looks at everything. */
  #restsUntil = 0;
  #waiting: (() => void)[] = [];
  /** Milliseconds that it took to look at everything; null before that was done. */
  #lookTook: number | null = null;
  #taking = 0;
  /** How often in a row reading has failed. */
  #failures = 0;

  constructor(disk: Folder, telling: Telling) {
    this.#folder = new EditedFolder(disk);
    this.#reader = new Reader(this.#folder);
    this.#checker = new Checker(this.#reader);
    this.#telling = telling;
  }

  /** Begins to read, and to tell. */
  start(): void {
    if (!this.#checker.known) this.#changed();
  }

  /** @param after milliseconds without a change in which it is not read, unless somebody asks. */
  show(path: string, text: string, after = 0): void {
    this.#folder.show(path, text);
    this.#reader.forget(path);
    this.#changed(after);
  }

  /** @param after as of `show`. */
  hide(path: string, after = 0): void {
    this.#folder.hide(path);
    this.#reader.forget(path);
    this.#changed(after);
  }

  /** For so many milliseconds from now no rule looks at everything: somebody else needs the time. */
  rest(milliseconds: number): void {
    this.#restsUntil = Math.max(this.#restsUntil, performance.now() + milliseconds);
  }

  /** What was known when files were last read: they may be other by now. Null before that. */
  get last(): Known | null {
    return this.#checker.known;
  }

  /** Files on the disk have changed; null for any of them. */
  changedOnDisk(paths: readonly string[] | null): void {
    for (const path of paths ?? []) {
      this.#folder.changed(path);
      this.#reader.forget(path);
    }
    if (paths === null) {
      this.#folder.changedAll();
      this.#reader.forgetAll();
    }
    this.#changed();
  }

  /** What is known of the files as they are at this moment; null if the disk fails. */
  now(): Known | null {
    if (this.#reading || !this.#checker.known) this.#read();
    return this.#checker.known;
  }

  /** Whether what is known is what `check` finds. */
  get isSettled(): boolean {
    return this.#checker.isSettled && !this.#isAtWork();
  }

  /** What `check` finds in the files as they are; null if the disk fails. */
  async settled(): Promise<Known | null> {
    while (this.#isAtWork()) {
      await new Promise<void>((resolve) => {
        this.#waiting.push(resolve);
        this.#restsUntil = 0;
        if (this.#quiet) this.#settleNow();
        else if (this.#stepping && this.#steps) this.#goOn(this.#steps);
      });
    }
    return this.#checker.known;
  }

  /** Nothing is told any more. */
  end(): void {
    this.#stop();
    this.#wake();
  }

  #isAtWork(): boolean {
    return this.#reading !== null || this.#quiet !== null || this.#stepping !== null;
  }

  /** What is being looked at is no longer so. Several changes at once are read together. */
  #changed(after = 0): void {
    this.#stop();
    this.#reading = soon(after, () => {
      this.#read();
    });
  }

  #stop(): void {
    this.#reading?.();
    if (this.#quiet) clearTimeout(this.#quiet);
    this.#stepping?.();
    this.#reading = this.#quiet = this.#stepping = null;
  }

  #read(): void {
    this.#stop();
    this.#safely(() => {
      const { findings } = this.#checker.read();
      this.#failures = 0;
      if (this.#lookTook !== null && this.#lookTook < UNNOTICED) {
        this.#look(this.#checker.settle());
        return;
      }
      if (this.#lookTook === null) {
        this.#settleNow();
        return;
      }
      this.#telling.tell(findings);
      const wait = this.#waiting.length > 0 ? 0 : QUIET;
      this.#quiet = setTimeout(() => {
        this.#settleNow();
      }, wait);
    });
  }

  /** Looks at everything without a pause. */
  #look(steps: Steps): void {
    this.#taking = 0;
    while (!this.#hasEnded(steps));
  }

  #settleNow(): void {
    this.#stop();
    this.#taking = 0;
    this.#step(this.#checker.settle());
  }

  /** Somebody waits for what was resting. */
  #goOn(steps: Steps): void {
    this.#stepping?.();
    this.#step(steps);
  }

  /** One rule at a time: what is typed meanwhile is not kept waiting. */
  #step(steps: Steps): void {
    this.#steps = steps;
    this.#stepping = soon(this.#restLeft(), () => {
      this.#stepping = null;
      this.#safely(() => {
        if (this.#restLeft() > 0 || !this.#hasEnded(steps)) this.#step(steps);
      });
    });
  }

  /** Nobody who waits for what is found is kept waiting. */
  #restLeft(): number {
    return this.#waiting.length > 0 ? 0 : this.#restsUntil - performance.now();
  }

  /** Lets the next rule look; at the end tells what is found. */
  #hasEnded(steps: Steps): boolean {
    const start = performance.now();
    const step = steps.next();
    this.#taking += performance.now() - start;
    if (step.done !== true) return false;
    this.#lookTook = this.#taking;
    this.#telling.tell(step.value.findings);
    this.#wake();
    return true;
  }

  /** Whatever is wrong, the next change is answered. */
  #safely(work: () => void): void {
    try {
      work();
    } catch (error) {
      this.#folder.changedAll();
      this.#failures += 1;
      if (this.#failures < MOST_TRIES) this.#changed();
      else {
        this.#telling.fail(error);
        this.#wake();
      }
    }
  }

  #wake(): void {
    const waiting = this.#waiting;
    this.#waiting = [];
    for (const resolve of waiting) resolve();
  }
}

type Steps = ReturnType<Checker['settle']>;

/** Ends a wait. */
type Stop = () => void;

/** Does a job once everything else that waits had its turn, and not before so many milliseconds. */
function soon(milliseconds: number, job: () => void): Stop {
  if (milliseconds > 0) {
    const timer = setTimeout(job, milliseconds);
    return () => {
      clearTimeout(timer);
    };
  }
  const turn = setImmediate(job);
  return () => {
    clearImmediate(turn);
  };
}
