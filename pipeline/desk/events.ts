import type { ServerResponse } from 'node:http';

import { begin } from './answers.js';
import type { DeskEvent } from './protocol.js';

/**
 * Most streams at once: a browser opens six connections to a host, and streams that take them all
 * keep every other request waiting. The page shares one among its tabs.
 */
export const MOST_STREAMS = 4;

/** Milliseconds between two signs of life, by which a connection that is gone is noticed. */
const BEAT = 15_000;

/** The event streams of a desk (Server-Sent Events, HTML Living Standard, section 9.2). */
export class Events {
  readonly #open = new Set<ServerResponse>();
  readonly #session: string;
  #beat: NodeJS.Timeout | null = null;

  constructor(session: string) {
    this.#session = session;
  }

  get hasRoom(): boolean {
    return this.#open.size < MOST_STREAMS;
  }

  /** Opens a stream on an answer; it is closed when its reader goes, or at the end. */
  open(response: ServerResponse): void {
    begin(response, {
      type: 'text/event-stream; charset=utf-8',
      more: { 'x-accel-buffering': 'no' },
    });
    this.#open.add(response);
    response.on('close', () => {
      this.#open.delete(response);
    });
    response.write('retry: 1000\n\n');
    response.write(textOf({ type: 'hello', session: this.#session }));
    this.#beat ??= setInterval(() => {
      for (const each of this.#open) each.write(': \n\n');
    }, BEAT).unref();
  }

  tell(event: DeskEvent): void {
    const text = textOf(event);
    for (const each of this.#open) each.write(text);
  }

  end(): void {
    if (this.#beat) clearInterval(this.#beat);
    for (const each of this.#open) each.end();
    this.#open.clear();
  }
}

/** JSON has no line ends of its own, so an event is two lines. */
function textOf(event: DeskEvent): string {
  return `event: ${event.type}\ndata: ${JSON.stringify(event)}\n\n`;
}
