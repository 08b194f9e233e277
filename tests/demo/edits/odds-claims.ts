import type { DemoEdit } from './edit.js';

const WRAPPER = 'high-water/sales/wrapper-hobby.md';
const DRIPS = '*The Ferrywrights* drips.';
const drips = (words: string): readonly [string, string] => [DRIPS, `${DRIPS} ${words}`];

/** What sales texts of the demo would say wrongly of its packs, beside the one edit of each rule. */
export const ODDS_CLAIM_EDITS: readonly DemoEdit[] = [
  {
    rule: 'odds-stated',
    says: 'a wrapper with better odds than the truth',
    files: { [WRAPPER]: [drips('Lake Charts 1:3 packs.')] },
    finding: {
      severity: 'error',
      message:
        'this text says better odds than the truth, which in `Hobby` is 14,400 copies of Lake Charts in 57,600 packs',
      found: 'Lake Charts 1:3 packs',
      expected: '1:4 packs at best',
      fix: '4',
      set: 'high-water',
      card: null,
      at: { file: WRAPPER, words: 'Lake Charts 1:|3| packs' },
    },
  },
  {
    rule: 'odds-stated',
    says: 'two hits a box',
    files: { [WRAPPER]: [drips('Two hits in every box!')] },
    finding: {
      severity: 'error',
      message:
        'this text promises more than is packed: `Hobby` has 3,800 of Signatures, Timber Relics and Sketch Cards together in 2,400 boxes',
      found: 'Two hits in every box',
      expected: '1 a box, or “on average” of what is packed',
      set: 'high-water',
      card: null,
      at: { file: WRAPPER, words: '|Two| hits in every box' },
    },
  },
];
