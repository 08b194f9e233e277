import { escapeMarkup, hiddenCharacters } from '../../text/index.js';

/** What no text may hold, by Unicode 23.7; XML 1.0 forbids two of them. */
const NO_CHARACTERS = /\p{Noncharacter_Code_Point}/gu;

/**
 * A text on one line: without controls, marks that turn the direction, and whatever else does not
 * show, so that it reads where it is pasted as it reads here.
 */
export function plain(text: string): string {
  let shown = '';
  let from = 0;
  for (const { at, character } of hiddenCharacters(text)) {
    shown += text.slice(from, at);
    from = at + character.length;
  }
  return (shown + text.slice(from))
    .replace(NO_CHARACTERS, '')
    .replace(/[\t\n\r ]+/g, ' ')
    .trim();
}

/** A plain text as it stands in HTML or XML, between tags or in double quotes. */
export function escaped(text: string): string {
  return escapeMarkup(plain(text));
}
