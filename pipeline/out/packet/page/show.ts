import type { PageCard } from '../page-data.js';
import { sayPart } from './words.js';
import type { Book } from './book.js';
import { fill } from './data.js';
import { byId, make, say } from './dom.js';

/** A row of the list. */
interface Row {
  readonly item: HTMLElement;
  readonly button: HTMLButtonElement;
  readonly state: HTMLElement;
}

/** Whether the list stands beside the card. */
function isWide(): boolean {
  return matchMedia('(min-width: 70rem)').matches;
}

/** Which card is shown, and the list that it stands in. */
export class Shelf {
  #at = 0;
  #only = false;
  /** The cards that are listed: all, or only what changed. */
  #listed: readonly PageCard[];
  /** Those whose rows stand in the page. */
  #drawn: readonly PageCard[] = [];
  readonly #rows = new Map<PageCard, Row>();

  constructor(
    readonly book: Book,
    readonly onShow: (card: PageCard) => void,
  ) {
    this.#listed = book.data.cards;
    const contents = byId('contents', HTMLDetailsElement);
    contents.open = isWide();
    byId('only', HTMLElement).addEventListener('click', () => this.toggleOnly());
    byId('previous', HTMLElement).addEventListener('click', () => this.turn(-1));
    byId('next', HTMLElement).addEventListener('click', () => this.turn(1));
  }

  get card(): PageCard | undefined {
    return this.book.data.cards[this.#at];
  }

  toggleOnly(): void {
    const { cards } = this.book.data;
    this.#only = !this.#only;
    this.#listed = this.#only ? cards.filter(({ isChanged }) => isChanged) : cards;
    byId('only', HTMLElement).setAttribute('aria-pressed', String(this.#only));
    const [first] = this.#listed;
    if (!first) say('Nothing is changed since you last decided.');
    if (first && this.card && !this.#listed.includes(this.card)) this.show(first);
    else this.list();
  }

  /** Shows the next or the previous of those listed; false at an end. */
  turn(by: 1 | -1): boolean {
    const at = this.card ? this.#listed.indexOf(this.card) : -1;
    const card = this.#listed[at + by];
    if (card) this.show(card);
    return card !== undefined;
  }

  show(card: PageCard, focus = true): void {
    this.#at = this.book.data.cards.indexOf(card);
    const article = byId('card', HTMLElement);
    fill(article, card.html);
    article.setAttribute('aria-label', card.heading);
    this.book.opened(card.key);
    this.list();
    this.onShow(card);
    scrollTo(0, focus && !isWide() ? byId('contents', HTMLElement).offsetTop : 0);
    if (focus) article.querySelector('h2')?.focus({ preventScroll: true });
  }

  /** Brings the list up to date. */
  list(): void {
    const rows = this.#listed.map((card) => {
      const row = this.#rowOf(card);
      const state = this.#stateOf(card);
      if (row.state.textContent !== state) row.state.textContent = state;
      if (card === this.card) row.button.setAttribute('aria-current', 'true');
      else row.button.removeAttribute('aria-current');
      return row.item;
    });
    if (this.#drawn !== this.#listed) byId('list', HTMLElement).replaceChildren(...rows);
    this.#drawn = this.#listed;
    byId('progress', HTMLElement).textContent = this.#progress();
    const at = this.card ? this.#listed.indexOf(this.card) : -1;
    byId('previous', HTMLButtonElement).disabled = at <= 0;
    byId('next', HTMLButtonElement).disabled = at < 0 || at >= this.#listed.length - 1;
  }

  #rowOf(card: PageCard): Row {
    const known = this.#rows.get(card);
    if (known) return known;
    const state = make('small');
    const row = make('button', [`${card.heading} `, state], { type: 'button', class: 'plain' });
    row.addEventListener('click', () => {
      if (!isWide()) {
        byId('contents', HTMLDetailsElement).open = false;
      }
      this.show(card);
    });
    const made = { item: make('li', [row]), button: row, state };
    this.#rows.set(card, made);
    return made;
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
