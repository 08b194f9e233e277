import type { AnswerFile, Decision } from '../../../../schema/index.js';
import type { PageCard, PageData, Part, Verdict } from '../page-data.js';

export interface Choice {
  readonly verdict: Verdict;
  readonly remark?: string;
  readonly with?: string;
  readonly changes?: NonNullable<Decision['changes']>;
}

export type Remark = AnswerFile['remarks'][number];

/** What was decided so far. */
export interface Draft {
  readonly choices: Readonly<Record<string, Readonly<Partial<Record<Part, Choice>>>>>;
  readonly remarks: readonly Remark[];
  readonly opened: readonly string[];
}

const EMPTY: Draft = { choices: {}, remarks: [], opened: [] };

/** What was decided, with the way back, and whoever wants to know of a change. */
export class Book {
  #draft: Draft = EMPTY;
  readonly #past: Draft[] = [];
  readonly #told: ((draft: Draft) => void)[] = [];

  constructor(readonly data: PageData) {}

  get draft(): Draft {
    return this.#draft;
  }

  onChange(tell: (draft: Draft) => void): void {
    this.#told.push(tell);
  }

  /** Takes up a draft that was kept. */
  restore(draft: Draft): void {
    this.#draft = draft;
  }

  change(edit: (draft: Draft) => Draft): void {
    this.#past.push(this.#draft);
    this.#set(edit(this.#draft));
  }

  /** Takes the last change back, but for which cards were opened. False if there is none. */
  undo(): boolean {
    const before = this.#past.pop();
    if (!before) return false;
    this.#set({ ...before, opened: this.#draft.opened });
    return true;
  }

  opened(key: string): void {
    if (this.#draft.opened.includes(key)) return;
    this.#set({ ...this.#draft, opened: [...this.#draft.opened, key] });
  }

  #set(draft: Draft): void {
    this.#draft = draft;
    for (const tell of this.#told) tell(draft);
  }

  choiceOf(card: PageCard, part: Part): Choice | undefined {
    return this.#draft.choices[card.key]?.[part];
  }

  /** Parts of the card that nothing was decided on. */
  openParts(card: PageCard): readonly Part[] {
    return card.parts.map(({ part }) => part).filter((part) => !this.choiceOf(card, part));
  }

  choose(card: PageCard, choices: Readonly<Partial<Record<Part, Choice>>>): void {
    this.change((draft) => ({
      ...draft,
      choices: { ...draft.choices, [card.key]: { ...draft.choices[card.key], ...choices } },
    }));
  }

  /** Approves what is undecided of every card that was opened. */
  approveOpened(): void {
    const choices = { ...this.#draft.choices };
    for (const card of this.undecidedOpened()) {
      const open = this.openParts(card).map((part) => [part, { verdict: 'approved' }] as const);
      choices[card.key] = { ...choices[card.key], ...Object.fromEntries(open) };
    }
    this.change((draft) => ({ ...draft, choices }));
  }

  undecided(): readonly PageCard[] {
    return this.data.cards.filter((card) => this.openParts(card).length > 0);
  }

  undecidedOpened(): readonly PageCard[] {
    return this.undecided().filter(({ key }) => this.#draft.opened.includes(key));
  }

  /** The decisions in the order of the cards. */
  decisions(): Decision[] {
    return this.data.cards.flatMap((card) =>
      card.parts.flatMap(({ part, digest }) => {
        const choice = this.choiceOf(card, part);
        if (!choice) return [];
        const { verdict, remark, with: holder, changes } = choice;
        return [
          {
            card: card.key,
            part,
            digest,
            decision: verdict,
            ...(remark === undefined ? {} : { remark }),
            ...(holder === undefined ? {} : { with: holder }),
            ...(changes === undefined ? {} : { changes: [...changes] }),
          },
        ];
      }),
    );
  }
}

/** Whether a value is a draft: it was sealed here, so that its outline is enough. */
export function isDraft(value: unknown): value is Draft {
  return (
    typeof value === 'object' &&
    value !== null &&
    'choices' in value &&
    'remarks' in value &&
    'opened' in value
  );
}
