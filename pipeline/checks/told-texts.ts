import {
  cardHold,
  holdNamed,
  join,
  paragraphText,
  spotOf,
  statedHold,
  type Card,
  type CardSet,
  type Copy,
  type Hold,
  type Paragraph,
  type SalesText,
  type SourceFile,
  type Spot,
  type YamlPath,
} from '../model/index.js';
import { knownField, knownHold } from './known-hold.js';
import { ofCard, type Remark } from './rule.js';
import type { Subject } from './subject.js';

/** A text that somebody outside may read, and when: what it tells must not open later. */
export interface ToldText {
  /** "the bio", "`facts.Berth`". */
  readonly what: string;
  readonly text: string;
  /** When a part of the text is told, from and to in UTF-16 units. */
  readonly holdOf: (from: number, to: number) => Hold;
  readonly spotOf: (from: number, to: number) => Spot;
  readonly owner: Pick<Remark, 'set' | 'card'>;
}

/** Every text of cards, plans, sales texts and corrections whose own hold is understood. */
export function* toldTexts(subject: Subject): Generator<ToldText> {
  for (const set of subject.sets) {
    yield* planTexts(set, subject);
    for (const card of set.cards) yield* cardTexts(card, set, subject);
    for (const sales of set.sales) yield* salesTexts(sales, set, subject);
    yield* correctionTexts(set, subject);
  }
}

function* cardTexts(card: Card, set: CardSet, subject: Subject): Generator<ToldText> {
  const { schedule, holds } = subject;
  const { front, source } = card;
  const owner = ofCard(card);
  const hold = holds.get(card);
  if (!hold) return;
  for (const { field, path, text } of fieldsOf(card)) {
    const own = knownField(card, field, hold, schedule);
    if (own) yield valueText(`\`${path.join('.')}\``, text, own, source, path, owner);
  }
  if (front.publicName !== undefined) {
    const around = knownHold(schedule, set.plan.value, planOf(set, card) ?? {});
    if (around) {
      yield valueText('`publicName`', front.publicName, around, source, ['publicName'], owner);
    }
  }
  const bioHold = knownField(card, 'bio', hold, schedule);
  if (bioHold) yield* copyTexts('the bio', card.bio, bioHold, source, owner, subject);
}

interface Field {
  readonly field: string;
  readonly path: YamlPath;
  readonly text: string;
}

/** The values of a card that are read outside, each under the field that may hold it. */
function fieldsOf({ front }: Card): readonly Field[] {
  const { name, image, variation, facts = {}, texts = {}, signers = [], credits = [] } = front;
  const own = (field: string, path: YamlPath, text: string | undefined): readonly Field[] =>
    text === undefined ? [] : [{ field, path, text }];
  return [
    ...own('name', ['name'], name),
    ...own('image.alt', ['image', 'alt'], image?.alt),
    ...own('variation', ['variation', 'tell'], variation?.tell),
    ...Object.entries(facts).flatMap(([key, value]) => own(`facts.${key}`, ['facts', key], value)),
    ...Object.entries(texts).flatMap(([key, value]) => own(`texts.${key}`, ['texts', key], value)),
    ...signers.flatMap((signer, at) => [
      ...own('signers', ['signers', at, 'name'], signer.name),
      ...own('signers', ['signers', at, 'as'], signer.as),
    ]),
    ...credits.flatMap(({ role, name: who }, at) => [
      ...own('credits', ['credits', at, 'role'], role),
      ...own('credits', ['credits', at, 'name'], who),
    ]),
  ];
}

function planOf(set: CardSet, card: Card): CardSet['plan']['value']['subsets'][number] | undefined {
  return set.plan.value.subsets.find(({ id }) => id === card.subset);
}

function* planTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { source, value } = set.plan;
  const whole = knownHold(schedule, value);
  if (!whole) return;
  const owner = { set: set.id };
  for (const key of ['title', 'short'] as const) {
    const text = value[key];
    if (text !== undefined) yield valueText(`\`${key}\``, text, whole, source, [key], owner);
  }
  for (const [at, subset] of value.subsets.entries()) {
    const hold = knownHold(schedule, value, subset);
    const path = ['subsets', at, 'title'];
    if (hold)
      yield valueText(`the title of \`${subset.id}\``, subset.title, hold, source, path, owner);
  }
  for (const [at, parallel] of (value.parallels ?? []).entries()) {
    const hold = knownHold(schedule, value, parallel);
    if (!hold) continue;
    for (const key of ['title', 'tell'] as const) {
      const text = parallel[key];
      if (text === undefined) continue;
      const what = `the ${key} of \`${parallel.id}\``;
      yield valueText(what, text, hold, source, ['parallels', at, key], owner);
    }
  }
}

function* salesTexts(sales: SalesText, set: CardSet, subject: Subject): Generator<ToldText> {
  const { source, front, words } = sales;
  const hold = knownHold(subject.schedule, set.plan.value, front);
  if (!hold) return;
  const owner = { set: set.id };
  if (front.title !== undefined) {
    yield valueText('`title`', front.title, hold, source, ['title'], owner);
  }
  yield* copyTexts('this text', words, hold, source, owner, subject);
}

/** A correction is read with its card. */
function* correctionTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { corrections, plan } = set;
  for (const [at, correction] of (corrections?.value.corrections ?? []).entries()) {
    const card = set.cards.find((each) => `${each.subset}/${each.id}` === correction.card);
    const hold = card ? cardHold(schedule, plan.value, card) : statedHold(schedule, plan.value);
    for (const key of ['was', 'now', 'note'] as const) {
      const text = correction[key];
      if (!corrections || text === undefined) continue;
      const path = ['corrections', at, key];
      yield valueText(`\`${key}\``, text, hold, corrections.source, path, { set: set.id });
    }
  }
}

/** A value of a file; its words are pointed at where they stand as they are. */
function valueText(
  what: string,
  text: string,
  hold: Hold,
  source: SourceFile,
  path: YamlPath,
  owner: ToldText['owner'],
): ToldText {
  const place = (from: number, to: number): Spot => {
    const spot = spotOf(source, path);
    const at = source.text.slice(spot.from, spot.to).indexOf(text.slice(from, to));
    return at < 0 ? spot : { source, from: spot.from + at, to: spot.from + at + to - from };
  };
  return { what, text, holdOf: () => hold, spotOf: place, owner };
}

/** Paragraphs, each with its held spans: words in one open with the span and not with the text. */
function* copyTexts(
  what: string,
  copy: Copy,
  around: Hold,
  source: SourceFile,
  owner: ToldText['owner'],
  { schedule }: Subject,
): Generator<ToldText> {
  for (const paragraph of copy) {
    yield {
      what,
      text: paragraphText(paragraph),
      holdOf: (from, to) =>
        runsIn(paragraph, from, to).reduce(
          (hold, { run }) => (run.hold === null ? hold : join(hold, holdNamed(schedule, run.hold))),
          around,
        ),
      spotOf: (from, to) => spotInRuns(paragraph, from, to, source),
      owner,
    };
  }
}

type Run = Paragraph[number];

/** The runs that a stretch of a paragraph touches, with where each starts in it. */
function runsIn(
  paragraph: Paragraph,
  from: number,
  to: number,
): readonly { readonly run: Run; readonly start: number }[] {
  let start = 0;
  const placed = paragraph.map((run) => {
    const here = { run, start };
    start += run.text.length;
    return here;
  });
  return placed.filter((each) => each.start < to && each.start + each.run.text.length > from);
}

function spotInRuns(paragraph: Paragraph, from: number, to: number, source: SourceFile): Spot {
  const touched = runsIn(paragraph, from, to);
  const [first] = touched;
  const last = touched.at(-1);
  if (!first || !last) return { source, from: 0, to: 0 };
  const written = ({ run }: (typeof touched)[number]): boolean =>
    source.text.slice(run.from, run.to) === run.text;
  return {
    source,
    from: first.run.from + (written(first) ? Math.max(0, from - first.start) : 0),
    to: written(last)
      ? last.run.from + Math.min(last.run.text.length, to - last.start)
      : last.run.to,
  };
}
