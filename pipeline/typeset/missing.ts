import type { Face } from './face.js';
import type { FlowedLine } from './flow.js';
import type { Prepared } from './paragraphs.js';
import type { MissingGlyph } from './types.js';

/** Characters of a text that its faces have no glyph for, each once a face, in order. */
export function missingGlyphs(
  paragraphs: readonly Prepared[],
  lines: readonly FlowedLine[],
): readonly MissingGlyph[] {
  const missing = new Map<string, MissingGlyph>();
  const spaces = new Map<Face, Set<string>>();
  const add = (character: string, face: string): void => {
    missing.set(`${character}${face}`, { character, face });
  };
  for (const { stretch } of paragraphs.flat()) {
    for (const { word, face, space, spaceFace } of stretch.segments) {
      for (const character of word.missing) add(character, face.name);
      if (space !== '' && !(spaces.get(spaceFace)?.has(space) ?? false)) {
        spaces.set(spaceFace, (spaces.get(spaceFace) ?? new Set<string>()).add(space));
        if (!spaceFace.covers(space)) add(space, spaceFace.name);
      }
    }
  }
  for (const { prepared, line } of lines) {
    const face = prepared.stretch.segments[line.end.segment]?.face;
    if (line.end.kind === 'hyphen' && face && !face.covers(face.hyphen))
      add(face.hyphen, face.name);
  }
  return [...missing.values()];
}
