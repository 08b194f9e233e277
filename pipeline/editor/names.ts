import type { NamesFile } from '../../schema/index.js';
import { join, statedHold, type Content, type Hold, type Schedule } from '../model/index.js';
import { NameIndex, type NamedForm } from '../text/index.js';

export type Name = NamesFile['names'][number];

/** A form of a name, as it may stand in a text. */
export interface NameForm {
  readonly name: Name;
  readonly form: string;
  /** What it states besides its name, if it opens later. */
  readonly own: { readonly level?: string; readonly embargo?: readonly string[] };
  /** What is to be written instead, if it is a form to avoid. */
  readonly avoid: { readonly use: string; readonly why?: string } | null;
}

/** Every form of a name, those to avoid last. */
export function formsOf(name: Name): readonly NameForm[] {
  const aliases = (name.aliases ?? []).map((alias): NameForm => {
    if (typeof alias === 'string') return { name, form: alias, own: {}, avoid: null };
    const { form, ...own } = alias;
    return { name, form, own, avoid: null };
  });
  const avoided = (name.avoid ?? []).map(({ form, ...avoid }): NameForm => ({
    name,
    form,
    own: {},
    avoid,
  }));
  return [{ name, form: name.name, own: {}, avoid: null }, ...aliases, ...avoided];
}

/** What a form is held by: as its name, or longer. */
export function holdOfForm({ name, own }: NameForm, schedule: Schedule): Hold {
  return join(statedHold(schedule, name), statedHold(schedule, own));
}

const indexes = new WeakMap<object, NameIndex<NameForm>>();

/** A name in a text: the forms that stand there, and where. */
export interface NameAt {
  readonly forms: readonly NameForm[];
  readonly from: number;
  readonly to: number;
}

/** The name that stands at an offset of a text; null if none surely does. */
export function nameAt(text: string, offset: number, names: Content['names']): NameAt | null {
  if (!names) return null;
  const index = indexes.get(names) ?? new NameIndex(names.value.names.flatMap(indexed));
  indexes.set(names, index);
  const match = index.find(text).find(({ from, to }) => from <= offset && offset <= to);
  if (!match || match.doubt === 'slip' || match.doubt === 'apart') return null;
  return { forms: match.of, from: match.from, to: match.to };
}

function indexed(name: Name): readonly NamedForm<NameForm>[] {
  return formsOf(name).map((of) => ({ form: of.form, exact: name.match === 'exact', of }));
}
