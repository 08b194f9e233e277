import type { Copy, Run, SourceFile } from '../model/index.js';

/** A UTF-16 unit of a bio and the stretch of the source that stands for it. */
export interface Unit {
  readonly sign: string;
  readonly from: number;
  readonly to: number;
  /** The run that it is of; null for the break between two paragraphs. */
  readonly run: Run | null;
}

/** A bio as it is typed: paragraphs parted by an empty line, hard breaks by a line end. */
export function plainBio(bio: readonly (readonly Pick<Run, 'text'>[])[]): string {
  return bio.map((runs) => runs.map(({ text }) => text).join('')).join('\n\n');
}

/**
 * The units of a bio in the order of `plainBio`; null where the source cannot be matched with what
 * was read of it, letter by letter.
 */
export function unitsOf(source: SourceFile, bio: Copy): readonly Unit[] | null {
  const units: Unit[] = [];
  for (const [index, paragraph] of bio.entries()) {
    if (index > 0) units.push(...parting(bio[index - 1], paragraph));
    for (const run of paragraph) {
      const own = unitsOfRun(source, run);
      if (own === null) return null;
      units.push(...own);
    }
  }
  return units;
}

/** The first of the two stands for all that is between the paragraphs. */
function parting(before: readonly Run[] | undefined, after: readonly Run[]): Unit[] {
  const from = before?.at(-1)?.to ?? 0;
  const to = after[0]?.from ?? from;
  return [
    { sign: '\n', from, to, run: null },
    { sign: '\n', from: to, to, run: null },
  ];
}

function unitsOfRun(source: SourceFile, run: Run): Unit[] | null {
  if (run.text === '\n') return [{ sign: '\n', from: run.from, to: run.to, run }];
  const units: Unit[] = [];
  let at = run.from;
  while (units.length < run.text.length) {
    const rest = source.text.slice(at, run.to);
    const sign = run.text[units.length] ?? '';
    const length = lengthOf(rest, sign, run.text.slice(units.length));
    if (length === null) return null;
    units.push({ sign, from: at, to: at + length, run });
    at += length;
  }
  return at === run.to ? units : null;
}

const ESCAPED = /^\\[!-/:-@[-`{-~]/;
const LINE_END = /^[ \t]*(?:\r\n|\n|\r)[ \t]*/;
const REFERENCE = /^&(?:#\d{1,7}|#[xX][\da-fA-F]{1,6}|[A-Za-z][A-Za-z\d]*);/;

/** How much of the source stands for a sign of the text: itself, escaped, a line end, a reference. */
function lengthOf(rest: string, sign: string, text: string): number | null {
  if (ESCAPED.test(rest) && rest[1] === sign) return 2;
  const end = LINE_END.exec(rest)?.[0].length;
  if (sign === ' ' && end !== undefined) return end;
  const reference = REFERENCE.exec(rest)?.[0];
  if (reference !== undefined && !text.startsWith(reference)) return reference.length;
  return rest.startsWith(sign) ? 1 : null;
}
