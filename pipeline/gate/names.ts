import { compareNumbers, join, statedHold } from '../model/index.js';
import type { Released } from '../select/index.js';
import type { Lens } from './lens.js';
import type { Tables } from './tables.js';
import type { ViewName } from './view.js';

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
  const base = statedHold(lens.schedule, name);
  const open = (name.aliases ?? []).flatMap((alias) => {
    if (typeof alias === 'string') return [alias];
    const hold = join(base, statedHold(lens.schedule, alias));
    return tables.name.aliases === 'open' || lens.standing(hold) === 'open' ? [alias.form] : [];
  });
  return [...new Set(open)].sort(compare);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
