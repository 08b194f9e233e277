import type { Redemption, ReleasePlan } from './plan.js';
import { problem, type Problem } from './problem.js';

/** Redemptions that stand for nothing, are found nowhere, or do not say until when and for when. */
export function redemptionProblems(plan: ReleasePlan): readonly Problem[] {
  const { redemptions = [] } = plan;
  if (redemptions.length === 0) return [];
  const entered = new Set(plan.entries.map(({ kind }) => kind));
  const cards = new Set<string>();
  const found = new Map<string, string>();
  for (const kind of plan.kinds) {
    const packed = kind.base === true || entered.has(kind.id);
    if (packed) found.set(kind.id, kind.title);
    for (const { id, label } of kind.cards) {
      cards.add(id);
      if (packed && !found.has(id)) found.set(id, `${kind.title}, ${label}`);
    }
  }
  return redemptions.flatMap((redemption, at) => {
    const name = found.get(redemption.found);
    const about = { kind: redemption.found, list: 'redemptions', at } as const;
    return [
      ...(name === undefined
        ? [
            problem(
              'redemption-not-packed',
              about,
              `The redemption “${redemption.found}” is in no pack: nothing of that name is packed.`,
            ),
          ]
        : []),
      ...standsForNothing(redemption, name ?? redemption.found, cards, about),
      ...datesOf(redemption, name ?? redemption.found, about),
    ];
  });
}

function standsForNothing(
  { standsFor }: Redemption,
  name: string,
  cards: ReadonlySet<string>,
  about: Problem['about'],
): readonly Problem[] {
  if (standsFor.length === 0) {
    return [
      problem(
        'redemption-card',
        about,
        `${name}: nothing says which card is sent for a redemption.`,
      ),
    ];
  }
  return standsFor
    .filter((id) => !cards.has(id))
    .map((id) =>
      problem(
        'redemption-card',
        { ...about, card: id },
        `${name}: a redemption stands for “${id}”, and no such card is issued.`,
      ),
    );
}

function datesOf(
  { ships, expires }: Redemption,
  name: string,
  about: Problem['about'],
): readonly Problem[] {
  const problems: Problem[] = [];
  if (ships === null) {
    problems.push(
      problem('redemption-ships', about, `${name}: a redemption must say when the card is sent.`),
    );
  }
  if (ships === 'unset') {
    problems.push(
      problem(
        'redemption-unset',
        about,
        `${name}: collectors are promised a card, and no day is set on which it is sent.`,
      ),
    );
  }
  if (expires === null) {
    problems.push(
      problem(
        'redemption-expires',
        about,
        `${name}: a redemption must say until when it is taken, or that it never ends.`,
      ),
    );
  }
  const days = [ships === 'unset' ? null : ships, expires === 'never' ? null : expires];
  for (const day of days.filter((each) => each !== null)) {
    if (!isDay(day)) {
      problems.push(
        problem(
          'redemption-day',
          about,
          `${name}: “${day}” is no day; it is written as 2027-06-05.`,
        ),
      );
    }
  }
  const [sent, last] = days;
  if (typeof sent === 'string' && typeof last === 'string' && isDay(sent) && isDay(last)) {
    if (last < sent) {
      problems.push(
        problem(
          'redemption-order',
          about,
          `${name}: a redemption ends on ${last}, before the card is sent on ${sent}.`,
        ),
      );
    }
  }
  return problems;
}

/** Days of each month, in a year that is no leap year. */
const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** Whether it is a day of the calendar, written as YYYY-MM-DD (ISO 8601). */
function isDay(day: string): boolean {
  const [, year = 0, month = 0, date = 0] = (/^(\d{4})-(\d{2})-(\d{2})$/u.exec(day) ?? []).map(
    Number,
  );
  const leap = year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0);
  const days = month === 2 && leap ? 29 : (DAYS[month - 1] ?? 0);
  return date >= 1 && date <= days;
}
