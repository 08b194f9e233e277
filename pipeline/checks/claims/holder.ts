import { keyOf } from './things.js';

export type Holder = 'pack' | 'box' | 'case';

/** What holds cards or packs, under all its names. */
export function holderOf(word: string): Holder | null {
  const key = keyOf(word);
  if (/^(?:pack|packet|wrapper|booster|sachet)$/.test(key)) return 'pack';
  if (/^(?:box|display)$/.test(key)) return 'box';
  return key === 'case' ? 'case' : null;
}
