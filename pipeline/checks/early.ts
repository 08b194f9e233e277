import {
  NEVER,
  heldSpans,
  holdNamed,
  instantOrNever,
  isIssued,
  join,
  knows,
  openingsOf,
  sayInstant,
  spotOf,
  streetOf,
  type Card,
  type CardSet,
  type Copy,
  type Hold,
  type Instant,
  type Opening,
  type SalesText,
  type SourceFile,
  type YamlPath,
} from '../model/index.js';
import { knownField, knownHold } from './known-hold.js';
import { ofCard, type Remark } from './rule.js';
import type { Subject, SubsetView } from './subject.js';

/** What must be over by an instant: `print` before ink is in hands, `lift` before words go out. */
type Gate = 'print' | 'lift';

/** A moment at which something is out, and how to say so. */
interface Out {
  readonly at: Instant;
  readonly gate: Gate;
  readonly verb: 'is in hands' | 'is on the street' | 'goes out';
}

/** The opening that is not over in time. */
interface Blame {
  readonly opening: Opening;
  readonly out: Out;
}

/** Everything that is out before it may be, each told at the outermost thing that it is true of. */
export function* earlyThings(subject: Subject): Generator<Remark> {
  const sets = new Map<CardSet, Blame | null>();
  for (const set of subject.sets) {
    const { source, value } = set.plan;
    const out = handsOut(streetOf(value));
    const blame = blameFor(knownHold(subject.schedule, value), out, subject);
    sets.set(set, blame);
    if (blame)
      yield early('this set', spotOf(source, pathTo(value, blame) ?? ['street']), blame, subject);
    const street = { at: streetOf(value), gate: 'print', verb: 'is on the street' } as const;
    for (const text of set.sales) yield* earlySales(text, set, street, subject);
  }
  for (const view of subject.subsets) yield* earlySubset(view, sets.get(view.set) ?? null, subject);
}

function* earlySubset(view: SubsetView, above: Blame | null, subject: Subject): Generator<Remark> {
  const { set, plan, at } = view;
  const ships = plan.ships === undefined ? streetOf(set.plan.value) : instantOrNever(plan.ships);
  const blame = blameFor(
    knownHold(subject.schedule, set.plan.value, plan),
    handsOut(ships),
    subject,
  );
  if (blame && !isSame(blame, above)) {
    const spot = spotOf(set.plan.source, ['subsets', at, ...(pathTo(plan, blame) ?? ['ships'])]);
    yield early(`\`${plan.id}\``, spot, blame, subject);
  }
  for (const card of view.cards) {
    if (isIssued(card)) yield* earlyCard(card, ships, blame, subject);
  }
}

function* earlyCard(
  card: Card,
  subsetShips: Instant,
  above: Blame | null,
  subject: Subject,
): Generator<Remark> {
  const { schedule, holds } = subject;
  const { source, front, bio } = card;
  const hold = holds.get(card);
  if (!hold) return;
  const out = handsOut(front.ships === undefined ? subsetShips : instantOrNever(front.ships));
  const blame = blameFor(hold, out, subject);
  if (blame && !isSame(blame, above)) {
    const spot = spotOf(source, pathTo(front, blame) ?? ['ships']);
    yield { ...ofCard(card), ...early('this card', spot, blame, subject) };
  }
  for (const field of Object.keys(front.holds ?? {})) {
    const own = blameFor(knownField(card, field, hold, schedule), out, subject);
    if (!own || isSame(own, blame)) continue;
    yield {
      ...ofCard(card),
      ...earlyPart(`\`${field}\``, spotOf(source, ['holds', field]), own, subject),
    };
  }
  yield* earlySpans(source, bio, knownField(card, 'bio', hold, schedule), out, subject);
}

function* earlySales(
  { source, front, words }: SalesText,
  set: CardSet,
  street: Out,
  subject: Subject,
): Generator<Remark> {
  const { schedule } = subject;
  const printed = front.kind === 'wrapper' || front.kind === 'box';
  const out: Out = printed
    ? street
    : { at: instantOrNever(front.goes), gate: 'lift', verb: 'goes out' };
  const hold = knownHold(schedule, set.plan.value, front);
  const blame = blameFor(hold, out, subject);
  if (blame) {
    yield early('this text', spotOf(source, pathTo(front, blame) ?? ['goes']), blame, subject);
  }
  yield* earlySpans(source, words, hold, out, subject);
}

/** Spans that are early where the words around them are not. */
function* earlySpans(
  source: SourceFile,
  copy: Copy,
  around: Hold | null,
  out: Out,
  subject: Subject,
): Generator<Remark> {
  if (!around || !copy.some((paragraph) => paragraph.some((run) => run.hold !== null))) return;
  const above = blameFor(around, out, subject);
  for (const span of heldSpans(copy)) {
    if (!knows(subject.schedule, span.hold)) continue;
    const hold = join(around, holdNamed(subject.schedule, span.hold));
    const blame = blameFor(hold, out, subject);
    if (!blame || isSame(blame, above)) continue;
    const spot = { source, from: span.from, to: span.to };
    yield earlyPart('this held span', spot, blame, subject);
  }
}

function handsOut(at: Instant): Out {
  return { at, gate: 'print', verb: 'is in hands' };
}

/** Of what a hold names, the last to open, if that is too late. */
function blameFor(hold: Hold | null, out: Out, { schedule, doubtful }: Subject): Blame | null {
  if (out.at === NEVER || !hold) return null;
  const [opening] = openingsOf(schedule, hold)
    .filter(({ id, [out.gate]: opens }) => opens > out.at && !doubtful.has(id))
    .sort((a, b) => Math.sign(b[out.gate] - a[out.gate]) || 0);
  return opening ? { opening, out } : null;
}

/** Whether what lies around a thing is early for the same reason, so that it has been told. */
function isSame(blame: Blame, above: Blame | null): boolean {
  return above?.opening.id === blame.opening.id && above.out.at === blame.out.at;
}

/** Where a thing itself names what is to blame; null if that comes from around it. */
function pathTo(
  stated: { readonly spoiler?: string; readonly embargo?: readonly string[] },
  { opening: { id } }: Blame,
): YamlPath | null {
  if (stated.spoiler === id) return ['spoiler'];
  const at = stated.embargo?.indexOf(id) ?? -1;
  return at < 0 ? null : ['embargo', at];
}

function early(what: string, spot: Remark['spot'], blame: Blame, subject: Subject): Remark {
  const may = blame.out.gate === 'print' ? 'may be in shops' : 'has lifted';
  return {
    spot,
    message: `${what} ${blame.out.verb} before what it tells ${may}`,
    ...times(blame, subject),
  };
}

function earlyPart(what: string, spot: Remark['spot'], blame: Blame, subject: Subject): Remark {
  const may = blame.out.gate === 'print' ? 'it may be in shops' : 'it has lifted';
  return { spot, message: `${what} ${blame.out.verb} before ${may}`, ...times(blame, subject) };
}

function times({ opening, out }: Blame, { property }: Subject): Pick<Remark, 'found' | 'expected'> {
  const when = opening[out.gate];
  return {
    found: `${out.verb.replace(/^is /, '').replace('goes', 'going')} ${sayInstant(out.at, property.zone)}`,
    expected:
      when === NEVER
        ? `not while ${opening.id} has no date`
        : `not before ${sayInstant(when, property.zone)}, for ${opening.id}`,
  };
}
