import { lstatSync, readFileSync, readdirSync, readlinkSync } from 'node:fs';
import { createHash } from 'node:crypto';
import { join } from 'node:path';

import { afterAll, beforeAll, describe, expect, it } from 'vitest';

import type { PublicCard, PublicData } from '../../schema/index.js';
import { copyText, identityOf } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { demoFiles, placeContent, withEdit, type Placed } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { dataOf, digestsBelow, filesBelow, publishAt, stubPicture } from './site-at.js';

const STREET = Date.parse('2027-04-16T09:00:00+01:00');
const files = demoFiles({ art: true });
const content = readContent(memoryFolder(files));

let placed: Placed;
beforeAll(async () => {
  placed = await placeContent(files);
});
afterAll(async () => {
  await placed[Symbol.asyncDispose]();
});

/** Cards of a site by set, subset, number and letter; those without a number by their place. */
function cardsOf(data: PublicData): Map<string, PublicCard> {
  return new Map(
    data.sets.flatMap((set) =>
      set.subsets.flatMap((subset) =>
        subset.cards.map((card, at): [string, PublicCard] => [
          `${set.id}/${subset.id}/${card.number ?? `place ${String(at)}`}${card.letter ?? ''}`,
          card,
        ]),
      ),
    ),
  );
}

describe('one second before the street date and at it', () => {
  let before: Map<string, Uint8Array>;
  let after: Map<string, Uint8Array>;

  beforeAll(async () => {
    const first = await publishAt(placed, STREET - 1000, { out: 'before' });
    const second = await publishAt(placed, STREET, { out: 'after' });
    expect([first.done, second.done]).toEqual([true, true]);
    before = filesBelow(join(placed.root, 'before'));
    after = filesBelow(join(placed.root, 'after'));
  });

  it('differs only in what lifted, and in asOf', () => {
    const [was, is] = [dataOf(before), dataOf(after)];
    const earlier = cardsOf(was);
    const changed = [...cardsOf(is)]
      .filter(([key, card]) => JSON.stringify(card) !== JSON.stringify(earlier.get(key)))
      .map(([key]) => key);
    // Written down from the card files: everything whose level is `shops`, and fields held to it.
    expect(changed).toEqual([
      'high-water/crew/9',
      'high-water/crew/12',
      'high-water/crew/17',
      'high-water/crew/17b',
      'high-water/crew/18',
      ...[29, 43, 45, 46, 47].map((number) => `high-water/crew/${number}`),
      ...[54, 55, 56, 57, 58, 61].map((number) => `high-water/story/${number}`),
      'high-water/charts/LC-6',
      'high-water/benches/MB-3',
      'high-water/benches/MB-5',
      'high-water/signals/NS-7',
      'high-water/signals/NS-10',
      'high-water/signatures/SG-5',
      'high-water/relics/TR-6',
      'high-water/toppers/FP-4',
    ]);
    expect([was.asOf, is.asOf]).toEqual([
      '2027-03-01T00:00:00+00:00[Europe/London]',
      '2027-04-16T09:00:00+01:00[Europe/London]',
    ]);
    expect(frame(is)).toEqual(frame(was));
    const ofLetters = (data: PublicData): readonly number[] =>
      data.sets
        .flatMap(({ products }) => products.flatMap(({ odds }) => odds))
        .filter(({ subset }) => subset === 'letters')
        .map(({ packs }) => packs);
    expect([ofLetters(was), ofLetters(is)]).toEqual([[], [96]]);
  });

  it('shows nothing in the earlier output that is held then', () => {
    const held = content.sets.flatMap((set) =>
      set.cards.filter((card) => card.front.spoiler !== 'open' || card.front.embargo !== undefined),
    );
    const openThen = held.filter((card) => card.front.embargo?.[0] !== 'fair');
    const words = [
      'Ysolde Marrack',
      'Pellam Strood',
      'Magistrate Tern',
      'Barnaby Quent',
      'NG-1',
      'SG-12',
      ...openThen.flatMap((card) => {
        const bio = copyText(card.bio).replace(/\s+/g, ' ');
        return bio === '' ? [] : [bio.slice(0, 40), bio.slice(-40)];
      }),
    ];
    const art = openThen.flatMap((card) => {
      const bytes = files.get(`${card.set}/${card.front.image?.file ?? ''}`);
      return bytes instanceof Uint8Array ? [stubText(bytes)] : [];
    });
    expect(held.length).toBeGreaterThan(15);
    expect(art.length).toBe(openThen.length);
    for (const [path, bytes] of before) {
      const text = `${path}\n${new TextDecoder().decode(bytes)}`;
      const found = [...words, ...art].filter((word) => text.includes(word));
      expect({ path, found }).toEqual({ path, found: [] });
      for (const card of openThen) {
        expect(path).not.toMatch(new RegExp(`\\b${identityOf(card).replace('/', '.*')}\\b`));
      }
    }
  });

  it('holds the search to account: after the lift some of the same words are there', () => {
    const text = [...after.values()].map((bytes) => new TextDecoder().decode(bytes)).join('\n');
    expect(text).toContain('Magistrate Tern');
    expect(text).toContain('Osk Ferrant');
  });

  it('lists every file with its digest in release.json', () => {
    const release: { files: Record<string, string> } = JSON.parse(
      new TextDecoder().decode(before.get('release.json')),
    );
    const digests = [...before]
      .filter(([path]) => path !== 'release.json')
      .map(([path, bytes]) => [path, createHash('sha256').update(bytes).digest('hex')]);
    expect(release.files).toEqual(Object.fromEntries(digests));
  });
});

