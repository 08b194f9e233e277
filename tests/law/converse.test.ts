import { describe, expect, test } from 'vitest';

import type { Static } from 'typebox';

import type { Person as PersonShape } from '../../schema/index.js';
import type {
  ReviewNotes,
  View,
  ViewAvoided,
  ViewCard,
  ViewCorrection,
  ViewImage,
  ViewName,
  ViewOpening,
  ViewFact,
  ViewParallel,
  ViewOdds,
  ViewProduct,
  ViewProperty,
  ViewSales,
  ViewSet,
  ViewSigner,
  ViewSite,
  ViewSource,
  ViewSubset,
  ViewText,
  ViewWords,
} from '../../pipeline/gate/index.js';
import { view } from '../../pipeline/gate/index.js';
import { draftOf } from './edit.js';
import { example } from './example.js';
import { START, DAY, instantText } from './generate-words.js';
import { releasedOf } from './outputs.js';
import type { Plain, PlainCard, PlainSet } from './plain.js';

type Person = Static<typeof PersonShape>;

/** An edit that everybody may notice. */
type Edit = (plain: Plain) => unknown;

/** For each field a visible edit: a field that is added without one does not compile. */
type Converse<T, Unseen extends keyof T = never> = {
  readonly [K in Exclude<keyof T, Unseen | symbol>]: Edit;
};

const AVOIDED = { form: 'Miss Thrane', use: 'Odalys' };

/** The example, with what only reviewers see. */
function reviewed(): Plain {
  const plain = example();
  for (const name of plain.names.names.slice(0, 1)) name.avoid = [AVOIDED];
  plain.property.documents = [{ id: 'diary', title: 'Workshop diary' }];
  for (const own of plain.sets) {
    const words = [[{ ...WORDS, words: 'Eight charts.' }]];
    const front = { kind: 'web', title: 'News', goes: 'unset', spoiler: 'open' } as const;
    own.sales = [{ id: 'news', front, words }];
    for (const subset of own.plan.subsets) subset.bio = { words: { min: 20, max: 60 } };
    for (const { front: card } of own.cards.slice(0, 1)) card.sources = [{ doc: 'diary' }];
  }
  return plain;
}

/** Day 45: `fair` and `shops` have lifted, `spring` and `finale` have not. */
const AT = START + 45 * DAY;

const WORDS = {
  italic: false,
  bold: false,
  hold: null,
  count: null,
  broken: false,
  stressed: false,
} as const;

const set = (edit: (set: PlainSet) => unknown): Edit => {
  return (plain) => plain.sets.slice(0, 1).map(edit);
};
const card = (id: string, edit: (card: PlainCard) => unknown): Edit =>
  set(({ cards }) => cards.filter((candidate) => candidate.id === id).map(edit));
const first = (edit: (front: PlainCard['front']) => unknown): Edit =>
  card('c001', ({ front }) => edit(front));

const VIEW = {
  asOf: (plain) => (plain.property.embargoes ?? []).push({ id: 'new', lift: instantText(44) }),
  property: (plain) => (plain.property.title = 'Another title'),
  sets: set(({ plan }) => (plan.title = 'Another title')),
  names: ({ names }) => names.names.splice(0, 1),
} satisfies Converse<View, 'audience' | 'person' | 'highest' | 'layouts' | 'avoided'>;

const PROPERTY = {
  title: ({ property }) => (property.title = 'Another title'),
  zone: ({ property }) => (property.zone = 'Europe/Paris'),
  legal: ({ property }) => (property.legal = { line: 'Another line' }),
  shows: ({ property }) => (property.site = { shows: 'none' }),
  site: ({ property }) => (property.site = { ...property.site, title: 'Another title' }),
  levels: ({ property }) => (property.levels[1] = { id: 'shops', lift: instantText(40) }),
} satisfies Converse<ViewProperty>;

const site = (change: object): Edit => {
  return ({ property }) => (property.site = { ...property.site, ...change });
};
const look = (change: object): Edit => {
  return ({ property }) => Object.assign(property.site?.look ?? {}, change);
};
const SITE = {
  title: site({ title: 'Another title' }),
  address: site({ address: 'https://cards.example/' }),
  dataTerms: site({ dataTerms: 'Ask first.' }),
  accent: look({ accent: '#000000' }),
  paper: look({ paper: '#ffffff' }),
  ink: look({ ink: '#000000' }),
  type: look({ type: 'garamond' }),
} satisfies Converse<ViewSite>;

