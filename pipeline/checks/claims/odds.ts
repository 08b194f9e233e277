import type { Hold } from '../../model/index.js';
import { numberTokens, type FoundNumber, type NumberToken } from '../../text/index.js';
import { judgeOdds, STANDINGS, type JudgedOdds } from './odds-judge.js';
import type { OddsSentence } from './odds-rate.js';
import { oddsIn, type SaidOdds } from './odds-read.js';
import { toldByOdds } from './odds-tells.js';
import { isOfOtherCards, speaksToCollectors, tellsOfPeople } from './speech.js';
import type { ClaimText } from './texts.js';
import { namedIn, vocabularyOf, type Named } from './things.js';
import type { Subject } from '../subject.js';

/** What is looked at to read the odds of a text. */
export interface OddsWords {
  readonly tokens: readonly NumberToken[];
  readonly named: readonly Named[];
  readonly numbers: readonly FoundNumber[];
  readonly sentences: readonly { readonly at: number; readonly next: number }[];
  /** Whether the text speaks of the cards themselves, as sales texts do. */
  readonly sells: boolean;
}

/** Words without one of which nobody speaks of odds. */
const OF_ODDS =
  /pack|wrapper|booster|sachet|box|display|case|\b1\s*:\s*\d|\b(?:one|1)\b.{0,3}\b(?:in|out|per)\b/i;

/** Whether a text may say odds at all: quick, and never no where it does. */
export function maySayOdds(text: string): boolean {
  return OF_ODDS.test(text);
}

/** All odds that a text says, in order. */
export function readOdds(words: OddsWords): readonly SaidOdds[] {
  const { tokens, named, numbers, sells } = words;
  return words.sentences.flatMap((stretch) => {
    const sentence: OddsSentence = { tokens, named, numbers, ...stretch };
    if (!sells && !maySpeak(sentence)) return [];
    return oddsIn(sentence).filter((said) => sells || isSure(said));
  });
}

/** Whether a sentence of a card may say odds: one that speaks to collectors, and tells of nobody. */
function maySpeak({ tokens, at, next }: OddsSentence): boolean {
  const words = tokens.slice(at, next);
  return speaksToCollectors(words) && !isOfOtherCards(words) && !tellsOfPeople(words);
}

/** In a story a pack or a box is named, and what is found by its title or as a card. */
function isSure({ rate, isNamed }: SaidOdds): boolean {
  return rate.isSaid && isNamed;
}

/** Odds that a text says, and what becomes of them. */
export interface OddsClaim {
  readonly text: ClaimText;
  readonly said: SaidOdds;
  /** UTF-16 units of its words. */
  readonly from: number;
  readonly to: number;
  /** UTF-16 units of what is pointed at: its number, or what is found. */
  readonly spot: readonly [from: number, to: number];
}

/** The odds of a text, each with where its words stand. */
export function oddsClaims(
  text: ClaimText,
  tokens: readonly NumberToken[],
  odds: readonly SaidOdds[],
): readonly OddsClaim[] {
  const unitsOf = ({ at, next }: { readonly at: number; readonly next: number }) =>
    [tokens[at]?.from ?? 0, tokens[next - 1]?.to ?? 0] as const;
  return odds.map((said) => {
    const [from, to] = unitsOf(said);
    return { text, said, from, to, spot: unitsOf(said.number ?? said.spot) };
  });
}

/** How said odds stand in the sets that a text speaks of: of several, the worst. */
export function standingOf({ text, said }: OddsClaim): JudgedOdds {
  const judged = text.sets.map((set) => judgeOdds(said, set, ownProduct(text)));
  const [worst] = judged.toSorted(
    (a, b) => STANDINGS.indexOf(b.stands) - STANDINGS.indexOf(a.stands),
  );
  return worst ?? { stands: 'open', figures: null, product: null, isSole: false };
}

/** What of something held follows from said odds. */
export function toldOf(
  { text, said, from, to }: OddsClaim,
  subject: Subject,
): { readonly id: string; readonly hold: Hold } | null {
  return toldByOdds(said, text, [from, to], ownProduct(text), subject);
}

/** The one product of which a sales text speaks by its title, else by the name of its file. */
function ownProduct({ sales, sets: [set] }: ClaimText): string | null {
  if (!sales || !set) return null;
  const file = sales.source.file.split('/').at(-1)?.replace(/\.md$/, '') ?? '';
  for (const words of [sales.front.title ?? '', file.replaceAll('-', ' ')]) {
    const named = namedIn(numberTokens(words), vocabularyOf(set));
    const products = new Set(named.flatMap(({ product }) => product ?? []));
    const [product] = products;
    if (products.size === 1 && product !== undefined) return product;
  }
  return null;
}
