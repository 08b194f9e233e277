import { boards } from './buildings.js';
import { arm, hand } from './figures.js';
import { arc, pts, slits } from './geometry.js';
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
import type { Sheet } from './sheet.js';
import { water } from './water.js';

/** An arm straight up from the water, holding something at its hand. */
function raised(
  s: Sheet,
  x: number,
  y: number,
  cloth: string,
  fold: string,
  brown: boolean,
  held: () => void,
): void {
  held();
  s.limb(cloth, 84, 62, [
    [x - 12, 780],
    [x - 4, y + 200],
    [x, y + 70],
  ]);
  s.nicks(fold, [
    [x - 20, y + 130, x - 26, y + 300, 9],
    [x + 12, y + 160, x + 6, y + 280, 8],
  ]);
  hand(s, brown ? plank : clay, tar, x, y + 48, 64, -90, x > 318);
  s.bar(fold, x - 34, y + 84, x + 32, y + 84, 20);
}

/** A cap, the fares and the doors. */
export const storyTickets: readonly Picture[] = [
  {
    id: 's077',
    draw: (s) => {
      s.ground(ember);
      boards(s, -40, -40, 720, 560, 5, ember, rust, kiln);
      s.box(tar, 352, -60, 220, 260);
      s.box(night, 372, -60, 180, 238);
      s.nicks(glim, slits('400,150,520,20,10 430,160,530,60,8'));
      s.oval(amber, 80, 300, 20);
      s.box(plank, -40, 508, 720, 60);
      s.nicks(timber, slits('-20,530,280,532,6 320,540,650,536,6'));
      s.box(timber, -40, 566, 720, 200);
      s.nicks(tar, slits('-20,600,240,602,6 300,630,640,628,6'));
      s.within({ opacity: 0.5 }, () => s.soft(tar, pts('120,530 330,500 560,530 540,560 160,562')));
      s.cut(
        paper,
        pts(
          '30,470 60,352 150,330 240,380 330,330 440,370 520,318 612,372 606,470 560,560 330,572 80,560',
        ),
      );
      s.cut(foam, pts('60,352 150,330 190,430 80,440'), pts('520,318 612,372 570,440 470,420'));
      s.cut(kiln, pts('80,440 190,430 330,410 470,420 570,440 540,540 330,556 100,540'));
      s.nicks(
        plank,
        slits(
          '44,470,84,540,8 70,366,140,420,6 540,352,580,420,6 590,480,556,540,8 250,378,330,340,6 180,566,300,556,7',
        ),
      );
      s.soft(lake, pts('176,436 184,340 240,280 330,262 420,284 474,344 478,430 330,400'));
      s.nicks(shoal, slits('230,380,262,304,11 324,376,328,284,10 420,384,396,304,10'));
      s.oval(lake, 330, 262, 16, 11);
      s.cut(deep, pts('170,428 260,398 330,392 410,400 484,426 482,458 330,430 172,462'));
      s.soft(ink, pts('166,462 330,424 490,458 560,490 480,506 330,478 220,496'));
      s.nicks(night, slits('300,450,500,484,8'));
      s.ring(foam, 96, 592, 40, 17, 7);
      s.ring(foam, 116, 606, 34, 13, 7);
      s.limb(foam, 8, 5, pts('130,590 200,610 240,586 300,612'));
      water(s, 690, [shoal, lake, deep]);
    },
  },
  {
    id: 's078',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, -20, 700, 620, 54, 4, 100, 8);
      raised(s, 76, 290, deep, shoal, false, () => {
        s.bar(tar, 76, 370, 76, 280, 22);
        s.oval(amber, 76, 236, 56, 52);
        s.oval(plank, 76, 300, 40, 15);
        s.nicks(glim, slits('48,240,74,204,12'));
      });
      raised(s, 236, 200, rust, ember, true, () => {
        s.soft(lake, pts('196,262 188,150 200,60 236,30 272,60 280,160 270,262 236,280'));
        s.soft(deep, pts('204,130 236,150 270,128 264,250 236,264 206,250'));
        s.soft(shoal, pts('190,150 196,70 236,24 274,70 282,150 236,176'));
        s.oval(rust, 236, 96, 20);
      });
      raised(s, 398, 320, amber, timber, false, () => {
        s.limb(ink, 32, 26, pts('398,420 396,320 386,220 406,120 470,60'));
        s.oval(ink, 474, 58, 24);
        s.nicks(shoal, slits('392,290,386,200,8 400,140,446,80,7'));
      });
      raised(s, 556, 300, night, lake, true, () => {
        s.oval(foam, 556, 214, 84, 80);
        s.soft(shoal, [...arc(556, 214, 76, 72, 0, 180), ...pts('500,204 556,210')]);
        s.ring(lake, 556, 214, 84, 80, 7, -62, 242);
        s.bar(lake, 514, 142, 598, 142, 10);
        s.soft(ember, pts('516,240 540,220 576,226 604,212 600,254 576,246 544,260'));
        s.oval(ink, 534, 234, 5);
      });
      water(s, 690, [shoal, lake, night]);
    },
  },
  {
    id: 's079',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, -20, 700, 90, 12, 0, 90, 6);
      s.box(tar, -40, 96, 720, 560);
      s.box(timber, -40, 60, 720, 54);
      s.nicks(tar, slits('-30,86,300,90,6 340,80,660,84,6'));
      const doors = [night, lake, amber, rust] as const;
      doors.forEach((color, i) => {
        const x = -26 + i * 150 + (i === 3 ? 44 : 0);
        const trim = color === amber ? tar : color === rust ? ember : shoal;
        s.box(color, x, 134 + (i % 2) * 8, 136, 446);
        s.box(trim, x + 20, 160, 96, 130);
        s.box(color, x + 30, 170, 76, 110);
        s.box(trim, x + 20, 320, 96, 220);
        s.box(color, x + 30, 330, 76, 200);
        s.oval(color === amber ? ink : amber, x + 120, 360, 11);
      });
      s.oval(amber, 446, 262, 24);
      s.bar(amber, 446, 262, 446, 400, 9);
      s.ring(amber, 446, 424, 26, 26, 12);
      arm(s, ink, clay, tar, pts('660,640 560,560 480,452'), 84, 58, 64);
      s.bar(amber, 512, 512, 540, 492, 12);
      s.soft(plank, pts('-60,572 160,592 480,592 720,570 720,760 -60,760'));
      s.nicks(tar, slits('-30,612,300,628,7 330,630,660,610,7 -30,656,660,660,7'));
      water(s, 680, [shoal, deep, night]);
    },
  },
];
