import type { DeskEvent } from '../../protocol.js';
import type { Desk } from './desk.js';
import type { StreamEvent } from './event-text.js';
import { shareStream } from './shared-stream.js';

type Hearer = (event: DeskEvent) => void;

/** What happens at the desk, for whoever on this page wants to hear of it. */
export class Live {
  readonly #hearers = new Set<Hearer>();
  readonly #reachable = new Set<(isConnected: boolean) => void>();
  #isConnected = true;

  constructor(desk: Desk) {
    shareStream((signal) => desk.events(signal), {
      event: (event) => this.#hear(event),
      connected: (isConnected) => this.#connect(isConnected),
    });
  }

  /** Calls it for each event until what is returned is called. */
  on(hearer: Hearer): () => void {
    this.#hearers.add(hearer);
    return () => void this.#hearers.delete(hearer);
  }

  /** Calls it when the desk can no longer be reached, and when it can again: then things may be other. */
  onConnected(hearer: (isConnected: boolean) => void): () => void {
    this.#reachable.add(hearer);
    return () => void this.#reachable.delete(hearer);
  }

  #hear({ text }: StreamEvent): void {
    const event: unknown = JSON.parse(text);
    if (!isEvent(event)) return;
    // Before a stream begins, perhaps in another tab, something may have been left out: a tab that
    // was opened late has heard no other beginning, so each one counts.
    if (event.type === 'hello') this.#connect(true, true);
    for (const hearer of this.#hearers) hearer(event);
  }

  #connect(isConnected: boolean, isAnew = false): void {
    if (isConnected === this.#isConnected && !isAnew) return;
    this.#isConnected = isConnected;
    for (const hearer of this.#reachable) hearer(isConnected);
  }
}

function isEvent(value: unknown): value is DeskEvent {
  return typeof value === 'object' && value !== null && 'type' in value;
}
