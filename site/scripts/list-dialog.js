import { changeWords } from './change-words.js';
import { made, one, onClick } from './elements.js';
import { readLists } from './read-list.js';

/** @typedef {import('./collection.js').Collection} Collection */
/** @typedef {import('./ticks.js').Change} Change */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/** So many faults are shown one by one. */
const MOST_SHOWN = 8;

/**
 * The slip on which a list is pasted: it is read, and nothing is changed until somebody agrees.
 *
 * @param {readonly Collection[]} collections
 * @param {() => Ticks} ticksNow
 * @param {(changes: readonly Change[]) => void} change
 * @returns {{ readonly open: (text: string) => void }}
 */
export function startListDialog(collections, ticksNow, change) {
  const dialog = one('#tools--list', HTMLDialogElement);
  const text = one('#tools--text', HTMLTextAreaElement);
  const agree = one('#tools--list .agree', HTMLButtonElement);
  const outcome = one('#tools--list .outcome', HTMLElement);
  if (!dialog || !text || !agree || !outcome) return { open: () => undefined };
  /** @type {readonly Change[]} */
  let changes = [];
  const clear = () => {
    changes = [];
    agree.hidden = true;
    outcome.replaceChildren();
  };
  text.addEventListener('input', clear);
  onClick(dialog, '.look', () => {
    clear();
    const reading = readLists(text.value, collections, ticksNow());
    outcome.append(...outcomeOf(reading));
    if ('changes' in reading) changes = reading.changes;
    agree.hidden = changes.length === 0;
  });
  agree.addEventListener('click', () => {
    dialog.close();
    change(changes);
  });
  onClick(dialog, '.leave', () => dialog.close());
  return {
    open: (written) => {
      text.value = written;
      clear();
      dialog.showModal();
      text.focus();
      text.select();
    },
  };
}

/**
 * @param {ReturnType<typeof readLists>} reading
 * @returns {readonly HTMLElement[]}
 */
function outcomeOf(reading) {
  if ('refused' in reading) return [made('p', reading.refused)];
  const { changes, problems } = reading;
  const faults = problems.slice(0, MOST_SHOWN).map(({ at, text, why }) => {
    return made('li', `“${text}”, at sign ${String(at)}: ${why}`);
  });
  const list = document.createElement('ul');
  list.append(...faults);
  const rest = problems.length - faults.length;
  if (rest > 0) list.append(made('li', `and ${String(rest)} more`));
  const parts = problems.length === 0 ? [] : [made('p', 'This cannot be read:'), list];
  return [...parts, made('p', changeWords(changes))];
}
