import type { NamesFile } from '../../../schema/index.js';
import type { View, ViewName } from '../../gate/index.js';
import { writeCell } from './cell-forms.js';
import type { SheetRecord } from './table.js';

/** A name as names.yaml has it. */
export type StatedName = NamesFile['names'][number];

type Avoided = NonNullable<StatedName['avoid']>[number];

/** The headings of the sheet of names, in order. */
const HEADINGS = [
  'Name',
  'Also',
  'Use',
  'Avoid',
  'Say',
  'Kind',
  'Level',
  'Embargo',
  'Public name',
] as const;

export function nameHeadings(records: readonly SheetRecord[]): readonly string[] {
  const used = new Set(records.flatMap(({ cells }) => [...cells.keys()]));
  return HEADINGS.filter((heading) => heading === 'Name' || used.has(heading));
}

/** Every name with all that the house knows of it: for the house alone. */
export function statedNames(names: readonly StatedName[]): readonly SheetRecord[] {
  return names.map(({ name, aliases = [], avoid = [], say, kind, level, embargo, publicName }) =>
    record(name, [
      [
        'Also',
        listed(aliases.map((alias) => (typeof alias === 'string' ? alias : aliasWords(alias)))),
      ],
      ['Avoid', avoid.map(avoidWords).join('\n')],
      ['Say', say ?? ''],
      ['Kind', kind],
      ['Level', level],
      ['Embargo', listed(embargo ?? [])],
      ['Public name', publicName ?? ''],
    ]),
  );
}

function aliasWords({
  form,
  level,
  embargo = [],
}: Exclude<NonNullable<StatedName['aliases']>[number], string>): string {
  const held = [...(level === undefined ? [] : [level]), ...embargo];
  return held.length === 0 ? form : `${form} (${held.join(', ')})`;
}

function avoidWords({ form, use, why }: Avoided): string {
  return `${form}: use ${use}${why === undefined ? '' : ` (${why})`}`;
}

const USE = 'on any card';
const NOT_YET = 'never on a card that opens before the name does';

/**
 * The names of a view, and for a person what they may use at once and what they must keep to cards
 * that are held as long.
 * @param anybody the view that the person would have if they were cleared for nothing; null for the
 *   public, who are told no name that is held.
 */
export function toldNames({ names, avoided }: View, anybody: View | null): readonly SheetRecord[] {
  const open = new Map((anybody?.names ?? []).map((name) => [name.name, name]));
  const avoid = new Map<string, Avoided[]>();
  for (const each of avoided) avoid.set(each.name, [...(avoid.get(each.name) ?? []), each]);
  return names.map((name) =>
    record(name.name, [
      ['Also', listed(name.aliases)],
      ['Use', anybody === null ? '' : useWords(name, open.get(name.name))],
      ['Avoid', (avoid.get(name.name) ?? []).map(avoidWords).join('\n')],
      ['Say', name.say ?? ''],
    ]),
  );
}

function useWords(name: ViewName, open: ViewName | undefined): string {
  if (!open) return NOT_YET;
  const later = name.aliases.filter((alias) => !open.aliases.includes(alias));
  return later.length === 0 ? USE : `${USE}; ${NOT_YET}: ${listed(later)}`;
}

function listed(items: readonly string[]): string {
  return items.length === 0 ? '' : writeCell(items);
}

function record(name: string, cells: readonly (readonly [string, string])[]): SheetRecord {
  const said = cells.filter(([, text]) => text !== '');
  return { label: `the name ${name}`, cells: new Map([['Name', name], ...said]) };
}
