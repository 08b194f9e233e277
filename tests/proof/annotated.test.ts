import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';

import {
  proofArt,
  ProofError,
  proofSheets,
  type Proof,
  type ProofOptions,
} from '../../pipeline/out/proof/index.js';
import { DEMO, HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { astray } from './near.js';
import { ODD } from './odd-set.js';
import { ask, foundWords, pageLines, pageOperators } from './tools.js';

const oddOptions: ProofOptions = { ...OPTIONS, fonts: ODD.fonts };

describe('annotated sheets of the demo', () => {
  let proof: Proof;
  let pages: readonly string[];

  beforeAll(async () => {
    proof = await proofSheets(seenBy(HOUSE), OPTIONS);
    pages = pageLines(proof.pdf);
  });

  /** The page of a card's front. */
  const pageOf = (identity: string): string => {
    const side = proof.placed.find((each) => each.identity === identity);
    return pages[(side?.page ?? 0) - 1] ?? '';
  };

  test('say on each page that they are internal, and the highest level in them', () => {
    expect(pages.length).toBeGreaterThan(30);
    for (const page of pages) expect(page).toContain('INTERNAL, up to: Later episodes');
  });

  test('show each card once, its front beside its back', () => {
    const fronts = proof.placed.filter(({ side }) => side === 'front');
    // Twenty of crew, five of each of eight subsets, and two promos, one list, one gate, one panorama.
    expect(fronts.length).toBe(65);
    expect(new Set(fronts.map(({ identity }) => identity)).size).toBe(65);
    const pairs = fronts.filter(({ identity }) => !identity?.startsWith('toppers/'));
    for (const front of pairs) {
      const back = proof.placed.find(
        ({ identity, side }) => identity === front.identity && side === 'back',
      );
      expect(back).toMatchObject({ page: front.page, scale: 1, turn: 'none' });
      expect(back?.trim.y).toBe(front.trim.y);
      // Room for two bleeds between them.
      expect((back?.trim.x ?? 0) - front.trim.x - front.trim.width).toBeGreaterThan(18);
    }
  });

  test('draw every word of every bio where it was measured, within 0.05 pt', () => {
    const face = DEMO.fonts.get('standard')?.get('body')?.regular;
    expect(proof.placed.flatMap(({ bio }) => bio).length).toBeGreaterThan(2000);
    expect(astray(proof.placed, foundWords(proof.pdf), face)).toEqual([]);
  });

  test('tell level, lift, hands, state and writer of each card in words', () => {
    const osk = pageOf('crew/c018');
    expect(osk).toContain('18 Osk Ferrant Crew and Craft');
    expect(osk).toContain('Level First cards (shops)');
    expect(osk).toContain('Lift 16 April 2027, 09:00');
    expect(osk).toContain('In hands 16 April 2027, 09:00');
    expect(osk).toContain('State ready');
    expect(osk).toContain('Writer wilf');
    expect(pageOf('crew/c001')).toContain('Lift open from the start');
    expect(pageOf('signatures/au03')).toContain('Lift no date yet');
  });

  test('tell a variation by its letter, and print the number of its parent', () => {
    const page = pageOf('crew/c017b');
    expect(page).toContain('17 b Odalys Thrane');
    expect(page).toContain('Variation The lamp is lit');
  });

  test('cross out a card that is not issued, and say why', () => {
    const page = pageOf('relics/re04');
    expect(page.match(/Not issued/g)?.length).toBe(2);
    expect(page).toContain('State not issued');
    expect(page).toContain('The wood turned out to be from another boat.');
  });

  test('mark the lines that have held words, and say what holds them', () => {
    expect(pageOf('crew/c017')).toContain('held: premiere');
    expect(pageOf('crew/c001')).not.toContain('held:');
  });

  test('say that art is to come where there is none', () => {
    expect(pageOf('crew/c001')).toContain('Art to come');
  });
});

describe('annotated sheets of odd cards', () => {
  let proof: Proof;
  let pages: readonly string[];

  beforeAll(async () => {
    proof = await proofSheets(seenBy(HOUSE, ODD), oddOptions);
    pages = pageLines(proof.pdf);
  });

  test('say how each text fits', () => {
    const [, first = '', second = ''] = pages;
    expect(first).toMatch(/bio: overset by \d+ lines: cut about \d+ words/);
    expect(first).toContain('bio: 1 line too wide: cut about 1 word');
    expect(second).toContain('bio: 7 lines free; no glyph for U+03A9');
    expect(second).toContain('Fit, front name fits');
    expect(second).toMatch(/Fit, back bio (tight|\d lines? free); set at [56](\.\d)? pt of 6\.8/);
  });

  test('cut about as many words as makes it fit', async () => {
    const words = Number(/cut about (\d+) words/.exec(pages[1] ?? '')?.[1]);
    const over = proof.placed
      .filter(({ identity }) => identity === 'gates/long')
      .flatMap(({ bio }) => bio.filter(({ overset }) => overset));
    expect(words).toBe(over.length);
  });

  test('carry panels that touch the trim into the bleed, and no others', () => {
    const operators = pageOperators(proof.pdf)[2] ?? '';
    // 0, 60, 63.5 x 28.9 mm with 3.175 mm of bleed at three sides, and 5, 40, 10 x 5 mm without.
    expect(operators).toMatch(/^-9 170\.07874 198 90\.92126 re$/m);
    expect(operators).toMatch(/^14\.173228 113\.385827 28\.346457 14\.173228 re$/m);
  });

  test('say that a back is blank, that a card has no number or no layout, and at what scale', () => {
    expect(pages[3]).toContain('Back: blank');
    expect(pages[4]).toMatch(/Shown at \d\d %/);
    expect(pages.at(-1)).toContain('Number none');
    expect(pages.at(-1)?.match(/No layout/g)?.length).toBe(2);
    expect(proof.placed.filter(({ scale }) => scale < 1).length).toBe(2);
  });
});

describe('art', () => {
  const view = seenBy(HOUSE, ODD);

  test('is asked for once', () => {
    expect(proofArt(view)).toEqual(['locks/art/a.svg']);
    expect(proofArt(seenBy(HOUSE), { subset: 'promos' })).toEqual([
      'high-water/art/pr01.svg',
      'high-water/art/pr02.svg',
    ]);
  });

  test.each(['png', 'jpeg'] as const)(
    'is placed from %s bytes, with its alt text',
    async (format) => {
      const picture = sharp({
        create: { width: 70, height: 95, channels: 3, background: '#0b6e69' },
      });
      const bytes = new Uint8Array(await picture.toFormat(format).toBuffer());
      const { pdf } = await proofSheets(view, { ...oddOptions, subset: 'gates', art: () => bytes });
      expect(pageLines(pdf)[1]).not.toContain('Art to come');
      const json = ask('qpdf', ['--json=2', 'FILE'], pdf);
      expect(json).toContain('"/Alt": "u:A lock gate"');
      expect(json.match(/"\/Subtype": "\/Image"/g)?.length).toBe(9);
    },
  );

  test('that is no picture is named', async () => {
    const options = { ...oddOptions, art: () => new Uint8Array([1, 2, 3, 4]) };
    await expect(proofSheets(view, options)).rejects.toThrow(ProofError);
    await expect(proofSheets(view, options)).rejects.toThrow('locks/art/a.svg');
  });
});

describe('sheets for a person', () => {
  test('carry the name on each page, and nothing that is held', async () => {
    const view = seenBy(person('tobit'));
    for (const kind of ['annotated', 'nine-up'] as const) {
      const options = { ...OPTIONS, kind, ...(kind === 'nine-up' ? { subset: 'crew' } : {}) };
      const { pdf } = await proofSheets(view, options);
      const pages = pageLines(pdf);
      const all = [...pages, ask('qpdf', ['--qdf', 'FILE', '-'], pdf)].join(' ');
      for (const page of pages) expect(page).toContain('For Tobit Crane');
      expect(all).not.toContain('INTERNAL');
      // Cards and names of the demo above his clearance, Episodes 1 to 3.
      for (const held of [
        'Ninth Gate',
        'Ysolde',
        'Marrack',
        'Later episodes',
        'finale',
        'spring (',
      ]) {
        expect(all, held).not.toContain(held);
      }
    }
  });

  test('mark what the view shows to be cut, and give no fit', async () => {
    const { pdf } = await proofSheets(seenBy(person('tobit', ODD), ODD), oddOptions);
    const pages = pageLines(pdf);
    const spans = pages.find((page) => page.includes('7 Spans')) ?? '';
    expect(spans).toContain('The lake [to be revealed] once. Row on.');
    expect(spans).toContain('8 The voice');
    expect(spans.match(/Not as printed/g)?.length).toBe(2);
    const closed = pages.find((page) => page.includes('9 To be revealed')) ?? '';
    expect(closed).toContain('Opens 14 May 2027, 20:00');
    expect(closed).toContain('Not as printed');
    const all = pages.join(' ');
    for (const never of [
      'drowned',
      'Nobody',
      'Ysolde',
      'rang',
      'Pellam',
      'knew',
      'free',
      'overset',
    ]) {
      expect(all, never).not.toContain(never);
    }
    for (const page of pages) expect(page).toContain('some cards will print otherwise');
  });
});
