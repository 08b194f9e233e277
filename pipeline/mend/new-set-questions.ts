import { answerOf, answersOf, type Answers, type Ground, type Key } from './new-set-answers.js';
import { sinceOf } from './new-set-dates.js';
import { levelIdsOf } from './new-set-files.js';
import { freeId, idFrom, titleFrom } from './new-set-ids.js';
import { levelsOf } from './new-set-levels.js';
import { subsetsOf } from './new-set-subsets.js';

/** A question to whoever starts a set, and the option that answers it. */
export interface Question {
  readonly key: Key;
  readonly ask: string;
  /** What the answer is for, and how it is written. */
  readonly help: string;
  /** Where it is asked: of a new property alone, or of every set. */
  readonly of: 'property' | 'set';
  /** Whether there is no going on without an answer. */
  readonly needed?: true;
  /** The answer that stands if none is given; null for none. */
  readonly usual: (answers: Answers, ground: Ground) => string | null;
  /** What an answer is made of, asked one by one, and whether there may be another. */
  readonly parts?: readonly Part[];
}

/** A part of an answer, such as the numbers of a subset. */
export interface Part {
  readonly key: string;
  readonly ask: string;
  readonly help: string;
  readonly usual: (said: ReadonlyMap<string, string>, at: number) => string | null;
}

const NONE = (): null => null;

const LEVEL_PARTS: readonly Part[] = [
  {
    key: 'id',
    ask: 'Level',
    help: 'From least to most revealing: an id such as open, then premiere, then finale. Where nothing stands in brackets, an empty answer ends the list.',
    usual: (_said, at) => ['open', 'story'][at] ?? null,
  },
  {
    key: 'label',
    ask: '  what it is called',
    help: 'Readers of the site may see it, before it opens too: it tells nothing that is held.',
    usual: (said, at) =>
      at === 0
        ? 'Known beforehand'
        : said.get('id') === 'story'
          ? 'Not told yet'
          : titleFrom(said.get('id') ?? ''),
  },
  {
    key: 'lift',
    ask: '  when it opens',
    help: 'A day or a day and a time, such as 2027-04-16 20:00, or unset while nobody knows. Until then it is held.',
    usual: (_said, at) => (at === 0 ? null : 'unset'),
  },
];

const SUBSET_PARTS: readonly Part[] = [
  {
    key: 'title',
    ask: 'Subset',
    help: 'The title of a group of cards, such as Crew and Craft. Where nothing stands in brackets, an empty answer ends the list.',
    usual: (_said, at) => (at === 0 ? 'Base' : null),
  },
  {
    key: 'id',
    ask: '  its id',
    help: 'The folder of its cards: small letters, digits and hyphens. It never changes, and tells nothing that is held.',
    usual: (said, at) => idFrom(said.get('title') ?? '') || `subset-${String(at + 1)}`,
  },
  {
    key: 'numbers',
    ask: '  its numbers',
    help: 'As they are printed: 1-48, LC-1-LC-8, single codes such as SG-1,SG-2, or none.',
    usual: NONE,
  },
  {
    key: 'group',
    ask: '  the group it counts in',
    help: 'Totals are of groups: base, inserts, autographs …',
    usual: (said) => (/^\d+([-–]\d+)?$/.test(said.get('numbers') ?? '') ? 'base' : 'inserts'),
  },
  {
    key: 'bio',
    ask: '  words of a bio',
    help: 'Fewest and most words, such as 35-60, or none for cards without a bio.',
    usual: () => '35-60',
  },
  {
    key: 'facts',
    ask: '  facts on each card',
    help: 'Names of facts parted by commas, such as Berth, Height. Empty for none.',
    usual: NONE,
  },
];

