import { markup } from './markup.js';
import { folds } from './told.js';

/** @typedef {import('./types.js').PublicData} PublicData */

/**
 * How much of the story the reader wants to be told. It needs the script of the page; without one
 * whatever is folded is opened one by one.
 *
 * @param {PublicData} data
 */
export function telling(data) {
  if (!folds(data)) return null;
  const { levels } = data.property;
  return markup`<div class="telling"><fieldset>
<legend>Tell me of</legend>
${levels.map((label, level) => option(label, level, level === levels.length - 2))}</fieldset>
<p>What tells more stays folded, on this device. That spares you a surprise on these pages; it hides
nothing from whoever looks at the data behind them.</p></div>
`;
}

/**
 * @param {string} label
 * @param {number} level
 * @param {boolean} checked
 */
function option(label, level, checked) {
  const words = level === 0 ? label : markup`<span class="unseen">everything up to </span>${label}`;
  return markup`<label><input type="radio" name="telling" value="${level}"${checked && markup` checked`}> ${words}</label>\n`;
}
