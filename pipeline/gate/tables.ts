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
  Parallel,
  PeopleFile,
  Person,
  PlanFile,
  PropertyFile,
  RosterFile,
  SalesFront,
  Secret,
  Signer,
  Source,
  Subset,
  Variation,
} from '../../schema/index.js';

/**
 * What becomes of each key of each shape. The tables are total: a key that is added to a schema
 * does not compile here until somebody decides.
 *
 * - `open`: shows wherever the thing is listed, on a placeholder too.
 * - `shown`: shows where the thing itself is shown, unless a `holds` entry holds it longer.
 * - `reviewer`: as `shown`, but only to house and persons.
 * - `decides`: is read by the gate to decide, and never shown.
 * - `house`: shows to the house alone.
 */
export type Decision = 'open' | 'shown' | 'reviewer' | 'decides' | 'house';

type Table<T> = { readonly [K in keyof T]-?: Decision };

export const CARD = {
  format: 'house',
  number: 'open',
  name: 'shown',
  spoiler: 'decides',
  embargo: 'decides',
  ships: 'house',
  state: 'house',
  publicName: 'open',
  holds: 'decides',
  image: 'shown',
  facts: 'shown',
  texts: 'shown',
  signers: 'shown',
  credits: 'shown',
  story: 'house',
  variation: 'shown',
  shortPrint: 'shown',
  run: 'shown',
  issued: 'shown',
  why: 'house',
  bio: 'shown',
  back: 'reviewer',
  writer: 'house',
  sources: 'house',
  checkedAgainst: 'house',
  remark: 'house',
  accepted: 'house',
} as const satisfies Table<CardFront>;

export const IMAGE = {
  file: 'shown',
  alt: 'shown',
  ref: 'house',
  depicts: 'house',
} as const satisfies Table<Static<typeof Image>>;

export const SIGNER = {
  name: 'shown',
  as: 'shown',
  state: 'decides',
} as const satisfies Table<Static<typeof Signer>>;

export const CREDIT = { role: 'shown', name: 'shown' } as const satisfies Table<
  Static<typeof Credit>
>;

export const VARIATION = {
  of: 'house',
  letter: 'shown',
  tell: 'shown',
} as const satisfies Table<Static<typeof Variation>>;

export const SOURCE = { doc: 'house', ref: 'house', for: 'house' } as const satisfies Table<
  Static<typeof Source>
>;

export const SUBSET = {
  id: 'open',
  title: 'open',
  group: 'open',
  numbers: 'decides',
  back: 'reviewer',
  bio: 'house',
  facts: 'house',
  order: 'house',
  coverage: 'house',
  found: 'open',
  spoiler: 'decides',
  embargo: 'decides',
  ships: 'house',
  roster: 'shown',
} as const satisfies Table<Subset>;

export const ROSTER = { format: 'house', artists: 'shown' } as const satisfies Table<RosterFile>;

export const ARTIST = {
  name: 'shown',
  state: 'decides',
  since: 'house',
  remark: 'house',
} as const satisfies Table<RosterFile['artists'][number]>;

export const PARALLEL = {
  id: 'shown',
  title: 'shown',
  of: 'shown',
  run: 'shown',
  copies: 'house',
  tell: 'shown',
  found: 'house',
  spoiler: 'decides',
  embargo: 'decides',
} as const satisfies Table<Parallel>;

export const PLAN = {
  format: 'house',
  id: 'open',
  title: 'open',
  short: 'open',
  spoiler: 'decides',
  embargo: 'decides',
  stage: 'house',
  street: 'open',
  dates: 'house',
  subsets: 'open',
  totals: 'house',
  parallels: 'open',
  accepted: 'house',
} as const satisfies Table<PlanFile>;

export const CORRECTION = {
  card: 'decides',
  at: 'shown',
  was: 'shown',
  now: 'shown',
  note: 'shown',
} as const satisfies Table<CorrectionsFile['corrections'][number]>;

