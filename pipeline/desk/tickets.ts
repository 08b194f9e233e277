/** Milliseconds for which a ticket is good, and most that are good at once. */
const GOOD_FOR = 30_000;
const MOST = 16;

/** Tickets that open one event stream each: an `EventSource` can send no header. */
export class Tickets {
  readonly #until = new Map<string, number>();

  constructor(
    private readonly random: () => string,
    private readonly elapsed: () => number = () => performance.now(),
  ) {}

  give(): string {
    const ticket = this.random();
    this.#until.set(ticket, this.elapsed() + GOOD_FOR);
    for (const oldest of this.#until.keys()) {
      if (this.#until.size <= MOST) break;
      this.#until.delete(oldest);
    }
    return ticket;
  }

  /** Whether it is good; it never is again. */
  take(ticket: string): boolean {
    const until = this.#until.get(ticket);
    return this.#until.delete(ticket) && until !== undefined && this.elapsed() <= until;
  }
}
