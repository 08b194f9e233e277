import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { deflateSync } from 'node:zlib';

import { describe, expect, it } from 'vitest';

import { auditSite } from '../../pipeline/audit/index.js';
import { programPath } from '../setup/programs.mjs';
import { pdfOf } from './containers.js';
import { SMALL, SMALL_DAY } from './small-property.js';

const NAME = 'Ysolde Marrack';
const SHORT = 'Osk';
const FONT = createRequire(import.meta.url).resolve(
  '@fontsource/alegreya/files/alegreya-latin-400-normal.woff',
);

/** Where in a PDF what was found: the ways into it. */
function ways(bytes: Uint8Array, name = NAME): readonly (readonly string[])[] {
  return auditSite(new Map([['a.pdf', bytes]]), SMALL, SMALL_DAY)
    .filter(({ words, from }) => words === name || from.startsWith('something'))
    .map(({ place, from }) => (from.startsWith('something') ? [from] : place.inside));
}

/** A PDF written anew by another program. */
function rewritten(bytes: Uint8Array, ...options: readonly string[]): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'audit-pdf-'));
  const [from, to] = [join(folder, 'from.pdf'), join(folder, 'to.pdf')];
  try {
    writeFileSync(from, bytes);
    execFileSync(programPath('qpdf'), [...options, from, to]);
    return readFileSync(to);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const page = (text: string, compress = true): Promise<Buffer> =>
  pdfOf({ compress }, (document) => document.font(FONT).fontSize(9).text(`We saw ${text} here.`));

describe('a PDF tells what is held', () => {
  it.each([
    ['in an embedded font', page(NAME)],
    ['in an embedded font, not packed', page(NAME, false)],
    ['in a standard font', pdfOf({}, (document) => document.text(`We saw ${NAME} here.`))],
    [
      'with letters set apart',
      pdfOf({}, (document) => document.font(FONT).text(NAME, { characterSpacing: 2 })),
    ],
    [
      'in two pieces',
      pdfOf({}, (document) =>
        document.font(FONT).text('Ysol', { continued: true }).fillColor('red').text('de Marrack'),
      ),
    ],
    ['over two lines', pdfOf({}, (document) => document.font(FONT).text('Ysolde\nMarrack'))],
  ])('on a page, %s', async (_way, made) => {
    expect(ways(await made)).toContainEqual(['page 1']);
    expect(ways(rewritten(await made, '--object-streams=generate'))).toContainEqual(['page 1']);
    expect(ways(rewritten(await made, '--qdf'))).toContainEqual(['page 1']);
    expect(ways(rewritten(await made, '--linearize'))).toContainEqual(['page 1']);
  });

  it('by a short name, as a word of its own alone', async () => {
    expect(ways(await page(SHORT), SHORT)).toContainEqual(['page 1']);
    expect(ways(await page('Oskar and flosk'), SHORT)).toEqual([]);
  });

  it.each([
    ['in its metadata', pdfOf({ info: { Title: `About ${NAME}` } }, () => undefined)],
    ['in a bookmark', pdfOf({}, (document) => document.outline.addItem(`About ${NAME}`))],
    [
      'in a note',
      pdfOf({}, (document) => document.note(10, 10, 50, 50, `Ask ${NAME.toUpperCase()}`)),
    ],
    [
      'in a link',
      pdfOf({}, (document) => document.link(1, 1, 9, 9, 'https://a.example/ysolde-marrack/')),
    ],
  ])('%s', async (_way, made) => {
    expect(ways(await made)).toEqual([['strings']]);
    expect(ways(rewritten(await made, '--object-streams=generate'))).toEqual([['strings']]);
  });

  it('in a file that lies in it', async () => {
    const file = Buffer.from(deflateSync(`We saw ${NAME} here.`));
    const made = await pdfOf({}, (document) => document.file(file, { name: 'a.bin' }));
    expect(ways(made).flat().join(' > ')).toMatch(/^object \d+ > packed at byte 0$/);
  });

  it('and what an innocent one shows is no finding', async () => {
    expect(ways(await page('an open boat, and Odalys Thrane in it,'))).toEqual([]);
    const whole = auditSite(new Map([['a.pdf', await page('an open boat')]]), SMALL, SMALL_DAY);
    expect(whole).toEqual([]);
  });
});

it('a PDF that nobody can open is a finding itself', async () => {
  const closed = rewritten(await page(NAME), '--encrypt', '', 'b', '256', '--');
  expect(ways(closed)).toEqual([['something that cannot be opened: it is encrypted']]);
});
