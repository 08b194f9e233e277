import type { PrintFaces } from './faces.js';
import type { Item } from './items.js';
import { columnWidth, type Band } from './pour.js';
import { sectionItems } from './section.js';
import { naturalWidth, type Table, type TableStyle } from './table.js';

/** Points between two tables that stand side by side. */
const GAP = 22;

/** A table and its heading. */
export interface Section {
  readonly title: string;
  readonly table: Table;
}

/** What stands in one column over the whole width, or in two columns side by side. */
export type Stretch =
  | { readonly columns: 1; readonly items: readonly Item[] }
  | { readonly columns: 2; readonly items: readonly [readonly Item[], readonly Item[]] };

/** Two sections side by side, if each has rows and takes no more than half of the width. */
export function sectionsBeside(
  sections: readonly [Section, Section],
  style: TableStyle,
  faces: PrintFaces,
): readonly Stretch[] {
  const half = halfOf(style);
  const itemsOf = ({ title, table }: Section, in_: TableStyle): readonly Item[] =>
    sectionItems(title, table, in_, faces);
  const beside = sections.every(
    ({ table }) => table.rows.length > 0 && naturalWidth(table, half, faces) <= half.width,
  );
  const [left, right] = sections;
  return beside
    ? [{ columns: 2, items: [itemsOf(left, half), itemsOf(right, half)] }]
    : [{ columns: 1, items: sections.flatMap((section) => itemsOf(section, style)) }];
}

/** A long section in two halves side by side, if it takes no more than half of the width. */
export function sectionInHalves(
  { title, table }: Section,
  style: TableStyle,
  faces: PrintFaces,
): Stretch {
  const { heads, rows } = table;
  const half = halfOf(style);
  if (rows.length < WORTH_HALVING || naturalWidth(table, half, faces) > half.width) {
    return { columns: 1, items: sectionItems(title, table, style, faces) };
  }
  const middle = Math.ceil(rows.length / 2);
  const itemsOf = (some: Table['rows']): readonly Item[] =>
    sectionItems(title, { heads, rows: some }, half, faces);
  const left = itemsOf(rows.slice(0, middle));
  const [heading, ...right] = itemsOf(rows.slice(middle));
  return { columns: 2, items: [left, [...(heading ? [blank(heading)] : []), ...right]] };
}

/** Fewer rows stay below one another. */
const WORTH_HALVING = 6;

function halfOf({ size, width }: TableStyle): TableStyle {
  return { size, width: columnWidth(width, 2, GAP) };
}

/** As much white as something takes. */
function blank({ before, height }: Item): Item {
  return { before, height, keep: true, draw: () => undefined };
}

/** Stretches as bands, with `before` points above each; those of one column flow together. */
export function bandsOf(stretches: readonly Stretch[], before: number): readonly Band[] {
  const bands: Band[] = [];
  for (const { columns, items } of stretches) {
    if (items.flat().length === 0) continue;
    const last = bands.at(-1);
    if (columns === 2) {
      bands.push({ columns, gap: GAP, before, items: items.flatMap(together) });
    } else if (last?.columns === 1) {
      bands[bands.length - 1] = { ...last, items: [...last.items, ...items] };
    } else {
      bands.push({ columns, gap: 0, before: items[0]?.before ?? before, items });
    }
  }
  return bands;
}

/** Items that stand in one column as far as they have room. */
function together(items: readonly Item[]): readonly Item[] {
  return items.map((item, index) => ({ ...item, keep: index < items.length - 1 }));
}
