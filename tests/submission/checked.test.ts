import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';

import fc from 'fast-check';
import { afterEach, describe, expect, it } from 'vitest';

import { diskFolder, readContent, memoryFolder, readReview } from '../../pipeline/read/index.js';
import { sampleWith } from '../../pipeline/checks/index.js';
import {
  recordAnswer,
  recordChecked,
  settleLeft,
  type CheckedOrder,
} from '../../pipeline/submission/index.js';
import { stamped } from '../../pipeline/submission/checked-stamp.js';
import type { Asker } from '../../pipeline/write/index.js';
import { Died, dyingDisk, type Ending } from '../release/dying-disk.js';
import { runMain } from '../cli/run-main.js';
import { LAMP_READ, PEOPLE_TOO, PROPERTY_WITH_CUTS } from './checked-ground.js';
import {
  LAMP,
  NOW,
  QUAY,
  decisionOn,
  fileOf,
  placed,
  sentRecord,
  textsBelow,
  unsigned,
} from './ground.js';

const asker = (pid: number): Asker => ({ pid, host: 'dock', runs: () => false });

let roots: string[] = [];
afterEach(() => {
  for (const root of roots) rmSync(root, { recursive: true, force: true });
  roots = [];
});

function ground(more: Readonly<Record<string, string>> = {}): string {
  const root = placed({ ...PROPERTY_WITH_CUTS, ...PEOPLE_TOO, ...LAMP_READ, ...more });
  roots.push(root);
  return root;
}

const record = (contentPath: string, more: Partial<CheckedOrder> = {}) =>
  recordChecked({ contentPath, now: NOW, cards: [QUAY], cut: 'cut-2', by: 'jonah', ...more });

async function refusals(root: string, more: Partial<CheckedOrder>): Promise<readonly string[]> {
  const before = textsBelow(root);
  const outcome = await record(root, more);
  expect(textsBelow(root)).toEqual(before);
  if (outcome.done) throw new Error('it was not refused');
  return outcome.why;
}

/** A card of the sample with this text in its file. */
function cardOf(text: string) {
  const { sets, faults } = readContent(memoryFolder(sampleWith({ 'one/cards/extra/b1.md': text })));
  expect(faults).toEqual([]);
  const card = sets[0]?.cards.find(({ id }) => id === 'b1');
  if (!card) throw new Error('the sample has the card');
  return card;
}

const START = '---\nnumber: X-1\nname: The Chart\nspoiler: open\n';
const BIO = '---\nInk, and a thumbprint of the lake.\n';

