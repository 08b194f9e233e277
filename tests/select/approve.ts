import {
  CARD_PARTS,
  covers,
  digestOf,
  scheduleSeen,
  type Approvals,
  type Json,
  type Standing,
} from '../../pipeline/review/index.js';
import type { Card, Content } from '../../pipeline/model/index.js';
import type { Surroundings } from '../../pipeline/review/index.js';

type Verdict = Standing['verdict'];

/** Art by the name of its file and what is drawn in it: `drawn` is the same for every file. */
function around(card: Card, drawn: string): Surroundings {
  const { image } = card.front;
  const art = image === undefined ? null : digestOf(`${image.file} ${drawn}`);
  return { art, layout: null, fonts: {}, legal: [], statement: null };
}

/** Approvals of every part of every card of a content, as it stands, by one person. */
export function approvedAll(
  { property, sets }: Content,
  how: { readonly person?: string; readonly verdict?: Verdict; readonly drawn?: string } = {},
): Approvals {
  const decisions: Standing[] = [];
  const kept = new Map<string, Json>();
  const { person = 'amara', verdict = 'approved', drawn = 'first' } = how;
  for (const set of property ? sets : []) {
    for (const card of set.cards) {
      for (const part of CARD_PARTS) {
        const covered = covers(part, card, around(card, drawn));
        const digest = digestOf(covered);
        kept.set(digest, covered);
        decisions.push({
          person,
          card: `${set.id}/${card.subset}/${card.id}`,
          part,
          verdict,
          digest,
          seen: scheduleSeen(property?.value ?? never(), set.plan.value, card),
          remark: null,
          with: null,
        });
      }
    }
  }
  return {
    decisions,
    kept: (digest) => kept.get(digest) ?? null,
    keptArt: new Map(),
    around: (_set, card) => around(card, drawn),
  };
}

function never(): never {
  throw new Error('the content has a property');
}
