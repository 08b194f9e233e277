import type { View } from '../../gate/index.js';
import { type CardText, isCut, type Listed, mm, setCard, whyVoid } from '../card/index.js';
import { plain } from './chrome.js';
import { CardItems, type Row } from './deck-items.js';
import { textsOf } from './deck-words.js';
import { sayFit, type FitWords } from './fit-words.js';
import type { FlowItem } from './flow.js';
import { headingOf } from './notes.js';
import type { PageLabel, Pen } from './pen.js';
import { bySubset, drawTextPages } from './text-pages.js';
import type { ProofOptions } from './types.js';

/** Draws the copy deck: the words of each card in full, in running order, with no card drawn. */
export function drawDeck(
  pen: Pen,
  view: View,
  cards: readonly Listed[],
  options: ProofOptions,
): { readonly placed: readonly []; readonly labels: readonly PageLabel[] } {
  const parts = bySubset(cards, (listed) => itemsOf(pen, view, listed, options));
  const note = view.audience === 'house' ? 'Words in [id: ...] are held.' : CUT;
  return { placed: [], labels: drawTextPages(pen, view, parts, note, options) };
}

const CUT = 'Cut to this reader: some cards will print otherwise.';

function itemsOf(pen: Pen, view: View, listed: Listed, options: ProofOptions): readonly FlowItem[] {
  const { card } = listed;
  const heading = headingOf(card);
  const items = new CardItems(pen, pen.section(heading), options);
  const notes = notesOf(listed);
  const told = [items.heading(heading), ...notes.map((words) => items.note(words))];
  const rows = card.state === 'shown' ? rowsOf(view, listed, options) : [];
  return [...told, ...rows.map((row, index) => items.row(row, index === 0 ? 0 : mm(0.8)))].map(
    (item, index, all) => (index === all.length - 1 ? { ...item, keep: false } : item),
  );
}

function notesOf(listed: Listed): readonly string[] {
  const { card } = listed;
  const level = card.notes ? [`${card.notes.level} (${card.notes.hold})`] : [];
  const reason = whyVoid(listed);
  const cut = isCut(card) && reason === null ? ['Not as printed'] : [];
  return [...level, ...(reason === null || reason === headingOf(card) ? [] : [reason]), ...cut];
}

/** Number and name are in the heading: they have a row only to say how they fit. */
function rowsOf(view: View, listed: Listed, options: ProofOptions): readonly Row[] {
  const house = view.audience === 'house';
  const text = house ? setCard(view, listed, options) : { front: [], back: [] };
  const { number, name } = listed.card;
  const top = [
    { label: 'number', runs: [plain(number ?? '')], fits: fitsOf(text, 'number') },
    { label: 'name', runs: [plain(name)], fits: fitsOf(text, 'name') },
  ];
  const texts = textsOf(view, listed).flatMap((each) => {
    const fits = fitsOf(text, each.name);
    return each.paragraphs.map((runs, index) => ({
      label: index === 0 ? each.name : '',
      runs,
      fits: index === 0 ? fits : [],
    }));
  });
  return [...top.filter(({ fits }) => fits.length > 0), ...texts];
}

/** A zone may stand on both sides; then each side is named. */
function fitsOf({ front, back }: CardText, name: string): readonly FitWords[] {
  const found = [
    ...front.map((zone) => ({ side: 'front', ...zone })),
    ...back.map((zone) => ({ side: 'back', ...zone })),
  ].filter((each) => each.name === name);
  return found.map(({ side, setting, zone }) => {
    const { words, bad } = sayFit(setting, zone.size);
    return { words: found.length > 1 ? `${side}: ${words}` : words, bad };
  });
}
