import { describe, expect, test } from 'vitest';

import type { ViewRun } from '../../pipeline/gate/index.js';
import { heldLines } from '../../pipeline/out/card/index.js';
import { setText, type TextRun } from '../../pipeline/typeset/index.js';
import { CHROME } from './fixture.js';

type Held = Exclude<ViewRun, { readonly held: true }>;

function run(text: string, hold: string | null = null): Held {
  return { text, italic: false, bold: false, hold, opens: null, level: 0 };
}

/** The words of the lines that have held words, by hold. */
function marked(bio: readonly (readonly Held[])[], hyphens: 'none' | 'auto' = 'none'): unknown {
  const zone = {
    x: 0,
    y: 0,
    width: 24,
    height: 60,
    font: 'body',
    size: 8,
    leading: 10,
    hyphens,
  };
  const text: readonly (readonly TextRun[])[] = bio;
  const { lines } = setText(text, zone, CHROME);
  return heldLines(bio, lines).map(({ hold, lines: held }) => [
    hold,
    held.map((line) => line.words.map((word) => word.text).join(' ')),
  ]);
}

describe('the lines that have held words', () => {
  test('are none where nothing is held', () => {
    expect(marked([[run('The lake rose again.')]])).toEqual([]);
  });

  test('are those on which a held word stands, in its own paragraph', () => {
    expect(
      marked([
        [run('The same words.')],
        [run('Row on. '), run('The same words', 'spring'), run(' end it.')],
      ]),
    ).toEqual([['spring', ['Row on. The same', 'words end it.']]]);
  });

  test('are told apart by what holds them', () => {
    expect(
      marked([[run('One ', 'spring'), run('two three four five '), run('six', 'finale')]]),
    ).toEqual([
      ['spring', ['One two three four']],
      ['finale', ['five six']],
    ]);
  });

  test('count both parts of a divided word', () => {
    expect(
      marked(
        [[run('Slow '), run('underwater-', 'spring'), run('ferrywrightship', 'spring')]],
        'auto',
      ),
    ).toEqual([['spring', expect.arrayContaining([expect.stringMatching(/^Slow/)])]]);
  });
});