describe('the stamp changes nothing else', () => {
  it.each([
    ['at the end', `${START}@${BIO}`, 'checkedAgainst: cut-2\n'],
    ['before a remark', `${START}@remark: Ask\n${BIO}`, 'checkedAgainst: cut-2\n'],
    [
      'before the comment on it',
      `${START}@# ask\n# her\nremark: Ask\n${BIO}`,
      'checkedAgainst: cut-2\n',
    ],
    [
      'before what is accepted, over several lines',
      `${START}@accepted:\n  - { rule: alike, words: a, why: b, by: jonah }\n${BIO}`,
      'checkedAgainst: cut-2\n',
    ],
    [
      'after a folded text',
      `${START}texts:\n  caption: >-\n    A lamp\n    burns\n\n@${BIO}`,
      'checkedAgainst: cut-2\n',
    ],
    [
      'with the line ends of the file',
      `${START}@${BIO}`.replaceAll('\n', '\r\n'),
      'checkedAgainst: cut-2\r\n',
    ],
  ])('where there was none: %s', (_, text, put) => {
    const card = cardOf(text.replace('@', ''));
    expect(stamped(card, 'cut-2')?.source.text).toBe(text.replace('@', put));
  });

  it.each([
    ['plain', 'cut-1', 'cut-2'],
    ['in double quotes', '"cut-1"', '"cut-2"'],
    ['in single quotes', "'cut-1'", "'cut-2'"],
    ['before a comment', 'cut-1   # by hand', 'cut-2   # by hand'],
  ])('where there was one: %s', (_, was, is) => {
    const text = `${START}checkedAgainst: @\nremark: cut-1\n${BIO}`;
    expect(stamped(cardOf(text.replace('@', was)), 'cut-2')?.source.text).toBe(
      text.replace('@', is),
    );
  });

  it('of front matter in braces it is refused, and typed by hand', () => {
    expect(
      stamped(cardOf(`---\n{ number: X-1, name: A, spoiler: open }\n${BIO}`), 'cut-2'),
    ).toBeNull();
  });

  const lines = [
    'remark: "said: #1"',
    'why: a',
    'writer: jonah',
    '# a comment',
    'facts: { Berth: Lock nine }',
    'accepted: []',
    'story: 1/2',
    'texts:\n  caption: |\n    A\n    lamp',
    "checkedAgainst: 'cut-1'",
    'checkedAgainst: cut-1',
  ];
  it('whatever stands around it, in whatever order', () => {
    fc.assert(
      fc.property(
        fc.shuffledSubarray(lines, { minLength: 1 }),
        fc.constantFrom('\n', '\r\n'),
        (some, lineEnd) => {
          const own = some.filter(
            (line, at) =>
              some.findIndex((other) => other.split(':')[0] === line.split(':')[0]) === at,
          );
          const text = `${START}${own.join('\n')}\n${BIO}`.replaceAll('\n', lineEnd);
          const card = cardOf(text);
          const after = stamped(card, 'cut-2');
          expect(after?.front).toEqual({ ...card.front, checkedAgainst: 'cut-2' });
          const added = `checkedAgainst: cut-2${lineEnd}`;
          const undone = text.includes('checkedAgainst')
            ? after?.source.text.replace('cut-2', 'cut-1')
            : after?.source.text.replace(added, '');
          expect(undone).toBe(text);
        },
      ),
    );
  });
});

it('keeps the byte order mark of a file', async () => {
  const file = 'one/cards/base/a2.md';
  const root = ground({ [file]: `\ufeff${LAMP_READ[file] ?? ''}` });
  expect(await record(root, { cards: [LAMP] })).toMatchObject({ done: true, stamped: 1 });
  expect(textsBelow(root)[file]).toBe(`\ufeff${(LAMP_READ[file] ?? '').replace('cut-1', 'cut-2')}`);
});

describe('refuses', () => {
  it.each<[string, Partial<CheckedOrder>, string]>([
    [
      'a number of two sets',
      { cards: ['2'] },
      '2: several cards are called so: name one of one/base/a2, two/base/a2',
    ],
    [
      'a card of another set than the one that is named',
      { cards: ['one/base/a2'], set: 'two' },
      'there is no card one/base/a2: the nearest is two/base/a2',
    ],
    ['a set that is none', { set: 'too' }, 'there is no set too: the nearest is two'],
    [
      'somebody outside',
      { by: 'amara' },
      'amara is not of the house: --by names a writer, editor, publisher',
    ],
    [
      'an older cut',
      { cards: ['one/extra/b1'], cut: 'cut-1' },
      'one/extra/b1: it was read against cut-2, which came in after cut-1',
    ],
    [
      'a card that is not issued',
      { cards: ['one/base/a1'] },
      'one/base/a1: it is not issued, so that no copy of it prints',
    ],
  ])('%s', async (_, order, why) => {
    const other = LAMP_READ['one/cards/base/a2.md'] ?? '';
    const chart = `${START}checkedAgainst: cut-2\n${BIO}`;
    const root = ground({
      'two/plan.yaml':
        'id: two\ntitle: Two\nspoiler: open\nstage: planning\nsubsets: [{ id: base, title: Base, group: base, numbers: { from: 2, to: 2 } }]\n',
      'two/cards/base/a2.md': other,
      'one/cards/extra/b1.md': chart,
      'one/cards/base/a1.md':
        '---\nnumber: "1"\nname: The Quay\nspoiler: open\nissued: "no"\n---\n',
    });
    expect(await refusals(root, order)).toContain(why);
  });

  it('somebody who is not among those that see the card', async () => {
    const people = (PEOPLE_TOO['people.yaml'] ?? '').replace(
      'role: writer, clearance: open }',
      'role: writer, clearance: last, sees: { subset: [extra] } }',
    );
    const root = ground({ 'people.yaml': people });
    expect(await refusals(root, { by: 'wilf', cards: [LAMP] })).toEqual([
      `${LAMP}: wilf, who is cleared for last, is not told all of its copy and cannot have read it: name with --by who has`,
    ]);
    expect(await record(root, { by: 'wilf', cards: ['extra/b1'] })).toMatchObject({ done: true });
  });

  it('a property without cuts', async () => {
    const property = (PROPERTY_WITH_CUTS['property.yaml'] ?? '').replace(
      /cuts:\n(?: {2}-.*\n)+(?=approvals)/,
      '',
    );
    const root = ground({
      'property.yaml': property,
      'one/cards/base/a2.md': `${START.replace('X-1', '"2"')}story: 1/4\n${BIO}`,
    });
    expect(await refusals(root, {})).toEqual([
      'property.yaml knows no cut cut-2: it lists none in `cuts`',
    ]);
  });

  it('what a ledger that cannot be trusted would be written to', async () => {
    const root = ground({ 'review/ledger.jsonl': 'x\n' });
    expect(await refusals(root, {})).toEqual([expect.stringContaining('cannot be trusted')]);
  });
});

