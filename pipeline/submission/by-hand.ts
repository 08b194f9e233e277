import { basename } from 'node:path';

import { Received, type HandFile, type LedgerEntry } from '../../schema/index.js';
import { writeInstant } from '../model/index.js';
import { readHandFile, readKeptText, validate } from '../read/index.js';
import { appended, ledgerText, packetDigest, sha256 } from '../review/index.js';
import { writeAll } from '../write/index.js';
import { coversNow, digestNow, readGround, type Ground } from './ground.js';
import { HOUSE_ROLES } from './house.js';
import { keptArt, keptText, octetsOf, type Files } from './kept-files.js';
import { LEDGER, locked, refused, type Place, type Refused } from './lock.js';
import type { Recorded } from './record.js';

/** Decisions that came by mail. */
export interface HandOrder extends Place {
  /** What was typed of them: YAML. */
  readonly file: string;
  readonly octets: Uint8Array;
  /** Who decided, who entered it, and who of the house confirms that it is what the mail says. */
  readonly person: string;
  readonly by: string;
  readonly confirmedBy: string;
  /** The day on which it came, such as `2027-01-12`. */
  readonly received: string;
  /** The bytes of the mail itself: its digest is kept. */
  readonly evidence: Uint8Array;
  readonly dryRun: boolean;
}

/** Puts decisions that came by mail into the ledger. */
export function recordByHand(order: HandOrder): Promise<Recorded | Refused> {
  return locked(order, (disk) => {
    const planned = plan(order);
    if (!planned.done) return planned;
    if (!order.dryRun) writeAll(disk, order.contentPath, planned.files);
    return { done: true, lines: planned.lines };
  });
}

type ByHand = Extract<LedgerEntry, { kind: 'by-hand' }>['decisions'][number];

function plan(order: HandOrder): (Recorded & { readonly files: Files }) | Refused {
  const ground = readGround(order.contentPath);
  if ('done' in ground) return ground;
  const reading = readHandFile(basename(order.file), order.octets);
  if (!reading.ok) return refused(...reading.faults.map(({ message }) => message));
  const wrong = [...wrongPeople(order, ground), ...wrongDay(order, ground)];
  const found = reading.value.decisions.map((typed, at, all) =>
    decisionOf(typed, all.slice(0, at), order.person, ground),
  );
  const failed = found.flatMap((each) => (typeof each === 'string' ? [each] : []));
  if (wrong.length + failed.length > 0) return refused(...wrong, ...failed);
  const decisions = found.flatMap((each) => (typeof each === 'string' ? [] : [each]));
  return planned(order, ground, decisions);
}

function planned(
  { person, by, confirmedBy, received, evidence, now }: HandOrder,
  ground: Ground,
  decisions: readonly ByHand[],
): Recorded & { readonly files: Files } {
  const ledger = appended(ground.review.ledger, [
    {
      kind: 'by-hand',
      at: writeInstant(now, ground.property.zone),
      person,
      by,
      confirmedBy,
      received,
      evidence: sha256(evidence),
      decisions: [...decisions],
    },
  ]);
  const files = new Map([
    ...decisions.flatMap((each) => [...keptFiles(ground, each)]),
    [LEDGER, octetsOf(ledgerText(ledger))] as const,
  ]);
  return { done: true, lines: decisions.flatMap((each) => linesOf(ground, each)), files };
}

function linesOf(ground: Ground, { card, part, decision, digest, remark, with: holder }: ByHand) {
  const isCurrent = digestNow(ground, card, part) === digest;
  return [
    `${card} ${part}: ${decision}`,
    ...(remark === undefined ? [] : [`  remark: ${remark}`]),
    ...(holder === undefined ? [] : [`  with ${holder}`]),
    ...(isCurrent
      ? []
      : [`  the text was changed since: kept as a decision on copy version ${digest.slice(0, 6)}`]),
  ];
}

function keptFiles(ground: Ground, { card, part, decision, digest }: ByHand): Files {
  if (!decision.startsWith('approved')) return new Map();
  const isCurrent = digestNow(ground, card, part) === digest;
  const covers = isCurrent
    ? coversNow(ground, card, part)
    : readKeptText(ground.folder, 'submitted', digest);
  if (covers === null) return new Map();
  return new Map([
    ...keptText(ground, 'approved', { card, part, covers }),
    ...(part === 'image' ? keptArt(ground, card, covers) : []),
  ]);
}

function wrongPeople({ person, by, confirmedBy }: HandOrder, ground: Ground): readonly string[] {
  const people = ground.content.people?.value.people ?? [];
  const unknown = [...new Set([person, by, confirmedBy])].filter(
    (id) => !people.some((each) => each.id === id),
  );
  const outside = [by, confirmedBy].filter((id) =>
    people.some((each) => each.id === id && !HOUSE_ROLES.includes(each.role)),
  );
  return [
    ...(ground.property.review?.byHand === 'allowed' ? [] : [NOT_ALLOWED]),
    ...unknown.map((id) => `people.yaml knows no ${id}`),
    ...[...new Set(outside)].map(
      (id) => `${id} is not of the house: --by and --confirmed-by name a ${HOUSE_ROLES.join(', ')}`,
    ),
    ...(new Set([person, by, confirmedBy]).size === 3 ? [] : [THREE]),
  ];
}

const NOT_ALLOWED =
  'this property takes no decisions by hand: `review: { byHand: allowed }` in property.yaml would allow it';
const THREE =
  'who decided, who entered it and who confirms it must be three people: name another with --by or --confirmed-by';

function wrongDay({ received, now }: HandOrder, { property }: Ground): readonly string[] {
  if (!validate(Received, received).ok) {
    return [`--received ${received}: it is a day such as 2027-01-12`];
  }
  const today = writeInstant(now, property.zone).slice(0, 10);
  return received <= today ? [] : [`--received ${received} is still to come: today is ${today}`];
}

/** A decision with the digest and the schedule of what was last sent, or what is wrong with it. */
function decisionOf(
  typed: HandFile['decisions'][number],
  before: HandFile['decisions'],
  person: string,
  { review }: Ground,
): ByHand | string {
  const { card, part, decision, remark, with: holder } = typed;
  const about = `${card} ${part}`;
  const isWithdrawn = (packet: string): boolean =>
    review.ledger.entries.some((entry) => entry.kind === 'withdrawn' && entry.packet === packet);
  const sent = review.ledger.entries.flatMap((entry) => {
    const record = entry.kind === 'submitted' ? review.packets.get(entry.packet) : undefined;
    const isWhole = entry.kind === 'submitted' && record && packetDigest(record) === entry.record;
    if (!isWhole || record.person !== person || isWithdrawn(record.id)) return [];
    return record.decides.filter((each) => each.card === card && each.part === part);
  });
  const last = sent.at(-1);
  if (!last) return `${about}: it was never sent to ${person}, so nothing says what they saw`;
  if (before.some((other) => other.card === card && other.part === part)) {
    return `${about}: it is decided on twice`;
  }
  if (decision === 'approved with changes') return `${about}: ${NO_CHANGES}`;
  if (decision === 'revise and resubmit' && remark === undefined) {
    return `${about}: "revise and resubmit" needs a remark`;
  }
  if (decision === 'on hold' && holder === undefined) return `${about}: "on hold" needs \`with\``;
  return {
    card,
    part,
    digest: last.digest,
    decision,
    ...(remark === undefined ? {} : { remark }),
    ...(holder === undefined ? {} : { with: holder }),
    seen: last.seen,
  };
}

const NO_CHANGES =
  'changes cannot be recorded by hand. Make them in the card, record "approved as noted" with the remark, and send it again';
