import { join, opensLater, sayHold, spotOf, type Hold } from '../model/index.js';
import type { NamesFile } from '../../schema/index.js';
import { NameIndex, foldedWords, inflected, sentences, type NameMatch } from '../text/index.js';
import { castForms, type Bearer } from './cast.js';
import { knownHold } from './known-hold.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { toldTexts, type ToldText } from './told-texts.js';

const NAMES = `names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys], level: open }
  - { name: Sister Quillon Ash, kind: character, level: open }
secrets:
  - { id: kin, level: later, says: Odalys has a brother, allOf: [[Odalys], [brother, sister]], within: sentence }
  - { id: fall, level: later, says: The lake falls, allOf: [[lake], [fall]], within: card }
`;

/** The sample with two secrets, and these words on a card that is open. */
function told(words: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['A lamp that nobody lit is burning.', words]),
  };
}

/** A text that tells a secret by a combination of words, each of them innocent. */
export const secret: Rule = {
  id: 'secret',
  about: 'spoilers',
  severity: 'error',
  why: 'A reader puts two and two together, and nobody wrote a held name.',
  acceptable: false,
  look: toldSecrets,
  examples: {
    passes: [
      {
        says: 'the words in two sentences',
        files: told('A lamp for Odalys. Somebody has a brother on the lake.'),
      },
      {
        says: 'a word that is part of a name',
        files: told('A lamp that Odalys lit for Sister Quillon Ash.'),
      },
      {
        says: 'a word inside a span that is held as long',
        files: told('A lamp that Odalys lit [for a brother](held:later).'),
      },
    ],
    fails: [
      {
        says: 'the words in one sentence, inflected',
        files: told('A lamp. It is the lamp that Captain Odalys’s brothers lit.'),
        gives: {
          at: 'one/cards/base/a2.md:7:37',
          covers: 'Odalys’s brothers',
          message: 'the bio tells the secret `kin`, which opens later than it',
          found: 'Odalys’s … brothers: later',
          expected: 'not all of it in one sentence before later',
          related: ['names.yaml:5:11 the secret: Odalys has a brother'],
        },
      },
      {
        says: 'the subject of the card is in each of its sentences',
        files: {
          'names.yaml': NAMES,
          ...edited(
            'one/cards/base/a2.md',
            ['The Lamp', 'Odalys'],
            ['A lamp that nobody lit is burning.', 'A brother lit the lamp.'],
          ),
        },
        gives: {
          at: 'one/cards/base/a2.md:7:3',
          covers: 'brother',
          message: 'the bio tells the secret `kin`, which opens later than it',
          found: 'the card’s own name … brother: later',
          expected: 'not all of it in one sentence before later',
          related: ['names.yaml:5:11 the secret: Odalys has a brother'],
        },
      },
      {
        says: 'the words over a whole card',
        files: told('The lamp is lit. On the lake it is quiet.\n\nSoon it falls.'),
        gives: {
          at: 'one/cards/base/a2.md:7:25',
          covers: 'lake it is quiet.\n\nSoon it falls',
          message: 'the bio tells the secret `fall`, which opens later than it',
          found: 'lake … falls: later',
          expected: 'not all of it on one card before later',
          related: ['names.yaml:6:11 the secret: The lake falls'],
        },
      },
    ],
  },
};

const NOTHING: Hold = { level: 0, embargoes: [] };

type Secret = NonNullable<NamesFile['secrets']>[number];

/** A part of a secret that a text has: a name of the cast, or a word. */
interface Piece {
  readonly bearers: readonly string[];
  readonly word: string;
  readonly from: number;
  readonly to: number;
  readonly in: ToldText;
  readonly hold: Hold;
}

function* toldSecrets(subject: Subject): Generator<Remark> {
  const secrets = subject.content.names?.value.secrets ?? [];
  if (secrets.length === 0) return;
  const index = new NameIndex(castForms(subject));
  const asked = secrets.map((each, at) => ({
    secret: each,
    at,
    groups: each.allOf.map((group) => group.map((entry) => entryOf(entry, index))),
    hold: knownHold(subject.schedule, each),
  }));
  const entries = asked.flatMap(({ groups }) => groups.flat());
  const telling: Telling = {
    index,
    words: new Set(entries.flatMap(({ forms }) => forms)),
    bearers: new Set(entries.flatMap(({ bearers }) => bearers)),
  };
  for (const texts of byCard(toldTexts(subject))) {
    const pieces = new Map(texts.map((text) => [text, piecesOf(text, telling)]));
    const all = [...pieces.values()].flat();
    const near = asked.filter(({ groups }) => hasAll(groups, all));
    if (near.length === 0) continue;
    const subjects = texts.flatMap((text) =>
      text.what === '`name`' ? (pieces.get(text) ?? []) : [],
    );
    const sets = texts.map((text) => sentencePieces(text, pieces.get(text) ?? [], subjects));
    for (const each of near) {
      const { hold } = each;
      if (!hold) continue;
      const parts = each.secret.within === 'card' ? [sets.flat(2)] : sets.flat();
      const whole = parts.map((pieces) => combination(each.groups, pieces, hold));
      const found = whole.find((pieces) => pieces !== null);
      if (found) yield remarkOn(found, each.secret, each.at, subject);
    }
  }
}

