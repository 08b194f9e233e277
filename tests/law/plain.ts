import { stringify } from 'yaml';

import type {
  BackFile,
  CardFront,
  CorrectionsFile,
  NamesFile,
  PeopleFile,
  PlanFile,
  PropertyFile,
  RosterFile,
  SalesFront,
} from '../../schema/index.js';
import type { Content, Copy, Run, Sourced } from '../../pipeline/model/index.js';

/** A stretch of copy in one face, under one hold. A white space stands between two of them. */
export interface Stretch {
  words: string;
  italic: boolean;
  bold: boolean;
  hold: string | null;
  count: string | null;
  /** The white space before it is a hard line break. */
  broken: boolean;
  /** Its last word is in italics, if the others are plain. */
  stressed: boolean;
}

export type Words = Stretch[][];

export interface PlainCard {
  subset: string;
  id: string;
  front: CardFront;
  bio: Words;
}

export interface PlainSales {
  id: string;
  front: SalesFront;
  words: Words;
}

export interface PlainSet {
  id: string;
  plan: PlanFile;
  cards: PlainCard[];
  sales: PlainSales[];
  rosters: Record<string, RosterFile>;
  corrections: CorrectionsFile | null;
  art: string[];
  /** What is drawn in some of the art, if it is not what is drawn in all other. */
  drawn: Record<string, string>;
}

/** A whole content as plain values: from it come the files, and what reading them gives. */
export interface Plain {
  property: PropertyFile;
  names: NamesFile;
  people: PeopleFile;
  layouts: BackFile[];
  sets: PlainSet[];
}

/** What reading the content gives, without the reading. */
export function contentOf(plain: Plain): Content {
  return {
    property: sourced('property.yaml', plain.property),
    names: sourced('names.yaml', plain.names),
    people: sourced('people.yaml', plain.people),
    layouts: new Map(
      plain.layouts.map((layout) => [layout.id, sourced(`backs/${layout.id}.yaml`, layout)]),
    ),
    sets: plain.sets.map((set) => ({
      id: set.id,
      plan: sourced(`${set.id}/plan.yaml`, set.plan),
      cards: set.cards.map(({ subset, id, front, bio }) => ({
        set: set.id,
        subset,
        id,
        source: { file: cardFile(set.id, subset, id), text: '' },
        front,
        bio: copyOf(bio),
      })),
      sales: set.sales.map(({ id, front, words }) => ({
        set: set.id,
        id,
        source: { file: `${set.id}/sales/${id}.md`, text: '' },
        front,
        words: copyOf(words),
      })),
      rosters: new Map(
        Object.entries(set.rosters).map(([path, roster]) => [
          path,
          sourced(`${set.id}/${path}`, roster),
        ]),
      ),
      corrections: set.corrections && sourced(`${set.id}/corrections.yaml`, set.corrections),
      art: new Set(set.art),
      unread: new Set(),
    })),
    faults: [],
    cardFiles: plain.sets.reduce((sum, set) => sum + set.cards.length, 0),
  };
}

function sourced<T>(file: string, value: T): Sourced<T> {
  return { source: { file, text: '' }, value };
}

function cardFile(set: string, subset: string, id: string): string {
  return `${set}/cards/${subset}/${id}.md`;
}

function copyOf(words: Words): Copy {
  return words.map((stretches) =>
    stretches.flatMap((stretch, index): Run[] => {
      const { italic, bold, hold, count, broken } = stretch;
      const [head, tail] = partsOf(stretch);
      const words: Run = { ...PLAIN_RUN, text: head, italic, bold, hold, count };
      const last: Run[] = tail === '' ? [] : [{ ...words, text: tail, italic: true }];
      if (index === 0) return [words, ...last];
      return [{ ...PLAIN_RUN, text: broken ? '\n' : ' ' }, words, ...last];
    }),
  );
}

/** The words of a stretch in its own face, and its last word if that is in another. */
function partsOf({ words, italic, bold, stressed }: Stretch): [string, string] {
  const at = words.lastIndexOf(' ') + 1;
  return !stressed || italic || bold || at === 0
    ? [words, '']
    : [words.slice(0, at), words.slice(at)];
}

const PLAIN_RUN: Run = {
  text: '',
  italic: false,
  bold: false,
  hold: null,
  count: null,
  from: 0,
  to: 0,
};

/** The files of a content folder, in the order in which they are made here. */
export function filesOf(plain: Plain): Map<string, string> {
  return new Map([
    ['property.yaml', yaml(plain.property)],
    ['names.yaml', yaml(plain.names)],
    ['people.yaml', yaml(plain.people)],
    ...plain.layouts.map((layout) => [`backs/${layout.id}.yaml`, yaml(layout)] as const),
    ...plain.sets.flatMap(setFiles),
  ]);
}

function setFiles(set: PlainSet): (readonly [string, string])[] {
  return [
    [`${set.id}/plan.yaml`, yaml(set.plan)],
    ...set.cards.map(
      ({ subset, id, front, bio }) =>
        [cardFile(set.id, subset, id), `---\n${yaml(front)}---\n${markdown(bio)}`] as const,
    ),
    ...set.sales.map(
      ({ id, front, words }) =>
        [`${set.id}/sales/${id}.md`, `---\n${yaml(front)}---\n${markdown(words)}`] as const,
    ),
    ...Object.entries(set.rosters).map(
      ([path, roster]) => [`${set.id}/${path}`, yaml(roster)] as const,
    ),
    ...(set.corrections ? [[`${set.id}/corrections.yaml`, yaml(set.corrections)] as const] : []),
    ...set.art.map((path) => [`${set.id}/${path}`, drawing(set, path)] as const),
  ];
}

function drawing({ drawn }: PlainSet, path: string): string {
  return `<svg>${drawn[path] ?? ''}</svg>`;
}

/** The art at a path below the content folder: there is some for whatever path a card names. */
export function artBytes({ sets }: Plain, source: string): Uint8Array {
  const set = sets.find(({ id }) => source.startsWith(`${id}/`));
  const path = source.slice((set?.id.length ?? 0) + 1);
  return new TextEncoder().encode(`${path} ${set ? drawing(set, path) : ''}`);
}

function yaml(value: unknown): string {
  return stringify(value, {
    defaultStringType: 'QUOTE_DOUBLE',
    defaultKeyType: 'PLAIN',
    aliasDuplicateObjects: false,
    lineWidth: 0,
  });
}

function markdown(words: Words): string {
  const paragraphs = words.map((stretches) =>
    stretches
      .map((stretch, index) => {
        const gap = index === 0 ? '' : stretch.broken ? '\\\n' : ' ';
        return `${gap}${linked(faced(stretch), stretch)}`;
      })
      .join(''),
  );
  return `${paragraphs.join('\n\n')}\n`;
}

function faced(stretch: Stretch): string {
  const [head, tail] = partsOf(stretch);
  const mark = '*'.repeat((stretch.bold ? 2 : 0) + (stretch.italic ? 1 : 0));
  return tail === '' ? `${mark}${head}${mark}` : `${head}*${tail}*`;
}

function linked(text: string, { hold, count }: Stretch): string {
  if (hold !== null) return `[${text}](held:${hold})`;
  return count === null ? text : `[${text}](count:${count})`;
}
