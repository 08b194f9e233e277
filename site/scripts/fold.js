/**
 * How much of the story the reader wants to be told: whatever tells more stays folded. The choice
 * is kept on this device, for this site.
 */

/** @param {string} site the address of the top of the site */
export function startFolding(site) {
  const key = `${site} told`;
  const choice = document.querySelector('.telling');
  const kept = readKept(key);
  if (kept !== null) apply(kept);
  for (const told of document.querySelectorAll('article details.told')) {
    told.addEventListener('toggle', () => openTogether(told));
  }
  if (choice === null) return;
  if (kept !== null) check(options(choice), kept);
  choice.addEventListener('change', () => {
    const chosen = options(choice).find(({ checked }) => checked);
    if (chosen === undefined) return;
    const most = Number(chosen.value);
    keep(key, most);
    apply(most);
  });
}

/**
 * @param {Element} choice
 * @returns {HTMLInputElement[]}
 */
function options(choice) {
  const all = [...choice.querySelectorAll('input')];
  return all.filter((element) => element instanceof HTMLInputElement);
}

/**
 * Of one card, opens and closes all that tells as much.
 *
 * @param {Element} told
 */
function openTogether(told) {
  if (!(told instanceof HTMLDetailsElement)) return;
  for (const other of told.closest('article')?.querySelectorAll('details.told') ?? []) {
    if (!(other instanceof HTMLDetailsElement)) continue;
    const alike = other.dataset['level'] === told.dataset['level'];
    if (alike && other.open !== told.open) other.open = told.open;
  }
}

/**
 * Checks the option of a level; the last of them where fewer levels have lifted.
 *
 * @param {readonly HTMLInputElement[]} all
 * @param {number} most
 */
function check(all, most) {
  const at = Math.min(most, all.length - 1);
  for (const [index, option] of all.entries()) option.checked = index === at;
}

/**
 * Opens what tells no more than a level, and closes the rest.
 *
 * @param {number} most
 */
function apply(most) {
  for (const told of document.querySelectorAll('details.told')) {
    if (!(told instanceof HTMLDetailsElement)) continue;
    const open = Number(told.dataset['level']) <= most;
    if (told.open !== open) told.open = open;
  }
  document.dispatchEvent(new CustomEvent('folded'));
}

/**
 * @param {string} key
 * @returns {number | null}
 */
function readKept(key) {
  try {
    const kept = localStorage.getItem(key);
    return kept === null || !/^\d+$/.test(kept) ? null : Number(kept);
  } catch {
    return null;
  }
}

/**
 * @param {string} key
 * @param {number} most
 */
function keep(key, most) {
  try {
    localStorage.setItem(key, String(most));
  } catch {
    // The choice holds until the page is left.
  }
}
