import type { PageCard } from '../page-data.js';
import { signedAnswer } from '../answer-file.js';
import type { Book } from './book.js';
import { close, open } from './dialog.js';
import { button, make, say } from './dom.js';
import type { Remarks } from './remarks.js';
import type { Shelf } from './show.js';
import type { Store } from './store.js';
import { VERDICTS, capital, count, sayPart } from './words.js';

/** Shows what was decided, and makes the decision file. */
export class Finish {
  constructor(
    readonly book: Book,
    readonly shelf: Shelf,
    readonly remarks: Remarks,
    readonly store: Store,
  ) {}

  show(): void {
    const { book } = this;
    const rest = book.undecidedOpened().length;
    const approve = button(`Approve the rest that I have opened (${String(rest)})`, () => {
      book.approveOpened();
      this.show();
      say(`${count(rest, 'text')} approved.`);
    });
    const isEmpty = book.decisions().length === 0 && book.draft.remarks.length === 0;
    const save = button('Save decision file', () => void this.#save(), 'main');
    const acts = make(
      'p',
      [
        ...(isEmpty ? [] : [save, ' ']),
        ...(rest === 0 ? [] : [approve, ' ']),
        button('Back', close),
      ],
      { class: 'acts' },
    );
    const body = [
      ...(isEmpty ? [make('p', 'Nothing is decided yet, so there is nothing to save.')] : []),
      counts(book),
      acts,
      ...this.#undecided(),
      ...this.#remarks(),
    ];
    open('What you decided', [make('div', body, { class: 'stack' })]);
  }

  #undecided(): readonly Node[] {
    const open = this.book.undecided();
    if (open.length === 0) return [];
    const rows = open.map((card) => make('li', [this.#wayTo(card)]));
    return [
      make('h3', `Not decided: ${count(open.length, 'text')}`),
      make('ul', rows, { class: 'ways' }),
      make('p', 'Silence approves nothing: these stay open.', { class: 'hint' }),
    ];
  }

  #wayTo(card: PageCard): HTMLElement {
    const parts = this.book.openParts(card);
    const some = parts.length < card.parts.length ? `: ${parts.map(sayPart).join(', ')}` : '';
    const go = button(`${card.heading}${some}`, () => {
      close();
      this.shelf.show(card);
    });
    go.className = 'plain';
    return go;
  }

  #remarks(): readonly Node[] {
    const { remarks } = this.book.draft;
    if (remarks.length === 0) return [];
    const rows = remarks.map((remark) =>
      make('li', `${this.remarks.sayAbout(remark)}: ${remark.text}`),
    );
    return [make('h3', 'Remarks'), make('ul', rows, { class: 'plainly' })];
  }

  async #save(): Promise<void> {
    const { packet, property, person, privateKey, expires } = this.book.data;
    if (Date.now() > expires) {
      say('This submission has expired: ask whoever sent it for a new one.');
      return;
    }
    const decisions = this.book.decisions();
    const remarks = [...this.book.draft.remarks];
    const unsigned = { format: 1 as const, property, packet, person, decisions, remarks };
    const text = await signedAnswer(unsigned, privateKey).catch(() => null);
    if (text === null) {
      say('This browser cannot sign the file. Your decisions are kept: use a newer browser.');
      return;
    }
    const name = `decisions-${packet}.json`;
    download(name, text);
    await this.store.forget();
    this.#saved(name, text);
  }

  #saved(name: string, text: string): void {
    const area = make('textarea', '', { readonly: '', 'aria-label': 'The decision file' });
    area.value = text;
    const copy = button('Copy its text', () => {
      area.select();
      navigator.clipboard.writeText(text).then(
        () => say('Copied.'),
        () => say('Copy the marked text with the keys of your device.'),
      );
    });
    const body = [
      make('p', `${name} is among your downloads. Send it to whoever sent you this submission.`),
      make('p', 'What was kept in this browser is gone.', { class: 'hint' }),
      area,
      make('p', [copy, ' ', button('Close', close, 'main')], { class: 'acts' }),
    ];
    open('The decision file is saved', [make('div', body, { class: 'stack' })]);
  }
}

/** How many parts have which verdict. */
function counts(book: Book): HTMLElement {
  const decisions = book.decisions();
  const rows = VERDICTS.flatMap(({ verdict }) => {
    const own = decisions.filter(({ decision }) => decision === verdict);
    const cards = new Set(own.map(({ card }) => card)).size;
    return own.length === 0 ? [] : [make('li', `${capital(verdict)}: ${count(cards, 'text')}`)];
  });
  return make('ul', rows, { class: 'plainly' });
}

function download(name: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = make('a', '', { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 60_000);
}
