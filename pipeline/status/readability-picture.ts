import { escapeMarkup } from '../text/index.js';
import type { ReadingOfCard, SetReadings } from './reading-levels.js';

const WIDE = 960;
const EDGE = 32;
const HEAD = 92;
/** A chart: its title, the plot, and the numbers of the cards below. */
const CHART = 342;
const TITLE = 52;
const PLOT = 210;
const LEFT = 104;
/** What the lines mean stands beside the plot. */
const NOTES = 104;
const RIGHT = WIDE - EDGE - NOTES;
/** The least room for the number of a card, in units of the picture. */
const LABEL = 14;

const INK = '#15242b';
const GREY = '#4b5f67';
const RULE = '#dfe6e7';
const DOT = '#0b6e69';
const HARD = '#a1260d';

/**
 * How hard the bios are to read, as a picture (SVG 1.1) for the team: a chart for each set, its bios
 * in the order of their numbers, school grades and ages upwards, the reading age as a line.
 * @param highest the label of the highest level in it; null if it is not known.
 */
export function readabilityPicture(
  sets: readonly SetReadings[],
  property: { readonly title: string },
  highest: string | null,
): string {
  const high = HEAD + Math.max(sets.length, 1) * CHART + EDGE;
  const title = `${property.title}: how hard the bios are to read`;
  const mark = highest === null ? 'INTERNAL' : `INTERNAL, up to: ${highest}`;
  const charts = sets.map((set, at) => chartOf(set, HEAD + at * CHART));
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${num(WIDE)}" height="${num(high)}" viewBox="0 0 ${num(WIDE)} ${num(high)}" role="img" font-family="Candara, 'Segoe UI', sans-serif">
<title>${escapeMarkup(title)}</title>
<rect width="100%" height="100%" fill="#fff"/>
${words(EDGE, 44, title, 22, INK, 'font-weight="bold"')}
${words(EDGE, 68, `${mark} · grade: Flesch-Kincaid · age: grade and five years · point at a dot for its figures`, 14, GREY)}
${charts.join('\n')}
</svg>
`;
}

interface Scale {
  readonly top: number;
  readonly low: number;
  readonly high: number;
}

function chartOf(set: SetReadings, top: number): string {
  const { title, wanted, bios } = set;
  const grades = bios.map(({ reading }) => reading.grade);
  const scale = {
    top: top + TITLE,
    low: Math.floor(Math.min(0, ...grades)),
    high: Math.ceil(Math.max(8, (wanted?.most ?? 0) + 1, ...grades)),
  };
  const asked = wanted === null ? '' : `, for readers from ${String(wanted.age)}`;
  return [
    words(EDGE, top + 22, `${title}${asked}`, 16, INK, 'font-weight="bold"'),
    ...gridOf(scale),
    ...(wanted === null ? [] : limitsOf(wanted, scale)),
    ...bios.map((bio, at) => dotOf(bio, xOf(at, bios.length), scale, wanted?.most ?? Infinity)),
    ...labelsOf(bios, scale),
  ].join('\n');
}

function gridOf(scale: Scale): string[] {
  const step = Math.max(1, Math.ceil((scale.high - scale.low) / 9));
  const lines: string[] = [
    words(LEFT - 46, scale.top - 14, 'grade', 11, GREY, 'text-anchor="end"'),
    words(LEFT - 12, scale.top - 14, 'age', 11, GREY, 'text-anchor="end"'),
  ];
  for (let grade = scale.low; grade <= scale.high; grade += step) {
    const y = yOf(grade, scale);
    lines.push(
      `<path d="M${num(LEFT)} ${num(y)}H${num(RIGHT)}" stroke="${RULE}"/>`,
      words(LEFT - 46, y + 4, String(grade), 12, INK, 'text-anchor="end"'),
      words(LEFT - 12, y + 4, String(grade + 5), 12, GREY, 'text-anchor="end"'),
    );
  }
  return lines;
}

/** The reading age, and the grade above which a bio is told of. */
function limitsOf(
  { age, grade, most }: NonNullable<SetReadings['wanted']>,
  scale: Scale,
): string[] {
  const line = (at: number, style: string): string =>
    `<path d="M${num(LEFT)} ${num(yOf(at, scale))}H${num(RIGHT)}" ${style}/>`;
  const note = (at: number, text: string, colour: string): string =>
    words(RIGHT + 8, yOf(at, scale) + 4, text, 11, colour);
  return [
    line(grade, `stroke="${DOT}" stroke-width="2"`),
    line(most, `stroke="${HARD}" stroke-width="1.5" stroke-dasharray="6 4"`),
    note(grade, `reading age ${String(age)}`, DOT),
    note(most, 'too hard above this', HARD),
  ];
}

/** A bio: a dot, or a triangle if it is too hard, so that colour is not needed to see it. */
function dotOf(
  { card, name, reading }: ReadingOfCard,
  x: number,
  scale: Scale,
  most: number,
): string {
  const { grade, ease, words: count, sentences } = reading;
  const y = yOf(grade, scale);
  const says = `${card} ${name}: grade ${grade.toFixed(1)}, reading ease ${ease.toFixed(1)}, ${String(count)} words in ${String(sentences)} ${sentences === 1 ? 'sentence' : 'sentences'}`;
  const title = `<title>${escapeMarkup(says)}</title>`;
  return grade > most
    ? `<path d="M${num(x)} ${num(y - 7)}l6.5 12h-13z" fill="${HARD}">${title}</path>`
    : `<circle cx="${num(x)}" cy="${num(y)}" r="4.5" fill="${DOT}" fill-opacity="0.85">${title}</circle>`;
}

/** The numbers of the cards, upright where each has room; of many, every second, fifth …  */
function labelsOf(bios: readonly ReadingOfCard[], scale: Scale): string[] {
  const room = (RIGHT - LEFT) / Math.max(1, bios.length);
  const every = Math.max(1, Math.ceil(LABEL / room));
  const y = scale.top + PLOT + 12;
  return bios.flatMap(({ card }, at) => {
    if (at % every !== 0) return [];
    const x = xOf(at, bios.length) + 4;
    return [
      words(x, y, card, 11, INK, `text-anchor="end" transform="rotate(-60 ${num(x)} ${num(y)})"`),
    ];
  });
}

function xOf(at: number, count: number): number {
  return LEFT + ((at + 0.5) * (RIGHT - LEFT)) / count;
}

function yOf(grade: number, { top, low, high }: Scale): number {
  return top + PLOT - ((grade - low) / (high - low)) * PLOT;
}

function words(
  x: number,
  y: number,
  text: string,
  size: number,
  colour: string,
  more = '',
): string {
  const extra = more === '' ? '' : ` ${more}`;
  return `<text x="${num(x)}" y="${num(y)}" font-size="${num(size)}" fill="${colour}"${extra}>${escapeMarkup(text)}</text>`;
}

function num(value: number): string {
  return String(Math.round(value * 100) / 100);
}
