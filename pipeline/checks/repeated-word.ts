import { runningWords, type RunningWord } from '../text/index.js';
import { castNames } from './cast.js';
import type { Card } from '../model/index.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { smallLetters } from './spell/lexicon.js';
import { fixOf } from './style/spot.js';
import { textsBesideCards, textsOfCard, type RunningText } from './style/texts.js';
import type { Subject } from './subject.js';

/** A word that stands twice where nobody would say it twice. */
export const repeatedWord: Rule = {
  id: 'repeated-word',
  about: 'language',
  severity: 'error',
  why: 'An eye skips the second "the", and a child who reads aloud does not.',
  offends: (text) => repeats(text, NONE).length > 0,
  look: findRepeats,
  examples: {
    passes: [
      {
        says: 'words that may stand twice, and a stop between two',
        files: edited('one/cards/base/a2.md', [
          'A lamp that nobody lit is burning.',
          'She had had a lamp, that that wind put out. Out it went, bye bye; gone, gone.',
        ]),
      },
    ],
    fails: [
      {
        says: 'twice in a line',
        files: edited('one/cards/base/a1.md', ['to the knee', 'to the the knee']),
        gives: {
          at: 'one/cards/base/a1.md:7:29',
          covers: 'the the',
          message: '`the` stands twice',
          found: 'the the',
          expected: 'the',
          fix: 'the',
          certain: true,
        },
      },
      {
        says: 'once at the end of a line and once at the beginning of the next',
        files: edited('one/cards/base/a1.md', ['to the knee', 'to the\nthe knee']),
        gives: {
          at: 'one/cards/base/a1.md:7:29',
          covers: 'the\nthe',
          message: '`the` stands twice',
          found: 'the the',
          expected: 'the',
          fix: 'the',
          certain: true,
        },
      },
    ],
  },
};

/** What may stand twice: verbs and pronouns of two clauses, and what is said twice for its sound. */
const TWICE = new Set(
  'had that her bye no yes ha ho he hee hey hi oh ah aha ooh aye very really far long many much more too again round now there hear well tut knock tick tock ding dong bang boom clang clank drip drop plop plink hush please night nap tap rap pip chop chug choo woof meow miaow moo baa quack hoot tweet cheep chirp buzz zoom whoosh swish splash creak crunch rattle never ever poor dear old big little wee tiny good bad row run go come wait stop look half'.split(
    ' ',
  ),
);
/** What may be right twice, though seldom: the mistake is told, and a person looks. */
const DOUBTFUL = new Set(
  'in it is was you do did what who his this to be out for as so by on up down over'.split(' '),
);
/** Numbers as they are called out, or as they are a pair of two things. */
const NUMBER =
  /^(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty|thirty|forty|fifty|sixty|hundred)s?$/;
/** Words that are no part of a name by themselves. */
const SMALL_WORDS = new Set(
  'the a an and of in on at to for with from by or but as is was'.split(' '),
);

interface Repeat {
  readonly from: number;
  readonly to: number;
  readonly first: string;
  readonly isDoubtful: boolean;
}

const NONE: ReadonlySet<string> = new Set();

function* findRepeats(subject: Subject): Generator<Remark> {
  const named = doubledNames(subject);
  for (const card of subject.cards) {
    for (const each of repeatsOfCard(card))
      if (!named.has(each.word)) yield remarkOn(each.text, each.repeat);
  }
  for (const text of textsBesideCards(subject)) {
    for (const repeat of repeats(text.text, named)) yield remarkOn(text, repeat);
  }
}

interface RepeatOfCard {
  readonly text: RunningText;
  readonly repeat: Repeat;
  readonly word: string;
}

const known = new WeakMap<Card, readonly RepeatOfCard[]>();

/** What stands twice on a card; whether it is a name is asked anew each time. */
function repeatsOfCard(card: Card): readonly RepeatOfCard[] {
  const before = known.get(card);
  if (before) return before;
  const found = textsOfCard(card).flatMap((text) =>
    repeats(text.text, NONE).map((repeat) => ({ text, repeat, word: smallLetters(repeat.first) })),
  );
  known.set(card, found);
  return found;
}

/** Names and words of the property that have a word twice: "Bora Bora". */
function doubledNames(subject: Subject): ReadonlySet<string> {
  const names = [...castNames(subject)].flatMap(({ forms }) => forms.map(({ form }) => form));
  return new Set(
    [...names, ...(subject.content.names?.value.words ?? [])].flatMap((text) =>
      runningWords(text)
        .map(({ text: word }) => smallLetters(word))
        .filter((word, at, words) => at > 0 && word === words[at - 1]),
    ),
  );
}

function repeats(text: string, named: ReadonlySet<string>): readonly Repeat[] {
  const words = runningWords(text);
  const found: Repeat[] = [];
  for (let at = 1; at < words.length; at++) {
    const [first, second] = [words[at - 1], words[at]];
    if (!first || !second || !isRepeat(first, second, text, named)) continue;
    let last = second;
    for (let next = words[at + 1]; next && isRepeat(last, next, text, named); at++) {
      last = next;
      next = words[at + 2];
    }
    const isNew = last.text !== first.text && /^\p{Lu}/u.test(last.text);
    const isDoubtful = DOUBTFUL.has(first.text.toLowerCase()) || isNew || first.text === 'I';
    found.push({ from: first.from, to: last.to, first: first.text, isDoubtful });
  }
  return found;
}

function isRepeat(
  first: RunningWord,
  second: RunningWord,
  text: string,
  named: ReadonlySet<string>,
): boolean {
  if (first.text.length !== second.text.length) return false;
  const small = smallLetters(second.text);
  if (small !== smallLetters(first.text) || !/^\s+$/u.test(second.gap)) return false;
  if (first.text === 'I' && second.text === 'I') return true;
  if (!/^\p{L}/u.test(small) || /\p{N}/u.test(small)) return false;
  if (TWICE.has(small) || NUMBER.test(small) || named.has(small)) return false;
  const isName = /^\p{Lu}/u.test(first.text) && /^\p{Lu}/u.test(second.text);
  if (isName && !SMALL_WORDS.has(small)) return false;
  // A word that a hyphen or an apostrophe joins to another is another word.
  return !/[-‑]/.test(text.charAt(first.from - 1) + text.charAt(second.to));
}

function remarkOn(text: RunningText, { from, to, first, isDoubtful }: Repeat): Remark {
  const words = text.text.slice(from, to);
  const spot = text.spotOf(from, to);
  const fix = fixOf(spot, words, first);
  const times = words.split(/\s+/u).length === 2 ? 'twice' : 'several times';
  return {
    ...text.owner,
    spot,
    message: `\`${first}\` stands ${times}`,
    found: words,
    expected: first,
    ...fix,
    ...(fix.fix === undefined || isDoubtful ? {} : { certain: true }),
  };
}
