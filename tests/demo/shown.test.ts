import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { describe, expect, it } from 'vitest';

import { bioFits, check, listClaims } from '../../pipeline/checks/index.js';
import { view } from '../../pipeline/gate/index.js';
import { heldSpans, paragraphText, type Card } from '../../pipeline/model/index.js';
import {
  diskFolder,
  keptDictionaries,
  memoryFolder,
  readProperty,
  readReview,
} from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { demoFiles } from './copy.js';
import { DEMO_NOW } from './day.js';
import { PRINTED_LIST } from './printed-list.js';

/** What the demo is to show going right, each thing where it stands. */
const root = fileURLToPath(new URL('../../content/', import.meta.url));
const { content, fonts } = readProperty(memoryFolder(demoFiles({ art: true })));
const { entries } = readReview(diskFolder(root)).ledger;
const beside = { fonts, dictionaries: keptDictionaries };

function cardOf(key: string): Card {
  const cards = content.sets.flatMap((set) => set.cards);
  const found = cards.find((card) => `${card.set}/${card.subset}/${card.id}` === key);
  if (!found) throw new Error(`the demo has no ${key}`);
  return found;
}

function bioOf(key: string): string {
  return cardOf(key).bio.map(paragraphText).join('\n');
}

describe('the cards', () => {
  it('have bios that are tight, and fit', () => {
    const tight = [...bioFits(content, fonts)].filter(([, fit]) => fit.tight);
    const inCrew = tight.filter(([{ subset }]) => subset === 'crew');
    expect(inCrew.map(([{ id }, { free, overset, fits }]) => [id, free, overset, fits])).toEqual([
      ['c003', 0, 0, true],
      ['c012', 0, 0, true],
      ['c043', 0, 0, true],
    ]);
  });

  it('have a held span of `premiere` on an open card', () => {
    const card = cardOf('high-water/crew/c017');
    expect([card.front.spoiler, card.front.embargo]).toEqual(['open', undefined]);
    expect(heldSpans(card.bio).map(({ hold }) => hold)).toEqual(['premiere']);
    expect(bioOf('high-water/crew/c017')).toContain(
      'without a chart and, since the spring, without a licence.',
    );
  });

  it('have a nine in a story bio that counts no cards', () => {
    const runs = ['s054', 's071'].flatMap((id) => cardOf(`high-water/story/${id}`).bio.flat());
    expect(runs.flatMap(({ count, text }) => (count === null ? [] : [[count, text]]))).toEqual([
      ['none', 'nine'],
      ['none', 'nine'],
    ]);
  });

  it('have the printed checklist of the plan', () => {
    const list = cardOf('high-water/checklist/k084').front.texts?.['list'];
    expect(list?.split('\n')).toEqual(PRINTED_LIST);
  });
});

describe('the public list', () => {
  it('corrects one figure of the first set', () => {
    const released = select(content);
    const seen = released && view(released, { kind: 'public', at: DEMO_NOW });
    expect(seen?.sets.map(({ id, corrections }) => [id, corrections])).toEqual([
      [
        'depth-charts',
        [
          {
            subset: 'depths',
            number: '3',
            letter: null,
            level: 0,
            at: '2026-11-06',
            was: 'forty minutes',
            now: 'four hours',
            note: 'The measurers’ own minute book says four hours, and that there was soup.',
          },
        ],
      ],
      ['high-water', []],
    ]);
    expect(bioOf('depth-charts/depths/d003')).toContain('this took them forty minutes.');
  });
});

