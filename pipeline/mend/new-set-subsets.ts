import type { Subset } from '../../schema/index.js';
import { plannedNumbers } from '../model/index.js';
import { answersOf, type Answers, type Ground } from './new-set-answers.js';
import { idFrom, titleFrom } from './new-set-ids.js';
import { readNumbers } from './new-set-numbers.js';
import { listOf, readSpec } from './new-set-spec.js';
import type { Flow } from './new-set-yaml.js';

/** What may be said of a subset. */
export const SUBSET_KEYS = [
  'id',
  'title',
  'group',
  'numbers',
  'prefix',
  'bio',
  'facts',
  'back',
  'order',
  'coverage',
  'found',
  'spoiler',
  'carries',
  'statement',
] as const;

/** A subset as it is asked for, and as the plan has it. */
export interface SubsetDraft {
  readonly id: string;
  readonly group: string;
  readonly numbers: Subset['numbers'];
  readonly line: Flow;
}

export interface SubsetDrafts {
  readonly subsets: readonly SubsetDraft[];
  readonly why: readonly string[];
}

/** The subset of a plan for which nobody has said any: it holds a place while other things are asked. */
const PLACEHOLDER = 'id=cards;title=Cards;numbers=1-1';

/** The subsets of a new set: `id=crew;title=Crew;numbers=1-48;bio=35-60`. */
export function subsetsOf(answers: Answers, ground: Ground): SubsetDrafts {
  const texts = answersOf(answers, 'subset');
  const read = (texts.length === 0 ? [PLACEHOLDER] : texts).map((text, at) =>
    subsetOf(text, at, ground),
  );
  const ids = read.map(({ subset }) => subset.id);
  const twice = ids.filter((id, at) => ids.indexOf(id) !== at);
  return {
    subsets: read.map(({ subset }) => subset),
    why: [
      ...read.flatMap(({ why }) => why),
      ...twice.map((id) => `two subsets are called \`${id}\`: give one of them another id`),
    ],
  };
}

function subsetOf(
  text: string,
  at: number,
  ground: Ground,
): { readonly subset: SubsetDraft; readonly why: readonly string[] } {
  const { said, why } = readSpec(text, SUBSET_KEYS);
  const neutral = `subset-${String(at + 1)}`;
  const id = said.get('id') ?? (idFrom(said.get('title') ?? '') || neutral);
  const numbers = readNumbers(said.get('numbers') ?? '1-1', said.get('prefix'));
  const bio = bioFrom(said.get('bio'));
  const planned = numbers.ok ? numbers.numbers : 'none';
  const isPrefixed = planned === 'none' || 'codes' in planned || planned.prefix !== undefined;
  const group = said.get('group') ?? (isPrefixed ? 'inserts' : 'base');
  const facts = said.get('facts');
  const coverage = said.get('coverage')?.split('-');
  const line: Flow = {
    id,
    title: said.get('title') ?? titleFrom(id),
    group,
    numbers: planned === 'none' ? planned : { ...planned },
    back: backFor(said.get('back'), ground),
    bio: bio.bio,
    facts: facts === undefined ? undefined : listOf(facts),
    order: said.get('order'),
    coverage: coverage && { from: coverage[0] ?? '', to: coverage[1] ?? coverage[0] ?? '' },
    found: said.get('found'),
    spoiler: said.get('spoiler'),
    carries: said.get('carries'),
    statement: said.get('statement'),
  };
  const isNamed = said.has('id') || said.has('title');
  const faults = [
    ...why,
    ...(isNamed ? [] : ['a subset has neither id nor title: write it like id=crew;title=Crew']),
    ...(said.has('numbers') ? [] : [`\`${id}\` does not say its numbers, such as numbers=1-48`]),
    ...(numbers.ok ? [] : [`numbers=${said.get('numbers') ?? ''}: ${numbers.why}`]),
    ...bio.why,
  ];
  return { subset: { id, group, numbers: planned, line }, why: faults };
}

/** The layout that a new property comes with; of another, the one of that name or the only one. */
function backFor(said: string | undefined, { home }: Ground): string | undefined {
  if (said !== undefined) return said;
  if (home === null || home.layouts.includes('standard')) return 'standard';
  return home.layouts.length === 1 ? home.layouts[0] : undefined;
}

/** Bounds of a bio: `35-60` words, `60` at most, or `none`. */
function bioFrom(text: string | undefined): {
  readonly bio: Flow | undefined;
  readonly why: readonly string[];
} {
  if (text === undefined) return { bio: undefined, why: [] };
  if (text === 'none') return { bio: text, why: [] };
  const [, min, max] = /^(?:(\d{1,6})\s*[-–]\s*)?(\d{1,6})$/.exec(text) ?? [];
  if (max === undefined) {
    return { bio: undefined, why: [`bio=${text}: write words like 35-60, or none`] };
  }
  if (min === undefined) return { bio: { words: { max: Number(max) } }, why: [] };
  if (Number(min) > Number(max)) {
    return { bio: undefined, why: [`bio=${text} runs backwards: write words like 35-60, or none`] };
  }
  return { bio: { words: { min: Number(min), max: Number(max) } }, why: [] };
}

/** How many cards the plan numbers in each group, in the order of the groups. */
export function totalsOf(subsets: readonly SubsetDraft[]): Readonly<Record<string, number>> {
  const totals = new Map<string, number>();
  for (const { group, numbers } of subsets) {
    const cards = plannedNumbers(numbers)?.length;
    if (cards !== undefined) totals.set(group, (totals.get(group) ?? 0) + cards);
  }
  return Object.fromEntries(totals);
}
