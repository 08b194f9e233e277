import type { Problem, ProblemKind } from '../../packs/index.js';
import type { Packed } from './plan.js';

/** Lines whose copies are not whole: what they come to cannot be judged. */
const IN_LINE: ReadonlySet<ProblemKind> = new Set(['odds-not-whole', 'run-not-split']);

/** Runs that are not what is packed: that they do not divide either is no news. */
const IN_RUN: ReadonlySet<ProblemKind> = new Set([
  'run-unpacked',
  'run-exceeded',
  'reserve-over-run',
]);

const IN_SHARE: ReadonlySet<ProblemKind> = new Set(['copies-not-even', 'fixed-over']);

/** Lines that take more room than they can. */
const OF_ROOM: ReadonlySet<ProblemKind> = new Set(['places-over', 'too-thick']);

/** What follows from any wrong line, since base cards are the rest of each pack. */
const OF_REST: ReadonlySet<ProblemKind> = new Set(['base-not-even', 'no-base-left']);

/**
 * The problems without those that follow from others, so that one wrong figure is told once: where it
 * most likely stands.
 */
export function causesOf({ report: { problems }, plan, drawn }: Packed): readonly Problem[] {
  const base = new Set(plan.kinds.filter((kind) => kind.base === true).map(({ id }) => id));
  const isOfRest = ({ kind, about }: Problem): boolean =>
    OF_REST.has(kind) || (kind === 'stated-not-made' && isIn(base, about.kind));
  const inLine = kindsOf(problems, IN_LINE);
  const inRun = kindsOf(problems, IN_RUN);
  const inShare = kindsOf(problems, IN_SHARE);
  const overfull = new Set(
    problems.filter(({ kind }) => kind === 'places-over').map(({ about }) => about.product),
  );
  const others = problems.filter((problem) => {
    const { kind, about } = problem;
    if (kind === 'alike-in-pack' && overfull.has(about.product)) return false;
    if (isOfRest(problem)) return false;
    if (kind === 'copies-not-even' && isIn(drawn, about.kind)) return false;
    if (isIn(inLine, about.kind)) return IN_LINE.has(kind) || about.list === 'redemptions';
    if (isIn(inRun, about.kind) && IN_SHARE.has(kind)) return false;
    const isShared = isIn(inRun, about.kind) || isIn(inShare, about.kind);
    return !(isShared && kind === 'stated-not-made');
  });
  const spoils = others.some(
    ({ severity, concerns, kind }) =>
      severity === 'error' &&
      (concerns === 'divides' || concerns === 'figures' || OF_ROOM.has(kind)),
  );
  if (spoils) return others;
  const ofRest = problems.filter(isOfRest);
  const stated = ofRest.find(({ kind }) => kind === 'stated-not-made');
  const first = stated ?? ofRest[0];
  return first === undefined ? others : [...others, first];
}

function kindsOf(problems: readonly Problem[], of: ReadonlySet<ProblemKind>): ReadonlySet<string> {
  return new Set(
    problems.filter(({ kind }) => of.has(kind)).flatMap(({ about }) => about.kind ?? []),
  );
}

function isIn(ids: ReadonlySet<string>, id: string | undefined): boolean {
  return id !== undefined && ids.has(id);
}
