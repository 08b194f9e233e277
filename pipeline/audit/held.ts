import type { Content } from '../model/index.js';
import { fold } from './fold.js';
import { cardTargets } from './held-cards.js';
import { nameTargets, secretTargets } from './held-names.js';
import { propertyTargets, salesTargets, setTargets } from './held-sets.js';
import type { Standing } from './standing.js';
import type { Target } from './target.js';

/** Words with fewer letters and digits are in any text. */
const FEWEST = 3;

/** Everything that a reader must not see, worked out anew from the model. */
export function heldWords(content: Content, standing: Standing): readonly Target[] {
  const all = [
    ...nameTargets(content, standing),
    ...secretTargets(content, standing),
    ...propertyTargets(content, standing),
    ...content.sets.flatMap((set) => [
      ...setTargets(set, standing),
      ...salesTargets(set, standing),
      ...set.cards.flatMap((card) => cardTargets(card, set, standing)),
    ]),
  ];
  return all.filter(({ words }) => /\p{L}/u.test(words) && fold(words).length >= FEWEST);
}
