import type { SubsetStatus } from '../../schema/index.js';

/** Eighths of the height of a line. */
const BARS = ['▁', '▂', '▃', '▄', '▅', '▆', '▇', '█'];

/** What is before a number of overset bios: a shape, so that colour is not needed to see it. */
const OVERSET = '▲';

/**
 * A plot of how full the bios of each subset are: a column is a twentieth of the zone, the height of
 * its bar how many of the subset's bios fill so much. Nothing where no bio is set.
 */
export function fitPlot(rows: readonly SubsetStatus[], warn: (text: string) => string): string[] {
  const plotted = rows.flatMap(({ title, bios }) => (bios ? [{ title, bios }] : []));
  if (plotted.length === 0) return [];
  const widest = Math.max(...plotted.map(({ title }) => title.length));
  const scale = `${' '.repeat(widest)}  0 %      50 %     100 %`;
  const lines = plotted.map(({ title, bios }) => {
    const over = bios.overset > 0 ? `  ${warn(`${OVERSET} ${String(bios.overset)} overset`)}` : '';
    return `${title.padEnd(widest)}  |${barsOf(bios.filled)}|  ${tell(bios)}${over}`;
  });
  return ['', 'How full the zones of the bios are:', scale, ...lines];
}

function barsOf(filled: readonly number[]): string {
  const most = Math.max(...filled, 1);
  return filled
    .map((count) =>
      count === 0 ? ' ' : (BARS[Math.ceil((count / most) * BARS.length) - 1] ?? ' '),
    )
    .join('');
}

function tell({ texts, tight }: NonNullable<SubsetStatus['bios']>): string {
  const bios = `${String(texts)} ${texts === 1 ? 'bio' : 'bios'}`;
  return tight > 0 ? `${bios}, ${String(tight)} tight` : bios;
}
