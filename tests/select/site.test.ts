import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { publicSight, view } from '../../pipeline/gate/index.js';
import type { Content } from '../../pipeline/model/index.js';
import { digestOf, type Approvals } from '../../pipeline/review/index.js';
import {
  POLICIES,
  selectForSite,
  type Policy,
  type SiteSelection,
} from '../../pipeline/select/index.js';
import { dayAt } from '../gate/support.js';
import { diceOf, draftOf, edited, inSomeOrder } from '../law/edit.js';
import { cardOf, exampleWith, say } from '../law/example.js';
import { editsFor } from '../law/hidden-edits.js';
import { viewText } from '../law/outputs.js';
import { contentOf, type Plain, type PlainCard } from '../law/plain.js';
import { looking } from '../law/property.js';
import { approvedAll } from './approve.js';

const ASKED = [
  { parts: ['copy', 'image', 'layout', 'web', 'sales'], roles: ['licensor'] },
] satisfies Plain['property']['approvals'];

/** The example with these cards, in a property that asks for the licensor's approval. */
function asked(...cards: PlainCard[]): Plain {
  const plain = exampleWith(...cards);
  plain.property.approvals = ASKED;
  return plain;
}

const OPEN = cardOf(
  'crew',
  'c001',
  { number: '1', name: 'Odalys Thrane', facts: { Berth: 'Lock nine' } },
  [say('A bell is heard.'), say('Nobody rings it.', 'spring')],
);
const HELD = cardOf('crew', 'c002', {
  number: '2',
  name: 'Pellam Strood',
  spoiler: 'spring',
  publicName: 'The lamp tender',
});

function selected(content: Content, approvals: Approvals, policy: Policy, day = 20): SiteSelection {
  const at = dayAt(day);
  const made = selectForSite({ content, approvals, policy, at, see: publicSight(at) });
  if (!made) throw new Error('the content can be read');
  return made;
}

/** The content with one card changed after everything was approved. */
function changed(
  plain: Plain,
  change: (card: PlainCard) => unknown,
  at = 0,
): { content: Content; approvals: Approvals } {
  const draft = draftOf(plain);
  draft.sets.flatMap(({ cards }) => cards.slice(at, at + 1)).forEach(change);
  return { content: contentOf(draft), approvals: approvedAll(contentOf(plain)) };
}

const refusedIn = ({ refused }: SiteSelection): string[] =>
  refused.map(({ card, parts }) => `${card.id}: ${parts.map(({ part }) => part).join(', ')}`);
const publicOf = ({ released }: SiteSelection, day = 20): string =>
  viewText(view(released, { kind: 'public', at: dayAt(day) }));

describe('what is approved goes out as it stands', () => {
  test.each(POLICIES)('under %s', (policy) => {
    const content = contentOf(asked(OPEN, HELD));
    const made = selected(content, approvedAll(content), policy);
    expect(made.released.sets).toEqual(content.sets);
    expect([made.refused, made.held, made.broughtBack]).toEqual([[], [], []]);
  });

  test('and nothing is asked where the property says so', () => {
    const plain = asked(OPEN);
    plain.property.approvals = 'none';
    const nothing = { ...approvedAll(contentOf(plain)), decisions: [] };
    expect(selected(contentOf(plain), nothing, 'refuse').refused).toEqual([]);
  });
});

