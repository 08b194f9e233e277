/** A stop, and what may close behind it. */
const STOP = /[.!?…]["'”’»)\]]*\s*$/u;
/** Words whose full stop ends no sentence: titles, "e.g.", and single capitals as in "J. Hask". */
const ABBREVIATION =
  /(?:^|[\s("“‘[])(?:Mr|Mrs|Ms|Dr|St|Jr|Prof|Rev|Capt|vs|cf|e\.g|i\.e|[A-HJ-Z])\.$/u;

/** Whether a text ends where a sentence does. An empty text does. */
export function endsSentence(text: string): boolean {
  const trimmed = text.trimEnd();
  return trimmed === '' || (STOP.test(trimmed) && !ABBREVIATION.test(trimmed));
}
