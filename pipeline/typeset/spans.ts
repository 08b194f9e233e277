import { collapseWhite } from './characters.js';
import type { Face } from './face.js';
import type { Faces, TextRun } from './types.js';

/** Words of one face, white space collapsed. */
export interface Span {
  readonly text: string;
  readonly face: Face;
}

export type BaseFace = keyof Faces;

/**
 * The face of a run. The base is the face of the whole zone: emphasis inside an italic base is
 * roman, as is the custom, and inside a bold base bold stays bold.
 */
export function faceOf(run: TextRun, base: BaseFace, faces: Faces): Face {
  const italic = run.italic !== (base === 'italic' || base === 'boldItalic');
  const bold = run.bold || base === 'bold' || base === 'boldItalic';
  if (italic) return bold ? faces.boldItalic : faces.italic;
  return bold ? faces.bold : faces.regular;
}

/**
 * The stretches between the hard breaks of a paragraph, each a list of spans. White space is
 * collapsed over the borders of runs and dropped at both ends of a stretch, as in HTML; hard breaks
 * at the end of a paragraph break nothing.
 */
export function stretchesOf(
  paragraph: readonly TextRun[],
  base: BaseFace,
  faces: Faces,
): readonly (readonly Span[])[] {
  const stretches: Span[][] = [[]];
  for (const run of paragraph) {
    if (run.text === '\n') stretches.push([]);
    else append(stretches.at(-1) ?? [], collapseWhite(run.text), faceOf(run, base, faces));
  }
  for (const stretch of stretches) trimEnd(stretch);
  while (stretches.length > 1 && stretches.at(-1)?.length === 0) stretches.pop();
  return stretches;
}

function append(stretch: Span[], text: string, face: Face): void {
  const last = stretch.at(-1);
  const added = (!last || last.text.endsWith(' ')) && text.startsWith(' ') ? text.slice(1) : text;
  if (added === '') return;
  if (last?.face === face) stretch[stretch.length - 1] = { text: last.text + added, face };
  else stretch.push({ text: added, face });
}

function trimEnd(stretch: Span[]): void {
  const last = stretch.at(-1);
  if (!last?.text.endsWith(' ')) return;
  stretch.pop();
  if (last.text !== ' ') stretch.push({ text: last.text.slice(0, -1), face: last.face });
}
