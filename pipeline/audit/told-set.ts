import type { CardSet, SalesText } from '../model/index.js';
import {
  byParts,
  decides,
  held,
  never,
  open,
  remark,
  remarks,
  wordless,
  type Told,
} from './told.js';

type Plan = CardSet['plan']['value'];
type Subset = Plan['subsets'][number];
type Parallel = NonNullable<Plan['parallels']>[number];
type Product = NonNullable<Plan['products']>[number];
type Roster =
  CardSet['rosters'] extends ReadonlyMap<string, { readonly value: infer R }> ? R : never;
type Artist = Roster extends { artists: readonly (infer A)[] } ? A : never;
type Corrections = NonNullable<CardSet['corrections']>['value'];
type Sales = SalesText['front'];

export const PLAN = {
  format: wordless,
  id: wordless,
  title: held,
  short: held,
  spoiler: decides,
  embargo: decides,
  stage: wordless,
  street: wordless,
  dates: wordless,
  subsets: byParts,
  totals: wordless,
  parallels: byParts,
  products: byParts,
  redemptions: wordless,
  merge: wordless,
  readingAge: wordless,
  style: wordless,
  accepted: remarks,
} satisfies Told<Plan>;

export const SUBSET = {
  id: wordless,
  title: held,
  group: wordless,
  numbers: wordless, // codes are held with their cards
  back: wordless,
  bio: wordless,
  facts: (names) => names.flatMap(held),
  order: wordless,
  coverage: wordless,
  found: wordless,
  spoiler: decides,
  embargo: decides,
  ships: wordless,
  roster: byParts,
  carries: wordless,
  statement: held,
  copies: wordless,
  places: wordless,
  reserve: wordless,
  sheet: wordless,
} satisfies Told<Subset>;

export const PARALLEL = {
  id: wordless,
  title: held,
  of: wordless,
  run: wordless,
  copies: wordless,
  tell: held,
  found: wordless,
  places: wordless,
  reserve: wordless,
  spoiler: decides,
  embargo: decides,
} satisfies Told<Parallel>;

export const PRODUCT = {
  id: wordless,
  title: held,
  pack: wordless,
  box: wordless,
  case: wordless,
  cases: wordless,
  collation: wordless,
  contents: wordless,
  guarantees: wordless,
  decoys: wordless,
  spoiler: decides,
  embargo: decides,
} satisfies Told<Product>;

export const ROSTER = { format: wordless, artists: byParts } satisfies Told<Roster>;

/** An artist who has not signed is never shown. */
export const ARTIST = {
  name: held,
  state: decides,
  since: wordless,
  remark,
} satisfies Told<Artist>;

export const UNSIGNED_ARTIST = { ...ARTIST, name: never } satisfies Told<Artist>;

export const CORRECTIONS = {
  format: wordless,
  corrections: byParts,
} satisfies Told<Corrections>;

export const CORRECTION = {
  card: decides,
  at: wordless,
  was: held,
  now: held,
  note: held,
} satisfies Told<Corrections['corrections'][number]>;

/** Of a text that leaves the house: the words themselves are searched besides. */
export const SALES = {
  format: wordless,
  kind: open,
  title: held,
  goes: wordless,
  sent: wordless,
  spoiler: decides,
  embargo: decides,
  writer: wordless,
  remark,
  accepted: remarks,
} satisfies Told<Sales>;
