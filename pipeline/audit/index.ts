import type { Content, Instant } from '../model/index.js';
import { heldWords } from './held.js';
import { isLong, searchLong } from './long.js';
import { openTexts } from './open.js';
import { readable } from './readable.js';
import { searchShort } from './short.js';

/** Something held that stands in a finished output. House matter: it names what is held. */
export interface AuditFinding {
  readonly file: string;
  readonly from: string;
  readonly words: string;
}

/**
 * Searches a finished output for what is held at an instant: names and short texts whole, of long
 * texts every run of 40 letters, whatever the case, punctuation, markup and escapes between them.
 * What is also open in its own right is no finding, but for names. It shares nothing with the gate
 * but the model, so that a mistake there is found here.
 */
export function auditSite(
  files: ReadonlyMap<string, Uint8Array>,
  content: Content,
  at: Instant,
): readonly AuditFinding[] {
  const held = heldWords(content, at);
  const open = openTexts(content, at);
  const short = searchShort(
    held.filter((entry) => entry.always || !isLong(entry.words)),
    open,
  );
  const long = searchLong(
    held.filter((entry) => isLong(entry.words)),
    open,
  );
  return [...files].flatMap(([file, bytes]) => {
    const found = readable(file, bytes).flatMap((text) => [...short(text), ...long(text)]);
    return [...new Set(found)].map(({ from, words }) => ({ file, from, words }));
  });
}
