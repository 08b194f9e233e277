import {
  heldSpans,
  spotOf,
  type Copy,
  type HeldSpan,
  type SourceFile,
  type Sourced,
  type Spot,
  type YamlPath,
} from '../model/index.js';
import type { Remark } from './rule.js';
import type { Subject } from './subject.js';
import { listed, unknown } from './unknown.js';

/** The ids that may stand in each kind of place. */
interface Ids {
  readonly level: ReadonlySet<string>;
  readonly embargo: ReadonlySet<string>;
  /** Both: where `holds` and `held:` name one. */
  readonly 'level or embargo': ReadonlySet<string>;
}
type Kind = keyof Ids;

/** Keys by which a thing in a file states a hold. */
interface Stating {
  readonly spoiler?: string;
  readonly level?: string;
  readonly embargo?: readonly string[];
}

/** Every place that names a level or an embargo which is not there. */
export function* holdReferences(subject: Subject): Generator<Remark> {
  const level = new Set(subject.property.levels.map(({ id }) => id));
  const embargo = new Set(subject.property.embargoes?.map(({ id }) => id));
  const ids = { level, embargo, 'level or embargo': new Set([...level, ...embargo]) };
  yield* propertyReferences(subject, ids);
  yield* peopleReferences(subject, ids);
  for (const { plan } of subject.sets) {
    yield* stated(plan.value, plan.source, [], ids);
    yield* statedEach(plan.value.subsets, plan.source, ['subsets'], ids);
    yield* statedEach(plan.value.parallels, plan.source, ['parallels'], ids);
    yield* statedEach(plan.value.products, plan.source, ['products'], ids);
  }
  for (const { source, front, words } of subject.sales) {
    yield* stated(front, source, [], ids);
    yield* spans(source, words, ids);
  }
  for (const { source, front, bio } of subject.cards) {
    yield* stated(front, source, [], ids);
    for (const [field, id] of Object.entries(front.holds ?? {})) {
      yield* named(id, 'level or embargo', source, ['holds', field], ids);
    }
    yield* spans(source, bio, ids);
  }
}

function* propertyReferences({ content }: Subject, ids: Ids): Generator<Remark> {
  const { property, names } = content;
  if (property) {
    yield* statedEach(property.value.documents, property.source, ['documents'], ids);
    yield* statedEach(property.value.beats, property.source, ['beats'], ids);
  }
  if (!names) return;
  yield* statedEach(names.value.secrets, names.source, ['secrets'], ids);
  yield* statedEach(names.value.names, names.source, ['names'], ids);
  for (const [at, { aliases }] of names.value.names.entries()) {
    for (const [position, alias] of (aliases ?? []).entries()) {
      if (typeof alias === 'string') continue;
      yield* stated(alias, names.source, ['names', at, 'aliases', position], ids);
    }
  }
}

function* peopleReferences({ content }: Subject, ids: Ids): Generator<Remark> {
  const people: Sourced<{
    people: readonly { clearance: string; knows?: readonly string[] }[];
  }> | null = content.people;
  for (const [at, { clearance, knows }] of (people?.value.people ?? []).entries()) {
    if (!people) return;
    yield* named(clearance, 'level', people.source, ['people', at, 'clearance'], ids);
    for (const [position, id] of (knows ?? []).entries()) {
      yield* named(id, 'embargo', people.source, ['people', at, 'knows', position], ids);
    }
  }
}

function* statedEach(
  entries: readonly Stating[] = [],
  source: SourceFile,
  path: YamlPath,
  ids: Ids,
): Generator<Remark> {
  for (const [at, entry] of entries.entries()) yield* stated(entry, source, [...path, at], ids);
}

function* stated(thing: Stating, source: SourceFile, path: YamlPath, ids: Ids): Generator<Remark> {
  for (const key of ['spoiler', 'level'] as const) {
    yield* named(thing[key], 'level', source, [...path, key], ids);
  }
  for (const [at, id] of (thing.embargo ?? []).entries()) {
    yield* named(id, 'embargo', source, [...path, 'embargo', at], ids);
  }
}

function* named(
  id: string | undefined,
  kind: Kind,
  source: SourceFile,
  path: YamlPath,
  ids: Ids,
): Generator<Remark> {
  if (id === undefined || ids[kind].has(id)) return;
  yield wrongId(id, kind, spotOf(source, path), ids);
}

function* spans(source: SourceFile, copy: Copy, ids: Ids): Generator<Remark> {
  const kind = 'level or embargo';
  if (
    !copy.some((paragraph) => paragraph.some(({ hold }) => hold !== null && !ids[kind].has(hold)))
  ) {
    return;
  }
  for (const span of heldSpans(copy)) {
    if (!ids[kind].has(span.hold)) yield wrongId(span.hold, kind, idSpot(source, span), ids);
  }
}

/** Where the id of a held span stands: behind its words. */
function idSpot(source: SourceFile, span: HeldSpan): Spot {
  const link = `(held:${span.hold})`;
  const at = source.text.indexOf(link, span.to);
  const from = at < 0 ? span.from : at + '(held:'.length;
  return { source, from, to: at < 0 ? span.to : from + span.hold.length };
}

function wrongId(id: string, kind: Kind, spot: Spot, ids: Ids): Remark {
  if (!ids['level or embargo'].has(id)) return unknown(kind, id, ids[kind], spot);
  const is = kind === 'level' ? 'an embargo' : 'a level';
  const wanted = kind === 'level' ? 'a level' : 'an embargo';
  return {
    spot,
    message: `\`${id}\` is ${is}, and ${wanted} stands here`,
    found: id,
    expected: listed([...ids[kind]]),
  };
}
