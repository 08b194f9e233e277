import { button, byId, make } from './dom.js';

/** A question that is put over the page. */
export interface Question {
  readonly title: string;
  readonly body: readonly Node[];
  /** What accepts it, and what it does: it returns what is wrong, or null. */
  readonly accept: readonly [words: string, act: () => string | null];
  /** Said beside what accepts it, where it stays in sight. */
  readonly status?: HTMLElement;
  readonly wide?: boolean;
}

const dialog = (): HTMLDialogElement => byId('dialog', HTMLDialogElement);

export function isAsking(): boolean {
  return dialog().open;
}

/** Puts a form over the page. Escape and Cancel leave everything as it was. */
export function ask({ title, body, accept, status, wide = false }: Question): void {
  const [words, act] = accept;
  const fault = make('p', '', { class: 'fault', role: 'alert' });
  const submit = make('button', words, { class: 'main' });
  const acts = make('p', [submit, ' ', button('Cancel', close)], { class: 'acts' });
  const foot = make('div', [...(status ? [status] : []), fault, acts], { class: 'foot' });
  const form = make('form', [...body, foot]);
  form.noValidate = true;
  form.addEventListener('submit', (event) => {
    event.preventDefault();
    const wrong = act();
    fault.textContent = wrong ?? '';
  });
  open(title, [form], wide);
}

/** Puts something over the page. */
export function open(title: string, body: readonly Node[], wide = false): void {
  const box = dialog();
  box.classList.toggle('wide', wide);
  const said = make('p', '', { id: 'dialog-said', role: 'status' });
  box.replaceChildren(make('h2', title, { id: 'dialog-title' }), ...body, said);
  if (!box.open) box.showModal();
}

export function close(): void {
  dialog().close();
}
