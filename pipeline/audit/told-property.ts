import type { Content } from '../model/index.js';
import { byParts, decides, held, open, remark, wordless, type Told } from './told.js';

type Value<K extends 'property' | 'names' | 'people'> = NonNullable<Content[K]>['value'];
type Property = Value<'property'>;
type Name = Value<'names'>['names'][number];
type Secret = NonNullable<Value<'names'>['secrets']>[number];
type Alias = Exclude<NonNullable<Name['aliases']>[number], string>;
type Layout =
  Content['layouts'] extends ReadonlyMap<string, { readonly value: infer L }> ? L : never;

export const PROPERTY = {
  format: wordless,
  id: wordless,
  title: open,
  zone: wordless,
  since: wordless,
  levels: byParts,
  embargoes: byParts,
  cuts: byParts,
  documents: byParts,
  approvals: wordless,
  beats: byParts,
  legal: open,
  review: wordless,
  site: open,
} satisfies Told<Property>;

/** A label is told to nobody before its lift, announced or not. */
export const LEVEL = {
  id: wordless,
  label: held,
  print: decides,
  held: decides,
  announce: decides,
  lift: decides,
} satisfies Told<Property['levels'][number]>;

export const EMBARGO = { ...LEVEL } satisfies Told<NonNullable<Property['embargoes']>[number]>;

export const CUT = {
  id: wordless,
  received: wordless,
  touches: wordless,
  names: byParts, // names, and searched as names
} satisfies Told<NonNullable<Property['cuts']>[number]>;

export const DOCUMENT = {
  id: wordless,
  title: held,
  level: decides,
  embargo: decides,
  withdrawn: wordless,
} satisfies Told<NonNullable<Property['documents']>[number]>;

export const BEAT = {
  at: wordless,
  says: held,
  level: decides,
  embargo: decides,
} satisfies Told<NonNullable<Property['beats']>[number]>;

export const NAMES = {
  format: wordless,
  names: byParts,
  secrets: byParts,
  words: wordless, // words that stand in texts, one by one
  performers: wordless,
} satisfies Told<Value<'names'>>;

export const NAME = {
  name: held,
  kind: wordless,
  aliases: (aliases) => aliases.flatMap((alias) => (typeof alias === 'string' ? held(alias) : [])),
  avoid: (forms) => forms.flatMap(({ form, why }) => [...held(form), ...remark(why ?? '')]),
  say: held,
  style: wordless,
  match: decides,
  billing: wordless,
  level: decides,
  embargo: decides,
  publicName: open,
  except: decides,
} satisfies Told<Name>;

/** A form that opens later than its name. */
export const ALIAS = { form: held, level: decides, embargo: decides } satisfies Told<Alias>;

export const SECRET = {
  id: wordless,
  level: decides,
  embargo: decides,
  says: held,
  allOf: wordless, // common words: the rule `secret` looks for them together
  within: decides,
} satisfies Told<Secret>;

/** The team is no part of the story: whom to name is said by credits and signers. */
export const PEOPLE = { format: wordless, people: byParts } satisfies Told<Value<'people'>>;
export const PERSON = {
  id: wordless,
  name: open,
  role: wordless,
  clearance: decides,
  knows: decides,
  sees: decides,
} satisfies Told<Value<'people'>['people'][number]>;

/** What a layout shares is printed on every card of it. */
export const BACK = {
  format: wordless,
  id: wordless,
  trim: wordless,
  bleed: wordless,
  safe: wordless,
  paper: wordless,
  frontPaper: wordless,
  fonts: wordless,
  zones: wordless,
  front: wordless,
  panels: wordless,
  shared: open,
  blank: wordless,
} satisfies Told<Layout>;
