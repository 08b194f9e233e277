declare module 'damerau-levenshtein' {
  /** The restricted distance of two texts. */
  export default function distance(a: string, b: string): { readonly steps: number };
}
