import { pts, slits } from './geometry.js';
import {
  amber,
  ember,
  foam,
  glim,
  ink,
  lake,
  mist,
  paper,
  plank,
  rust,
  tar,
  type Pt,
} from './palette.js';
import type { Nick, Sheet } from './sheet.js';

/** Night mixed with foam: the blue of painted things, which no other ink gives. */
export const blue = '#2c6488';

/** The mail skiff, built of pigeonholes with a letter in each; its water line is at the origin. */
export function mailSkiff(s: Sheet): void {
  s.cut(rust, pts('-258,-166 -256,-320 -158,-320 -154,-156'));
  s.soft(rust, pts('-268,-314 -250,-352 -208,-368 -164,-352 -146,-314'));
  s.bar(ink, -236, -282, -178, -284, 15);
  s.nicks(ember, slits('-244,-262,-242,-184,8 -262,-318,-152,-320,7'));
  const hull = pts('-316,-190 -230,-166 -100,-154 100,-154 220,-172 326,-236 236,34 -236,34');
  s.cut(tar, hull);
  s.clipped(hull, () => {
    const papers = [foam, paper, mist, glim, foam, ember];
    const cells: Pt[][] = [];
    const letters = papers.map((): Pt[][] => []);
    for (let r = 0; r < 3; r += 1) {
      for (let c = 0; c < 8; c += 1) {
        const [x, y] = [-306 + c * 78 + (r % 2) * 10, -142 + r * 60];
        cells.push([
          [x, y],
          [x + 68, y],
          [x + 68, y + 50],
          [x, y + 50],
        ]);
        const tip = s.rand(-8, 8);
        const top = y + s.rand(8, 22);
        letters[(c * 2 + r) % papers.length]?.push([
          [x + 13, top + tip / 2],
          [x + 55, top - tip / 2],
          [x + 58, y + 50],
          [x + 10, y + 50],
        ]);
      }
    }
    s.cut(ink, ...cells);
    letters.forEach((shapes, i) => {
      s.cut(papers[i] ?? foam, ...shapes);
    });
  });
  s.limb(plank, 20, 16, pts('-316,-186 -230,-164 -100,-152 100,-152 220,-170 326,-238'));
  s.nicks(tar, slits('-270,-178,-40,-156,5 30,-152,230,-172,5'));
}

/** A knitted sock drawn over the blade of an oar that ends at the origin and points down. */
export function oarSock(s: Sheet, first: string, second: string): void {
  s.cut(first, pts('-26,-120 26,-120 30,10 96,30 104,66 76,84 -20,80 -34,30'));
  s.cut(
    second,
    pts('-30,-134 30,-134 30,-104 -30,-104'),
    pts('-28,-76 28,-76 28,-48 -29,-48'),
    pts('-31,-22 30,-22 30,4 -32,6'),
    pts('60,20 98,30 106,66 82,86 58,84'),
  );
  const ribs: Nick[] = [-18, -6, 6, 18].map((x) => [x, -130, x, -108, 4]);
  s.nicks(first, ribs);
}

/** The school afloat, seen from the side: one half, its cut wall to the right. */
export function schoolHalf(s: Sheet, wall: string, roof: string, hull: string): void {
  s.cut(tar, pts('-96,-60 96,-60 96,-270 -4,-214 -96,-150'));
  s.cut(wall, pts('-100,-54 70,-54 70,-206 -100,-150'));
  s.cut(wall, pts('58,-290 94,-310 94,-384 58,-384'));
  s.cut(ink, pts('66,-306 94,-324 94,-376 66,-376'));
  s.cut(amber, pts('72,-326 80,-366 94,-368 94,-334'));
  s.cut(roof, pts('44,-378 98,-380 98,-440'));
  s.cut(roof, pts('-124,-128 -118,-156 104,-326 108,-256'));
  s.nicks(
    ink,
    slits('-90,-150,-76,-166,6 -40,-190,-22,-204,6 10,-228,28,-244,6 56,-262,74,-278,6'),
  );
  s.cut(ink, pts('-76,-136 -30,-150 -30,-88 -76,-88'), pts('-8,-158 40,-174 40,-88 -8,-88'));
  s.cut(glim, pts('-70,-130 -36,-141 -36,-92 -70,-92'), pts('-2,-152 34,-164 34,-92 -2,-92'));
  for (let i = 0; i < 4; i += 1)
    s.bar(plank, 70, -84 - i * 46, 92 + (i % 2) * 12, -82 - i * 46, 12);
  s.soft(hull, pts('-140,-74 -96,-56 90,-56 116,-76 96,26 -116,26'));
  s.nicks(plank, slits('-116,-42,20,-36,6 30,-34,96,-44,6 -90,-10,60,-8,6'));
}

/** A ladder of two rails and rungs between two points. */
export function ladder(
  s: Sheet,
  color: string,
  from: Pt,
  to: Pt,
  width: number,
  rungs: number,
): void {
  const size = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [nx, ny] = [(-(to[1] - from[1]) / size) * width, ((to[0] - from[0]) / size) * width];
  for (let i = 1; i <= rungs; i += 1) {
    const t = i / (rungs + 1);
    const [x, y] = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
    s.bar(color, x, y, x + nx, y + ny, width * 0.12);
  }
  s.bar(color, from[0], from[1], to[0], to[1], width * 0.2);
  s.bar(color, from[0] + nx, from[1] + ny, to[0] + nx, to[1] + ny, width * 0.2);
}

/** A fried egg in the air or on a plate. */
export function friedEgg(s: Sheet, x: number, y: number, r: number): void {
  s.soft(foam, [
    [x - r, y - r * 0.1],
    [x - r * 0.5, y - r * 0.7],
    [x + r * 0.2, y - r * 0.6],
    [x + r, y - r * 0.4],
    [x + r * 0.9, y + r * 0.3],
    [x + r * 0.2, y + r * 0.7],
    [x - r * 0.7, y + r * 0.5],
  ]);
  s.oval(amber, x, y - r * 0.05, r * 0.38, r * 0.32);
  s.nicks(glim, [[x - r * 0.2, y - r * 0.16, x + r * 0.06, y - r * 0.24, r * 0.1]]);
}

/** An armchair seen from the front, its feet at the origin. */
export function armchair(s: Sheet, cloth: string, fold: string): void {
  s.bar(tar, -54, -20, -58, 2, 13);
  s.bar(tar, 54, -20, 58, 2, 13);
  s.soft(cloth, pts('-54,-30 -62,-140 -40,-178 0,-188 40,-178 62,-140 54,-30'));
  s.soft(fold, pts('-56,-70 0,-78 56,-70 56,-22 -56,-22'));
  s.soft(cloth, pts('-84,-14 -86,-92 -66,-108 -46,-94 -48,-14'));
  s.soft(cloth, pts('84,-14 86,-92 66,-108 46,-94 48,-14'));
  s.nicks(fold, slits('-22,-164,-24,-90,6 22,-164,24,-90,6 -66,-96,-66,-24,5 66,-96,66,-24,5'));
  s.bar(cloth, -72, -18, 72, -18, 16);
  s.nicks(lake, slits('-50,-28,50,-28,4'));
}
