import type { DeskEvent, Job } from './protocol.js';
import { Refusal, unknown } from './refusal.js';

/** Most jobs that run at once, and most that are remembered. */
const MOST_RUNNING = 2;
const MOST_KEPT = 30;

/** Milliseconds between two steps that are told of one job; of those between, the last is told then. */
const PATIENCE = 100;

/** What a running job may do: say its step, which throws once it is to stop. */
export interface Working {
  readonly step: (says: string) => void;
  /** Lets everything else that waits have its turn; throws if the job is to stop. */
  readonly pause: () => Promise<void>;
  readonly signal: AbortSignal;
}

/** A job fails for a reason that a writer can do something about. */
export class JobFailure extends Error {
  override readonly name = 'JobFailure';
}

interface Running {
  job: Job;
  readonly stop: AbortController;
  told: number;
  /** Tells a step that came too soon after the one before. */
  later: NodeJS.Timeout | undefined;
}

/** Jobs that take their time, with progress and an end that can be asked for. */
export class Jobs {
  readonly #jobs = new Map<string, Running>();
  #count = 0;

  constructor(
    private readonly tell: (event: DeskEvent) => void,
    private readonly elapsed: () => number = () => performance.now(),
  ) {}

  get all(): readonly Job[] {
    return [...this.#jobs.values()].map(({ job }) => job);
  }

  /** @param run gives the address of what it made. */
  start(kind: Job['kind'], title: string, run: (working: Working) => Promise<string>): Job {
    const running = this.all.filter(({ state }) => state === 'running').length;
    if (running >= MOST_RUNNING) {
      const message = 'two jobs are running already: wait, or stop one';
      throw new Refusal(429, { error: 'too many', message });
    }
    this.#count += 1;
    const id = `job-${String(this.#count)}`;
    const job: Job = { id, kind, title, state: 'running', step: '', address: null, message: null };
    const entry: Running = { job, stop: new AbortController(), told: -Infinity, later: undefined };
    this.#jobs.set(id, entry);
    this.#forgetOldest();
    void this.#run(entry, run);
    return job;
  }

  cancel(id: string): Job {
    const entry = this.#jobs.get(id);
    if (!entry) throw unknown('there is no such job');
    if (entry.job.state === 'running') {
      entry.stop.abort();
      this.#say(entry, { state: 'cancelled', step: 'stopped' });
    }
    return entry.job;
  }

  end(): void {
    for (const { stop, later } of this.#jobs.values()) {
      stop.abort();
      clearTimeout(later);
    }
  }

  async #run(entry: Running, run: (working: Working) => Promise<string>): Promise<void> {
    const { signal } = entry.stop;
    // Whoever started it hears of it before its first step.
    await turn();
    try {
      const pause = async (): Promise<void> => {
        await turn();
        signal.throwIfAborted();
      };
      const address = await run({ signal, pause, step: (says) => this.#step(entry, says) });
      signal.throwIfAborted();
      this.#say(entry, { state: 'done', step: 'done', address });
    } catch (error) {
      if (signal.aborted) return;
      const message =
        error instanceof JobFailure ? error.message : 'it could not be made: see the terminal';
      this.#say(entry, { state: 'failed', step: 'failed', message });
    }
  }

  #step(entry: Running, says: string): void {
    entry.stop.signal.throwIfAborted();
    entry.job = { ...entry.job, step: says };
    const wait = PATIENCE - (this.elapsed() - entry.told);
    if (wait <= 0) this.#say(entry, {});
    else entry.later ??= setTimeout(() => this.#say(entry, {}), wait).unref();
  }

  #say(entry: Running, change: Partial<Job>): void {
    clearTimeout(entry.later);
    entry.later = undefined;
    entry.job = { ...entry.job, ...change };
    entry.told = this.elapsed();
    this.tell({ type: 'job', job: entry.job });
  }

  #forgetOldest(): void {
    for (const [id, { job }] of this.#jobs) {
      if (this.#jobs.size <= MOST_KEPT) return;
      if (job.state !== 'running') this.#jobs.delete(id);
    }
  }
}

/** Resolves once everything else that waits had its turn. */
function turn(): Promise<void> {
  return new Promise((resolve) => setImmediate(resolve));
}
