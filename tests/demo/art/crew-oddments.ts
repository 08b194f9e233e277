import { boards, town } from './buildings.js';
import { blue } from './crew-boats.js';
import { arm, coat, head } from './figures.js';
import { pts, slits, trios } from './geometry.js';
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
import { rays } from './things.js';
import { nightWater, sheetOfWater, water } from './water.js';

/** A painter, a raft and two oars. */
export const crewOddments: readonly Picture[] = [
  {
    id: 'c039',
    draw: (s) => {
      s.ground(clay);
      s.hatch(foam, -30, -20, 700, 640, 46, 10, 100, 9);
      s.box(kiln, -40, 600, 720, 160);
      s.hatch(plank, -30, 610, 700, 90, 20, 0, 90, 6);
      s.bar(timber, 400, 560, 360, 740, 22);
      s.bar(timber, 560, 560, 600, 740, 22);
      s.soft(blue, pts('700,110 470,96 300,60 268,70 330,250 420,420 520,540 700,600'));
      s.soft(night, pts('700,430 470,420 410,404 450,470 520,544 700,604'));
      s.limb(tar, 28, 22, pts('262,52 316,236 402,420 510,560 700,622'));
      s.limb(glim, 13, 13, pts('300,88 470,122 700,136'));
      s.nicks(lake, slits('360,150,660,164,6 396,320,680,340,6 420,380,680,398,6'));
      s.lines(mist, 3, pts('352,184 680,196'), pts('392,286 680,296'));
      for (const [x, y, h] of trios('430,286,84 478,290,84 536,292,66 584,296,90 632,296,78'))
        s.cut(foam, [
          [x - 26, y - 4],
          [x - 4, y - h],
          [x + 14, y - h + 2],
          [x - 8, y],
        ]);
      coat(s, foam, paper, 146, 396, 114, 136, 330);
      const spots = [rust, lake, amber, blue, ember, deep];
      trios(
        '80,450,13 140,500,17 196,460,12 100,560,16 176,590,13 120,640,14 214,560,11 210,660,15 66,620,11 156,424,9',
      ).forEach(([x, y, r], i) => s.oval(spots[i % spots.length] ?? rust, x, y, r));
      head(s, 156, 284, { skin: clay, shade: kiln, size: 86, dark: 1, wide: 0.78, mouth: 'level' });
      s.soft(
        tar,
        pts('86,310 78,230 120,196 200,196 232,230 226,272 190,228 122,230 104,340 84,370'),
      );
      s.soft(rust, pts('62,232 90,182 170,164 240,190 252,224 160,218'));
      s.bar(rust, 158, 170, 166, 152, 11);
      s.nicks(foam, slits('192,306,210,318,11'));
      arm(s, foam, clay, ink, pts('240,450 320,470 356,350'), 64, 46, 50);
      s.bar(timber, 340, 372, 396, 248, 11);
      s.cut(foam, pts('386,262 402,268 414,216'));
      arm(s, foam, clay, ink, pts('60,460 20,560 80,610'), 60, 44, 46);
      s.cut(tar, pts('56,630 156,630 148,710 64,710'));
      s.oval(foam, 106, 630, 50, 12);
      s.cut(foam, pts('68,632 88,634 84,672 72,664'));
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 'c040',
    draw: (s) => {
      s.ground(lake);
      rays(s, shoal, 318, 230, 170, 620, 40, 14);
      town(s, -50, 690, 640, 50, 120, deep, night, glim);
      sheetOfWater(s, shoal, 600, 90, 11);
      s.within({ transform: 'rotate(9 318 640)' }, () => {
        const woods = [plank, rust, tar, paper, timber, ember, plank, deep, foam];
        woods.forEach((color, i) => {
          const x = 54 + i * 60;
          const [up, low] = [s.rand(-22, 14), s.rand(-10, 30)];
          s.cut(color, [
            [x, 610 + up],
            [x + 54, 606 + up],
            [x + 56, 690 + low],
            [x - 3, 694 + low],
          ]);
        });
        s.bar(tar, 30, 640, 610, 634, 15);
        const nails = trios('80,626,30 150,620,-40 214,626,50 400,620,-50 470,624,20 540,622,60');
        for (const [x, y, turn] of nails) {
          const tip = x + turn * 0.5;
          s.lines(ink, 6, [
            [x, y],
            [x + 2, y - 22],
            [tip, y - 36],
          ]);
          s.oval(ink, tip, y - 38, 8, 5);
        }
        s.soft(foam, pts('202,210 206,400 228,510 288,574 358,574 416,510 438,400 442,210'));
        s.cut(foam, pts('276,560 370,560 384,626 262,626'));
        s.bar(timber, 360, 216, 430, 70, 15);
        s.oval(foam, 322, 210, 132, 30);
        s.oval(blue, 322, 212, 120, 22);
        s.soft(amber, pts('212,214 250,172 322,154 396,172 432,214 322,234'));
        s.nicks(glim, slits('262,196,322,174,10 290,206,350,190,8'));
        for (const y of [290, 324]) s.bar(blue, 205, y, 440, y, 13);
        s.bar(blue, 226, 500, 418, 500, 11);
        s.nicks(paper, slits('236,350,252,490,10 292,604,350,604,7'));
        s.soft(glim, pts('410,214 440,204 448,300 434,372 418,316'));
      });
      water(s, 676, [shoal, deep, night]);
    },
  },
  {
    id: 'c041',
    draw: (s) => {
      s.ground(night);
      boards(s, -40, -40, 720, 800, 8, night, ink, deep);
      s.cut(tar, pts('204,700 204,220 318,56 432,220 432,700'));
      s.cut(amber, pts('228,700 228,232 318,100 408,232 408,700'));
      rays(s, glim, 318, 330, 40, 300, 18, 10);
      s.bar(tar, 318, 80, 318, 700, 13);
      for (const y of [240, 400, 560]) s.bar(tar, 216, y, 420, y, 11);
      s.within({ transform: 'rotate(33 318 400)' }, () => {
        s.bar(timber, 318, 120, 318, 560, 30);
        s.soft(timber, pts('318,-6 350,30 340,62 366,96 340,128 296,128 270,96 296,62 286,30'));
        s.oval(tar, 318, 62, 10);
        s.nicks(plank, slits('318,6,318,44,8 286,96,308,108,8 350,96,328,108,8'));
        s.cut(timber, pts('298,530 338,530 372,600 376,790 260,790 264,600'));
        s.cut(tar, pts('284,770 284,660 318,610 352,660 352,770'));
        s.cut(timber, pts('296,770 296,668 318,634 340,668 340,770'));
        s.ring(tar, 318, 690, 15, 15, 7);
        s.nicks(plank, slits('308,140,308,520,6 326,200,326,500,5 276,620,272,780,5'));
      });
      s.within({ transform: 'rotate(-33 318 400)' }, () => {
        s.bar(ember, 318, 40, 318, 560, 30);
        s.bar(rust, 318, 30, 318, 130, 38);
        s.cut(ember, pts('298,530 338,530 374,600 378,790 258,790 262,600'));
        s.ring(tar, 308, 640, 34, 32, 9);
        s.ring(tar, 336, 700, 32, 32, 9);
        s.ring(tar, 294, 740, 28, 28, 8, 20, 320);
        s.ring(tar, 318, 470, 24, 22, 7, 120, 300);
        s.nicks(clay, slits('308,150,308,420,6 326,200,328,500,5 272,620,270,760,6'));
      });
      for (const x of [214, 422]) {
        s.oval(ink, x, 236, 15);
        s.oval(glim, x - 3, 232, 6);
      }
      water(s, 710, nightWater);
    },
  },
];
