type Hearer = (words: string) => void;

let hearer: Hearer = () => undefined;
let waiting: ReturnType<typeof setTimeout> | undefined;
/** A writer who types is told of the fit when they pause, not at each key. In ms. */
const PAUSE = 700;

/** Says something to who looks and to who listens, at once. */
export function say(words: string): void {
  clearTimeout(waiting);
  hearer(words);
}

/** Says it when nothing newer comes. */
export function saySoon(words: string): void {
  clearTimeout(waiting);
  waiting = setTimeout(() => hearer(words), PAUSE);
}

/** Who puts what is said where it is read out. */
export function onSaid(next: Hearer): void {
  hearer = next;
}
