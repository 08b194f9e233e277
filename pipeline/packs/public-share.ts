/** What the public knows of one kind in one product: odds of 1:`oneIn`, whose truth is above `above`. */
export interface Share {
  /** The index of the product. */
  readonly at: number;
  /** Packs of a case. */
  readonly packs: bigint;
  readonly oneIn: bigint;
  /** Below `oneIn`; 0 if nothing is known. */
  readonly above: bigint;
}

/** Numbers of cases to look among, both ends counted. */
interface Among {
  readonly from: bigint;
  readonly to: bigint;
}

/** The fewest copies that these odds allow in so many cases. */
export function atLeast({ packs, oneIn }: Share, cases: bigint): bigint {
  return (cases * packs + oneIn - 1n) / oneIn;
}

/** The most copies that these odds allow in so many cases; null if nothing bounds them. */
export function atMost({ packs, above }: Share, cases: bigint): bigint | null {
  return above === 0n ? null : (cases * packs - 1n) / above;
}

/**
 * The least number of cases among these of which each of the odds gives some whole number of copies;
 * one above them if there is none.
 */
export function fittingFrom(shares: readonly Share[], { from, to }: Among): bigint {
  let cases = from;
  for (;;) {
    let next = cases;
    for (const share of shares) next = next > to ? next : nextFitting(share, next);
    if (next > to) return to + 1n;
    if (next === cases) return cases;
    cases = next;
  }
}

/** The greatest number of cases among these that fits so; one below them if there is none. */
export function fittingTo(shares: readonly Share[], { from, to }: Among): bigint {
  let cases = to;
  for (;;) {
    let next = cases;
    for (const share of shares) next = next < from ? next : lastFitting(share, next);
    if (next < from) return from - 1n;
    if (next === cases) return cases;
    cases = next;
  }
}

/** The copies that odds allow grow with the cases, so that what does not fit lies between two numbers of copies. */
function nextFitting(share: Share, from: bigint): bigint {
  const { packs, above } = share;
  for (let cases = from; ;) {
    const most = above * atLeast(share, cases);
    if (most < cases * packs) return cases;
    cases = most / packs + 1n;
  }
}

function lastFitting(share: Share, to: bigint): bigint {
  const { packs, oneIn } = share;
  for (let cases = to; cases > 0n;) {
    const copies = atMost(share, cases);
    if (copies === null || cases * packs <= copies * oneIn) return cases;
    cases = (copies * oneIn) / packs;
  }
  return 0n;
}
