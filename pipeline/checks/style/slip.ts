/** Something in a text that is not as the house writes it. */
export interface Slip {
  /** UTF-16 units from the start of the text. */
  readonly from: number;
  readonly to: number;
  readonly message: string;
  readonly expected: string;
  /** The words to put there; null where a person has to decide. */
  readonly fix: string | null;
  readonly certain: boolean;
}

/** Every match of a pattern that `slip` finds fault with. */
export function slipsOf(
  text: string,
  pattern: RegExp,
  slip: (match: RegExpExecArray) => Slip | null,
): Slip[] {
  return Array.from(text.matchAll(pattern), slip).filter((each) => each !== null);
}