describe('silence is never approval', () => {
  const nobody = (plain: Plain): Approvals => ({
    ...approvedAll(contentOf(plain)),
    decisions: [],
  });

  test('a shown card asks for copy and web, its art where that is shown, a placeholder for web', () => {
    const plain = asked(OPEN, HELD);
    const all = selected(contentOf(plain), nobody(plain), 'refuse');
    expect(refusedIn(all)).toEqual(['c001: copy, image, web', 'c002: web']);
    plain.property.site = { shows: { bio: 'full' } };
    const words = selected(contentOf(plain), nobody(plain), 'refuse');
    expect(refusedIn(words)).toEqual(['c001: copy, web', 'c002: web']);
  });

  test.each(POLICIES)('a placeholder that nobody approved is refused under %s', (policy) => {
    const plain = asked(OPEN, HELD);
    const made = selected(contentOf(plain), nobody(plain), policy);
    expect(refusedIn(made)).toEqual(['c001: copy, image, web', 'c002: web']);
  });

  test.each(['revise and resubmit', 'rejected', 'on hold', 'approved as noted'] as const)(
    '"%s" is none either',
    (verdict) => {
      const content = contentOf(asked(OPEN));
      const made = selected(content, approvedAll(content, { verdict }), 'refuse');
      expect(refusedIn(made)).toEqual(['c001: copy, image, web']);
    },
  );

  test('nor that of somebody of another role', () => {
    const content = contentOf(asked(OPEN));
    const made = selected(content, approvedAll(content, { person: 'orrin' }), 'refuse');
    expect(refusedIn(made)).toEqual(['c001: copy, image, web']);
  });

  test('a card that leaves no trace or is not issued asks for none', () => {
    const absent = cardOf('crew', 'c003', { number: '3', spoiler: 'finale' });
    const pulled = cardOf('crew', 'c004', { number: '4', issued: 'no' });
    const plain = asked(absent, pulled);
    expect(refusedIn(selected(contentOf(plain), nobody(plain), 'refuse'))).toEqual([]);
  });
});

describe('an approval is judged on the cut', () => {
  const rewritten = changed(asked(OPEN), (card) => {
    card.bio[0]?.slice(1).forEach((span) => (span.words = 'The warden rings it.'));
  });

  test('words that are still held may change', () => {
    for (const policy of POLICIES) {
      const made = selected(rewritten.content, rewritten.approvals, policy, 79);
      expect([refusedIn(made), made.held, made.broughtBack]).toEqual([[], [], []]);
    }
  });

  test('and are asked for on the day on which they open', () => {
    const made = selected(rewritten.content, rewritten.approvals, 'refuse', 80);
    expect(refusedIn(made)).toEqual(['c001: copy, web']);
  });

  test('a placeholder may change in everything that it does not show', () => {
    const { content, approvals } = changed(
      asked(OPEN, HELD),
      ({ front }) => Object.assign(front, { name: 'Pellam Strode', facts: { Berth: 'none' } }),
      1,
    );
    expect(refusedIn(selected(content, approvals, 'refuse'))).toEqual([]);
    expect(refusedIn(selected(content, approvals, 'refuse', 80))).toEqual(['c002: copy']);
  });

  test.each(POLICIES)('but not in its public name, under %s', (policy) => {
    const { content, approvals } = changed(
      asked(OPEN, HELD),
      ({ front }) => (front.publicName = 'The bell warden'),
      1,
    );
    expect(refusedIn(selected(content, approvals, policy))).toEqual(['c002: web']);
  });

  test('a hold that lifts earlier than the person saw voids it on the day, not before', () => {
    const plain = asked(OPEN);
    const draft = draftOf(plain);
    for (const card of draft.sets[0]?.cards ?? []) {
      card.bio[0]?.slice(1).forEach((span) => (span.hold = 'shops'));
    }
    const approvals = approvedAll(contentOf(plain));
    expect(refusedIn(selected(contentOf(draft), approvals, 'refuse', 39))).toEqual([]);
    expect(refusedIn(selected(contentOf(draft), approvals, 'refuse', 40))).toEqual([
      'c001: copy, web',
    ]);
  });

  test('more of the site than the person saw voids it at once', () => {
    const plain = asked(OPEN);
    plain.property.site = { shows: { bio: 'full' } };
    const draft = draftOf(plain);
    draft.property.site = { shows: { bio: 'full', facts: 'full' } };
    const made = selected(contentOf(draft), approvedAll(contentOf(plain)), 'refuse');
    expect(refusedIn(made)).toEqual(['c001: copy, web']);
  });
});

