import { describe, expect, test } from 'vitest';

import type { Decision, PacketRecord, PropertyFile, Subset } from '../../schema/index.js';
import { instantOf, type Card } from '../../pipeline/model/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import {
  EMPTY_LEDGER,
  appended,
  decisionsOf,
  packetDigest,
  readSeen,
  rolesFor,
  standingOf,
  writeSeen,
  type LedgerWords,
  type SeenOpening,
  type SeenSchedule,
} from '../../pipeline/review/index.js';

const MADE = '2027-01-11T10:00:00+00:00[Europe/London]';
const KEY = 'one/base/a1';
const digest = (letter: string): string => letter.repeat(64);

const { property, sets } = readContent(memoryFolder(sampleWith({})));
const card = sets[0]?.cards[0];
const subset = sets[0]?.plan.value.subsets[0];
if (!property || !card || !subset) throw new Error('the sample can be read');
const CARD: Card = {
  ...card,
  front: { ...card.front, image: { file: 'a.svg', alt: 'A', depicts: ['Tove Lindqvist'] } },
};
const SUBSET: Subset = subset;

type Line = Exclude<PropertyFile['approvals'], 'none'>[number];
const asking = (...approvals: Line[]): PropertyFile => ({ ...property.value, approvals });

describe('the roles that must approve a part', () => {
  test.each<[string, PropertyFile, string[]]>([
    ['none is asked for', { ...property.value, approvals: 'none' }, []],
    ['one line', asking({ parts: ['copy', 'web'], roles: ['licensor'] }), ['licensor']],
    ['said openly to be nobody', asking({ parts: ['copy'], roles: 'none' }), []],
    [
      'every line that matches',
      asking(
        { parts: ['copy'], roles: ['licensor'] },
        { parts: ['copy'], roles: ['likeness'], where: { depicts: ['Tove Lindqvist'] } },
        { parts: ['copy'], roles: ['editor'], where: { depicts: ['Somebody else'] } },
        { parts: ['copy'], roles: ['publisher'], where: { subset: ['base'], group: ['base'] } },
        { parts: ['copy'], roles: ['host'], where: { subset: ['base'], group: ['inserts'] } },
      ),
      ['licensor', 'likeness', 'publisher'],
    ],
    [
      'the licensor, of a part that no line names for all cards',
      asking({ parts: ['copy'], roles: ['likeness'], where: { depicts: ['Somebody else'] } }),
      ['licensor'],
    ],
    ['and of one that no line names', asking({ parts: ['image'], roles: 'none' }), ['licensor']],
  ])('%s', (_, asked, roles) => {
    expect(rolesFor('copy', CARD, SUBSET, { property: asked })).toEqual(roles);
  });
});

const PROPERTY = asking({ parts: ['copy'], roles: ['licensor', 'likeness'] });
const PEOPLE = [
  { id: 'amara', name: 'Amara', role: 'licensor' as const, clearance: 'last' },
  { id: 'bree', name: 'Bree', role: 'licensor' as const, clearance: 'last' },
  { id: 'orrin', name: 'Orrin', role: 'likeness' as const, clearance: 'open' },
];
const LIFT = instantOf('2027-04-16T20:00:00+01:00[Europe/London]');
const SEEN: SeenSchedule = {
  openings: new Map([['card', { opens: LIFT, absent: false }]]),
  inHands: Infinity,
  shows: new Set(['bio front']),
};

const record = (id: string, person: string, shown = digest('a')): PacketRecord => ({
  format: 1,
  id,
  property: 'lake',
  person,
  clearance: 'last',
  round: 1,
  made: MADE,
  expires: MADE,
  publicKey: 'A'.repeat(43),
  ledger: 'none',
  decides: [{ card: KEY, part: 'copy', digest: shown, seen: writeSeen(SEEN, 'Europe/London') }],
});

interface Said {
  readonly packet: string;
  readonly person: string;
  readonly decision: Decision['decision'];
  readonly shown?: string;
  readonly approves?: string;
}

function said({ packet, person, decision, shown = digest('a'), approves }: Said): LedgerWords[] {
  const one = { card: KEY, part: 'copy' as const };
  return [
    {
      kind: 'submitted',
      at: MADE,
      packet,
      person,
      record: packetDigest(record(packet, person, shown)),
    },
    {
      kind: 'decided',
      at: MADE,
      answer: {
        format: 1,
        property: 'lake',
        packet,
        person,
        decisions: [{ ...one, digest: shown, decision }],
        remarks: [],
        signature: 'A'.repeat(86),
      },
      approves: approves === undefined ? [] : [{ ...one, digest: approves }],
    },
  ];
}

