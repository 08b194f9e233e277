import { isAsking, close, open } from './dialog.js';
import { button, byId, make } from './dom.js';

export interface Key {
  readonly keys: readonly string[];
  readonly does: string;
  readonly press: () => void;
}

/** Single keys, which can be switched off; with their list. */
export class Keys {
  #on = true;

  constructor(readonly keys: readonly Key[]) {
    document.addEventListener('keydown', (event) => this.#press(event));
    byId('help-open', HTMLElement).addEventListener('click', () => this.help());
  }

  #press(event: KeyboardEvent): void {
    const isWithOthers = event.ctrlKey || event.altKey || event.metaKey || event.isComposing;
    if (!this.#on || isWithOthers || isAsking() || isTyping(event.target)) return;
    const found = this.keys.find(({ keys }) => keys.includes(event.key));
    if (!found) return;
    event.preventDefault();
    found.press();
  }

  help(): void {
    const box = make('input', '', { type: 'checkbox', id: 'keys-on' });
    box.checked = this.#on;
    box.addEventListener('change', () => {
      this.#on = box.checked;
    });
    const rows = this.keys.map(({ keys, does }) => {
      const caps = keys.flatMap((key, at) => [
        ...(at === 0 ? [] : [' or ']),
        make('kbd', CAPS[key] ?? key),
      ]);
      return make('div', [make('dt', caps), make('dd', does)]);
    });
    const body = [
      make('p', [box, make('label', 'Single keys work', { for: 'keys-on', class: 'inline' })]),
      make('dl', rows),
      make('p', [button('Close', close, 'main')], { class: 'acts' }),
    ];
    open('Keys', [make('div', body, { class: 'stack' })]);
  }
}

const CAPS: Readonly<Record<string, string>> = { ArrowLeft: '←', ArrowRight: '→' };

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLTextAreaElement ||
    target instanceof HTMLSelectElement ||
    (target instanceof HTMLInputElement && target.type !== 'checkbox')
  );
}
