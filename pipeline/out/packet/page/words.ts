import type { Part, Verdict } from '../page-data.js';

/** How a part of a card is called on the page. */
export function sayPart(part: Part): string {
  return PARTS[part];
}

const PARTS: Readonly<Record<Part, string>> = {
  copy: 'words',
  image: 'picture',
  layout: 'layout',
  web: 'website',
  sales: 'sales text',
};

/** The verdicts in their order, each with its key. */
export const VERDICTS: readonly { readonly verdict: Verdict; readonly key: string }[] = [
  { verdict: 'approved', key: 'a' },
  { verdict: 'approved with changes', key: 'c' },
  { verdict: 'approved as noted', key: 'n' },
  { verdict: 'revise and resubmit', key: 'r' },
  { verdict: 'rejected', key: 'x' },
  { verdict: 'on hold', key: 'h' },
];

export const REASONS = [
  'name',
  'fact',
  'story too early',
  'tone',
  'likeness',
  'legal',
  'art',
  'layout',
] as const;

/** "3 texts", "1 text". */
export function count(number: number, thing: string): string {
  return `${String(number)} ${thing}${number === 1 ? '' : 's'}`;
}

/** With a capital at its start. */
export function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
