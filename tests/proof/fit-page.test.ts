import { beforeAll, describe, expect, test } from 'vitest';

import { proofSheets } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { ODD } from './odd-set.js';
import { ask, pageLines, pageOperators } from './tools.js';

const TITLE = 'How full the bios are';
const ODD_OPTIONS = { ...OPTIONS, fonts: ODD.fonts };

describe('the first page of annotated sheets', () => {
  let pdf: Uint8Array;

  beforeAll(async () => {
    ({ pdf } = await proofSheets(seenBy(HOUSE, ODD), ODD_OPTIONS));
  });

  test('tells of each subset how many bios are set, tight and overset', () => {
    const [first = '', second = ''] = pageLines(pdf);
    expect(first).toContain(TITLE);
    expect(second).not.toContain(TITLE);
    expect(first).toMatch(/Gates .*\d bios.* 2 overset/);
  });

  test('marks what is overset by a triangle, and draws a bar for each fullness', () => {
    const [first = ''] = pageOperators(pdf);
    // Three corners, closed and filled in the colour of warning, #b3261e.
    expect(
      first.match(/ m\n.* l\n.* l\nh\n.*\n0\.70196\d* 0\.14901\d* 0\.11764\d* scn\nf$/gm),
    ).toHaveLength(1);
    // Bars in #3d8fc4: one for each fullness that a bio has.
    expect(first.match(/^0\.23921\d* 0\.56078\d* 0\.76862\d* scn\nf$/gm)).toHaveLength(3);
  });

  test('says the same in words to who cannot see it', () => {
    const tree = ask('pdfinfo', ['-struct', 'FILE'], pdf);
    expect(tree).toMatch(/Figure/);
    const json = ask('qpdf', ['--json=2', 'FILE'], pdf);
    expect(json).toMatch(
      /Nine Locks, Gates: \d bios.*, 2 overset; those that fit are from \d+ % to/,
    );
  });

  test('is not drawn for a person, whose cards are not as printed, nor where no bio is set', async () => {
    const cut = await proofSheets(seenBy(person('tobit', ODD), ODD), ODD_OPTIONS);
    expect(pageLines(cut.pdf).join(' ')).not.toContain(TITLE);
    const bare = { ...OPTIONS, set: 'high-water', subset: 'checklist' };
    const list = await proofSheets(seenBy(HOUSE), bare);
    expect(pageLines(list.pdf).join(' ')).not.toContain(TITLE);
  });
});

describe('the overset sheet', () => {
  const asked = { ...ODD_OPTIONS, kind: 'overset' } as const;

  test('has the texts that do not fit, and no other', async () => {
    const { pdf } = await proofSheets(seenBy(HOUSE, ODD), asked);
    const all = pageLines(pdf).join(' ');
    expect(all).toMatch(/overset by \d+ lines: cut about \d+ words/);
    expect(all).toContain('1 line too wide: cut about 1 word');
    expect(all).toContain('no glyph for U+03A9');
    expect(all).not.toMatch(/lines? free(?!; no glyph)|tight/);
    expect(all.match(/Spans|Walls/)).toBeNull();
    expect(ask('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
  });

  test('breaks an overset text as its zone does, what is over in bold', async () => {
    const annotated = await proofSheets(seenBy(HOUSE, ODD), ODD_OPTIONS);
    const long = annotated.placed.find(
      ({ identity, side }) => identity === 'gates/long' && side === 'back',
    );
    const baselines = [...new Set(long?.bio.map(({ baseline }) => baseline))];
    const lines = baselines.map((at) =>
      (long?.bio ?? [])
        .filter(({ baseline }) => baseline === at)
        .map(({ text }) => text)
        .join(' '),
    );
    const { pdf } = await proofSheets(seenBy(HOUSE, ODD), asked);
    const printed = ask('pdftotext', ['-layout', 'FILE', '-'], pdf).split('\n');
    expect(lines.length).toBeGreaterThan(8);
    for (const line of lines) {
      expect(printed.filter((row) => row.includes(line))).toHaveLength(1);
    }
    const fonts = ask('pdffonts', ['FILE'], pdf);
    expect(fonts).toMatch(/Bold/);
  });

  test('says so where every text fits', async () => {
    const { pdf } = await proofSheets(seenBy(HOUSE), { ...OPTIONS, kind: 'overset' });
    expect(pageLines(pdf).join(' ')).toContain('Every text fits its zone.');
  });

  test('is refused for a person', async () => {
    await expect(proofSheets(seenBy(person('tobit', ODD), ODD), asked)).rejects.toThrow(RangeError);
  });
});
