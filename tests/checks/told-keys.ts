import type { Static } from 'typebox';

import type {
  BackFile,
  Beat,
  CardFront,
  CorrectionsFile,
  Credit,
  Cut,
  Document,
  Embargo,
  Image,
  Level,
  Name,
  NamesFile,
  ParallelShape,
  ProductShape,
  Person,
  PlanFile,
  PropertyFile,
  Relic,
  RosterFile,
  SalesFront,
  Secret,
  Signer,
  Source,
  Subset,
  Variation,
  Where,
} from '../../schema/index.js';

/**
 * Which rule tells of a held name that somebody writes into a key. The tables are total: a key that
 * is added to a schema does not compile here until somebody decides.
 *
 * - a rule: the key is read outside, and that rule tells of it.
 * - `house`: free text that never leaves.
 * - `none`: no free text: an instant, a figure, a choice, or an id of something else.
 * - `parts`: other shapes, which have tables of their own.
 */
export type Teller =
  'leak' | 'name-held' | 'depicts-held' | 'id-tells' | 'number-tells' | 'house' | 'none' | 'parts';

type Table<T> = { readonly [K in keyof T]-?: Teller };
type Part<T, K extends keyof T> = NonNullable<T[K]>;

const CARD = {
  format: 'none',
  number: 'number-tells',
  name: 'name-held',
  spoiler: 'none',
  embargo: 'none',
  ships: 'none',
  state: 'none',
  publicName: 'leak',
  holds: 'none',
  image: 'parts',
  facts: 'leak',
  texts: 'leak',
  signers: 'parts',
  credits: 'parts',
  story: 'none',
  variation: 'parts',
  shortPrint: 'none',
  run: 'none',
  relic: 'parts',
  issued: 'none',
  why: 'house',
  bio: 'leak',
  back: 'none',
  writer: 'none',
  sources: 'parts',
  checkedAgainst: 'none',
  remark: 'house',
  accepted: 'house',
} as const satisfies Table<CardFront>;

const IMAGE = {
  file: 'id-tells',
  alt: 'leak',
  ref: 'house',
  depicts: 'depicts-held',
} as const satisfies Table<Static<typeof Image>>;

const SIGNER = { name: 'leak', as: 'leak', state: 'none' } as const satisfies Table<
  Static<typeof Signer>
>;
const CREDIT = { role: 'leak', name: 'leak' } as const satisfies Table<Static<typeof Credit>>;
const VARIATION = { of: 'none', letter: 'none', tell: 'leak' } as const satisfies Table<
  Static<typeof Variation>
>;
const SOURCE = { doc: 'none', ref: 'house', for: 'house' } as const satisfies Table<
  Static<typeof Source>
>;

const RELIC = { piece: 'house', from: 'house', record: 'house' } as const satisfies Table<
  Static<typeof Relic>
>;

const SUBSET = {
  id: 'id-tells',
  title: 'leak',
  group: 'id-tells',
  numbers: 'number-tells',
  back: 'none',
  bio: 'none',
  // Read outside with each fact of a card, where `leak` tells of it.
  facts: 'house',
  order: 'none',
  coverage: 'none',
  found: 'none',
  spoiler: 'none',
  embargo: 'none',
  ships: 'none',
  roster: 'id-tells',
  carries: 'none',
  statement: 'leak',
  copies: 'none',
  places: 'none',
  reserve: 'none',
  sheet: 'none',
} as const satisfies Table<Subset>;

type Total = Exclude<Part<PlanFile, 'totals'>[string], number>;
const TOTAL = { title: 'leak', of: 'none', is: 'none' } as const satisfies Table<Total>;

const PARALLEL = {
  id: 'id-tells',
  title: 'leak',
  of: 'none',
  run: 'none',
  copies: 'none',
  tell: 'leak',
  found: 'none',
  places: 'none',
  reserve: 'none',
  spoiler: 'none',
  embargo: 'none',
} as const satisfies Table<Static<typeof ParallelShape>>;

const PRODUCT = {
  id: 'id-tells',
  title: 'leak',
  pack: 'none',
  box: 'none',
  case: 'none',
  cases: 'none',
  collation: 'none',
  contents: 'none',
  guarantees: 'none',
  decoys: 'none',
  spoiler: 'none',
  embargo: 'none',
} as const satisfies Table<Static<typeof ProductShape>>;

type MergeShape = Part<PlanFile, 'merge'>;
const MERGE = { columns: 'parts', paragraph: 'house' } as const satisfies Table<MergeShape>;
const COLUMN = { column: 'house', from: 'none' } as const satisfies Table<
  MergeShape['columns'][number]
>;

const PLAN = {
  format: 'none',
  id: 'id-tells',
  title: 'leak',
  short: 'leak',
  spoiler: 'none',
  embargo: 'none',
  stage: 'none',
  street: 'none',
  dates: 'none',
  subsets: 'parts',
  totals: 'id-tells',
  parallels: 'parts',
  products: 'parts',
  redemptions: 'none',
  merge: 'parts',
  readingAge: 'none',
  style: 'none',
  accepted: 'house',
} as const satisfies Table<PlanFile>;

