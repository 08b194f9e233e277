/** A word of running text as it is typed: letters with marks, digits, apostrophes inside. */
export interface RunningWord {
  readonly text: string;
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  /** What stands between it and the word before. */
  readonly gap: string;
}

const WORD = /[\p{L}\p{M}\p{N}\u00ad]+(?:['’ʼ＇][\p{L}\p{M}\p{N}\u00ad]+)*/gu;

/** The words of a text in their order. What a hyphen joins is several words. */
export function runningWords(text: string): readonly RunningWord[] {
  let end = 0;
  return Array.from(text.matchAll(WORD), ({ 0: word, index }) => {
    const gap = text.slice(end, index);
    end = index + word.length;
    return { text: word, from: index, to: end, gap };
  });
}
