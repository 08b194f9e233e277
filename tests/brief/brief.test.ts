import { describe, expect, test } from 'vitest';

import { sampleWith, type Files } from '../../pipeline/checks/index.js';
import { edited } from '../../pipeline/checks/sample.js';
import { view } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import { HOLDING_SENTENCE, briefOf, briefPage, briefText } from '../../pipeline/out/brief/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';

const BEFORE = instantOf('2026-10-01T12:00:00+01:00[Europe/London]');
const AFTER = instantOf('2027-06-05T12:00:00+01:00[Europe/London]');

const NAMES = `names:
  - { name: Tamsin <Oakum>, kind: character, level: open, say: TAM-zin, aliases: [Tam, { form: Captain Oakum, level: last }] }
  - { name: Ysolde Marrack, kind: character, level: last, say: ee-SOLD }
  - { name: Pim, kind: character, level: open, embargo: [guest] }
  - { name: Old Pell, kind: character, level: open }
secrets:
  - { id: twins, level: last, says: They are twins, allOf: [[Tam], [twin]] }
`;

const HELD: Files = {
  'names.yaml': NAMES,
  ...edited('one/cards/base/a2.md', ['spoiler: open', 'spoiler: later\npublicName: A lamp']),
  ...edited('one/cards/extra/b1.md', ['spoiler: open', 'spoiler: last']),
};

function briefAt(at: number, files: Files = HELD, preview = false) {
  const released = select(readContent(memoryFolder(sampleWith(files))));
  const seen = released && view(released, { kind: 'public', at });
  if (!seen) throw new Error('the sample is public by then');
  return briefOf(seen, preview);
}

describe('a brief', () => {
  test('says what is listed and what is revealed, names, and the holding sentence', () => {
    expect(briefText(briefAt(BEFORE)))
      .toBe(`What may be said of The Lake from 1 September 2026, 09:00 (Europe/London) on

One
  The checklist of One lists two cards. One is revealed, one is to be revealed.
  The street date of One is 5 June 2027.
  Base: Two cards listed. One is revealed, one is to be revealed.
  Extra: No cards listed.

Names
  Old Pell
  Tamsin <Oakum> (TAM-zin), also Tam

More is revealed
  16 April 2027, 20:00

About everything else say
  ${HOLDING_SENTENCE}
`);
  });

  test('says the same about everything else when there is nothing else', () => {
    expect(briefText(briefAt(AFTER)))
      .toBe(`What may be said of The Lake from 5 June 2027, 09:00 (Europe/London) on

One
  The checklist of One lists three cards. All are revealed.
  The street date of One is 5 June 2027.
  Base: Two cards listed. All are revealed.
  Extra: One card listed. It is revealed.

Names
  Old Pell
  Tamsin <Oakum> (TAM-zin), also Captain Oakum, Tam
  Ysolde Marrack (ee-SOLD)

About everything else say
  ${HOLDING_SENTENCE}
`);
  });

  test('is not changed by what is held', () => {
    const other = {
      ...HELD,
      'names.yaml': NAMES.replace('Ysolde', 'Isolde')
        .replace('twins, level', 'twin, level')
        .replace('ee-SOLD', 'ih')
        .replace('Pim', 'Pam'),
      ...edited('one/cards/base/a2.md', [
        'spoiler: open',
        'spoiler: later\npublicName: A lamp\ncredits: [{ role: Ink, name: Wen }]',
      ]),
      'one/cards/extra/b1.md': null,
    };
    expect(briefPage(briefAt(BEFORE, other))).toBe(briefPage(briefAt(BEFORE)));
  });

  test('is a page that asks for nothing else, with all signs escaped', () => {
    const page = briefPage(briefAt(BEFORE));
    expect(page).toContain('<th scope="row">Tamsin &lt;Oakum&gt;</th><td>TAM-zin</td><td>Tam</td>');
    expect(page).toContain('<p class="cards">1\u00a0The Quay</p>');
    expect(page).toContain(`<p class="say">${HOLDING_SENTENCE}</p>`);
    expect(page).not.toMatch(/src=|href=|url\(|<script|Not to be passed on/);
  });

  test('of an instant to come says that it is not to be passed on', () => {
    expect(briefPage(briefAt(AFTER, HELD, true))).toContain('Not to be passed on before that.');
    expect(briefText(briefAt(AFTER, HELD, true))).toContain('Not to be passed on before that.');
  });

  test('is made of the public’s view alone', () => {
    const released = select(readContent(memoryFolder(sampleWith(HELD))));
    const house = released && view(released, { kind: 'house' });
    expect(() => house && briefOf(house, false)).toThrow(RangeError);
  });
});
