import {
  heldSpans,
  holdNamed,
  join,
  knows,
  openingsOf,
  opensLater,
  sayHold,
  spotOf,
  type Card,
  type Copy,
  type Hold,
  type HeldSpan,
  type Paragraph,
  type Schedule,
  type SourceFile,
} from '../model/index.js';
import { endsSentence } from '../text/index.js';
import { holdableFields } from './held-fields.js';
import { knownField, knownHold } from './known-hold.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { unknown } from './unknown.js';

/** A hold of a field or a span that holds nothing, or that would leave half a sentence. */
export const heldSpan: Rule = {
  id: 'held-span',
  about: 'spoilers',
  severity: 'error',
  why: 'A hold that adds nothing only looks safe; half a sentence tells that the rest is held.',
  look: (subject) => [...badHolds(subject)],
  examples: {
    passes: [
      {
        says: 'a part of a sentence that leaves a mark',
        files: edited('one/cards/base/a2.md', ['that nobody lit', '[that nobody lit](held:later)']),
      },
      {
        says: 'a whole sentence that leaves no trace',
        files: edited('one/cards/base/a2.md', [
          'burning.',
          'burning. [She lit it.](held:last) It hums.',
        ]),
      },
    ],
    fails: [
      {
        says: 'a span held no longer than its card',
        files: edited(
          'one/cards/base/a2.md',
          ['spoiler: open', 'spoiler: later'],
          ['that nobody lit', '[that nobody lit](held:later)'],
        ),
        gives: {
          at: 'one/cards/base/a2.md:7:9',
          covers: 'that nobody lit',
          message: 'the hold `held:later` adds nothing here',
          found: 'held:later',
          expected: 'a hold that opens after later, or no hold',
        },
      },
      {
        says: 'a part of a sentence that would leave no trace',
        files: edited('one/cards/base/a2.md', ['that nobody lit', '[that nobody lit](held:last)']),
        gives: {
          at: 'one/cards/base/a2.md:7:9',
          covers: 'that nobody lit',
          message: '`last` leaves no trace, and these are not whole sentences',
          found: 'that nobody lit',
          expected: 'whole sentences, so that what is left reads as if nothing had been there',
        },
      },
      {
        says: 'a field that the card does not have',
        files: edited('one/cards/base/a2.md', [
          'story: 1/4',
          'story: 1/4\ntexts: { berth: Lock nine }\nholds: { texts.birth: later }',
        ]),
        gives: {
          at: 'one/cards/base/a2.md:7:10',
          covers: 'texts.birth',
          message: 'there is no field of this card `texts.birth`',
          found: 'texts.birth',
          expected: '`texts.berth`',
          fix: 'texts.berth',
        },
      },
    ],
  },
};

function* badHolds(subject: Subject): Generator<Remark> {
  const { schedule, holds } = subject;
  for (const card of subject.cards) {
    const hold = holds.get(card);
    if (card.front.holds) yield* badFields(card, hold, subject);
    if (!hold || !hasSpans(card.bio)) continue;
    const around = knownField(card, 'bio', hold, schedule);
    if (around) yield* badSpans(card.source, card.bio, around, subject);
  }
  for (const set of subject.sets) {
    for (const { source, front, words } of set.sales) {
      const around = hasSpans(words) ? knownHold(schedule, set.plan.value, front) : null;
      if (around) yield* badSpans(source, words, around, subject);
    }
  }
}

function* badFields(card: Card, hold: Hold | undefined, { schedule }: Subject): Generator<Remark> {
  const fields = holdableFields(card);
  for (const [field, id] of Object.entries(card.front.holds ?? {})) {
    const path = ['holds', field];
    if (!fields.includes(field)) {
      const spot = spotOf(card.source, path, 'key');
      yield { ...ofCard(card), ...unknown('field of this card', field, fields, spot) };
      continue;
    }
    if (!hold || !knows(schedule, id)) continue;
    const around = aroundField(card, field, hold, schedule);
    if (!around || opensLater(holdNamed(schedule, id), around)) continue;
    yield {
      ...ofCard(card),
      spot: spotOf(card.source, path),
      ...addsNothing(id, around, schedule),
    };
  }
}

/** What holds a field besides its own entry: the card, and `facts` for `facts.Berth`. */
function aroundField(card: Card, field: string, hold: Hold, schedule: Schedule): Hold | null {
  const [whole = field] = field.split('.');
  const id = whole === field ? undefined : card.front.holds?.[whole];
  if (id === undefined) return hold;
  return knows(schedule, id) ? join(hold, holdNamed(schedule, id)) : null;
}

function hasSpans(copy: Copy): boolean {
  return copy.some((paragraph) => paragraph.some((run) => run.hold !== null));
}

function* badSpans(
  source: SourceFile,
  copy: Copy,
  around: Hold,
  subject: Subject,
): Generator<Remark> {
  for (const paragraph of copy) {
    for (const span of heldSpans([paragraph])) {
      const wording = wordingOf(span, paragraph, around, subject);
      if (wording) yield { spot: { source, from: span.from, to: span.to }, ...wording };
    }
  }
}

type Wording = Pick<Remark, 'message' | 'found' | 'expected'>;

function wordingOf(
  span: HeldSpan,
  paragraph: Paragraph,
  around: Hold,
  { schedule }: Subject,
): Wording | null {
  if (!knows(schedule, span.hold)) return null;
  const own = holdNamed(schedule, span.hold);
  if (!opensLater(own, around)) return addsNothing(`held:${span.hold}`, around, schedule);
  const [opening] = openingsOf(schedule, own).filter(({ id }) => id === span.hold);
  if (opening?.absent !== true || isWholeSentences(span, paragraph)) return null;
  return {
    message: `\`${span.hold}\` leaves no trace, and these are not whole sentences`,
    found: span.text,
    expected: 'whole sentences, so that what is left reads as if nothing had been there',
  };
}

function addsNothing(id: string, around: Hold, schedule: Schedule): Wording {
  return {
    message: `the hold \`${id}\` adds nothing here`,
    found: id,
    expected: `a hold that opens after ${sayHold(schedule, around)}, or no hold`,
  };
}

/** Whether what stands before the span ends a sentence, and so does the span. */
function isWholeSentences(span: HeldSpan, paragraph: Paragraph): boolean {
  const before = paragraph.filter((run) => run.to <= span.from).map((run) => run.text);
  return endsSentence(before.join('')) && endsSentence(span.text);
}
