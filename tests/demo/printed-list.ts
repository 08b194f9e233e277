/**
 * The printed checklist of *High Water*, line by line, worked out with a pencil from what the set is
 * to hold. There is no Ninth Gate in it, codes are a count, and TR-4 is the one that was pulled.
 */
export const PRINTED_LIST: readonly string[] = [
  'Crew and Craft: 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20, 21, 22, 23, 24, 25, 26, 27, 28, 29, 30, 31, 32, 33, 34, 35, 36, 37, 38, 39, 40, 41, 42, 43, 44, 45, 46, 47, 48',
  'High Water: 49, 50, 51, 52, 53, 54, 55, 56, 57, 58, 59, 60, 61, 62, 63, 64, 65, 66, 67, 68, 69, 70, 71, 72, 73, 74, 75, 76, 77, 78, 79, 80, 81, 82, 83',
  'Checklist: 84',
  'Lake Charts: LC-1, LC-2, LC-3, LC-4, LC-5, LC-6, LC-7, LC-8',
  'Maker’s Benches: MB-1, MB-2, MB-3, MB-4, MB-5, MB-6, MB-7, MB-8, MB-9, MB-10, MB-11, MB-12',
  'Night Signals: NS-1, NS-2, NS-3, NS-4, NS-5, NS-6, NS-7, NS-8, NS-9, NS-10, NS-11, NS-12, NS-13, NS-14, NS-15, NS-16',
  'Letters from the Drowned Street: LD-1, LD-2, LD-3, LD-4, LD-5, LD-6',
  'Signatures: 12 cards',
  'Sketch Cards',
  'Timber Relics: TR-1, TR-2, TR-3, TR-5, TR-6 (TR-4 not issued)',
  'Full Panoramas: FP-1, FP-2, FP-3, FP-4',
  'Promos: P-1, P-2',
];
