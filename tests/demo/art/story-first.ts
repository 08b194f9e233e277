import { house } from './buildings.js';
import { moored, heron } from './craft.js';
import { arm, coat, helmet } from './figures.js';
import { arc, pts, trios, slits } from './geometry.js';
import {
  ink,
  night,
  deep,
  lake,
  shoal,
  mist,
  foam,
  clay,
  amber,
  glim,
  tar,
  timber,
  plank,
  rust,
  ember,
} from './palette.js';
import { rays, lamp } from './things.js';
import { crest, sheetOfWater, water, nightWater, rings, bubbles, glitter } from './water.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';

/** A bell, its crown at (x, y). */
export function bell(
  s: Sheet,
  color: string,
  dark: string,
  light: string,
  x: number,
  y: number,
  u: number,
): void {
  s.ring(color, x, y + u * 0.1, u * 0.5, u * 0.5, u * 0.26);
  s.soft(color, [
    [x - u * 0.5, y + u * 0.5],
    [x + u * 0.5, y + u * 0.5],
    [x + u * 1.3, y + u * 1.1],
    [x + u * 1.55, y + u * 2.6],
    [x + u * 2.2, y + u * 3.5],
    [x, y + u * 3.75],
    [x - u * 2.2, y + u * 3.5],
    [x - u * 1.55, y + u * 2.6],
    [x - u * 1.3, y + u * 1.1],
  ]);
  s.soft(dark, arc(x, y + u * 3.56, u * 1.9, u * 0.26));
  s.oval(dark, x + u * 0.1, y + u * 3.86, u * 0.36);
  s.bar(dark, x - u * 1.7, y + u * 2.86, x + u * 1.7, y + u * 2.86, u * 0.16);
  s.bar(dark, x - u * 1.3, y + u * 1.26, x + u * 1.3, y + u * 1.26, u * 0.13);
  s.nicks(light, [
    [x - u * 0.9, y + u * 1.1, x - u * 1.3, y + u * 2.6, u * 0.26],
    [x - u * 0.46, y + u * 1.5, x - u * 0.7, y + u * 2.6, u * 0.13],
  ]);
}

