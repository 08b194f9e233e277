import type { Static } from 'typebox';

import type {
  BackFile,
  CardFront,
  CorrectionsFile,
  Credit,
  Embargo,
  Image,
  Level,
  Name,
  NamesFile,
  Person,
  PlanFile,
  PropertyFile,
  RosterFile,
  Signer,
  Subset,
  Variation,
} from '../../schema/index.js';
import type { Decision, Table } from './decision.js';
import { CONTENT, PARALLEL, PRODUCT } from './tables-sold.js';
import { BEAT, CUT, DOCUMENT, PEOPLE, SALES, SECRET, SOURCE } from './tables-unseen.js';

export const CARD = {
  format: 'never',
  number: 'open',
  name: 'shown',
  spoiler: 'decides',
  embargo: 'decides',
  ships: 'reviewer',
  state: 'house',
  publicName: 'open',
  holds: 'decides',
  image: 'shown',
  facts: 'shown',
  texts: 'shown',
  signers: 'shown',
  credits: 'shown',
  story: 'never',
  variation: 'shown',
  shortPrint: 'shown',
  run: 'shown',
  relic: 'never',
  issued: 'shown',
  why: 'house',
  bio: 'shown',
  back: 'reviewer',
  writer: 'house',
  sources: 'reviewer',
  checkedAgainst: 'never',
  remark: 'house',
  accepted: 'never',
} as const satisfies Table<CardFront>;

export const IMAGE = {
  file: 'shown',
  alt: 'shown',
  ref: 'reviewer',
  depicts: 'reviewer',
} as const satisfies Table<Static<typeof Image>>;

export const SIGNER = {
  name: 'shown',
  as: 'shown',
  state: 'shown',
} as const satisfies Table<Static<typeof Signer>>;

export const CREDIT = { role: 'shown', name: 'shown' } as const satisfies Table<
  Static<typeof Credit>
>;

export const VARIATION = {
  of: 'never',
  letter: 'shown',
  tell: 'shown',
} as const satisfies Table<Static<typeof Variation>>;

export const SUBSET = {
  id: 'open',
  title: 'open',
  group: 'open',
  numbers: 'decides',
  back: 'reviewer',
  bio: 'reviewer',
  facts: 'never',
  order: 'never',
  coverage: 'never',
  found: 'open',
  spoiler: 'decides',
  embargo: 'decides',
  ships: 'reviewer',
  roster: 'shown',
  carries: 'never',
  statement: 'reviewer',
  copies: 'never',
  places: 'never',
  reserve: 'never',
  sheet: 'never',
} as const satisfies Table<Subset>;

export const ROSTER = { format: 'never', artists: 'shown' } as const satisfies Table<RosterFile>;

export const ARTIST = {
  name: 'shown',
  state: 'decides',
  since: 'never',
  remark: 'never',
} as const satisfies Table<RosterFile['artists'][number]>;

export const PLAN = {
  format: 'never',
  id: 'open',
  title: 'open',
  short: 'open',
  spoiler: 'decides',
  embargo: 'decides',
  stage: 'never',
  street: 'open',
  dates: 'never',
  subsets: 'open',
  totals: 'never',
  parallels: 'open',
  products: 'open',
  redemptions: 'never',
  merge: 'house',
  readingAge: 'never',
  style: 'never',
  accepted: 'never',
} as const satisfies Table<PlanFile>;

export const CORRECTION = {
  card: 'decides',
  at: 'shown',
  was: 'shown',
  now: 'shown',
  note: 'shown',
} as const satisfies Table<CorrectionsFile['corrections'][number]>;

export const PROPERTY = {
  format: 'never',
  id: 'never',
  title: 'open',
  zone: 'open',
  since: 'decides',
  levels: 'decides',
  embargoes: 'decides',
  cuts: 'never',
  documents: 'decides',
  approvals: 'never',
  beats: 'never',
  legal: 'open',
  review: 'never',
  site: 'open',
} as const satisfies Table<PropertyFile>;

/**
 * A lift shows only as an announced opening, as the day of a reveal, as a step of time, and to
 * reviewers as when something opens that they are shown. The label of a level shows from its lift.
 */
const OPENING = {
  id: 'house',
  lift: 'decides',
  print: 'never',
  held: 'decides',
  announce: 'decides',
} as const;
export const LEVEL = { ...OPENING, label: 'shown' } as const satisfies Table<Static<typeof Level>>;
export const EMBARGO = { ...OPENING, label: 'reviewer' } as const satisfies Table<
  Static<typeof Embargo>
>;

export const LEGAL = { line: 'open', depicts: 'reviewer' } as const satisfies Table<
  NonNullable<PropertyFile['legal']>
>;

export const SITE = {
  shows: 'open',
  title: 'open',
  address: 'open',
  dataTerms: 'open',
  look: 'open',
} as const satisfies Table<NonNullable<PropertyFile['site']>>;

type Look = NonNullable<NonNullable<PropertyFile['site']>['look']>;
export const LOOK = {
  accent: 'open',
  paper: 'open',
  ink: 'open',
  type: 'open',
} as const satisfies Table<Look>;

export const NAMES = {
  format: 'never',
  names: 'open',
  secrets: 'never',
  words: 'never',
  performers: 'never',
} as const satisfies Table<NamesFile>;

export const NAME = {
  name: 'shown',
  kind: 'never',
  aliases: 'shown',
  avoid: 'reviewer',
  say: 'shown',
  style: 'never',
  match: 'never',
  billing: 'never',
  level: 'decides',
  embargo: 'decides',
  publicName: 'never',
  except: 'never',
} as const satisfies Table<Static<typeof Name>>;

export const PERSON = {
  id: 'never',
  name: 'reviewer',
  role: 'never',
  clearance: 'decides',
  knows: 'decides',
  sees: 'decides',
} as const satisfies Table<Static<typeof Person>>;

export const BACK = {
  format: 'never',
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
  product: PRODUCT,
  content: CONTENT,
  plan: PLAN,
  correction: CORRECTION,
  property: PROPERTY,
  level: LEVEL,
  embargo: EMBARGO,
  legal: LEGAL,
  site: SITE,
  look: LOOK,
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
