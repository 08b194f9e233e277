import { describe, expect, test } from 'vitest';

import { printedSheets, type Paper } from '../../pipeline/out/print/index.js';
import type { PublicData } from '../../schema/index.js';
import { ask, pageTexts } from '../proof/tools.js';
import { hostileStrings } from '../site/hostile-strings.js';
import { card, data, dataOf, faces, highWater, run, setOf, subset } from './fixture.js';
import { boxesOn, outside, overlaps, pageCount, readOut, unspaced } from './reading.js';

const A4 = { width: 595.28, height: 841.89 };
const MARGIN = 34;

async function sheet(of: PublicData, kind = 'checklist', paper: Paper = 'a4') {
  const found = (await printedSheets(of, faces)).get(`high-water/${kind}-${paper}.pdf`);
  return found ?? expect.fail(`no ${kind} for ${paper}`);
}

const named = (...names: readonly string[]): PublicData =>
  dataOf([
    setOf([
      subset(
        'crew',
        'Crew and Craft',
        'base',
        names.map((name, at) => card(String(at + 1), name)),
      ),
    ]),
  ]);

describe('a name with letters of other languages', () => {
  test('is drawn from the file that has them, as one word', async () => {
    const names = ['Ōtani Żuławski', 'Peñalosa Łaska', 'Šimůnek Ğül', 'Ștefan Ñandú'];
    const text = pageTexts(await sheet(named(...names))).join('');
    for (const name of names) expect(text).toContain(name);
  });

  test('is composed before it is drawn', async () => {
    expect(pageTexts(await sheet(named('O\u0304tani'))).join('')).toContain('Ōtani');
  });

  test('may have a letter that no composed character stands for', async () => {
    // U+0304 on a q: a mark on a letter from the same file.
    const text = pageTexts(await sheet(named('q\u0304uay'))).join('');
    expect(text.normalize('NFD').replace(/\s/g, '')).toContain('q\u0304uay');
  });
});

describe('a character that no font has', () => {
  test('is replaced where it stands, and said to whoever has it read', async () => {
    const pdf = await sheet(named('The lamp 🏮 is lit', '水 and 潮', 'Pim'));
    const text = pageTexts(pdf).join('');
    expect(text).toContain('The lamp ? is lit');
    expect(text).toContain('? and ?');
    const plain = ask('qpdf', ['--json=2', 'FILE'], pdf);
    expect(plain).toContain('"/ActualText": "u:The lamp 🏮 is lit"');
    expect(plain).toContain('"/ActualText": "u:水 and 潮"');
    expect(plain.split('/ActualText').length - 1).toBe(2);
  });

  test('is replaced in a number, a title and a subset too', async () => {
    const odd = setOf([subset('crew', 'Crew 水', 'base', [card('水1', 'Pim')])], {
      title: 'High 水',
    });
    const text = pageTexts(await sheet(dataOf([odd]))).join('');
    expect(text).toContain('High ?');
    expect(text).toContain('Crew ?');
    expect(text).toContain('?1');
  });

  test('is replaced if it controls, and left out if it cannot be seen', async () => {
    const name = 'Pim\u0000the\u200b\u202etoll\u00ad\u2066child\ud800';
    const text = pageTexts(await sheet(named(name))).join('');
    expect(text).toContain('Pim?thetollchild?');
  });
});

