import { sampleWith, type Files } from '../../pipeline/checks/index.js';

/** A file of the sample, with some files laid over it, with words replaced where they first stand. */
export function changed(
  file: string,
  changes: readonly (readonly [from: string, to: string])[],
  over: Files = {},
): Files {
  const start = sampleWith(over).get(file);
  if (start === undefined) throw new Error(`there is no ${file}`);
  const text = changes.reduce((sum, [from, to]) => {
    if (!sum.includes(from)) throw new Error(`${file} has no "${from}"`);
    return sum.replace(from, () => to);
  }, start);
  return { [file]: text };
}

/** A card with these lines of front matter and this bio. */
export function cardText(front: string, bio = 'Water, and a bell.'): string {
  return `---\n${front.trim()}\n---\n${bio}\n`;
}
