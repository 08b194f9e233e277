import type { Content, Instant } from '../model/index.js';
import { galleryOf, searchArt, type Eyes } from './art.js';
import { searchFiles } from './files.js';
import type { AuditFinding } from './finding.js';
import { heldWords } from './held.js';
import { openTexts } from './open.js';
import { searchFor } from './search.js';
import { standingOf, type Reader, type Standing } from './standing.js';

export { sayAuditPlace, type AuditFinding, type AuditPlace } from './finding.js';
export type { Eyes } from './art.js';
export type { Reader } from './standing.js';

/**
 * Searches a finished output for what is held at an instant: names and short texts whole, of long
 * texts every run of 40 letters, whatever the case, punctuation, markup and escapes between them.
 * What is also open in its own right is no finding, but for names and secrets. What cannot be opened
 * is a finding. It shares nothing with the gate but the model, so that a mistake there is found here.
 * @throws RangeError for content without a readable property: nobody knows what of it is held.
 */
export function auditSite(
  files: ReadonlyMap<string, Uint8Array>,
  content: Content,
  at: Instant,
): readonly AuditFinding[] {
  const standing = standingFor(content, { at });
  const search = searchFor(heldWords(content, standing), openTexts(content, standing));
  return searchFiles(files, search).findings;
}

/**
 * The same for any reader, and of pictures too: held art by its bytes, by its digest where that is
 * written down, and by its looks (see `Likeness`), which compares PNG, JPEG, WebP and GIF, wherever
 * they are wrapped. A picture that looks as much like open art is no finding.
 * @param whole does the long search of texts, which has no pause in it: whoever may stop it wraps it.
 */
export async function audit(
  files: ReadonlyMap<string, Uint8Array>,
  content: Content,
  reader: Reader,
  eyes: Eyes,
  whole: <T>(job: () => T | Promise<T>) => Promise<T> = async (job) => await job(),
): Promise<readonly AuditFinding[]> {
  const standing = standingFor(content, reader);
  const gallery = await galleryOf(content, standing, eyes);
  const targets = [...heldWords(content, standing), ...gallery.targets];
  const { findings, contents } = await whole(() =>
    searchFiles(files, searchFor(targets, openTexts(content, standing))),
  );
  return [...findings, ...(await searchArt(contents, gallery, eyes))];
}

function standingFor(content: Content, reader: Reader): Standing {
  const standing = standingOf(content, reader);
  if (standing) return standing;
  throw new RangeError('there is no readable property: nobody knows what is held');
}