const SET = {
  id: set((own) => (own.plan.id = 'higher-water')),
  title: set(({ plan }) => (plan.title = 'Higher Water')),
  short: set(({ plan }) => (plan.short = 'Higher')),
  street: set(({ plan }) => (plan.street = instantText(5))),
  listed: set(({ cards }) => cards.splice(1, 1)),
  subsets: set(({ plan }) => plan.subsets.reverse()),
  products: set(({ plan }) => (plan.products = [])),
  parallels: set(({ plan }) => (plan.parallels = [])),
  corrections: set((own) => (own.corrections = null)),
} satisfies Converse<ViewSet, 'merge' | 'sales'>;

const SUBSET = {
  id: set((own) => {
    own.plan.subsets.slice(1, 2).map((subset) => (subset.id = 'autographs'));
    own.cards.slice(-1).map((last) => (last.subset = 'autographs'));
  }),
  title: set(({ plan }) => plan.subsets.map((subset) => (subset.title += ' again'))),
  group: set(({ plan }) => plan.subsets.map((subset) => (subset.group += '-again'))),
  found: set(({ plan }) => plan.subsets.map((subset) => (subset.found = 'event'))),
  listed: card('c003', ({ front }) => delete front.issued),
  artists: set(({ rosters }) =>
    Object.values(rosters).map(({ artists }) => artists.push({ name: 'New', state: 'signed' })),
  ),
  cards: card('c003', ({ front }) => (front.name = 'Another name')),
} satisfies Converse<ViewSubset, 'words'>;

const PARALLEL = {
  id: set(({ plan }) => plan.parallels?.map((parallel) => (parallel.id = 'tarred'))),
  title: set(({ plan }) => plan.parallels?.map((parallel) => (parallel.title = 'Tarred'))),
  of: set(({ plan }) => plan.parallels?.map(({ of }) => of.push('signatures'))),
  run: set(({ plan }) => plan.parallels?.map((parallel) => (parallel.run = 12))),
  tell: set(({ plan }) => plan.parallels?.map((parallel) => (parallel.tell = 'black edges'))),
  revealed: set(({ plan }) => plan.parallels?.map((parallel) => (parallel.spoiler = 'shops'))),
} satisfies Converse<ViewParallel>;

const product = (change: object): Edit =>
  set(({ plan }) => plan.products?.map((own) => Object.assign(own, change)));
const PRODUCT = {
  id: product({ id: 'retail' }),
  title: product({ title: 'Retail' }),
  pack: product({ pack: 5 }),
  box: product({ box: 36 }),
  odds: product({ contents: [] }),
} satisfies Converse<ViewProduct>;

const odds = (...contents: readonly object[]): Edit => product({ contents });
const ODDS = {
  subset: odds({ of: 'signatures', odds: 24 }),
  parallel: odds({ of: 'crew', odds: 24 }, { of: 'plates', odds: 9 }),
  title: set(({ plan }) => {
    plan.subsets.map((subset) => (subset.title += ' again'));
    plan.parallels?.map((parallel) => (parallel.title += ' again'));
  }),
  packs: odds({ of: 'crew', odds: 25 }, { of: 'varnished', odds: 10 }),
} satisfies Converse<ViewOdds>;

const entry = (change: Record<string, string>): Edit =>
  set(({ corrections }) => Object.assign(corrections?.corrections[0] ?? {}, change));
const CORRECTION = {
  subset: entry({ card: 'signatures/au01' }),
  number: entry({ card: 'signatures/au01' }),
  letter: entry({ card: 'signatures/au01' }),
  level: first((front) => (front.spoiler = 'shops')),
  at: entry({ at: '2027-01-12' }),
  was: entry({ was: 'ten' }),
  now: entry({ now: 'seven' }),
  note: entry({ note: 'And once more.' }),
} satisfies Converse<ViewCorrection>;

const CARD = {
  state: card('c003', ({ front }) => (front.issued = 'yes')),
  number: first((front) => (front.number = '7')),
  letter: first(({ variation }) => Object.assign(variation ?? {}, { letter: 'c' })),
  name: first((front) => (front.name = 'Captain Thrane')),
  level: first((front) => (front.spoiler = 'shops')),
  nameLevel: first((front) => (front.holds = { name: 'shops' })),
  opens: ({ property }) => (property.levels[2] = { id: 'spring', lift: instantText(81) }),
  revealed: card('c004', ({ front }) => (front.spoiler = 'open')),
  bio: card('c001', (own) => own.bio[0]?.map((stretch) => (stretch.hold = null))),
  bioHeld: card('c004', ({ front }) => delete front.holds),
  facts: first((front) => (front.facts = { Berth: 'Lock ten' })),
  texts: first((front) => (front.texts = { caption: 'Another caption' })),
  image: first((front) => delete front.image),
  signers: first((front) => delete front.signers),
  signersLevel: first((front) => (front.holds = { signers: 'shops' })),
  creditsLevel: first((front) => (front.holds = { credits: 'shops' })),
  credits: first((front) => (front.credits = [{ role: 'Model', name: 'Tove Lindqvist' }])),
  tell: first(({ variation }) => Object.assign(variation ?? {}, { tell: 'The lamp is out' })),
  shortPrint: first((front) => (front.shortPrint = 'SSP')),
  run: first((front) => (front.run = 251)),
} satisfies Converse<ViewCard, 'identity' | 'layout' | 'notes' | 'review'>;

