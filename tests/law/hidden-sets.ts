import type { Subset } from '../../schema/index.js';
import { hidden, hiddenFromPublic, one, shuffle, type Dice, type HiddenEdit } from './edit.js';
import { instantText } from './generate-words.js';
import { aboutCard, aboutSubset, sent, standing, type Eye, type Standing } from './held.js';
import { closedIds } from './hidden-cards.js';
import type { Plain, PlainSet } from './plain.js';

interface FoundSubset {
  readonly set: PlainSet;
  readonly subset: Subset;
  readonly standing: Standing;
}

function subsetsAs(draft: Plain, eye: Eye, ...wanted: Standing[]): FoundSubset[] {
  return draft.sets
    .flatMap((set) =>
      set.plan.subsets.map((subset) => ({
        set,
        subset,
        standing: standing(draft, eye, ...aboutSubset(set, subset.id)),
      })),
    )
    .filter((found) => wanted.includes(found.standing));
}

function setsAs(draft: Plain, eye: Eye, ...wanted: Standing[]): PlainSet[] {
  return draft.sets.filter((set) => wanted.includes(standing(draft, eye, set.plan)));
}

/** Sets that the audience is told of. */
export function listed(draft: Plain, eye: Eye): PlainSet[] {
  return setsAs(draft, eye, 'open', 'placeholder');
}

function hold(id: string): { spoiler: string; embargo: string[] } {
  return id === 'finale' ? { spoiler: id, embargo: [] } : { spoiler: 'open', embargo: [id] };
}

/** Plan keys of a subset that no view shows. */
function planSubset(subset: Subset, dice: Dice): void {
  const change = dice.pick([
    () => (subset.facts = [dice.words()]),
    () => (subset.order = 'story'),
    () => (subset.coverage = { from: '1/1', to: `9/${1 + dice.below(90)}` }),
    () => renumberPlan(subset, dice),
  ]);
  change?.();
}

/** How long a bio may be, which whoever reviews an open subset is told. */
function planBio(subset: Subset, dice: Dice): void {
  subset.bio = dice.chance() ? 'none' : { words: { max: 1 + dice.below(90) } };
}

/** The range or the codes that a plan gives out: what is listed counts, not what is planned. */
function renumberPlan(subset: Subset, dice: Dice): void {
  if (subset.numbers === 'none') return;
  if ('codes' in subset.numbers) subset.numbers.codes = [dice.words(), dice.words()];
  else subset.numbers = { ...subset.numbers, to: dice.below(500), from: dice.below(9) };
}

