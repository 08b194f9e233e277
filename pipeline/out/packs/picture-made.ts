import type { PacksSet } from '../../../schema/index.js';
import { grouped, mixed, nameOf, nearly } from './say.js';
import { BAR, EDGE, GREY, RULE, WIDE, heading, line, num, rect, words, type Panel } from './svg.js';

const TOP = 74;
const ROW = 22;
const LEFT = 300;
const RIGHT = WIDE - EDGE - 150;

/** Copies made of each card, from most to fewest, on a logarithmic scale. */
export function madePanel({ kinds }: PacksSet): Panel | null {
  const rows = kinds
    .flatMap(({ title, cards }) => cards.map((group) => ({ title, ...group })))
    .filter(({ made }) => nearly(made) > 0)
    .toSorted((a, b) => nearly(b.made) - nearly(a.made));
  const most = rows[0];
  if (most === undefined) return null;
  const decades = Math.max(1, Math.ceil(Math.log10(nearly(most.made))));
  // Half a decade is left before 1, so that a single copy has a bar too.
  const xOf = (copies: number): number =>
    LEFT + ((Math.log10(copies) + 0.5) / (decades + 0.5)) * (RIGHT - LEFT);
  const bottom = TOP + rows.length * ROW;
  const grid = Array.from({ length: decades + 1 }, (_, at) => xOf(10 ** at)).flatMap((x, at) => [
    line(`M${num(x)} ${num(TOP - 4)}V${num(bottom)}`, `stroke="${RULE}"`),
    words(x, TOP - 9, mixed(String(10 ** at)), {
      size: 12,
      fill: GREY,
      more: 'text-anchor="middle"',
    }),
  ]);
  const bars = rows.flatMap((row, at) => {
    const { cards, made } = row;
    const y = TOP + at * ROW;
    const x = xOf(nearly(made));
    return [
      words(LEFT - 10, y + 15, nameOf(row), { more: 'text-anchor="end"' }),
      rect(LEFT, y + 4, x - LEFT, ROW - 8, BAR),
      words(
        x + 8,
        y + 15,
        cards === 1 ? mixed(made) : `${mixed(made)} of each of ${grouped(cards)}`,
        { size: 12 },
      ),
    ];
  });
  const head = heading(
    'Copies made of each card, from most to fewest',
    'Each line to the right is ten times the one before it.',
  );
  return { marks: [...head, ...grid, ...bars], high: bottom };
}
