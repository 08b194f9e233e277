import {
  OPEN,
  cardHold,
  statedHold,
  subsetHold,
  type CardSet,
  type Hold,
  type SalesText,
  type YamlPath,
} from '../../model/index.js';
import { knownHold, leastHold, traceHold } from '../known-hold.js';
import type { Subject } from '../subject.js';
import { cardTexts } from './card.js';
import { outwardIds } from './ids.js';
import { copyTexts, valueText, type Around, type ToldText } from './text.js';

export type { ToldText } from './text.js';

/**
 * Every text that is read outside and whose own hold is understood: of cards, plans, sales texts,
 * corrections and rosters, of layouts and the property, and the ids that files and addresses show.
 */
export function* toldTexts(subject: Subject): Generator<ToldText> {
  yield* textsBesideCards(subject);
  for (const set of subject.sets) {
    for (const card of set.cards) yield* cardTexts(card, set, subject);
  }
}

/** Those of them that stand on no card. */
export function* textsBesideCards(subject: Subject): Generator<ToldText> {
  yield* propertyTexts(subject);
  yield* castTexts(subject);
  yield* layoutTexts(subject);
  for (const set of subject.sets) {
    yield* planTexts(set, subject);
    yield* productTexts(set, subject);
    yield* rosterTexts(set, subject);
    for (const sales of set.sales) yield* salesTexts(sales, set, subject);
    yield* correctionTexts(set, subject);
  }
  yield* outwardIds(subject);
}

function* propertyTexts({ content, schedule }: Subject): Generator<ToldText> {
  if (!content.property) return;
  const { source, value } = content.property;
  const text = (what: string, words: string | undefined, path: YamlPath, hold: Hold = OPEN) =>
    words === undefined ? [] : [valueText(what, words, path, { hold, source, owner: {} })];
  yield* text('`title`', value.title, ['title']);
  yield* text('the legal line', value.legal?.line, ['legal', 'line']);
  yield* text('the title of the site', value.site?.title, ['site', 'title']);
  yield* text('`address`', value.site?.address, ['site', 'address']);
  yield* text('`dataTerms`', value.site?.dataTerms, ['site', 'dataTerms']);
  for (const [at, { name, line }] of (value.legal?.depicts ?? []).entries()) {
    const owed = content.names?.value.names.find((each) => each.name === name);
    const hold = (owed && knownHold(schedule, owed)) ?? OPEN;
    yield* text(`the line owed to ${name}`, line, ['legal', 'depicts', at, 'line'], hold);
  }
  // What is announced is open text; any other label is told with what it names.
  for (const [at, { id, label }] of value.levels.entries()) {
    const hold = { level: schedule.levels[at]?.announced === true ? 0 : at, embargoes: [] };
    yield* text(`the label of \`${id}\``, label, ['levels', at, 'label'], hold);
  }
  for (const [at, { id, label }] of (value.embargoes ?? []).entries()) {
    const open = schedule.embargoes.get(id)?.announced === true;
    const hold = { level: 0, embargoes: open ? [] : [id] };
    yield* text(`the label of \`${id}\``, label, ['embargoes', at, 'label'], hold);
  }
}

/** What stands for a held name is read by everybody. */
function* castTexts({ content }: Subject): Generator<ToldText> {
  if (!content.names) return;
  const { source, value } = content.names;
  for (const [at, { name, publicName }] of value.names.entries()) {
    if (publicName === undefined) continue;
    const path = ['names', at, 'publicName'];
    yield valueText(`the \`publicName\` of ${name}`, publicName, path, {
      hold: OPEN,
      source,
      owner: {},
    });
  }
}

/** The words that every card of a layout prints are told with the first of these cards. */
function* layoutTexts({ content, subsets, holds }: Subject): Generator<ToldText> {
  const users = new Map<string, Hold[]>();
  for (const { plan, cards } of subsets) {
    for (const card of cards) {
      const back = card.front.back ?? plan.back;
      const hold = holds.get(card);
      if (back === undefined || !hold) continue;
      const known = users.get(back);
      if (known) known.push(hold);
      else users.set(back, [hold]);
    }
  }
  for (const [id, { source, value }] of content.layouts) {
    const cards = users.get(id);
    if (!cards) continue;
    const around = { hold: leastHold(cards), source, owner: {} };
    for (const [zone, text] of Object.entries(value.shared ?? {})) {
      yield valueText(`\`shared.${zone}\``, text, ['shared', zone], around);
    }
  }
}

function* planTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { source, value } = set.plan;
  const whole = knownHold(schedule, value);
  if (!whole) return;
  const around = (hold: Hold): Around => ({ hold, source, owner: { set: set.id } });
  const outer = around(traceHold(schedule, whole));
  for (const key of ['title', 'short'] as const) {
    const text = value[key];
    if (text !== undefined) yield valueText(`\`${key}\``, text, [key], outer);
  }
  for (const [at, subset] of value.subsets.entries()) {
    const hold = knownHold(schedule, value, subset);
    if (!hold) continue;
    const path = ['subsets', at, 'title'];
    const shown = around(traceHold(schedule, hold));
    yield valueText(`the title of \`${subset.id}\``, subset.title, path, shown);
    const { statement } = subset;
    if (statement === undefined) continue;
    const said = ['subsets', at, 'statement'];
    yield valueText(`the statement of \`${subset.id}\``, statement, said, around(hold));
  }
  for (const [id, total] of Object.entries(value.totals ?? {})) {
    if (typeof total === 'number' || total.title === undefined) continue;
    yield valueText(`the title of \`${id}\``, total.title, ['totals', id, 'title'], outer);
  }
  for (const [at, parallel] of (value.parallels ?? []).entries()) {
    const hold = knownHold(schedule, value, parallel);
    if (!hold) continue;
    for (const key of ['title', 'tell'] as const) {
      const text = parallel[key];
      if (text === undefined) continue;
      const what = `the ${key} of \`${parallel.id}\``;
      yield valueText(what, text, ['parallels', at, key], around(hold));
    }
  }
}

function* productTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { source, value } = set.plan;
  for (const [at, product] of (value.products ?? []).entries()) {
    const hold = knownHold(schedule, value, product);
    if (!hold) continue;
    const around = { hold, source, owner: { set: set.id } };
    const path = ['products', at, 'title'];
    yield valueText(`the title of \`${product.id}\``, product.title, path, around);
  }
}

/** Artists are named with the subset that they draw; who withdrew is named nowhere. */
function* rosterTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { value: plan } = set.plan;
  for (const [file, { source, value }] of set.rosters) {
    const users = plan.subsets.filter(({ roster }) => roster === file);
    if (users.length === 0) continue;
    const hold = leastHold(users.map(({ id }) => subsetHold(schedule, plan, id)));
    for (const [at, { name, state }] of value.artists.entries()) {
      if (state === 'withdrawn') continue;
      const around = { hold, source, owner: { set: set.id } };
      yield valueText('the name of an artist', name, ['artists', at, 'name'], around);
    }
  }
}

function* salesTexts(sales: SalesText, set: CardSet, subject: Subject): Generator<ToldText> {
  const { source, front, words } = sales;
  const hold = knownHold(subject.schedule, set.plan.value, front);
  if (!hold) return;
  const around = { hold, source, owner: { set: set.id } };
  if (front.title !== undefined) yield valueText('`title`', front.title, ['title'], around);
  yield* copyTexts('this text', words, around, subject.schedule);
}

/** A correction is read with its card. */
function* correctionTexts(set: CardSet, { schedule }: Subject): Generator<ToldText> {
  const { corrections, plan } = set;
  if (!corrections) return;
  for (const [at, correction] of corrections.value.corrections.entries()) {
    const card = set.cards.find((each) => `${each.subset}/${each.id}` === correction.card);
    const hold = card ? cardHold(schedule, plan.value, card) : statedHold(schedule, plan.value);
    const around = { hold, source: corrections.source, owner: { set: set.id } };
    for (const key of ['was', 'now', 'note'] as const) {
      const text = correction[key];
      if (text === undefined) continue;
      yield valueText(`\`${key}\``, text, ['corrections', at, key], around);
    }
  }
}