describe('a card that was changed since', () => {
  const mended = changed(asked(OPEN, HELD), (card) => {
    card.bio[0]?.slice(0, 1).forEach((span) => (span.words = 'A bell was heard.'));
  });

  test('is refused, and the lack says what was approved', () => {
    const made = selected(mended.content, mended.approvals, 'refuse');
    expect(refusedIn(made)).toEqual(['c001: copy']);
    expect(made.refused[0]?.parts[0]?.roles[0]?.lack?.is).toBe('changed since');
  });

  test('is a placeholder under hold, without an opening', () => {
    const made = selected(mended.content, mended.approvals, 'hold');
    expect([refusedIn(made), made.held]).toEqual([[], ['high-water/crew/c001']]);
    const seen = view(made.released, { kind: 'public', at: dayAt(20) });
    const [card] = seen?.sets[0]?.subsets[0]?.cards ?? [];
    expect([card?.state, card?.number, card?.name, card?.opens, card?.bio]).toEqual([
      'placeholder',
      '1',
      'To be revealed',
      null,
      [],
    ]);
  });

  test('is what it was under last-approved, its held words as they were held', () => {
    const made = selected(mended.content, mended.approvals, 'last-approved');
    expect([refusedIn(made), made.broughtBack]).toEqual([[], ['high-water/crew/c001']]);
    const before = selected(contentOf(asked(OPEN, HELD)), mended.approvals, 'refuse');
    for (const day of [20, 39]) expect(publicOf(made, day)).toBe(publicOf(before, day));
  });

  test('is held instead if anything of it is held longer today', () => {
    const stricter = changed(asked(OPEN), (card) => {
      card.front.holds = { 'facts.Berth': 'spring' };
    });
    const made = selected(stricter.content, stricter.approvals, 'last-approved');
    expect([made.held, made.broughtBack]).toEqual([['high-water/crew/c001'], []]);
  });

  test('is held instead if words are held today that were not', () => {
    const stricter = changed(asked(OPEN), (card) => {
      card.bio[0]?.slice(0, 1).forEach((span) => (span.hold = 'spring'));
    });
    const made = selected(stricter.content, stricter.approvals, 'last-approved');
    expect([made.held, made.broughtBack]).toEqual([['high-water/crew/c001'], []]);
  });

  test('is held instead if what was approved tells something under today’s names', () => {
    const plain = asked({ ...OPEN, bio: [[say('Pellam Strood lights it.')]] });
    const draft = draftOf(plain);
    draft.names.names.push({ name: 'Pellam Strood', kind: 'character', level: 'spring' });
    for (const card of draft.sets[0]?.cards ?? []) card.bio = [[say('Somebody lights it.')]];
    const made = selected(contentOf(draft), approvedAll(contentOf(plain)), 'last-approved');
    expect([made.held, made.broughtBack]).toEqual([['high-water/crew/c001'], []]);
  });

  test('is held instead if its approved art was not kept, and back with it if it was', () => {
    const image = { file: 'art/c001.svg', alt: 'A pilot' };
    const plain = asked({ ...OPEN, front: { ...OPEN.front, image } });
    const content = contentOf(plain);
    const approved = approvedAll(content, { drawn: 'first' });
    const today = approvedAll(content, { drawn: 'again' });
    const sha = digestOf('art/c001.svg first');
    const redrawn = { ...today, decisions: approved.decisions, kept: approved.kept };
    expect(selected(content, redrawn, 'last-approved').held).toEqual(['high-water/crew/c001']);
    const path = `review/approved/art/${sha}.svg`;
    const kept = { ...redrawn, keptArt: new Map([[sha, path]]) };
    const made = selected(content, kept, 'last-approved');
    expect(made.broughtBack).toEqual(['high-water/crew/c001']);
    expect([...made.keptArt]).toEqual([[`high-water/${path}`, path]]);
  });
});

/**
 * Edits that the public cannot see and that change what was approved all the same: then the publisher
 * has to refuse, or hold. They tell that something was done to a file, and nothing of what is in it.
 */
