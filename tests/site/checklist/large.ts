import type { PublicCard, PublicData } from '../../../schema/index.js';
import { data } from '../fixture.js';

const FIRST = ['Odalys', 'Emeric', 'Tamsin', 'Dorrit', 'Dace', 'Quillon', 'Harl', 'Osk', 'Ysolde'];
const LAST = ['Thrane', 'Hask', 'Oakum', 'Sill', 'Ash', 'Dunnock', 'Ferrant', 'Marrack', 'Tern'];

/** A set of so many cards: names alike and yet not the same, each fourth with something noted. */
export function largeData(cards: number): PublicData {
  const [set] = data.sets;
  const [subset] = set?.subsets ?? [];
  const [card] = subset?.cards ?? [];
  if (!set || !subset || !card) throw new Error('the fixture has a set with cards');
  const all = Array.from({ length: cards }, (_, at): PublicCard => {
    const name = `${FIRST[at % 9] ?? ''} ${LAST[(at * 7 + Math.floor(at / 9)) % 9] ?? ''} of lock ${String(at % 13)}`;
    const number = String(at + 1);
    const run = at % 4 === 0 ? 100 + at : null;
    return { ...card, number, name, run, page: `high-water/crew/${number}/` };
  });
  const parallels = set.parallels.map((parallel) => ({ ...parallel, of: ['crew'] }));
  const large = { ...set, subsets: [{ ...subset, listed: cards, cards: all }], parallels };
  return { ...data, news: [], sets: [large] };
}
