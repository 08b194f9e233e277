import { compareNumbers, join, statedHold } from '../model/index.js';
import type { Released } from '../select/index.js';
import { untelling } from './avoided.js';
import type { Lens } from './lens.js';
import type { Tables } from './tables.js';
import type { ViewAvoided, ViewName } from './view.js';

type Name = Released['names'][number];

/** The names that an audience may be told, in their own order: nothing else decides it. */
export function viewNames({ names }: Released, lens: Lens, tables: Tables): readonly ViewName[] {
  if (!lens.admits(tables.names.names, tables.name.name)) return [];
  return names
    .filter((name) => tables.name.name === 'open' || isOpen(name, lens))
    .map((name) => ({
      name: name.name,
      aliases: lens.admits(tables.name.aliases) ? openAliases(name, lens, tables) : [],
      say: (lens.admits(tables.name.say) ? name.say : undefined) ?? null,
    }))
    .sort(
      (a, b) => compareNumbers(a.name, b.name) || compare(JSON.stringify(a), JSON.stringify(b)),
    );
}

function isOpen(name: Name, lens: Lens): boolean {
  return lens.standing(statedHold(lens.schedule, name)) === 'open';
}

/** Forms that are open, each once; one can be held longer than its name. */
function openAliases(name: Name, lens: Lens, tables: Tables): readonly string[] {
  const open = (name.aliases ?? []).flatMap((alias) =>
    tables.name.aliases === 'open' || isOpenForm(name, alias, lens) ? [formOf(alias)] : [],
  );
  return [...new Set(open)].sort(compare);
}

type Alias = NonNullable<Name['aliases']>[number];

function formOf(alias: Alias): string {
  return typeof alias === 'string' ? alias : alias.form;
}

function isOpenForm(name: Name, alias: Alias, lens: Lens): boolean {
  const base = statedHold(lens.schedule, name);
  const hold = typeof alias === 'string' ? base : join(base, statedHold(lens.schedule, alias));
  return lens.standing(hold) === 'open';
}

/** The forms of a name that an audience may know, and those that it may not. */
function formsOf(name: Name, lens: Lens): { open: readonly string[]; held: readonly string[] } {
  const aliases = name.aliases ?? [];
  if (!isOpen(name, lens)) return { open: [], held: [name.name, ...aliases.map(formOf)] };
  const isTold = (alias: Alias): boolean => isOpenForm(name, alias, lens);
  return {
    open: [name.name, ...aliases.filter(isTold).map(formOf)],
    held: aliases.filter((alias) => !isTold(alias)).map(formOf),
  };
}

/**
 * Forms no longer used of open names, where the form to use is one that is told. No rule looks into
 * them, so one that might tell of what is held is left out.
 */
export function viewAvoided(
  { names }: Released,
  lens: Lens,
  tables: Tables,
): readonly ViewAvoided[] {
  if (!lens.admits(tables.names.names, tables.name.name, tables.name.avoid)) return [];
  const all = names.map((name) => formsOf(name, lens));
  const tellsNothing = untelling(all);
  return names
    .flatMap(({ name, avoid = [] }, at) =>
      avoid
        .filter(({ form, use }) => all[at]?.open.includes(use) === true && tellsNothing(form))
        .map(({ form, use }) => ({ name, form, use })),
    )
    .sort(
      (a, b) => compareNumbers(a.name, b.name) || compare(JSON.stringify(a), JSON.stringify(b)),
    );
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
