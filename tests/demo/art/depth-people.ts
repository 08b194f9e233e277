import { arc, pts } from './geometry.js';
import { type Pt, clay, ember, ink, kiln, plank, timber } from './palette.js';
import type { Sheet } from './sheet.js';
import { type Hat, hat, placedAt } from './story-people.js';

/** Somebody far off, in few cuts: for pictures with many people in them. */
export interface Passer {
  readonly cloth: string;
  readonly hat: readonly [Hat, string];
  readonly brown?: boolean;
  readonly eyes?: 'open' | 'shut';
  readonly mouth?: 'level' | 'oh';
}

/** A small plain head of radius 40 about the origin, in shade on the right. */
export function plainHead(s: Sheet, who: Passer): void {
  const [skin, shade] = who.brown === true ? [plank, timber] : [clay, kiln];
  s.oval(skin, 0, 0, 34, 40);
  s.cut(shade, [...arc(0, 0, 34, 40, 84, -84, 7), [4, -20], [-9, 9], [0, 14]]);
  for (const x of [-16, 14]) {
    if (who.eyes === 'shut') s.ring(ink, x, -6, 7, 6, 4, 20, 160);
    else s.oval(ink, x, -3, 4.4, 5.4);
  }
  s.within({ opacity: 0.7 }, () => s.oval(ember, -20, 12, 6, 5));
  if (who.mouth === 'oh') s.oval(ink, 0, 24, 5, 6.5);
  else s.ring(ink, 0, 17, 11, 7, 3.6, 20, 160);
  hat(s, who.hat[0], who.hat[1], 0, 0, 40);
}

/** Head and shoulders about the origin, the shoulders down to y = 150. */
export function bust(s: Sheet, who: Passer, turn = 0): void {
  s.soft(who.cloth, pts('-26,44 26,44 64,64 76,150 -76,150 -64,64'));
  placedAt(s, 0, 0, 1, () => plainHead(s, who), turn);
}

/** A whole passer-by whose feet stand at the origin, about 260 tall. */
export function passer(
  s: Sheet,
  who: Passer,
  legs: readonly Pt[] = pts('-22,-70 -26,0 22,-70 26,0'),
): void {
  const [a, b, c, d] = [legs[0] ?? [0, 0], legs[1] ?? [0, 0], legs[2] ?? [0, 0], legs[3] ?? [0, 0]];
  s.bar(ink, a[0], a[1], b[0], b[1], 24);
  s.bar(ink, c[0], c[1], d[0], d[1], 24);
  s.soft(who.cloth, pts('-20,-174 20,-174 46,-156 56,-110 64,-56 -64,-56 -56,-110 -46,-156'));
  placedAt(s, 0, -208, 1, () => plainHead(s, who));
}
