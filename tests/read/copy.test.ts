import { describe, expect, test } from 'vitest';

import { copyText, type Copy } from '../../pipeline/model/index.js';
import { readCopy } from '../../pipeline/read/copy.js';
import { FRONT, bodyOf } from './copy-bodies.js';
import { rangeText, readCard } from './support.js';

/** Runs in short: the words, then what is besides plain. */
function inShort(copy: Copy): string[][] {
  return copy.map((runs) =>
    runs.map(({ text, italic, bold, hold, count }) =>
      [
        text,
        ...(italic ? ['italic'] : []),
        ...(bold ? ['bold'] : []),
        ...(hold === null ? [] : [`held:${hold}`]),
        ...(count === null ? [] : [`count:${count}`]),
      ].join(' | '),
    ),
  );
}

const NOT_CLOSED = 'this looks like a held span or a count that was not closed';
const NOT_A_LINK = 'this link is neither a held span nor a count';
const LIKE_HTML = 'this looks like HTML';

describe('held spans and counts', () => {
  test.each<[string, string[]]>([
    ['[the lake falls](held:finale)', ['the lake falls | held:finale']],
    ['Collect all [sixteen](count:signals).', ['Collect all ', 'sixteen | count:signals', '.']],
    ['[nine](count:none)', ['nine | count:none']],
    ['[a](held:second-signers)[b](held:x2)', ['a | held:second-signers', 'b | held:x2']],
    ['*[a](held:x)*', ['a | italic | held:x']],
    ['[*a* b](held:x)', ['a | italic | held:x', ' b | held:x']],
    ['**a [b](held:x)** c', ['a  | bold', 'b | bold | held:x', ' c']],
    ['[a\nb](held:x)', ['a b | held:x']],
    ['[a\\\nb](held:x)', ['a | held:x', '\n | held:x', 'b | held:x']],
    ['[a](held:x)(y)', ['a | held:x', '(y)']],
    ['[a \\[b\\]](held:x)', ['a [b] | held:x']],
  ])('%s', (markdown, runs) => {
    const { copy, faults } = bodyOf(markdown);
    expect(faults).toStrictEqual([]);
    expect(inShort(copy)).toStrictEqual([runs]);
  });
});

/** What opens too early if it is read as prose, or as a link to somewhere. */
describe('what is nearly a held span or a count is an error', () => {
  test.each([
    ['[a](held:x', NOT_CLOSED],
    ['[a](held: x)', NOT_CLOSED],
    ['[a] (held:x)', NOT_CLOSED],
    ['[a]\n(held:x)', NOT_CLOSED],
    ['[a]( held:x y )', NOT_CLOSED],
    ['[a](held:x y)', NOT_CLOSED],
    ['[a][held:x]', NOT_CLOSED],
    ['[a]{held:x}', NOT_CLOSED],
    ['a](held:x)', NOT_CLOSED],
    ['(held:x)', NOT_CLOSED],
    ['(HELD:x)', NOT_CLOSED],
    ['held:“a”', NOT_CLOSED],
    ['count:9', NOT_CLOSED],
    ['\\[a](held:x)', NOT_CLOSED],
    ['&#91;a](held:x)', NOT_CLOSED],
    ['[a](', NOT_CLOSED],
    ['[a](held&#58;x', NOT_CLOSED],
    ['!\\[a](held:x)', NOT_CLOSED],
    ['[a [b](count:y) c](held:x)', NOT_CLOSED],
    ['*[a](held:x', NOT_CLOSED],
    ['[a](held:x "title")', NOT_A_LINK],
    ["[a](held:x 'title')", NOT_A_LINK],
    ['[a]( held:x )', NOT_A_LINK],
    ['[a](<held:x>)', NOT_A_LINK],
    ['[a](held&#58;x)', NOT_A_LINK],
    ['[a](held:%78)', NOT_A_LINK],
    ['[a](held:\\x)', NOT_A_LINK],
    ['[a](held:X)', NOT_A_LINK],
    ['[a](HELD:x)', NOT_A_LINK],
    ['[a](held:)', NOT_A_LINK],
    ['[a](held:x-)', NOT_A_LINK],
    ['[a](held:x_y)', NOT_A_LINK],
    ['[a](hold:x)', NOT_A_LINK],
    ['[a](held/x)', NOT_A_LINK],
    ['[a]()', NOT_A_LINK],
    ['[](held:x)', NOT_A_LINK],
    ['[ ](held:x)', NOT_A_LINK],
    ['[\\\n](held:x)', NOT_A_LINK],
    ['[a](https://example.org)', NOT_A_LINK],
    ['[a](#held)', NOT_A_LINK],
    ['![a](held:x)', 'an image is not used in copy'],
    ['[a]\n\n[a]: held:x', 'a reference link is not used in copy'],
    ['<held:x>', NOT_A_LINK],
    ['a <!-- held:x -->', 'HTML is not used in copy'],
    ['`[a](held:x)`', 'code is not used in copy'],
    ['a <b c', LIKE_HTML],
    ['a </b c', LIKE_HTML],
    ['a \\<!-- b -->', LIKE_HTML],
  ])('%s', (markdown, message) => {
    expect(bodyOf(markdown).faults[0]).toBe(message);
  });

  test.each(['The count: seven.', 'It held: nobody moved.', 'Upheld:x', '5 < 6 > 4', 'a [b] c'])(
    '%s is prose',
    (markdown) => {
      const { copy, faults } = bodyOf(markdown);
      expect(faults).toStrictEqual([]);
      expect(copyText(copy)).toBe(markdown);
    },
  );
});

