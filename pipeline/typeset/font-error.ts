/** A font file that cannot be set with, with the reason and the way out in its message. */
export class FontError extends Error {
  override readonly name = 'FontError';

  constructor(
    /** The name that the caller gave to the font. */
    readonly font: string,
    readonly reason: string,
    options?: ErrorOptions,
  ) {
    super(`font ${font}: ${reason}`, options);
  }
}
