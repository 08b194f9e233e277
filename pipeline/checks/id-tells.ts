import { OPEN } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { heldBy, namePlaces, surelyTold } from './told/early.js';
import { outwardIds } from './told/ids.js';
import { castIndex } from './told/scan.js';

const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, aliases: [Ysolde], level: later }
  - { name: Ash, kind: character, level: later, match: exact }
`;

const CARD = `---
number: X-2
name: A Voice
spoiler: later
---
Ink, and a shadow of the lake.
`;

const TWO = edited(
  'one/plan.yaml',
  ['prefix: X-, from: 1, to: 1', 'prefix: X-, from: 1, to: 2'],
  ['inserts: 1, all: { title: Everything, of: [base, inserts], is: 3 }', 'inserts: 2'],
);

/** A file name, or another id that files and addresses show, that names what is held. */
export const idTells: Rule = {
  id: 'id-tells',
  about: 'files',
  severity: 'error',
  why: 'File names stand in lists, logs and addresses, where no hold covers them.',
  look: tellingIds,
  examples: {
    passes: [
      {
        says: 'a file name that tells nothing',
        files: { 'names.yaml': NAMES, ...TWO, 'one/cards/extra/b2.md': CARD },
      },
      {
        says: 'a name that is a common word in small letters',
        files: { 'names.yaml': NAMES, ...TWO, 'one/cards/extra/ash.md': CARD },
      },
    ],
    fails: [
      {
        says: 'a card that is held itself, but not its file name',
        files: { 'names.yaml': NAMES, ...TWO, 'one/cards/extra/ysolde-2.md': CARD },
        gives: {
          at: 'one/cards/extra/ysolde-2.md:1:1',
          covers: '',
          message: 'the file name of this card tells what is held',
          found: 'ysolde-2: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'a name that tells nothing, such as x012',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'the id of a total, its words run together',
        files: {
          'names.yaml': NAMES,
          ...edited('one/plan.yaml', ['all: {', 'ysoldemarrack: {']),
        },
        gives: {
          at: 'one/plan.yaml:9:32',
          covers: 'ysoldemarrack',
          message: 'the id of this total tells what is held',
          found: 'ysoldemarrack: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'a name that tells nothing, such as x012',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* tellingIds(subject: Subject): Generator<Remark> {
  const index = castIndex(subject);
  const places = namePlaces(subject);
  for (const id of outwardIds(subject)) {
    const bearer = surelyTold(index.find(id.text), id);
    if (!bearer?.hold) continue;
    yield {
      ...id.owner,
      spot: id.spotOf(0, id.text.length),
      message: `${id.what} tells what is held`,
      found: `${id.text}: ${bearer.name} is held by ${heldBy(bearer.hold, OPEN, subject)}`,
      expected: 'a name that tells nothing, such as x012',
      related: places(bearer),
    };
  }
}
