import type { Files } from '../rule.js';
import { edited } from '../sample.js';

/** 20 packs of two: 10 charts, and 15 of each base card. */
const PRODUCTS = `products:
  - id: hobby
    title: Hobby
    pack: 2
    box: 2
    case: 2
    cases: 5
    contents:
      - { of: extra, odds: 2 }
`;

const END = 'style: { english: british }\n';

/** The sample with packs that add up, and some words of its plan replaced. */
export function packedWith(...changes: readonly [from: string, to: string][]): Files {
  return edited('one/plan.yaml', [END, `${END}${PRODUCTS}`], ...changes);
}
