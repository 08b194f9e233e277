/** What each problem is about, and whether the plan can be packed all the same. */
const PROBLEMS = {
  'figure-wrong': { concerns: 'figures', severity: 'error' },
  'too-large': { concerns: 'figures', severity: 'error' },
  'id-twice': { concerns: 'figures', severity: 'error' },
  'product-unknown': { concerns: 'figures', severity: 'error' },
  'kind-unknown': { concerns: 'figures', severity: 'error' },
  'entered-twice': { concerns: 'figures', severity: 'error' },
  'base-entered': { concerns: 'figures', severity: 'error' },
  'no-cards': { concerns: 'figures', severity: 'error' },
  'parent-unknown': { concerns: 'figures', severity: 'error' },
  'variation-uncounted': { concerns: 'figures', severity: 'error' },
  'cases-unset': { concerns: 'figures', severity: 'warning' },
  'too-thick': { concerns: 'places', severity: 'error' },
  'places-over': { concerns: 'places', severity: 'error' },
  'places-empty': { concerns: 'places', severity: 'error' },
  'packs-too-few': { concerns: 'places', severity: 'error' },
  'no-base-left': { concerns: 'places', severity: 'error' },
  'alike-in-pack': { concerns: 'places', severity: 'warning' },
  'odds-not-whole': { concerns: 'divides', severity: 'error' },
  'copies-not-even': { concerns: 'divides', severity: 'error' },
  'base-not-even': { concerns: 'divides', severity: 'error' },
  'boxes-not-even': { concerns: 'divides', severity: 'error' },
  'fixed-over': { concerns: 'divides', severity: 'error' },
  'variation-over': { concerns: 'divides', severity: 'error' },
  'stated-not-made': { concerns: 'divides', severity: 'error' },
  'run-missing': { concerns: 'divides', severity: 'error' },
  'run-not-split': { concerns: 'divides', severity: 'error' },
  'run-unpacked': { concerns: 'divides', severity: 'error' },
  'run-exceeded': { concerns: 'divides', severity: 'error' },
  'run-by-weight': { concerns: 'divides', severity: 'error' },
  'reserve-over-run': { concerns: 'divides', severity: 'error' },
  'reserve-high': { concerns: 'divides', severity: 'warning' },
  'sheets-short': { concerns: 'divides', severity: 'error' },
  'doubled-unknown': { concerns: 'divides', severity: 'error' },
  'guarantee-short': { concerns: 'guarantee', severity: 'error' },
  'guarantee-by-hand': { concerns: 'guarantee', severity: 'warning' },
  'odds-better': { concerns: 'odds', severity: 'error' },
  'odds-of-none': { concerns: 'odds', severity: 'error' },
  'odds-coarse': { concerns: 'odds', severity: 'warning' },
  'odds-beyond-case': { concerns: 'odds', severity: 'warning' },
  'redemption-not-packed': { concerns: 'redemption', severity: 'error' },
  'redemption-card': { concerns: 'redemption', severity: 'error' },
  'redemption-ships': { concerns: 'redemption', severity: 'error' },
  'redemption-expires': { concerns: 'redemption', severity: 'error' },
  'redemption-day': { concerns: 'redemption', severity: 'error' },
  'redemption-order': { concerns: 'redemption', severity: 'error' },
  'redemption-unset': { concerns: 'redemption', severity: 'warning' },
} as const;

export type ProblemKind = keyof typeof PROBLEMS;

/** What is impossible about a plan (an error), or unlikely (a warning). */
export interface Problem {
  readonly kind: ProblemKind;
  readonly severity: 'error' | 'warning';
  readonly concerns: 'figures' | 'places' | 'divides' | 'guarantee' | 'odds' | 'redemption';
  readonly about: About;
  /** The figures that the message says, by name. */
  readonly figures: Readonly<Record<string, number>>;
  /** A whole sentence for a set editor. It may say titles of what is held: it is for the house. */
  readonly message: string;
}

/** Where in a plan a problem stands. */
export interface About {
  readonly product?: string;
  readonly kind?: string;
  readonly card?: string;
  /** A list of the plan, and the index in it. */
  readonly list?: 'entries' | 'guarantees' | 'redemptions' | 'published';
  readonly at?: number;
}

export function problem(
  kind: ProblemKind,
  about: About,
  message: string,
  figures: Readonly<Record<string, number>> = {},
): Problem {
  return { kind, ...PROBLEMS[kind], about, figures, message };
}
