import { plainBio } from '../bio-words.js';
import type { PageCard } from '../page-data.js';
import type { Book, Remark } from './book.js';
import { ask, close } from './dialog.js';
import { button, byId, labelled, make, say } from './dom.js';
import { REASONS, capital } from './words.js';

type About = 'card' | 'words' | 'name' | 'subset' | 'all';

/** Asks for a remark, and lists those that touch the card shown. */
export class Remarks {
  constructor(readonly book: Book) {}

  ask(card: PageCard): void {
    const bio = card.words ? plainBio(card.words.bio) : '';
    const about = select([
      ['card', `This text: ${card.heading}`],
      ...(bio === '' ? [] : [['words', 'Marked words of the bio'] as const]),
      ['name', 'A name, wherever it stands'],
      ['subset', `The subset: ${card.subsetTitle}`],
      ['all', 'The whole submission'],
    ]);
    const reason = select([
      ['', 'No reason'],
      ...REASONS.map((each) => [each, capital(each)] as const),
    ]);
    const text = make('textarea');
    const name = make('input', '', { list: 'names' });
    const names = make(
      'datalist',
      this.book.data.names.map((each) => make('option', '', { value: each })),
      { id: 'names' },
    );
    const words = wordsToMark(bio);
    const nameRow = labelled('Name', name, 'name');
    const wordsRow = labelled('Mark the words here', words, 'words');
    const fit = (): void => {
      nameRow.hidden = about.value !== 'name';
      wordsRow.hidden = about.value !== 'words';
    };
    about.addEventListener('change', fit);
    markFrom(bio, about, words);
    fit();
    const act = (): string | null => {
      const said = text.value.trim();
      if (said === '') return 'Write the remark.';
      const range = { from: words.selectionStart, to: words.selectionEnd };
      const kind = kindOf(about.value);
      if (kind === 'words' && range.to <= range.from) return 'Mark the words that it is about.';
      if (kind === 'name' && name.value.trim() === '') return 'Say which name it is about.';
      close();
      this.#add({
        about: aboutOf(kind, card, name.value.trim()),
        text: said,
        ...(reason.value === '' ? {} : { reason: reason.value }),
        ...(kind === 'words' ? { range } : {}),
      });
      return null;
    };
    const body = [
      labelled('About', about, 'about'),
      nameRow,
      names,
      wordsRow,
      labelled('Remark', text, 'remark'),
      labelled('Reason', reason, 'reason'),
    ];
    ask({ title: 'A remark', body, accept: ['Add the remark', act] });
    if (about.value === 'words') words.focus();
  }

  #add(remark: Remark): void {
    this.book.change((draft) => ({ ...draft, remarks: [...draft.remarks, remark] }));
    say('The remark is added.');
  }

  /** Lists the remarks on the card, on its subset, on names and on all. */
  list(card: PageCard): void {
    const rows = this.book.draft.remarks
      .filter(({ about }) => [card.key, card.subset, 'all'].includes(about) || isOfName(about))
      .map((remark) => {
        const take = button('Take out', () => {
          this.book.change((draft) => ({
            ...draft,
            remarks: draft.remarks.filter((each) => each !== remark),
          }));
        });
        take.className = 'plain';
        take.setAttribute('aria-label', `Take out the remark: ${remark.text}`);
        return make('li', [`${this.sayAbout(remark, card)}: ${remark.text} `, take]);
      });
    byId('remarks', HTMLElement).replaceChildren(...rows);
  }

  sayAbout({ about, range, reason }: Remark, card?: PageCard): string {
    const why = reason === undefined ? '' : ` (${reason})`;
    const whole = about === 'all' ? 'The whole submission' : about.replace(/^name:/, '');
    const found = this.book.data.cards.find(({ key }) => key === about) ?? card;
    if (found?.key !== about) {
      const subset = this.book.data.cards.find((each) => each.subset === about)?.subsetTitle;
      return `${subset ?? whole}${why}`;
    }
    const bio = found.words ? plainBio(found.words.bio) : '';
    const marked = range ? ` “${bio.slice(range.from, range.to)}”` : '';
    return `${found.heading}${marked}${why}`;
  }
}

/** A text in which words can be marked by keys too, and nothing be typed. */
function wordsToMark(bio: string): HTMLTextAreaElement {
  const words = make('textarea');
  words.value = bio;
  words.setSelectionRange(0, 0);
  words.addEventListener('beforeinput', (event) => event.preventDefault());
  return words;
}

function isOfName(about: string): boolean {
  return about.startsWith('name:');
}

function kindOf(value: string): About {
  return value === 'words' || value === 'name' || value === 'subset' || value === 'all'
    ? value
    : 'card';
}

function aboutOf(kind: About, card: PageCard, name: string): string {
  if (kind === 'name') return `name:${name}`;
  if (kind === 'subset') return card.subset;
  return kind === 'all' ? 'all' : card.key;
}

function select(options: readonly (readonly [value: string, words: string])[]): HTMLSelectElement {
  return make(
    'select',
    options.map(([value, words]) => make('option', words, { value })),
  );
}

/** Takes over what is marked on the page: the same words may stand in the bio more than once. */
function markFrom(bio: string, about: HTMLSelectElement, words: HTMLTextAreaElement): void {
  const marked = getSelection();
  const place = byId('card', HTMLElement).querySelector('[data-bio]');
  if (!marked || marked.isCollapsed || !place?.contains(marked.anchorNode)) return;
  const said = marked.toString();
  const { startContainer, startOffset } = marked.getRangeAt(0);
  const before = document.createRange();
  before.selectNodeContents(place);
  before.setEnd(startContainer, startOffset);
  const from = placeAfter(bio, said, before.toString().split(said).length - 1);
  if (from < 0) return;
  about.value = 'words';
  words.setSelectionRange(from, from + said.length);
}

/** Where words stand in a text, after they stood there so many times; -1 where they do not. */
function placeAfter(text: string, words: string, times: number): number {
  let from = text.indexOf(words);
  for (let time = 0; time < times && from >= 0; time += 1) {
    from = text.indexOf(words, from + words.length);
  }
  return from;
}
