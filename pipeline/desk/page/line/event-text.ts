/** An event of a stream: its kind, and its text. */
export interface StreamEvent {
  readonly kind: string;
  readonly text: string;
}

/**
 * Reads Server-Sent Events (HTML Standard, section 9.2.6) from pieces of text, wherever they are
 * cut. Comments and fields other than `event` and `data` are passed over.
 */
export class EventText {
  #rest = '';
  #kind = '';
  #lines: string[] = [];

  /** The events that end in this piece. */
  add(piece: string): readonly StreamEvent[] {
    const lines = (this.#rest + piece).split(/\r\n|\n|\r(?!$)/);
    this.#rest = lines.pop() ?? '';
    return lines.flatMap((line) => this.#take(line));
  }

  #take(line: string): readonly StreamEvent[] {
    if (line === '') return this.#end();
    const colon = line.indexOf(':');
    const field = colon < 0 ? line : line.slice(0, colon);
    const value = colon < 0 ? '' : line.slice(colon + 1).replace(/^ /, '');
    if (field === 'event') this.#kind = value;
    if (field === 'data') this.#lines.push(value);
    return [];
  }

  #end(): readonly StreamEvent[] {
    const event = {
      kind: this.#kind === '' ? 'message' : this.#kind,
      text: this.#lines.join('\n'),
    };
    const isEmpty = this.#lines.length === 0;
    this.#kind = '';
    this.#lines = [];
    return isEmpty ? [] : [event];
  }
}