/** Beats of the first two episodes. */
export const storyFirst: readonly Picture[] = [
  {
    id: 's049',
    draw: (s) => {
      s.ground(lake);
      s.hatch(shoal, -30, 0, 700, 380, 44, 80, 60, 5);
      for (const [x, w, h] of trios('-30,120,420 84,92,330 170,66,250')) {
        house(s, x, 640, w, h, night, ink, x > 100 ? glim : deep, 3);
        house(s, 636 - x - w, 640, w, h + 14, night, ink, x > 0 && x < 100 ? glim : deep, 3);
      }
      sheetOfWater(s, shoal, 520, 60, 8);
      for (const [x, y, k] of trios('286,470,0.5 356,500,0.62 226,520,0.86 440,560,1.3')) {
        rays(s, glim, x, y - 178 * k, 52 * k, 108 * k, 16, 6 * k);
        s.bar(ink, x, y + 60 * k, x, y - 150 * k, 13 * k);
        s.bar(ink, x - 26 * k, y - 112 * k, x + 26 * k, y - 112 * k, 7 * k);
        lamp(s, x, y - 246 * k, 90 * k, true);
        s.nicks(foam, [[x - 40 * k, y + 48 * k, x + 40 * k, y + 50 * k, 7 * k]]);
        glitter(s, glim, x, y + 62 * k, 60 * k, 50 * k);
      }
      s.cut(rust, pts('110,596 190,566 214,622 140,656'));
      s.nicks(ember, slits('126,602,196,580,6 140,626,204,606,6'));
      water(s, 640, nightWater);
      glitter(s, glim, 440, 662, 90, 100);
    },
  },
  {
    id: 's050',
    draw: (s) => {
      s.ground(deep);
      s.cut(glim, [...crest(s, 210, 96, 12), [700, -40], [-60, -40]]);
      s.nicks(foam, slits('20,60,260,62,9 300,110,560,108,9 80,150,240,152,7 420,40,640,44,7'));
      s.cut(rust, pts('268,176 382,176 360,214 290,214'));
      s.nicks(ink, slits('322,96,322,178,8'));
      s.cut(foam, pts('328,100 372,160 328,160'));
      sheetOfWater(s, lake, 204, 96, 11);
      rings(s, glim, 318, 250, 4, 50, 60);
      s.hatch(deep, -30, 320, 700, 260, 34, 90, 80, 6);
      sheetOfWater(s, deep, 372, 150, 14);
      for (const r of [196, 236, 276]) s.ring(lake, 318, 560, r, r, 7, 186, 354);
      bell(s, amber, timber, glim, 318, 424, 80);
      s.limb(shoal, 15, 4, pts('120,800 100,720 130,650 108,590'));
      s.limb(shoal, 15, 4, pts('520,800 550,720 520,640 546,580'));
      bubbles(s, mist, 420, 420, 150, 6);
      sheetOfWater(s, night, 748, 200, 20);
      sheetOfWater(s, ink, 804, 160, 14);
    },
  },
  {
    id: 's051',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 560, 60, 90, 70, 7);
      sheetOfWater(s, shoal, 560, 90, 11);
      s.within({ transform: 'rotate(-7 318 330)' }, () => {
        s.box(rust, 196, 60, 250, 470);
        s.box(ember, 222, 92, 84, 150);
        s.box(ember, 334, 92, 84, 150);
        s.box(ember, 222, 280, 84, 210);
        s.box(ember, 334, 280, 84, 210);
        s.oval(amber, 424, 290, 16);
        s.nicks(
          glim,
          slits('262,130,262,220,7 376,120,376,200,7 240,310,240,460,7 396,320,396,470,7'),
        );
        s.ring(amber, 320, 262, 22, 26, 9);
        s.nicks(
          lake,
          slits('206,530,204,600,9 270,530,272,640,11 340,530,338,590,9 420,530,424,630,11'),
        );
      });
      coat(s, timber, plank, 120, 560, 112, 120, 220);
      coat(s, deep, shoal, 520, 560, 112, 120, 220);
      helmet(s, 122, 466, 80, amber, glim, night);
      s.within({ transform: 'translate(1036 0) scale(-1 1)' }, () =>
        helmet(s, 520, 466, 80, plank, glim, night),
      );
      arm(s, timber, clay, ink, pts('196,600 262,560 240,470'), 56, 44, 46);
      arm(s, deep, clay, ink, pts('440,600 380,556 412,460'), 56, 44, 46, true);
      water(s, 660, [shoal, lake, deep]);
      s.nicks(foam, slits('60,668,200,670,9 430,668,590,670,9 240,690,400,690,7'));
    },
  },
  {
    id: 's052',
    draw: (s) => {
      s.ground(night);
      s.oval(ember, 318, 250, 190);
      s.hatch(lake, -30, 0, 700, 460, 30, 0, 80, 5);
      sheetOfWater(s, lake, 486, 90, 10);
      moored(s, 290, 530, 0.78, () => heron(s, false, ink, shoal));
      sheetOfWater(s, deep, 532, 90, 10);
      for (let i = 0; i < 8; i += 1) s.bar(tar, 14 + i * 88, -40, 14 + i * 88, 700, 20);
      s.bar(tar, -40, 96, 680, 92, 26);
      s.bar(tar, -40, 420, 680, 424, 26);
      water(s, 620, nightWater);
      s.within({ transform: 'rotate(-8 330 600)' }, () => {
        s.cut(foam, pts('160,452 492,452 500,560 490,746 156,742 150,600'));
        s.nicks(
          timber,
          slits(
            '196,500,330,500,6 196,530,452,532,6 196,560,440,560,6 196,590,300,590,6 196,690,300,688,5',
          ),
        );
        s.ring(rust, 390, 636, 74, 74, 10);
        s.ring(rust, 390, 636, 56, 56, 4);
        s.bar(rust, 336, 678, 444, 594, 24);
        s.bar(rust, 350, 590, 432, 686, 12);
      });
    },
  },
];
