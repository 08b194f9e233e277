import {
  heldSpans,
  holdNamed,
  join,
  statedHold,
  type CardSet,
  type Hold,
  type SalesText,
} from '../model/index.js';
import { cutCopy } from './copy.js';
import type { Lens } from './lens.js';
import type { Tables } from './tables.js';
import type { ViewSales } from './view.js';

/** The sales texts of a set that an audience may read, by id. */
export function viewSales(set: CardSet, lens: Lens, tables: Tables): readonly ViewSales[] {
  const { kind, title } = tables.sales;
  if (!lens.admits(kind)) return [];
  return set.sales
    .filter((text) => lens.standing(salesHold(text, set, lens)) === 'open')
    .map((text) => ({
      id: text.id,
      kind: text.front.kind,
      title: (lens.admits(title) ? text.front.title : undefined) ?? null,
      words: cutCopy(text.words, salesHold(text, set, lens), lens),
    }))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
}

/** Whether nothing of a sales text is hidden. */
export function isSalesWhole(text: SalesText, set: CardSet, lens: Lens): boolean {
  const hold = salesHold(text, set, lens);
  const spans = heldSpans(text.words).map((span) =>
    join(hold, holdNamed(lens.schedule, span.hold)),
  );
  return [hold, ...spans].every((each) => lens.standing(each) === 'open');
}

function salesHold({ front }: SalesText, set: CardSet, { schedule }: Lens): Hold {
  return join(statedHold(schedule, set.plan.value), statedHold(schedule, front));
}
