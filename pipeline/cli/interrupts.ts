import { createContext, Script } from 'node:vm';

/** The command was stopped before it was done. */
export class Cancelled extends Error {
  override readonly name = 'Cancelled';
  override readonly message = 'cancelled: nothing was written';
}

/** Does a job that has no pause in it: reading, checking, setting. It must write nothing. */
export type Whole = <T>(job: () => T | Promise<T>) => Promise<T>;

/** Ctrl-C, for as long as a command listens to it. */
export interface Interrupts {
  /** Aborted once it was pressed. */
  readonly signal: AbortSignal;
  /** From now on it stops the command, and not the process; until what is returned is called. */
  readonly hear: () => () => void;
  /**
   * Does a job that Ctrl-C ends wherever it is, without its `finally`. In the moments in which it is
   * begun and done nobody listens: there the process ends as it would without all this.
   * @throws Cancelled then.
   */
  readonly whole: Whole;
}

/** Ctrl-C of this process. Pressed a second time it ends the process, whatever it does. */
export function processInterrupts(): Interrupts {
  const controller = new AbortController();
  const place: { run?: () => void } = {};
  const context = createContext(place);
  const heard = (): void => {
    controller.abort();
  };
  return {
    signal: controller.signal,
    hear: () => {
      process.once('SIGINT', heard);
      return () => void process.off('SIGINT', heard);
    },
    whole: async (job) => {
      // What was pressed since the last turn of the loop is heard in this one.
      await new Promise(setImmediate);
      goOn(controller.signal);
      try {
        return await inOneGo(job, (run) => {
          place.run = run;
          SCRIPT.runInContext(context, { breakOnSigint: true, displayErrors: false });
        });
      } catch (error) {
        if (!wasInterrupted(error)) throw error;
        controller.abort();
        throw new Cancelled();
      }
    },
  };
}

const SCRIPT = new Script('run()');

/** A signal is heard between two turns of the loop; only a script may be ended within one. */
function inOneGo<T>(job: () => T, script: (run: () => void) => void): T {
  const done: { value?: T } = {};
  script(() => {
    done.value = job();
  });
  return valueOf(done);
}

function valueOf<T>(done: { value?: T }): T {
  if ('value' in done) return done.value;
  throw new Cancelled();
}

/** The error is of the world of the script, and so no `Error` of this one. */
function wasInterrupted(error: unknown): boolean {
  const isThing = typeof error === 'object' && error !== null;
  return isThing && 'code' in error && error.code === 'ERR_SCRIPT_EXECUTION_INTERRUPTED';
}

/** @throws Cancelled if the command is to stop. */
export function goOn(signal: AbortSignal | undefined): void {
  if (signal?.aborted === true) throw new Cancelled();
}
