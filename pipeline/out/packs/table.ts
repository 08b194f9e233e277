/** A column: its heading, and on which side its cells stand. */
export interface Column {
  readonly heading: string;
  readonly side: 'left' | 'right';
}

/** Rows below headings, in columns as wide as their widest cell. */
export function tableText(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
): readonly string[] {
  const lines = [columns.map(({ heading }) => heading), ...rows];
  const widths = columns.map((_, at) =>
    lines.reduce((widest, line) => Math.max(widest, (line[at] ?? '').length), 0),
  );
  return lines.map((line) =>
    columns
      .map(({ side }, at) => {
        const cell = line[at] ?? '';
        const space = ' '.repeat((widths[at] ?? 0) - cell.length);
        return side === 'left' ? cell + space : space + cell;
      })
      .join('  ')
      .trimEnd(),
  );
}

export const left = (heading: string): Column => ({ heading, side: 'left' });
export const right = (heading: string): Column => ({ heading, side: 'right' });