const IMAGE = {
  source: first(({ image }) => Object.assign(image ?? {}, { file: 'art/other.svg' })),
  alt: first(({ image }) => Object.assign(image ?? {}, { alt: 'Another alt text' })),
  level: first((front) => (front.holds = { image: 'shops' })),
} satisfies Converse<ViewImage>;

const FACT = {
  name: first((front) => (front.facts = { Mooring: 'Lock nine' })),
  value: first((front) => (front.facts = { Berth: 'Lock ten' })),
  level: first((front) => (front.holds = { 'facts.Berth': 'shops' })),
} satisfies Converse<ViewFact>;

const TEXT = {
  zone: first((front) => (front.texts = { strap: 'The Heron at Thimble Quay' })),
  value: first((front) => (front.texts = { caption: 'Another caption' })),
  level: first((front) => (front.holds = { 'texts.caption': 'shops' })),
} satisfies Converse<ViewText>;

const SIGNER = {
  name: first(({ signers }) => Object.assign(signers?.[0] ?? {}, { name: 'Tove Lindqvist' })),
  as: first(({ signers }) => Object.assign(signers?.[0] ?? {}, { as: 'Captain Thrane' })),
  redemption: first(({ signers }) => Object.assign(signers?.[0] ?? {}, { state: 'signed' })),
} satisfies Converse<ViewSigner>;

const named = (change: Partial<Plain['names']['names'][number]>): Edit => {
  return ({ names }) => Object.assign(names.names[0] ?? {}, change);
};
const NAME = {
  name: named({ name: 'Captain Thrane' }),
  aliases: named({ aliases: ['Captain Thrane'] }),
  say: named({ say: 'oh-DAH-lees' }),
} satisfies Converse<ViewName>;

const doc = (change: object): Edit => {
  return ({ property }) => Object.assign(property.documents?.[0] ?? {}, change);
};
const source = (change: object): Edit =>
  first(({ sources }) => Object.assign(sources?.[0] ?? {}, change));

/** What reviewers alone are told; their view is of a person who is cleared for everything. */
const REVIEW = {
  openings: first((front) => (front.holds = { image: 'finale' })),
  inHands: first((front) => (front.ships = instantText(99))),
  publicName: first((front) => (front.publicName = 'Somebody')),
  depicts: first(({ image }) => Object.assign(image ?? {}, { depicts: ['Tove Lindqvist'] })),
  ref: first(({ image }) => Object.assign(image ?? {}, { ref: 'still 0417' })),
  statement: set(({ plan }) => plan.subsets.map((subset) => (subset.statement = 'By hand.'))),
  owed: ({ property }) =>
    (property.legal = { line: 'A', depicts: [{ name: 'Ines Albarran', line: 'Owed' }] }),
  signers: first(({ signers }) => Object.assign(signers?.[0] ?? {}, { state: 'asked' })),
  sources: first((front) => delete front.sources),
} satisfies Converse<ReviewNotes>;

const OPENING = {
  what: first((front) => (front.holds = { image: 'finale' })),
  label: ({ property }) => property.levels.map((level) => (level.label = `Now ${level.id}`)),
  at: first((front) => (front.spoiler = 'shops')),
} satisfies Converse<ViewOpening>;

const SOURCE = {
  title: doc({ title: 'Another script' }),
  ref: source({ ref: 'p. 31' }),
  for: source({ for: 'Berth' }),
} satisfies Converse<ViewSource>;

/** What a plan asks of the bios of each subset. */
const bounds = (words: NonNullable<Bounds['words']>): Edit =>
  set(({ plan }) => plan.subsets.map((subset) => (subset.bio = { words })));
type Bounds = Exclude<NonNullable<PlainSet['plan']['subsets'][number]['bio']>, 'none'>;

const REVIEW_SUBSET = {
  words: set(({ plan }) => plan.subsets.map((subset) => (subset.bio = 'none'))),
} satisfies Converse<Pick<ViewSubset, 'words'>>;
const avoiding = (change: object): Edit =>
  named({ avoid: [{ ...AVOIDED, ...change }], aliases: ['Odalys', 'Captain Thrane'] });
