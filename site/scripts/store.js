import {
  changesBetween,
  isRecord,
  NO_TICKS,
  reversed,
  ticksFromJson,
  ticksToJson,
  withChanges,
} from './ticks.js';
import { jsonOf } from './ticks-file.js';

/** @typedef {import('./ticks.js').Change} Change */
/** @typedef {import('./ticks.js').Ticks} Ticks */

/**
 * What keeps text on this device. Both may throw.
 *
 * @typedef {object} Keeper
 * @property {(key: string) => string | null} getItem
 * @property {(key: string, text: string) => void} setItem
 */

const STEPS_BACK = 200;

export const NOT_KEPT =
  'This browser does not keep your ticks: its storage is full or turned off. They last until this page is closed, so save them to a file.';

export const SET_ASIDE =
  'What this browser had kept of your ticks cannot be read. It is set aside, not thrown away; new ticks are kept from now on.';

/**
 * The ticks of a set, kept on this device alone. Whatever another page of the site has changed
 * meanwhile stays: each change is made to what is kept at that moment.
 */
export class Store {
  /** @type {Ticks} */
  ticks = NO_TICKS;
  /** What the reader must be told about keeping. @type {string | null} */
  trouble = null;
  /** @type {(readonly Change[])[]} */
  #past = [];
  #keeps = true;

  /**
   * @param {Keeper | null} keeper
   * @param {string} key
   */
  constructor(keeper, key) {
    this.keeper = keeper;
    this.key = key;
    this.refresh();
  }

  /** Reads again what is kept. */
  refresh() {
    try {
      const kept = this.keeper?.getItem(this.key);
      if (this.keeper === null) this.#fail();
      else if (this.#keeps) this.ticks = typeof kept === 'string' ? this.#read(kept) : NO_TICKS;
    } catch {
      this.#fail();
    }
  }

  get canUndo() {
    return this.#past.length > 0;
  }

  /**
   * @param {readonly Change[]} changes
   * @returns {readonly Change[]} what did change
   */
  change(changes) {
    this.refresh();
    const made = this.#apply(changes);
    if (made.length > 0) this.#past = [...this.#past, made].slice(-STEPS_BACK);
    return made;
  }

  /** Takes the last change back. @returns {readonly Change[]} what did change */
  undo() {
    const last = this.#past.at(-1);
    if (last === undefined) return [];
    this.#past = this.#past.slice(0, -1);
    this.refresh();
    return this.#apply(reversed(last));
  }

  /** @param {readonly Change[]} changes */
  #apply(changes) {
    const after = withChanges(this.ticks, changes);
    const made = changesBetween(this.ticks, after);
    this.ticks = after;
    this.#write();
    return made;
  }

  #write() {
    try {
      if (this.keeper === null) return;
      this.keeper.setItem(this.key, JSON.stringify({ format: 1, ...ticksToJson(this.ticks) }));
      if (!this.#keeps) this.trouble = null;
      this.#keeps = true;
    } catch {
      this.#fail();
    }
  }

  #fail() {
    this.#keeps = false;
    this.trouble = NOT_KEPT;
  }

  /** @param {string} kept */
  #read(kept) {
    const value = jsonOf(kept);
    const ticks = isRecord(value) && value['format'] === 1 ? ticksFromJson(value) : null;
    if (ticks !== null) return ticks;
    this.#setAside(kept);
    return NO_TICKS;
  }

  /** @param {string} kept */
  #setAside(kept) {
    let at = 1;
    let place = `${this.key}:aside`;
    for (let other = this.keeper?.getItem(place); other !== null;) {
      if (other === kept || other === undefined) break;
      at += 1;
      place = `${this.key}:aside-${String(at)}`;
      other = this.keeper?.getItem(place);
    }
    this.keeper?.setItem(place, kept);
    this.trouble = SET_ASIDE;
  }
}
