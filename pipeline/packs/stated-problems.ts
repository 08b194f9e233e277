import { add, compare, fraction, whole, type Fraction } from './fraction.js';
import type { Kind, PlannedCard } from './plan.js';
import { problem, type Problem } from './problem.js';
import type { CardsMade, KindReport } from './report.js';
import { copiesOfVariations } from './sharing.js';
import { underRuns } from './sheets.js';
import type { Prepared } from './tally.js';
import { counted as count, grouped, mixed } from './words.js';

/** Copies that are stated and do not come out, reserves that are large, and sheets that are too few. */
export function statedProblems(
  { plan, kinds }: Prepared,
  reports: readonly KindReport[],
): readonly Problem[] {
  const reported = new Map(reports.map((report) => [report.kind, report]));
  return [
    ...plan.kinds.flatMap((kind) => (reported.has(kind.id) ? [] : statedButUnpacked(kind))),
    ...reports.flatMap((report) => {
      const kind = kinds.get(report.kind);
      if (kind === undefined || !report.complete) return [];
      return [...stated(kind, report), ...largeReserve(kind, report), ...shortSheets(kind, report)];
    }),
  ];
}

function statedButUnpacked(kind: Kind): readonly Problem[] {
  if (kind.stated === undefined) return [];
  return [statedProblem(kind, kind.stated, whole(kind.reserve ?? 0))];
}

function stated(kind: Kind, { cards }: KindReport): readonly Problem[] {
  const byId = new Map(kind.cards.map((card) => [card.id, card]));
  const found: Problem[] = [];
  let asked = kind.stated;
  for (const group of cards) {
    const own = group.cards.flatMap((id) => byId.get(id) ?? []);
    const ordinary = own.find(isOrdinary);
    if (ordinary !== undefined && asked !== undefined) {
      const made = add(group.made, whole(copiesOfVariations(kind).get(ordinary.id) ?? 0));
      if (compare(whole(asked), made) !== 0) found.push(statedProblem(kind, asked, made));
      asked = undefined;
    }
    found.push(...own.flatMap((card) => statedOfCard(kind, card, group)));
  }
  return found;
}

/** Whether what is stated of each card of its kind is stated of this one. */
function isOrdinary({ weight = 1, copies }: PlannedCard): boolean {
  return weight === 1 && copies === undefined;
}

function statedOfCard(
  { id, title }: Kind,
  card: PlannedCard,
  { made }: CardsMade,
): readonly Problem[] {
  if (card.stated === undefined || compare(whole(card.stated), made) === 0) return [];
  return [
    problem(
      'stated-not-made',
      { kind: id, card: card.id },
      `${title}: the plan states ${count(card.stated, 'copy', 'copies')} of ${card.label}, but what is packed and kept comes to ${mixed(made)}.`,
      { stated: card.stated },
    ),
  ];
}

function statedProblem({ id, title }: Kind, of: number, made: Fraction): Problem {
  return problem(
    'stated-not-made',
    { kind: id },
    `${title}: the plan states ${count(of, 'copy', 'copies')} of each card, but what is packed and kept comes to ${mixed(made)} of each.`,
    { stated: of },
  );
}

/** More than one copy in twenty that is not packed is seldom meant. */
function largeReserve({ id, title, reserve = 0 }: Kind, { cards }: KindReport): readonly Problem[] {
  const twentieth = (made: Fraction): Fraction => fraction(made.over, made.under * 20n);
  const large = cards.find(({ made }) => compare(whole(reserve), twentieth(made)) > 0);
  if (reserve === 0 || large === undefined) return [];
  return [
    problem(
      'reserve-high',
      { kind: id },
      `${title}: keeping ${grouped(reserve)} of ${mixed(large.made)} copies of each card in reserve is more than 5 %.`,
      { reserve },
    ),
  ];
}

function shortSheets({ id, title, cards }: Kind, { sheets }: KindReport): readonly Problem[] {
  const first = sheets === null ? undefined : underRuns(sheets)[0];
  if (sheets === null || first === undefined) return [];
  const label = cards.find((card) => card.id === first.id)?.label ?? first.id;
  const needed = sheets.forms.reduce((most, form) => Math.max(most, form.needed), 0);
  const missing = mixed({ over: -first.over.over, under: first.over.under });
  return [
    problem(
      'sheets-short',
      { kind: id, card: first.id },
      `${title}: the sheets that are ordered give ${grouped(first.copies)} copies of ${label}, ${missing} too few; ${count(needed, 'sheet')} of a form are needed.`,
      { copies: first.copies, needed },
    ),
  ];
}
