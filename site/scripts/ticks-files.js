import { changeWords } from './change-words.js';
import { one, onClick, say } from './elements.js';
import { readTicksFile, writeTicksFile } from './ticks-file.js';
import { changesBetween } from './ticks.js';

/** @typedef {import('./ticks.js').Change} Change */
/** @typedef {import('./ticks.js').Ticks} Ticks */
/** @typedef {import('./ticks-file.js').About} About */

/**
 * @param {About} about
 * @param {Ticks} ticks
 */
function save(about, ticks) {
  const file = new Blob([writeTicksFile(about, ticks)], { type: 'application/json' });
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = `${about.set}-ticks.json`;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  say('.said', `Saved as ${link.download}.`);
}

/**
 * Saves ticks to a file, and loads them from one once somebody has agreed.
 *
 * @param {About} about
 * @param {() => Ticks} ticksNow
 * @param {(changes: readonly Change[]) => void} change
 */
export function startFiles(about, ticksNow, change) {
  onClick(document, '.save-ticks', () => save(about, ticksNow()));
  const chooser = one('#tools--file', HTMLInputElement);
  const dialog = one('#tools--sure', HTMLDialogElement);
  const agree = one('#tools--sure .agree', HTMLButtonElement);
  if (!chooser || !dialog || !agree) return;
  /** @type {readonly Change[]} */
  let changes = [];
  chooser.addEventListener('change', () => {
    const [file] = chooser.files ?? [];
    if (!file) return;
    void file.text().then((text) => {
      chooser.value = '';
      const read = readTicksFile(text, about);
      changes = 'refused' in read ? [] : changesBetween(ticksNow(), read.ticks);
      const words = 'refused' in read ? read.refused : changeWords(changes);
      say('#tools--sure .outcome', words);
      agree.hidden = changes.length === 0;
      dialog.showModal();
    });
  });
  agree.addEventListener('click', () => {
    dialog.close();
    change(changes);
  });
  onClick(dialog, '.leave', () => dialog.close());
}
