import { fenceOf, type Copy, type Paragraph, type SourceFile } from '../model/index.js';
import { writtenParagraph, type Faced } from './markup.js';
import type { Change } from './splice.js';

/**
 * The change that writes anew all paragraphs between the first and the last that differ; the others
 * stay as they are.
 */
export function paragraphsAnew(
  source: SourceFile,
  bio: Copy,
  fresh: readonly (readonly Faced[])[],
  lineEnd: string,
): Change | null {
  const was = bio.map((paragraph) => sameness(facedRuns(paragraph)));
  const now = fresh.map(sameness);
  const shorter = Math.min(was.length, now.length);
  let first = 0;
  while (first < shorter && was[first] === now[first]) first += 1;
  let same = 0;
  while (same < shorter - first && was.at(-1 - same) === now.at(-1 - same)) same += 1;
  const blocks = bio.map((paragraph) => blockOf(source, paragraph));
  const [old, parting] = [blocks.slice(first, bio.length - same), `${lineEnd}${lineEnd}`];
  const words = fresh
    .slice(first, fresh.length - same)
    .map((units) => writtenParagraph(units, lineEnd))
    .join(parting);
  const [start, end] = [old[0], old.at(-1)];
  const [before, after] = [blocks[first - 1], blocks[bio.length - same]];
  const change = (from: number, to: number, text: string): Change => ({
    spot: { source, from, to },
    text,
  });
  if (start && end && words !== '') return change(start.from, end.to, words);
  if (start && end && before) return change(before.to, end.to, '');
  if (start && end && after) return change(start.from, after.from, '');
  if (before) return change(before.to, before.to, parting + words);
  return after ? change(after.from, after.from, words + parting) : null;
}

/** The units of runs with their faces. */
export function facedRuns(paragraph: Paragraph): readonly Faced[] {
  return paragraph.flatMap(({ text, italic, bold, hold, count }) =>
    text.split('').map((sign) => ({ sign, face: { italic, bold, hold, count } })),
  );
}

function sameness(units: readonly Faced[]): string {
  return JSON.stringify(
    units.map(({ sign, face: { italic, bold, hold, count } }) => [sign, italic, bold, hold, count]),
  );
}

/** The whole lines that a paragraph stands on, without their last line end. */
function blockOf(source: SourceFile, paragraph: Paragraph): { from: number; to: number } {
  const [first, last] = [paragraph[0]?.from ?? 0, paragraph.at(-1)?.to ?? 0];
  const body = fenceOf(source.text)?.bodyFrom ?? 0;
  const before = source.text.slice(body, first);
  const after = source.text.slice(last);
  const lead = /(?:^|[\r\n])[ \t]*(?:\r\n|\n|\r)(?![^]*(?:\r\n|\n|\r)[ \t]*(?:\r\n|\n|\r))/.exec(
    before,
  );
  const from = lead === null ? body : body + lead.index + lead[0].length;
  const end = /(?:\r\n|\n|\r)[ \t]*(?:\r\n|\n|\r|$)|$/.exec(after)?.index ?? after.length;
  return { from, to: last + end };
}
