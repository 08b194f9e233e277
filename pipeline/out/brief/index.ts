import type { View, ViewSubset } from '../../gate/index.js';

/** What a host says about everything else; the same whether or not there is anything. */
export const HOLDING_SENTENCE =
  'That is all we can talk about today; the checklist page tells more on the day.';

/**
 * What may be said on camera, in words: what each set lists, and the holding sentence.
 * @throws RangeError for a view that is not the public's.
 */
export function briefText(view: View): string {
  if (view.audience !== 'public')
    throw new RangeError('a brief is made of the public’s view alone');
  const sets = view.sets.map((set) =>
    [set.title, ...set.subsets.map((subset) => `  ${subset.title}: ${sayCount(subset)}`)].join(
      '\n',
    ),
  );
  return `${[...sets, HOLDING_SENTENCE].join('\n\n')}\n`;
}

function sayCount(subset: ViewSubset): string {
  const shown = subset.cards.filter((card) => card.state === 'shown').length;
  const listed = `${String(subset.listed)} ${subset.listed === 1 ? 'card' : 'cards'} listed`;
  return shown === subset.listed ? listed : `${listed}, ${String(shown)} of them revealed`;
}
