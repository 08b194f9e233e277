import { describe, expect, test } from 'vitest';

import { check, type Files } from '../../pipeline/checks/index.js';
import { cardText, changed } from './change.js';
import { contentWith, lookAt, said } from './look.js';
import { NO_DICTIONARIES } from '../../pipeline/text/index.js';

const ZONES = [
  'number',
  'name',
  'bio',
  'facts',
  'caption',
  'credits',
  'legal',
  'statement',
] as const;

/** The layouts here are made for one rule: others have their own remarks about them. */
const OVERSET = ['overset'];

/** A layout whose zones have room for four lines, but for those named, which have room for one. */
function layout(small: readonly string[], side: 'zones' | 'front' = 'zones'): string {
  const zones = ZONES.map((zone) => {
    const height = small.includes(zone) ? 4 : 16;
    return `  ${zone}: { x: 5, y: 5, width: 26, height: ${String(height)}, font: body, size: 8, leading: 10 }\n`;
  });
  return `id: small
trim: { width: 63.5, height: 88.9 }
bleed: 3
safe: 3
fonts: { body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff } }
zones: ${side === 'zones' ? `\n${zones.join('')}` : '{}\n'}${side === 'front' ? `front:\n${zones.join('')}` : ''}shared: { statement: Whatever is on this card was put there by hand. }
`;
}

function full(back: string): Files {
  return {
    ...changed('one/plan.yaml', [
      ['prefix: X-, from: 1, to: 1', 'codes: [THE HUNDRED AND FIRST]'],
      ['group: inserts,', 'group: inserts, back: small,'],
    ]),
    ...changed('property.yaml', [
      [
        'Oar" }',
        'Oar", depicts: [{ name: Ines Albarran, line: Likeness by leave of Ines Albarran. }] }',
      ],
    ]),
    'backs/small.yaml': back,
    'one/art/a.svg': '<svg/>',
    'one/cards/extra/b1.md': cardText(
      `number: THE HUNDRED AND FIRST
name: The Chart of the Lower Lantern Street
spoiler: open
image: { file: art/a.svg, depicts: [Ines Albarran] }
facts: { Depth: four fathoms, Berth: lock nine }
texts: { caption: "The Heron at Thimble Quay, at night" }
credits: [{ role: Ink, name: Sister Ash }, { role: Wood, name: Tamsin Oakum }]`,
      'Ink, and a thumbprint of the lake, and more.',
    ),
  };
}

describe('overset', () => {
  test('passes where every zone has room', () => {
    expect(said(lookAt(full(layout([])), OVERSET).findings)).toStrictEqual([]);
  });

  test.each(ZONES)('looks at the zone %s', (zone) => {
    const { findings } = lookAt(full(layout([zone])), OVERSET);
    expect(findings).toHaveLength(1);
    expect(findings[0]).toMatchObject({
      rule: 'overset',
      message: expect.stringMatching(
        `^\`${zone}\` is overset by \\d lines?: about \\d+ words? to cut$`,
      ) as unknown,
      file: zone === 'legal' || zone === 'statement' ? 'backs/small.yaml' : 'one/cards/extra/b1.md',
    });
  });

  test('looks at the front too', () => {
    expect(lookAt(full(layout(['name'], 'front')), OVERSET).findings).toMatchObject([
      { message: expect.stringContaining('`name` on the front is overset') as unknown },
    ]);
  });

  test('tells what a layout shares once for all its cards', () => {
    const files = full(layout(['statement', 'legal']));
    const two = {
      ...files,
      ...changed('one/plan.yaml', [['group: base,', 'group: base, back: small,']], files),
    };
    expect(said(lookAt(two, OVERSET).findings).map((line) => line.split(':')[0])).toStrictEqual([
      'overset backs/small.yaml',
      'overset backs/small.yaml',
    ]);
  });

  test.each([
    ['issued: "no"', 0],
    ['issued: "yes"', 1],
  ])('%s', (line, count) => {
    const files = full(layout(['name']));
    const pulled = changed(
      'one/cards/extra/b1.md',
      [['spoiler: open', `spoiler: open\n${line}`]],
      files,
    );
    expect(lookAt({ ...files, ...pulled }, OVERSET).findings).toHaveLength(count);
  });

  test('is silent where fonts are not there', () => {
    const content = contentWith(full(layout(['bio', 'name'])));
    expect(
      check(content, { fonts: new Map(), dictionaries: NO_DICTIONARIES, only: OVERSET }).findings,
    ).toStrictEqual([]);
    expect(
      check(content, {
        fonts: new Map([['small', new Map()]]),
        dictionaries: NO_DICTIONARIES,
        only: OVERSET,
      }).findings,
    ).toStrictEqual([]);
  });
});
