import { describe, expect, it } from 'vitest';
import fc from 'fast-check';

import { frontValues, withValue, type YamlValue } from '../../pipeline/edit/index.js';

const CARD = `---
# who is it
number: "17"   # as printed
name: Odalys Thrane
spoiler: open
image: { file: art/c017.svg, depicts: [Odalys Thrane] }
facts:
  Berth: Lock nine # the ninth
  Craft: 'Patient Heron'
sources:
  - doc: script-4
    ref: p. 31
  - { doc: script-5 } # later
signers: [{ name: Ines Albarran, as: Odalys Thrane, state: signed }, { name: Tove, state: asked }]
remark: |
  Two lines
  of it
---
The bio.
`;
const ORDER = ['number', 'name', 'spoiler', 'state', 'image', 'facts', 'signers', 'writer'];
const source = (text: string): { file: string; text: string } => ({ file: 'a/cards/b/c.md', text });

const after = (path: (string | number)[], value: YamlValue | null, text = CARD): string =>
  withValue(source(text), path, value, ORDER).text;

describe('a value of front matter', () => {
  it.each<[string, (string | number)[], YamlValue | null, string, string]>([
    [
      'stays in its quotes, with its comment',
      ['number'],
      '18',
      'number: "17"   #',
      'number: "18"   #',
    ],
    ['in small quotes too', ['facts', 'Craft'], "It's", "'Patient Heron'", "'It''s'"],
    ['without quotes where it can be', ['name'], 'Odalys', 'name: Odalys Thrane', 'name: Odalys'],
    ['in quotes where it must be', ['name'], 'a: b', 'name: Odalys Thrane', 'name: "a: b"'],
    [
      'is new where the schema has it',
      ['state'],
      'ready',
      'spoiler: open\n',
      'spoiler: open\nstate: ready\n',
    ],
    ['goes with its line', ['spoiler'], null, 'spoiler: open\n', ''],
    ['goes from a map of lines', ['facts', 'Craft'], null, "  Craft: 'Patient Heron'\n", ''],
    ['goes from a map on one line', ['image', 'depicts'], null, ', depicts: [Odalys Thrane]', ''],
    [
      'is new in a map on one line',
      ['image', 'alt'],
      'A pilot',
      'Thrane] }\n',
      'Thrane], alt: A pilot }\n',
    ],
    [
      'is new in a map of lines',
      ['facts', 'Rig'],
      '2 masts',
      "Heron'\n",
      'Heron\'\n  Rig: "2 masts"\n',
    ],
    ['changes in a list', ['sources', 0, 'ref'], 'p. 32', 'p. 31', 'p. 32'],
    [
      'goes from the line of its mark',
      ['sources', 0, 'doc'],
      null,
      '- doc: script-4\n    ref',
      '- ref',
    ],
    ['goes with the item', ['sources', 1], null, '  - { doc: script-5 } # later\n', ''],
    [
      'is a new item of lines',
      ['sources', 2],
      { doc: 'script-6' },
      '# later\n',
      '# later\n  - { doc: script-6 }\n',
    ],
    [
      'is a new item on one line',
      ['image', 'depicts', 1],
      'Old Pell',
      '[Odalys Thrane]',
      '[Odalys Thrane, Old Pell]',
    ],
    [
      'makes what it lies in',
      ['variation', 'of'],
      'crew/c001',
      'remark: |\n  Two lines\n  of it\n',
      'remark: |\n  Two lines\n  of it\nvariation: { of: crew/c001 }\n'.replace(
        'crew/c001',
        'crew/c001',
      ),
    ],
    [
      'goes with what it leaves empty',
      ['image', 'depicts', 0],
      null,
      ', depicts: [Odalys Thrane]',
      '',
    ],
    ['of several lines', ['remark'], 'One\nTwo', '|\n  Two lines\n  of it\n', '"One\\nTwo"\n'],
  ])('%s', (_what, path, value, was, is) => {
    expect(CARD).toContain(was);
    expect(after(path, value)).toBe(CARD.replace(was, () => is));
  });

  it('changes in a list only where the list differs', () => {
    const signers = [
      { name: 'New', state: 'asked' },
      { name: 'Tove', state: 'asked' },
    ];
    expect(after(['signers'], signers)).toBe(
      CARD.replace(
        '{ name: Ines Albarran, as: Odalys Thrane, state: signed }',
        '{ name: New, state: asked }',
      ),
    );
  });

  it('keeps the line ends of its file', () => {
    const file = CARD.replaceAll('\n', '\r\n');
    expect(after(['state'], 'ready', file)).toBe(
      file.replace('spoiler: open\r\n', 'spoiler: open\r\nstate: ready\r\n'),
    );
  });

  it('is refused where the file cannot be read', () => {
    expect(() => after(['name'], 'x', '---\nname: [\n---\n')).toThrow(RangeError);
    expect(() => after(['name'], 'x', 'no front matter')).toThrow(RangeError);
  });

  const value = fc.letrec<{ value: YamlValue }>((tie) => ({
    value: fc.oneof(
      { maxDepth: 2 },
      fc.string({ unit: 'grapheme', maxLength: 12 }),
      fc.array(tie('value'), { maxLength: 3, minLength: 1 }),
      fc.dictionary(fc.string({ minLength: 1, maxLength: 6 }), tie('value'), {
        maxKeys: 3,
        minKeys: 1,
      }),
    ),
  })).value;

  it('reads as it was written, and nothing else reads otherwise, whatever it is', () => {
    const paths = [
      ['name'],
      ['facts'],
      ['facts', 'Berth'],
      ['facts', 'New: one'],
      ['sources'],
      ['sources', 1],
      ['image', 'depicts'],
      ['signers', 0, 'as'],
      ['writer'],
      ['remark'],
    ];
    fc.assert(
      fc.property(fc.constantFrom(...paths), value, fc.boolean(), (path, to, crlf) => {
        const text = crlf ? CARD.replaceAll('\n', '\r\n') : CARD;
        const fresh = withValue(source(text), path, to, ORDER);
        const read = frontValues(fresh) ?? {};
        expect(path.reduce<unknown>((at, step) => Reflect.get(Object(at), step), read)).toEqual(to);
        const [top = ''] = path;
        const rest = (all: Record<string, YamlValue> | null): unknown =>
          Object.entries(all ?? {}).filter(([key]) => key !== top);
        expect(rest(read)).toEqual(rest(frontValues(source(text))));
        expect(fresh.text.split('---').at(-1)).toBe(text.split('---').at(-1));
      }),
      { seed: 20270416, numRuns: 150 },
    );
  });
});