/** How the roles stand after what was said, in a word each. */
function stand(
  all: readonly Said[],
  now: { digest?: string; schedule?: SeenSchedule; asked?: PropertyFile } = {},
): (string | null)[] {
  const ledger = appended(EMPTY_LEDGER, all.flatMap(said));
  const packets = new Map(
    all.map(({ packet, person, shown }) => [packet, record(packet, person, shown)]),
  );
  const ground = {
    property: now.asked ?? PROPERTY,
    people: PEOPLE,
    decisions: decisionsOf(ledger, packets),
  };
  const part = {
    part: 'copy' as const,
    digest: now.digest ?? digest('a'),
    schedule: now.schedule ?? SEEN,
  };
  return standingOf(KEY, part, ['licensor', 'likeness'], ground).map(
    ({ approvedBy, lack }) => approvedBy?.person ?? lack?.is ?? null,
  );
}

const amara: Said = { packet: 'p-1', person: 'amara', decision: 'approved' };
const orrin: Said = { packet: 'p-2', person: 'orrin', decision: 'approved' };

describe('a part is approved', () => {
  test('by one person of each role, and by silence never', () => {
    expect(stand([])).toEqual(['nobody decided', 'nobody decided']);
    expect(stand([amara])).toEqual(['amara', 'nobody decided']);
    expect(stand([amara, orrin])).toEqual(['amara', 'orrin']);
  });

  test('by the latest decision of a person alone', () => {
    const later: Said = { ...amara, packet: 'p-3', decision: 'rejected' };
    expect(stand([amara, later])[0]).toBe('decided otherwise');
    expect(stand([later, amara])[0]).toBe('amara');
    const bree: Said = { ...amara, packet: 'p-4', person: 'bree' };
    expect(stand([bree, later])[0]).toBe('bree');
  });

  test('for the very text that was decided on', () => {
    expect(stand([amara], { digest: digest('b') })[0]).toBe('changed since');
    expect(stand([{ ...amara, shown: digest('b') }], { digest: digest('b') })[0]).toBe('amara');
  });

  test('with changes: the text as changed, and the one before it no more', () => {
    const changed: Said = { ...amara, decision: 'approved with changes', approves: digest('b') };
    expect(stand([changed], { digest: digest('b') })[0]).toBe('amara');
    expect(stand([changed])[0]).toBe('changed since');
  });

  test('as noted only where that stands', () => {
    const noted: Said = { ...amara, decision: 'approved as noted' };
    expect(stand([noted])[0]).toBe('decided otherwise');
    const asked: PropertyFile = { ...PROPERTY, review: { asNoted: 'stands' } };
    expect(stand([noted], { asked })[0]).toBe('amara');
  });

  test.each<Decision['decision']>(['revise and resubmit', 'rejected', 'on hold'])(
    'not by "%s"',
    (decision) => {
      expect(stand([{ ...amara, decision }])[0]).toBe('decided otherwise');
    },
  );

  test('only while nothing opens earlier than was seen', () => {
    const earlier = { ...SEEN, openings: new Map([['card', { opens: LIFT - 1, absent: false }]]) };
    expect(stand([amara], { schedule: earlier })[0]).toBe('opens earlier');
    const later = { ...SEEN, openings: new Map([['card', { opens: LIFT + 1, absent: true }]]) };
    expect(stand([amara], { schedule: later })[0]).toBe('amara');
  });

  test('only with the record of the packet as it was submitted', () => {
    const ledger = appended(EMPTY_LEDGER, said(amara));
    const whole = record('p-1', 'amara');
    expect(decisionsOf(ledger, new Map([['p-1', whole]]))).toHaveLength(1);
    expect(decisionsOf(ledger, new Map())).toEqual([]);
    const changed = { ...whole, clearance: 'open' };
    expect(decisionsOf(ledger, new Map([['p-1', changed]]))).toEqual([]);
    const [, decided] = said(amara);
    const unsent = appended(EMPTY_LEDGER, decided ? [decided] : []);
    expect(decisionsOf(unsent, new Map([['p-1', whole]]))).toEqual([]);
  });

  test('by hand too, once it stands in the ledger', () => {
    const entry: LedgerWords = {
      kind: 'by-hand',
      at: MADE,
      person: 'amara',
      by: 'jonah',
      confirmedBy: 'ines',
      received: '2027-01-10',
      evidence: digest('e'),
      decisions: [
        {
          card: KEY,
          part: 'copy',
          digest: digest('a'),
          decision: 'approved',
          seen: writeSeen(SEEN, 'Europe/London'),
        },
      ],
    };
    const [decision] = decisionsOf(appended(EMPTY_LEDGER, [entry]), new Map());
    expect(decision).toMatchObject({ person: 'amara', verdict: 'approved', seen: SEEN });
  });
});

test('a schedule is read as it was kept; what was always open cannot open earlier', () => {
  const openings: [string, SeenOpening][] = [
    ['field name', { opens: Infinity, absent: true }],
    ['words a', { opens: LIFT, absent: false }],
  ];
  const kept = { ...SEEN, inHands: LIFT, openings: new Map(openings) };
  expect(readSeen(writeSeen(kept, 'Europe/London'))).toEqual(kept);
  const open = new Map([...openings, ['card', { opens: -Infinity, absent: false }] as const]);
  expect(readSeen(writeSeen({ ...kept, openings: open }, 'Europe/London'))).toEqual(kept);
});
