import { spotOf, type SourceFile, type YamlPath } from '../model/index.js';
import { faultsOf } from './faults.js';
import { isInside } from './inside.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

/** A path that leads, or could lead, out of the content folder. */
export const pathOutside: Rule = {
  id: 'path-outside',
  about: 'files',
  severity: 'error',
  why: 'A path that leads out of the folder reads what nobody meant to publish.',
  acceptable: false,
  lookRaw: (content) => faultsOf(content, 'path-outside'),
  look: (subject) => [...imagePaths(subject), ...rosterPaths(subject), ...fontPaths(subject)],
  examples: {
    passes: [
      {
        says: 'a path below the folder',
        files: {
          ...edited('one/cards/base/a1.md', [
            'story: 1/1',
            'story: 1/1\nimage: { file: art/day..night/a1.svg }',
          ]),
          'one/art/day..night/a1.svg': '<svg/>',
        },
      },
    ],
    fails: [
      {
        says: 'a picture of another set',
        files: edited('one/cards/base/a1.md', [
          'story: 1/1',
          'story: 1/1\nimage: { file: ../two/art/a1.svg }',
        ]),
        gives: {
          at: 'one/cards/base/a1.md:6:16',
          covers: '../two/art/a1.svg',
          message: 'this path leads out of its folder, or would on another machine',
          found: '../two/art/a1.svg',
          expected: 'a path with / that stays inside, such as art/c017.svg',
        },
      },
    ],
  },
};

function imagePaths({ cards }: Subject): Remark[] {
  return cards.flatMap((card) => refused(card.front.image?.file, card.source, ['image', 'file']));
}

function rosterPaths({ subsets }: Subject): Remark[] {
  return subsets.flatMap(({ set, plan, at }) =>
    refused(plan.roster, set.plan.source, ['subsets', at, 'roster']),
  );
}

function fontPaths({ content }: Subject): Remark[] {
  return [...content.layouts.values()].flatMap(({ source, value }) =>
    Object.entries(value.fonts).flatMap(([font, files]) =>
      Object.entries(files).flatMap(([face, path]) => refused(path, source, ['fonts', font, face])),
    ),
  );
}

function refused(path: string | undefined, source: SourceFile, place: YamlPath): Remark[] {
  if (path === undefined || isInside(path)) return [];
  return [
    {
      spot: spotOf(source, place),
      message: 'this path leads out of its folder, or would on another machine',
      found: path,
      expected: 'a path with / that stays inside, such as art/c017.svg',
    },
  ];
}
