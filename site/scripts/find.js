import { one, say } from './elements.js';

/** @typedef {import('./filter.js').Filter} Filter */

/** The address is written once somebody has stopped typing for so long. In milliseconds. */
const PAUSE = 300;

/**
 * The box in which a card is looked for, and the choice of what is shown. What is looked for
 * stands in the address, so that it can be passed on.
 *
 * @param {Filter} filter
 * @param {() => void} goOn what Enter does
 */
export function startFinding(filter, goOn) {
  const box = one('#find--box', HTMLInputElement);
  if (!box) return;
  const look = () => {
    filter.typed = box.value;
    say('.found', filter.apply());
  };
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let pause;
  box.addEventListener('input', () => {
    look();
    clearTimeout(pause);
    pause = setTimeout(() => writeAddress(box.value), PAUSE);
  });
  box.addEventListener('focus', () => {
    box.select();
    filter.prepare();
  });
  box.addEventListener('keydown', (event) => {
    const empties = event.key === 'Escape' && box.value !== '';
    if (event.key !== 'Enter' && !empties) return;
    event.preventDefault();
    if (!empties) return goOn();
    box.value = '';
    look();
    writeAddress('');
  });
  startShowing(filter, look);
  const asked = new URL(location.href).searchParams.get('find');
  if (asked !== null) box.value = asked;
  if (box.value !== '' || filter.show !== 'all') look();
  if (asked !== null && asked !== '') goOn();
}

/**
 * @param {Filter} filter
 * @param {() => void} look
 */
function startShowing(filter, look) {
  for (const option of document.querySelectorAll('input[name="show"]')) {
    if (!(option instanceof HTMLInputElement)) continue;
    const { value } = option;
    if (value !== 'all' && value !== 'missing' && value !== 'doubles') continue;
    if (option.checked) filter.show = value;
    option.addEventListener('change', () => {
      filter.show = value;
      look();
    });
  }
}

/** @param {string} typed */
function writeAddress(typed) {
  const address = new URL(location.href);
  if (typed === '') address.searchParams.delete('find');
  else address.searchParams.set('find', typed);
  try {
    history.replaceState(history.state, '', address);
  } catch {
    // A browser may refuse when it is asked too often; the next pause writes it.
  }
}
