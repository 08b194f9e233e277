import { pts, trios, quads, slits } from './geometry.js';
import { cartouche, rose, roofs, soundings } from './chart-marks.js';
import { heron } from './craft.js';
import { arm, hand, head } from './figures.js';
import {
  amber,
  clay,
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
import { grain, house, town } from './buildings.js';
import { glow, lamp, post, rays } from './things.js';
import { gauge, glitter, nightWater, sheetOfWater, water } from './water.js';

/** The first series. */
export const depths: readonly Picture[] = [
  {
    id: 'd001',
    draw: (s) => {
      s.ground(plank);
      s.hatch(timber, -30, -20, 700, 900, 60, 20, 60, 5);
      const lakeShape = pts(
        '150,110 330,70 520,130 566,300 500,420 540,560 440,690 250,700 110,600 140,450 70,300',
      );
      for (const [k, color] of [
        [1.1, mist],
        [1, '#8fc0b3'],
        [0.84, shoal],
        [0.66, lake],
        [0.44, deep],
      ] as const) {
        s.soft(
          color,
          lakeShape.map(([x, y]) => [318 + (x - 318) * k, 390 + (y - 390) * k] as const),
        );
      }
      roofs(s, rust, quads('60,610,38,32 104,650,34,36 60,670,36,34 150,706,36,30 200,724,38,30'));
      soundings(
        s,
        foam,
        trios(
          '300,350,31 360,430,36 270,460,28 330,270,22 400,560,17 230,330,14 440,300,15 240,580,12 460,210,8 180,210,6 390,640,7',
        ),
      );
      rose(s, 540, 700, 60);
      s.within({ transform: 'translate(250 520) scale(0.16)' }, () => heron(s, false, ink, foam));
      cartouche(s, 60, 56, 150);
      water(s, 760, [lake, deep, night]);
    },
  },
  {
    id: 'd002',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, 0, 700, 260, 34, 4, 100, 8);
      s.oval(ember, 190, 190, 96);
      const step = (i: number): readonly [number, number] => [84 + i * 58, 640 - i * 54];
      for (const [i, w, h] of trios('0,70,130 2,74,150 4,66,170 6,78,140')) {
        const [x, y] = step(i);
        house(s, x + 24, y + 20, w, h, i % 4 === 0 ? plank : ember, rust, foam, 3);
      }
      for (let i = 0; i < 9; i += 1) {
        const [x, y] = step(i);
        s.box(i % 2 === 0 ? timber : tar, x, y, 700 - x, 790 - y);
        s.box(i % 2 === 0 ? lake : shoal, x, y + 14, i === 8 ? 200 : 62, 64);
        s.nicks(foam, [[x + 14, y + 30, x + 50, y + 31, 5]]);
        s.nicks(plank, [
          [x + 24, y + 96, x + 20, y + 170, 5],
          [x + 44, y + 110, x + 46, y + 220, 4],
        ]);
      }
      for (let i = 0; i < 9; i += 1) {
        const [x, y] = step(i);
        s.cut(
          ink,
          [
            [x - 9, y - 14],
            [x + 7, y - 14],
            [x + 9, y + 84],
            [x - 10, y + 84],
          ],
          [
            [x - 16, y - 20],
            [x + 14, y - 20],
            [x + 12, y - 8],
            [x - 14, y - 8],
          ],
        );
        s.nicks(foam, [[x - 14, y + 40, x - 16, y + 84, 9]]);
      }
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 'd003',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 560, 60, 66, 60, 6);
      house(s, 330, 700, 230, 470, rust, tar, null);
      s.cut(glim, pts('360,280 430,280 430,380 360,380'), pts('470,280 536,280 536,380 470,380'));
      s.lines(tar, 7, pts('395,280 395,380'), pts('503,280 503,380'));
      s.cut(deep, pts('396,470 500,470 500,700 396,700'));
      s.oval(amber, 484, 570, 8);
      gauge(s, 170, 120, 600);
      s.nicks(rust, slits('70,560,150,560,13 70,440,150,440,9 70,320,150,320,7'));
      for (const [y, color] of [
        [300, foam],
        [420, ember],
        [540, rust],
      ] as const)
        hand(s, color, mist, 252, y + 26, 72, -90);
      s.nicks(
        ember,
        slits('340,440,390,442,7 510,430,556,432,7 340,520,388,520,7 508,540,554,540,7'),
      );
      s.cut(plank, pts('560,620 640,600 650,640 570,660'));
      sheetOfWater(s, shoal, 590, 90, 11);
      s.nicks(foam, slits('130,604,210,606,9 380,606,520,606,9'));
      water(s, 636, [lake, deep, night]);
    },
  },
  {
    id: 'd004',
    draw: (s) => {
      s.ground(amber);
      rays(s, glim, 318, 380, 200, 560, 40, 12);
      s.cut(rust, pts('150,560 150,250 318,250 318,560'));
      s.cut(tar, pts('126,262 232,130 318,238 318,262'));
      s.cut(glim, pts('182,300 240,300 240,372 182,372'));
      s.cut(deep, pts('250,440 308,440 308,560 250,560'));
      s.nicks(
        ember,
        slits(
          '160,400,230,402,7 170,450,236,450,7 164,500,230,502,7 258,290,310,290,7 258,340,306,342,7',
        ),
      );
      for (let i = 0; i < 6; i += 1)
        s.bar(i % 2 === 0 ? plank : timber, 330, 300 + i * 44, 420 + i * 20, 320 + i * 42, 34);
      s.limb(tar, 30, 16, pts('330,570 450,540 530,450 556,320 590,300'));
      s.soft(timber, pts('80,560 318,560 480,520 548,420 556,500 500,620 420,670 180,670 110,620'));
      s.nicks(plank, slits('120,594,320,598,7 340,596,480,556,7 150,634,400,640,7'));
      s.bar(ink, 330, 300, 330, 560, 8);
      water(s, 644, [shoal, lake, deep]);
    },
  },
  {
    id: 'd005',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, 0, 700, 460, 50, 0, 110, 7);
      town(s, -50, 680, 470, 70, 150, lake, deep, foam);
      sheetOfWater(s, mist, 460, 90, 10);
      s.cut(timber, pts('-40,560 420,520 420,620 -40,760'));
      grain(s, tar, -30, 590, 400, 90, 3);
      s.soft(paper, pts('230,560 250,290 300,210 370,190 440,210 488,290 506,560 370,590'));
      s.soft(plank, pts('214,560 370,590 520,556 528,606 370,640 206,610'));
      for (let r = 0; r < 5; r += 1)
        for (let c = 0; c < 5; c += 1)
          s.oval(plank, 290 + c * 40 + (r % 2) * 18 - r * 3, 280 + r * 52, 8, 10);
      s.nicks(foam, slits('266,540,280,320,13'));
      s.cut(ink, pts('346,470 366,440 392,440 410,472 410,578 346,582'));
      s.bar(tar, 370, 196, 370, 120, 9);
      lamp(s, 370, 92, 70, true);
      post(s, 110, 540, 48, 200);
      post(s, 560, 590, 40, 140);
      s.limb(foam, 7, 7, pts('130,570 330,660 544,622'));
      water(s, 660, [lake, deep, night]);
    },
  },
  {
    id: 'd006',
    draw: (s) => {
      s.ground(night);
      s.hatch(deep, -30, 0, 700, 560, 50, -8, 80, 5);
      for (const [i, [x, y]] of pts('96,300 150,176 280,96 430,110 536,210').entries()) {
        if (i < 4) {
          glow(s, x, y + 40, 62);
          rays(s, glim, x, y + 40, 38, 70, 12, 6);
        }
        lamp(s, x, y, 64, i < 4);
      }
      s.ring(timber, 318, 356, 236, 250, 7, 186, 330);
      town(s, -50, 680, 610, 60, 120, ink, ink, null);
      s.soft(tar, pts('130,610 300,570 520,574 640,620 640,720 100,720'));
      s.bar(ink, 318, 560, 308, 626, 32);
      s.bar(ink, 372, 560, 394, 620, 32);
      s.soft(lake, pts('268,580 276,450 300,380 360,356 410,380 418,440 412,580'));
      s.nicks(shoal, slits('296,450,292,570,8 340,430,342,574,8 390,460,394,570,7'));
      head(s, 404, 338, { skin: clay, shade: kiln, size: 58, dark: -1, mouth: 'smile' });
      s.soft(foam, pts('356,352 382,372 404,366 436,372 450,350 442,420 408,460 372,420'));
      s.soft(rust, pts('344,330 360,280 404,264 448,282 460,330 404,316'));
      s.oval(amber, 402, 262, 13);
      s.limb(timber, 11, 8, pts('400,620 470,440 534,290'));
      arm(s, deep, clay, ink, pts('320,420 380,490 440,500'), 48, 36, 36);
      water(s, 640, nightWater);
      for (const x of [96, 170, 290, 430]) glitter(s, amber, x, 660, 60, 50);
    },
  },
];
