import { defaultKeymap, history, historyKeymap } from '@codemirror/commands';
import { lintKeymap, setDiagnostics, type Diagnostic } from '@codemirror/lint';
import { Annotation, EditorState, Transaction } from '@codemirror/state';
import { EditorView, keymap } from '@codemirror/view';
import { linkMarks } from './link-marks.js';
import { narrowest } from './narrowest.js';

/** A finding in the copy: offsets from its start, in UTF-16 units. */
export interface CopyMark {
  readonly from: number;
  readonly to: number;
  readonly severity: 'error' | 'warning';
  readonly message: string;
  /** What mends it, in words, and how; null where nothing does at once. */
  readonly mend: { readonly words: string; readonly act: () => void } | null;
}

export interface CopyOptions {
  readonly parent: HTMLElement;
  readonly text: string;
  readonly labelledBy: string;
  readonly describedBy: string;
  readonly labelOf: (id: string) => string;
  readonly changed: (text: string) => void;
}

/** The change did not come from the writer's hands. */
const fromDesk = Annotation.define<boolean>();

/** The editor of a card's copy: soft wrap, marks, no spelling check of the browser's own. */
export class CopyView {
  readonly #view: EditorView;

  constructor(options: CopyOptions) {
    this.#view = new EditorView({ parent: options.parent, state: stateOf(options) });
  }

  get text(): string {
    return this.#view.state.doc.toString();
  }

  /** Puts another text in place of this one, as one step that can be undone. */
  put(text: string): void {
    const change = narrowest(this.text, text);
    if (change === null) return;
    this.#view.dispatch({
      changes: change,
      annotations: [fromDesk.of(true), Transaction.addToHistory.of(true)],
    });
  }

  mark(marks: readonly CopyMark[]): void {
    const end = this.#view.state.doc.length;
    const diagnostics = marks.map(({ from, to, severity, message, mend }): Diagnostic => ({
      from: Math.min(from, end),
      to: Math.min(to, end),
      severity,
      message,
      actions: mend === null ? [] : [{ name: mend.words, apply: () => mend.act() }],
    }));
    this.#view.dispatch(setDiagnostics(this.#view.state, diagnostics));
  }

  /** Puts the cursor where something was found. */
  select(from: number, to: number): void {
    const end = this.#view.state.doc.length;
    this.#view.dispatch({
      selection: { anchor: Math.min(from, end), head: Math.min(to, end) },
      scrollIntoView: true,
    });
    this.#view.focus();
  }

  focus(): void {
    this.#view.focus();
  }

  destroy(): void {
    this.#view.destroy();
  }
}

function stateOf({ text, labelledBy, describedBy, labelOf, changed }: CopyOptions): EditorState {
  return EditorState.create({
    doc: text,
    extensions: [
      EditorView.cspNonce.of(nonce()),
      EditorView.lineWrapping,
      EditorView.contentAttributes.of({
        'aria-labelledby': labelledBy,
        'aria-describedby': describedBy,
        spellcheck: 'false',
        autocorrect: 'off',
      }),
      history(),
      typedOver,
      linkMarks(labelOf),
      keymap.of([...lintKeymap, ...historyKeymap, ...defaultKeymap]),
      theme,
      EditorView.updateListener.of(({ docChanged, state, transactions }) => {
        const isOurs = transactions.some((each) => each.annotation(fromDesk) === true);
        if (docChanged && !isOurs) changed(state.doc.toString());
      }),
    ],
  });
}

/**
 * Typing over a selection is done here: the browser would keep the looks of what was there in a style
 * attribute, which the policy of the page stops, and reports.
 */
const typedOver = EditorView.domEventHandlers({
  beforeinput(event, view) {
    const { inputType, data, isComposing } = event;
    const isOver = inputType === 'insertText' && !view.state.selection.main.empty;
    if (!isOver || data === null || isComposing) return false;
    view.dispatch(view.state.replaceSelection(data), { scrollIntoView: true, userEvent: 'input' });
    return true;
  },
});

/** What the page's own script was let in by lets in the styles that the editor makes. */
function nonce(): string {
  return document.querySelector('script')?.nonce ?? '';
}

const theme = EditorView.theme({
  '&': { backgroundColor: 'var(--sheet)', color: 'var(--ink)', fontSize: 'var(--size-copy)' },
  '&.cm-focused': { outline: '3px solid var(--accent)', outlineOffset: '2px' },
  '.cm-scroller': { fontFamily: 'var(--serif)', lineHeight: '1.6' },
  '.cm-content': { padding: '0.75rem 0', caretColor: 'var(--ink)', minHeight: '9rem' },
  '.cm-line': { padding: '0 0.75rem' },
  '.cm-lintRange': { backgroundImage: 'none', paddingBottom: '0' },
  '.cm-lintRange-error': { textDecoration: 'underline wavy 2px var(--bad)' },
  '.cm-lintRange-warning': { textDecoration: 'underline wavy 2px var(--warn)' },
  '.cm-tooltip': {
    backgroundColor: 'var(--sheet)',
    color: 'var(--ink)',
    border: '1px solid var(--rule-strong)',
    fontFamily: 'var(--sans)',
    fontSize: 'var(--size-small)',
    maxWidth: '28rem',
  },
});