const SUBSETS: readonly HiddenEdit[] = [
  hidden('an absent subset, edited', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'absent'), ({ subset }) => {
      const { id, spoiler, embargo } = subset;
      Object.assign(subset, { title: dice.words(), group: `group-${dice.below(9)}` });
      Object.assign(subset, { found: dice.pick(['pack', 'box', 'event']), back: 'spare' });
      planSubset(subset, dice);
      planBio(subset, dice);
      Object.assign(subset, { id, ...(spoiler && { spoiler }), ...(embargo && { embargo }) });
      return true;
    }),
  ),
  hidden('an absent subset less', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'absent'), ({ set, subset: { id } }) => {
      set.plan.subsets = set.plan.subsets.filter((subset) => subset.id !== id);
      set.cards = set.cards.filter((card) => card.subset !== id);
      set.plan.parallels = (set.plan.parallels ?? [])
        .map((parallel) => ({ ...parallel, of: parallel.of.filter((of) => of !== id) }))
        .filter((parallel) => parallel.of.length > 0);
      return set.plan.subsets.length > 0;
    }),
  ),
  hidden('an absent subset more', (draft, eye, dice) => {
    const closed = dice.pick(closedIds(draft, eye, 'absent'));
    if (closed === undefined) return false;
    return one(dice, listed(draft, eye), (set) => {
      const id = `more-${dice.below(1e6)}`;
      const from = dice.pick(set.plan.subsets);
      if (!from) return false;
      const subset = { ...structuredClone(from), id, title: dice.words(), ...hold(closed) };
      set.plan.subsets.splice(dice.below(set.plan.subsets.length + 1), 0, subset);
      set.cards.push(
        ...set.cards
          .filter((card) => card.subset === from.id)
          .map((card) => ({ ...structuredClone(card), subset: id })),
      );
      for (const parallel of set.plan.parallels ?? []) if (dice.chance()) parallel.of.push(id);
      return true;
    });
  }),
  hidden('the place of an absent subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'absent'), ({ set, subset }) => {
      const others = set.plan.subsets.filter((other) => other !== subset);
      others.splice(dice.below(others.length + 1), 0, subset);
      set.plan.subsets = others;
      return true;
    }),
  ),
  hidden('plan keys of a subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'open', 'placeholder'), ({ subset }) => {
      planSubset(subset, dice);
      return true;
    }),
  ),
  hiddenFromPublic('when a subset ships', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'open', 'placeholder'), ({ subset }) => {
      subset.ships = dice.chance() ? 'unset' : instantText(dice.below(300));
      return true;
    }),
  ),
  hiddenFromPublic('the statement of a subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'open', 'placeholder'), ({ subset }) => {
      subset.statement = dice.words();
      return true;
    }),
  ),
  hidden('the statement of a held subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'placeholder'), ({ subset }) => {
      subset.statement = dice.words();
      return true;
    }),
  ),
  hiddenFromPublic('the length of bios of a subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'open', 'placeholder'), ({ subset }) => {
      planBio(subset, dice);
      return true;
    }),
  ),
  hidden('the length of bios of a held subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'placeholder'), ({ subset }) => {
      planBio(subset, dice);
      return true;
    }),
  ),
  hiddenFromPublic('back of a subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'open', 'placeholder'), ({ subset }) => {
      subset.back = `back-${dice.below(99)}`;
      return true;
    }),
  ),
  hidden('back of a held subset', (draft, eye, dice) =>
    one(dice, subsetsAs(draft, eye, 'placeholder'), ({ subset }) => {
      subset.back = dice.pick(['standard', 'ornate', 'spare']) ?? 'spare';
      return true;
    }),
  ),
];

