import { compare, fraction, subtract, whole, type Fraction } from './fraction.js';
import type { Sheet } from './plan.js';

/** A card to print. */
export interface Subject {
  readonly id: string;
  /** Its share beside the others: how often it stands on a sheet for each time that they do. */
  readonly weight: number;
  /** Copies to be made. */
  readonly copies: Fraction;
}

/** How a kind is printed: on one form, or on several if its cards do not fit on one. */
export interface PressSheets {
  /** Places on a sheet. */
  readonly up: number;
  readonly forms: readonly Form[];
  /** Sheets of all forms. */
  readonly sheets: number;
}

/** Sheets that are alike. */
export interface Form {
  readonly subjects: readonly Printed[];
  /** Places of the sheet that stay blank. */
  readonly blank: number;
  /** Sheets that must come out well. */
  readonly needed: number;
  /** Sheets that are printed: those and the spare ones, or as many as are ordered. */
  readonly sheets: number;
}

export interface Printed {
  readonly id: string;
  /** How often it stands on a sheet. */
  readonly times: number;
  /** Whether it is printed double: once more than the others. */
  readonly double: boolean;
  /** Copies that come of all sheets, if none is spoilt. */
  readonly copies: number;
  /** Copies more than are to be made: an over-run, or below 0 an under-run. */
  readonly over: Fraction;
}

/** A card and the places that it takes on a sheet at least. */
interface Placed {
  readonly subject: Subject;
  readonly weight: number;
  /** 1 if it stands once more than its weight asks for. */
  readonly more: 0 | 1;
}

/**
 * Lays cards out on sheets: all stand as often as there is room, by their weights, those that are
 * doubled once more, and what is left stays blank. A card of which fewer are to be made, as of a
 * variation, stands no more often than the sheets for the others ask of it. If they do not fit, as few
 * forms as hold them, in their order and as evenly as may be.
 */
export function pressSheets(sheet: Sheet, subjects: readonly Subject[]): PressSheets {
  const up = sheet.columns * sheet.rows;
  const doubled = new Set(sheet.doubled ?? []);
  const placed = subjects.map((subject): Placed => {
    const more = doubled.has(subject.id) && up > 1 ? 1 : 0;
    return { subject, weight: Math.min(subject.weight, up - more), more };
  });
  const forms = inForms(placed, up).map((own) => layForm(own, sheet, up));
  return { up, forms, sheets: forms.reduce((sum, { sheets }) => sum + sheets, 0) };
}

function size({ weight, more }: Placed): number {
  return weight + more;
}

/** Cards in groups that fit on a sheet. */
function inForms(placed: readonly Placed[], up: number): readonly (readonly Placed[])[] {
  const places = placed.reduce((sum, each) => sum + size(each), 0);
  const largest = placed.reduce((most, each) => Math.max(most, size(each)), 1);
  // A group may miss its fair part by one place less than the largest card takes.
  const fair = Math.ceil(places / Math.max(1, Math.ceil(places / up))) + largest - 1;
  const forms: Placed[][] = [];
  let room = 0;
  for (const each of placed) {
    if (room < size(each)) {
      forms.push([]);
      room = Math.min(fair, up);
    }
    forms.at(-1)?.push(each);
    room -= size(each);
  }
  return forms;
}

function layForm(placed: readonly Placed[], sheet: Sheet, up: number): Form {
  const laid = laidOut(placed, up);
  const needed = laid.reduce(
    (most, { each, times }) => Math.max(most, sheetsFor(each.subject.copies, times)),
    0,
  );
  const sheets = sheet.ordered ?? needed + (sheet.spare ?? 0);
  const subjects = laid.map(({ each, times }): Printed => {
    const { id, copies } = each.subject;
    const printed = times * sheets;
    const over = subtract(whole(printed), copies);
    return { id, times, double: each.more === 1, copies: printed, over };
  });
  return { subjects, blank: up - placesOf(laid), needed, sheets };
}

interface Laid {
  readonly each: Placed;
  readonly times: number;
}

function placesOf(laid: readonly Laid[]): number {
  return laid.reduce((sum, { times }) => sum + times, 0);
}

/** How often each card stands on a sheet that has room for all of them. */
function laidOut(placed: readonly Placed[], up: number): readonly Laid[] {
  let fits = layingsOf(placed, 1);
  let [from, to] = [1, up];
  // More often never takes fewer places, so the most that fits is found by halving.
  while (from < to) {
    const often = Math.ceil((from + to) / 2);
    const laid = layingsOf(placed, often);
    if (placesOf(laid) <= up) [from, fits] = [often, laid];
    else to = often - 1;
  }
  return fits;
}

/** Each as often as this by its weight, or less often where that is enough. */
function layingsOf(placed: readonly Placed[], often: number): readonly Laid[] {
  const sheets = placed.reduce((most, { subject, weight, more }) => {
    const own = dividedBy(subject.copies, whole(often * weight + more));
    return compare(own, most) > 0 ? own : most;
  }, whole(0));
  return placed.map((each) => {
    const { subject, weight, more } = each;
    const full = often * weight;
    const enough = sheets.over === 0n ? full : roundedUp(dividedBy(subject.copies, sheets));
    return { each, times: Math.min(full, Math.max(1, enough)) + more };
  });
}

function sheetsFor(copies: Fraction, times: number): number {
  return roundedUp(dividedBy(copies, whole(times)));
}

function dividedBy(a: Fraction, b: Fraction): Fraction {
  return fraction(a.over * b.under, a.under * b.over);
}

/** The least whole number that is not below it; 0 for what is below 0. */
function roundedUp({ over, under }: Fraction): number {
  return over <= 0n ? 0 : Number((over + under - 1n) / under);
}

/** Cards of which fewer are printed than are to be made. */
export function underRuns({ forms }: PressSheets): readonly Printed[] {
  return forms.flatMap(({ subjects }) =>
    subjects.filter(({ over }) => compare(over, whole(0)) < 0),
  );
}