/** What an entry of a secret stands for: the bearer of a name, or a word in its forms. */
interface Entry {
  readonly bearers: readonly string[];
  readonly forms: readonly string[];
}

function entryOf(entry: string, index: NameIndex<Bearer>): Entry {
  const [match] = index.find(entry);
  const words = foldedWords(entry).map(({ folded }) => folded);
  const whole = match && match.from === 0 && match.to === entry.length && !match.slip;
  if (whole) return { bearers: match.of.map(({ name }) => name), forms: [] };
  return { bearers: [], forms: inflected(words.join(' ')) };
}

/** The texts of a card together; every other text alone. */
function* byCard(texts: Iterable<ToldText>): Generator<readonly ToldText[]> {
  let open: ToldText[] = [];
  for (const text of texts) {
    const same = open[0]?.owner;
    if (same?.card !== undefined && same.card === text.owner.card && same.set === text.owner.set) {
      open.push(text);
      continue;
    }
    if (open.length > 0) yield open;
    open = [text];
  }
  if (open.length > 0) yield open;
}

/** The pieces of each sentence of a text; the subject of the card is in every one of its bio. */
function sentencePieces(
  text: ToldText,
  pieces: readonly Piece[],
  subjects: readonly Piece[],
): readonly (readonly Piece[])[] {
  return sentences(text.text).map(({ from, to }) => {
    const within = pieces.filter((piece) => piece.from < to && piece.to > from);
    return text.what === '`name`' ? within : [...within, ...subjects];
  });
}

/** What a text must have for any secret to be told: the rest of its words is passed over. */
interface Telling {
  readonly index: NameIndex<Bearer>;
  readonly words: ReadonlySet<string>;
  readonly bearers: ReadonlySet<string>;
}

/** Names of the cast that a secret speaks of, and words of a secret that are in no name. */
function piecesOf(text: ToldText, { index, words, bearers }: Telling): readonly Piece[] {
  const read = foldedWords(text.text);
  const names = index.findIn(read).filter(({ slip }) => !slip);
  const piece = (from: number, to: number, word: string, bearers: readonly string[]): Piece => ({
    bearers,
    word,
    from,
    to,
    in: text,
    hold: text.holdOf(from, to),
  });
  return [
    ...names
      .filter(({ of }) => of.some(({ name }) => bearers.has(name)))
      .map(({ from, to, of }) =>
        piece(
          from,
          to,
          '',
          of.map(({ name }) => name),
        ),
      ),
    ...read
      .filter(({ folded }) => words.has(folded))
      .filter(({ from, to }) => !names.some((name) => covers(name, from, to)))
      .map(({ from, to, folded }) => piece(from, to, folded, [])),
  ];
}

function covers(name: NameMatch<Bearer>, from: number, to: number): boolean {
  return name.from < to && name.to > from;
}

/** A piece for each group, so chosen that all of them are told before the secret may be; else null. */
function combination(
  groups: readonly (readonly Entry[])[],
  pieces: readonly Piece[],
  hold: Hold,
  around = NOTHING,
): readonly Piece[] | null {
  const [group, ...others] = groups;
  if (!group) return [];
  for (const piece of pieces.filter((each) => group.some((entry) => fits(entry, each)))) {
    const own = join(around, piece.hold);
    const rest = opensLater(hold, own) ? combination(others, pieces, hold, own) : null;
    if (rest) return [piece, ...rest];
  }
  return null;
}

/** Whether there is something for every group at all. */
function hasAll(groups: readonly (readonly Entry[])[], pieces: readonly Piece[]): boolean {
  return groups.every((group) => pieces.some((piece) => group.some((entry) => fits(entry, piece))));
}

function fits({ bearers, forms }: Entry, piece: Piece): boolean {
  return forms.includes(piece.word) || bearers.some((name) => piece.bearers.includes(name));
}

function remarkOn(
  pieces: readonly Piece[],
  { id, within, says, ...stated }: Secret,
  at: number,
  { schedule, content }: Subject,
): Remark {
  const own = pieces.filter((piece) => piece.in.what !== '`name`');
  const shown = (own.length > 0 ? own : [...pieces]).sort((a, b) => spotAt(a) - spotAt(b));
  const first = shown[0];
  const last = shown.at(-1);
  if (!first || !last) throw new RangeError('a secret that nothing tells');
  const where = within === 'card' ? 'on one card' : 'in one sentence';
  const opens = sayHold(schedule, knownHold(schedule, stated) ?? NOTHING);
  const named = own.length < pieces.length && own.length > 0 ? ['the card’s own name'] : [];
  const words = shown.map((piece) => piece.in.text.slice(piece.from, piece.to));
  const source = content.names?.source;
  const from = first.in.spotOf(first.from, first.to);
  const to = last.in.spotOf(last.from, last.to);
  return {
    ...first.in.owner,
    spot: from.source === to.source ? { ...from, to: Math.max(from.to, to.to) } : from,
    message: `${first.in.what} tells the secret \`${id}\`, which opens later than it`,
    found: `${[...named, ...words].join(' … ')}: ${opens}`,
    expected: `not all of it ${where} before ${opens}`,
    related: source
      ? [{ message: `the secret: ${says}`, spot: spotOf(source, ['secrets', at, 'id']) }]
      : [],
  };
}

function spotAt(piece: Piece): number {
  return piece.in.spotOf(piece.from, piece.to).from;
}
