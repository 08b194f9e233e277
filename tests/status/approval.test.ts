import { describe, expect, test } from 'vitest';

import {
  StatusSheet as StatusSheetShape,
  type Decision,
  type PacketRecord,
  type StatusSheet,
} from '../../schema/index.js';
import { bioFits, check, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import { edited } from '../../pipeline/checks/sample.js';
import { identityOf, instantOf } from '../../pipeline/model/index.js';
import {
  approvalsOf,
  memoryFolder,
  readProperty,
  keptDictionaries,
} from '../../pipeline/read/index.js';
import { validate } from '../../pipeline/read/validate.js';
import {
  CARD_PARTS,
  EMPTY_LEDGER,
  appended,
  packetDigest,
  partDigest,
  scheduleSeen,
  writeSeen,
  type Ledger,
  type LedgerWords,
} from '../../pipeline/review/index.js';
import { select } from '../../pipeline/select/index.js';
import { statusSheet, statusText, type StatusQuestion } from '../../pipeline/status/index.js';

const FILES: Files = {
  ...WITH_LAYOUT,
  ...edited('property.yaml', [
    'approvals: none',
    `approvals:
  - { parts: [copy, image, layout, web, sales], roles: [licensor] }
cuts: [{ id: cut-1, received: "2026-06-01" }, { id: cut-2, received: "2026-07-01" }]
review: { workingDays: 10, holidays: ["2027-03-26", "2027-03-29"] }`,
  ]),
  'one/plan.yaml': (WITH_LAYOUT['one/plan.yaml'] ?? '').replace(
    'subsets:',
    'dates: { copyLock: "2027-03-30", toPrinter: "2027-04-15", ships: "2027-03-10" }\nsubsets:',
  ),
  'people.yaml': `people:
  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last }
  - { id: amara, name: Amara Linde, role: licensor, clearance: last }
  - { id: tobit, name: Tobit Crane, role: licensor, clearance: last }
`,
};
const CARDS = ['one/base/a1', 'one/base/a2', 'one/extra/b1'];
const NOW = '2027-03-30T12:00:00+01:00[Europe/London]';
const SENT = '2027-03-15T10:00:00+00:00[Europe/London]';

const card = (file: string, ...changes: readonly [string, string][]): Files =>
  edited(`one/cards/${file}.md`, ...changes);
const READY: Files = {
  ...card('base/a1', ['spoiler: open', 'spoiler: open\nstate: ready\nwriter: jonah']),
  ...card('base/a2', ['spoiler: open', 'spoiler: open\nstate: ready\ncheckedAgainst: cut-2']),
  ...card('extra/b1', ['spoiler: open', 'spoiler: open\nwriter: jonah\ncheckedAgainst: cut-1']),
};

interface Past {
  readonly ledger: Ledger;
  readonly packets: ReadonlyMap<string, PacketRecord>;
}
const NOTHING: Past = { ledger: EMPTY_LEDGER, packets: new Map() };

function propertyOf(files: Files) {
  const folder = memoryFolder(sampleWith({ ...FILES, ...READY, ...files }));
  const { content, fonts } = readProperty(folder);
  const released = select(content);
  if (!released) throw new Error(JSON.stringify(content.faults));
  return { folder, content, fonts, released };
}

/** The record of a packet of these cards, as the files are. */
function recordOf(id: string, cards: readonly string[], files: Files, person = 'amara') {
  const { folder, content, fonts, released } = propertyOf(files);
  const { around } = approvalsOf(folder, content, fonts, { ...NOTHING, faults: [] });
  const decides = released.sets.flatMap((set) =>
    set.cards.flatMap((one) => {
      const key = `${set.id}/${identityOf(one)}`;
      if (!cards.includes(key)) return [];
      const seen = writeSeen(scheduleSeen(released.property, set.plan.value, one), 'Europe/London');
      return CARD_PARTS.map((part) => {
        return { card: key, part, digest: partDigest(part, one, around(set, one)), seen };
      });
    }),
  );
  const record: PacketRecord = {
    format: 1,
    id,
    property: 'lake',
    person,
    clearance: 'last',
    round: 1,
    made: SENT,
    expires: '2027-06-01T10:00:00+01:00[Europe/London]',
    publicKey: 'A'.repeat(43),
    ledger: 'none',
    decides,
  };
  return record;
}

const submitted = (record: PacketRecord, at = SENT): LedgerWords => ({
  kind: 'submitted',
  at,
  packet: record.id,
  person: record.person,
  record: packetDigest(record),
});

type Said = Partial<Pick<Decision, 'remark' | 'with'>> & Pick<Decision, 'decision'>;

/** The same said of every part of a card, or of these. */
function decided(
  { id, person, decides }: PacketRecord,
  key: string,
  said: Said,
  parts: readonly string[] = CARD_PARTS,
): LedgerWords {
  const decisions = decides
    .filter((one) => one.card === key && parts.includes(one.part))
    .map(({ card: of, part, digest }) => ({ card: of, part, digest, ...said }));
  const answer = { format: 1, property: 'lake', packet: id, person, decisions } as const;
  const signature = 'A'.repeat(86);
  return {
    kind: 'decided',
    at: '2027-03-22T10:00:00+00:00[Europe/London]',
    answer: { ...answer, remarks: [], signature },
    approves: [],
  };
}

function past(records: readonly PacketRecord[], words: readonly LedgerWords[]): Past {
  return {
    ledger: appended(EMPTY_LEDGER, words),
    packets: new Map(records.map((record) => [record.id, record])),
  };
}

function sheetOf(
  files: Files,
  before: Past,
  question: StatusQuestion | null = null,
  now = NOW,
): StatusSheet {
  const { folder, content, fonts, released } = propertyOf(files);
  const approvals = approvalsOf(folder, content, fonts, { ...before, faults: [] });
  return statusSheet(
    {
      released,
      report: check(content, { fonts, dictionaries: keptDictionaries, approvals }),
      fits: bioFits(content, fonts),
      rehearsal: null,
      reviewed: { content, approvals, ...before },
      now: instantOf(now),
    },
    question,
  );
}

const statesOf = (files: Files, before: Past, now = NOW): readonly string[] =>
  (sheetOf(files, before, { cut: false, writer: null }, now).asked?.cards ?? []).map(
    ({ state }) => state,
  );

const RECORD = recordOf('amara-1', CARDS, {});
const SUBMITTED = past([RECORD], [submitted(RECORD)]);
const [A1 = '', A2 = '', B1 = ''] = CARDS;
const after = (...words: readonly LedgerWords[]): Past =>
  past([RECORD], [submitted(RECORD), ...words]);
const approved = (key: string): LedgerWords => decided(RECORD, key, { decision: 'approved' });

describe('the state of a card', () => {
  test('before anything is submitted is how far its copy is', () => {
    expect(statesOf({}, NOTHING)).toEqual(['handed in', 'handed in', 'draft']);
    const long =
      'Ink, and a thumbprint of the lake, kept under glass since the old harbour went down.';
    const over = card(
      'extra/b1',
      ['spoiler: open', 'spoiler: open\nstate: ready'],
      ['Ink, and a thumbprint of the lake.', long],
    );
    expect(statesOf(over, NOTHING)).toEqual(['handed in', 'handed in', 'overset']);
  });

  test('is submitted while somebody has it, and has not decided', () => {
    expect(statesOf({}, SUBMITTED)).toEqual(['submitted', 'submitted', 'submitted']);
    expect(statesOf({}, after(approved(A1)))).toEqual(['approved', 'submitted', 'submitted']);
    const why = 'sent to the wrong desk';
    const withdrawn = { kind: 'withdrawn', at: NOW, packet: 'amara-1', by: 'jonah', why } as const;
    expect(statesOf({}, after(withdrawn))).toEqual(['handed in', 'handed in', 'draft']);
  });

  test('is not submitted when the packet has expired, or its record is another', () => {
    const july = '2027-07-01T10:00:00+01:00[Europe/London]';
    expect(statesOf({}, SUBMITTED, july)).toEqual(['handed in', 'handed in', 'draft']);
    const changed = { ...SUBMITTED, packets: new Map([['amara-1', { ...RECORD, round: 2 }]]) };
    expect(statesOf({}, changed)).toEqual(['handed in', 'handed in', 'draft']);
  });

  test('is what was decided on it', () => {
    const words = [
      decided(RECORD, A1, { decision: 'rejected' }),
      decided(RECORD, A2, { decision: 'on hold', with: 'the studio' }),
      decided(RECORD, B1, { decision: 'revise and resubmit', remark: 'Too sad.' }),
    ];
    expect(statesOf({}, after(...words))).toEqual(['rejected', 'on hold', 'revise and resubmit']);
    const noted = decided(RECORD, A1, { decision: 'approved as noted', remark: 'A comma.' });
    expect(statesOf({}, after(noted))[0]).toBe('revise and resubmit');
  });

  test('is changed since approval once a word is another, and submitted with the next packet', () => {
    const typo = card('base/a1', ['spoiler: open', 'spoiler: open\nstate: ready'], ['knee', 'hip']);
    const all = after(...CARDS.map(approved));
    expect(statesOf({}, all)).toEqual(['approved', 'approved', 'approved']);
    expect(statesOf(typo, all)).toEqual(['changed since approval', 'approved', 'approved']);
    const next = recordOf('amara-2', [A1], typo);
    const again = past(
      [RECORD, next],
      [submitted(RECORD), ...CARDS.map(approved), submitted(next)],
    );
    expect(statesOf(typo, again)).toEqual(['submitted', 'approved', 'approved']);
  });

  test('is not submitted where the text is another by now than the one that was sent', () => {
    const typo = card('base/a1', ['spoiler: open', 'spoiler: open\nstate: ready'], ['knee', 'hip']);
    expect(statesOf(typo, SUBMITTED)).toEqual(['handed in', 'submitted', 'submitted']);
  });

  test('that was sent back for its copy is handed in again once that is mended', () => {
    const back = decided(RECORD, A1, { decision: 'revise and resubmit', remark: 'Wet.' }, ['copy']);
    const good = decided(RECORD, A1, { decision: 'approved' }, ['image', 'layout', 'web']);
    const mended = card(
      'base/a1',
      ['spoiler: open', 'spoiler: open\nstate: ready'],
      ['knee', 'hip'],
    );
    expect(statesOf({}, after(back, good))[0]).toBe('revise and resubmit');
    expect(statesOf(mended, after(back, good))[0]).toBe('handed in');
  });

  test('that is not issued asks nobody', () => {
    const pulled = card('base/a1', ['spoiler: open', 'spoiler: open\nissued: "no"\nwhy: Lost.']);
    expect(statesOf(pulled, SUBMITTED)[0]).toBe('not issued');
  });
});

const inBrackets = (text: string): string => `<${text}>`;
const textOf = (sheet: StatusSheet): string => statusText(sheet, 'Europe/London', inBrackets);

describe('the sheet', () => {
  // Ten working days after 15 March 2027, with 26 and 29 March off, is 31 March.
  test('tells who has what since when, what is due, and what each release waits for', () => {
    const two = recordOf('tobit-1', [B1], {}, 'tobit');
    const early = '2027-03-10T10:00:00+00:00[Europe/London]';
    const before = past([RECORD, two], [submitted(two, early), submitted(RECORD), approved(A1)]);
    expect(textOf(sheetOf({}, before, null, '2027-03-31T09:00:00+01:00[Europe/London]')))
      .toMatchInlineSnapshot(`
        "INTERNAL

        One (locked)
        Subset  no copy  draft  handed in  submitted  approved  not issued  errors  warnings
        Base          0      0          0          1         1           0       1         0
        Extra         0      0          0          1         0           0       1         0

        How full the zones of the bios are:
               0 %      50 %     100 %
        Extra  |                   █|  1 bio, 1 tight

        Dates
          copy lock       30 March 2027  1 working day ago
          to the printer  15 April 2027  11 working days left
            to be decided on before the printer's date, copy is submitted by 31 March 2027
          ships           10 March 2027  13 working days ago

        Submitted, and not decided:
          Tobit Crane (licensor)
            tobit-1, round 1: 4 parts of 1 card since 10 March 2027, due 24 March 2027, <overdue by 3 working days>
          Amara Linde (licensor)
            amara-1, round 1: 8 parts of 2 cards since 15 March 2027, due 31 March 2027

        Writers:
          Jonah Prewett: 1 submitted, 1 approved

        Still to come:
          16 April 2027, 20:00
            lifts: Episode 1
            on the site: nothing changes
            rehearsed: not yet
            not approved by licensor: 2 cards
          4 June 2027, 20:00
            lifts: Episode 2
            on the site: nothing changes
            rehearsed: not yet
            not approved by licensor: 2 cards
          5 June 2027, 09:00
            in shops: One
            on the site: nothing changes
            rehearsed: not yet
            not approved by licensor: 2 cards
        "
      `);
  });
});

describe('cards that are asked for', () => {
  test('are those of a writer, with who has them and what was said', () => {
    const back = decided(RECORD, A1, { decision: 'on hold', with: 'the studio', remark: 'Wait.' });
    const sheet = sheetOf({}, after(back), { cut: false, writer: 'jonah' });
    expect(textOf(sheet)).toMatchInlineSnapshot(`
      "INTERNAL

      Cards of jonah:
        one/base/a1  1  The Quay: on hold
          copy, image, layout, web: on hold with the studio: Wait.
        one/extra/b1  X-1  The Chart: submitted, with amara
      "
    `);
  });

  test('are those that were not read against the current cut, by their file or the ledger', () => {
    const text = (before: Past) => textOf(sheetOf({}, before, { cut: true, writer: null }));
    expect(text(NOTHING)).toMatchInlineSnapshot(`
      "INTERNAL

      Cards that were not read against cut-2:
        one/base/a1  1  The Quay: handed in, read against none
        one/extra/b1  X-1  The Chart: draft, read against cut-1
      "
    `);
    const read = { kind: 'checked', at: NOW, card: A1, cut: 'cut-2', by: 'jonah' } as const;
    const old = { kind: 'checked', at: NOW, card: A2, cut: 'cut-1', by: 'jonah' } as const;
    expect(text(past([], [read, old]))).toMatchInlineSnapshot(`
      "INTERNAL

      Cards that were not read against cut-2:
        one/extra/b1  X-1  The Chart: draft, read against cut-1
      "
    `);
  });
});

describe('what each release waits for', () => {
  const blocks = ['the audit found a held name', 'two', 'three', 'four', 'five'];
  const rehearsal = (isCurrent: boolean) => ({
    isCurrent,
    record: {
      format: 1 as const,
      made: NOW,
      content: 'a'.repeat(64),
      lifts: [{ at: '2027-04-16T20:00:00+01:00[Europe/London]', digest: null, blocks }],
    },
  });
  const sheet = (isCurrent: boolean, before: Past) => {
    const { content, fonts, released, folder } = propertyOf({});
    const approvals = approvalsOf(folder, content, fonts, { ...before, faults: [] });
    return statusSheet({
      released,
      report: check(content, { fonts, dictionaries: keptDictionaries, approvals }),
      fits: new Map(),
      rehearsal: rehearsal(isCurrent),
      reviewed: { content, approvals, ...before },
      now: instantOf(NOW),
    });
  };

  test('is what its rehearsal found, if that was of this content', () => {
    expect(sheet(true, SUBMITTED).ahead.map((one) => one.blocks)).toEqual([blocks, [], []]);
    expect(sheet(false, SUBMITTED).ahead.map((one) => one.blocks)).toEqual([[], [], []]);
    expect(textOf(sheet(true, SUBMITTED))).toContain(`    rehearsed: refused on this content
    in its way: the audit found a held name
    in its way: two
    in its way: three
    in its way: 2 more: see publish --rehearse
    not approved by licensor: 3 cards
`);
  });

  test('is every card that a role has not approved', () => {
    const all = after(...CARDS.map(approved));
    expect(sheet(true, all).ahead.map((one) => one.unapproved)).toEqual([[], [], []]);
    const most = after(approved(A1), approved(B1));
    expect(sheet(true, most).ahead[0]?.unapproved).toEqual([{ role: 'licensor', cards: 1 }]);
  });
});

test('the day until which copy can be submitted is told as past when it is', () => {
  const late = sheetOf({}, SUBMITTED, null, '2027-04-02T09:00:00+01:00[Europe/London]');
  expect(late.sets[0]?.dates.find(({ date }) => date === 'toPrinter')).toEqual({
    date: 'toPrinter',
    on: '2027-04-15',
    workingDays: 9,
    submit: { by: '2027-03-31', workingDays: -2 },
  });
  expect(textOf(late)).toContain(
    "<to be decided on before the printer's date, copy is submitted by 31 March 2027: 2 working days ago>",
  );
});

test('is what its schema says', () => {
  const sheet = sheetOf({}, SUBMITTED, { cut: true, writer: 'jonah' });
  const value: unknown = JSON.parse(JSON.stringify(sheet));
  expect(validate(StatusSheetShape, value)).toEqual({ ok: true, value: sheet });
});
