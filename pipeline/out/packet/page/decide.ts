import type { PageCard, Part, Verdict } from '../page-data.js';
import type { Book, Choice } from './book.js';
import { ask, close } from './dialog.js';
import { button, byId, labelled, make, say } from './dom.js';
import type { Rewriting } from './rewrite.js';
import type { Shelf } from './show.js';
import { VERDICTS, capital, count, sayPart } from './words.js';

/** Takes decisions on the card that is shown. */
export class Deciding {
  /** Leaves the likeliest verdict alone in sight where there is little room. */
  readonly foldUp: () => void;

  constructor(
    readonly book: Book,
    readonly shelf: Shelf,
    readonly rewriting: Rewriting,
  ) {
    const buttons = VERDICTS.map(({ verdict }) =>
      button(capital(verdict), () => this.decide(verdict), verdict === 'approved' ? 'main' : ''),
    );
    const [approved, ...others] = buttons;
    const fold = button('Other …', () => {
      const isOpen = byId('verdicts', HTMLElement).classList.toggle('all');
      fold.setAttribute('aria-expanded', String(isOpen));
    });
    fold.className = 'fold';
    this.foldUp = () => {
      byId('verdicts', HTMLElement).classList.remove('all');
      fold.setAttribute('aria-expanded', 'false');
    };
    this.foldUp();
    byId('verdicts', HTMLElement).replaceChildren(...(approved ? [approved] : []), fold, ...others);
  }

  /** Shows what was decided on a card. */
  stand(card: PageCard): void {
    const canDecide = card.parts.length > 0;
    for (const each of byId('verdicts', HTMLElement).querySelectorAll('button')) {
      each.hidden = !canDecide;
      if (each.textContent === capital('approved with changes')) each.hidden = card.words === null;
    }
    byId('parts-box', HTMLElement).hidden = card.parts.length < 2;
    byId('standing', HTMLElement).textContent = this.#sayStanding(card);
  }

  /** The boxes by which parts are decided on one by one; all are ticked when a card comes. */
  offerParts(card: PageCard): void {
    const boxes = card.parts.map(({ part }) => {
      const box = make('input', '', { type: 'checkbox', name: part });
      box.checked = true;
      return make('label', [box, capital(sayPart(part))]);
    });
    const legend = make('legend', 'The decision is for');
    byId('parts', HTMLElement).replaceChildren(legend, ...boxes);
    byId('parts-box', HTMLDetailsElement).open = false;
    this.foldUp();
  }

  #sayStanding(card: PageCard): string {
    const said = card.parts.flatMap(({ part }) => {
      const verdict = this.book.choiceOf(card, part)?.verdict;
      return verdict ? [{ part, verdict }] : [];
    });
    const [first] = said;
    if (!first) return card.parts.length === 0 ? 'To read alone.' : 'Nothing decided yet.';
    const isOne = said.every(({ verdict }) => verdict === first.verdict);
    if (isOne && said.length === card.parts.length) return `You decided: ${first.verdict}.`;
    const open = this.book.openParts(card).map((part) => `${sayPart(part)}: open`);
    return [...said.map(({ part, verdict }) => `${sayPart(part)}: ${verdict}`), ...open].join(
      ' · ',
    );
  }

  #ticked(card: PageCard): readonly Part[] {
    const boxes = [...byId('parts', HTMLElement).querySelectorAll('input')];
    const names = new Set(boxes.filter(({ checked }) => checked).map(({ name }) => name));
    return card.parts.map(({ part }) => part).filter((part) => names.has(part));
  }

  decide(verdict: Verdict): void {
    const { card } = this.shelf;
    if (!card || card.parts.length === 0) return;
    const parts = this.#ticked(card);
    if (parts.length === 0) {
      say('Tick at least one part that the decision is for.');
      return;
    }
    if (verdict === 'approved') this.#take(card, parts, { verdict });
    else if (verdict === 'approved with changes') this.#rewrite(card, parts);
    else this.#ask(card, parts, verdict);
  }

  #rewrite(card: PageCard, parts: readonly Part[]): void {
    if (!card.words || !parts.includes('copy')) {
      say('Only the words can be approved with changes: tick them.');
      return;
    }
    const before = this.book.choiceOf(card, 'copy')?.changes ?? [];
    this.rewriting.ask(card, card.words, before, (changes) => {
      const rest = parts.map((part): [Part, Choice] => [
        part,
        part === 'copy' ? { verdict: 'approved with changes', changes } : { verdict: 'approved' },
      ]);
      this.#choose(card, Object.fromEntries(rest), 'approved with changes');
    });
  }

  /** Asks for what belongs to a decision: a remark, and with whom it lies. */
  #ask(card: PageCard, parts: readonly Part[], verdict: Verdict): void {
    const [part] = parts;
    const before = part && this.book.choiceOf(card, part);
    const remark = make('textarea');
    const holder = make('input');
    if (before?.verdict === verdict) {
      remark.value = before.remark ?? '';
      holder.value = before.with ?? '';
    }
    const isHold = verdict === 'on hold';
    const isBack = verdict === 'revise and resubmit';
    const body = [
      ...(isHold ? [labelled('With whom it lies', holder, 'holder')] : []),
      labelled(isBack ? 'What is to be revised' : 'Remark, if any', remark, 'remark'),
    ];
    const act = (): string | null => {
      const said = remark.value.trim();
      const whom = holder.value.trim();
      if (isBack && said === '') return 'Say what is to be revised: the writers see nothing else.';
      if (isHold && whom === '') return 'Say with whom it lies, so that they can be asked.';
      close();
      this.#take(card, parts, {
        verdict,
        ...(said === '' ? {} : { remark: said }),
        ...(isHold ? { with: whom } : {}),
      });
      return null;
    };
    ask({ title: `${capital(verdict)}: ${card.heading}`, body, accept: ['Accept', act] });
  }

  #take(card: PageCard, parts: readonly Part[], choice: Choice): void {
    this.#choose(card, Object.fromEntries(parts.map((part) => [part, choice])), choice.verdict);
  }

  /** Writes it down, and goes on to the next text if all of this one is decided. */
  #choose(
    card: PageCard,
    choices: Readonly<Partial<Record<Part, Choice>>>,
    verdict: Verdict,
  ): void {
    this.book.choose(card, choices);
    const left = this.book.undecided().length;
    const rest = left === 0 ? 'All is decided.' : `${count(left, 'text')} left.`;
    say(`${card.heading}: ${verdict}. ${rest}`);
    if (this.book.openParts(card).length === 0) this.shelf.turn(1);
    if (left === 0) scrollTo(0, 0);
  }
}
