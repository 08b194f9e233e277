import {
  cardHold,
  fieldHold,
  heldSpans,
  holdNamed,
  join,
  opensLater,
  type Card,
  type CardSet,
  type Hold,
  type Schedule,
} from '../model/index.js';

/**
 * Whether nothing of a card is held longer today than in the version that was approved: the card, a
 * field of either, or words. Words that are held today must be held in the version too.
 */
export function isNoStricter(
  schedule: Schedule,
  { plan: { value: plan } }: CardSet,
  today: Card,
  version: Card,
): boolean {
  const now = cardHold(schedule, plan, today);
  const then = cardHold(schedule, plan, version);
  const fields = [...Object.keys(today.front.holds ?? {}), 'bio'];
  const spans = spanHolds(schedule, then, version);
  return (
    !opensLater(now, then) &&
    fields.every(
      (field) =>
        !opensLater(
          fieldHold(schedule, now, today, field),
          fieldHold(schedule, then, version, field),
        ),
    ) &&
    spanHolds(schedule, now, today).every(({ text, hold }) =>
      spans.some((span) => span.text === text && !opensLater(hold, span.hold)),
    )
  );
}

function spanHolds(
  schedule: Schedule,
  card: Hold,
  of: Card,
): readonly { readonly text: string; readonly hold: Hold }[] {
  const bio = fieldHold(schedule, card, of, 'bio');
  return heldSpans(of.bio).map(({ text, hold }) => ({
    text,
    hold: join(bio, holdNamed(schedule, hold)),
  }));
}
