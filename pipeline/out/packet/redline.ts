import { diffWordsWithSpace } from 'diff';

import { escapeMarkup } from '../../text/index.js';

/**
 * What changed from one text to another, word by word, as markup. What was taken out and what was
 * put in stand in brackets of their own and are named to who listens, so that no colour is needed.
 */
export function redline(was: string, now: string): string {
  return diffWordsWithSpace(was, now)
    .map(({ value, added, removed }) => {
      const words = escapeMarkup(value).replaceAll('\n', '<br>');
      if (added) return `<ins><span class="heard">put in: </span>${words}</ins>`;
      if (removed) return `<del><span class="heard">taken out: </span>${words}</del>`;
      return words;
    })
    .join('');
}