const PROPERTY = {
  format: 'none',
  id: 'house',
  title: 'leak',
  zone: 'none',
  since: 'none',
  levels: 'parts',
  embargoes: 'parts',
  cuts: 'parts',
  documents: 'parts',
  approvals: 'parts',
  beats: 'parts',
  legal: 'parts',
  review: 'none',
  site: 'parts',
} as const satisfies Table<PropertyFile>;

const SITE = {
  shows: 'none',
  title: 'leak',
  address: 'leak',
  dataTerms: 'leak',
  look: 'none',
} as const satisfies Table<Part<PropertyFile, 'site'>>;

const OPENING = { id: 'id-tells', label: 'leak', lift: 'none', print: 'none' } as const;
const HELD = { held: 'none', announce: 'none' } as const;
const LEVEL = { ...OPENING, ...HELD } as const satisfies Table<Static<typeof Level>>;
const EMBARGO = { ...OPENING, ...HELD } as const satisfies Table<Static<typeof Embargo>>;
const LEGAL = { line: 'leak', depicts: 'parts' } as const satisfies Table<
  Part<PropertyFile, 'legal'>
>;
const OWED = { name: 'house', line: 'leak' } as const satisfies Table<
  Part<Part<PropertyFile, 'legal'>, 'depicts'>[number]
>;
const CUT = {
  id: 'house',
  received: 'none',
  touches: 'none',
  names: 'house',
} as const satisfies Table<Static<typeof Cut>>;
const DOCUMENT = {
  id: 'house',
  title: 'house',
  level: 'none',
  embargo: 'none',
  withdrawn: 'none',
} as const satisfies Table<Static<typeof Document>>;
const BEAT = { at: 'none', says: 'house', level: 'none', embargo: 'none' } as const satisfies Table<
  Static<typeof Beat>
>;
const WHERE = { depicts: 'house', subset: 'none', group: 'none' } as const satisfies Table<
  Static<typeof Where>
>;

const NAMES = {
  format: 'none',
  names: 'parts',
  secrets: 'parts',
  words: 'house',
  performers: 'none',
} as const satisfies Table<NamesFile>;
const NAME = {
  name: 'house',
  kind: 'none',
  aliases: 'house',
  avoid: 'house',
  say: 'house',
  style: 'none',
  match: 'none',
  billing: 'none',
  level: 'none',
  embargo: 'none',
  publicName: 'leak',
  except: 'house',
} as const satisfies Table<Static<typeof Name>>;
const SECRET = {
  id: 'house',
  level: 'none',
  embargo: 'none',
  says: 'house',
  allOf: 'house',
  within: 'none',
} as const satisfies Table<Static<typeof Secret>>;

const PERSON = {
  id: 'house',
  name: 'house',
  role: 'none',
  clearance: 'none',
  knows: 'none',
  sees: 'parts',
} as const satisfies Table<Static<typeof Person>>;

const ARTIST = {
  name: 'leak',
  state: 'none',
  since: 'none',
  remark: 'house',
} as const satisfies Table<RosterFile['artists'][number]>;

const CORRECTION = {
  card: 'none',
  at: 'none',
  was: 'leak',
  now: 'leak',
  note: 'leak',
} as const satisfies Table<CorrectionsFile['corrections'][number]>;

const SALES = {
  format: 'none',
  kind: 'none',
  title: 'leak',
  goes: 'none',
  sent: 'none',
  spoiler: 'none',
  embargo: 'none',
  writer: 'none',
  remark: 'house',
  accepted: 'house',
} as const satisfies Table<SalesFront>;

const BACK = {
  format: 'none',
  id: 'id-tells',
  trim: 'none',
  bleed: 'none',
  safe: 'none',
  paper: 'none',
  frontPaper: 'none',
  fonts: 'none',
  zones: 'none',
  front: 'none',
  panels: 'none',
  shared: 'leak',
  blank: 'none',
} as const satisfies Table<BackFile>;

/** All tables by the name of their shape. */
export const TELLERS: Readonly<Record<string, Readonly<Record<string, Teller>>>> = {
  card: CARD,
  image: IMAGE,
  signer: SIGNER,
  credit: CREDIT,
  variation: VARIATION,
  source: SOURCE,
  relic: RELIC,
  subset: SUBSET,
  total: TOTAL,
  parallel: PARALLEL,
  product: PRODUCT,
  merge: MERGE,
  column: COLUMN,
  plan: PLAN,
  property: PROPERTY,
  level: LEVEL,
  embargo: EMBARGO,
  site: SITE,
  legal: LEGAL,
  owed: OWED,
  cut: CUT,
  document: DOCUMENT,
  beat: BEAT,
  where: WHERE,
  names: NAMES,
  name: NAME,
  secret: SECRET,
  person: PERSON,
  artist: ARTIST,
  correction: CORRECTION,
  sales: SALES,
  back: BACK,
};
