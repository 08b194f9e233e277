import spec from 'commonmark-spec';
import { describe, expect, test } from 'vitest';

import { readCopy } from '../../pipeline/read/copy.js';
import { piecesOf, readHtml } from './reference-html.js';

const FRONT = '---\nnumber: "1"\n---\n';

const HALF = 'this looks like a held span or a count that was not closed';
const HTML = 'this looks like HTML';
const DEFINITION = 'a reference definition is not used in copy';

/**
 * Examples that come out as plain text in HTML and are refused here: as text they would show markup
 * that its writer meant to be something, or they hold words that no reader sees.
 */
const REFUSED: Readonly<Record<number, readonly string[]>> = {
  14: [HTML],
  41: [HALF],
  207: [DEFINITION],
  208: [DEFINITION],
  210: [DEFINITION],
  488: [HALF],
  490: [HALF],
  493: [HALF],
  497: [HALF],
  508: [HALF],
  511: [HALF],
  513: [HALF],
  545: [HALF, DEFINITION],
  546: [HALF],
  547: [HALF],
  563: [DEFINITION],
  592: [DEFINITION],
  602: [HTML],
  606: [HTML],
  609: [HTML],
  610: [HTML],
  619: [HTML],
  620: [HTML],
  621: [HTML],
  622: [HTML],
  624: [HTML],
  632: [HTML],
};

// CommonMark 0.31.2, the 652 examples of its specification (npm commonmark-spec 0.31.2).
const EXAMPLES = spec.tests.map(({ number, section, markdown, html }) => {
  const body = markdown.replaceAll('→', '\t');
  const text = `${FRONT}${body}`;
  const { copy, faults } = readCopy({ file: 'card.md', text }, FRONT.length);
  const wanted = readHtml(html.replaceAll('→', '\t'));
  return { name: `${String(number)} (${section})`, number, text, copy, faults, wanted };
});

describe('the examples of CommonMark', () => {
  const plain = EXAMPLES.filter(({ wanted, number }) => wanted && !(number in REFUSED));
  const refused = EXAMPLES.filter(({ number }) => number in REFUSED);
  const others = EXAMPLES.filter(({ wanted }) => !wanted);

  test('are 652: accepted, accepted by the reference alone, refused by both', () => {
    expect(EXAMPLES).toHaveLength(652);
    expect([plain.length, refused.length, others.length]).toStrictEqual([189, 27, 436]);
  });

  test.each(plain)('that are words in p, em, strong and br read as such: $name', (example) => {
    expect(example.faults).toStrictEqual([]);
    expect(piecesOf(example.copy)).toStrictEqual(example.wanted);
  });

  test.each(refused)('that would show markup are refused: $name', ({ faults, wanted, number }) => {
    expect(wanted).not.toBeNull();
    expect(faults.map(({ message }) => message)).toStrictEqual(REFUSED[number]);
  });

  test('that have any other markup are refused, each at a place in the body', () => {
    for (const { name, text, faults } of others) {
      expect(faults.length, name).toBeGreaterThan(0);
      for (const { rule, spot, found } of faults) {
        expect(rule).toBe('copy-markup');
        expect(spot.from, name).toBeGreaterThanOrEqual(FRONT.length);
        expect(spot.to, name).toBeGreaterThan(spot.from);
        const words = text.slice(spot.from, spot.to);
        expect(words.startsWith(found ?? ''), name).toBe(true);
        expect(words, name).not.toContain('\n\n');
      }
    }
  });
});

describe('the reader of reference HTML, by which the others are judged', () => {
  const plain = (text: string) => ({ text, italic: false, bold: false });

  test.each([
    ['<p>a &lt;b&gt; &amp;amp; &quot;</p>\n', [[plain('a <b> &amp; "')]]],
    [
      '<p><em>a</em> b<strong>c<em>d</em></strong></p>\n<p>e\nf</p>\n',
      [
        [
          { text: 'a', italic: true, bold: false },
          plain(' b'),
          { text: 'c', italic: false, bold: true },
          { text: 'd', italic: true, bold: true },
        ],
        [plain('e f')],
      ],
    ],
    ['<p>a<br />\nb</p>\n', [[plain('a\nb')]]],
    ['', []],
    ['<p><code>a</code></p>\n', null],
    ['<p><a href="x">a</a></p>\n', null],
    ['<h1>a</h1>\n', null],
    ['a\n', null],
    ['<p>a <b c</p>', null],
    ['<p><em>a</p></em>', null],
  ])('reads %j', (html, expected) => {
    expect(readHtml(html)).toStrictEqual(expected);
  });
});
