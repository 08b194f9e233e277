import type { PacksProduct } from '../../../schema/index.js';
import { grouped } from './say.js';
import { BAND, BAR, EDGE, WIDE, heading, rect, words, type Panel } from './svg.js';

const TOP = 54;
const ROW = 22;
const LEFT = 300;
const RIGHT = WIDE - EDGE - 250;

/** What the places of all packs of a product hold. */
export function contentsPanel(product: PacksProduct): Panel | null {
  const { title, pack, packs, places, lines } = product;
  const rows = lines.filter((each) => each.places > 0);
  if (rows.length === 0 || packs === 0) return null;
  const most = Math.max(...rows.map((each) => each.places));
  const bars = rows.flatMap((each, at) => {
    const y = TOP + at * ROW;
    const wide = (each.places / most) * (RIGHT - LEFT);
    const percent = (each.places / places) * 100;
    const share = percent < 0.1 ? 'under 0.1' : percent.toFixed(1);
    const odds = each.what === 'base' ? '' : `, 1:${grouped(each.oneIn ?? 0)} packs`;
    return [
      words(LEFT - 10, y + 15, each.title, { more: 'text-anchor="end"' }),
      rect(LEFT, y + 4, Math.max(wide, 1), ROW - 8, each.what === 'base' ? BAND : BAR),
      words(LEFT + wide + 8, y + 15, `${share} % of places${odds}`, { size: 12 }),
    ];
  });
  const head = heading(
    `${title}: what its packs hold`,
    `${grouped(places)} places in ${grouped(packs)} packs of ${grouped(pack)}. Light: base cards, which are the rest.`,
  );
  return { marks: [...head, ...bars], high: TOP + rows.length * ROW };
}
