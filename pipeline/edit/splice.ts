import type { SourceFile, Spot } from '../model/index.js';

/** A stretch of a source and the text to stand there instead. */
export interface Change {
  readonly spot: Spot;
  readonly text: string;
}

/**
 * The source with changes made: nothing but the stretches themselves differs.
 * @throws RangeError if two changes overlap, or one is of another file: then nothing is changed.
 */
export function splice(source: SourceFile, changes: readonly Change[]): SourceFile {
  const inOrder = [...changes].sort((a, b) => a.spot.from - b.spot.from || a.spot.to - b.spot.to);
  let text = '';
  let done = 0;
  for (const { spot, text: instead } of inOrder) {
    if (spot.source.file !== source.file)
      throw new RangeError(`a change is of ${spot.source.file}`);
    if (spot.from < done || spot.to < spot.from || spot.to > source.text.length) {
      throw new RangeError('two changes overlap');
    }
    text += source.text.slice(done, spot.from) + instead;
    done = spot.to;
  }
  return { file: source.file, text: text + source.text.slice(done) };
}
