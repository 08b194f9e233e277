import { one, isWriting } from './elements.js';

/**
 * Keys of a single sign, which can be turned off (WCAG 2.2, 2.1.4). The choice is kept on this
 * device, for the whole site.
 *
 * @param {string} site the address of the top of the site
 * @param {Readonly<Record<string, () => void>>} acts what each key does
 */
export function startKeys(site, acts) {
  const place = `${site} keys`;
  let isOn = readKept(place) !== 'off';
  const choice = one('#tools--keys', HTMLInputElement);
  if (choice) choice.checked = isOn;
  choice?.addEventListener('change', () => {
    isOn = choice.checked;
    keep(place, isOn ? 'on' : 'off');
  });
  document.addEventListener('keydown', (event) => {
    const { key, target } = event;
    const act = acts[key];
    if (!isOn || act === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
    if (isWriting(target) || (target instanceof Element && target.closest('dialog'))) return;
    event.preventDefault();
    act();
  });
}

/** @param {string} place */
function readKept(place) {
  try {
    return localStorage.getItem(place);
  } catch {
    return null;
  }
}

/**
 * @param {string} place
 * @param {string} choice
 */
function keep(place, choice) {
  try {
    localStorage.setItem(place, choice);
  } catch {
    // The choice holds until the page is left.
  }
}
