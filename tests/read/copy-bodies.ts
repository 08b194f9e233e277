import type { Copy } from '../../pipeline/model/index.js';
import { readCopy } from '../../pipeline/read/copy.js';

export const FRONT = '---\nnumber: "1"\n---\n';

/** A body below the least front matter: its copy, and what is said to be wrong. */
export function bodyOf(markdown: string): { copy: Copy; faults: string[]; text: string } {
  const text = FRONT + markdown;
  const { copy, faults } = readCopy({ file: 'card.md', text }, FRONT.length);
  return { copy, text, faults: faults.map(({ message }) => message) };
}
