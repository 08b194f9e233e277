import { NEVER, inHands, liftOf, sayHold } from '../model/index.js';
import { read, type Looked } from './field.js';
import type { HouseNotes } from './view.js';

/** What only the house is told about a card, key by key as the tables decide; else null. */
export function houseNotes(looked: Looked): HouseNotes | null {
  const { set, card, hold, lens, tables } = looked;
  const ids = lens.admits(tables.level.id, tables.embargo.id);
  const label = ids && lens.admits(tables.level.label);
  const depicts = lens.admits(tables.image.depicts);
  const ships = lens.admits(tables.card.ships, tables.subset.ships);
  const { state, writer, remark, why } = tables.card;
  if (!ids && ![state, writer, remark, why].some((key) => lens.admits(key))) {
    return null;
  }
  return {
    hold: ids ? sayHold(lens.schedule, hold) : '',
    level: (label ? lens.schedule.levels[hold.level]?.label : undefined) ?? '',
    lift: ids ? liftOf(lens.schedule, hold) : NEVER,
    inHands: ships ? inHands(set.plan.value, card) : NEVER,
    depicts: depicts ? (card.front.image?.depicts ?? []) : [],
    state: read(looked, 'state') ?? 'draft',
    writer: read(looked, 'writer') ?? null,
    remark: read(looked, 'remark') ?? null,
    why: read(looked, 'why') ?? null,
  };
}
