/**
 * Whole paragraph: the breaks with the fewest demerits over all lines together.
 *
 * D. E. Knuth and M. F. Plass, "Breaking Paragraphs into Lines", Software: Practice and Experience
 * 11 (1981) 1119-1184, with the badness, the demerits and the four kinds of fit of D. E. Knuth,
 * "TeX: The Program" (1986), sections 108, 851 to 859 and 836.
 */
export interface BreakPoints {
  readonly count: number;
  /** What a break costs, as in TeX: 10,000 forbids it, -10,000 forces it. */
  penalty(at: number): number;
  /** Whether the line ends in a hyphen. */
  flagged(at: number): boolean;
  /** The line between two breaks; `from` is -1 for the start of the paragraph. */
  line(from: number, to: number): Flexible;
}

/** The length of a line and how far it may stretch and shrink, in one unit; stretch may be Infinity. */
export interface Flexible {
  readonly natural: number;
  readonly stretch: number;
  readonly shrink: number;
}

export interface OptimumRules {
  readonly tolerance: number;
  readonly linePenalty: number;
  readonly doubleHyphen: number;
  readonly finalHyphen: number;
  /** For two neighbours of which one is loose and the other is not. */
  readonly adjacent: number;
  /** Where nothing is within the tolerance: a line that is too long, rather than no answer. */
  readonly final: boolean;
}

/** The values of plain TeX, but for `final`. */
export const PLAIN_RULES = {
  tolerance: 200,
  linePenalty: 10,
  doubleHyphen: 10_000,
  finalHyphen: 5_000,
  adjacent: 10_000,
} as const satisfies Omit<OptimumRules, 'final'>;

/** Length open to a line, counted from 0. Lines of one length are cheaper to search: say so. */
export interface Measures {
  readonly uniform: boolean;
  measure(line: number): number;
}

/** A break that was chosen and the adjustment ratio of the line that it ends. */
export interface ChosenBreak {
  readonly at: number;
  readonly ratio: number;
}

const INFINITELY_BAD = 10_000;
const FORCED = -10_000;
/** Demerits of a line that costs more than TeX counts. */
const MOST_DEMERITS = 100_000_000;

/** 0 tight, 1 decent, 2 loose, 3 very loose. */
type Fitness = 0 | 1 | 2 | 3;

interface Node {
  readonly at: number;
  readonly line: number;
  readonly fitness: Fitness;
  readonly demerits: number;
  readonly ratio: number;
  readonly previous: Node | null;
}

/** TeX's badness, about 100 (t/s)^3: a whole number, 10,000 at most (section 108). */
export function badness(excess: number, give: number): number {
  if (excess === 0) return 0;
  if (!(give > 0)) return INFINITELY_BAD;
  const ratio = Math.floor((297 * excess) / give);
  if (ratio > 1290) return INFINITELY_BAD;
  return Math.floor((ratio ** 3 + 0x20000) / 0x40000);
}

/** How far a line is from its measure: -1 to 0 shrunk, above 0 stretched. */
export function adjustmentRatio(line: Flexible, measure: number): number {
  const short = measure - line.natural;
  if (short === 0 || line.stretch === Infinity) return short < 0 ? shrinkRatio(line, short) : 0;
  return short > 0 ? short / line.stretch : shrinkRatio(line, short);
}

function shrinkRatio(line: Flexible, short: number): number {
  return line.shrink > 0 ? short / line.shrink : -Infinity;
}

function judge(line: Flexible, measure: number): { bad: number; fitness: Fitness } {
  const short = measure - line.natural;
  if (short >= 0) {
    if (line.stretch === Infinity) return { bad: 0, fitness: 1 };
    const bad = badness(short, line.stretch);
    return { bad, fitness: bad > 99 ? 3 : bad > 12 ? 2 : 1 };
  }
  if (-short > line.shrink) return { bad: INFINITELY_BAD + 1, fitness: 0 };
  const bad = badness(-short, line.shrink);
  return { bad, fitness: bad > 12 ? 0 : 1 };
}

