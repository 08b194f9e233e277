import type { BackFile } from '../../schema/index.js';
import type { Released } from '../select/index.js';
import type { Lens } from './lens.js';
import type { Tables } from './tables.js';
import type { ViewSet } from './view.js';

/** The layouts that the cards of a view name: others may belong to what is held. */
export function viewLayouts(
  { layouts }: Released,
  sets: readonly ViewSet[],
  lens: Lens,
  tables: Tables,
): ReadonlyMap<string, BackFile> {
  const cards = sets.flatMap((set) => set.subsets.flatMap((subset) => subset.cards));
  const named = [...new Set(cards.flatMap((card) => card.layout ?? []))].sort();
  return new Map(
    named.flatMap((id) => {
      const layout = layouts.get(id);
      const seen = layout ? viewLayout(layout.value, lens, tables.back) : null;
      return seen ? [[id, seen] as const] : [];
    }),
  );
}

/** A layout key by key; null if a key that no layout can do without is not for this audience. */
function viewLayout(layout: BackFile, lens: Lens, table: Tables['back']): BackFile | null {
  const { id, trim, bleed, safe, fonts, zones } = layout;
  if (!lens.admits(table.id, table.trim, table.bleed, table.safe, table.fonts, table.zones)) {
    return null;
  }
  const { paper, frontPaper, front, panels, shared, blank } = layout;
  return {
    id,
    trim,
    bleed,
    safe,
    ...(lens.admits(table.paper) && paper !== undefined ? { paper } : {}),
    ...(lens.admits(table.frontPaper) && frontPaper !== undefined ? { frontPaper } : {}),
    fonts,
    zones,
    ...(lens.admits(table.front) && front !== undefined ? { front } : {}),
    ...(lens.admits(table.panels) && panels !== undefined ? { panels } : {}),
    ...(lens.admits(table.shared) && shared !== undefined ? { shared } : {}),
    ...(lens.admits(table.blank) && blank !== undefined ? { blank } : {}),
  };
}
