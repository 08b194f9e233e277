/** Whose English a text is in. */
export type English = 'american' | 'british';

/** The words of a language. */
export interface Dictionary {
  /** Whether a word, as it is typed, stands in it or is made of what does. */
  readonly knows: (word: string) => boolean;
  /** Words that may be meant, the likeliest first: slow, so only where a word is wrong. */
  readonly near: (word: string) => readonly string[];
}

/** The dictionaries that are at hand; each is opened when it is first asked for. */
export type Dictionaries = (english: English) => Dictionary;

/** For whoever asks nothing of them. */
export const NO_DICTIONARIES: Dictionaries = () => {
  throw new Error('no dictionary is at hand');
};
