import type { NamesFile } from '../../../schema/index.js';
import type { YamlPath } from '../../model/index.js';
import { isCapital, type CastForm } from '../../text/index.js';
import { isTitleWord } from './titles.js';
import type { Subject } from '../subject.js';

export type ListedName = NamesFile['names'][number];

/** Whose a form is. */
export interface NameOwner {
  /** As names.yaml lists it; null for somebody who is named elsewhere, and for a word or phrase. */
  readonly listed: ListedName | null;
  /** Where names.yaml has it. */
  readonly path: YamlPath | null;
  /** A person of a roster, a credit, a signature or the house whom names.yaml does not list. */
  readonly unlisted: boolean;
  /** Why a form is no longer used. */
  readonly why?: string;
}

/** Every form that names.yaml has, and what of it may stand alone. */
export function* listedForms({ content }: Subject): Generator<CastForm<NameOwner>> {
  const { names = [], words = [] } = content.names?.value ?? {};
  for (const [at, name] of names.entries()) {
    const of = { listed: name, path: ['names', at, 'name'], unlisted: false };
    const exact = name.match === 'exact';
    for (const form of formsOf(name)) yield { form, role: 'right', exact, use: form, of };
    for (const { form, use, why } of name.avoid ?? []) {
      yield { form, role: 'avoid', exact, use, of: why === undefined ? of : { ...of, why } };
    }
    const phrase = { listed: null, path: null, unlisted: false };
    for (const form of name.except ?? []) {
      yield { form, role: 'other', exact: false, use: form, of: phrase };
    }
    for (const form of waysOf(name)) yield { form, role: 'other', exact: true, use: form, of };
  }
  for (const form of words) {
    const of = { listed: null, path: null, unlisted: false };
    yield { form, role: 'other', exact: false, use: form, of };
  }
  yield* partForms(names);
}

/** The name and its aliases. */
export function formsOf({ name, aliases = [] }: ListedName): readonly string[] {
  return [name, ...aliases.map((alias) => (typeof alias === 'string' ? alias : alias.form))];
}

export function isPerson({ kind }: ListedName): boolean {
  return kind === 'character' || kind === 'performer' || kind === 'maker';
}

/** A person with the initial alone, and surname first as in an index. */
function waysOf(name: ListedName): readonly string[] {
  const words = name.name.split(/\s+/u);
  const last = words.at(-1);
  if (!isPerson(name) || words.length < 2 || last === undefined || !words.every(isCapital))
    return [];
  const first = words.slice(0, -1);
  const initials = first.map((word) => `${Array.from(word)[0] ?? ''}.`).join(' ');
  return [`${last}, ${first.join(' ')}`, `${initials} ${last}`];
}

/** Words of people's names that are no form themselves: each tells who is meant. */
function* partForms(names: readonly ListedName[]): Generator<CastForm<NameOwner>> {
  const seen = new Set(names.flatMap(formsOf));
  for (const [at, name] of names.entries()) {
    if (!isPerson(name) && name.billing !== 'full') continue;
    for (const word of formsOf(name).flatMap((form) => form.split(/\s+/u))) {
      if (seen.has(word) || !isCapital(word) || word.length < 3 || isTitleWord(word)) continue;
      seen.add(word);
      const of = { listed: name, path: ['names', at, 'name'], unlisted: false };
      yield { form: word, role: 'part', exact: true, use: word, of };
    }
  }
}
