/** The element of the page that is called so. */
export function byId<T extends HTMLElement>(id: string, kind: new () => T): T {
  const found = document.getElementById(id);
  if (found instanceof kind) return found;
  throw new Error(`the page has no ${id}`);
}

/** A new element with its text, or its children. */
export function make<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  content: string | readonly (Node | string)[] = '',
  attributes: Readonly<Record<string, string>> = {},
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...(typeof content === 'string' ? [content] : content));
  return element;
}

export function button(words: string, press: () => void, kind = ''): HTMLButtonElement {
  const element = make('button', words, kind === '' ? {} : { class: kind });
  element.type = 'button';
  element.addEventListener('click', press);
  return element;
}

/** A field with its name above it. */
export function labelled(words: string, field: HTMLElement, id: string): HTMLElement {
  field.id = id;
  return make('p', [make('label', words, { for: id }), field]);
}

/** Says something to who looks and to who listens: over the page where a dialog lies over it. */
export function say(words: string): void {
  const isOver = byId('dialog', HTMLDialogElement).open;
  byId(isOver ? 'dialog-said' : 'said', HTMLElement).textContent = words;
}
