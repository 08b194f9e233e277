import type { PacksPublic } from '../../../schema/index.js';
import { counted, grouped } from './say.js';
import { left, tableText } from './table.js';

/** The block for a wrapper, and below it what is no part of it. */
export function publicText({ preview, sets, cautions, beforePrint }: PacksPublic): string {
  const mark = preview === null ? [] : [`Preview, not to be passed on before ${preview}`];
  if (sets.length === 0) return [...mark, 'No odds are public.\n'].join('\n\n');
  const blocks = sets.flatMap(({ title, products }) => [title, ...products.map(productText)]);
  return `${[...mark, ...blocks, cautions.join('\n'), '----', beforePrint].join('\n\n')}\n`;
}

type Product = PacksPublic['sets'][number]['products'][number];

function productText({ title, pack, box, odds }: Product): string {
  const sizes = [
    ...(pack === null ? [] : [`${counted(pack, 'card')} a pack`]),
    ...(box === null ? [] : [`${counted(box, 'pack')} a box`]),
  ];
  const head = sizes.length === 0 ? title : `${title}: ${sizes.join(', ')}`;
  const rows = odds.map((each) => [each.title, `1:${grouped(each.packs)} packs`]);
  const [, ...lines] = tableText([left(''), left('')], rows);
  return [head, ...lines.map((line) => `  ${line}`)].join('\n');
}
