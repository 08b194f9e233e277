import { OPEN, sayHold, spotOf } from '../model/index.js';
import { sentences } from '../text/index.js';
import { knownHold } from './known-hold.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import { entriesOf, type Secret } from './secret-entries.js';
import { hasAll, piecesOf, toldIn, type Piece } from './secret-pieces.js';
import type { Subject } from './subject.js';
import { heldBy } from './told/early.js';
import { castIndex, toldScans, type ToldScan } from './told/scan.js';
import type { ToldText } from './told/text.js';

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
          found: 'Odalys’s … brothers: held by later until 16 April 2027, 20:00',
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
          found: 'the card’s own name … brother: held by later until 16 April 2027, 20:00',
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
          found: 'lake … falls: held by later until 16 April 2027, 20:00',
          expected: 'not all of it on one card before later',
          related: ['names.yaml:6:11 the secret: The lake falls'],
        },
      },
    ],
  },
};

function* toldSecrets(subject: Subject): Generator<Remark> {
  const asked = entriesOf(subject, castIndex(subject));
  const entries = asked.flatMap(({ groups }) => groups.flat());
  const bearers = new Set(entries.flatMap((entry) => entry.bearers));
  for (const scans of byCard(toldScans(subject))) {
    const pieces = new Map(scans.map((scan) => [scan.text, piecesOf(scan, bearers)]));
    const texts = scans.map(({ text }) => text);
    const all = [...pieces.values()].flat();
    const near = asked.filter(({ groups }) => hasAll(groups, all));
    if (near.length === 0) continue;
    const subjects = texts.flatMap((text) => (isSubject(text) ? (pieces.get(text) ?? []) : []));
    const sets = texts.map((text) => sentencePieces(text, pieces.get(text) ?? [], subjects));
    for (const each of near) {
      const { hold } = each;
      if (!hold) continue;
      const parts = each.secret.within === 'card' ? [sets.flat(2)] : sets.flat();
      const found = toldIn(parts, each.groups, hold);
      if (found) yield remarkOn(found, each.secret, each.at, subject);
    }
  }
}

/** What the card is about: it stands above each of its sentences. */
function isSubject({ kind, what }: ToldText): boolean {
  return kind === 'name' || what === '`publicName`';
}

/** The texts of a card together; every other text alone. */
function* byCard(scans: Iterable<ToldScan>): Generator<readonly ToldScan[]> {
  let open: ToldScan[] = [];
  for (const scan of scans) {
    const same = open[0]?.text.owner;
    const { set, card } = scan.text.owner;
    if (same?.card !== undefined && same.card === card && same.set === set) {
      open.push(scan);
      continue;
    }
    if (open.length > 0) yield open;
    open = [scan];
  }
  if (open.length > 0) yield open;
}

/** The pieces of each sentence of a text; the subject of the card is in every one of its texts. */
function sentencePieces(
  text: ToldText,
  pieces: readonly Piece[],
  subjects: readonly Piece[],
): readonly (readonly Piece[])[] {
  return sentences(text.text).map(({ from, to }) => {
    const within = pieces.filter((piece) => piece.from < to && piece.to > from);
    return [...within, ...subjects.filter((piece) => piece.in !== text)];
  });
}

function remarkOn(
  pieces: readonly Piece[],
  { id, within, says, ...stated }: Secret,
  at: number,
  subject: Subject,
): Remark {
  const { schedule, content } = subject;
  const own = pieces.filter((piece) => !isSubject(piece.in));
  const shown = (own.length > 0 ? own : [...pieces]).sort((a, b) => spotAt(a) - spotAt(b));
  const first = shown[0];
  const last = shown.at(-1);
  if (!first || !last) throw new RangeError('a secret that nothing tells');
  const where = within === 'card' ? 'on one card' : 'in one sentence';
  const hold = knownHold(schedule, stated) ?? OPEN;
  const opens = sayHold(schedule, hold);
  const named = own.length < pieces.length && own.length > 0 ? ['the card’s own name'] : [];
  const words = shown.map((piece) => piece.in.text.slice(piece.from, piece.to));
  const source = content.names?.source;
  const from = first.in.spotOf(first.from, first.to);
  const to = last.in.spotOf(last.from, last.to);
  return {
    ...first.in.owner,
    spot: from.source === to.source ? { ...from, to: Math.max(from.to, to.to) } : from,
    message: `${first.in.what} tells the secret \`${id}\`, which opens later than it`,
    found: `${[...named, ...words].join(' … ')}: held by ${heldBy(hold, OPEN, subject)}`,
    ...(pieces.some((piece) => piece.doubtful) ? { severity: 'warning' } : {}),
    expected: `not all of it ${where} before ${opens}`,
    related: source
      ? [{ message: `the secret: ${says}`, spot: spotOf(source, ['secrets', at, 'id']) }]
      : [],
  };
}

function spotAt(piece: Piece): number {
  return piece.in.spotOf(piece.from, piece.to).from;
}
