import { counted, grouped, nearly, signed } from './say.js';
import { areNamed, cardsSaid, type PressForm } from './sheets-text.js';

type Group = PressForm['groups'][number];

/** What is said below a sheet: how many there are, and the greatest over-run and under-run. */
export function captionOf({ needed, sheets, groups }: PressForm): readonly string[] {
  const byOver = groups.toSorted((a, b) => nearly(b.over) - nearly(a.over));
  const over = byOver.slice(0, 1).filter((group) => nearly(group.over) > 0);
  const under = byOver.slice(-1).filter((group) => nearly(group.over) < 0);
  const runs = [
    ...over.map((group) => runSaid('over', group, groups.length)),
    ...under.map((group) => runSaid('under', group, groups.length)),
  ];
  return [
    `${counted(needed, 'sheet')} needed, ${grouped(sheets)} printed`,
    ...(runs.length > 0 ? runs : ['as many of each card as are to be made']),
  ];
}

/** "over: +120 of each of 35 cards"; "most over: +2,180 of each of cards 1, 3 and 4". */
function runSaid(side: 'over' | 'under', { labels, over }: Group, groups: number): string {
  const said = `${groups === 1 ? side : `most ${side}`}: ${signed(over)} of`;
  if (labels.length === 1) return `${said} card ${cardsSaid(labels)}`;
  return `${said} each of ${areNamed(labels) ? 'cards ' : ''}${cardsSaid(labels)}`;
}
