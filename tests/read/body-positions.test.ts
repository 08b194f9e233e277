import type { Nodes } from 'mdast';
import spec from 'commonmark-spec';
import remarkFrontmatter from 'remark-frontmatter';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { describe, expect, test } from 'vitest';

import { readCopy } from '../../pipeline/read/copy.js';

// The reference for where a body's words stand: remark-frontmatter 5.0.0, over the whole file.
const whole = unified().use(remarkParse).use(remarkFrontmatter, ['yaml']).freeze();

function textRanges(node: Nodes): (number | undefined)[][] {
  if (node.type === 'text' || node.type === 'break') {
    return [[node.position?.start.offset, node.position?.end.offset]];
  }
  return 'children' in node ? node.children.flatMap(textRanges) : [];
}

const FRONTS = ['---\nnumber: "1"\n---\n', '---\r\nnumber: "1"\r\n---\r\n', '---\n---\n'];
const BODIES = [
  ...spec.tests.map(({ markdown }) => markdown.replaceAll('→', '\t')),
  '\ufeffA byte order mark of the writer’s own.',
  'One.\r\n\r\nTwo, *three*\\\r\nfour.',
];

describe('a word of the body stands where a reader of the whole file finds it', () => {
  test.each(FRONTS)('below %j', (front) => {
    let compared = 0;
    for (const body of BODIES) {
      const text = front + body;
      const { copy, faults } = readCopy({ file: 'card.md', text }, front.length);
      if (faults.length > 0) continue;
      const ranges = copy.flat().map(({ from, to }) => [from, to]);
      expect(ranges).toStrictEqual(textRanges(whole.parse(text)));
      compared += ranges.length;
    }
    expect(compared).toBeGreaterThan(200);
  });

  test('a byte order mark that was typed stays in the words', () => {
    const [front = ''] = FRONTS;
    const { copy } = readCopy({ file: 'card.md', text: `${front}\ufeffOne.` }, front.length);
    expect(copy.flat()).toMatchObject([{ text: '\ufeffOne.', from: front.length }]);
  });
});
