import type { PageCard } from '../page-data.js';
import { sayPart } from './words.js';
import type { Book } from './book.js';
import { byId, make, say } from './dom.js';

/** Which card is shown, and the list that it stands in. */
export class Shelf {
  #at = 0;
  #only = false;

  constructor(
    readonly book: Book,
    readonly onShow: (card: PageCard) => void,
  ) {
    const contents = byId('contents', HTMLDetailsElement);
    contents.open = matchMedia('(min-width: 70rem)').matches;
    byId('only', HTMLElement).addEventListener('click', () => this.toggleOnly());
    byId('previous', HTMLElement).addEventListener('click', () => this.turn(-1));
    byId('next', HTMLElement).addEventListener('click', () => this.turn(1));
  }

  get card(): PageCard | undefined {
    return this.book.data.cards[this.#at];
  }

  /** The cards that are listed: all, or only what changed. */
  get listed(): readonly PageCard[] {
    const { cards } = this.book.data;
    return this.#only ? cards.filter(({ isChanged }) => isChanged) : cards;
  }

  toggleOnly(): void {
    this.#only = !this.#only;
    byId('only', HTMLElement).setAttribute('aria-pressed', String(this.#only));
    const [first] = this.listed;
    if (!first) say('Nothing is changed since you last decided.');
    if (first && this.card && !this.listed.includes(this.card)) this.show(first);
    else this.list();
  }

  /** Shows the next or the previous of those listed; false at an end. */
  turn(by: 1 | -1): boolean {
    const at = this.card ? this.listed.indexOf(this.card) : -1;
    const card = this.listed[at + by];
    if (card) this.show(card);
    return card !== undefined;
  }

  show(card: PageCard, focus = true): void {
    this.#at = this.book.data.cards.indexOf(card);
    const article = byId('card', HTMLElement);
    article.innerHTML = card.html;
    article.setAttribute('aria-label', card.heading);
    this.book.opened(card.key);
    this.list();
    this.onShow(card);
    scrollTo(0, 0);
    if (focus) article.querySelector('h2')?.focus({ preventScroll: true });
  }

  /** Draws the list anew. */
  list(): void {
    const rows = this.listed.map((card) => {
      const row = make('button', [`${card.heading} `, make('small', this.#stateOf(card))], {
        type: 'button',
        class: 'plain',
      });
      if (card === this.card) row.setAttribute('aria-current', 'true');
      row.addEventListener('click', () => {
        if (!matchMedia('(min-width: 70rem)').matches) {
          byId('contents', HTMLDetailsElement).open = false;
        }
        this.show(card);
      });
      return make('li', [row]);
    });
    byId('list', HTMLElement).replaceChildren(...rows);
    byId('progress', HTMLElement).textContent = this.#progress();
    const at = this.card ? this.listed.indexOf(this.card) : -1;
    byId('previous', HTMLButtonElement).disabled = at <= 0;
    byId('next', HTMLButtonElement).disabled = at < 0 || at >= this.listed.length - 1;
  }

  #stateOf(card: PageCard): string {
    if (card.parts.length === 0) return 'to read';
    const open = this.book.openParts(card);
    if (open.length === 0) {
      const verdicts = card.parts.map(({ part }) => this.book.choiceOf(card, part)?.verdict);
      return verdicts.find((verdict) => verdict !== 'approved') ?? 'approved';
    }
    return open.length < card.parts.length ? `open: ${open.map(sayPart).join(', ')}` : '';
  }

  #progress(): string {
    const all = this.book.data.cards.filter(({ parts }) => parts.length > 0).length;
    const decided = all - this.book.undecided().length;
    return `${String(decided)} of ${String(all)} decided`;
  }
}