describe('a word that no reader would see', () => {
  const SECRET = 'marrack';

  test.each([
    `![${SECRET}](x.png)`,
    `![a](x.png "${SECRET}")`,
    `![a](${SECRET}.png)`,
    `[a](held:x "${SECRET}")`,
    `[a](held:${SECRET}x "t")`,
    `<!-- ${SECRET} -->`,
    `a <!-- ${SECRET} --> b`,
    `a <b title="${SECRET}">b</b>`,
    `<div>\n${SECRET}\n</div>`,
    `[${SECRET}]: held:x`,
    `[a]: held:x "${SECRET}"`,
    `[a]: <${SECRET}>\n\n[a]`,
    `[a][${SECRET}]\n\n[${SECRET}]: x`,
    `\`\`\` ${SECRET}\n\`\`\``,
    `~~~ ${SECRET}`,
    `<https://${SECRET}.example>`,
    `<a@${SECRET}.example>`,
    `<?${SECRET}?>`,
    `<![CDATA[${SECRET}]]>`,
    `# ${SECRET}`,
    `> ${SECRET}`,
    `- ${SECRET}`,
    `    ${SECRET}`,
    `${SECRET}\n===`,
  ])('is an error, not silence: %j', (markdown) => {
    expect(bodyOf(markdown).faults).not.toStrictEqual([]);
    expect(readCard(FRONT + markdown).card).toBeUndefined();
  });

  test('two errors are two findings, each at its place', () => {
    const text = `${FRONT}One <b>two</b>.\r\n\r\n# Three\r\n\r\n[four](held:)\r\n`;
    const { faults } = readCopy({ file: 'card.md', text }, FRONT.length);
    expect(faults.map(({ spot, found }) => [rangeText(spot), found])).toStrictEqual([
      ['4:5-8', '<b>'],
      ['4:11-15', '</b>'],
      ['6:1-8', '# Three'],
      ['8:1-14', '[four](held:)'],
    ]);
  });

  test('a link over two lines is shown by its first', () => {
    const text = `${FRONT}[one\ntwo](held:)`;
    const { faults } = readCopy({ file: 'card.md', text }, FRONT.length);
    expect(faults).toMatchObject([{ found: '[one' }]);
  });
});

describe('what is no bio by its size', () => {
  const TOO_MUCH = 'this is too much for one file';

  test.each([
    ['characters', 'word '.repeat(10_001)],
    ['emphasis', '*_'.repeat(4000)],
    ['links', '[a]('.repeat(8000)],
    ['lists in lists', '- 1. '.repeat(2000)],
    ['lines', 'a\n'.repeat(2000)],
    ['quotations', '>'.repeat(20_000)],
  ])('is refused before it is parsed: %s', (_, markdown) => {
    const { copy, faults } = bodyOf(markdown);
    expect(copy).toStrictEqual([]);
    expect(faults).toStrictEqual([TOO_MUCH]);
  });

  test('is far more than a sales text has', () => {
    const sheet = 'Twelve cards of the *Patient Heron*, and [two](count:base) more. '.repeat(150);
    expect(bodyOf(sheet).faults).toStrictEqual([]);
  });

  test('nested as deep as is read, a paragraph is copy', () => {
    const deep = 160;
    const { copy, faults } = bodyOf(`${'*a **b '.repeat(deep)}c${' d** e*'.repeat(deep)}`);
    expect(faults).toStrictEqual([]);
    expect(copy[0]?.find(({ text }) => text.includes('c'))).toMatchObject({
      italic: true,
      bold: true,
    });
  });
});
