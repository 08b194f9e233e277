import type { MappedColumn, MappedSheet, MappingFile } from '../../schema/index.js';
import { nearest } from '../text/index.js';
import { lettersOf } from './grid.js';
import type { Layout } from './layout.js';
import { KEYS, keyOfTarget, targetOfKey } from './targets.js';
import { folded } from './tidy.js';

/** What is wrong with a mapping by itself, beyond its form. */
export function mappingFaults(mapping: MappingFile): readonly string[] {
  return [
    ...mapping.columns.flatMap(({ heading, key, ignore }) => [
      ...(key === undefined && ignore !== true
        ? [`the column “${heading}” has neither \`key\` nor \`ignore: true\``]
        : []),
      ...(key !== undefined && ignore === true
        ? [`the column “${heading}” has both \`key\` and \`ignore: true\``]
        : []),
      ...(key === undefined ? [] : unknownKey(key, `the column “${heading}”`)),
    ]),
    ...Object.keys(mapping.constants ?? {}).flatMap((key) => [
      ...unknownKey(key, '`constants`'),
      ...(['identity', 'number', 'bio', 'cut', 'set'].includes(key)
        ? [`\`constants\` gives every card the same ${key}`]
        : []),
    ]),
  ];
}

function unknownKey(key: string, where: string): readonly string[] {
  if (targetOfKey(key) !== null) return [];
  const near = nearest(key, KEYS);
  const advice = near === null ? `a card has ${KEYS.join(', ')}` : `did you mean ${near}?`;
  return [`${where} names a key that no card has: ${key}; ${advice}`];
}

/** Headings of a mapping that stand in none of the sheets: the mapping is of another file. */
export function missingHeadings(
  mapping: MappingFile,
  headings: readonly string[],
): readonly string[] {
  const known = new Set(headings.map(folded));
  const wanted = mapping.columns.filter(
    ({ heading, ignore }) => ignore !== true && !known.has(folded(heading)),
  );
  if (headings.length === 0) return [];
  return wanted.map(({ heading }) => {
    const near = nearest(heading, headings);
    return `no sheet has the heading “${heading}” of the mapping${near === null ? '' : `; there is “${near}”`}`;
  });
}

/** A sheet that was read, with what was said of it. */
export interface UsedSheet {
  /** Null for a file that is one sheet without a name. */
  readonly name: string | null;
  readonly subset?: string;
  readonly layout: Layout;
}

/** The mapping by which a file was read, such that reading it by this one gives the same. */
export function usedMapping(used: readonly UsedSheet[], given: MappingFile | null): MappingFile {
  const columns = new Map<string, MappedColumn>();
  for (const { layout } of used) {
    for (const { at, heading, target, fillDown, values } of layout.columns) {
      const key = keyOfTarget(target);
      const stated = given?.columns.find(
        (column) => folded(column.heading) === folded(heading) && column.key === key,
      );
      const isNamed = stated?.column === lettersOf(at);
      columns.set(folded(heading), {
        heading,
        ...(isNamed ? { column: lettersOf(at) } : {}),
        ...(key === null ? { ignore: true } : { key }),
        ...(fillDown ? { fillDown } : {}),
        ...(values.size === 0 ? {} : { values: stated?.values ?? Object.fromEntries(values) }),
      });
    }
    for (const heading of layout.unread) {
      if (!columns.has(folded(heading))) columns.set(folded(heading), { heading, ignore: true });
    }
  }
  const ignored = (given?.columns ?? []).filter(
    ({ heading, ignore }) => ignore === true && !columns.has(folded(heading)),
  );
  const sheets = used.map(({ name, subset, layout: { header } }): MappedSheet => ({
    ...(name === null ? {} : { name }),
    header,
    ...(subset === undefined ? {} : { subset }),
  }));
  return {
    format: 1,
    ...(sheets.length === 0 ? {} : { sheets }),
    columns: [...columns.values(), ...ignored],
    ...(given?.constants === undefined ? {} : { constants: given.constants }),
  };
}
