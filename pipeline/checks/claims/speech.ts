import type { NumberToken } from '../../text/index.js';
import { keyOf } from './things.js';

type Tokens = readonly NumberToken[];

const COLLECTORS: ReadonlySet<string> = new Set(
  'collector collectable collectible checklist subset collecting'.split(' '),
);
/** What collectors are told to do, in the form in which they are told. */
const DOING: ReadonlySet<string> = new Set(
  'collect find seek gather hunt chase trade complete spot assemble look track swap put lay line place arrange join keep pull turn fit match discover own open flip'.split(
    ' ',
  ),
);
/** Doing that is said of a number only where it takes them all: "put two side by side" is no count. */
const HANDLING: ReadonlySet<string> = new Set(
  'put lay line place arrange join turn fit match flip pull open keep'.split(' '),
);
const LEADING: ReadonlySet<string> = new Set(
  "and then to you can could must will should may might please now or so just you'll we let's if don't".split(
    ' ',
  ),
);
const STORY_PEOPLE: ReadonlySet<string> = new Set(
  "he she they him her them his their he'd she'd they'd he'll she'll they'll who".split(' '),
);
const SAYING: ReadonlySet<string> = new Set(
  'said says asked asks told tells cried cries shouted shouts whispered whispers replied replies'.split(
    ' ',
  ),
);

/** Words by which cards are the ones that people play with, or write on. */
const OTHER_CARDS: ReadonlySet<string> = new Set(
  'deal dealt deals dealing dealer shuffle shuffled shuffles shuffling sleeve tarot whist rummy poker ace aces knave playing post visiting calling birthday greeting gamble gambled gambling trump trumps suit suits fortune library'.split(
    ' ',
  ),
);

/** Whether a stretch of tokens is of cards that are no collectors' cards. */
export function isOfOtherCards(tokens: Tokens): boolean {
  return tokens.some(({ word }) => OTHER_CARDS.has(word));
}

/** Whether the words of a sentence speak to whoever collects the cards. */
export function speaksToCollectors(tokens: Tokens): boolean {
  const words = tokens.map(({ word }) => word);
  if (words.some((word) => COLLECTORS.has(keyOf(word)))) return true;
  return namesSet(words) || namesPack(words) || asks(tokens) !== null;
}

const OF_SET =
  /\b(?:of|in|from|completes?|completing|through) (?:the|this|your|our|a) (?:\w+ )?(?:set|series|collection)\b/;
const WHOLE_SET = /\b(?:complete|full|whole|entire|base|insert|card|mini|sub) -? ?(?:set|series)\b/;
const THIS_CARD = /\b(?:this|these|all|other|every) (?:\w+ )?(?:cards?|set|backs)\b|\bcard backs\b/;

function namesSet(words: readonly string[]): boolean {
  const said = words.join(' ');
  return OF_SET.test(said) || WHOLE_SET.test(said) || THIS_CARD.test(said);
}

const PACK =
  /\b(?:per|every|each|a|in|hobby|retail) (?:packs?|packet|wrapper)\b|\b(?:per|every|each|hobby|retail) box(?:es)?\b/;

function namesPack(words: readonly string[]): boolean {
  return PACK.test(words.join(' '));
}

/** Where a sentence asks a reader to collect: the verb; null where it tells of somebody else. */
export function asks(tokens: Tokens): number | null {
  const told = tokens.some(({ word }) => SAYING.has(word));
  if (told) return null;
  const you = tokens.some(({ word }) => /^(?:you|your|you'll|you've|collectors?)$/.test(word));
  for (const [at, { word }] of tokens.entries()) {
    if (!DOING.has(word)) continue;
    const before = tokens[at - 1];
    if (before === undefined || before.kind === 'sign') return at;
    if (!LEADING.has(before.word)) continue;
    const story = tokens.slice(0, at).some((other) => STORY_PEOPLE.has(other.word));
    if (you || !story) return at;
  }
  return null;
}

/** Whether the verb by which a number is asked for goes with any number, not with them all alone. */
export function isHandling(word: string): boolean {
  return HANDLING.has(word);
}

/** Whether a sentence tells of somebody, or what somebody says. */
export function tellsOfPeople(tokens: Tokens): boolean {
  return tokens.some(({ word }) => STORY_PEOPLE.has(word) || SAYING.has(word));
}
