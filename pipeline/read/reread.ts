import type { Card, Fault, SourceFile } from '../model/index.js';
import { FileReader } from './files.js';
import { memoryFolder } from './folder.js';

/** A card as it reads with another text of its file, or what is wrong with that. */
export function rereadCard(
  place: Pick<Card, 'set' | 'subset' | 'id'>,
  { file, text }: SourceFile,
): Card | readonly Fault[] {
  const reader = new FileReader(memoryFolder(new Map([[file, text]])));
  return reader.card(file, place) ?? reader.faults;
}
