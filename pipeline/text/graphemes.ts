const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/**
 * Characters as a reader counts them: extended grapheme clusters (UAX 29), so that a letter with
 * its accents, or a flag, is one.
 */
export function countGraphemes(text: string): number {
  return Array.from(segmenter.segment(text)).length;
}