const TOUCH_APPROVALS = new Set([
  // A decision is on a card by its identity, and on a hold by its id.
  'the file name of a card',
  'id of an unlifted level or embargo',
]);

describe('the law, with approvals', () => {
  test.each(POLICIES)(
    'hidden edits change no public byte under %s',
    { timeout: 120_000 },
    (policy) => {
      const same = new Set<string>();
      fc.assert(
        fc.property(looking('public'), fc.nat(), ({ plain, eye }, seed) => {
          const look = lookWith(plain, eye.at, policy);
          const before = look(plain);
          expect(before.refused).toBe(0);
          for (const edit of inSomeOrder(editsFor('public'), seed).slice(0, 25)) {
            if (TOUCH_APPROVALS.has(edit.name)) continue;
            const draft = edited(edit, plain, eye, diceOf(seed, edit.name));
            if (!draft) continue;
            const after = look(draft);
            expect([edit.name, after]).toEqual([edit.name, before]);
            same.add(edit.name);
          }
        }),
        { numRuns: 12, endOnFailure: true },
      );
      expect(same.size).toBeGreaterThan(70);
    },
  );
});

describe('decisions that play no part in what shows', () => {
  test.each(POLICIES)('may be anything, under %s', { timeout: 120_000 }, (policy) => {
    let dropped = 0;
    fc.assert(
      fc.property(looking('public'), ({ plain, eye: { at } }) => {
        const draft = asking(plain);
        const content = contentOf(draft);
        const see = publicSight(at);
        const all = approvedAll(content, { person: LICENSOR.id });
        const parts = new Map<string, readonly string[]>(
          content.sets.flatMap((set) =>
            set.cards.map((card) => {
              const property = content.property?.value ?? draft.property;
              const seen = see(property, set, card);
              const asked = seen?.state === 'shown' ? ['copy', 'image', 'web'] : ['web'];
              const isAsked = seen !== null && seen.state !== 'not issued';
              return [`${set.id}/${card.subset}/${card.id}`, isAsked ? asked : []] as const;
            }),
          ),
        );
        const needed = all.decisions.filter(({ card, part }) => parts.get(card)?.includes(part));
        const rest = all.decisions.filter((decision) => !needed.includes(decision));
        dropped += rest.length;
        const rejected = rest.map((one) => ({ ...one, verdict: 'rejected' as const }));
        for (const decisions of [all.decisions, needed, [...needed, ...rejected]]) {
          const approvals = { ...all, decisions };
          const made = selectForSite({ content, approvals, policy, at, see });
          expect([made?.refused.length, made?.held, made?.broughtBack]).toEqual([0, [], []]);
          expect(made?.released.sets).toEqual(content.sets);
        }
      }),
      { numRuns: 12, endOnFailure: true },
    );
    expect(dropped).toBeGreaterThan(50);
  });
});

/** How the public sees a content whose every card was approved as it stood before any edit. */
function lookWith(
  plain: Plain,
  at: number,
  policy: Policy,
): (plain: Plain) => { readonly refused: number; readonly view: string } {
  const withLicensor = (own: Plain): Content => contentOf(asking(own));
  const approvals = approvedAll(withLicensor(plain), { person: LICENSOR.id });
  return (own) => {
    const content = withLicensor(own);
    const made = selectForSite({ content, approvals, policy, at, see: publicSight(at) });
    const seen = made && view(made.released, { kind: 'public', at });
    return { refused: made?.refused.length ?? -1, view: viewText(seen) };
  };
}

/** A content that asks for the approval of its licensor. */
function asking(plain: Plain): Plain {
  const draft = draftOf(plain);
  draft.property.approvals = ASKED;
  draft.people.people.push(LICENSOR);
  return draft;
}

const LICENSOR = {
  id: 'the-licensor',
  name: 'Amara Linde',
  role: 'licensor',
  clearance: 'finale',
} as const;