export const PROPERTY = {
  format: 'house',
  id: 'house',
  title: 'open',
  zone: 'open',
  since: 'decides',
  levels: 'decides',
  embargoes: 'decides',
  cuts: 'house',
  documents: 'house',
  approvals: 'house',
  beats: 'house',
  legal: 'open',
  review: 'house',
  site: 'open',
} as const satisfies Table<PropertyFile>;

const OPENING = {
  id: 'decides',
  label: 'house',
  lift: 'decides',
  print: 'house',
  held: 'decides',
  announce: 'decides',
} as const;
export const LEVEL = OPENING satisfies Table<Static<typeof Level>>;
export const EMBARGO = OPENING satisfies Table<Static<typeof Embargo>>;

export const LEGAL = { line: 'open', depicts: 'house' } as const satisfies Table<
  NonNullable<PropertyFile['legal']>
>;

export const SITE = { shows: 'decides', look: 'open' } as const satisfies Table<
  NonNullable<PropertyFile['site']>
>;

export const CUT = {
  id: 'house',
  received: 'house',
  touches: 'house',
  names: 'house',
} as const satisfies Table<Static<typeof Cut>>;

export const DOCUMENT = {
  id: 'house',
  title: 'house',
  level: 'house',
  embargo: 'house',
  withdrawn: 'house',
} as const satisfies Table<Static<typeof Document>>;

export const BEAT = {
  at: 'house',
  says: 'house',
  level: 'house',
  embargo: 'house',
} as const satisfies Table<Static<typeof Beat>>;

export const NAMES = {
  format: 'house',
  names: 'house',
  secrets: 'house',
} as const satisfies Table<NamesFile>;

export const NAME = {
  name: 'house',
  kind: 'house',
  aliases: 'house',
  avoid: 'house',
  say: 'house',
  style: 'house',
  match: 'house',
  billing: 'house',
  level: 'house',
  embargo: 'house',
  publicName: 'house',
  except: 'house',
} as const satisfies Table<Static<typeof Name>>;

export const SECRET = {
  id: 'house',
  level: 'house',
  embargo: 'house',
  says: 'house',
  allOf: 'house',
  within: 'house',
} as const satisfies Table<Static<typeof Secret>>;

export const PEOPLE = { format: 'house', people: 'decides' } as const satisfies Table<PeopleFile>;

export const PERSON = {
  id: 'house',
  name: 'reviewer',
  role: 'house',
  clearance: 'decides',
  knows: 'decides',
  sees: 'decides',
} as const satisfies Table<Static<typeof Person>>;

export const SALES = {
  format: 'house',
  kind: 'house',
  title: 'house',
  goes: 'house',
  sent: 'house',
  spoiler: 'house',
  embargo: 'house',
  writer: 'house',
  remark: 'house',
  accepted: 'house',
} as const satisfies Table<SalesFront>;

export const BACK = {
  format: 'house',
  id: 'reviewer',
  trim: 'reviewer',
  bleed: 'reviewer',
  safe: 'reviewer',
  paper: 'reviewer',
  frontPaper: 'reviewer',
  fonts: 'reviewer',
  zones: 'reviewer',
  front: 'reviewer',
  panels: 'reviewer',
  shared: 'reviewer',
  blank: 'reviewer',
} as const satisfies Table<BackFile>;

/** All tables by the name of their shape: what the gate decides, whole. */
export const TABLES = {
  card: CARD,
  image: IMAGE,
  signer: SIGNER,
  credit: CREDIT,
  variation: VARIATION,
  source: SOURCE,
  subset: SUBSET,
  roster: ROSTER,
  artist: ARTIST,
  parallel: PARALLEL,
  plan: PLAN,
  correction: CORRECTION,
  property: PROPERTY,
  level: LEVEL,
  embargo: EMBARGO,
  legal: LEGAL,
  site: SITE,
  cut: CUT,
  document: DOCUMENT,
  beat: BEAT,
  names: NAMES,
  name: NAME,
  secret: SECRET,
  people: PEOPLE,
  person: PERSON,
  sales: SALES,
  back: BACK,
} as const;

/** The shape of the tables, with any decision in any place: for what consults them. */
export type Tables = {
  readonly [S in keyof typeof TABLES]: { readonly [K in keyof (typeof TABLES)[S]]: Decision };
};
