/**
 * What somebody has: by printing (a parallel, or PLAIN for the cards themselves) and by card, how
 * many. What is not there is not had.
 *
 * @typedef {ReadonlyMap<string, ReadonlyMap<string, number>>} Ticks
 */

/** How many of a card somebody has, before and after. */
/** @typedef {{ readonly printing: string, readonly key: string, readonly from: number, readonly to: number }} Change */

/** The cards themselves, no parallel of them. No id is empty. */
export const PLAIN = '';

/** More of one card than this nobody counts with a pencil. */
export const MOST = 999;

/** @type {Ticks} */
export const NO_TICKS = new Map();

/**
 * @param {Ticks} ticks
 * @param {string} printing
 * @param {string} key
 */
export function countOf(ticks, printing, key) {
  return ticks.get(printing)?.get(key) ?? 0;
}

/**
 * @param {Ticks} ticks
 * @param {readonly Change[]} changes
 * @returns {Ticks}
 */
export function withChanges(ticks, changes) {
  const all = new Map([...ticks].map(([printing, counts]) => [printing, new Map(counts)]));
  for (const { printing, key, to } of changes) {
    const counts = all.get(printing) ?? new Map();
    if (to === 0) counts.delete(key);
    else counts.set(key, to);
    if (counts.size === 0) all.delete(printing);
    else all.set(printing, counts);
  }
  return all;
}

/**
 * What must change so that one becomes the other.
 *
 * @param {Ticks} from
 * @param {Ticks} to
 * @returns {readonly Change[]}
 */
export function changesBetween(from, to) {
  const printings = new Set([...from.keys(), ...to.keys()]);
  return [...printings].flatMap((printing) => {
    const keys = new Set([...keysOf(from, printing), ...keysOf(to, printing)]);
    return [...keys]
      .map((key) => {
        return {
          printing,
          key,
          from: countOf(from, printing, key),
          to: countOf(to, printing, key),
        };
      })
      .filter((change) => change.from !== change.to);
  });
}

/**
 * @param {Ticks} ticks
 * @param {string} printing
 * @returns {readonly string[]}
 */
function keysOf(ticks, printing) {
  return [...(ticks.get(printing)?.keys() ?? [])];
}

/** @param {readonly Change[]} changes */
export function reversed(changes) {
  return changes.map(({ printing, key, from, to }) => ({ printing, key, from: to, to: from }));
}

/**
 * Ticks as they are kept and passed on. Cards and parallels stand in the order of their ids.
 *
 * @typedef {Readonly<Record<string, number>>} Counts
 * @typedef {{ readonly cards: Counts, readonly parallels: Readonly<Record<string, Counts>> }} TicksJson
 */

/**
 * @param {Ticks} ticks
 * @returns {TicksJson}
 */
export function ticksToJson(ticks) {
  const parallels = inOrder([...ticks].filter(([printing]) => printing !== PLAIN));
  return {
    cards: countsToJson(ticks.get(PLAIN) ?? new Map()),
    parallels: Object.fromEntries(parallels.map(([id, counts]) => [id, countsToJson(counts)])),
  };
}

/**
 * @param {ReadonlyMap<string, number>} counts
 * @returns {Counts}
 */
function countsToJson(counts) {
  return Object.fromEntries(inOrder([...counts]));
}

/**
 * @template T
 * @param {readonly (readonly [string, T])[]} entries
 */
function inOrder(entries) {
  return [...entries].sort(([a], [b]) => (a < b ? -1 : 1));
}

/**
 * @param {unknown} value
 * @returns {Ticks | null} null if it is anything else
 */
export function ticksFromJson(value) {
  if (!isRecord(value) || !isRecord(value['parallels'])) return null;
  const named = /** @type {const} */ ([PLAIN, value['cards']]);
  const read = [named, ...Object.entries(value['parallels'])].map(
    ([printing, counts]) => /** @type {const} */ ([printing, countsFromJson(counts)]),
  );
  /** @type {Map<string, ReadonlyMap<string, number>>} */
  const ticks = new Map();
  for (const [printing, counts] of read) {
    if (counts === null) return null;
    if (counts.size > 0) ticks.set(printing, counts);
  }
  return ticks;
}

/**
 * @param {unknown} value
 * @returns {ReadonlyMap<string, number> | null}
 */
function countsFromJson(value) {
  if (!isRecord(value)) return null;
  /** @type {Map<string, number>} */
  const counts = new Map();
  for (const [key, count] of Object.entries(value)) {
    if (typeof count !== 'number' || !Number.isInteger(count)) return null;
    if (count < 1 || count > MOST) return null;
    counts.set(key, count);
  }
  return counts;
}

/**
 * @param {unknown} value
 * @returns {value is Readonly<Record<string, unknown>>}
 */
export function isRecord(value) {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
