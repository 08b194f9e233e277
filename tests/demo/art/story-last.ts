import { gate } from './buildings.js';
import { moored, heron } from './craft.js';
import { arm } from './figures.js';
import { pts, trios, quads, slits } from './geometry.js';
import {
  ink,
  night,
  deep,
  lake,
  shoal,
  mist,
  foam,
  paper,
  amber,
  glim,
  tar,
  timber,
  plank,
  rust,
  ember,
  type Pt,
} from './palette.js';
import { rays, glow, lamp, tallies, seal, rope } from './things.js';
import { sheetOfWater, ripples, water, nightWater, glitter } from './water.js';
import type { Picture } from './scenes.js';
import type { Nick } from './sheet.js';

/** Beats of the second and third episodes, and the list that closes the set. */
export const storyLast: readonly Picture[] = [
  {
    id: 's053',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, 0, 700, 400, 40, 30, 60, 7);
      for (let i = 0; i < 6; i += 1)
        s.limb(timber, 20, 26, [
          [40 + i * 112, 60],
          [20 + i * 112, 300],
          [60 + i * 104, 520],
          [160 + i * 70, 700],
        ]);
      const strip = (y: number, color: string, from: number, to: number): Pt[] => {
        const top: Pt[] = [];
        const low: Pt[] = [];
        for (let x = from; x <= to; x += 60) {
          const sag = 46 * Math.sin(((x + 30) / 700) * Math.PI);
          top.push([x, y + sag]);
          low.unshift([x + 3, y + sag + 76]);
        }
        s.cut(color, [...top, ...low]);
        return top;
      };
      strip(604, tar, -40, 680);
      strip(522, rust, -40, 680).forEach(([x, y], i) =>
        s.oval(i % 2 === 0 ? glim : ember, x + 20, y + 38, 15, 20),
      );
      strip(440, timber, -40, 680);
      const leaf = strip(358, lake, -40, 440);
      for (const [x, y] of leaf)
        s.nicks(foam, [
          [x + 14, y + 58, x + 14, y + 16, 9],
          [x + 14, y + 44, x + 32, y + 24, 8],
          [x + 14, y + 44, x - 2, y + 26, 8],
        ]);
      s.nicks(
        plank,
        slits(
          '-20,484,200,510,6 220,512,420,512,6 440,500,650,480,6 -20,650,300,684,6 320,680,650,650,6',
        ),
      );
      s.within({ transform: 'rotate(-17 420 300)' }, () => {
        s.box(paper, 250, 250, 440, 80);
        for (let i = 0; i < 9; i += 1)
          s.bar(i % 2 === 0 ? ember : shoal, 280 + i * 46, 252, 280 + i * 46, 328, 15);
        arm(s, deep, plank, tar, pts('690,120 600,150 540,240'), 70, 52, 62);
      });
      s.bar(tar, 120, 250, 250, 110, 18);
      s.within({ transform: 'rotate(-47 120 250)' }, () => s.box(timber, 70, 216, 66, 84));
      arm(s, deep, plank, tar, pts('240,-40 300,60 236,130'), 70, 52, 58);
      water(s, 704, [shoal, lake, deep]);
    },
  },
  {
    id: 's054',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, 0, 700, 300, 40, 8, 70, 8);
      const steps = trios(
        '330,112,0.5 420,170,0.58 318,232,0.68 420,300,0.78 262,374,0.9 396,452,1.02 214,534,1.14 384,616,1.26',
      );
      steps.forEach(([x, y, k], i) => {
        s.box(i % 2 === 0 ? timber : plank, -40, y + 40 * k, 720, 150 * k);
        s.nicks(tar, [
          [-20, y + 66 * k, x - 60, y + 68 * k, 5],
          [x + 190, y + 60 * k, 650, y + 62 * k, 5],
        ]);
        gate(s, x, y, 140 * k, 104 * k, i % 2 === 0 ? lake : deep, ink, mist);
        const falls = [0.2, 0.5, 0.8].map((t): Nick => [
          x + 140 * k * t,
          y + 104 * k,
          x + 140 * k * t,
          y + (132 + (i % 3) * 5) * k,
          9 * k,
        ]);
        s.nicks(foam, falls);
      });
      s.cut(tar, pts('28,50 272,40 282,226 34,238'));
      s.cut(ink, pts('40,62 260,53 268,214 46,224'));
      tallies(s, foam, 70, 100, 76, 8, 2);
      water(s, 716, [mist, shoal, lake]);
    },
  },
  {
    id: 's055',
    draw: (s) => {
      s.ground(ink);
      const [vx, vy] = [318, 330];
      s.cut(night, [
        [-40, -40],
        [vx - 50, vy - 60],
        [vx - 50, vy + 40],
        [-40, 700],
      ]);
      s.cut(night, [
        [680, -40],
        [vx + 50, vy - 60],
        [vx + 50, vy + 40],
        [680, 700],
      ]);
      s.cut(timber, [
        [-40, 720],
        [vx - 50, vy + 40],
        [vx + 50, vy + 40],
        [680, 720],
      ]);
      s.cut(amber, [
        [vx - 50, vy - 60],
        [vx + 50, vy - 60],
        [vx + 50, vy + 40],
        [vx - 50, vy + 40],
      ]);
      s.cut(glim, [
        [vx - 30, vy - 30],
        [vx + 30, vy - 30],
        [vx + 30, vy + 40],
        [vx - 30, vy + 40],
      ]);
      for (const t of [0.16, 0.26, 0.42, 0.7, 1.15]) {
        const [x, top, low] = [290 * t + 40, vy - 400 * t - 30, vy + 330 * t + 44];
        for (const side of [-1, 1]) {
          s.bar(tar, vx + side * x, top, vx + side * x, low, 34 * t + 4);
          s.bar(tar, vx + side * x, top + 20 * t, vx, top - 90 * t, 26 * t + 3);
        }
      }
      for (const t of [0.2, 0.36, 0.62]) {
        for (const side of [-1, 1]) {
          const [x, y] = [vx + side * (230 * t + 34), vy - 250 * t - 26];
          glow(s, x, y + 80 * t, 96 * t);
          lamp(s, x, y, 120 * t, true, ink);
        }
      }
      s.nicks(
        plank,
        slits('200,560,276,400,6 440,560,360,400,6 120,690,230,480,7 520,690,404,470,7'),
      );
      rope(s, paper, timber, 290, 760, 320, 350, 96, 10);
      rope(s, plank, tar, 470, 760, 328, 350, 60, 7);
      rope(s, plank, tar, 120, 760, 312, 350, 60, 7);
      water(s, 716, nightWater);
    },
  },
  {
    id: 's056',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 300, 30, 0, 130, 8);
      sheetOfWater(s, '#8fbdb1', 560, 110, 10);
      s.oval(foam, 504, 288, 176);
      s.oval(glim, 504, 288, 112);
      rays(s, amber, 504, 288, 66, 170, 24, 7);
      s.within({ opacity: 0.82 }, () =>
        moored(s, 222, 640, 0.94, () => heron(s, true, '#3f6f73', mist)),
      );
      for (const [y, x1, x2, w] of quads(
        '252,-60,300,40 352,60,700,34 430,-60,420,52 520,200,700,60 590,-60,480,54',
      )) {
        s.within({ opacity: 0.72 }, () =>
          s.limb(foam, w, w * 0.3, [
            [x1, y],
            [(x1 * 2 + x2) / 3, y - 9],
            [(x1 + x2 * 2) / 3, y + 8],
            [x2, y],
          ]),
        );
      }
      sheetOfWater(s, shoal, 650, 110, 12);
      s.within({ opacity: 0.6 }, () => s.limb(foam, 46, 20, pts('700,690 420,684 140,694')));
      sheetOfWater(s, lake, 706, 130, 14);
      glitter(s, glim, 500, 720, 60, 90);
      ripples(s, shoal, 770, 100, 8);
    },
  },
  {
    id: 'k084',
    draw: (s) => {
      s.ground(deep);
      water(s, 720, [lake, night, ink]);
      s.cut(tar, pts('84,66 566,70 560,700 80,696'));
      s.cut(foam, pts('72,54 552,58 548,690 68,684'));
      s.limb(
        rust,
        12,
        12,
        pts(
          '110,128 150,112 190,128 230,112 270,128 310,112 350,128 390,112 430,128 470,112 510,128',
        ),
      );
      s.limb(
        amber,
        9,
        9,
        pts(
          '110,146 150,130 190,146 230,130 270,146 310,130 350,146 390,130 430,146 470,130 510,146',
        ),
      );
      for (let i = 0; i < 11; i += 1) {
        const y = 194 + i * 43;
        s.ring(ink, 128, y, 13, 13, 4.5);
        if ([0, 1, 3, 4, 7].includes(i))
          s.nicks(rust, [
            [116, y - 2, 127, y + 10, 8],
            [125, y + 11, 152, y - 22, 8],
          ]);
        const end = 300 + s.rand(40, 190);
        const wave: Pt[] = [];
        for (let x = 166; x <= end; x += 12)
          wave.push([x, y + (Math.round((x - 166) / 12) % 2 === 0 ? 4 : -4)]);
        s.lines(i % 3 === 1 ? timber : deep, 5.5, wave);
        s.nicks(paper, [[100, y + 22, 520, y + 22, 4]]);
      }
      for (const [x, y] of pts('92,76 532,78 528,668 88,664')) s.oval(plank, x, y, 9);
      seal(s, rust, glim, 508, 664, 54);
    },
  },
];
