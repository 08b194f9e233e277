import { faultsOf } from './faults.js';
import type { Content } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';

/** A card file in no folder of a subset, or with a name that is no id. */
export const misplacedCard: Rule = {
  id: 'misplaced-card',
  about: 'files',
  severity: 'error',
  why: 'A card is what its file name and folder say; in another place it is no card of the set.',
  acceptable: false,
  lookRaw: onceForEachFolder,
  examples: {
    passes: [{ says: 'cards in the folders of their subsets', files: {} }],
    fails: [
      {
        says: 'a folder that the plan does not know',
        files: {
          'one/cards/extras/b2.md': '---\nnumber: X-2\nname: Ink\nspoiler: open\n---\nInk.\n',
        },
        gives: {
          at: 'one/cards/extras/b2.md:1:1',
          covers: '',
          message: 'this folder is no subset of the plan',
          found: 'one/cards/extras/b2.md',
          expected: 'one of base, extra',
        },
      },
      {
        says: 'a subset renamed in the plan alone: told once',
        files: edited(
          'one/plan.yaml',
          ['id: base', 'id: basic'],
          ['of: [base,', 'of: [basic,'],
          ['totals: { base', 'totals: { basic'],
        ),
        gives: {
          at: 'one/cards/base/a1.md:1:1',
          covers: '',
          message: 'this folder is no subset of the plan',
          found: 'one/cards/base/a1.md',
          expected: 'one of basic, extra',
          related: ['one/cards/base/a2.md:1:1 in the same folder'],
        },
      },
      {
        says: 'a file name with a capital letter',
        files: {
          'one/cards/extra/B2.md': '---\nnumber: X-2\nname: Ink\nspoiler: open\n---\nInk.\n',
        },
        gives: {
          at: 'one/cards/extra/B2.md:1:1',
          covers: '',
          message: 'this is no place for a card',
          found: 'one/cards/extra/B2.md',
          expected: 'cards/<subset>/<id>.md, the id of small letters, digits and hyphens',
        },
      },
    ],
  },
};

/** Cards of one folder that is no subset are told together: the folder, or the plan, is wrong. */
function onceForEachFolder(content: Content): Remark[] {
  const folders = new Map<string, Remark[]>();
  for (const remark of faultsOf(content, 'misplaced-card')) {
    const { file } = remark.spot.source;
    const folder = isSubset(content, file) ? file : file.slice(0, file.lastIndexOf('/'));
    folders.set(folder, [...(folders.get(folder) ?? []), remark]);
  }
  return [...folders.values()].flatMap(([first, ...others]) => {
    if (!first) return [];
    const related = others.map(({ spot }) => ({ message: 'in the same folder', spot }));
    return [related.length === 0 ? first : { ...first, related }];
  });
}

/** Whether the folder of a card is a subset, so that its own name must be what is wrong. */
function isSubset({ sets }: Content, file: string): boolean {
  const [id, , folder] = file.split('/');
  const set = sets.find((candidate) => candidate.id === id);
  return set?.plan.value.subsets.some((subset) => subset.id === folder) ?? false;
}
