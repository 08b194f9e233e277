import { count } from './count.js';
import type { Kind, PlannedCard, ReleasePlan } from './plan.js';
import { problem, type Problem } from './problem.js';
import { twice } from './twice.js';

/** Cards of a kind that are named twice, whose figures are no counts, or whose parent is not there. */
export function checkCards(plan: ReleasePlan): readonly Problem[] {
  return plan.kinds.flatMap((kind) => {
    const parents = new Set(
      kind.cards.filter(({ variationOf }) => variationOf === undefined).map(({ id }) => id),
    );
    const known = new Set(kind.cards.map(({ id }) => id));
    return [
      ...twice(kind.cards.map(({ id }) => id)).map((id) =>
        problem('id-twice', { kind: kind.id, card: id }, `${kind.title} have “${id}” twice.`),
      ),
      ...kind.cards.flatMap((card) => checkCard(card, kind, parents)),
      ...(kind.sheet?.doubled ?? [])
        .filter((id) => !known.has(id))
        .map((id) =>
          problem(
            'doubled-unknown',
            { kind: kind.id, card: id },
            `${kind.title}: “${id}” stands twice on the sheet, and there is no such card.`,
          ),
        ),
    ];
  });
}

function checkCard(
  card: PlannedCard,
  { id, title, run }: Kind,
  parents: ReadonlySet<string>,
): readonly Problem[] {
  const about = { kind: id, card: card.id };
  const name = `${title}, ${card.label}`;
  const found: Problem[] = [
    ...(card.weight === undefined ? [] : count(card.weight, 1, `${name}: weight`, about)),
    ...(card.copies === undefined ? [] : count(card.copies, 1, `${name}: copies`, about)),
    ...(card.stated === undefined ? [] : count(card.stated, 1, `${name}: copies`, about)),
  ];
  if (run !== undefined && (card.copies !== undefined || (card.weight ?? 1) !== 1)) {
    found.push(
      problem(
        'run-by-weight',
        about,
        `${name}: a run is the same for each card, so that no card of it has copies or a weight of its own.`,
      ),
    );
  }
  if (card.variationOf === undefined) return found;
  if (!parents.has(card.variationOf)) {
    found.push(
      problem(
        'parent-unknown',
        about,
        `${name} shares the copies of “${card.variationOf}”, which is no card of ${title}.`,
      ),
    );
  }
  if (card.copies === undefined) {
    found.push(
      problem(
        'variation-uncounted',
        about,
        `${name} is a variation, and nothing says how many of its parent’s copies it takes.`,
      ),
    );
  }
  return found;
}
