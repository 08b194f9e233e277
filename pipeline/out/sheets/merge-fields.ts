import type { MergeField } from '../../../schema/index.js';
import {
  TO_BE_REVEALED,
  type View,
  type ViewCard,
  type ViewRun,
  type ViewSet,
  type ViewSubset,
} from '../../gate/index.js';
import { legalText } from '../../model/index.js';

/** A card with all that a row of a merge file takes its cells from. */
export interface MergeRow {
  readonly property: View['property'];
  readonly set: ViewSet;
  readonly subset: ViewSubset;
  readonly card: ViewCard;
}

/** The one mark for whatever is held. It never tells how much it stands for. */
const MARK = `[${TO_BE_REVEALED.toLowerCase()}]`;

const FIELDS = {
  number: ({ card }) => card.number ?? '',
  name: ({ card }) => card.name,
  bio: ({ card }) => (card.bioHeld ? MARK : card.bio.map(paragraphText).join('\n\n')),
  subset: ({ subset }) => subset.title,
  set: ({ set }) => set.title,
  group: ({ subset }) => subset.group,
  level: ({ card }) => card.notes?.level ?? '',
  credits: ({ card }) => card.credits.map(({ role, name }) => `${role}: ${name}`).join('\n'),
  signers: ({ card }) => card.signers.map(signerText).join('\n'),
  legal: ({ property, card }) => legalText(property.legal, card.review?.owed ?? []) ?? '',
  back: ({ card }) => card.layout ?? '',
  art: ({ card }) => card.image?.source ?? '',
} as const satisfies Record<MergeField, (row: MergeRow) => string>;

const BY_NAME: ReadonlyMap<string, (row: MergeRow) => string> = new Map(Object.entries(FIELDS));

/**
 * What a field of a card says: text with an empty line between paragraphs and a line end at a break;
 * empty where the card has no such field. A bio loses its emphasis.
 * @param field a field of a merge file, as the plan writes it, such as `bio` or `facts.Berth`.
 */
export function fieldText(field: string, row: MergeRow): string {
  const { facts, texts } = row.card;
  if (field.startsWith('facts.')) {
    return facts.find(({ name }) => `facts.${name}` === field)?.value ?? '';
  }
  if (field.startsWith('texts.')) {
    return texts.find(({ zone }) => `texts.${zone}` === field)?.value ?? '';
  }
  return BY_NAME.get(field)?.(row) ?? '';
}

/**
 * The fields of a merge file if nobody says which: the set if there are several, number, name,
 * subset, bio, facts, texts, credits and the legal line, each only if a row has it.
 */
export function usualFields(rows: readonly MergeRow[]): readonly string[] {
  const facts = rows.flatMap(({ card }) => card.facts.map(({ name }) => `facts.${name}`));
  const texts = rows.flatMap(({ card }) => card.texts.map(({ zone }) => `texts.${zone}`));
  const several = new Set(rows.map(({ set }) => set.id)).size > 1;
  const usual = ['subset', 'bio', ...new Set([...facts, ...texts]), 'credits', 'legal'];
  return [
    ...(several ? ['set'] : []),
    'number',
    'name',
    ...usual.filter((field) => rows.some((row) => fieldText(field, row) !== '')),
  ];
}

function paragraphText(runs: readonly ViewRun[]): string {
  return runs.map((run) => ('held' in run ? MARK : run.text)).join('');
}

function signerText({ name, as }: ViewCard['signers'][number]): string {
  return as === null ? name : `${name} as ${as}`;
}
