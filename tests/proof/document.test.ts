import { beforeAll, describe, expect, test } from 'vitest';

import { proofSheets, type Proof } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, seenBy } from './fixture.js';
import { ODD } from './odd-set.js';
import { ask } from './tools.js';

/** The parts of qpdf's report that are looked at. */
interface Report {
  readonly qpdf: readonly unknown[];
  readonly outlines: readonly Outline[];
  readonly pagelabels: unknown;
}

interface Outline {
  readonly title: string;
  readonly destpageposfrom1: number;
  readonly kids: readonly Outline[];
}

describe('the document', () => {
  const view = seenBy(HOUSE);
  const options = { ...OPTIONS, set: 'high-water', subset: 'story' };
  let proof: Proof;

  beforeAll(async () => {
    proof = await proofSheets(view, options);
  });

  test('is in order', () => {
    expect(ask('qpdf', ['--check', 'FILE'], proof.pdf)).toContain(
      'No syntax or stream encoding errors',
    );
  });

  test('says what it is, from when and by what, and names no author', () => {
    const info = ask('pdfinfo', ['FILE'], proof.pdf);
    expect(info).toMatch(
      /^Title: +The Ferrywrights: annotated proof \(INTERNAL, up to: Later episodes\)$/m,
    );
    expect(info).toMatch(/^Producer: +Holdback$/m);
    expect(info).toMatch(/^Creator: +Holdback$/m);
    expect(info).toMatch(/^CreationDate: +Tue Dec {2}1 10:00:00 2026 UTC$/m);
    expect(info).toMatch(/^PDF version: +1\.7$/m);
    expect(info).toMatch(/^Tagged: +yes$/m);
    expect(info).not.toMatch(/^Author/m);
  });

  test('embeds each font once, in part, with its letters to be read', () => {
    const rows = ask('pdffonts', ['FILE'], proof.pdf).trim().split('\n').slice(2);
    expect(rows.length).toBe(3);
    expect(new Set(rows.map((row) => row.split(/\s/)[0])).size).toBe(rows.length);
    for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+Alegreya\S* .* yes yes yes /);
  });

  test('is the same to the byte for the same input, and another at another time', async () => {
    expect(Buffer.compare((await proofSheets(view, options)).pdf, proof.pdf)).toBe(0);
    const later = await proofSheets(view, { ...options, made: options.made + 86_400_000 });
    expect(Buffer.compare(later.pdf, proof.pdf)).not.toBe(0);
  });

  test('has its language, its labels and a bookmark to each subset', async () => {
    const odd = await proofSheets(seenBy(HOUSE, ODD), { ...OPTIONS, fonts: ODD.fonts });
    const json = JSON.parse(ask('qpdf', ['--json=2', 'FILE'], odd.pdf)) as Report;
    expect(JSON.stringify(json.qpdf[1])).toContain('"/Lang":"u:en-GB"');
    const [set] = json.outlines;
    expect(set?.title).toBe('The Ferrywrights: Nine Locks');
    expect(set?.kids.map((kid) => [kid.title, kid.destpageposfrom1])).toEqual([
      ['Gates', 2],
      ['Walls', 9],
    ]);
    expect(json.pagelabels).toEqual([
      { index: 0, label: { '/P': 'u:Fit ', '/S': '/D', '/St': 1 } },
      { index: 1, label: { '/P': 'u:Gates ', '/S': '/D', '/St': 1 } },
      { index: 8, label: { '/P': 'u:Walls ', '/S': '/D', '/St': 1 } },
    ]);
  });

  test('is read in order: each card is a section with heading, pictures and paragraphs', () => {
    const tree = ask('pdfinfo', ['-struct-text', 'FILE'], proof.pdf);
    const start = tree.indexOf('"49 ');
    const card = tree.slice(start, tree.indexOf('"50 '));
    expect(card.match(/^ +(Sect|H1|P|Figure)\b/gm)?.length).toBeGreaterThan(8);
    expect(card.indexOf('H1')).toBeGreaterThan(0);
  });

  test('is one page that says so where there is no card', async () => {
    const { pdf, placed } = await proofSheets(view, { ...options, subset: 'nowhere' });
    expect(placed).toEqual([]);
    expect(ask('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
    expect(ask('pdftotext', ['FILE', '-'], pdf)).toContain('There is no card to show.');
  });

  test('is refused for the public, whose view has no layouts', async () => {
    const open = seenBy({ kind: 'public', at: options.made });
    await expect(proofSheets(open, options)).rejects.toThrow(RangeError);
  });
});