it('leaves what is approved approved', async () => {
  const root = ground();
  const packet = await sentRecord(root);
  const parts = ['copy', 'image', 'layout', 'web'] as const;
  const answer = unsigned(
    packet,
    parts.map((part) => decisionOn(packet, QUAY, part)),
  );
  const place = { contentPath: root, now: NOW, dryRun: false };
  expect(await recordAnswer({ ...place, octets: fileOf(answer) })).toMatchObject({ done: true });
  const about = async (): Promise<string[]> => {
    const run = await runMain(['check', '--content', root, '--format', 'json'], root);
    const { findings }: { findings: { card: string; rule: string }[] } = JSON.parse(run.stdout);
    return findings
      .filter(({ rule }) => rule.startsWith('approval-'))
      .map(({ rule, card }) => `${rule} ${card}`);
  };
  const before = await about();
  expect(before).not.toContain('approval-missing base/a1');
  expect(before).toContain('approval-missing base/a2');
  expect(await record(root)).toMatchObject({ done: true, stamped: 1 });
  expect(await about()).toEqual(before);
});

it.each<Ending>(['before', 'halfway'])(
  'dies at any call of the disk (%s), and all of it is there or nothing',
  async (ending) => {
    const start = ground();
    const copy = (): string => {
      const root = mkdtempSync(join(tmpdir(), 'holdback-checked-'));
      roots.push(root);
      cpSync(start, root, { recursive: true });
      return root;
    };
    const order = { cards: [QUAY, LAMP] };
    const whole = copy();
    const counting = dyingDisk(Infinity, 'before');
    await record(whole, { ...order, disk: counting, asker: asker(1) });
    const all = visible(whole);
    const old = visible(start);
    const left = new Set<string>();
    for (let at = 0; at < counting.calls(); at += 1) {
      const root = copy();
      const dying = { ...order, disk: dyingDisk(at, ending), asker: asker(2) };
      await expect(record(root, dying)).rejects.toThrow(Died);
      settleLeft({ contentPath: root, now: NOW, asker: asker(3) });
      const isAll = isDeepStrictEqual(visible(root), all);
      expect(visible(root), `call ${String(at)}`).toEqual(isAll ? all : old);
      expect(readReview(diskFolder(root)).faults).toEqual([]);
      left.add(isAll ? 'all' : 'nothing');
    }
    expect([...left].sort()).toEqual(['all', 'nothing']);
  },
  120_000,
);

/** What a reader of content finds: nothing hidden, and no lock of the dead. */
function visible(root: string): Record<string, string> {
  return Object.fromEntries(
    Object.entries(textsBelow(root)).filter(
      ([path]) => !path.split('/').some((name) => name.startsWith('.')) && !path.includes('.lock'),
    ),
  );
}
