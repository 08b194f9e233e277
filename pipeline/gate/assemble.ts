import {
  asOf,
  cardHold,
  holdNamed,
  statedHold,
  subsetHold,
  type Hold,
  type Instant,
  type Schedule,
} from '../model/index.js';
import type { PropertyFile } from '../../schema/index.js';
import type { Released } from '../select/index.js';
import { viewLayouts } from './layouts.js';
import { lensOf, liftedLabels, siteShows, type Audience, type Lens } from './lens.js';
import { viewAvoided, viewNames } from './names.js';
import { compareIds, viewSet } from './set.js';
import type { Tables } from './tables.js';
import { seal, type View, type ViewProperty, type ViewSite } from './view.js';

/**
 * What an audience may see of a released property, key by key, as the tables decide. Null before
 * `since`, when nothing is public.
 */
export function assembleView(released: Released, audience: Audience, tables: Tables): View | null {
  const step = audience.kind === 'house' ? null : stepOf(released, audience.at);
  if (step === null && audience.kind === 'public') return null;
  const lens = lensOf(released.property, atStep(audience, step));
  const sets = released.sets.flatMap((set) => viewSet(set, lens, tables) ?? []).sort(compareIds);
  return {
    [seal]: true,
    audience: audience.kind,
    person:
      audience.kind === 'person' && lens.admits(tables.person.name) ? audience.person.name : null,
    asOf: step,
    highest: lens.admits(tables.level.id, tables.embargo.id)
      ? highestLevel(released, lens.schedule)
      : null,
    property: viewProperty(released, lens, tables),
    layouts: viewLayouts(released, sets, lens, tables),
    sets,
    names: viewNames(released, lens, tables),
    avoided: viewAvoided(released, lens, tables),
  };
}

function stepOf(released: Released, at: Instant): Instant | null {
  return asOf(released.property, released.sets, at);
}

/** The public's view depends on an instant only through the steps of time. */
function atStep(audience: Audience, step: Instant | null): Audience {
  return audience.kind === 'public' && step !== null ? { ...audience, at: step } : audience;
}

function viewProperty({ property }: Released, lens: Lens, tables: Tables): ViewProperty {
  const { title, zone, legal, site } = tables.property;
  const line = lens.admits(legal, tables.legal.line) ? property.legal?.line : undefined;
  return {
    title: lens.admits(title) ? property.title : '',
    zone: lens.admits(zone) ? property.zone : 'UTC',
    legal: line ?? null,
    shows: lens.admits(site, tables.site.shows) ? siteShows(property) : [],
    site: viewSite(property, lens, tables),
    levels: lens.admits(tables.level.label) ? liftedLabels(lens) : [],
  };
}

function viewSite({ site }: PropertyFile, lens: Lens, tables: Tables): ViewSite {
  const open = lens.admits(tables.property.site) ? site : undefined;
  const look = lens.admits(tables.site.look) ? open?.look : undefined;
  return {
    title: (lens.admits(tables.site.title) ? open?.title : undefined) ?? null,
    address: (lens.admits(tables.site.address) ? open?.address : undefined) ?? null,
    dataTerms: (lens.admits(tables.site.dataTerms) ? open?.dataTerms : undefined) ?? null,
    accent: (lens.admits(tables.look.accent) ? look?.accent : undefined) ?? null,
    paper: (lens.admits(tables.look.paper) ? look?.paper : undefined) ?? null,
    ink: (lens.admits(tables.look.ink) ? look?.ink : undefined) ?? null,
    type: (lens.admits(tables.look.type) ? look?.type : undefined) ?? null,
  };
}

/** The label of the highest level that anything of the property's sets has. */
function highestLevel({ sets }: Released, schedule: Schedule): string {
  const holds = sets.flatMap(({ plan: { value: plan }, cards }): Hold[] => [
    ...plan.subsets.map((subset) => subsetHold(schedule, plan, subset.id)),
    ...(plan.parallels ?? []).map((parallel) => statedHold(schedule, parallel)),
    ...cards.map((card) => cardHold(schedule, plan, card)),
    ...cards
      .flatMap((card) => [
        ...Object.values(card.front.holds ?? {}),
        ...card.bio.flat().flatMap((run) => run.hold ?? []),
      ])
      .map((id) => holdNamed(schedule, id)),
  ]);
  const highest = Math.max(0, ...holds.map((hold) => hold.level));
  return schedule.levels[highest]?.label ?? '';
}
