/** A stretch of copy in one face. `"\n"` alone is a hard line break. */
export interface Run {
  readonly text: string;
  readonly italic: boolean;
  readonly bold: boolean;
  /** The level or embargo that holds these words, besides the card's own hold. */
  readonly hold: string | null;
  /** What these words count: a subset, group or total, or `none` for story. */
  readonly count: string | null;
  /** Offsets into the source file. */
  readonly from: number;
  readonly to: number;
}

export type Paragraph = readonly Run[];

/** The words of a bio. */
export type Copy = readonly Paragraph[];

export const NO_COPY: Copy = [];

/** The text of a paragraph as it is read: a hard break is a space. */
export function paragraphText(paragraph: Paragraph): string {
  return paragraph.map((run) => (run.text === '\n' ? ' ' : run.text)).join('');
}

/** The text of a bio, paragraphs parted by a blank line. */
export function copyText(copy: Copy): string {
  return copy.map(paragraphText).join('\n\n');
}

/** Words as a person counts them: what stands between spaces and holds a letter or digit. */
export function countWords(text: string): number {
  return text.split(/\s+/u).filter((word) => /[\p{L}\p{N}]/u.test(word)).length;
}

/** A stretch of one paragraph that one level or embargo holds. */
export interface HeldSpan {
  readonly hold: string;
  readonly text: string;
  readonly from: number;
  readonly to: number;
}

/** Held spans of a bio: neighbouring runs under the same hold are one span. */
export function heldSpans(copy: Copy): readonly HeldSpan[] {
  return copy.flatMap((paragraph) =>
    paragraph.reduce<HeldSpan[]>((spans, run, index) => {
      if (run.hold === null) return spans;
      const open = paragraph[index - 1]?.hold === run.hold ? spans.at(-1) : undefined;
      if (!open) return [...spans, { hold: run.hold, text: run.text, from: run.from, to: run.to }];
      const longer = { ...open, text: open.text + run.text, to: run.to };
      return [...spans.slice(0, -1), longer];
    }, []),
  );
}
