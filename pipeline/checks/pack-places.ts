import { spotOf } from '../model/index.js';
import { packedOf } from './packed/plan.js';
import { packedRemarks } from './packed/remarks.js';
import { packedWith } from './packed/sample.js';
import type { Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/** What a plan puts in packs that have no room for it, or does not say. */
export const packPlaces: Rule = {
  id: 'pack-places',
  about: 'packs',
  severity: 'error',
  why: 'A pack has so many places: what takes more cannot be packed, and nobody buys empty ones.',
  look: (subject) => [...unsaid(subject), ...packedRemarks(subject, 'pack-places')],
  examples: {
    passes: [
      { says: 'packs that are full, with base cards for the rest', files: packedWith() },
      {
        says: 'cases of which nobody knows yet how many',
        files: packedWith(['stage: locked', 'stage: planning'], ['cases: 5', 'cases: unset']),
      },
    ],
    fails: [
      {
        says: 'more cards than places',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra, copies: 41, odds: 1 }']),
        gives: {
          at: 'one/plan.yaml:19:30',
          covers: '41',
          message:
            '`Hobby`: 41 copies of Extra take 41 places, but 40 are left; all lines together take 1 too many',
          found: '41',
          expected: 'at most 40 places',
        },
      },
      {
        says: 'cases of packs of no stated size',
        files: packedWith(['    pack: 2\n', '']),
        gives: {
          at: 'one/plan.yaml:16:12',
          covers: '5',
          message: '5 cases of `hobby` are made, and nothing says how many cards a pack',
          found: 'no `pack`',
          expected: '`pack`: cards a pack',
        },
      },
      {
        says: 'a line that does not say how much',
        files: packedWith(['{ of: extra, odds: 2 }', '{ of: extra }'], ['locked', 'writing']),
        gives: {
          at: 'one/plan.yaml:19:15',
          covers: 'extra',
          message: 'nothing says how much of `extra` goes in `hobby`',
          found: 'extra',
          expected: '`copies`, `each`, `perBox`, `perCase`, `all: run` or `odds`',
        },
      },
    ],
  },
};

function unsaid({ sets }: Subject): readonly Remark[] {
  return sets.flatMap((set) =>
    (packedOf(set)?.gaps ?? []).map(({ path, ...told }) => ({
      spot: spotOf(set.plan.source, path),
      ...told,
    })),
  );
}
