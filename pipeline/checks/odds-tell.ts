import { NEVER, stepsUntil, type CardSet } from '../model/index.js';
import { agree, fits, type Made } from './packed/odds-tell-fit.js';
import { unseenOf } from './packed/odds-tell-held.js';
import { oddsTellRemark } from './packed/odds-tell-say.js';
import { seenKinds } from './packed/odds-tell-seen.js';
import { packedOf, type Packed } from './packed/plan.js';
import { packedWith } from './packed/sample.js';
import type { Files, Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/** The sample with packs, and with a numbered parallel of both subsets, one of which leaves no trace. */
function goldWith(odds: string, ...changes: readonly [from: string, to: string][]): Files {
  return packedWith(
    ['group: inserts,', 'group: inserts, spoiler: last,'],
    ['totals:', 'parallels: [{ id: gold, title: Gold, of: [base, extra], run: 2 }]\ntotals:'],
    [
      '{ of: extra, odds: 2 }\n',
      `{ of: extra, odds: 2 }\n      - { of: gold, all: run, ${odds} }\n`,
    ],
    ...changes,
  );
}

/** The sample with packs, and with a numbered parallel of which another product holds half. */
function splitWith(...changes: readonly [from: string, to: string][]): Files {
  return packedWith(
    ['totals:', 'parallels: [{ id: gold, title: Gold, of: [base], run: 6 }]\ntotals:'],
    [
      '{ of: extra, odds: 2 }\n',
      `{ of: extra, odds: 2 }
      - { of: gold, copies: 4, odds: 5 }
  - id: retail
    title: Retail
    pack: 2
    box: 2
    case: 2
    cases: 2
    embargo: [guest]
    contents:
      - { of: gold, copies: 8, odds: 1 }
`,
    ],
    ...changes,
  );
}

/** Public odds and runs of which a reader can work out that something is held. */
export const oddsTell: Rule = {
  id: 'odds-tell',
  about: 'packs',
  severity: 'error',
  why: 'Who divides packs by odds knows how many cards there are, listed or not.',
  look: tellingOdds,
  examples: {
    passes: [
      {
        says: 'a parallel that is held with what it is of',
        files: goldWith('odds: 4', ['run: 2 }', 'run: 2, spoiler: last }']),
      },
      { says: 'odds so round that they tell nothing', files: goldWith('odds: 5') },
      {
        says: 'a run that only open products share',
        files: splitWith(['    embargo: [guest]\n', '']),
      },
    ],
    fails: [
      {
        says: 'a numbered parallel over a subset that leaves no trace',
        files: goldWith('odds: 4'),
        gives: {
          at: 'one/plan.yaml:21:37',
          covers: '4',
          message:
            '`Hobby`: 1:4 packs for Gold tell that something is held: 2 cards are listed, and a run of 2 at these odds is of 3',
          found: '1:4, while Extra is held by last until 4 June 2027, 20:00',
          expected: '`spoiler: last` on `gold` too, or 1:5 packs',
          related: ['one/plan.yaml:8:11 what is held'],
        },
      },
      {
        says: 'a run of which a held product has half',
        files: splitWith(),
        gives: {
          at: 'one/plan.yaml:21:38',
          covers: '5',
          message:
            '`Hobby`: 1:5 packs for Gold tell that something is held: 2 cards are listed, and a run of 6 at these odds is of 1',
          found: '1:5, while Retail is held by guest, which has no date',
          expected: '`embargo: [guest]` on `gold` too',
          related: ['one/plan.yaml:22:9 what is held'],
        },
      },
    ],
  },
};

/** After every lift that has a date. */
const LAST = Number.MAX_SAFE_INTEGER;

function* tellingOdds(subject: Subject): Generator<Remark> {
  if (subject.doubtful.size > 0) return;
  for (const set of subject.sets) {
    const packed = packedOf(set);
    if (packed !== null && packed.gaps.length === 0) yield* tellingIn(set, packed, subject);
  }
}

/** Each kind once, when it first tells; odds that are wrong when all is seen are told by another rule. */
function* tellingIn(set: CardSet, packed: Packed, subject: Subject): Generator<Remark> {
  const products = packed.plan.products.filter(isMade);
  const seenAt = seenKinds(set, packed, subject);
  const sound = new Set(
    seenAt(NEVER)
      .filter((kind) => fits(kind, products))
      .map(({ id }) => id),
  );
  const told = new Set<string>();
  for (const at of stepsUntil(subject.property, [set], LAST)) {
    const seen = seenAt(at).filter(({ id }) => sound.has(id));
    const others = seen.filter((kind) => !told.has(kind.id) && !fits(kind, products));
    if (others.length === 0 || agree(seen, products)) continue;
    for (const kind of others) {
      told.add(kind.id);
      const unseen = unseenOf(kind.id, at, set, packed, subject);
      const remark = oddsTellRemark(kind, unseen, products, set, subject);
      if (remark && unseen.length > 0) yield remark;
    }
  }
}

function isMade(product: Packed['plan']['products'][number]): product is Made {
  return product.cases !== 'unset';
}
