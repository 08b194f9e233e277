import type { Subset } from '../../schema/index.js';
import type { Card, CardSet } from '../model/index.js';
import { latestOf, rolesFor, isApproval, type ApprovalGround, type Standing } from './approval.js';
import type { Json } from './digest.js';
import { covers, partDigest, type CardPart, type Surroundings } from './parts.js';
import { withCopy, withImage, withWeb, withWebAlone } from './rebuilt.js';
import { textOf } from './kept-values.js';

/** Everything that tells what is approved, besides the content. */
export interface Approvals {
  /** Every decision of the ledger, in its order. */
  readonly decisions: readonly Standing[];
  /** What an approved text covers, by its digest, which it gives again; null if it was not kept. */
  readonly kept: (digest: string) => Json;
  /** Where approved art is kept, below the content folder, by the SHA-256 of its bytes. */
  readonly keptArt: ReadonlyMap<string, string>;
  readonly around: (set: CardSet, card: Card) => Surroundings;
}

/** Nobody has decided on anything. */
export const NOTHING_APPROVED: Approvals = {
  decisions: [],
  kept: () => null,
  keptArt: new Map(),
  around: () => ({ art: null, layout: null, fonts: {}, legal: [], statement: null }),
};

/** A card as everybody who must has approved it. */
export interface Version {
  readonly card: Card;
  /** The decisions that approve it. */
  readonly by: readonly Standing[];
  /** Below the content folder: the art of the approved picture where that is not today's. */
  readonly art: string | null;
  /** False where its art was not kept: it can be compared with, but not shown. */
  readonly isWhole: boolean;
}

/** A part as it was approved; its covers are null where that is how it stands today. */
interface ApprovedPart {
  readonly part: CardPart;
  readonly covers: Json;
  readonly isToday: boolean;
  readonly by: readonly Standing[];
}

/** What versions of a card are asked for. */
export interface VersionOrder {
  readonly set: CardSet;
  readonly card: Card;
  readonly subset: Subset | null;
  readonly parts: readonly CardPart[];
}

/**
 * The versions of a card of which these parts are approved, the card as it stands first if it is one
 * of them. A version that cannot be made of what was kept is none.
 */
export function approvedVersions(
  { set, card, subset, parts }: VersionOrder,
  ground: ApprovalGround,
  approvals: Approvals,
): readonly Version[] {
  const around = approvals.around(set, card);
  const choices = parts.map((part) => approvedParts(part, card, subset, around, ground, approvals));
  return choices
    .reduce<readonly (readonly ApprovedPart[])[]>(
      (sums, own) => sums.flatMap((sum) => own.map((each) => [...sum, each])),
      [[]],
    )
    .flatMap((chosen) => versionOf(card, chosen, around, approvals) ?? []);
}

/** Every way in which all roles that must have approved a part, today's first. */
function approvedParts(
  part: CardPart,
  card: Card,
  subset: Subset | null,
  around: Surroundings,
  ground: ApprovalGround,
  { kept }: Approvals,
): readonly ApprovedPart[] {
  const today = partDigest(part, card, around);
  const whole = covers(part, card, around);
  const roles = rolesFor(part, card, subset, ground);
  if (roles.length === 0) return [{ part, covers: whole, isToday: true, by: [] }];
  const key = `${card.set}/${card.subset}/${card.id}`;
  const byRole = roles.map((role) =>
    latestOf(key, part, role, ground).filter(({ verdict }) => isApproval(verdict, ground.property)),
  );
  const digests = [
    ...new Set([
      today,
      ...byRole
        .flat()
        .map(({ digest }) => digest)
        .reverse(),
    ]),
  ];
  return digests.flatMap((digest): ApprovedPart[] => {
    const by = byRole.map((own) => own.find((decision) => decision.digest === digest) ?? null);
    const text = digest === today ? whole : kept(digest);
    const approving = by.filter((decision) => decision !== null);
    if (text === null || approving.length < by.length) return [];
    return [{ part, covers: text, isToday: digest === today, by: approving }];
  });
}

function versionOf(
  card: Card,
  chosen: readonly ApprovedPart[],
  around: Surroundings,
  { keptArt }: Approvals,
): Version | null {
  const by = chosen.flatMap((each) => each.by);
  if (chosen.every(({ isToday }) => isToday)) return { card, by, art: null, isWhole: true };
  const of = (part: CardPart): ApprovedPart | undefined =>
    chosen.find((each) => each.part === part);
  const [copy, image, web] = [of('copy'), of('image'), of('web')];
  const sha = image === undefined ? around.art : textOf(image.covers, 'art');
  const isTodaysArt = sha === around.art;
  const art = isTodaysArt || sha === null ? null : (keptArt.get(sha) ?? null);
  const isLost = !isTodaysArt && sha !== null && art === null;
  const lost = isLost ? `not kept: ${sha}` : null;
  const file = isTodaysArt ? (card.front.image?.file ?? null) : (art ?? lost);
  const worded = copy === undefined || copy.isToday ? card : withCopy(card, copy.covers);
  const pictured = image === undefined ? worded : withImage(worded, image.covers, file);
  const held = web?.covers ?? covers('web', card, around);
  const made = copy === undefined ? withWebAlone(pictured, held) : withWeb(pictured, held);
  return made === null ? null : { card: made, by, art, isWhole: !isLost };
}
