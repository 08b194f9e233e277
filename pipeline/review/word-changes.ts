import { diffWordsWithSpace } from 'diff';

import { copyText } from '../model/index.js';
import type { Json } from './digest.js';
import { listOf, mapOf, pairsOf, textOf, wordsIn } from './kept-values.js';

/** The fields that a `copy` part covers as plain texts, by what they are called. */
export function fieldTexts(covers: Json): ReadonlyMap<string, string> {
  const credits = listOf(covers, 'credits').map(
    (credit) => `${textOf(credit, 'role') ?? ''}: ${textOf(credit, 'name') ?? ''}`,
  );
  const signers = listOf(covers, 'signers').map(
    (signer) => `${textOf(signer, 'name') ?? ''} (${textOf(signer, 'state') ?? ''})`,
  );
  return new Map([
    ['name', textOf(covers, 'name') ?? ''],
    ['bio', copyText(wordsIn(covers))],
    ...pairsOf(covers, 'facts').map(([name, value]) => [`facts.${name}`, value] as const),
    ...Object.entries(mapOf(covers, 'texts')).map(
      ([zone, value]) => [`texts.${zone}`, value] as const,
    ),
    ['credits', credits.join('; ')],
    ['signers', signers.join('; ')],
  ]);
}

/** The plain words that a `sales` part covers. */
export function salesText(covers: Json): string {
  return copyText(wordsIn(covers, 'words'));
}

/**
 * What was changed between two `copy` parts, a line a field: words that went between `[-` and `-]`,
 * words that came between `{+` and `+}`.
 */
export function wordChanges(was: Json, now: Json): readonly string[] {
  const [before, after] = [fieldTexts(was), fieldTexts(now)];
  return [...new Set([...before.keys(), ...after.keys()])].flatMap((field) => {
    const [old, fresh] = [before.get(field) ?? '', after.get(field) ?? ''];
    return old === fresh ? [] : [`${field}: ${redlined(old, fresh)}`];
  });
}

function redlined(was: string, now: string): string {
  return diffWordsWithSpace(was, now)
    .map(({ value, added, removed }) => {
      if (added) return `{+${value}+}`;
      return removed ? `[-${value}-]` : value;
    })
    .join('')
    .replaceAll('\n', ' ');
}
