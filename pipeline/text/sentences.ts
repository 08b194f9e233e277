import { endsSentence } from './sentence-edges.js';

/** A sentence of a text: UTF-16 units from its start. */
export interface Sentence {
  readonly from: number;
  readonly to: number;
}

const SEGMENTER = new Intl.Segmenter('en', { granularity: 'sentence' });

/**
 * The sentences of a text by UAX #29, but that a title ("Mr. Hask") and a single capital end none.
 */
export function sentences(text: string): readonly Sentence[] {
  const found: Sentence[] = [];
  for (const { index, segment } of SEGMENTER.segment(text)) {
    const last = found.at(-1);
    const goesOn =
      last && !/\n$/.test(text.slice(0, index)) && !endsSentence(text.slice(last.from, index));
    if (goesOn) found[found.length - 1] = { from: last.from, to: index + segment.length };
    else found.push({ from: index, to: index + segment.length });
  }
  return found;
}
