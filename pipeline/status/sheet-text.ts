import type { OpeningStatus, StatusSheet, SubsetStatus } from '../../schema/index.js';
import { readInstant, sayInstant } from '../model/index.js';
import { fitPlot } from './fit-plot.js';

/**
 * The status sheet as text, for the team.
 * @param warn sets off what must be mended, besides its shape.
 */
export function statusText(
  { sets, ahead }: StatusSheet,
  zone: string,
  warn: (text: string) => string,
): string {
  const blocks = sets.map(({ title, stage, subsets }) =>
    [`${title} (${stage})`, ...tableOf(subsets), ...fitPlot(subsets, warn)].join('\n'),
  );
  const coming = ahead.map((opening) => sayOpening(opening, zone));
  const last = ['Still to come:', ...(coming.length > 0 ? coming : ['  nothing'])];
  return `${['INTERNAL', ...blocks, last.join('\n')].join('\n\n')}\n`;
}

const HEADINGS = ['no copy', 'draft', 'handed in', 'not issued', 'errors', 'warnings'];

function tableOf(subsets: readonly SubsetStatus[]): string[] {
  const widest = Math.max(...subsets.map(({ title }) => title.length), 6);
  const rows = subsets.map(({ title, states, errors, warnings }) => {
    const figures = [
      states['no copy'],
      states.draft,
      states['handed in'],
      states['not issued'],
      errors,
      warnings,
    ];
    return [
      title.padEnd(widest),
      ...figures.map((figure, at) => String(figure).padStart(HEADINGS[at]?.length ?? 0)),
    ].join('  ');
  });
  return [['Subset'.padEnd(widest), ...HEADINGS].join('  '), ...rows];
}

function sayOpening(opening: OpeningStatus, zone: string): string {
  const { at, opens, inShops, listed, revealed, moreShown, rehearsed } = opening;
  const reading = readInstant(at);
  const when = reading.ok ? sayInstant(reading.at, zone) : at;
  const changes = [
    [revealed, 'revealed'],
    [moreShown, 'show more'],
    [listed, 'listed as to be revealed'],
  ] as const;
  const told = changes.filter(([count]) => count > 0).map(([count, how]) => say(count, how));
  return [
    `  ${when}`,
    ...inShops.map((title) => `    in shops: ${title}`),
    ...opens.map((label) => `    lifts: ${label}`),
    `    on the site: ${told.length > 0 ? told.join(', ') : 'nothing changes'}`,
    `    rehearsed: ${rehearsed}`,
  ].join('\n');
}

function say(count: number, how: string): string {
  return `${String(count)} ${count === 1 ? 'card' : 'cards'} ${how}`;
}
