import { goToFirst, startBoxes } from './boxes.js';
import { copyList } from './copy-list.js';
import { isWriting, one, onClick, say } from './elements.js';
import { startFinding } from './find.js';
import { startKeys } from './keys.js';
import { startListDialog } from './list-dialog.js';
import { ListPage } from './list-page.js';
import { printWant } from './print-sheet.js';
import { leftOut } from './progress.js';
import { startProgress } from './progress-line.js';
import { startSorting } from './sort.js';
import { startFiles } from './ticks-files.js';
import { PLAIN } from './ticks.js';
import { writeDoubles, writeWant } from './write-list.js';

const tools = one('.tools', HTMLElement);
if (tools) start(tools.dataset);

/** @param {DOMStringMap} about */
function start({ set = '', head = '', way = './', site = '', asOf = '' }) {
  const page = new ListPage(head, `holdback:${new URL(way, location.href).pathname}`);
  const print = () => printWant(page.collection, page.tables, page.ticks);
  startBoxes(page.cells, (cell, by) => page.tick(cell, by));
  startSorting(page.tables, (order) => say('#tools--heard', `Sorted by ${order}.`));
  startFinding(page.filter, goToFirst);
  startProgress();
  startFiles(
    { site, set, asOf },
    () => page.ticks,
    (changes) => page.change(changes),
  );
  startLists(page);
  startUndo(page);
  startListening(page);
  onClick(document, '.print-want', print);
  startKeys(new URL(document.body.dataset['root'] ?? './', location.href).pathname, {
    '/': () => one('#find--box', HTMLInputElement)?.focus(),
    p: print,
  });
}

/** @param {ListPage} page */
function startLists(page) {
  const slip = startListDialog(
    [page.collection, ...page.parts],
    () => page.ticks,
    (changes) => page.change(changes),
  );
  onClick(document, '.read-list', () => slip.open(''));
  onClick(document, '.copy-want', () => {
    const left = leftOut(page.collection, page.ticks, PLAIN);
    void copyList(writeWant(page.collection, page.ticks), left, slip.open);
  });
  onClick(document, '.copy-doubles', () => {
    void copyList(writeDoubles(page.collection, page.ticks), 0, slip.open);
  });
}

/** @param {ListPage} page */
function startUndo(page) {
  onClick(document, '.undo', () => page.undo());
  document.addEventListener('keydown', (event) => {
    const isUndo = event.key.toLowerCase() === 'z' && (event.ctrlKey || event.metaKey);
    if (!isUndo || event.shiftKey || isWriting(event.target)) return;
    event.preventDefault();
    page.undo();
  });
}

/**
 * What happens elsewhere: in another page of the site, or to what is told, where many folds may
 * open at once.
 *
 * @param {ListPage} page
 */
function startListening(page) {
  let isWaiting = false;
  const told = () => {
    page.filter.forget();
    if (isWaiting) return;
    isWaiting = true;
    requestAnimationFrame(() => {
      isWaiting = false;
      page.nameAnew();
    });
  };
  const toggled = (/** @type {Event} */ { target }) => {
    if (target instanceof Element && target.matches('.cards .told')) told();
  };
  document.addEventListener('folded', told);
  document.addEventListener('toggle', toggled, { capture: true });
  addEventListener('storage', ({ key }) => {
    if (key === null || key === page.store.key) page.refresh();
  });
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) page.refresh();
  });
}