const SETS: readonly HiddenEdit[] = [
  hidden('an absent set, edited', (draft, eye, dice) =>
    one(dice, setsAs(draft, eye, 'absent'), (set) => {
      const edit = dice.pick([
        () => (set.plan.short = dice.words()),
        () => (set.plan.street = instantText(dice.below(300))),
        () => (set.plan.parallels = []),
        () => (set.plan.products = []),
        () => set.cards.splice(0, 1),
        () => (set.plan.subsets = set.plan.subsets.slice(0, 1)),
      ]);
      set.plan.title = dice.words();
      edit?.();
      return true;
    }),
  ),
  hidden('an absent set less', (draft, eye, dice) =>
    one(dice, setsAs(draft, eye, 'absent'), (set) => {
      draft.sets = draft.sets.filter((other) => other !== set);
      return true;
    }),
  ),
  hidden('an absent set more', (draft, eye, dice) => {
    const closed = dice.pick(closedIds(draft, eye, 'absent'));
    const from = dice.pick(draft.sets);
    if (closed === undefined || !from) return false;
    const id = dice.pick(['aaa', 'mmm', 'zzz']) ?? 'aaa';
    const street = instantText(dice.below(300));
    const more = { ...structuredClone(from), id };
    more.plan = { ...more.plan, id, street, ...hold(closed) };
    draft.sets.splice(dice.below(draft.sets.length + 1), 0, more);
    return true;
  }),
  ...(['stage', 'dates', 'totals', 'merge', 'readingAge', 'style', 'accepted'] as const).map(
    (key) =>
      hidden(`${key} of a plan`, (draft, _eye, dice) =>
        one(dice, draft.sets, ({ plan }) => {
          if (key !== 'stage' && key in plan && dice.chance())
            return Reflect.deleteProperty(plan, key);
          if (key === 'stage')
            plan.stage = dice.pick(['planning', 'writing', 'locked']) ?? 'locked';
          if (key === 'dates') plan.dates = { solicit: `2026-11-${10 + dice.below(19)}` };
          if (key === 'totals') plan.totals = { base: dice.below(999) };
          if (key === 'merge') plan.merge = { columns: [{ column: dice.words(), from: 'bio' }] };
          if (key === 'readingAge') plan.readingAge = 5 + dice.below(14);
          if (key === 'style') plan.style = { quotes: dice.chance() ? 'curly' : 'straight' };
          if (key === 'accepted') {
            plan.accepted = [{ rule: 'alike', words: dice.words(), why: 'So', by: 'jonah' }];
          }
          return true;
        }),
      ),
  ),
  hidden('a correction of a card that is not shown', (draft, eye, dice) =>
    one(dice, draft.sets, (set) => {
      const entries = (set.corrections ??= { corrections: [] }).corrections;
      const unseen = set.cards
        .filter(
          (card) =>
            standing(draft, eye, ...aboutCard(set, card)) !== 'open' ||
            !sent(draft, eye, set, card),
        )
        .map((card) => `${card.subset}/${card.id}`);
      const old = entries.findIndex(({ card }) => unseen.includes(card));
      const entry = { at: '2027-02-01', was: dice.words(), now: dice.words() };
      if (old >= 0 && dice.chance()) entries.splice(old, 1);
      else {
        const card = dice.pick([...unseen, 'crew/nobody']) ?? '';
        entries.splice(dice.below(entries.length + 1), 0, { card, ...entry });
      }
      return true;
    }),
  ),
];

const ROSTERS: readonly HiddenEdit[] = [
  hidden('an artist who has not signed', (draft, eye, dice) =>
    one(dice, listed(draft, eye), ({ rosters }) =>
      one(dice, Object.values(rosters), ({ artists }) => {
        const state = dice.pick(['asked', 'contracted', 'withdrawn'] as const) ?? 'asked';
        const waiting = artists.find((artist) => artist.state !== 'signed');
        if (waiting && dice.chance()) Object.assign(waiting, { name: dice.words(), state });
        else artists.splice(dice.below(artists.length + 1), 0, { name: dice.words(), state });
        return true;
      }),
    ),
  ),
  hidden('what is noted of an artist', (draft, _eye, dice) =>
    one(dice, draft.sets, ({ rosters }) =>
      one(
        dice,
        Object.values(rosters).flatMap(({ artists }) => artists),
        (artist) => {
          if (dice.chance()) artist.remark = dice.words();
          else artist.since = `2027-01-${10 + dice.below(19)}`;
          return true;
        },
      ),
    ),
  ),
  hidden('the roster of a subset that is held', (draft, eye, dice) => {
    const open = subsetsAs(draft, eye, 'open');
    const held = subsetsAs(draft, eye, 'placeholder', 'absent').filter(
      ({ set, subset: { roster } }) =>
        !open.some((other) => other.set === set && other.subset.roster === roster),
    );
    return one(dice, held, ({ set, subset }) => {
      const roster = set.rosters[subset.roster ?? ''];
      if (!roster) return false;
      roster.artists = [{ name: dice.words(), state: 'signed' }];
      return true;
    });
  }),
  hidden('the order of a roster', (draft, _eye, dice) =>
    one(dice, draft.sets, ({ rosters }) =>
      one(dice, Object.values(rosters), ({ artists }) => shuffle(artists, dice)),
    ),
  ),
];

export const SET_EDITS: readonly HiddenEdit[] = [...SUBSETS, ...SETS, ...ROSTERS];
