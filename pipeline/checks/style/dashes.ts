import type { HouseStyle } from '../../../schema/index.js';
import { closedEnDashes } from './closed-dash.js';
import { slipsOf, type Slip } from './slip.js';

const DASHES = { 'spaced-en': ' – ', 'closed-em': '—', 'spaced-em': ' — ' } as const;
const SAY = {
  'spaced-en': 'an en dash between spaces',
  'closed-em': 'an em dash without spaces',
  'spaced-em': 'an em dash between spaces',
} as const;

/**
 * What parts two clauses: a hyphen or an en dash between spaces, two hyphens, an em dash. Figures on
 * both sides are a range, a score or a sum; what stands at an end cuts speech off.
 */
const BETWEEN = /(?<=[^\s–—-])(?: [-–] | ?-{2,3} ? ?| ?— ?| ?― ?)(?=[^\s–—-])/gu;

/** Dashes between clauses that are not the house's. */
export function dashSlips(text: string, style: HouseStyle['dash']): Slip[] {
  if (style === undefined || !/[-–—―]/u.test(text)) return [];
  const words = text.replaceAll('\u00a0', ' ');
  return [...betweenWords(words, style), ...closedEnDashes(words, DASHES[style], SAY[style])];
}

function betweenWords(text: string, style: keyof typeof DASHES): Slip[] {
  const right = DASHES[style];
  return slipsOf(text, BETWEEN, ({ 0: dash, index }) => {
    const [before, after] = [text.charAt(index - 1), text.charAt(index + dash.length)];
    if (dash === right || (/\d/.test(before) && /\d/.test(after))) return null;
    if (/[“‘(]/u.test(before) || /[”’"')]/u.test(after)) return null;
    return {
      from: index,
      to: index + dash.length,
      message: `${named(dash)} stands between parts of a sentence`,
      expected: SAY[style],
      fix: right,
      certain: true,
    };
  });
}

function named(dash: string): string {
  const sign = dash.trim();
  const spaces = sign === dash ? 'without spaces' : 'between spaces';
  if (sign.startsWith('--')) return 'a row of hyphens';
  return `${sign === '-' ? 'a hyphen' : sign === '–' ? 'an en dash' : 'an em dash'} ${spaces}`;
}

/** Dots for an ellipsis, or a sign for it, that are not the house's. */
export function ellipsisSlips(text: string, style: HouseStyle['ellipsis']): Slip[] {
  if (style === 'sign') {
    return slipsOf(text, /\.{3,}|(?<!\.)\.(?: \.){2,}/gu, ({ 0: dots, index }) => ({
      from: index,
      to: index + dots.length,
      message: 'full stops stand for an ellipsis',
      expected: 'the sign …',
      fix: '…',
      certain: /^(?:\.{3}|\. \. \.)$/.test(dots),
    }));
  }
  if (style !== 'dots') return [];
  return slipsOf(text, /…|(?<!\.)\.(?: \.){2}(?! ?\.)/gu, ({ 0: sign, index }) => ({
    from: index,
    to: index + sign.length,
    message:
      sign === '…' ? 'one sign stands for an ellipsis' : 'spaces stand between the full stops',
    expected: 'three full stops',
    fix: '...',
    certain: true,
  }));
}