/** Everything that is asked, in order: later answers rest on earlier ones. */
export const QUESTIONS: readonly Question[] = [
  {
    key: 'property-title',
    of: 'property',
    ask: 'Title of the licensed work',
    help: 'As the licensor writes it. All its sets share levels, names and people.',
    needed: true,
    usual: NONE,
  },
  {
    key: 'property-id',
    of: 'property',
    ask: 'Its id',
    help: 'Small letters, digits and hyphens. It stands in public data.',
    usual: (answers) => idFrom(answerOf(answers, 'property-title') ?? '') || 'property',
  },
  {
    key: 'zone',
    of: 'property',
    ask: 'Time zone',
    help: 'A zone of the IANA list, such as Europe/London. Days that you give are days there.',
    needed: true,
    usual: NONE,
  },
  {
    key: 'levels',
    of: 'property',
    ask: 'Levels, from least to most revealing',
    help: 'A level is a step of how much of the story is told. What is of a level stays held until that level opens.',
    usual: () => 'open, story',
    parts: LEVEL_PARTS,
  },
  {
    key: 'licensor',
    of: 'property',
    ask: 'Who approves for the licensor',
    help: 'A name; none if nobody outside approves anything. Who must approve what is in the contract: follow it, and ask counsel where it is not clear. Without an answer everything waits for a licensor.',
    usual: NONE,
  },
  {
    key: 'legal',
    of: 'property',
    ask: 'Legal line',
    help: 'Letter by letter as the contract gives it, such as © 2027 and the name of its owner. Never guess at it: follow the contract, and ask counsel. Empty if it is not settled yet.',
    usual: NONE,
  },
  {
    key: 'editor',
    of: 'property',
    ask: 'Who edits the set',
    help: 'A name. It stays in the house.',
    usual: NONE,
  },
  {
    key: 'writer',
    of: 'property',
    ask: 'Who writes the copy',
    help: 'A name. It stays in the house. Others can be added to people.yaml.',
    usual: NONE,
  },
  {
    key: 'spoiler',
    of: 'set',
    ask: 'Level of the set itself',
    help: 'Until that level opens nobody outside learns that there is such a set. A set that may be named is of the first level.',
    usual: (answers, ground) => levelIdsOf(answers, ground)[0] ?? null,
  },
  {
    key: 'title',
    of: 'set',
    ask: 'Title of the set',
    help: 'As it is sold, such as The Ferrywrights: High Water.',
    needed: true,
    usual: NONE,
  },
  {
    key: 'id',
    of: 'set',
    ask: 'Its id',
    help: 'The folder of the set, and a part of public addresses. It never changes, and tells nothing that is held.',
    usual: (answers, { taken }) =>
      freeId(idFrom(answerOf(answers, 'title') ?? '') || 'set-1', taken),
  },
  {
    key: 'short',
    of: 'set',
    ask: 'Short title',
    help: 'For tables and tabs, such as High Water. Empty if the title is short enough.',
    usual: NONE,
  },
  {
    key: 'street',
    of: 'set',
    ask: 'Street date',
    help: 'When it may be sold: a day or a day and a time, such as 2027-04-16 09:00; for several regions uk=2027-04-16;au=2027-04-17. Empty if nobody knows yet.',
    usual: NONE,
  },
  {
    key: 'since',
    of: 'property',
    ask: 'From when anything of it may be public',
    help: 'Nothing is published before. A day or a day and a time; if it is not said, the street date. What may be announced, and when, is for the contract to say.',
    needed: true,
    usual: sinceOf,
  },
  {
    key: 'subset',
    of: 'set',
    ask: 'Subsets',
    help: 'Groups of cards, each a folder: id=crew;title=Crew;numbers=1-48;bio=35-60.',
    needed: true,
    usual: NONE,
    parts: SUBSET_PARTS,
  },
  {
    key: 'stage',
    of: 'set',
    ask: 'Stage',
    help: 'planning, writing or locked. While a set is planned, cards that are not there yet are a warning.',
    usual: () => 'planning',
  },
  {
    key: 'stubs',
    of: 'set',
    ask: 'A file for each card now',
    help: 'yes makes a stub for each number, to be named and written; no leaves that to `holdback new cards`.',
    usual: () => 'no',
  },
];

/** The questions of a place: a set beside others is not asked about the property. */
export function questionsFor({ home }: Ground): readonly Question[] {
  return QUESTIONS.filter(({ of }) => home === null || of === 'set');
}

/** What cannot be understood of an answer before `check` is asked. */
export function unreadIn(key: Key, answers: Answers, ground: Ground): readonly string[] {
  const text = answerOf(answers, key) ?? '';
  switch (key) {
    case 'levels':
      return levelsOf(answers, answerOf(answers, 'zone') ?? 'UTC').why;
    case 'subset':
      return answersOf(answers, 'subset').length === 0 ? [] : subsetsOf(answers, ground).why;
    case 'id':
      return takenId(text, ground);
    case 'stubs':
      return isYes(text) === null ? [`${text}: it is yes or no`] : [];
    default:
      return [];
  }
}

/** Folders of a property that are no sets. */
const OWN_FOLDERS: readonly string[] = ['backs', 'review', 'fonts'];

function takenId(id: string, { taken }: Ground): readonly string[] {
  if (OWN_FOLDERS.includes(id)) return [`the folder \`${id}\` is not for a set: give another id`];
  return taken.has(id) ? [`there is a folder \`${id}\` already: give another id`] : [];
}

/** Yes or no; null for anything else. */
export function isYes(text: string): boolean | null {
  const word = text.trim().toLowerCase();
  if (word === 'yes' || word === 'y') return true;
  return word === 'no' || word === 'n' || word === '' ? false : null;
}
