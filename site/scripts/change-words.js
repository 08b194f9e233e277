/** @typedef {import('./ticks.js').Change} Change */

/**
 * What a change comes to, in words.
 *
 * @param {readonly Change[]} changes
 */
export function changeWords(changes) {
  if (changes.length === 0) return 'This would change nothing.';
  const ticked = changes.filter(({ from }) => from === 0).length;
  const unticked = changes.filter(({ to }) => to === 0).length;
  const counted = changes.length - ticked - unticked;
  const parts = [
    ticked > 0 && `tick ${cards(ticked)}`,
    unticked > 0 && `take the tick off ${cards(unticked)}`,
    counted > 0 && `change the number of ${cards(counted)}`,
  ];
  return `This would ${parts.filter((part) => part !== false).join(', ')}.`;
}

/** @param {number} count */
function cards(count) {
  return count === 1 ? '1 card' : `${String(count)} cards`;
}
