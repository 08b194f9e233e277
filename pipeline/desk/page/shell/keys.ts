import { useLayoutEffect } from 'preact/hooks';

/** A shortcut. `chord` is as in `mod+s`, `alt+ArrowDown` or `?`; `mod` is Ctrl, or Command. */
export interface Key {
  readonly chord: string;
  readonly does: string;
  readonly press: () => void;
  /** What is on the screen takes the key itself: it is only listed here. */
  readonly isElsewhere?: boolean;
}

const SWITCHED_OFF = 'desk-single-keys-off';

/** Single keys can be switched off, for who speaks to their computer (WCAG 2.2, 2.1.4). */
export function singleKeysWork(): boolean {
  return sessionStorage.getItem(SWITCHED_OFF) === null;
}

export function switchSingleKeys(work: boolean): void {
  if (work) sessionStorage.removeItem(SWITCHED_OFF);
  else sessionStorage.setItem(SWITCHED_OFF, 'yes');
}

const groups = new Set<{ readonly title: string; keys: readonly Key[] }>();

/** The shortcuts of what is on the screen, group by group. */
export function keysNow(): readonly { readonly title: string; readonly keys: readonly Key[] }[] {
  return [...groups];
}

/**
 * Makes shortcuts work for as long as the component is on the screen. They change with it and not a
 * frame later: a key does what can be read at that moment.
 */
export function useKeys(title: string, keys: readonly Key[]): void {
  useLayoutEffect(() => {
    const group = { title, keys };
    groups.add(group);
    return () => {
      groups.delete(group);
    };
  });
}

export function listenForKeys(): void {
  document.addEventListener(
    'keydown',
    (event) => {
      const found = event.isComposing ? undefined : keyOf(event);
      if (!found) return;
      event.preventDefault();
      event.stopPropagation();
      found.press();
    },
    { capture: true },
  );
}

function keyOf(event: KeyboardEvent): Key | undefined {
  const chord = chordOf(event);
  const isSingle = !/^(?:mod|alt)\+|^F\d/.test(chord);
  if (document.querySelector('dialog[open]')) return undefined;
  if (isSingle && (!singleKeysWork() || isTyping(event.target))) return undefined;
  return [...groups]
    .flatMap(({ keys }) => keys)
    .find((key) => key.chord === chord && key.isElsewhere !== true);
}

function chordOf({ key, code, ctrlKey, metaKey, altKey, shiftKey }: KeyboardEvent): string {
  const mod = ctrlKey || metaKey ? 'mod+' : '';
  const shift = shiftKey && (mod !== '' || altKey || key.length > 1) ? 'shift+' : '';
  // With Alt some keyboards type another letter: then the key itself counts.
  const letter = altKey ? /^Key([A-Z])$/.exec(code)?.[1] : undefined;
  const name = letter ?? key;
  return `${mod}${altKey ? 'alt+' : ''}${shift}${name.length === 1 ? name.toLowerCase() : name}`;
}

function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    (target.isContentEditable ||
      target instanceof HTMLTextAreaElement ||
      target instanceof HTMLSelectElement ||
      (target instanceof HTMLInputElement && !/^(?:checkbox|radio)$/.test(target.type)))
  );
}

const CAPS: Readonly<Record<string, string>> = {
  ArrowDown: '↓',
  ArrowUp: '↑',
  PageDown: 'Page Down',
  PageUp: 'Page Up',
};

/** A chord as it is read: Ctrl S. */
export function capsOf(chord: string): readonly string[] {
  const mod = /mac|iphone|ipad/i.test(navigator.userAgent) ? '⌘' : 'Ctrl';
  const caps: Readonly<Record<string, string>> = { ...CAPS, mod, alt: 'Alt', shift: 'Shift' };
  return chord.split('+').map((part) => caps[part] ?? part.toUpperCase());
}
