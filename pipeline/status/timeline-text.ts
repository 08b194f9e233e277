import { sayInstant } from '../model/index.js';
import type { Changes } from './changes.js';
import type { Stretch, TimelineStep } from './timeline.js';

/** The timeline as text, for the team. */
export function timelineText(steps: readonly TimelineStep[], zone: string): string {
  const blocks = steps.map((step) =>
    [sayInstant(step.at, zone), ...openingLines(step), ...changeLines(step)].join('\n'),
  );
  const all = blocks.length > 0 ? blocks : ['Nothing opens.'];
  return `INTERNAL\n\n${all.join('\n\n')}\n`;
}

/** What the public sees otherwise at the end of a stretch of time than at its beginning, as text. */
export function differenceText(changes: Changes, { from, to }: Stretch, zone: string): string {
  const title = `From ${sayInstant(from, zone)} to ${sayInstant(to, zone)}`;
  return `INTERNAL\n\n${[title, ...changeLines(changes)].join('\n')}\n`;
}

/** What lifts and what is in shops from a step on, a line each. */
export function openingLines({
  opens,
  inShops,
}: Pick<TimelineStep, 'opens' | 'inShops'>): string[] {
  return [
    ...inShops.map((title) => `  in shops: ${title}`),
    ...opens.map((label) => `  lifts: ${label}`),
  ];
}

/** What the public sees otherwise, a line each. */
export function changeLines({ cards, titles, names }: Changes): string[] {
  if (cards.length + titles.length + names.length === 0) return ['  nothing changes on the site'];
  return [
    ...titles.map((title) => `  ${'new'.padEnd(WIDTH)}  ${title}`),
    ...names.map((name) => `  ${'may be named'.padEnd(WIDTH)}  ${name}`),
    ...cards.map(({ change, number, name, set, subset, fields }) => {
      const what = fields.length > 0 && change !== 'revealed' ? `: ${fields.join(', ')}` : '';
      const card = `${(number ?? '–').padEnd(6)} ${name}${what} (${set}/${subset})`;
      return `  ${change.padEnd(WIDTH)}  ${card}`;
    }),
  ];
}

const WIDTH = 'otherwise shown'.length;
