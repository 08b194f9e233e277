import {
  CastForms,
  lettersOnly,
  type CastForm,
  type Dictionary,
  type English,
  type FormMatch,
} from '../../text/index.js';
import { listedForms, type NameOwner } from './forms.js';
import { unknownRuns, type NameRun } from './runs.js';
import { wholeOf, type Subject } from '../subject.js';

/** What the names rules know of a text. */
export interface NameReading {
  readonly matches: readonly FormMatch<NameOwner>[];
  /** Names that nothing explains. */
  readonly runs: readonly NameRun[];
}

/** Every name that is known, and what each text says of them; a text is read once. */
export interface NameBook {
  readonly read: (text: string, kind: 'copy' | 'title') => NameReading;
  readonly knows: Dictionary['knows'];
}

/** Most texts whose reading is kept. */
const MOST_KEPT = 60_000;

const books = new WeakMap<Subject, NameBook>();
const kept = new WeakMap<object, { readonly signature: string; readonly book: NameBook }>();

/** The names of a property: the book before, if nothing that it is made of has changed. */
export function nameBook(asking: Subject): NameBook {
  const subject = wholeOf(asking);
  const before = books.get(subject);
  if (before) return before;
  const parts = partsOf(subject);
  const signature = JSON.stringify([parts.people, parts.titles, parts.english]);
  const key = subject.content.names?.value ?? NOBODY;
  const known = kept.get(key);
  const book = known?.signature === signature ? known.book : bookOf(subject, parts);
  kept.set(key, { signature, book });
  books.set(subject, book);
  return book;
}

const NOBODY = {};
const NOTHING: NameReading = { matches: [], runs: [] };

interface Parts {
  readonly people: readonly string[];
  readonly titles: readonly string[];
  readonly english: readonly English[];
}

function partsOf({ content, property, sets, cards }: Subject): Parts {
  const people = new Set((content.people?.value.people ?? []).map(({ name }) => name));
  const owed = [
    property.legal?.line ?? '',
    ...(property.legal?.depicts ?? []).map(({ line }) => line),
  ];
  const titles = new Set([property.title, ...owed]);
  const english = new Set<English>();
  for (const { plan, rosters } of sets) {
    const { value } = plan;
    english.add(value.style?.english ?? 'american');
    const { subsets, parallels = [], products = [] } = value;
    for (const { title } of [value, ...subsets, ...parallels, ...products]) titles.add(title);
    if (value.short !== undefined) titles.add(value.short);
    for (const total of Object.values(value.totals ?? {})) {
      if (typeof total !== 'number' && total.title !== undefined) titles.add(total.title);
    }
    for (const { value: roster } of rosters.values()) {
      for (const { name } of roster.artists) people.add(name);
    }
  }
  for (const { front } of cards) {
    titles.add(front.name);
    if (front.publicName !== undefined) titles.add(front.publicName);
    for (const { name } of front.signers ?? []) people.add(name);
    for (const { name, role } of front.credits ?? []) {
      people.add(name);
      titles.add(role);
    }
    for (const key of Object.keys(front.facts ?? {})) titles.add(key);
  }
  return { people: [...people], titles: [...titles], english: [...english] };
}

function bookOf(subject: Subject, { people, titles, english }: Parts): NameBook {
  const { dictionaries } = subject;
  const known = new Map<string, boolean>();
  const knows = (word: string): boolean => {
    const before = known.get(word);
    if (before !== undefined) return before;
    const straight = word.replace(/’/g, "'");
    const right = english.some((each) => dictionaries(each).knows(straight));
    known.set(word, right);
    return right;
  };
  const listed = [...listedForms(subject)];
  const cast = new CastForms(listed, { knows });
  const others = people.filter((name) => !isListed(cast, name)).map(personForm);
  const all = new CastForms([...listed, ...others], { knows });
  const explained = wordsOf([...titles, ...people, ...listed.map(({ form }) => form)]);
  const readings = new Map<string, NameReading>();
  const read: NameBook['read'] = (text, kind) => {
    const key = kind === 'title' ? `\n${text}` : text;
    const before = readings.get(key);
    if (before) return before;
    const { tokens, matches } = all.read(text, { title: kind === 'title' });
    const runs = kind === 'title' ? [] : unknownRuns(text, tokens, matches, explained, knows);
    const found = matches.length === 0 && runs.length === 0 ? NOTHING : { matches, runs };
    if (readings.size >= MOST_KEPT) readings.clear();
    readings.set(key, found);
    return found;
  };
  return { read, knows };
}

/** Whether somebody is of the cast, or is meant to be. */
function isListed(cast: CastForms<NameOwner>, name: string): boolean {
  const { matches } = cast.read(name);
  return matches.some(
    ({ from, to, entry }) =>
      from === 0 &&
      to === name.length &&
      entry.form.role !== 'part' &&
      entry.form.of.listed !== null,
  );
}

function personForm(form: string): CastForm<NameOwner> {
  const of = { listed: null, path: null, unlisted: true };
  return { form, role: 'other', exact: true, use: form, of };
}

/** The words of names and titles, each of which may stand alone. */
function wordsOf(texts: readonly string[]): ReadonlySet<string> {
  return new Set(texts.flatMap((text) => text.match(/[\p{L}\p{M}]+/gu) ?? []).map(lettersOnly));
}
