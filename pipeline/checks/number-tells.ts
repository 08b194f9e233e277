import { opensLater, spotOf, type Hold, type Spot } from '../model/index.js';
import { foldedWords } from '../text/index.js';
import { castNames, type Bearer } from './cast.js';
import { knownHold, traceHold } from './known-hold.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject, SubsetView } from './subject.js';
import { heldBy, namePlaces, type NamePlaces } from './told/early.js';

const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, level: later }
  - { name: Mill Lane, kind: place, level: last }
`;

function prefixed(prefix: string, title = 'Extra'): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited(
      'one/plan.yaml',
      ['prefix: X-', `prefix: ${prefix}-`],
      ['title: Extra', `title: ${title}`],
    ),
    ...edited('one/cards/extra/b1.md', ['number: X-1', `number: ${prefix}-1`]),
  };
}

/** A number or a code that is made of a held name or its initials. */
export const numberTells: Rule = {
  id: 'number-tells',
  about: 'numbers',
  severity: 'error',
  why: 'A number shows long before its card, and collectors read initials as others read names.',
  look: tellingNumbers,
  examples: {
    passes: [
      { says: 'a prefix that stands for its subset', files: prefixed('ML', 'Mixed Lamps') },
      { says: 'letters that stand for nobody', files: prefixed('YS') },
    ],
    fails: [
      {
        says: 'a prefix of initials',
        files: prefixed('YM'),
        gives: {
          at: 'one/plan.yaml:8:67',
          covers: 'YM-',
          message: 'these numbers are made of a name that opens later than they show',
          found: 'YM: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'numbers that stand for nobody who is held',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'a code that spells a name, of a card whose placeholder shows',
        files: {
          'names.yaml': NAMES,
          ...edited('one/plan.yaml', [
            'numbers: { prefix: X-, from: 1, to: 1 }',
            'numbers: { codes: [X-MARRACK] }',
          ]),
          ...edited(
            'one/cards/extra/b1.md',
            ['number: X-1', 'number: X-MARRACK'],
            ['spoiler: open', 'spoiler: later'],
          ),
        },
        gives: {
          at: 'one/cards/extra/b1.md:2:9',
          covers: 'X-MARRACK',
          message: 'this number is made of a name that opens later than it shows',
          found: 'MARRACK: Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'numbers that stand for nobody who is held',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* tellingNumbers(subject: Subject): Generator<Remark> {
  const meanings = meaningsOf(subject);
  if (meanings.size === 0) return;
  const places = namePlaces(subject);
  for (const view of subject.subsets) {
    for (const shown of shownNumbers(view, subject)) {
      const told = toldBy(shown, view, meanings);
      if (told) yield remarkOn(told, shown, places, subject);
    }
  }
}

/** A number, or what several begin with, and from when it shows. */
interface Shown {
  readonly what: string;
  readonly number: string;
  readonly hold: Hold;
  readonly spot: () => Spot;
  readonly owner: Pick<Remark, 'set' | 'card'>;
}

/** The prefix of a range, once for all its numbers; every other number at its card, else in the plan. */
function* shownNumbers(view: SubsetView, { schedule, holds }: Subject): Generator<Shown> {
  const { set, plan, at, cards } = view;
  const { source, value } = set.plan;
  const { numbers } = plan;
  const whole = knownHold(schedule, value, plan);
  const inPlan = (what: string, number: string, ...path: (string | number)[]): Shown[] => {
    const spot = (): Spot => spotOf(source, ['subsets', at, 'numbers', ...path]);
    const hold = whole && traceHold(schedule, whole);
    return hold ? [{ what, number, hold, spot, owner: { set: set.id } }] : [];
  };
  const prefix = numbers !== 'none' && 'from' in numbers ? (numbers.prefix ?? '') : '';
  if (prefix !== '') yield* inPlan('these numbers are', prefix, 'prefix');
  const borne = new Set<string>();
  for (const card of cards) {
    const { number } = card.front;
    const hold = holds.get(card);
    borne.add(number);
    if (!hold || number === 'none' || !LETTERS.test(number)) continue;
    if (prefix !== '' && number.startsWith(prefix)) continue;
    const spot = (): Spot => spotOf(card.source, ['number']);
    const trace = traceHold(schedule, hold);
    yield { what: 'this number is', number, hold: trace, spot, owner: ofCard(card) };
  }
  if (numbers === 'none' || !('codes' in numbers)) return;
  for (const [index, code] of numbers.codes.entries()) {
    if (!borne.has(code)) yield* inPlan('this number is', code, 'codes', index);
  }
}

const LETTERS = /\p{L}{2}|\p{L}\P{L}\p{L}/u;

/** Who may be meant by some letters. */
type Meanings = ReadonlyMap<string, readonly Bearer[]>;

interface Told {
  readonly letters: string;
  readonly bearer: Bearer;
  readonly hold: Hold;
}

function toldBy({ number, hold }: Shown, { plan }: SubsetView, meanings: Meanings): Told | null {
  for (const letters of lettersIn(number)) {
    const meant = meanings.get(asRead(letters)) ?? [];
    const early = meant.filter((each) => each.hold !== null && opensLater(each.hold, hold));
    const [bearer] = early;
    if (!bearer?.hold || early.length < meant.length || standsFor(letters, plan.title)) continue;
    return { letters, bearer, hold: bearer.hold };
  }
  return null;
}

/** The letters of a number that stand together, single ones too if only signs part them. */
function lettersIn(number: string): readonly string[] {
  const together = number.match(/\p{L}{2,}/gu) ?? [];
  const apart = number.match(/(?<!\p{L})\p{L}(?:[^\p{L}\p{N}]\p{L})+(?!\p{L})/gu) ?? [];
  return [...together, ...apart.map((each) => each.replace(/\P{L}/gu, ''))];
}

/** Whether letters are the beginning or the initials of a title. */
function standsFor(letters: string, title: string): boolean {
  const words = foldedWords(title).map(({ folded }) => folded);
  const own = asRead(letters);
  return words.join('').startsWith(own) || initialsOf(words) === own;
}

function initialsOf(words: readonly string[]): string {
  return words.map((word) => word.charAt(0)).join('');
}

/** The least letters of one word of a name that are taken for the name. */
const WORD_LETTERS = 4;

/** Initials of the names of the cast, their words and their letters run together, and who is meant. */
function meaningsOf(subject: Subject): Meanings {
  const meanings = new Map<string, Bearer[]>();
  for (const { of, forms } of castNames(subject)) {
    for (const { form, hold } of forms) {
      for (const letters of lettersFor(form)) {
        meanings.set(letters, [...(meanings.get(letters) ?? []), { ...of, hold }]);
      }
    }
  }
  return meanings;
}

function lettersFor(form: string): ReadonlySet<string> {
  const words = foldedWords(form.replace(/^(?:the|a|an)\s+/iu, ''));
  const typed = words.map((word) => word.typed.replace(/'/g, ''));
  const long = words.filter(({ typed: word, cased }) => {
    return word.length >= WORD_LETTERS && /^\p{Lu}/u.test(cased);
  });
  const all = [initialsOf(typed), typed.join(''), ...long.map((word) => word.typed)];
  return new Set(all.filter((letters) => letters.length > 1).map(asRead));
}

/** Letters as a reader takes them. */
function asRead(letters: string): string {
  return foldedWords(letters)
    .map(({ folded }) => folded)
    .join('');
}

function remarkOn(
  { letters, bearer, hold }: Told,
  shown: Shown,
  places: NamePlaces,
  subject: Subject,
): Remark {
  const they = shown.what.startsWith('these') ? 'they show' : 'it shows';
  return {
    ...shown.owner,
    spot: shown.spot(),
    message: `${shown.what} made of a name that opens later than ${they}`,
    found: `${letters}: ${bearer.name} is held by ${heldBy(hold, shown.hold, subject)}`,
    expected: 'numbers that stand for nobody who is held',
    related: places(bearer),
  };
}
