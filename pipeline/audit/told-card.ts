import type { Card } from '../model/index.js';
import {
  byParts,
  decides,
  held,
  never,
  open,
  remark,
  remarks,
  tell,
  wordless,
  type Told,
  type Words,
} from './told.js';

type Front = Card['front'];
type Of<K extends keyof Front> = NonNullable<Front[K]>;
type Each<K extends 'signers' | 'credits' | 'sources'> = Of<K>[number];

export const IMAGE = {
  file: wordless,
  alt: held,
  ref: remark,
  depicts: byParts, // names, and searched as names
} satisfies Told<Of<'image'>>;

/** A signer who has not signed is never shown. */
const signer = ({ name, as, state }: Each<'signers'>): Words[] => {
  const words = as === undefined ? [name] : [name, as];
  const signed = state === 'signed' || state === 'redemption';
  return words.flatMap(signed ? held : never);
};

export const SIGNER = {
  name: held,
  as: held,
  state: decides,
} satisfies Told<Each<'signers'>>;

export const CREDIT = { role: held, name: held } satisfies Told<Each<'credits'>>;

export const SOURCE = { doc: wordless, ref: remark, for: wordless } satisfies Told<Each<'sources'>>;

export const VARIATION = {
  of: wordless,
  letter: wordless,
  tell: held,
} satisfies Told<Of<'variation'>>;

export const RELIC = {
  piece: remark,
  from: remark,
  record: remark,
} satisfies Told<Of<'relic'>>;

export const CARD = {
  format: wordless,
  number: wordless, // a code is held with its card: `codeOf`
  name: held,
  spoiler: decides,
  embargo: decides,
  ships: wordless,
  state: decides,
  publicName: open, // held only where the card leaves no trace
  holds: decides,
  image: (image) => tell(IMAGE, image).map(({ field, ...words }) => ({ ...words, part: field })),
  facts: (facts) => named(facts),
  texts: (texts) =>
    Object.entries(texts).map(([part, words]) => ({ words, when: 'held', part }) as const),
  signers: (signers) => signers.flatMap(signer),
  credits: (credits) => credits.flatMap((credit) => tell(CREDIT, credit)).map(withoutField),
  story: wordless,
  variation: (variation) => tell(VARIATION, variation).map(withoutField),
  shortPrint: wordless,
  run: wordless,
  relic: (relic) => tell(RELIC, relic).map(withoutField),
  issued: decides,
  why: remark,
  bio: byParts, // the copy, by its letters
  back: wordless,
  writer: wordless,
  sources: (sources) => sources.flatMap((source) => tell(SOURCE, source)).map(withoutField),
  checkedAgainst: wordless,
  remark,
  accepted: remarks,
} satisfies Told<Front>;

/** A fact's name tells something too. */
function named(facts: Readonly<Record<string, string>>): Words[] {
  return Object.entries(facts).flatMap(([part, words]) => [
    { words: part, when: 'held', part } as const,
    { words, when: 'held', part } as const,
  ]);
}

function withoutField({ words, when }: Words): Words {
  return { words, when };
}
