import {
  cardHold,
  fieldHold,
  heldSpans,
  holdNamed,
  join,
  liftOf,
  scheduleOf,
  type Content,
  type Instant,
} from '../model/index.js';
import { heldWords, textsOf, type HeldWords } from './held.js';
import { readable } from './readable.js';

/** Something held that stands in a finished output. House matter: it names what is held. */
export interface AuditFinding {
  readonly file: string;
  readonly from: string;
  readonly words: string;
}

/** Runs of this many letters and more of a held bio are found; shorter texts are looked for whole. */
const RUN = 40;

/**
 * Searches a finished output for what is held at an instant. It shares nothing with the gate but
 * the model, so that a mistake there is found here.
 */
export function auditSite(
  files: ReadonlyMap<string, Uint8Array>,
  content: Content,
  at: Instant,
): readonly AuditFinding[] {
  const open = openText(content, at);
  const needles = heldWords(content, at).flatMap((held) => needlesOf(held, open));
  return [...files].flatMap(([file, bytes]) => {
    const texts = [fold(file), ...readable(file, bytes).map(fold)];
    return needles
      .filter(({ needle }) => texts.some((text) => text.includes(needle)))
      .map(({ held }) => ({ file, from: held.from, words: held.words }));
  });
}

interface Needle {
  readonly held: HeldWords;
  readonly needle: string;
}

/** What to look for: a short text whole, a long one by overlapping runs; nothing that is open. */
function needlesOf(held: HeldWords, open: string): Needle[] {
  const whole = fold(held.words);
  if (whole === '') return [];
  const runs = whole.length <= RUN ? [whole] : windows(whole);
  return runs
    .filter((needle) => held.always || !open.includes(needle))
    .map((needle) => ({ held, needle }));
}

function windows(text: string): string[] {
  const starts = Array.from(
    { length: Math.ceil((text.length - RUN) / 10) + 1 },
    (_, at) => at * 10,
  );
  return starts.map((start) => text.slice(Math.min(start, text.length - RUN)).slice(0, RUN));
}

/** All that is open in its own right, folded. */
function openText(content: Content, at: Instant): string {
  if (!content.property) return '';
  const schedule = scheduleOf(content.property.value);
  const texts = content.sets.flatMap((set) => [
    set.plan.value.title,
    ...set.plan.value.subsets.map((subset) => subset.title),
    ...set.cards.flatMap((card) => {
      const hold = cardHold(schedule, set.plan.value, card);
      const spans = heldSpans(card.bio)
        .filter((span) => liftOf(schedule, join(hold, holdNamed(schedule, span.hold))) > at)
        .map((span) => fold(span.text));
      const own = textsOf(card)
        .filter(({ field }) => liftOf(schedule, fieldHold(schedule, hold, card, field)) <= at)
        .map(({ words }) => spans.reduce((text, span) => text.replaceAll(span, '\n'), fold(words)));
      return [card.front.publicName ?? '', ...own];
    }),
  ]);
  return texts.map((text) => fold(text)).join('\n');
}

/** One form for all ways to write the same words: compatibility forms, case, spaces, marks. */
function fold(text: string): string {
  return text
    .normalize('NFKD')
    .replace(/\p{M}|\p{Cf}/gu, '')
    .replace(/[‘’‛`´]/g, "'")
    .replace(/[“”„«»]/g, '"')
    .toLowerCase()
    .replace(/[\s\p{Zs}]+/gu, ' ')
    .trim();
}
