import { identityOf, isVariation, spotOf, type SourceFile, type YamlPath } from '../model/index.js';
import { faultyFiles } from './faults.js';
import { layoutReferences } from './layout-references.js';
import { isInside } from './inside.js';
import { packReferences } from './packed/references.js';
import type { Remark } from './rule.js';
import type { Subject } from './subject.js';
import { refer, type Known } from './unknown.js';

/** Every reference by id that leads nowhere. */
export function* referencesIn(subject: Subject): Generator<Remark> {
  yield* people(subject);
  yield* documentsAndCuts(subject);
  yield* parents(subject);
  yield* rosters(subject);
  yield* subsetsAndGroups(subject);
  yield* layoutReferences(subject);
  yield* packReferences(subject);
}

function* people({ content, sets }: Subject): Generator<Remark> {
  const known: Known = content.people && new Set(content.people.value.people.map(({ id }) => id));
  for (const { plan, cards, sales } of sets) {
    yield* acceptors(plan.source, plan.value.accepted, known);
    for (const { source, front } of [...cards, ...sales]) {
      yield* refer('person', front.writer, known, source, ['writer']);
      yield* acceptors(source, front.accepted, known);
    }
  }
}

function* acceptors(
  source: SourceFile,
  accepted: readonly { readonly by: string }[] = [],
  known: Known,
): Generator<Remark> {
  for (const [at, { by }] of accepted.entries()) {
    yield* refer('person', by, known, source, ['accepted', at, 'by']);
  }
}

function* documentsAndCuts({ property, cards }: Subject): Generator<Remark> {
  const documents = new Set(property.documents?.map(({ id }) => id));
  const cuts = new Set(property.cuts?.map(({ id }) => id));
  for (const { source, front } of cards) {
    yield* refer('cut', front.checkedAgainst, cuts, source, ['checkedAgainst']);
    for (const [at, { doc }] of (front.sources ?? []).entries()) {
      yield* refer('document', doc, documents, source, ['sources', at, 'doc']);
    }
  }
}

function* parents({ sets }: Subject): Generator<Remark> {
  for (const set of sets) {
    const known = new Set(set.cards.filter((card) => !isVariation(card)).map(identityOf));
    for (const { source, front } of set.cards) {
      const parent = front.variation?.of;
      const [folder = ''] = parent?.split('/') ?? [];
      if (set.unread.has(folder)) continue;
      yield* referToCard(parent, known, source, ['variation', 'of'], ', and no variation of one');
    }
    const all = new Set(set.cards.map(identityOf));
    for (const [at, { card }] of (set.corrections?.value.corrections ?? []).entries()) {
      const [folder = ''] = card.split('/');
      const source = set.corrections?.source;
      if (!source || set.unread.has(folder)) continue;
      yield* referToCard(card, all, source, ['corrections', at, 'card']);
    }
  }
}

/** The nearest identity is only another card, so none is offered. */
function* referToCard(
  id: string | undefined,
  known: ReadonlySet<string>,
  source: SourceFile,
  path: YamlPath,
  but = '',
): Generator<Remark> {
  if (id === undefined || known.has(id)) return;
  yield {
    spot: spotOf(source, path),
    message: `there is no card \`${id}\` that this can name`,
    found: id,
    expected: `the subset and id of a card of this set${but}`,
  };
}

function* rosters({ subsets, content }: Subject): Generator<Remark> {
  const faulty = faultyFiles(content);
  for (const { set, plan, at } of subsets) {
    if (plan.roster === undefined || !isInside(plan.roster)) continue;
    if (faulty.has(`${set.id}/${plan.roster}`)) continue;
    const known = new Set(set.rosters.keys());
    yield* refer('file', plan.roster, known, set.plan.source, ['subsets', at, 'roster']);
  }
}

function* subsetsAndGroups({ sets, content, property }: Subject): Generator<Remark> {
  const subsets = new Set<string>();
  const groups = new Set<string>();
  for (const { plan } of sets) {
    const own = new Set<string>();
    for (const { id, group } of plan.value.subsets) {
      own.add(id).add(group);
      subsets.add(id);
      groups.add(group);
    }
    for (const [at, { of }] of (plan.value.parallels ?? []).entries()) {
      for (const [position, id] of of.entries()) {
        yield* refer('subset', id, own, plan.source, ['parallels', at, 'of', position]);
      }
    }
  }
  if (content.faults.some((fault) => fault.spot.source.file.endsWith('/plan.yaml'))) return;
  for (const { source, path, where } of conditions(content, property)) {
    for (const [at, id] of (where.subset ?? []).entries()) {
      yield* refer('subset', id, subsets, source, [...path, 'subset', at]);
    }
    for (const [at, id] of (where.group ?? []).entries()) {
      yield* refer('group', id, groups, source, [...path, 'group', at]);
    }
  }
}

interface Condition {
  readonly source: SourceFile;
  readonly path: YamlPath;
  readonly where: { readonly subset?: readonly string[]; readonly group?: readonly string[] };
}

/** Everything that picks cards by subset or group: lines of approval and what a person sees. */
function* conditions(
  content: Subject['content'],
  property: Subject['property'],
): Generator<Condition> {
  const lines = property.approvals === 'none' ? [] : property.approvals;
  for (const [at, { where }] of lines.entries()) {
    const source = content.property?.source;
    if (where && source) yield { source, path: ['approvals', at, 'where'], where };
  }
  for (const [at, { sees }] of (content.people?.value.people ?? []).entries()) {
    const source = content.people?.source;
    if (sees && source) yield { source, path: ['people', at, 'sees'], where: sees };
  }
}
