import { isHyphen } from '../../text/index.js';
import type { OddsSentence } from './odds-rate.js';
import { wordIn } from './odds-rate.js';
import { keyOf, type Named } from './things.js';

/** Words of the trade for cards of a kind, whatever the plan calls them. */
export type Trade =
  | 'autograph'
  | 'relic'
  | 'sketch'
  | 'insert'
  | 'parallel'
  /** Cards that are numbered one by one, as most parallels are. */
  | 'numbered'
  | 'redemption'
  /** Autographs, relics and sketch cards together. */
  | 'hit';

/** What can be found in packs: cards of a subset, a group or a total, of a parallel, or of a trade word. */
export type Findable =
  | { readonly kind: 'part'; readonly id: string }
  | { readonly kind: 'parallel'; readonly id: string }
  | { readonly kind: 'trade'; readonly trade: Trade };

/** A place of a sentence that names what can be found. */
export interface FoundThing {
  readonly at: number;
  readonly next: number;
  readonly whats: readonly Findable[];
  /** Whether it cannot be a word of a story: a title, or a word with "card". */
  readonly isSure: boolean;
}

/** What is named from a token on; null for anything else. */
export function thingAt(sentence: OddsSentence, at: number): FoundThing | null {
  const trade = tradeAt(sentence, at);
  const named = sentence.named.find((each) => each.at === at && each.manner !== 'product');
  const whats = named ? whatsOf(named) : [];
  if (named && whats.length > 0) {
    const isSure = named.manner === 'title' || named.manner === 'trade';
    if (trade && trade.next >= named.next && named.manner !== 'title') {
      return { ...trade, whats: [...whats, ...trade.whats], isSure: isSure || trade.isSure };
    }
    return { at, next: pastTrade(sentence, named), whats, isSure };
  }
  return trade;
}

/** "Brass-Nailed parallels", "Keel one-of-ones", "Keel 1/1s": the title says which. */
function pastTrade(sentence: OddsSentence, { next, manner }: Named): number {
  if (manner !== 'title') return next;
  return tradeAt(sentence, next)?.next ?? pastOneOfOne(sentence, next);
}

const ONE_OF_ONE = /^(?:one[-‐‑]of[-‐‑]ones?|1[-‐‑]of[-‐‑]1s?|1\/1s?)$/;

function pastOneOfOne(sentence: OddsSentence, at: number): number {
  const words = [0, 1, 2, 3, 4, 5].map((more) => wordIn(sentence, at + more));
  const long = [6, 5, 4, 3].find((many) => ONE_OF_ONE.test(words.slice(0, many).join('')));
  return at + (long ?? 0);
}

function whatsOf({ things }: Named): readonly Findable[] {
  return things.flatMap((thing): readonly Findable[] => {
    if (thing.kind === 'part') return [{ kind: 'part', id: thing.id }];
    if (thing.kind === 'parallels') return [{ kind: 'trade', trade: 'parallel' }];
    if (thing.kind !== 'run' || thing.parallel === null) return [];
    return [{ kind: 'parallel', id: thing.parallel }];
  });
}

const TRADES: Readonly<Record<string, Trade>> = {
  autograph: 'autograph',
  signature: 'autograph',
  relic: 'relic',
  sketch: 'sketch',
  insert: 'insert',
  parallel: 'parallel',
  redemption: 'redemption',
  hit: 'hit',
};
/** Words that are of the trade only before "card". */
const WITH_CARD: Readonly<Record<string, Trade>> = {
  signed: 'autograph',
  autographed: 'autograph',
  numbered: 'numbered',
};

function tradeAt(sentence: OddsSentence, at: number): FoundThing | null {
  const start = pastSerial(sentence, at);
  const key = keyOf(wordIn(sentence, start));
  const noun = keyOf(wordIn(sentence, start + 1));
  const isCard = noun === 'card';
  const own = Object.hasOwn(TRADES, key) ? TRADES[key] : undefined;
  const isNumbered = key === 'numbered' && noun === 'parallel';
  const carded =
    (isCard || isNumbered) && Object.hasOwn(WITH_CARD, key) ? WITH_CARD[key] : undefined;
  const trade = own ?? carded;
  if (trade === undefined) return null;
  const next = isCard || isNumbered ? start + 2 : start + 1;
  return { at, next, whats: [{ kind: 'trade', trade }], isSure: isCard || isNumbered };
}

/** "Serial-numbered", "serially numbered". */
function pastSerial(sentence: OddsSentence, at: number): number {
  if (!/^serial(?:ly)?$/.test(wordIn(sentence, at))) return at;
  return isHyphen(sentence.tokens[at + 1]) ? at + 2 : at + 1;
}
