import { grain, house } from './buildings.js';
import { arc, pts, slits, trios } from './geometry.js';
import {
  type Pt,
  amber,
  deep,
  foam,
  glim,
  ink,
  lake,
  mist,
  night,
  paper,
  plank,
  rust,
  shoal,
  tar,
  timber,
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';
import { litLamp, stars } from './signal-lamps.js';
import { placedAt } from './story-people.js';
import { glow, lamp, rays } from './things.js';
import { duskWater, glitter, nightWater, sheetOfWater, water } from './water.js';

/** Courses of brick over the whole sheet down to `to`, those under `lit` in the light. */
function bricks(s: Sheet, to: number, lit: readonly [number, number]): void {
  const dim: Pt[][] = [];
  const warm: Pt[][] = [];
  for (let r = 0; r * 58 < to; r += 1)
    for (let c = -1; c < 7; c += 1) {
      const x = c * 106 + (r % 2) * 53;
      const y = r * 58 - 20;
      const brick: Pt[] = [
        [x, y],
        [x + 97, y],
        [x + 97, y + 49],
        [x, y + 49],
      ];
      const inLight = x + 97 > lit[0] && x < lit[1];
      if (inLight) warm.push(brick);
      if (s.rand() < 0.8) dim.push(brick);
    }
  s.cut(night, ...dim);
  const stripe: Pt[] = pts(`${lit[0]},-40 ${lit[1]},-40 ${lit[1] + 24},${to} ${lit[0] - 24},${to}`);
  s.clipped(stripe, () => {
    s.box(rust, lit[0] - 60, -40, lit[1] - lit[0] + 120, to + 40);
    s.cut(amber, ...warm);
  });
}

/** Night Signals 10 to 16. */
export const signalsLast: readonly Picture[] = [
  {
    id: 'si10',
    draw: (s) => {
      s.ground(ink);
      stars(s, lake, 10, 420, 24);
      glow(s, 318, 250, 236);
      rays(s, glim, 318, 250, 176, 244, 30, 10);
      s.oval(tar, 318, 250, 164);
      s.oval(glim, 318, 250, 146);
      for (const [x, y, r] of trios('250,190,22 230,290,15 310,340,26 390,330,13 300,150,12'))
        s.oval(amber, x, y, r);
      s.cut(ink, [[318, 250], ...arc(318, 250, 152, 152, -72, -6)]);
      s.ring(tar, 318, 84, 18, 18, 9);
      s.bar(tar, 318, -40, 318, 70, 9);
      for (let i = 0; i < 4; i += 1) {
        const y = 500 + i * 50;
        s.box(i % 2 === 0 ? deep : night, 110 - i * 50, y, 420 + i * 100, 54);
        s.bar(lake, 110 - i * 50, y + 4, 530 + i * 50, y + 4, 9);
        s.nicks(amber, [[250 - i * 12, y + 5, 390 + i * 12, y + 4, 9]]);
      }
      water(s, 690, nightWater);
      glitter(s, amber, 318, 706, 60, 170);
    },
  },
  {
    id: 'si11',
    draw: (s) => {
      s.ground(ink);
      bricks(s, 650, [250, 386]);
      s.within({ opacity: 0.45 }, () => s.oval(glim, 318, 330, 130, 170));
      s.bar(ink, 318, -40, 318, 120, 12);
      s.ring(ink, 318, 136, 32, 32, 13);
      s.cut(ink, pts('290,160 346,160 420,226 216,226'));
      s.cut('#0c1728', pts('230,226 406,226 428,440 208,440'));
      s.cut(ink, pts('200,432 436,432 420,478 216,478'));
      s.lines(night, 6, pts('262,262 374,262 388,404 248,404 262,262'));
      s.oval(night, 318, 334, 20);
      s.nicks(amber, slits('229,234,209,430,8 407,234,427,430,8'));
      sheetOfWater(s, night, 600, 90, 11);
      water(s, 640, nightWater);
      glitter(s, amber, 318, 620, 120, 150);
    },
  },
  {
    id: 'si12',
    draw: (s) => {
      s.ground(night);
      s.hatch(deep, -30, 0, 700, 520, 50, -30, 60, 6);
      s.limb(timber, 8, 8, pts('-40,60 100,170 318,236 536,170 680,60'));
      for (const [x, y, k] of trios(
        '22,110,74 112,176,74 212,212,74 318,232,74 424,212,74 524,176,74 614,110,74',
      ))
        litLamp(s, x, y, k);
      s.box(timber, -40, 596, 720, 120);
      grain(s, tar, -40, 600, 720, 90, 3);
      s.cut(mist, pts('190,574 446,574 420,604 216,604'));
      s.soft(plank, pts('224,572 226,470 318,456 410,470 412,572 318,584'));
      s.soft(
        foam,
        pts(
          '216,486 226,452 318,436 410,452 420,486 404,520 384,492 362,528 338,496 312,524 288,494 266,530 244,496 230,514',
        ),
      );
      s.bar(rust, 226, 548, 410, 548, 10);
      for (const [x, y] of pts('254,452 318,442 382,452')) s.oval(rust, x, y, 13);
      s.nicks(amber, slits('236,560,300,562,5 340,562,400,560,5'));
      water(s, 676, nightWater);
      for (const x of [112, 318, 524]) glitter(s, amber, x, 694, 60, 70);
    },
  },
  {
    id: 'si13',
    draw: (s) => {
      s.ground('#0c1728');
      s.hatch(ink, -30, -20, 700, 760, 60, 90, 70, 7);
      s.box(timber, 96, 30, 446, 590);
      s.box(ink, 126, 60, 386, 520);
      s.soft(night, pts('126,520 126,380 250,300 360,240 460,180 512,190 512,580 126,580'));
      s.hatch(deep, 150, 330, 340, 200, 24, -30, 40, 5);
      for (const [x, y] of pts(
        '178,420 232,360 250,470 316,310 350,400 404,250 430,340 470,230 480,420',
      ))
        s.oval(amber, x, y, 5);
      s.bar(timber, 319, 50, 319, 590, 15);
      s.bar(timber, 110, 236, 528, 236, 14);
      s.within({ opacity: 0.35 }, () => s.oval('#f08a24', 319, 452, 92));
      s.box(plank, 50, 580, 536, 44);
      s.nicks(tar, slits('70,600,250,602,6 330,606,560,604,6'));
      s.nicks(glim, slits('250,584,390,584,8'));
      s.soft(foam, pts('268,486 370,486 362,532 319,552 276,532'));
      s.cut(foam, pts('308,544 330,544 340,570 362,582 276,582 298,570'));
      s.bar(rust, 270, 498, 368, 498, 10);
      s.soft(amber, pts('319,426 336,462 331,484 307,484 302,462'));
      s.soft(glim, pts('319,450 327,472 319,484 311,472'));
      rays(s, glim, 319, 456, 48, 74, 12, 5);
      water(s, 674, nightWater);
    },
  },
  {
    id: 'si14',
    draw: (s) => {
      s.ground(deep);
      stars(s, shoal, 0, 300, 24);
      s.cut(tar, pts('60,700 64,420 318,190 572,420 576,700'));
      s.hatch(timber, 80, 330, 480, 340, 50, 90, 60, 6);
      s.cut(ink, pts('266,520 370,520 374,700 262,700'));
      s.oval(ink, 318, 388, 46);
      s.lines(timber, 7, pts('318,344 318,432'), pts('274,388 362,388'));
      s.cut(ink, pts('318,60 -60,392 -30,440 318,134 666,440 696,392'));
      const along = (t: number): Pt => [318 + t * 67, 116 + Math.abs(t) * 59];
      for (let t = -4; t <= 3; t += 1) {
        const [x, y] = along(t);
        litLamp(s, x, y + 10, 60);
      }
      const [hx, hy] = along(4);
      s.bar(foam, hx, hy, hx, hy + 44, 9);
      s.ring(foam, hx - 20, hy + 42, 20, 22, 9, 0, 190);
      water(s, 648, nightWater);
      glitter(s, amber, 180, 668, 80, 80);
      glitter(s, amber, 440, 668, 80, 80);
    },
  },
  {
    id: 'si15',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, -20, 700, 700, 60, 0, 150, 13);
      s.within({ opacity: 0.6 }, () => {
        s.oval(foam, 300, 300, 250);
        s.oval(glim, 300, 300, 190);
      });
      s.bar(timber, 566, 690, 330, 120, 18);
      s.cut(plank, pts('322,104 344,96 352,124 330,132'));
      s.soft(glim, pts('268,150 330,176 392,150 420,270 424,420 318,444 216,420 226,270'));
      s.soft(foam, pts('262,210 318,196 376,210 398,396 318,420 240,396'));
      s.soft(amber, pts('318,262 356,310 348,372 318,388 288,372 280,310'));
      s.soft(glim, pts('318,306 338,334 332,368 318,376 304,368 298,334'));
      s.cut(foam, pts('270,156 240,96 290,120 326,88 356,122 408,100 384,156'));
      s.bar(rust, 262, 156, 394, 156, 16);
      s.nicks(
        amber,
        slits('246,280,236,400,7 404,280,408,396,7 290,190,284,240,6 352,186,360,236,6'),
      );
      s.within({ opacity: 0.7 }, () => {
        s.soft(
          foam,
          pts('-60,440 120,400 300,470 480,420 700,470 700,540 460,520 240,560 -60,520'),
        );
        s.soft(foam, pts('-60,80 160,60 260,100 140,130 -60,124'));
      });
      s.soft(paper, pts('-60,590 160,540 380,600 700,550 700,740 -60,740'));
      s.soft(foam, pts('-60,640 200,600 420,650 700,610 700,740 -60,740'));
      water(s, 676, [mist, shoal, lake]);
    },
  },
  {
    id: 'si16',
    draw: (s) => {
      s.ground(night);
      s.hatch(ink, -30, 0, 700, 330, 40, 0, 120, 7);
      house(s, -20, 380, 90, 150, ink, ink, null);
      house(s, 560, 380, 110, 190, ink, ink, null);
      s.box(ink, -40, 366, 720, 20);
      s.bar(foam, 318, -40, 318, 156, 7);
      litLamp(s, 318, 146, 176);
      sheetOfWater(s, lake, 384, 90, 8);
      sheetOfWater(s, deep, 404, 110, 10);
      placedAt(
        s,
        318,
        646,
        1,
        () => {
          s.within({ opacity: 0.6 }, () => {
            s.oval('#f08a24', 0, -136, 110);
            lamp(s, 0, 0, 176, true, night);
          });
        },
        180,
        -1,
      );
      s.nicks(
        deep,
        slits('200,450,440,452,9 220,492,420,490,8 190,536,450,538,10 230,580,410,578,9'),
      );
      s.nicks(
        amber,
        slits('180,420,260,421,7 380,420,462,421,7 160,460,214,461,6 424,470,480,471,6'),
      );
      s.ring(glim, 318, 414, 120, 15, 4);
      s.ring(shoal, 318, 416, 200, 24, 4);
      sheetOfWater(s, night, 640, 120, 14);
      water(s, 690, duskWater);
    },
  },
];
