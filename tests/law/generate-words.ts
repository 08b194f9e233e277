import fc from 'fast-check';

import { writeInstant } from '../../pipeline/model/index.js';

export const ZONE = 'Europe/London';
export const START = Date.UTC(2027, 0, 1, 9);
export const DAY = 86_400_000;

/** Levels and embargoes by what they do while they are held. */
export const HOLDS = ['shops', 'spring', 'finale', 'fair', 'undated', 'vanished', 'quiet'] as const;

export function instantText(day: number): string {
  return writeInstant(START + day * DAY, ZONE);
}

const NOUNS = ['Heron', 'Lamp', 'Lock', 'Quay', 'Orchard', 'Bell', 'Raft', 'Chart', 'Oar', 'Sill'];
const FIRSTS = [
  'Odalys',
  'Emeric',
  'Tamsin',
  'Pell',
  'Quillon',
  'Dorrit',
  'Dace',
  'Ysolde',
  'Tern',
];
export const ACTORS = ['Ines Albarran', 'Tove Lindqvist', 'Orrin Vetchley'];

export const word = fc
  .tuple(fc.constantFrom(...NOUNS), fc.nat(99))
  .map(([noun, n]) => `${noun}${n === 0 ? '' : ` ${n}`}`);
export const name = fc
  .tuple(fc.constantFrom(...FIRSTS), fc.constantFrom(...NOUNS), fc.nat(9))
  .map(([first, last, n]) => `${first} ${last}${n === 0 ? '' : ` ${n}`}`);
export const phrase = fc
  .array(word, { minLength: 1, maxLength: 3 })
  .map((words) => words.join(' and '));
export const day = fc.integer({ min: -10, max: 300 });
export const instant = day.map(instantText);

export const sometimes = <T>(arb: fc.Arbitrary<T>, weight = 1): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: 3, arbitrary: fc.constant(undefined) }, { weight, arbitrary: arb });

/** Where a key may be undefined, a key that may be left out. */
type Present<T> = { [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>;
};

/** Leaves out keys that are undefined, so that what is optional is absent. */
export function present<T extends object>(value: T): Present<T> {
  return Object.fromEntries(
    Object.entries(value).filter(([, part]) => part !== undefined),
  ) as Present<T>;
}

export const holdId = fc.constantFrom(...HOLDS);
export const level = fc.oneof(
  { weight: 5, arbitrary: fc.constant('open') },
  { weight: 2, arbitrary: fc.constantFrom('shops', 'spring') },
  { weight: 1, arbitrary: fc.constant('finale') },
);
export const embargo: fc.Arbitrary<string[] | undefined> = fc.oneof(
  { weight: 8, arbitrary: fc.constant(undefined) },
  { weight: 1, arbitrary: fc.constant<string[]>([]) },
  {
    weight: 2,
    arbitrary: fc.constantFrom<string[][]>(['fair'], ['undated'], ['vanished'], ['quiet']),
  },
  { weight: 1, arbitrary: fc.constantFrom<string[][]>(['quiet', 'fair'], ['nobody-knows']) },
);
