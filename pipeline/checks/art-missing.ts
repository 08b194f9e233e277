import { spotOf, type Card, type CardSet } from '../model/index.js';
import { nearest } from '../text/index.js';
import { faultyFiles } from './faults.js';
import { isInside } from './inside.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';

const WITH_IMAGE = edited('one/cards/base/a1.md', [
  'story: 1/1',
  'story: 1/1\nimage: { file: art/a1.svg }',
]);

/** A card whose picture is not in the set's folder. */
export const artMissing: Rule = {
  id: 'art-missing',
  about: 'files',
  severity: 'error',
  why: 'A front without its picture stops the proof, or prints white.',
  look: ({ sets, content }) => {
    const faulty = faultyFiles(content);
    return sets.flatMap((set) => set.cards.flatMap((card) => missingArt(set, card, faulty)));
  },
  examples: {
    passes: [
      { says: 'a picture that is there', files: { ...WITH_IMAGE, 'one/art/a1.svg': '<svg/>' } },
    ],
    fails: [
      {
        says: 'a picture under another name',
        files: { ...WITH_IMAGE, 'one/art/a1.png': '' },
        gives: {
          at: 'one/cards/base/a1.md:6:16',
          covers: 'art/a1.svg',
          message: 'there is no file art/a1.svg in the folder of the set',
          found: 'art/a1.svg',
          expected: '`art/a1.png`',
          fix: 'art/a1.png',
        },
      },
    ],
  },
};

function missingArt(set: CardSet, card: Card, faulty: ReadonlySet<string>): Remark[] {
  const file = card.front.image?.file;
  if (file === undefined || set.art.has(file) || !isInside(file)) return [];
  if (faulty.has(`${set.id}/${file}`)) return [];
  const near = nearest(file, set.art);
  return [
    {
      ...ofCard(card),
      spot: spotOf(card.source, ['image', 'file']),
      message: `there is no file ${file} in the folder of the set`,
      found: file,
      expected: near === null ? 'a file below art/' : `\`${near}\``,
      ...(near === null ? {} : { fix: near }),
    },
  ];
}
