import type { PropertyFile, Subset } from '../../schema/index.js';
import {
  compareScenes,
  isIssued,
  isVariation,
  sceneOf,
  sceneWithin,
  type Card,
  type Scene,
} from '../model/index.js';
import type { Numbering } from './numbering.js';

export type Beat = NonNullable<PropertyFile['beats']>[number];
type Coverage = NonNullable<Subset['coverage']>;

/** The cards of a subset against the story. Variations and cards that are not issued are left out. */
export interface Storyline {
  /** The coverage ends before it begins. */
  readonly backwards: boolean;
  /** Cards that name no scene. */
  readonly sceneless: readonly Card[];
  /** Cards whose scene lies outside the coverage. */
  readonly outside: readonly Card[];
  /** The fewest cards that would have to move for the rest to stand in story order. */
  readonly disordered: readonly Card[];
  /** Beats inside the coverage that no card tells and that nothing else wrong explains. */
  readonly untold: readonly Beat[];
}

/** Null for a subset that neither follows the order of the story nor covers a part of it. */
export function storylineOf(
  plan: Subset,
  cards: readonly Card[],
  numbering: Numbering,
  beats: readonly Beat[],
): Storyline | null {
  if (plan.order === undefined && plan.coverage === undefined) return null;
  const backwards = plan.coverage !== undefined && !covers(plan.coverage, plan.coverage.from);
  const coverage = backwards ? undefined : plan.coverage;
  const printed = cards.filter((card) => isIssued(card) && !isVariation(card));
  const sceneless = printed.filter((card) => card.front.story === undefined);
  const [inside, outside] = divide(printed, coverage);
  const disordered = plan.order === 'story' ? outOfOrder(byNumber(inside, numbering)) : [];
  const told = new Set(printed.map((card) => card.front.story));
  const untold = coverage
    ? beats.filter((beat) => covers(coverage, beat.at) && !told.has(beat.at))
    : [];
  const wrong = sceneless.length + outside.length + disordered.length;
  const explained = !numbering.clean || printed.length === 0 || untold.length <= wrong;
  return { backwards, sceneless, outside, disordered, untold: explained ? [] : untold };
}

function covers(coverage: Coverage, scene: string): boolean {
  return sceneWithin(sceneOf(scene), sceneOf(coverage.from), sceneOf(coverage.to));
}

function divide(cards: readonly Card[], coverage: Coverage | undefined): [Card[], Card[]] {
  const inside: Card[] = [];
  const outside: Card[] = [];
  for (const card of cards) {
    const scene = card.front.story;
    if (scene === undefined) continue;
    (coverage === undefined || covers(coverage, scene) ? inside : outside).push(card);
  }
  return [inside, outside];
}

/** Cards that bear a planned number, in the order of the plan. */
function byNumber(cards: readonly Card[], numbering: Numbering): Card[] {
  const places = new Map(numbering.planned?.map((number, at) => [number, at]));
  return cards
    .flatMap((card) => {
      const place = places.get(card.front.number);
      return place === undefined ? [] : [{ card, place }];
    })
    .sort((a, b) => a.place - b.place)
    .map(({ card }) => card);
}

/** What a longest run in story order leaves out (Schensted 1961, by binary search: n log n). */
function outOfOrder(cards: readonly Card[]): Card[] {
  const scenes = cards.map((card) => sceneOf(card.front.story ?? ''));
  /** By length of run less one: the card with which the run that ends earliest ends. */
  const ends: number[] = [];
  const before = scenes.map((scene, at) => {
    const length = firstLater(ends, scenes, scene);
    ends[length] = at;
    return ends[length - 1];
  });
  const kept = new Set<number>();
  for (let at = ends.at(-1); at !== undefined; at = before[at]) kept.add(at);
  return cards.filter((_, at) => !kept.has(at));
}

/** How many runs end no later than this scene. */
function firstLater(ends: readonly number[], scenes: readonly Scene[], scene: Scene): number {
  let low = 0;
  let high = ends.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    const end = scenes[ends[middle] ?? 0];
    if (end && compareScenes(end, scene) <= 0) low = middle + 1;
    else high = middle;
  }
  return low;
}
