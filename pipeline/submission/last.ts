import type { FieldText, SubmittedPart } from '../out/packet/index.js';
import { readKeptText } from '../read/index.js';
import {
  decisionsOf,
  earlierThanSeen,
  fieldTexts,
  salesText,
  scheduleSeen,
  type Json,
  type Part,
  type SeenSchedule,
  type Standing,
} from '../review/index.js';
import type { Chosen, Person } from './choose.js';
import { digestNow, type Ground } from './ground.js';

/** The schedule of what was chosen; a sales text opens with itself alone. */
export function scheduleNow({ property }: Ground, { set, card }: Chosen): SeenSchedule {
  if (card) return scheduleSeen(property, set.plan.value, card);
  return { openings: new Map(), inHands: Infinity, shows: new Set() };
}

/** The latest decision of a person on each part, by `key part`. */
export function lastDecisions({ review }: Ground, person: Person): ReadonlyMap<string, Standing> {
  return new Map(
    decisionsOf(review.ledger, review.packets)
      .filter((standing) => standing.person === person.id)
      .map((standing) => [`${standing.card} ${standing.part}`, standing]),
  );
}

/** A part to be decided on, with what was last decided on it. Null if it is not there any more. */
export function submittedPart(
  ground: Ground,
  chosen: Chosen,
  part: Part,
  last: Standing | undefined,
): SubmittedPart | null {
  const digest = digestNow(ground, chosen.key, part);
  if (digest === null) return null;
  if (!last) return { part, digest, last: null };
  const isCurrent =
    last.digest === digest &&
    earlierThanSeen(last.seen, scheduleNow(ground, chosen), part).length === 0;
  return { part, digest, last: { verdict: last.verdict, isCurrent } };
}

/** The fields of a part as they were when a person last decided on it; none if it was not kept. */
export function fieldsWere(
  { folder }: Ground,
  part: Part,
  last: Standing | undefined,
): readonly FieldText[] {
  if (!last) return [];
  const covers =
    readKeptText(folder, 'approved', last.digest) ?? readKeptText(folder, 'submitted', last.digest);
  if (covers === null) return [];
  if (part === 'web') return [...textAt(covers, 'publicName'), ...textAt(covers, 'alt')];
  if (part === 'sales') return [{ field: 'words', text: salesText(covers) }];
  if (part !== 'copy') return [];
  return [...fieldTexts(covers)].map(([field, text]) => ({ field, text }));
}

function textAt(covers: Json, field: 'publicName' | 'alt'): readonly FieldText[] {
  if (covers === null || typeof covers !== 'object' || !(field in covers)) return [];
  const text = Object.entries(covers).find(([key]) => key === field)?.[1];
  return typeof text === 'string' ? [{ field, text }] : [];
}
