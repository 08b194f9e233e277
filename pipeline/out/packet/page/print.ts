import type { PageCard } from '../page-data.js';
import type { Book } from './book.js';
import { fill } from './data.js';
import { byId, make } from './dom.js';
import { VERDICTS, capital, sayPart } from './words.js';

/** Lays out all texts one after another while the page prints, each with boxes to tick. */
export function printsAll(book: Book): void {
  const place = byId('print', HTMLElement);
  addEventListener('beforeprint', () => {
    place.replaceChildren(...book.data.cards.map((card) => sheetOf(book, card)));
  });
  addEventListener('afterprint', () => place.replaceChildren());
}

function sheetOf(book: Book, card: PageCard): HTMLElement {
  const sheet = make('article');
  fill(sheet, card.html);
  if (card.parts.length === 0) return sheet;
  const boxes = VERDICTS.map(({ verdict }) => {
    return make('span', [make('span', '', { class: 'box' }), capital(verdict)]);
  });
  const said = card.parts.flatMap(({ part }) => {
    const choice = book.choiceOf(card, part);
    return choice ? [`${sayPart(part)}: ${choice.verdict}`] : [];
  });
  sheet.append(make('p', boxes, { class: 'verdicts' }));
  if (said.length > 0) sheet.append(make('p', `Decided in this file: ${said.join(' · ')}`));
  return sheet;
}
