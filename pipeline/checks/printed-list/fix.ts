import { fenceOf, spotOf, type Card, type Spot } from '../../model/index.js';
import type { Remark } from '../rule.js';

const LIST = ['texts', 'list'];

/** Where the list of a card stands, or where it would. */
export function listSpot({ source, front }: Card): Spot {
  if (front.texts?.['list'] !== undefined) return spotOf(source, LIST);
  if (front.texts !== undefined) return spotOf(source, ['texts'], 'key');
  const end = fenceOf(source.text)?.yamlTo ?? 0;
  return { source, from: end, to: end };
}

/**
 * The lines of a list as the file is to have them: in quotes where it has quotes, else as a block of
 * lines. None where the card has other texts and no list, since nobody knows how they are typed.
 */
export function listFix(card: Card, lines: readonly string[]): Pick<Remark, 'fix' | 'certain'> {
  const { source, front } = card;
  const text = lines.join('\n');
  const spot = listSpot(card);
  const typed = source.text.slice(spot.from, spot.to);
  const end = source.text.includes('\r\n') ? '\r\n' : '\n';
  if (front.texts === undefined) {
    return {
      fix: ['texts:', '  list: |-', ...indented(lines, '    '), ''].join(end),
      certain: true,
    };
  }
  if (front.texts['list'] === undefined) return {};
  if (/^["']/.test(typed)) return { fix: text, certain: true };
  if (!/^[|>]/.test(typed)) return { fix: JSON.stringify(text), certain: true };
  const indent = /[\r\n]( +)/.exec(typed)?.[1] ?? '    ';
  const after = /[\r\n]$/.test(typed) ? [''] : [];
  return { fix: ['|-', ...indented(lines, indent), ...after].join(end), certain: true };
}

function indented(lines: readonly string[], indent: string): readonly string[] {
  return lines.map((line) => `${indent}${line}`);
}
