import type { ViewProduct, ViewSet } from '../../gate/index.js';
import { mm } from '../card/index.js';
import { toldFigures, type ToldFigures } from '../packs/index.js';
import {
  BEFORE_ODDS_PRINT,
  cardCount,
  grouped,
  ODDS_CAUTIONS,
  oddsWords,
} from '../wording/index.js';
import { block, draw, plain, type Style } from './chrome.js';
import { INK, QUIET } from './colours.js';
import { lower } from './deck-items.js';
import { legible } from './deck-words.js';
import { count } from './fit-words.js';
import type { FlowItem } from './flow.js';
import { PAPERS } from './geometry.js';
import { lazily, type Stand } from './odds-cells.js';
import { completionItems } from './odds-curves.js';
import { barTableItems } from './odds-table.js';
import type { Pen } from './pen.js';
import { TEXT_MARGIN } from './text-pages.js';
import type { ProofOptions } from './types.js';

/** The title of the pages that show which odds and runs are told. */
export const ODDS_TITLE = 'Odds and runs';

const HEADING: Style = { size: 13, leading: 17, colour: INK, face: 'bold' };
const PRODUCT: Style = { size: 10, leading: 13, colour: INK, face: 'bold' };
const BODY: Style = { size: 9, leading: 12, colour: INK };
const SMALL: Style = { size: 7.5, leading: 9.5, colour: QUIET };

/**
 * What is to be read of the odds and runs of a set, for whoever says yes to them; nothing where none
 * are told. It is made of the set as the view shows it, and of nothing else.
 */
export function oddsItems(pen: Pen, set: ViewSet, options: ProofOptions): readonly FlowItem[] {
  const told = toldFigures(set);
  const hasOdds = told.products.some(({ found }) => found.length > 0);
  if (!hasOdds && told.made.length === 0) return [];
  const isCompleted = told.products.some(({ complete }) => complete.length > 0);
  const section = lazily(() => pen.section(`${set.short}: ${ODDS_TITLE.toLowerCase()}`));
  const stand: Stand = { pen, section, options };
  const lead = options.submission ? `${LEAD} ${NO_BOXES}` : LEAD;
  return [
    ...words('What collectors will be told of odds and runs', { style: HEADING, tag: 'H1' }, stand),
    ...words(lead, { style: BODY, before: mm(1) }, stand),
    ...(hasOdds ? cautionItems(stand) : []),
    ...words(
      isCompleted ? `${HOW_TO_READ} ${COMPLETING}` : HOW_TO_READ,
      { style: SMALL, before: mm(1.5) },
      stand,
    ),
    ...productItems(set, told, stand),
    ...runItems(told, stand),
  ];
}

const LEAD =
  'These lines go on the site, on the sheet for shops and on wrappers. Hold each against what was agreed: what is printed cannot be taken back.';
const NO_BOXES = 'There is no box to mark here; remarks go on the last page.';
const HOW_TO_READ =
  'Bars are on a logarithmic scale: each line is ten times the one before it. Of odds the longer bar is the rarer, of runs the one with more copies.';
const COMPLETING =
  'How many packs it takes a collector who does not trade to have all cards of a subset is worked out from the odds, and not promised: if each of its cards is as common as the others, and packs are filled by chance.';

/** What is found in each product and how often, and what it takes to have all of it. */
function productItems(set: ViewSet, { products }: ToldFigures, stand: Stand): readonly FlowItem[] {
  const most = Math.max(1, ...products.flatMap(({ found }) => found.map(({ packs }) => packs)));
  return products.flatMap(({ id, title, found, complete }) => {
    const [first] = found;
    const last = found.at(-1);
    if (!first || !last) return [];
    const product = set.products.find((each) => each.id === id);
    const table = {
      heads: ['Found', 'Odds'],
      rows: found.map(({ title: name, packs }) => ({
        title: name,
        figures: [oddsWords(packs)],
        value: packs,
      })),
      most,
      alt: `Bars of the odds in ${title}, on a logarithmic scale of packs: from ${first.title}, ${oddsWords(first.packs)}, to ${last.title}, ${oddsWords(last.packs)}.`,
    };
    return [
      ...words(headOf(title, product), { style: PRODUCT, tag: 'H2', before: mm(5) }, stand),
      ...barTableItems(table, stand),
      ...completionItems(complete, stand),
    ];
  });
}

/** "Hobby: 6 cards a pack, 24 packs a box". */
function headOf(title: string, product: ViewProduct | undefined): string {
  const { pack = null, box = null } = product ?? {};
  const sizes = [
    ...(pack === null ? [] : [`${cardCount(pack)} a pack`]),
    ...(box === null ? [] : [`${count(box, 'pack')} a box`]),
  ];
  return sizes.length === 0 ? title : `${title}: ${sizes.join(', ')}`;
}

/** Runs that are told, from most copies to fewest. */
function runItems({ made }: ToldFigures, stand: Stand): readonly FlowItem[] {
  const [first] = made;
  const last = made.at(-1);
  if (!first || !last) return [];
  const table = {
    heads: ['Run', 'Copies of each', 'Cards'],
    rows: made.map(({ title, copies, cards }) => ({
      title,
      figures: [grouped(copies), grouped(cards)],
      value: copies,
    })),
    most: first.copies,
    alt: `Bars of the runs, on a logarithmic scale of copies: from ${first.title}, ${grouped(first.copies)}, to ${last.title}, ${grouped(last.copies)}.`,
  };
  return [
    ...words('Runs', { style: PRODUCT, tag: 'H2', before: mm(5) }, stand),
    ...barTableItems(table, stand),
  ];
}

/** What is said beside odds, and what is to be settled before they are printed. */
function cautionItems(stand: Stand): readonly FlowItem[] {
  const said = `Beside the odds is always said: “${ODDS_CAUTIONS.join(' ')}”`;
  return [said, BEFORE_ODDS_PRINT].flatMap((text) =>
    words(text, { style: BODY, before: mm(1.5) }, stand),
  );
}

/** Words in the width of the page, kept with what follows. */
function words(
  text: string,
  {
    style,
    tag = 'P',
    before = 0,
  }: { readonly style: Style; readonly tag?: 'H1' | 'H2' | 'P'; readonly before?: number },
  { pen, section, options }: Stand,
): readonly FlowItem[] {
  const { chrome, paper } = options;
  const width = PAPERS[paper].width - 2 * TEXT_MARGIN;
  const set = block(legible([plain(text)], chrome), { x: TEXT_MARGIN, y: 0 }, width, style, chrome);
  return [
    {
      before,
      lines: set.lines.length,
      leading: style.leading,
      keep: true,
      draw: (from, to, y) => {
        const lines = lower(set.lines.slice(from, to), y - from * style.leading);
        pen.reads(section(), tag, () => draw(pen, { ...set, lines }));
      },
    },
  ];
}
