import { expect, it } from 'vitest';

import { paragraphText } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { likenesses, printOf } from '../../pipeline/text/index.js';
import { demoFiles } from '../demo/copy.js';

const bios = readContent(memoryFolder(demoFiles({ art: false })))
  .sets.flatMap(({ cards }) => cards.map(({ bio }) => bio.map(paragraphText)))
  .filter((bio) => bio.length > 0);
const printed = (texts: readonly (readonly string[])[]) =>
  texts.map((text) => ({ print: printOf(text), group: 'one' }));
const NONE = (): boolean => false;

it('no two bios of the demo are alike', () => {
  expect(bios.length).toBeGreaterThan(50);
  expect(likenesses(printed(bios), NONE)).toEqual([]);
});

it('a bio with every eighth word changed is found, whichever it is', () => {
  const changed = bios.map((bio) =>
    bio.map((text) =>
      text
        .split(' ')
        .map((word, at) => (at % 8 === 0 ? 'walrus' : word))
        .join(' '),
    ),
  );
  const found = likenesses(printed([...bios, ...changed]), NONE).filter(
    ({ kind, earlier, later }) => kind === 'words' && later - earlier === bios.length,
  );
  expect(found.length).toBe(bios.length);
});

it('a template with other nouns is alike in shape', () => {
  const from = (who: string, what: string, where: string): string[] => [
    `${who} has never been to the ${where}, but she would like to see it before the ${what} goes down. If you ask her why, then she will tell you that it is none of your ${what}, and that is all.`,
  ];
  const [found] = likenesses(
    printed([from('Odalys', 'bell', 'orchard'), from('Tamsin', 'kettle', 'harbour')]),
    NONE,
  );
  expect(found?.kind).toMatch(/^(?:words|shape)$/);
});
