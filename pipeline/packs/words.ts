import type { Fraction } from './fraction.js';

/** "12,500". */
export function grouped(count: number | bigint): string {
  return String(count).replace(/\B(?=(?:\d{3})+$)/g, ',');
}

/** "1 copy of Letters", "600 copies of Letters". */
export function copiesWords(copies: number, title: string): string {
  return `${counted(copies, 'copy', 'copies')} of ${title}`;
}

/** "1 pack", "24 packs". */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${grouped(count)} ${count === 1 ? one : many}`;
}

/** "14,400 copies", "1 copy", "57 1/2 copies". */
export function copiesOnAverage(copies: Fraction): string {
  return `${mixed(copies)} ${copies.over === copies.under ? 'copy' : 'copies'}`;
}

/** A fraction from 0 on as it is read: "4,034 2/7", "2/7", "12". */
export function mixed({ over, under }: Fraction): string {
  const whole = over / under;
  const rest = over % under;
  if (rest === 0n) return grouped(whole);
  const part = `${grouped(rest)}/${grouped(under)}`;
  return whole === 0n ? part : `${grouped(whole)} ${part}`;
}
