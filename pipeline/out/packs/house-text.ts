import type { Finding, PacksProduct, PacksReport, PacksSet } from '../../../schema/index.js';
import { ODDS_STEPS, roundedOdds } from '../../packs/index.js';
import { completionText } from './completion-text.js';
import { counted, grouped, hundredth, mixed, nameOf, nearly } from './say.js';
import { sheetsText } from './sheets-text.js';
import { left, right, tableText } from './table.js';
import { undecidedText } from './undecided-text.js';

/** The packs of every set as text, for the house: what is packed, what is wrong, and what it tells. */
export function houseText({ internal, sets }: PacksReport): string {
  const blocks = sets.flatMap((set) => [
    set.title,
    ...block('Impossible or unlikely', set.findings.map(findingText), 'nothing: it all adds up'),
    ...set.products.flatMap(productText),
    ...set.undecided.flatMap(undecidedText),
    ...madeText(set),
    ...sheetsText(set),
    ...set.products.flatMap(completionText),
    ...set.products.flatMap(toldText),
  ]);
  return `${[internal, ...blocks].join('\n\n')}\n`;
}

function block(title: string, lines: readonly string[], none: string): readonly string[] {
  return [[`${title}:`, ...(lines.length > 0 ? lines : [none]).map(indented)].join('\n')];
}

function indented(line: string): string {
  return `  ${line}`;
}

function findingText({ severity, rule, message, file, line, column }: Finding): string {
  return `${severity} ${rule}: ${message} (${file}:${String(line)}:${String(column)})`;
}

function productText(product: PacksProduct): readonly string[] {
  const { title, pack, box, case: boxes, cases, packs, places, taken, left: free } = product;
  const size = `${counted(pack, 'card')} a pack, ${counted(box, 'pack')} a box, ${counted(boxes, 'box', 'boxes')} a case, ${counted(cases, 'case')}`;
  const room =
    free < 0
      ? `${grouped(taken)} taken: ${grouped(-free)} too many`
      : `${grouped(taken)} taken, ${grouped(free)} left`;
  const rows = product.lines.map((line) => [
    line.title,
    grouped(line.copies),
    grouped(line.places),
    hundredth(nearly(line.perBox)),
    hundredth(nearly(line.perCase)),
    ...(line.of === null ? ['', ''] : [oddsText(line), statedText(line)]),
  ]);
  const columns = [
    left('What'),
    right('copies'),
    right('places'),
    right('a box'),
    right('a case'),
    right('true odds'),
    left('as stated'),
  ];
  return [
    [
      `${title}: ${size}`,
      `${counted(packs, 'pack')}, ${counted(places, 'place')}: ${room}`,
      ...tableText(columns, rows).map(indented),
    ].join('\n'),
  ];
}

type Line = PacksProduct['lines'][number];

function oddsText({ packsForOne }: Line): string {
  return packsForOne === null ? 'none' : `1:${hundredth(nearly(packsForOne))}`;
}

function statedText({ stated, oneIn }: Line): string {
  if (stated === null) return oneIn === null ? 'nothing' : `nothing; 1:${grouped(oneIn)} is true`;
  const said = `1:${grouped(stated)}`;
  if (oneIn === null || stated === oneIn) return said;
  if (stated < oneIn) return `${said}, better than the truth`;
  const isRounded = ODDS_STEPS.some((step) => roundedOdds(oneIn, step) === stated);
  return isRounded ? `${said}, rounded up` : `${said}, worse than the truth`;
}

/** Copies of each card, from most to fewest. */
function madeText({ kinds }: PacksSet): readonly string[] {
  const made = kinds.flatMap(({ title, cards }) => cards.map((group) => ({ title, ...group })));
  if (made.length === 0) return [];
  const rows = made
    .toSorted((a, b) => nearly(b.made) - nearly(a.made))
    .map((group) => [nameOf(group), grouped(group.cards), mixed(group.made)]);
  const columns = [left('What'), right('cards'), right('copies of each')];
  return [
    ['Made, those kept in reserve too:', ...tableText(columns, rows).map(indented)].join('\n'),
  ];
}

/** How far the number of cases can be told from what is public. */
function toldText({ title, told, cases }: PacksProduct): readonly string[] {
  if (told.every(({ from, to }) => from === 1 && to >= 100_000)) return [];
  const rows = told.map(({ rounding, from, to, count }) => [
    ROUNDINGS[rounding],
    ...(count === 0
      ? ['none', '']
      : from === 1 && to >= 100_000
        ? ['any', '']
        : [count === 1 ? grouped(from) : `${grouped(from)} to ${grouped(to)}`, grouped(count)]),
  ]);
  const columns = [left('Odds said'), right('cases'), right('possible numbers')];
  return [
    [
      `${title}: what public odds and public runs tell of the number of cases, which is ${grouped(cases)}`,
      ...tableText(columns, rows).map(indented),
    ].join('\n'),
  ];
}

const ROUNDINGS = {
  stated: 'as the plan says them now',
  whole: 'exactly, rounded up',
  fine: 'finely rounded',
  round: 'in round numbers',
  coarse: 'coarsely rounded',
};
