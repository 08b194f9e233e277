import {
  type Card,
  type CardSet,
  type Hold,
  type Paragraph,
  type SalesText,
} from '../../model/index.js';
import { knownField, knownHold, leastHold } from '../known-hold.js';
import { ofCard } from '../rule.js';
import type { Subject } from '../subject.js';
import { cardTexts } from '../told/card.js';
import { copyTexts, valueText, type Around, type ToldText } from '../told/text.js';

/** A stretch of a text that is a count link: what it counts, or `none`. */
export interface CountLink {
  readonly from: number;
  readonly to: number;
  readonly names: string;
  /** Where the file has the words and, behind them, the id. */
  readonly source: { readonly from: number; readonly to: number };
}

/** A text in which something may be counted, and what it is read with. */
export interface ClaimText {
  readonly told: ToldText;
  /** Copy of cards tells stories; all other texts speak of the cards themselves. */
  readonly sells: boolean;
  readonly links: readonly CountLink[];
  /** The sets that it speaks of: one, but for a layout that several use. */
  readonly sets: readonly CardSet[];
  /** The subset that it stands on. */
  readonly subset: string | null;
  readonly card: Card | null;
  readonly sales: SalesText | null;
}

/** The texts of a set besides its cards: statements and what sells it. */
export function* otherClaimTexts(set: CardSet, subject: Subject): Generator<ClaimText> {
  yield* statements(set, subject);
  for (const sales of set.sales) yield* salesTexts(sales, set, subject);
}

/** The texts of one card. */
export function* claimTextsOfCard(
  card: Card,
  set: CardSet,
  subject: Subject,
): Generator<ClaimText> {
  const own = { sells: false, sets: [set], subset: card.subset, card, sales: null };
  for (const told of cardTexts(card, set, subject)) {
    // A printed list is held to the plan, line by line, by a rule of its own.
    if (told.what === '`texts.list`') continue;
    if (told.what !== 'the bio') yield { ...own, told, links: [] };
  }
  const hold = subject.holds.get(card);
  const bioHold = hold && knownField(card, 'bio', hold, subject.schedule);
  if (!bioHold) return;
  const around = { hold: bioHold, source: card.source, owner: ofCard(card) };
  for (const paragraph of card.bio) {
    yield* paragraphText(paragraph, 'the bio', around, subject, own);
  }
}

type Own = Omit<ClaimText, 'told' | 'links'>;

function* paragraphText(
  paragraph: Paragraph,
  what: string,
  around: Around,
  { schedule }: Subject,
  own: Own,
): Generator<ClaimText> {
  // The whole paragraph comes first; what is left of it while words are held says no other number.
  const [told] = copyTexts(what, [paragraph], around, schedule);
  if (told) yield { ...own, told, links: linksOf(paragraph) };
}

function linksOf(paragraph: Paragraph): CountLink[] {
  const links: CountLink[] = [];
  let start = 0;
  let before: string | null = null;
  for (const { text, count, from, to } of paragraph) {
    const end = start + text.length;
    const open = links.at(-1);
    if (count !== null && open && before === count) {
      links[links.length - 1] = { ...open, to: end, source: { from: open.source.from, to } };
    } else if (count !== null) {
      links.push({ from: start, to: end, names: count, source: { from, to } });
    }
    before = count;
    start = end;
  }
  return links;
}

function* statements(set: CardSet, { schedule }: Subject): Generator<ClaimText> {
  const { source, value } = set.plan;
  for (const [at, subset] of value.subsets.entries()) {
    const hold = knownHold(schedule, value, subset);
    if (subset.statement === undefined || !hold) continue;
    const around = { hold, source, owner: { set: set.id } };
    const path = ['subsets', at, 'statement'];
    const what = `the statement of \`${subset.id}\``;
    yield {
      told: valueText(what, subset.statement, path, around),
      sells: true,
      links: [],
      sets: [set],
      subset: subset.id,
      card: null,
      sales: null,
    };
  }
}

function* salesTexts(sales: SalesText, set: CardSet, subject: Subject): Generator<ClaimText> {
  const { source, front, words } = sales;
  const hold = knownHold(subject.schedule, set.plan.value, front);
  if (!hold) return;
  const around = { hold, source, owner: { set: set.id } };
  const own = { sells: true, sets: [set], subset: null, card: null, sales };
  if (front.title !== undefined) {
    yield { ...own, told: valueText('`title`', front.title, ['title'], around), links: [] };
  }
  for (const paragraph of words) {
    yield* paragraphText(paragraph, 'this text', around, subject, own);
  }
}

/** What layouts print on all their cards. */
export function* layoutClaimTexts(subject: Subject): Generator<ClaimText> {
  const { content, subsets, holds } = subject;
  for (const [id, { source, value }] of content.layouts) {
    if (value.shared === undefined) continue;
    const users = subsets.flatMap((view) => {
      const cards = view.cards.filter((card) => (card.front.back ?? view.plan.back) === id);
      return cards.length > 0 ? [{ view, cards }] : [];
    });
    const known = users.flatMap(({ cards }) =>
      cards.flatMap((card): readonly Hold[] => {
        const hold = holds.get(card);
        return hold ? [hold] : [];
      }),
    );
    if (known.length === 0) continue;
    const around = { hold: leastHold(known), source, owner: {} };
    const sets = [...new Set(users.map(({ view }) => view.set))];
    const subset = users.length === 1 ? (users[0]?.view.plan.id ?? null) : null;
    for (const [zone, text] of Object.entries(value.shared)) {
      const told = valueText(`\`shared.${zone}\``, text, ['shared', zone], around);
      yield { told, sells: true, links: [], sets, subset, card: null, sales: null };
    }
  }
}
