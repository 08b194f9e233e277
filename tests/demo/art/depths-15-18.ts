import { house } from './buildings.js';
import { cookBoat } from './craft.js';
import { type Passer, bust } from './depth-people.js';
import { arc, pts, quads, slits, trios } from './geometry.js';
import {
  type Pt,
  amber,
  deep,
  ember,
  foam,
  glim,
  ink,
  kiln,
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
import { placedAt } from './story-people.js';
import { sheetOfWater, water } from './water.js';

/** An open beak, waiting. */
function beak(s: Sheet, x: number, y: number, turn: number): void {
  placedAt(
    s,
    x,
    y,
    1,
    () => {
      s.soft(ink, pts('-38,70 -42,6 -22,-26 22,-26 42,6 38,70'));
      s.cut(amber, pts('-40,-2 0,-96 40,-2 0,22'));
      s.cut(rust, pts('-24,-8 0,-66 24,-8 0,8'));
      s.oval(foam, -24, 18, 7);
      s.oval(foam, 24, 18, 7);
    },
    turn,
  );
}

/** Depth Charts 15 to 18. */
export const depths15To18: readonly Picture[] = [
  {
    id: 'd015',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 200, 700, 460, 40, -16, 90, 7);
      s.cut(rust, pts('250,-40 700,-40 700,700 290,700'));
      s.hatch(ember, 300, 200, 380, 480, 34, 88, 90, 6);
      s.cut(tar, pts('-40,-40 700,-40 700,210 80,70 -40,60'));
      s.cut(timber, pts('-40,20 80,34 700,160 700,214 70,86 -40,72'));
      for (let i = 0; i < 6; i += 1)
        s.cut(ink, [
          [180 + i * 94, 90 + i * 19],
          [214 + i * 94, 98 + i * 19],
          [214 + i * 94, 190 + i * 19],
          [196 + i * 94, 196 + i * 19],
        ]);
      s.cut(glim, pts('520,390 640,390 640,560 524,560'));
      s.lines(tar, 10, pts('580,390 580,560'), pts('520,470 640,470'));
      for (const [x, y, turn] of trios('296,330,-22 370,300,0 444,330,18')) beak(s, x, y, turn);
      s.soft(
        timber,
        pts('236,340 300,372 370,382 440,372 500,340 490,440 430,510 360,526 296,500 246,430'),
      );
      const dabs: Pt[][] = [];
      for (let r = 0; r < 4; r += 1)
        for (let c = 0; c < 6 - r; c += 1)
          dabs.push(arc(274 + r * 18 + c * 40, 396 + r * 32, 15, 10, 0, 360, 7));
      s.cut(plank, ...dabs);
      s.nicks(paper, slits('236,372,200,392,5 490,374,530,366,5 430,500,460,530,5'));
      s.soft(ink, pts('60,420 100,396 150,404 172,436 130,452 90,450'));
      s.cut(
        ink,
        pts('90,430 20,330 130,404'),
        pts('110,436 150,540 60,444'),
        pts('72,430 -20,416 -24,432 -2,440 -26,452 70,444'),
      );
      s.soft(foam, pts('110,450 150,444 166,440 130,470 100,462'));
      s.soft(rust, pts('146,412 172,416 176,436 156,436'));
      s.cut(amber, pts('170,420 196,430 170,436'));
      water(s, 660, [shoal, lake, deep]);
    },
  },
  {
    id: 'd016',
    draw: (s) => {
      s.ground(ember);
      s.oval(glim, 470, 170, 92);
      s.hatch(amber, -30, 0, 700, 360, 40, 2, 120, 8);
      sheetOfWater(s, shoal, 474, 110, 10);
      s.cut(rust, pts('54,700 60,420 156,420 162,700'));
      s.nicks(
        tar,
        slits(
          '64,470,150,468,6 60,530,154,530,6 90,424,90,466,6 124,474,124,526,6 84,534,84,580,6',
        ),
      );
      s.box(tar, 42, 396, 132, 30);
      s.cut(timber, pts('74,396 78,340 106,340 108,396'), pts('116,396 118,350 142,350 144,396'));
      s.limb(foam, 8, 8, pts('54,560 108,572 160,558 190,590 230,574'));
      s.limb(foam, 8, 8, pts('56,544 108,556 160,544'));
      const family: readonly (readonly [number, Passer])[] = [
        [252, { cloth: deep, hat: ['brim', ink] }],
        [352, { cloth: amber, hat: ['scarf', lake], brown: true }],
        [446, { cloth: lake, hat: ['cap', rust], mouth: 'oh' }],
        [550, { cloth: night, hat: ['bun', tar] }],
      ];
      for (const [x, who] of family) {
        const small = x === 446;
        placedAt(s, x, small ? 406 : 372, small ? 0.9 : 1.16, () => bust(s, who));
      }
      s.cut(foam, pts('206,476 600,468 612,560 196,566'));
      s.cut(mist, pts('206,476 600,468 602,484 204,492'));
      s.nicks(
        paper,
        slits('250,500,246,556,7 340,496,342,556,7 450,496,452,552,7 550,492,556,548,7'),
      );
      s.soft(plank, pts('296,470 306,440 340,428 372,440 382,470'));
      s.cut(rust, pts('424,470 430,420 452,420 458,470'));
      s.bar(foam, 300, 466, 262, 446, 9);
      s.cut(amber, pts('500,464 548,462 540,440 508,442'));
      s.oval(foam, 524, 436, 16, 13);
      s.soft(tar, pts('170,548 300,574 420,576 560,562 640,530 624,640 200,650'));
      s.nicks(plank, slits('200,580,380,596,7 420,596,610,572,7 220,614,580,616,6'));
      sheetOfWater(s, lake, 626, 90, 11);
      water(s, 656, [lake, deep, night]);
    },
  },
  {
    id: 'd017',
    draw: (s) => {
      s.ground(lake);
      s.hatch(deep, -30, -20, 700, 740, 60, 0, 90, 6);
      s.cut(glim, pts('46,52 590,40 600,650 40,656'));
      s.hatch(amber, 60, 60, 520, 580, 50, 90, 40, 4);
      s.lines(rust, 5, pts('66,72 570,60 580,630 60,636 66,72'));
      for (const [x, y, turn] of trios('120,130,0 160,124,4 200,134,-6 240,126,3')) {
        placedAt(
          s,
          x,
          y,
          1,
          () => {
            s.box(foam, -14, 0, 28, 130);
            s.nicks(mist, slits('6,10,7,120,7'));
          },
          turn,
        );
      }
      s.limb(
        rust,
        11,
        11,
        pts(
          '360,250 330,190 370,130 440,110 520,130 540,190 490,230 420,210 410,160 460,150 500,180 560,260',
        ),
      );
      s.soft(kiln, pts('112,340 200,336 210,420 196,450 116,454 102,420'));
      s.nicks(
        timber,
        slits('120,360,140,372,6 160,350,176,366,6 130,400,150,410,6 170,410,190,426,6'),
      );
      s.oval(deep, 330, 396, 62);
      s.soft(shoal, pts('290,400 316,360 360,360 376,400 340,380'));
      s.soft(amber, pts('296,420 330,404 372,416 350,440 312,440'));
      s.oval(foam, 312, 368, 13, 10);
      s.limb(tar, 17, 9, pts('460,350 496,376 500,420 540,470'));
      s.cut(tar, pts('436,350 480,330 490,350 446,372'));
      s.soft(timber, pts('140,600 150,540 220,506 320,500 400,516 402,610 280,620'));
      s.cut(paper, pts('396,512 424,520 410,546 426,566 408,586 420,610 396,614'));
      s.nicks(glim, slits('200,546,224,532,8 270,528,296,526,8 330,540,354,540,8'));
      for (const [x, y] of pts('452,600 480,620 440,560')) s.oval(timber, x, y, 7);
      water(s, 684, [deep, night, ink]);
    },
  },
  {
    id: 'd018',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, 0, 700, 400, 50, 70, 60, 7);
      const rowsOfRoofs = quads(
        '470,220,120,110 350,300,120,120 560,330,130,130 230,390,124,130 430,430,130,130 110,480,124,130 320,520,126,120 530,540,130,120 -20,570,120,110 200,610,130,110 430,640,120,100',
      );
      s.soft(timber, pts('-60,660 60,500 240,400 400,270 520,160 700,100 700,720 -60,720'));
      rowsOfRoofs.forEach(([x, y, w, h], i) =>
        house(
          s,
          x,
          y + h,
          w * 0.74,
          h * 0.62,
          i % 3 === 0 ? ember : i % 3 === 1 ? plank : mist,
          i % 2 === 0 ? rust : tar,
          i % 2 === 0 ? glim : null,
          1,
        ),
      );
      s.limb(ink, 7, 7, pts('-40,560 200,360 420,180 680,-30'));
      s.soft(foam, pts('268,150 250,100 290,70 260,20 310,40 320,90 300,120 330,150'));
      s.soft(mist, pts('350,150 336,110 366,80 350,44 386,76 380,120 390,150'));
      s.ring(ink, 318, 286, 62, 76, 9, 180, 360);
      s.cut(shoal, pts('240,256 396,256 376,400 260,400'));
      s.soft(foam, arc(318, 258, 78, 20));
      s.soft(lake, arc(318, 260, 64, 13));
      s.soft(paper, arc(312, 252, 22, 17));
      s.bar(deep, 248, 300, 390, 300, 11);
      s.bar(deep, 256, 368, 382, 368, 11);
      s.nicks(mist, slits('268,310,276,390,9 296,310,300,360,6'));
      water(s, 656, [shoal, lake, deep]);
      placedAt(s, 96, 668, 0.36, () => cookBoat(s));
    },
  },
];
