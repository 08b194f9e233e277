import type { PacksProduct } from '../../../schema/index.js';
import { TRADERS } from './completions.js';
import { counted, grouped, tenth } from './say.js';
import { left, right, tableText } from './table.js';

/** How the sets of a product are completed, and by which model that was worked out. */
export function completionText(product: PacksProduct): readonly string[] {
  if (product.completion.length === 0) return [];
  return [product.collation === 'sequenced' ? sequencedText(product) : chanceText(product)];
}

const MODEL = [
  'Model: every card of a set is as likely as it is common, packs are filled by chance, and no pack',
  'holds a card twice (by draws: cards come one by one). It is what to expect, not what is promised.',
];

function chanceText({ title, packs, completion }: PacksProduct): string {
  const rows = completion.map((each) => [
    each.title,
    grouped(each.cards),
    each.model === 'draws' ? 'by draws' : 'by packs',
    each.expected === null ? '' : tenth(each.expected),
    ...(each.half === null
      ? ['more than are made', '', '']
      : [each.half, each.ninety, each.ninetyNine].map((point) => grouped(point ?? 0))),
    each.traded === null ? '' : tenth(each.traded),
  ]);
  const columns = [
    left('Set'),
    right('cards'),
    left('model'),
    right('packs, on average'),
    right('50 %'),
    right('90 %'),
    right('99 %'),
    right(`each of ${String(TRADERS)} who trade`),
  ];
  return [
    `${title}: packs until a set is complete, of ${counted(packs, 'pack')} that are made`,
    ...[...MODEL, ...tableText(columns, rows)].map((line) => `  ${line}`),
  ].join('\n');
}

function sequencedText({ title, completion }: PacksProduct): string {
  const rows = completion.map((each) => [
    each.title,
    grouped(each.cards),
    grouped(each.box?.different ?? 0),
    grouped(each.box?.doubles ?? 0),
    each.box?.boxesForSet == null ? 'none' : grouped(each.box.boxesForSet),
  ]);
  const columns = [
    left('Set'),
    right('cards'),
    right('different in a box'),
    right('doubles'),
    right('boxes for a set'),
  ];
  return [
    `${title}: what a box holds, with cards in their order from pack to pack`,
    ...tableText(columns, rows).map((line) => `  ${line}`),
  ].join('\n');
}
