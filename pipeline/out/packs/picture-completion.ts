import type { PacksProduct } from '../../../schema/index.js';
import { SHARES } from './curves.js';
import { grouped } from './say.js';
import {
  EDGE,
  GREY,
  INK,
  RULE,
  WIDE,
  fitted,
  heading,
  line,
  num,
  words,
  type Panel,
} from './svg.js';

const TOP = 64;
const HIGH = 250;
const LEFT = 84;
const RIGHT = 560;
const LEGEND = 590;
const ROW = 34;

const DASHES = ['', '8 4', '2 3', '10 3 2 3', '5 5', '14 4'] as const;

type Completed = PacksProduct['completion'][number];
type Curve = Completed & {
  readonly half: number;
  readonly ninety: number;
  readonly ninetyNine: number;
};

/** How many of a hundred collectors have a set, by the packs that each opened. */
export function completionPanel({ title, packs, completion }: PacksProduct): Panel | null {
  const curves = completion.filter(isCurve).toSorted((a, b) => a.half - b.half);
  if (curves.length === 0) return null;
  const least = Math.floor(Math.log10(Math.max(1, Math.min(...curves.map(startOf)))));
  const most = Math.ceil(Math.log10(Math.max(...curves.map(({ ninetyNine }) => ninetyNine))));
  const span = Math.max(1, most - least);
  const xOf = (opened: number): number =>
    LEFT + ((Math.log10(opened) - least) / span) * (RIGHT - LEFT);
  const grid = [
    ...[0, 25, 50, 75, 100].flatMap((percent) => [
      line(`M${num(LEFT)} ${num(yOf(percent))}H${num(RIGHT)}`, `stroke="${RULE}"`),
      words(LEFT - 8, yOf(percent) + 4, `${String(percent)} %`, {
        size: 12,
        fill: GREY,
        more: 'text-anchor="end"',
      }),
    ]),
    ...Array.from({ length: span + 1 }, (_, at) => 10 ** (least + at)).flatMap((opened) => [
      line(`M${num(xOf(opened))} ${num(TOP)}V${num(TOP + HIGH)}`, `stroke="${RULE}"`),
      words(xOf(opened), TOP + HIGH + 18, grouped(opened), {
        size: 12,
        fill: GREY,
        more: 'text-anchor="middle"',
      }),
    ]),
    words((LEFT + RIGHT) / 2, TOP + HIGH + 38, 'packs opened, each line ten times the one before', {
      size: 12,
      fill: GREY,
      more: 'text-anchor="middle"',
    }),
  ];
  const drawn = curves.flatMap((curve, at) => [...drawnCurve(curve, at, xOf), ...keyOf(curve, at)]);
  const head = heading(
    `${title}: collectors who have a whole set`,
    `Of a hundred who open packs and do not trade. ${grouped(packs)} packs are made. Worked out, not promised.`,
  );
  return {
    marks: [...head, ...grid, ...drawn],
    high: Math.max(TOP + HIGH + 44, TOP + curves.length * ROW),
  };
}

function isCurve(each: Completed): each is Curve {
  return (
    each.half !== null && each.ninety !== null && each.ninetyNine !== null && each.curve.length > 0
  );
}

/** Packs after which this part has it. */
function packsBy({ curve }: Curve, share: number): number {
  return Math.max(1, curve[SHARES.indexOf(share)] ?? 1);
}

function startOf({ curve }: Curve): number {
  return Math.max(1, curve[0] ?? 1);
}

/** Where the number of a curve stands on it, in turn, so that those of neighbours stay apart. */
const MARKED = [0.5, 0.75, 0.25];

function drawnCurve(curve: Curve, at: number, xOf: (packs: number) => number): readonly string[] {
  const points = SHARES.map((share) => {
    return `${num(xOf(packsBy(curve, share)))} ${num(yOf(share * 100))}`;
  });
  const share = MARKED[at % MARKED.length] ?? 0.5;
  const [x, y] = [xOf(packsBy(curve, share)), yOf(share * 100)];
  return [
    line(`M${points.join('L')}`, `stroke="${INK}" stroke-width="1.6"${dashOf(at)}`),
    `<circle cx="${num(x)}" cy="${num(y)}" r="9" fill="#fff" stroke="${INK}"/>`,
    words(x, y + 4, String(at + 1), { size: 11, more: 'text-anchor="middle"' }),
  ];
}

function keyOf(curve: Curve, at: number): readonly string[] {
  const y = TOP + at * ROW;
  const points = `half by ${grouped(curve.half)}, 90 % by ${grouped(curve.ninety)}, 99 % by ${grouped(curve.ninetyNine)}`;
  const wide = WIDE - EDGE - LEGEND - 44;
  const title = `${String(at + 1)}  ${curve.title}, ${grouped(curve.cards)}`;
  return [
    line(`M${num(LEGEND)} ${num(y + 8)}h34`, `stroke="${INK}" stroke-width="1.6"${dashOf(at)}`),
    words(LEGEND + 44, y + 12, fitted(title, wide)),
    words(LEGEND + 44, y + 26, points, { size: 11, fill: GREY }),
  ];
}

function dashOf(at: number): string {
  const dash = DASHES[at % DASHES.length] ?? '';
  return dash === '' ? '' : ` stroke-dasharray="${dash}"`;
}

function yOf(percent: number): number {
  return TOP + HIGH - (percent / 100) * HIGH;
}
