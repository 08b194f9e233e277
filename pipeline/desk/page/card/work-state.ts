import type {
  BeforeAfter,
  CardAnswer,
  CardLook,
  CardKey,
  Conflict,
  DeskEvent,
  DeskFinding,
  DraftAnswer,
  Edit,
  SetLook,
  TypedCard,
} from '../../protocol.js';
import { pruned } from '../form/pruned.js';
import { fieldChanges, isSame, type Fields } from './field-changes.js';

/** What the page has to tell of the card at work. */
export interface WorkState {
  readonly answer: CardAnswer;
  readonly typed: TypedCard;
  readonly look: CardLook;
  readonly change: BeforeAfter | null;
  readonly unwritten: DraftAnswer['unwritten'];
  readonly conflict: Conflict | null;
  /** Words that were let go for those on the disk, while they can still be brought back. */
  readonly letGo: TypedCard | null;
  /** Findings that stood in the way of handing in. */
  readonly refused: readonly DeskFinding[];
  /** The file on the disk is other than the one that is edited. */
  readonly isOtherOnDisk: boolean;
  readonly trouble: string | null;
  readonly isBusy: boolean;
  /** Counts up when the words were changed by anything but the writer’s hands. */
  readonly put: number;
}

/** What a writer changed of it. */
export type Typing =
  { readonly copy: string } | { readonly fields: Fields } | { readonly text: string };

/** The state of a card that was just fetched. */
export function begunWith(answer: CardAnswer, isOtherOnDisk: boolean): WorkState {
  const { draft, saved, look, change } = answer;
  return {
    answer,
    typed: draft?.typed ?? saved,
    look,
    change,
    unwritten: [],
    conflict: null,
    letGo: null,
    refused: [],
    isOtherOnDisk,
    trouble: null,
    isBusy: false,
    put: 0,
  };
}

/** The card as it is set now; what was found before stands until it is told anew. */
export function lookAfter(
  before: CardLook,
  answered: SetLook | CardLook,
  isHeard: boolean,
): CardLook {
  return { findings: before.findings, settled: isHeard && before.settled, ...answered };
}

/** What was typed, as the difference from what it began with. */
export function editOf(from: TypedCard, typed: TypedCard): Edit {
  if (from.fields === null || typed.fields === null) return { text: typed.text };
  const fields = fieldChanges(from.fields, typed.fields);
  return {
    ...(typed.copy === from.copy ? {} : { copy: typed.copy }),
    ...(fields.length === 0 ? {} : { fields }),
  };
}

/** What was typed, without fields that were left empty. */
export function toSay({ typed, answer }: WorkState): TypedCard {
  if (typed.fields === null) return typed;
  return { ...typed, fields: pruned(answer.form, typed.fields) };
}

/** A card whose file has another digest now; null if there is none. */
export type Changed = Extract<DeskEvent, { type: 'changed' }>['cards'][number];

/** What an event says of the file of a card. */
export function changeOf(key: CardKey, event: DeskEvent): Changed | undefined {
  return event.type === 'changed' ? event.cards.find(({ card }) => card === key) : undefined;
}

/** Whether two cards say the same. */
export function isSameCard(one: TypedCard, other: TypedCard): boolean {
  if (one.fields === null || other.fields === null) return one.text === other.text;
  return one.copy === other.copy && isSame(one.fields, other.fields);
}