/** The data without cards, what opens when, and asOf. */
function frame(data: PublicData): unknown {
  return {
    ...data,
    asOf: '',
    news: data.news.filter(({ at }) => !at.startsWith('2027-04-16T09')),
    property: { ...data.property, levels: data.property.levels.slice(0, 1) },
    openings: data.openings.filter((at) => !at.startsWith('2027-04-16T09')),
    sets: data.sets.map((set) => ({
      ...set,
      // The Letters are held, and in the packs of that day: so their odds are told from then on.
      products: set.products.map((sold) => ({
        ...sold,
        odds: sold.odds.filter(({ subset }) => subset !== 'letters'),
      })),
      subsets: set.subsets.map((subset) => ({ ...subset, cards: subset.cards.length })),
    })),
  };
}

function stubText(art: Uint8Array): string {
  return new TextDecoder().decode(stubPicture(art, 0)).replace(/ at 0$/, '');
}

describe('publish', () => {
  it('swaps a relative link in, keeps the release before, and keeps a private record', async () => {
    const first = await publishAt(placed, DEMO_NOW, { out: 'swapped' });
    const link = join(placed.root, 'swapped');
    expect(lstatSync(link).isSymbolicLink()).toBe(true);
    const target = readlinkSync(link);
    expect(target).toMatch(/^swapped\.releases\/2027-03-01-[0-9a-f]{12}$/);
    await publishAt(placed, STREET, { out: 'swapped' });
    await publishAt(placed, STREET + 11 * 3_600_000, { out: 'swapped' });
    expect(readdirSync(`${link}.releases`)).toEqual([
      expect.stringMatching(/^2027-04-16-/),
      expect.stringMatching(/^2027-04-16-/),
    ]);
    const id = first.done && first.changed ? first.record.id : '';
    const path = join(placed.content, 'review', 'releases', `${id}.json`);
    const record: { left: string[] } = JSON.parse(readFileSync(path, 'utf8'));
    expect(record.left).toEqual(['high-water/loose/ng01']);
  });

  it('gives the same bytes at two instants between the same steps', async () => {
    await publishAt(placed, DEMO_NOW, { out: 'one' });
    await publishAt(placed, DEMO_NOW + 5 * 86_400_000, { out: 'two' });
    const [one, two] = ['one', 'two'].map((out) => digestsBelow(join(placed.root, out)));
    expect(two).toEqual(one);
  });

  it('refuses an instant to come, and says so on every page of a preview', async () => {
    const late = { now: DEMO_NOW, out: 'late' };
    expect(await publishAt(placed, STREET, late)).toEqual({
      done: false,
      refusal: { why: 'future' },
    });
    expect(lstatSync(join(placed.root, 'late'), { throwIfNoEntry: false })).toBeUndefined();
    const preview = await publishAt(placed, STREET, { ...late, preview: true });
    expect(preview.done).toBe(true);
    const pages = [...filesBelow(join(placed.root, 'late'))].filter(([path]) =>
      path.endsWith('.html'),
    );
    expect(pages.length).toBeGreaterThan(40);
    for (const [path, bytes] of pages) {
      expect(new TextDecoder().decode(bytes), path).toMatch(/not to be passed on/i);
    }
  });

  it('refuses before `since`', async () => {
    const early = Date.parse('2026-08-31T00:00:00+01:00');
    expect(await publishAt(placed, early, { out: 'early' })).toEqual({
      done: false,
      refusal: { why: 'before since' },
    });
  });

  it('refuses a folder with something in it, and leaves it as it was', async () => {
    await expect(publishAt(placed, DEMO_NOW, { out: 'content' })).rejects.toThrow(
      /is there already and is no release/,
    );
    expect(readdirSync(placed.content)).toContain('property.yaml');
  });

  it('refuses when a rule about numbers has an error, wherever the card is held', async () => {
    const broken = withEdit(files, 'high-water/cards/crew/c019.md', 'number: "19"', 'number: "20"');
    await using other = await placeContent(broken);
    const outcome = await publishAt(other, DEMO_NOW);
    expect(outcome.done).toBe(false);
    expect(readdirSync(other.root)).toEqual(['content']);
    expect(readdirSync(other.content)).not.toContain('review');
  });

  it('is stopped by the check when open text tells a held name', async () => {
    const told = withEdit(
      files,
      'high-water/cards/crew/c001.md',
      'name: Patient Heron',
      'name: Patient Heron of Ysolde  MARRACK',
    );
    await using other = await placeContent(told);
    const outcome = await publishAt(other, DEMO_NOW);
    const refusal = outcome.done ? null : outcome.refusal;
    if (refusal?.why !== 'blocked') throw new Error('it was not stopped');
    expect(refusal.findings.map(({ rule }) => rule)).toContain('name-held');
    expect(readdirSync(other.root)).toEqual(['content']);
  });
});