describe('a long name', () => {
  test('goes on below itself, whole', async () => {
    const name = Array.from({ length: 60 }, (_, at) => `word${String(at)}`).join(' ');
    const pdf = await sheet(named('Pim', name, 'Old Pell'));
    expect(unspaced(pdf)).toContain(`2${name.replaceAll(' ', '')}3OldPell`);
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, A4, MARGIN)).toEqual([]);
  });

  test('of one word is divided', async () => {
    const name = 'Aquamarine'.repeat(40);
    const pdf = await sheet(named('Pim', name, 'Old Pell'));
    expect(unspaced(pdf)).toContain(`2${name}3OldPell`);
    expect(overlaps(pdf)).toEqual([]);
    expect(outside(pdf, A4, MARGIN)).toEqual([]);
  });

  test('that is longer than a page goes on over it', async () => {
    const name = Array.from({ length: 9000 }, (_, at) => `w${String(at)}`).join(' ');
    const pdf = await sheet(named('Pim', name, 'Old Pell'));
    const said = unspaced(pdf);
    let at = 0;
    for (const word of name.split(' ')) {
      at = said.indexOf(word, at);
      if (at < 0) expect.fail(`${word} is missing`);
    }
    expect(pageCount(pdf)).toBeGreaterThan(2);
    expect(boxesOn(pdf).reduce((sum, count) => sum + count, 0)).toBe(3);
    expect(outside(pdf, A4, MARGIN)).toEqual([]);
  });

  test('of a set, a subset, a product, a parallel is whole', async () => {
    const long = (word: string): string => `${word} `.repeat(150).trim();
    const all = setOf([subset('crew', long('crew'), 'base', run(3))], {
      title: long('title'),
      products: [{ id: 'p', title: long('product'), pack: 6, box: 24, odds: [] }],
      parallels: [
        {
          id: 'p',
          title: long('parallel'),
          of: ['crew'],
          run: 9,
          tell: long('tell'),
          revealed: null,
        },
      ],
    });
    const checklist = await sheet(dataOf([all]));
    const counter = await sheet(dataOf([all]), 'counter');
    const count = (pdf: Uint8Array, word: string): number =>
      pageTexts(pdf)
        .join(' ')
        .split(new RegExp(`\\b${word}\\b`)).length - 1;
    // Once as a heading, once as what the parallel is of.
    expect(count(checklist, 'crew')).toBe(300);
    expect(count(checklist, 'title')).toBe(150);
    expect(count(checklist, 'tell')).toBe(151); // and "How to tell"
    expect(count(counter, 'product')).toBe(150);
    expect(count(counter, 'parallel')).toBe(150);
    for (const pdf of [checklist, counter]) {
      expect(overlaps(pdf)).toEqual([]);
      expect(outside(pdf, A4, MARGIN)).toEqual([]);
    }
  });

  test('and long terms stand once, after all else', async () => {
    const terms = Array.from({ length: 400 }, (_, at) => `term${String(at)}`).join(' ');
    const property = { ...data.property, dataTerms: terms };
    const pdf = await sheet(dataOf([setOf([subset('a', 'Base', 'base', run(500))])], { property }));
    expect(unspaced(pdf).split(terms.replaceAll(' ', '')).length).toBe(2);
    expect(outside(pdf, A4, MARGIN)).toEqual([]);
  });
});

test.each(['checklist', 'counter'])('hostile text is drawn as it is (%s)', async (kind) => {
  const { data: hostile, marks } = hostileStrings(dataOf([highWater]));
  const [set] = hostile.sets;
  const sheets = await printedSheets(hostile, faces);
  const pdf = sheets.get(`${set?.id ?? ''}/${kind}-a4.pdf`) ?? expect.fail('no sheet');
  const said = unspaced(pdf);
  const shown = marks.filter(({ path }) =>
    kind === 'checklist'
      ? /^sets\.0\.(?:title|subsets\.\d+\.(?:title|cards\.\d+\.(?:number|name|signers))|parallels\.\d+\.(?:title|tell))/.test(
          path,
        )
      : /^sets\.0\.(?:title|subsets\.\d+\.title|products\.\d+\.title|parallels\.\d+\.(?:title|tell))/.test(
          path,
        ),
  );
  expect(shown.length).toBeGreaterThan(kind === 'checklist' ? 250 : 15);
  for (const { mark, path } of shown) {
    expect(said.includes(`${mark}<script>"'&amp;</script>`), path).toBe(true);
  }
  expect(ask('qpdf', ['--check', 'FILE'], pdf)).toContain('No syntax or stream encoding errors');
  expect(overlaps(pdf)).toEqual([]);
  expect(readOut(pdf)).toMatch(/^Document /);
});
