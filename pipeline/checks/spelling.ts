import { editDistance, type Dictionary, type English } from '../text/index.js';
import type { Card } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { Advice } from './spell/advice.js';
import { lexiconOf, smallLetters, type Lexicon } from './spell/lexicon.js';
import { oneSlipAway } from './spell/near.js';
import { spellerOf, type Speller } from './spell/speller.js';
import { wrongWords, type WrongWord } from './spell/words.js';
import { fixOf } from './style/spot.js';
import { englishOf } from './style/plan.js';
import { textsBesideCards, textsOfCard, type RunningText } from './style/texts.js';
import type { Subject } from './subject.js';

/** A word that neither the dictionary nor the property knows. */
export const spelling: Rule = {
  id: 'spelling',
  about: 'language',
  severity: 'error',
  why: 'A misspelt word is printed thousands of times, and children learn from what they read.',
  look: findWrongWords,
  examples: {
    passes: [
      {
        says: 'contractions, possessives, hyphens and accents',
        files: edited('one/cards/base/a2.md', [
          'A lamp that nobody lit is burning.',
          'The keepers’ lamp won’t go out at eight o’clock: ’tis half-lit, in a café, on the 21st.',
        ]),
      },
      {
        says: 'a word of this world, in its plural',
        files: {
          ...edited('one/cards/base/a2.md', ['A lamp', 'A lamp of ferrywrights']),
          'names.yaml': 'names: []\nwords: [ferrywright]\n',
        },
      },
    ],
    fails: [
      {
        says: 'a wrong word',
        files: edited('one/cards/base/a2.md', ['burning', 'burnning']),
        gives: {
          at: 'one/cards/base/a2.md:7:27',
          covers: 'burnning',
          message: '`burnning` is in no dictionary and is no word of this property',
          found: 'burnning',
          expected: 'burning; if it is right, name it in `words` of names.yaml',
          fix: 'burning',
        },
      },
    ],
  },
};

/** What a run has worked out, for cards that have not changed since. */
interface Known {
  readonly lexicon: Lexicon;
  readonly speller: Speller;
  /** For titles of plans, which would explain themselves. */
  readonly strict: Speller;
  readonly found: WeakMap<Card, readonly Found[]>;
}

interface Found {
  readonly text: RunningText;
  readonly wrong: WrongWord;
}

const kept = new WeakMap<Dictionary, Known>();

function* findWrongWords(subject: Subject): Generator<Remark> {
  const lexicon = lexiconOf(subject);
  const advice = new Advice(subject, lexicon);
  for (const card of subject.cards) {
    const known = knownFor(englishOf(subject, card.set), lexicon, subject);
    let found = known.found.get(card);
    if (!found) {
      found = textsOfCard(card).flatMap((text) => wrongIn(text, known.speller, lexicon));
      known.found.set(card, found);
    }
    for (const each of found) yield remarkOn(each, known.speller, advice);
  }
  for (const text of textsBesideCards(subject)) {
    const known = knownFor(englishOf(subject, text.owner.set), lexicon, subject);
    const found =
      text.manner === 'heading' ? slipsIn(text, known) : wrongIn(text, known.speller, lexicon);
    for (const each of found) yield remarkOn(each, known.speller, advice);
  }
}

function knownFor(english: English, lexicon: Lexicon, { dictionaries }: Subject): Known {
  const dictionary = dictionaries(english);
  const before = kept.get(dictionary);
  if (before?.lexicon === lexicon) return before;
  const known = {
    lexicon,
    speller: spellerOf(english, dictionary, lexicon.all),
    strict: spellerOf(english, dictionary, lexicon.withoutTitles),
    found: new WeakMap<Card, readonly Found[]>(),
  };
  kept.set(dictionary, known);
  return known;
}

/** The least letters of a word of a title that is taken for a slip and not for an invention. */
const SLIP_LETTERS = 5;

/** A title may be an invention, and explains itself, unless it is one slip away from a known word. */
function slipsIn(text: RunningText, { strict, lexicon }: Known): Found[] {
  return wrongIn(text, strict, lexicon).filter(({ wrong: { word, right } }) => {
    if (right !== undefined) return true;
    const small = smallLetters(word);
    return small.length >= SLIP_LETTERS && oneSlipAway(small, strict.knows).length > 0;
  });
}

function wrongIn(text: RunningText, speller: Speller, lexicon: Lexicon): Found[] {
  const isNearName = (word: string, next: string): boolean =>
    nearName(word, next, lexicon.names, speller);
  const ask = { knows: speller.knows, isNearName };
  return wrongWords(text.text, text.manner, ask).map((wrong) => ({ text, wrong }));
}

/** Whether a word with a capital is a slip of a name's word: of one that is no common word besides. */
function nearName(
  word: string,
  next: string,
  names: Lexicon['names'],
  { inDictionary }: Speller,
): boolean {
  const small = smallLetters(word).replace(/'s$/, '');
  const following = smallLetters(next).replace(/'s$/, '');
  const most = small.length < 4 ? 0 : small.length < 8 ? 1 : 2;
  return names.some((words) =>
    words.some((part, at) => {
      if (Math.abs(part.length - small.length) > most) return false;
      const isOwn = !inDictionary(part) || (following !== '' && words[at + 1] === following);
      return isOwn && editDistance(part, small) <= most;
    }),
  );
}

const SAY: Readonly<Record<English, string>> = { american: 'American', british: 'British' };

function remarkOn({ text, wrong }: Found, speller: Speller, advice: Advice): Remark {
  const { word, from, to, right } = wrong;
  const spot = text.spotOf(from, to);
  const place = { ...text.owner, spot, found: word };
  if (right !== undefined) {
    return {
      ...place,
      message: `\`${word}\` has the wrong ending`,
      expected: right,
      ...fixOf(spot, word, right),
    };
  }
  const near = advice.for(word, speller);
  const foreign = advice.foreign(word, speller.english);
  const name = 'if it is right, name it in `words` of names.yaml';
  const [first] = near;
  return {
    ...place,
    message: foreign
      ? `\`${word}\` is ${SAY[foreign]} spelling, and this set is in ${SAY[speller.english]} English`
      : `\`${word}\` is in no dictionary and is no word of this property`,
    expected: first === undefined ? name : `${anyOf(near)}; ${name}`,
    ...(first === undefined ? {} : fixOf(spot, word, first)),
  };
}

function anyOf(words: readonly string[]): string {
  return words.join(', ').replace(/, ([^,]*)$/, ' or $1');
}
