import type { PrintFaces } from './faces.js';
import { type Item, leadingOf, paragraph } from './items.js';
import { span } from './set-lines.js';
import { tableItems, type Table, type TableStyle } from './table.js';

/** A heading that is kept with what follows, and has a bookmark. */
export function sectionHeading(
  title: string,
  { size, width }: TableStyle,
  faces: PrintFaces,
): readonly Item[] {
  const large = size + 2.5;
  const items = paragraph({
    part: { tag: 'H2' },
    spans: [span(title, faces.text.bold, large, 100)],
    width,
    leading: leadingOf(large),
    before: size * 1.4,
    keep: true,
  });
  return items.map((item, index) => ({
    ...item,
    draw: (pen, at) => {
      if (index === 0) pen.bookmark(title, Math.max(0, at.y - 6));
      item.draw(pen, at);
    },
  }));
}

/** A table under its heading; nothing where it has no row. */
export function sectionItems(
  title: string,
  table: Table,
  style: TableStyle,
  faces: PrintFaces,
): readonly Item[] {
  if (table.rows.length === 0) return [];
  return [...sectionHeading(title, style, faces), ...tableItems(table, style, faces)];
}

/** Words in the width of the page. */
export function wordsItems(
  text: string,
  { size, width }: TableStyle,
  faces: PrintFaces,
  before: number,
): readonly Item[] {
  return paragraph({
    part: { tag: 'P' },
    spans: [span(text, faces.text.regular, size, 100)],
    width,
    leading: leadingOf(size),
    before,
    keep: false,
  });
}
