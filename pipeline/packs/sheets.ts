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
 * doubled once more, and what is left stays blank. If they do not fit, as few forms as hold them, in
 * their order and as evenly as may be.
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
  const extra = placed.reduce((sum, { more }) => sum + more, 0);
  const weights = placed.reduce((sum, { weight }) => sum + weight, 0);
  const often = Math.floor((up - extra) / weights);
  const times = ({ weight, more }: Placed): number => often * weight + more;
  const needed = placed.reduce(
    (most, each) => Math.max(most, sheetsFor(each.subject.copies, times(each))),
    0,
  );
  const sheets = sheet.ordered ?? needed + (sheet.spare ?? 0);
  const subjects = placed.map((each) => {
    const { id, copies } = each.subject;
    const printed = times(each) * sheets;
    return { id, times: times(each), copies: printed, over: subtract(whole(printed), copies) };
  });
  return { subjects, blank: up - often * weights - extra, needed, sheets };
}

function sheetsFor(copies: Fraction, times: number): number {
  const exact = fraction(copies.over, copies.under * BigInt(times));
  return exact.over <= 0n ? 0 : Number((exact.over + exact.under - 1n) / exact.under);
}

/** Cards of which fewer are printed than are to be made. */
export function underRuns({ forms }: PressSheets): readonly Printed[] {
  return forms.flatMap(({ subjects }) =>
    subjects.filter(({ over }) => compare(over, whole(0)) < 0),
  );
}