describe('the sell sheet of 1 December 2026', () => {
  const file = 'high-water/sales/sell-sheet.md';

  it('claims what was so on its day, and one thing that is so no longer', () => {
    const claims = listClaims(content, beside).filter(
      (each) => each.file === file && each.taken === 'claim',
    );
    expect(claims.map(({ words, stands }) => [words, stands])).toEqual([
      ['126 cards', 'holds'],
      ['84 base cards', 'holds'],
      ['42 inserts', 'holds'],
      ['eight Lake Charts', 'holds'],
      ['twelve autograph cards', 'holds'],
      ['five Timber Relics', 'holds'],
      ['21 artists', 'wrong'],
      ['84 of each', 'holds'],
      ['12 of each', 'holds'],
      ['one of each', 'holds'],
      ['four of each', 'holds'],
    ]);
    const set = content.sets.find(({ id }) => id === 'high-water');
    const sheet = set?.sales.find(({ id }) => id === 'sell-sheet');
    expect(sheet?.front.sent).toBe('2026-12-01');
    const artists = set?.rosters.get('rosters/sketches.yaml')?.value.artists ?? [];
    const gone = artists.filter(({ state }) => state === 'withdrawn');
    expect([artists.length, gone.map(({ name, since }) => [name, since])]).toEqual([
      21,
      [['Hamish Tarrow', '2027-01-18']],
    ]);
  });

  it('has the only finding of the demo, and it is accepted', () => {
    const { findings } = check(content, beside);
    expect(
      findings.map(({ rule, file: at, found, accepted }) => [rule, at, found, accepted]),
    ).toEqual([
      [
        'promise-changed',
        file,
        '21: the subset `sketches`',
        'Hamish Tarrow withdrew in January; the shops were told on the day. (henrike)',
      ],
    ]);
  });
});

interface Decided {
  readonly packet: string;
  readonly part: string;
  readonly decision: string;
  readonly digest: string;
}

/** What was decided of a card, in the order of the ledger. */
function decisionsOn(key: string): readonly Decided[] {
  return entries.flatMap((entry) =>
    entry.kind === 'decided' && 'answer' in entry
      ? entry.answer.decisions
          .filter(({ card }) => card === key)
          .map(({ part, decision, digest }) => ({
            packet: entry.answer.packet,
            part,
            decision,
            digest,
          }))
      : [],
  );
}

const PARTS = ['copy', 'image', 'layout', 'web'] as const;

function inAllParts(packet: string, decision: string): readonly string[] {
  return PARTS.map((part) => `${packet} ${part} ${decision}`);
}

function saidOf(key: string): readonly string[] {
  return decisionsOn(key).map(({ packet, part, decision }) => `${packet} ${part} ${decision}`);
}

describe('the approval history', () => {
  it('has approvals in parts: of one picture by whoever made it', () => {
    expect(saidOf('high-water/benches/be02')).toEqual([
      'yewande-1 image approved',
      'amara-1 copy approved with changes',
      ...inAllParts('amara-1', 'approved').filter((line) => !line.includes(' copy ')),
      ...inAllParts('amara-2', 'approved'),
    ]);
  });

  it('has a card that was approved as noted, and follows the note', () => {
    expect(saidOf('high-water/crew/c005')).toEqual([
      ...inAllParts('amara-1', 'approved as noted'),
      ...inAllParts('amara-2', 'approved'),
    ]);
    expect(bioOf('high-water/crew/c005')).toContain('and some fish.');
  });

  it('has a card that lay on hold and was approved later', () => {
    expect(saidOf('high-water/story/s056')).toEqual([
      ...inAllParts('amara-1', 'on hold'),
      ...inAllParts('amara-2', 'approved'),
    ]);
  });

  it('has a card that was sent back and mended', () => {
    expect(saidOf('high-water/crew/c006')).toEqual([
      ...inAllParts('amara-1', 'revise and resubmit'),
      ...inAllParts('amara-2', 'approved'),
    ]);
    expect(bioOf('high-water/crew/c006')).toContain('doorknobs, hundreds, sorted');
  });

  it.each([
    ['high-water/crew/c008', '9', '8'],
    ['high-water/crew/c009', '8', '9'],
  ])('keeps the history of %s, whose number was %s and is %s', (key, was, is) => {
    expect(saidOf(key)).toEqual([
      ...inAllParts('amara-1', 'approved'),
      ...inAllParts('amara-2', 'approved'),
    ]);
    const layouts = decisionsOn(key).filter(({ part }) => part === 'layout');
    expect(layouts.map(({ digest }) => numberIn(digest))).toEqual([
      [key, was],
      [key, is],
    ]);
    expect(cardOf(key).front.number).toBe(is);
  });
});

/** Whose layout a kept text is, and the number that was printed then. */
function numberIn(digest: string): readonly [string, string] {
  const path = join(root, 'review', 'submitted', `${digest}.json`);
  const kept: { card: string; covers: { number: string } } = JSON.parse(readFileSync(path, 'utf8'));
  return [kept.card, kept.covers.number];
}