/** Demerits of one line (section 859). */
export function lineDemerits(
  points: BreakPoints,
  from: number,
  to: number,
  bad: number,
  rules: Pick<OptimumRules, 'linePenalty' | 'doubleHyphen' | 'finalHyphen'>,
): number {
  const cost = rules.linePenalty + bad;
  const penalty = points.penalty(to);
  let demerits = Math.abs(cost) >= 10_000 ? MOST_DEMERITS : cost * cost;
  if (penalty > 0) demerits += penalty * penalty;
  else if (penalty > FORCED) demerits -= penalty * penalty;
  if (from >= 0 && points.flagged(from)) {
    if (to === points.count - 1) demerits += rules.finalHyphen;
    else if (points.flagged(to)) demerits += rules.doubleHyphen;
  }
  return demerits;
}

/** The best breaks, the end of the paragraph being the last one; null where there are none. */
export function optimumBreaks(
  points: BreakPoints,
  measures: Measures,
  rules: OptimumRules,
): readonly ChosenBreak[] | null {
  let active: Node[] = [{ at: -1, line: 0, fitness: 1, demerits: 0, ratio: 0, previous: null }];
  for (let to = 0; to < points.count; to += 1) {
    if (points.penalty(to) >= INFINITELY_BAD) continue;
    active = step(points, measures, rules, active, to);
    if (active.length === 0) return null;
  }
  const ends = active.filter((node) => node.at === points.count - 1);
  const best = ends.reduce<Node | null>(
    (least, node) => (least === null || node.demerits < least.demerits ? node : least),
    null,
  );
  return best && trace(best);
}

/** Tries one break after every active one: what stays active, and the new ones (sections 835 to 860). */
function step(
  points: BreakPoints,
  measures: Measures,
  rules: OptimumRules,
  active: readonly Node[],
  to: number,
): Node[] {
  const kept: Node[] = [];
  let best = new Map<Fitness, Node>();
  let found = false;
  active.forEach((node, index) => {
    const before = active[index - 1];
    if (!measures.uniform && before && before.line !== node.line) {
      kept.push(...worthKeeping(best, rules));
      best = new Map<Fitness, Node>();
    }
    const line = points.line(node.at, to);
    const measure = measures.measure(node.line);
    const { bad, fitness } = judge(line, measure);
    const closes = bad > INFINITELY_BAD || points.penalty(to) <= FORCED;
    const last = rules.final && !found && kept.length === 0 && index === active.length - 1;
    const forced = closes && last && bad > rules.tolerance;
    if (!closes) kept.push(node);
    if (bad > rules.tolerance && !forced) return;
    found = true;
    const demerits = forced ? 0 : lineDemerits(points, node.at, to, bad, rules);
    const total = node.demerits + demerits + clash(node, fitness, forced, rules);
    const rival = best.get(fitness);
    if (rival && rival.demerits < total) return;
    best.set(fitness, {
      at: to,
      line: node.line + 1,
      fitness,
      demerits: total,
      ratio: Math.max(-1, adjustmentRatio(line, measure)),
      previous: node,
    });
  });
  kept.push(...worthKeeping(best, rules));
  return kept;
}

function clash(node: Node, fitness: Fitness, forced: boolean, rules: OptimumRules): number {
  return !forced && Math.abs(node.fitness - fitness) > 1 ? rules.adjacent : 0;
}

/** Of one line number the best break of each kind of fit, where it could still win (section 836). */
function worthKeeping(best: ReadonlyMap<Fitness, Node>, rules: OptimumRules): Node[] {
  const nodes = [...best.values()].sort((a, b) => b.fitness - a.fitness);
  const least = Math.min(...nodes.map((node) => node.demerits));
  return nodes.filter((node) => node.demerits <= least + rules.adjacent);
}

function trace(end: Node): readonly ChosenBreak[] {
  const chosen: ChosenBreak[] = [];
  for (let node: Node | null = end; node && node.at >= 0; node = node.previous) {
    chosen.push({ at: node.at, ratio: node.ratio });
  }
  return chosen.reverse();
}
