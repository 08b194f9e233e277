import { sayInstant } from '../model/index.js';
import { escapeMarkup } from '../text/index.js';
import type { TimelineStep } from './timeline.js';

const WIDE = 960;
const EDGE = 32;
const HEAD = 96;
const ROW = 76;
const LINE_X = 250;
const BAR_X = 280;
const BAR_WIDE = 560;
const BAR_HIGH = 18;

/**
 * The timeline as a picture (SVG 1.1) for the team: a row for each step, with what lifts and how
 * many cards the public sees from then on, shown and still to be revealed.
 */
export function timelinePicture(
  steps: readonly TimelineStep[],
  property: { readonly title: string; readonly zone: string },
): string {
  const high = HEAD + Math.max(steps.length, 1) * ROW + EDGE;
  const most = Math.max(1, ...steps.map(({ shown, placeholders }) => shown + placeholders));
  const rows = steps.map((step, at) => rowOf(step, HEAD + at * ROW, most, property.zone));
  const end = HEAD + Math.max(steps.length - 1, 0) * ROW + 14;
  const line = `<path d="M${num(LINE_X)} ${num(HEAD + 14)}V${num(end)}" stroke="#93a6a9" stroke-width="2"/>`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${num(WIDE)}" height="${num(high)}" viewBox="0 0 ${num(WIDE)} ${num(high)}" role="img" font-family="Candara, 'Segoe UI', sans-serif">
<title>${escapeMarkup(`${property.title}: what opens when`)}</title>
<rect width="100%" height="100%" fill="#fff"/>
${words(EDGE, 44, `${property.title}: what opens when`, 22, '#15242b', 'bold')}
${words(EDGE, 70, 'INTERNAL · filled: cards shown · outlined: cards to be revealed', 14, '#4b5f67')}
${[line, ...rows].join('\n')}
</svg>
`;
}

function rowOf(step: TimelineStep, y: number, most: number, zone: string): string {
  const { shown, placeholders } = step;
  const scale = BAR_WIDE / most;
  const parts = [...step.inShops.map((title) => `In shops: ${title}`), ...step.opens];
  const what = parts.length > 0 ? parts.join(' · ') : 'The first of it is public';
  const barY = y + 28;
  const full = shown * scale;
  const figure = `${String(shown)} shown, ${String(placeholders)} to be revealed`;
  return [
    words(LINE_X - 22, y + 19, sayInstant(step.at, zone), 15, '#15242b', 'normal', 'end'),
    `<circle cx="${num(LINE_X)}" cy="${num(y + 14)}" r="6" fill="#0b6e69"/>`,
    words(BAR_X, y + 19, shortened(what), 15, '#15242b', 'bold'),
    bar(BAR_X, barY, full, 'fill="#0b6e69"'),
    bar(BAR_X + full, barY, placeholders * scale, 'fill="none" stroke="#0b6e69"'),
    words(BAR_X, barY + BAR_HIGH + 15, figure, 13, '#4b5f67'),
  ].join('\n');
}

function bar(x: number, y: number, wide: number, style: string): string {
  if (wide <= 0) return '';
  return `<rect x="${num(x)}" y="${num(y)}" width="${num(wide)}" height="${num(BAR_HIGH)}" ${style}/>`;
}

function words(
  x: number,
  y: number,
  text: string,
  size: number,
  colour: string,
  weight: 'normal' | 'bold' = 'normal',
  anchor: 'start' | 'end' = 'start',
): string {
  return `<text x="${num(x)}" y="${num(y)}" font-size="${num(size)}" font-weight="${weight}" text-anchor="${anchor}" fill="${colour}">${escapeMarkup(text)}</text>`;
}

/** What fits a line of the picture at its size. */
function shortened(text: string): string {
  return text.length <= 78 ? text : `${text.slice(0, 77)}…`;
}

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}
