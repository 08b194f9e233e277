import { beforeAll, describe, expect, test } from 'vitest';

import { proofSheets } from '../../pipeline/out/proof/index.js';
import { HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { LONG, ODD } from './odd-set.js';
import { ask, pageLines } from './tools.js';

const options = { ...OPTIONS, kind: 'deck', fonts: ODD.fonts } as const;
const view = seenBy(HOUSE, ODD);

describe('the copy deck of the house', () => {
  let pdf: Uint8Array;
  let all: string;

  beforeAll(async () => {
    ({ pdf } = await proofSheets(view, options));
    all = pageLines(pdf).join(' ');
  });

  test('is in order, says whom it is for, and is the same twice', async () => {
    expect(ask('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax');
    for (const page of pageLines(pdf)) expect(page).toContain('INTERNAL, up to: Later episodes');
    expect(Buffer.compare((await proofSheets(view, options)).pdf, pdf)).toBe(0);
  });

  test('has each card in running order, with its words in full and its level', () => {
    const names = ['1 Too long', '2 Too wide', '3 No glyph', '7 Spans', '8 Ysolde', '9 Pellam'];
    const places = names.map((name) => all.indexOf(name));
    expect(places).toEqual([...places].sort((a, b) => a - b));
    expect(places[0]).toBeGreaterThan(-1);
    expect(all).toContain(`bio ${LONG}`);
    expect(all).toContain('9 Pellam Episodes 4 to 7 (spring)');
  });

  test('brackets held words with the id of what holds them', () => {
    expect(all).toContain(
      'The lake [spring: drowned a street] once. [finale: Nobody saw the bell.] Row on.',
    );
  });

  test('tells fit, and a character that its own faces lack', () => {
    expect(all).toMatch(/overset by \d+ lines: cut about \d+ words/);
    expect(all).toContain('The lock at [U+03A9] is shut.');
  });
});

test('the copy deck of a person has no held words, no brackets and no fit', async () => {
  const { pdf } = await proofSheets(seenBy(person('tobit', ODD), ODD), options);
  const all = pageLines(pdf).join(' ');
  expect(all).toContain('The lake [to be revealed] once. Row on.');
  expect(all).toContain('For Tobit Crane');
  for (const never of ['drowned', 'spring', 'Ysolde', 'Pellam', 'overset', 'free', 'INTERNAL']) {
    expect(all, never).not.toContain(never);
  }
});

test('annotated sheets tell the house the copy version, and leave room to sign', async () => {
  const versions = new Map([['locks/gates/spans', '3f9a1c']]);
  const approved = new Map([['locks/gates/spans', 'Not approved: image']]);
  const annotated = { ...options, kind: 'annotated', versions, approved } as const;
  const told = pageLines((await proofSheets(view, annotated)).pdf).join(' ');
  expect(told.match(/Copy version/g)?.length).toBe(1);
  expect(told).toContain('Copy version 3f9a1c Not approved: image Initials Date');
  const cut = await proofSheets(seenBy(person('tobit', ODD), ODD), annotated);
  const seen = pageLines(cut.pdf).join(' ');
  expect(seen).not.toContain('3f9a1c');
  expect(seen).not.toContain('pproved');
  expect(seen).toContain('Initials');
});
