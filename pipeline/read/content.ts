import {
  BackFile,
  CorrectionsFile,
  NamesFile,
  PeopleFile,
  PlanFile,
  PropertyFile,
  RosterFile,
} from '../../schema/index.js';
import {
  spotOf,
  startOf,
  subsetOf,
  type Card,
  type CardSet,
  type Content,
  type Fault,
  type SalesText,
  type Sourced,
} from '../model/index.js';
import { FileReader } from './files.js';
import type { Folder } from './folder.js';
import type { KeptReadings } from './kept-readings.js';

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
/** Folders at the top that are no sets. */
const NO_SETS = new Set(['backs', 'review', 'fonts']);

/**
 * Reads a content folder whole. It never throws for what a writer has typed: everything wrong is in
 * `faults`, and what can be read is read.
 * @param kept readings of before, of which those are taken again whose bytes are the same values.
 * @throws what the folder throws when the disk fails.
 */
export function readContent(folder: Folder, kept?: KeptReadings): Content {
  const entries = folder.list();
  const paths = entries.filter((entry) => !entry.outside).map((entry) => entry.path);
  const reader = new FileReader(folder, kept);
  reader.faults.push(
    ...entries.filter((entry) => entry.outside).map((entry) => leadsOutside(entry.path)),
  );
  const optional = new Set(paths);
  const property = optional.has('property.yaml')
    ? reader.yaml('property.yaml', PropertyFile)
    : missing(reader, 'property.yaml');
  return {
    property,
    names: optional.has('names.yaml') ? reader.yaml('names.yaml', NamesFile) : null,
    people: optional.has('people.yaml') ? reader.yaml('people.yaml', PeopleFile) : null,
    layouts: readLayouts(reader, paths),
    sets: foldersOf(paths).flatMap((id) => readSet(reader, id, below(paths, `${id}/`)) ?? []),
    faults: reader.faults,
    cardFiles: paths.filter((path) => /^[^/]+\/cards\/.+\.md$/.test(path)).length,
  };
}

function missing(reader: FileReader, file: string): null {
  reader.faults.push({
    rule: 'schema',
    spot: startOf({ file, text: '' }),
    message: `there is no ${file}`,
    expected: `a file ${file} in the content folder`,
  });
  return null;
}

function leadsOutside(path: string): Fault {
  return {
    rule: 'path-outside',
    spot: startOf({ file: path, text: '' }),
    message: 'this link leads out of the content folder, or to a folder; it is not followed',
    expected: 'a file inside the content folder',
  };
}

function readLayouts(reader: FileReader, paths: readonly string[]): Content['layouts'] {
  return new Map(
    paths.flatMap((path) => {
      const id = /^backs\/([^/]+)\.yaml$/.exec(path)?.[1];
      const layout = id === undefined ? null : reader.yaml(path, BackFile);
      if (id === undefined || !layout || !sameId(reader, layout, id)) return [];
      return [[id, layout] as const];
    }),
  );
}

/** A file's own `id` must be what its place says. */
function sameId(
  reader: FileReader,
  { source, value }: Sourced<{ readonly id: string }>,
  id: string,
): boolean {
  if (value.id === id) return true;
  reader.faults.push({
    rule: 'schema',
    spot: spotOf(source, ['id']),
    message: '`id` is not what its file or folder is called',
    found: value.id,
    expected: id,
    fix: id,
  });
  return false;
}

/** Top folders that hold a plan or cards. */
function foldersOf(paths: readonly string[]): readonly string[] {
  const folders = paths.flatMap(
    (path) => /^([^/]+)\/(?:plan\.yaml$|cards\/)/.exec(path)?.[1] ?? [],
  );
  return [...new Set(folders)].filter((folder) => !NO_SETS.has(folder));
}

function below(paths: readonly string[], prefix: string): readonly string[] {
  return paths.filter((path) => path.startsWith(prefix));
}

function readSet(reader: FileReader, id: string, paths: readonly string[]): CardSet | null {
  const planPath = `${id}/plan.yaml`;
  const plan = paths.includes(planPath)
    ? reader.yaml(planPath, PlanFile)
    : missing(reader, planPath);
  const cards = readCards(reader, id, paths, plan);
  const sales = readSales(reader, id, paths);
  const rosters = readRosters(reader, id, paths);
  const correctionsPath = `${id}/corrections.yaml`;
  const corrections = paths.includes(correctionsPath)
    ? reader.yaml(correctionsPath, CorrectionsFile)
    : null;
  if (!plan || !sameId(reader, plan, id)) return null;
  const art = new Set(below(paths, `${id}/art/`).map((path) => path.slice(id.length + 1)));
  return { id, plan, ...cards, sales, rosters, corrections, art };
}

function readCards(
  reader: FileReader,
  set: string,
  paths: readonly string[],
  plan: Sourced<PlanFile> | null,
): Pick<CardSet, 'cards' | 'unread'> {
  const cards: Card[] = [];
  const unread = new Set<string>();
  for (const path of below(paths, `${set}/cards/`)) {
    const [subset = '', name = '', ...deeper] = path.slice(`${set}/cards/`.length).split('/');
    const id = name.replace(/\.md$/, '');
    const placed = deeper.length === 0 && name.endsWith('.md') && ID.test(id) && ID.test(subset);
    if (!placed || (plan && !subsetOf(plan.value, subset))) {
      reader.faults.push(misplaced(path, placed, plan?.value));
      continue;
    }
    const card = reader.card(path, { set, subset, id });
    if (card) cards.push(card);
    else unread.add(subset);
  }
  return { cards: cards.sort(bySubsetAndId), unread };
}

/** Paths do not sort like this: in them, crew-two/… comes before crew/…. */
function bySubsetAndId(a: Card, b: Card): number {
  if (a.subset !== b.subset) return a.subset < b.subset ? -1 : 1;
  return a.id < b.id ? -1 : 1;
}

function misplaced(path: string, placed: boolean, plan: PlanFile | undefined): Fault {
  const subsets = plan?.subsets.map((subset) => subset.id).join(', ') ?? '';
  return {
    rule: 'misplaced-card',
    spot: startOf({ file: path, text: '' }),
    message: placed ? 'this folder is no subset of the plan' : 'this is no place for a card',
    found: path,
    expected: placed
      ? `one of ${subsets}`
      : 'cards/<subset>/<id>.md, the id of small letters, digits and hyphens',
  };
}

function readSales(reader: FileReader, set: string, paths: readonly string[]): SalesText[] {
  return paths.flatMap((path) => {
    const id = /^[^/]+\/sales\/([^/]+)\.md$/.exec(path)?.[1];
    return id === undefined ? [] : (reader.sales(path, set, id) ?? []);
  });
}

function readRosters(
  reader: FileReader,
  set: string,
  paths: readonly string[],
): CardSet['rosters'] {
  return new Map(
    below(paths, `${set}/rosters/`)
      .filter((path) => path.endsWith('.yaml'))
      .flatMap((path) => {
        const roster = reader.yaml(path, RosterFile);
        return roster ? [[path.slice(set.length + 1), roster] as const] : [];
      }),
  );
}
