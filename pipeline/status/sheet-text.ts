import {
  CARD_STATES,
  type CardState,
  type OpeningStatus,
  type StatusSheet,
  type SubsetStatus,
} from '../../schema/index.js';
import { readInstant, sayInstant } from '../model/index.js';
import { fitPlot } from './fit-plot.js';
import { askedText, datesText, waitingText, writersText } from './review-text.js';

/**
 * The status sheet as text, for the team; of cards that were asked for one by one, these alone.
 * @param warn sets off what must be mended, besides its shape.
 */
export function statusText(
  { sets, ahead, waiting, writers, asked }: StatusSheet,
  zone: string,
  warn: (text: string) => string,
): string {
  if (asked) return `INTERNAL\n\n${askedText(asked)}\n`;
  const blocks = sets.map(({ title, stage, dates, subsets }) =>
    [
      `${title} (${stage})`,
      ...tableOf(subsets),
      ...fitPlot(subsets, warn),
      ...datesText(dates, warn),
    ].join('\n'),
  );
  const coming = ahead.map((opening) => sayOpening(opening, zone));
  const last = ['Still to come:', ...(coming.length > 0 ? coming : ['  nothing'])];
  return `${[
    'INTERNAL',
    ...blocks,
    ...waitingText(waiting, warn),
    ...writersText(writers),
    last.join('\n'),
  ].join('\n\n')}\n`;
}

/** States that have a column even where no card is in them. */
const ALWAYS_TOLD: readonly CardState[] = ['no copy', 'draft', 'handed in', 'not issued'];

function tableOf(subsets: readonly SubsetStatus[]): string[] {
  const widest = Math.max(...subsets.map(({ title }) => title.length), 6);
  const told = CARD_STATES.filter(
    (state) => ALWAYS_TOLD.includes(state) || subsets.some(({ states }) => states[state] > 0),
  );
  const headings = [...told, 'errors', 'warnings'];
  const rows = subsets.map(({ title, states, errors, warnings }) => {
    const figures = [...told.map((state) => states[state]), errors, warnings];
    return [
      title.padEnd(widest),
      ...figures.map((figure, at) => String(figure).padStart(headings[at]?.length ?? 0)),
    ].join('  ');
  });
  return [['Subset'.padEnd(widest), ...headings].join('  '), ...rows];
}

function sayOpening(opening: OpeningStatus, zone: string): string {
  const { at, opens, inShops, listed, revealed, moreShown, rehearsed, blocks, unapproved } =
    opening;
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
    ...sayFirst(blocks).map((line) => `    in its way: ${line}`),
    ...unapproved.map(({ role, cards }) => `    not approved by ${role}: ${say(cards)}`),
  ].join('\n');
}

function say(count: number, how = ''): string {
  return `${String(count)} ${count === 1 ? 'card' : 'cards'} ${how}`.trim();
}

/** Lines of what is in the way of a release that are told; `publish --rehearse` tells all. */
const MOST_LINES = 3;

function sayFirst(lines: readonly string[]): readonly string[] {
  const left = lines.length - MOST_LINES;
  const more = left > 0 ? [`${String(left)} more: see publish --rehearse`] : [];
  return [...lines.slice(0, MOST_LINES), ...more];
}
