import {
  fieldHold,
  inHands,
  liftOf,
  opensLater,
  NEVER,
  openingsOf,
  owedFor,
  statedHold,
  type Hold,
} from '../model/index.js';
import { cutCopy } from './copy.js';
import { read, see, type Looked } from './field.js';
import { heldWords } from './held-apart.js';
import type { Lens } from './lens.js';
import type { ReviewNotes, ViewOpening, ViewSource } from './view.js';

/**
 * What a reviewer is told of a card besides what shows on it, as the tables decide; else null. A
 * card that is not issued has nothing to review.
 */
export function reviewNotes(looked: Looked): ReviewNotes | null {
  const { lens, tables, set, subset, card, open } = looked;
  const ships = lens.admits(tables.card.ships, tables.subset.ships);
  const told = [
    tables.image.ref,
    tables.image.depicts,
    tables.card.sources,
    tables.subset.statement,
  ];
  const isPulled = read(looked, 'issued') === 'no';
  if (!open || isPulled || (!ships && !told.some((decision) => lens.admits(decision)))) return null;
  return {
    openings: openingsSeen(looked),
    inHands: ships ? inHands(set.plan.value, card) : NEVER,
    // Where the name is held it stands in its place already, and may not tell that.
    publicName: (see(looked, 'name') ? read(looked, 'publicName') : undefined) ?? null,
    depicts: depictsOf(looked),
    ref: refOf(looked),
    owed: owedLines(looked),
    // Held with its subset, and no card opens before its own.
    statement: (lens.admits(tables.subset.statement) ? subset.statement : undefined) ?? null,
    signers: lens.admits(tables.signer.name, tables.signer.state)
      ? (read(looked, 'signers') ?? []).map(({ name, state }) => ({ name, state }))
      : [],
    sources: sourcesSeen(looked),
  };
}

/** Of the card, and of what it shows that opens later: by what is shown, not by what is written. */
function openingsSeen(looked: Looked): readonly ViewOpening[] {
  const { card, hold, lens } = looked;
  const fields = fieldsShown(looked).map(
    (field) => [`field ${field}`, fieldHold(lens.schedule, hold, card, field)] as const,
  );
  const words = heldWords(looked)
    .filter(([, own]) => lens.standing(own) === 'open')
    .map(([text, own]) => [`words ${text}`, own] as const);
  return [
    ['card', hold] as const,
    ...[...fields, ...words].filter(([, own]) => opensLater(own, hold)),
  ].map(([what, own]) => ({
    what,
    label: sayLabels(looked, own),
    at: liftOf(lens.schedule, own),
  }));
}

const PLAIN_FIELDS = ['name', 'signers', 'credits', 'variation', 'shortPrint', 'run'] as const;

/** The fields that a card has and that are open to whoever looks. */
function fieldsShown(looked: Looked): readonly string[] {
  const { front } = looked.card;
  const { image } = front;
  const keys = [
    ...PLAIN_FIELDS.filter((key) => front[key] !== undefined && see(looked, key)),
    ...(isBioShown(looked) ? ['bio'] : []),
  ];
  const parts = [
    ...(['file', 'alt', 'ref', 'depicts'] as const)
      .filter((key) => image?.[key] !== undefined && see(looked, 'image', `image.${key}`))
      .map((key) => `image.${key}`),
    ...(['facts', 'texts'] as const).flatMap((key) =>
      Object.keys(front[key] ?? {})
        .map((name) => `${key}.${name}`)
        .filter((field) => see(looked, key, field)),
    ),
  ];
  return [...keys, ...parts];
}

/** A bio of which all is absent is as if it were not there. */
function isBioShown(looked: Looked): boolean {
  const { card, hold, lens } = looked;
  if (card.bio.length === 0 || !see(looked, 'bio')) return false;
  return cutCopy(card.bio, fieldHold(lens.schedule, hold, card, 'bio'), lens).length > 0;
}

function sayLabels({ lens, tables }: Looked, hold: Hold): string {
  if (!lens.admits(tables.level.label, tables.embargo.label)) return '';
  return openingsOf(lens.schedule, hold)
    .filter(({ lift }, at) => at === 0 || lift > -Infinity)
    .map(({ label }) => label)
    .join(' and ');
}

function depictsOf(looked: Looked): readonly string[] {
  const { card, lens, tables } = looked;
  if (!lens.admits(tables.image.depicts) || !see(looked, 'image', 'image.depicts')) return [];
  return card.front.image?.depicts ?? [];
}

function refOf(looked: Looked): string | null {
  const { card, lens, tables } = looked;
  if (!lens.admits(tables.image.ref) || !see(looked, 'image', 'image.ref')) return null;
  return card.front.image?.ref ?? null;
}

/** Lines are owed to those alone whom the reader may know to be shown. */
function owedLines(looked: Looked): readonly string[] {
  const { lens, tables } = looked;
  if (!lens.admits(tables.property.legal, tables.legal.depicts)) return [];
  return owedFor(lens.property.legal?.depicts ?? [], depictsOf(looked));
}

/** Sources that may be known, for what is shown of the card. */
function sourcesSeen(looked: Looked): readonly ViewSource[] {
  const { card, lens, tables } = looked;
  const { ref, for: what } = tables.source;
  if (!lens.admits(tables.card.sources, tables.document.title) || !see(looked, 'sources')) {
    return [];
  }
  return (card.front.sources ?? []).flatMap((source): ViewSource[] => {
    const title = titleOf(source.doc, lens);
    if (title === null || !isSubjectSeen(looked, source.for)) return [];
    return [
      {
        title,
        ref: (lens.admits(ref) ? source.ref : undefined) ?? null,
        for: (lens.admits(what) ? source.for : undefined) ?? null,
      },
    ];
  });
}

/** Whether what a source is for is shown: a fact by its name, or a field. What is not there may be held. */
function isSubjectSeen(looked: Looked, name: string | undefined): boolean {
  if (name === undefined) return true;
  const shown = fieldsShown(looked);
  // Words of others stand in the bio; those of a text are named with it.
  if (name === 'quote') return shown.includes('bio');
  return shown.includes(`facts.${name}`) || shown.includes(name);
}

/** The title of a document that may be known; null of any other. */
function titleOf(id: string, lens: Lens): string | null {
  const document = (lens.property.documents ?? []).find((candidate) => candidate.id === id);
  if (!document) return null;
  return lens.standing(statedHold(lens.schedule, document)) === 'open' ? document.title : null;
}
