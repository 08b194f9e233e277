import type { Break } from './break-list.js';
import { emsOf, gapAfter, partOf, type Place, type Stretch } from './stretch.js';

/** Lengths of the lines that one stretch can be cut into, in ems. */
export class LineWidths {
  readonly #heads = new Map<number, number>();
  readonly #tails = new Map<Break, number>();

  constructor(readonly stretch: Stretch) {}

  /** Length of the line from a place to a break, its hyphen included. */
  width(start: Place, end: Break): number {
    const { starts, tracking } = this.stretch;
    const total =
      start.segment === end.segment || (start.offset > 0 && start.segment + 1 === end.segment)
        ? this.#short(start, end)
        : this.#head(start) + (starts[end.segment] ?? 0) + this.#tail(end);
    return total + this.#hyphen(end) - (total === 0 ? 0 : tracking);
  }

  /** Natural width of the word spaces of a line. */
  spaces(start: Place, end: Break): number {
    const { spaces } = this.stretch;
    return (spaces[end.segment] ?? 0) - (spaces[start.segment] ?? 0);
  }

  #hyphen(end: Break): number {
    const segment = this.stretch.segments[end.segment];
    if (end.kind !== 'hyphen' || !segment) return 0;
    const { face, shaper } = segment;
    return emsOf(face, shaper.word(face.hyphen), this.stretch.tracking);
  }

  /** What a start adds to the length from the start of the stretch: less what it leaves out. */
  #head(start: Place): number {
    const { segments, starts, tracking } = this.stretch;
    const segment = segments[start.segment];
    if (start.offset === 0 || !segment) return -(starts[start.segment] ?? 0);
    const key = start.segment * 0x10000 + start.offset;
    let head = this.#heads.get(key);
    if (head === undefined) {
      const next = segments[start.segment + 1];
      const part = partOf(segment, start.offset, segment.text.length, false);
      const gap = next ? gapAfter(segment, part, next, next.word, tracking) : 0;
      head = emsOf(segment.face, part, tracking) + gap - (starts[start.segment + 1] ?? 0);
      this.#heads.set(key, head);
    }
    return head;
  }

  /** Length of the part of the last segment, with what cutting it changes in the gap before it. */
  #tail(end: Break): number {
    const segment = this.stretch.segments[end.segment];
    if (segment?.lastWord === segment?.word && end.offset === segment?.text.length) {
      return emsOf(segment.face, segment.word, this.stretch.tracking);
    }
    let tail = this.#tails.get(end);
    if (tail === undefined) {
      tail = this.#measureTail(end);
      this.#tails.set(end, tail);
    }
    return tail;
  }

  #measureTail(end: Break): number {
    const { segments, tracking } = this.stretch;
    const segment = segments[end.segment];
    if (!segment) return 0;
    const part = partOf(segment, 0, end.offset, true);
    const length = emsOf(segment.face, part, tracking);
    const before = segments[end.segment - 1];
    if (!before || part === segment.word) return length;
    const cut = gapAfter(before, before.word, segment, part, tracking);
    return length + cut - gapAfter(before, before.word, segment, segment.word, tracking);
  }

  /** A line inside one segment, or from inside one into the next: measured directly. */
  #short(start: Place, end: Break): number {
    const { segments, tracking } = this.stretch;
    const first = segments[start.segment];
    const last = segments[end.segment];
    if (!first || !last) return 0;
    if (first === last) {
      return emsOf(first.face, partOf(first, start.offset, end.offset, true), tracking);
    }
    const head = partOf(first, start.offset, first.text.length, false);
    const tail = partOf(last, 0, end.offset, true);
    return (
      emsOf(first.face, head, tracking) +
      gapAfter(first, head, last, tail, tracking) +
      emsOf(last.face, tail, tracking)
    );
  }
}
