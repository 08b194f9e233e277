import type { NumberToken } from '../../text/index.js';
import type { Claim } from './judge.js';
import type { ClaimReading, Mention } from './read.js';

/** A sentence that lists parts which do not make the total that it states. */
export interface WrongSum {
  readonly total: Mention;
  readonly parts: readonly Mention[];
}

/** Words behind which a list goes into what has been counted already. */
const WITHIN: ReadonlySet<string> = new Set(['among', 'including', 'include', 'includes']);
const MAKING: ReadonlySet<string> = new Set(
  'make makes making made total totals totalling totaling equals ='.split(' '),
);
const COMPOSED: ReadonlySet<string> = new Set(
  'comprising comprises comprise namely consisting composed'.split(' '),
);

/** Sums of one text that do not come out though each of their claims holds. */
export function wrongSums(
  { tokens, mentions }: ClaimReading,
  claims: readonly Claim[],
): readonly WrongSum[] {
  const byMention = new Map(claims.map((claim) => [claim.mention, claim]));
  const sentences = new Set(mentions.map(({ sentence }) => sentence));
  return [...sentences].flatMap((at) => {
    const inside = mentions.filter(({ sentence }) => sentence === at);
    const claimed = inside.filter((mention) => isExact(byMention.get(mention)));
    if (claimed.length < 2 || claimed.some((each) => !stands(byMention.get(each)))) return [];
    return sumIn(tokens, inside, claimed) ?? [];
  });
}

function isExact(claim: Claim | undefined): boolean {
  if (!claim) return false;
  const { relation, hedge, high, things } = claim.taken;
  const cards = things.some(({ kind }) => kind !== 'run' && kind !== 'pack' && kind !== 'box');
  return isWhole(relation, claim.mention) && hedge === null && high === null && cards;
}

/** "One insert" in a list is all of them, though by itself it would be one of several. */
function isWhole(relation: Claim['taken']['relation'], { number }: Mention): boolean {
  return relation === 'exact' || (relation === 'part' && number.value === 1);
}

function stands(claim: Claim | undefined): boolean {
  return claim?.verdict === 'holds' || claim?.verdict === 'open';
}

function sumIn(
  tokens: readonly NumberToken[],
  inside: readonly Mention[],
  claimed: readonly Mention[],
): WrongSum | null {
  const parts = inside.filter(isPart);
  const [first] = parts;
  const last = parts.at(-1);
  if (!first || !last || parts.length < 3) return null;
  if (claimed.includes(first) && opensList(tokens, first, parts[1])) {
    return compare(first, listed(tokens, parts.slice(1)), claimed, 'head');
  }
  if (claimed.includes(last) && closesList(tokens, parts.at(-2), last)) {
    return compare(last, parts.slice(0, -1), claimed, 'tail');
  }
  return null;
}

/** Numbers that may be one of the parts. */
function isPart(mention: Mention): boolean {
  const { number, taken } = mention;
  if (number.kind !== 'count') return false;
  return taken.as === 'story' || (taken.as === 'claim' && isWhole(taken.relation, mention));
}

/** Parts up to the word that goes into one of them. */
function listed(tokens: readonly NumberToken[], parts: readonly Mention[]): readonly Mention[] {
  const start = parts[0]?.number.at ?? 0;
  const stop = tokens.findIndex(({ word }, at) => at > start && WITHIN.has(word));
  return stop < 0 ? parts : parts.filter(({ number }) => number.at < stop);
}

function opensList(
  tokens: readonly NumberToken[],
  total: Mention,
  first: Mention | undefined,
): boolean {
  const between = tokens.slice(total.number.next, first?.number.at ?? 0).map(({ word }) => word);
  if (between.some((word) => WITHIN.has(word) || word === ')')) return false;
  const said = between.join(' ');
  return (
    between.some((word) => /^[:(–—=]$/.test(word) || COMPOSED.has(word)) ||
    said.includes('made up of') ||
    said.includes('that is')
  );
}

function closesList(
  tokens: readonly NumberToken[],
  before: Mention | undefined,
  total: Mention,
): boolean {
  const between = tokens.slice(before?.number.next ?? 0, total.number.at).map(({ word }) => word);
  const behind = tokens.slice(total.number.next, total.number.next + 4).map(({ word }) => word);
  const after = behind.join(' ');
  return (
    between.some((word) => MAKING.has(word)) ||
    between.join(' ').includes('add up to') ||
    between.join(' ').includes('adding up to') ||
    /^(?:cards )?(?:in all|in total|altogether)/.test(after)
  );
}

function compare(
  total: Mention,
  parts: readonly Mention[],
  claimed: readonly Mention[],
  at: 'head' | 'tail',
): WrongSum | null {
  const sure = parts.filter((part) => claimed.includes(part));
  if (parts.length < 2 || sure.length === 0) return null;
  const orders = [parts, sure].map((list) => (at === 'head' ? list : [...list].reverse()));
  if (orders.some((list) => comesOut(list, total.number.value))) return null;
  return sure.length < 2 && parts.length > 2 ? null : { total, parts };
}

/** Whether some of the parts, from the first on, make the total. */
function comesOut(parts: readonly Mention[], total: number): boolean {
  let sum = 0;
  return parts.some(({ number }, at) => {
    sum += number.value;
    return at > 0 && sum === total;
  });
}
