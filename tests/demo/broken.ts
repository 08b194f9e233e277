import type { Finding } from '../../schema/index.js';
import type { FileEdit } from './edits/index.js';
import type { Stretch } from './stretch.js';

/** A copy of the demo with a mistake that somebody makes sooner or later. */
export interface Broken {
  readonly says: string;
  readonly files: Readonly<Record<string, FileEdit>>;
  /** The one finding of `check`, without its places. */
  readonly finding: Pick<Finding, 'rule' | 'severity' | 'message' | 'set' | 'card'> &
    Partial<Pick<Finding, 'found' | 'expected' | 'fix' | 'certain'>>;
  readonly at: Stretch;
  readonly related: readonly (Stretch & { readonly message: string })[];
}

const NINTH_GATE = {
  message: 'the name',
  file: 'names.yaml',
  words: '- { name: |the Ninth Gate|,',
};

/** Each is found, and each keeps everything from going out. */
export const BROKEN: readonly Broken[] = [
  {
    says: 'a sell sheet that announces another total than the plan adds up to',
    files: { 'high-water/sales/sell-sheet.md': [['[126](count:set)', '[124](count:set)']] },
    finding: {
      rule: 'promise-changed',
      severity: 'error',
      message: 'since 1 December 2026 this is a promise, and it no longer holds',
      found: '124: the total `set`',
      expected: '126, the total `set`',
      set: 'high-water',
      card: null,
    },
    at: { file: 'high-water/sales/sell-sheet.md', words: '[|124|](count:set)' },
    related: [],
  },
  {
    says: 'a total in the plan that is not that of the sell sheet, nor of the cards',
    files: { 'high-water/plan.yaml': [['is: 126', 'is: 127']] },
    finding: {
      rule: 'total',
      severity: 'error',
      message: 'the total `set` is not what its cards add up to',
      found: 'set: 127',
      expected: 'set: 126',
      fix: '126',
      set: 'high-water',
      card: null,
    },
    at: { file: 'high-water/plan.yaml', words: 'is: |127| }' },
    related: [],
  },
  {
    says: 'a puzzle of backs whose picture shows the Ninth Gate',
    files: {
      'backs/signal.yaml': [
        ['Look twice before you answer.', 'Lay nine together and see the Ninth Gate.'],
      ],
    },
    finding: {
      rule: 'leak',
      severity: 'error',
      message: '`shared.creed` names what opens later than it',
      found: 'the Ninth Gate: the Ninth Gate is held by finale until 4 June 2027, 20:00',
      expected: 'nothing that opens later than open',
      set: null,
      card: null,
    },
    at: { file: 'backs/signal.yaml', words: 'together and see |the Ninth Gate|.' },
    related: [NINTH_GATE],
  },
  {
    says: 'a panorama, one of four that make a picture together, with the Ninth Gate in it',
    files: {
      'high-water/cards/toppers/fp01.md': [
        ['depicts: [Nine Locks]', 'depicts: [Nine Locks, the Ninth Gate]'],
      ],
    },
    finding: {
      rule: 'depicts-held',
      severity: 'error',
      message: 'the picture shows somebody or something that opens later than it',
      found: 'the Ninth Gate is held by finale until 4 June 2027, 20:00',
      expected:
        'a picture held as long, as by `holds: { image: finale }`, or nobody who opens later',
      set: 'high-water',
      card: 'toppers/fp01',
    },
    at: { file: 'high-water/cards/toppers/fp01.md', words: '[Nine Locks, |the Ninth Gate|]' },
    related: [NINTH_GATE],
  },
  {
    says: 'a card of the first set that tells what the second holds',
    files: {
      'depth-charts/cards/depths/d034.md': [
        ['you are not to ask what it’s tied to', 'it is tied to the Eighth Gate'],
      ],
    },
    finding: {
      rule: 'leak',
      severity: 'error',
      message: 'the bio names what opens later than it',
      found: 'the Eighth Gate: the Eighth Gate is held by premiere until 16 April 2027, 20:00',
      expected: 'nothing that opens later than open',
      set: 'depth-charts',
      card: 'depths/d034',
    },
    at: { file: 'depth-charts/cards/depths/d034.md', words: 'tied to |the Eighth Gate|.' },
    related: [{ message: 'the name', file: 'names.yaml', words: '- { name: |the Eighth Gate|,' }],
  },
  {
    says: 'a background name that is spelt in two ways',
    files: { 'high-water/cards/crew/c039.md': [['says Verity Snipe,', 'says Verity Snype,']] },
    finding: {
      rule: 'name-near',
      severity: 'error',
      message: 'the bio has words that are nearly a name: letters are wrong',
      found: 'Verity Snype',
      expected: '`Verity Snipe`',
      fix: 'Verity Snipe',
      certain: true,
      set: 'high-water',
      card: 'crew/c039',
    },
    at: { file: 'high-water/cards/crew/c039.md', words: 'says |Verity Snype|,' },
    related: [{ message: 'the name', file: 'names.yaml', words: '- { name: |Verity Snipe|,' }],
  },
  {
    says: 'a code that spells the signer who has not signed',
    files: {
      'high-water/plan.yaml': [['SG-11, SG-12]', 'SG-11, SG-BQ]']],
      'high-water/cards/signatures/au03.md': [['number: "SG-12"', 'number: "SG-BQ"']],
    },
    finding: {
      rule: 'number-tells',
      severity: 'error',
      message: 'this number is made of a name that opens later than it shows',
      found: 'BQ: Barnaby Quent is held by second-signers, which has no date',
      expected: 'numbers that stand for nobody who is held',
      set: 'high-water',
      card: 'signatures/au03',
    },
    at: { file: 'high-water/cards/signatures/au03.md', words: 'number: |"SG-BQ"|' },
    related: [{ message: 'the name', file: 'names.yaml', words: '- { name: |Barnaby Quent|,' }],
  },
];

/** A change after the approval, and the words that `publish` says of it. */
export interface Late {
  readonly says: string;
  readonly files: Readonly<Record<string, FileEdit>>;
  readonly card: string;
  readonly changed: string;
}

/** Of cards that show on the day on which the second set is in shops. */
export const LATE: readonly Late[] = [
  {
    says: 'a title that was changed after the copy was approved',
    files: {
      'depth-charts/cards/depths/d004.md': [
        ['name: A House Becomes a Boat', 'name: A House Becomes a Ferry'],
      ],
    },
    card: 'depth-charts/depths/d004',
    changed: 'name: A House Becomes a [-Boat-]{+Ferry+}',
  },
  {
    says: 'a late typo fix on release day',
    files: {
      'high-water/cards/crew/c006.md': [['sorted by how they feel', 'sorted by the way they feel']],
    },
    card: 'high-water/crew/c006',
    changed: 'sorted by [-how-]{+the+} {+way +}they feel',
  },
];
