import type { AnswerFile, Decision } from '../../schema/index.js';
import { writeInstant, type Card } from '../model/index.js';
import { readKeptText } from '../read/index.js';
import {
  answerRefusals,
  appended,
  covers,
  digestOf,
  ledgerText,
  surroundingsOf,
  wordChanges,
  type Json,
} from '../review/index.js';
import { writeAll } from '../write/index.js';
import { applyChanges } from './apply.js';
import { cardAt, coversNow, readGround, type Ground } from './ground.js';
import { keptArt, keptText, octetsOf, type Files } from './kept-files.js';
import { LEDGER, locked, refused, type Place, type Refused } from './lock.js';
import { newErrors } from './new-errors.js';
import { readAnswer } from './read-answer.js';
import { sayRefusal } from './say-refusal.js';

/** A decision file to be recorded. */
export interface RecordOrder extends Place {
  readonly octets: Uint8Array;
  /** Says what would be done, and does nothing. */
  readonly dryRun: boolean;
}

/** What was done with a decision file, or would be: a line each. */
export interface Recorded {
  readonly done: true;
  readonly lines: readonly string[];
}

/** Verifies a decision file and puts it into the ledger, with the changes that it asks for. */
export function recordAnswer(order: RecordOrder): Promise<Recorded | Refused> {
  return locked(order, (disk) => {
    const planned = planAnswer(order);
    if (planned.done && !order.dryRun) writeAll(disk, order.contentPath, planned.files);
    return planned.done ? { done: true, lines: planned.lines } : planned;
  });
}

interface Planned extends Recorded {
  readonly files: Files;
}

function planAnswer({ contentPath, octets, now }: RecordOrder): Planned | Refused {
  const reading = readAnswer(octets);
  if (!reading.ok) return refused(reading.why);
  const ground = readGround(contentPath);
  if ('done' in ground) return ground;
  const { answer } = reading;
  const { ledger, packets } = ground.review;
  const property = ground.property.id;
  const record = packets.get(answer.packet);
  if (!record) {
    const other =
      answer.property === property
        ? []
        : [{ why: 'other property', about: answer.property } as const];
    return refused(
      ...other.map(sayRefusal),
      `there is no packet ${answer.packet} here: record it where that one was made`,
    );
  }
  const refusals = answerRefusals(answer, { property, record, ledger, now });
  if (refusals.length > 0) return refused(...new Set(refusals.map(sayRefusal)));
  return planned(answer, ground, writeInstant(now, ground.property.zone));
}

function planned(answer: AnswerFile, ground: Ground, at: string): Planned | Refused {
  const fates = answer.decisions.map((decision) => fateOf(decision, ground));
  const failed = fates.flatMap((fate) => (fate.failed === null ? [] : [fate.failed]));
  if (failed.length > 0) return refused(...failed);
  const changed = fates.flatMap(({ card }) => (card === null ? [] : [card]));
  const errors = newErrors(ground, changed);
  if (errors.length > 0) return refused(FAULTY, ...errors);
  const approves = fates.flatMap(
    ({ decision: { card, part }, card: changedCard, covers: covered }) =>
      changedCard === null || covered === null ? [] : [{ card, part, digest: digestOf(covered) }],
  );
  const ledger = appended(ground.review.ledger, [{ kind: 'decided', at, answer, approves }]);
  const files = new Map([
    ...changed.map((card) => [card.source.file, cardOctets(ground, card)] as const),
    ...fates.flatMap((fate) => [...keptFilesOf(ground, fate)]),
    [LEDGER, octetsOf(ledgerText(ledger))] as const,
  ]);
  const remarks = answer.remarks.map(
    ({ about, text, reason }) =>
      `remark on ${about}: ${text}${reason === undefined ? '' : ` (${reason})`}`,
  );
  return { done: true, lines: [...fates.flatMap(({ lines }) => lines), ...remarks], files };
}

const FAULTY =
  'with these changes `check` would find what it does not find now, so nothing is recorded. Ask for other words, or mend it and send a new packet';

/** What becomes of one decision. */
interface Fate {
  readonly decision: Decision;
  readonly lines: readonly string[];
  /** The card with its changes, if any are made. */
  readonly card: Card | null;
  /** What is approved, if anything is, and it is known. */
  readonly covers: Json;
  readonly failed: string | null;
}

function fateOf(decision: Decision, ground: Ground): Fate {
  const { card: key, part, digest, remark, with: holder, changes } = decision;
  const now = coversNow(ground, key, part);
  const isCurrent = now !== null && digestOf(now) === digest;
  const lines = [
    `${key} ${part}: ${decision.decision}`,
    ...(remark === undefined ? [] : [`  remark: ${remark}`]),
    ...(holder === undefined ? [] : [`  with ${holder}`]),
    ...(isCurrent ? [] : [`  ${olderText(decision, now !== null)}`]),
  ];
  const fate: Fate = { decision, lines, card: null, covers: null, failed: null };
  if (!decision.decision.startsWith('approved')) return fate;
  if (changes === undefined) {
    const covered = isCurrent ? now : readKeptText(ground.folder, 'submitted', digest);
    return { ...fate, covers: covered };
  }
  const found = cardAt(ground, key);
  if (!isCurrent || !found) return fate;
  const applied = applyChanges(found.card, changes);
  if (!applied.ok) return { ...fate, failed: `${key} copy: ${applied.why}. Nothing is recorded` };
  const { content, digests } = ground;
  const after = covers(
    'copy',
    applied.card,
    surroundingsOf(content, found.set, applied.card, digests),
  );
  const shown = wordChanges(now, after).map((line) => `  ${line}`);
  return { ...fate, lines: [...lines, ...shown], card: applied.card, covers: after };
}

function olderText({ digest, changes }: Decision, isThere: boolean): string {
  const version = `copy version ${digest.slice(0, 6)}`;
  const what = isThere ? 'the text was changed since' : 'the text is not there any more';
  return changes === undefined
    ? `${what}: kept as a decision on ${version}`
    : `${what}: kept as a decision on ${version}; its changes are not made, so send the text again`;
}

function keptFilesOf(ground: Ground, { decision: { card, part }, covers: covered }: Fate): Files {
  if (covered === null) return new Map();
  return new Map([
    ...keptText(ground, 'approved', { card, part, covers: covered }),
    ...(part === 'image' ? keptArt(ground, card, covered) : []),
  ]);
}

/** The text of a card's file, with the byte order mark that the file had. */
export function cardOctets({ folder }: Ground, { source: { file, text } }: Card): Uint8Array {
  const [first, second, third] = folder.read(file);
  const isMarked = first === 0xef && second === 0xbb && third === 0xbf;
  return octetsOf(isMarked ? `\ufeff${text}` : text);
}