const AVOIDED_FORM = {
  name: named({ name: 'Dame Odalys' }),
  form: avoiding({ form: 'Mistress Thrane' }),
  use: avoiding({ use: 'Captain Thrane' }),
} satisfies Converse<ViewAvoided>;
const WORD_BOUNDS = {
  min: bounds({ min: 30, max: 60 }),
  max: bounds({ min: 20, max: 61 }),
} satisfies Converse<ViewWords>;

const text = (change: (own: PlainSet['sales'][number]) => unknown): Edit =>
  set(({ sales }) => sales.map(change));
const SALES = {
  id: text((own) => (own.id = 'wrapper')),
  kind: text(({ front }) => (front.kind = 'wrapper')),
  title: text(({ front }) => (front.title = 'Another title')),
  words: text((own) => (own.words = [])),
} satisfies Converse<ViewSales>;

const sets = (seen: View): readonly ViewSet[] => seen.sets;
const subsets = (seen: View): ViewSubset[] => seen.sets.flatMap((own) => own.subsets);
const cards = (seen: View): ViewCard[] => subsets(seen).flatMap((subset) => subset.cards);

/** Each shape of the public view: where its values are, and an edit for each of its fields. */
const SHAPES: readonly (readonly [
  string,
  (seen: View) => readonly object[],
  Record<string, Edit>,
])[] = [
  ['view', (seen) => [seen], VIEW],
  ['property', (seen) => [seen.property], PROPERTY],
  ['site', (seen) => [seen.property.site], SITE],
  ['set', sets, SET],
  ['subset', subsets, SUBSET],
  ['product', (seen) => sets(seen).flatMap((own) => own.products), PRODUCT],
  ['odds', (seen) => sets(seen).flatMap((own) => own.products.flatMap((sold) => sold.odds)), ODDS],
  ['parallel', (seen) => sets(seen).flatMap((own) => own.parallels), PARALLEL],
  ['correction', (seen) => sets(seen).flatMap((own) => own.corrections), CORRECTION],
  ['card', cards, CARD],
  ['fact', (seen) => cards(seen).flatMap((own) => own.facts), FACT],
  ['text', (seen) => cards(seen).flatMap((own) => own.texts), TEXT],
  ['image', (seen) => cards(seen).flatMap((own) => own.image ?? []), IMAGE],
  ['name', (seen) => seen.names, NAME],
  ['signer', (seen) => cards(seen).flatMap((own) => own.signers), SIGNER],
];

/** The same for what only reviewers see. */
const REVIEW_SHAPES: typeof SHAPES = [
  ['review', (seen) => reviews(seen), REVIEW],
  ['opening', (seen) => reviews(seen).flatMap(({ openings }) => openings), OPENING],
  ['source', (seen) => reviews(seen).flatMap(({ sources }) => sources), SOURCE],
  ['sales text', (seen) => sets(seen).flatMap(({ sales }) => sales), SALES],
  ['subset', subsets, REVIEW_SUBSET],
  ['form to avoid', (seen) => seen.avoided, AVOIDED_FORM],
  ['bounds of words', (seen) => subsets(seen).flatMap(({ words }) => words ?? []), WORD_BOUNDS],
];

function reviews(seen: View): readonly ReviewNotes[] {
  return cards(seen).flatMap(({ review }) => review ?? []);
}

function reviewerView(plain: Plain): View {
  const person: Person = {
    id: 'amara',
    name: 'Amara Linde',
    role: 'licensor',
    clearance: 'finale',
    knows: (plain.property.embargoes ?? []).map(({ id }) => id),
  };
  const seen = view(releasedOf(plain), { kind: 'person', person, at: AT });
  if (!seen) throw new Error('a person sees what there is');
  return seen;
}

function publicView(plain: Plain): View {
  const seen = view(releasedOf(plain), { kind: 'public', at: AT });
  if (!seen) throw new Error('day 45 is public');
  return seen;
}

/** The values of one field, wherever its shape stands. */
function valuesOf(things: readonly object[], field: string): string {
  return JSON.stringify(things.map((thing): unknown => Reflect.get(thing, field)));
}

describe.each([
  ['public', SHAPES, publicView],
  ['reviewer', REVIEW_SHAPES, reviewerView],
] as const)('for each field that the %s sees, some edit changes the view', (_who, shapes, look) => {
  for (const [shape, things, edits] of shapes) {
    for (const [field, edit] of Object.entries(edits)) {
      test(`${field} of a ${shape}`, () => {
        const plain = reviewed();
        const draft = draftOf(plain);
        edit(draft);
        const before = valuesOf(things(look(plain)), field);
        const after = valuesOf(things(look(draft)), field);
        expect(after).not.toBe(before);
      });
    }
  }
});

test('a reviewer of the example is told something of each kind', () => {
  const seen = reviewerView(reviewed());
  for (const [, things] of REVIEW_SHAPES) expect(things(seen).length).toBeGreaterThan(0);
});
