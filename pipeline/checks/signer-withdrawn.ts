import { isIssued, spotOf, type Card, type Spot } from '../model/index.js';
import { nameScans } from './names/scan.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { stillCounted } from './signer-counts.js';
import type { ToldText } from './told/texts.js';

const PAIR =
  'signers:\n  - { name: Rhosyn Pike, state: signed }\n  - { name: Caspar Ellwood, state: withdrawn }';

function signed(signers: string, words = 'Ink, and a thumbprint of the lake.') {
  return {
    ...edited('one/plan.yaml', [
      'group: inserts,',
      'group: inserts, carries: autograph, statement: Signed by hand.,',
    ]),
    ...edited(
      'one/cards/extra/b1.md',
      ['spoiler: open', `spoiler: open\n${signers}`],
      ['Ink, and a thumbprint of the lake.', words],
    ),
  };
}

/** A text that still names or counts on somebody who withdrew, or a card that nobody signs. */
export const signerWithdrawn: Rule = {
  id: 'signer-withdrawn',
  about: 'names',
  severity: 'error',
  why: 'A signature that will not come is a promise that the card still makes.',
  look: withdrawnSigners,
  examples: {
    passes: [
      { says: 'somebody withdrew, and nothing names them', files: signed(PAIR) },
      {
        says: 'whoever still signs',
        files: signed(PAIR, 'A lamp that Rhosyn Pike lit is burning.'),
      },
    ],
    fails: [
      {
        says: 'a bio that names whoever withdrew',
        files: signed(PAIR, 'A lamp that Caspar Ellwood lit is burning.'),
        gives: {
          at: 'one/cards/extra/b1.md:9:13',
          covers: 'Caspar Ellwood',
          message: 'the bio still names Caspar Ellwood, who withdrew',
          found: 'Caspar Ellwood',
          expected: 'nobody who withdrew',
          related: ['one/cards/extra/b1.md:7:13 the withdrawal'],
        },
      },
      {
        says: 'words for more signatures than there will be',
        files: signed(PAIR, 'A dual autograph, and a lamp.'),
        gives: {
          at: 'one/cards/extra/b1.md:9:3',
          covers: 'dual autograph',
          message: 'the bio counts on 2 signatures, and there will be 1',
          found: 'dual autograph',
          expected: 'words for 1 signature',
          related: ['one/cards/extra/b1.md:7:13 the withdrawal'],
        },
      },
      {
        says: 'a card that nobody is left to sign',
        files: signed('signers: [{ name: Caspar Ellwood, state: withdrawn }]'),
        gives: {
          at: 'one/cards/extra/b1.md:5:19',
          covers: 'Caspar Ellwood',
          message: 'nobody is left to sign this card, and it is still listed',
          found: 'Caspar Ellwood: withdrawn',
          expected: 'a signer, or `issued: "no"`',
        },
      },
    ],
  },
};

/** Where it says that somebody withdrew, and the card that they were to sign. */
interface Withdrawal {
  readonly who: string;
  readonly place: () => Spot;
  /** Null for an artist of a roster. */
  readonly card: Card | null;
}

function* withdrawnSigners(subject: Subject): Generator<Remark> {
  const withdrawals = withdrawalsIn(subject);
  if (withdrawals.length === 0) return;
  yield* forsaken(subject);
  yield* stillNamed(subject, withdrawals);
  yield* stillCounted(subject);
}

function withdrawalsIn({ cards, sets }: Subject): readonly Withdrawal[] {
  const ofCards = cards.flatMap((card) =>
    (card.front.signers ?? []).flatMap(({ name, state }, at): Withdrawal[] => {
      const place = (): Spot => spotOf(card.source, ['signers', at, 'name']);
      return state === 'withdrawn' ? [{ who: name, place, card }] : [];
    }),
  );
  const ofRosters = sets.flatMap(({ rosters }) =>
    [...rosters.values()].flatMap(({ source, value }) =>
      value.artists.flatMap(({ name, state }, at): Withdrawal[] => {
        const place = (): Spot => spotOf(source, ['artists', at, 'name']);
        return state === 'withdrawn' ? [{ who: name, place, card: null }] : [];
      }),
    ),
  );
  return [...ofCards, ...ofRosters];
}

/** Cards all of whose signers withdrew. */
function* forsaken({ cards }: Subject): Generator<Remark> {
  for (const card of cards) {
    const signers = card.front.signers ?? [];
    if (signers.length === 0 || !isIssued(card)) continue;
    if (signers.some(({ state }) => state !== 'withdrawn')) continue;
    yield {
      ...ofCard(card),
      spot: spotOf(card.source, ['signers', 0, 'name']),
      message: 'nobody is left to sign this card, and it is still listed',
      found: `${signers.map(({ name }) => name).join(', ')}: withdrawn`,
      expected: 'a signer, or `issued: "no"`',
    };
  }
}

/** Who still works on something: to name them is right wherever they did not withdraw. */
function activeIn({ cards, sets }: Subject): ReadonlySet<string> {
  const active = new Set<string>();
  for (const { front } of cards) {
    for (const { name, state } of front.signers ?? []) if (state !== 'withdrawn') active.add(name);
    for (const { name } of front.credits ?? []) active.add(name);
  }
  for (const { rosters } of sets) {
    for (const { value } of rosters.values()) {
      for (const { name, state } of value.artists) if (state !== 'withdrawn') active.add(name);
    }
  }
  return active;
}

/** Lists of who signs and who did what say for themselves who withdrew; corrections tell what was. */
const OWN_LISTS =
  /^`(?:signers|credits)[.`]|^`(?:was|now|note)`|^the line owed|^the name of an artist/;

function* stillNamed(subject: Subject, withdrawals: readonly Withdrawal[]): Generator<Remark> {
  const active = activeIn(subject);
  const byName = new Map<string, Withdrawal[]>();
  for (const each of withdrawals) byName.set(each.who, [...(byName.get(each.who) ?? []), each]);
  for (const { text, matches } of nameScans(subject)) {
    if (OWN_LISTS.test(text.what)) continue;
    for (const { entry, from, to } of matches) {
      const { form, of, role } = entry.form;
      const who = of.listed?.name ?? form;
      const gone = role === 'part' ? undefined : byName.get(who);
      const withdrawal =
        gone?.find(({ card }) => card !== null && isOf(text, card)) ??
        (active.has(who) ? undefined : gone?.[0]);
      if (!withdrawal) continue;
      yield {
        ...text.owner,
        spot: text.spotOf(from, to),
        message: `${text.what} still names ${who}, who withdrew`,
        found: text.text.slice(from, to),
        expected: 'nobody who withdrew',
        related: [{ message: 'the withdrawal', spot: withdrawal.place() }],
      };
    }
  }
}

function isOf({ owner }: ToldText, card: Card): boolean {
  const { set, card: own } = ofCard(card);
  return owner.set === set && owner.card === own;
}
