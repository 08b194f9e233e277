import { boards } from './buildings.js';
import { heron } from './craft.js';
import { rowingBoat } from './depth-things.js';
import { arm } from './figures.js';
import { arc, pts, slits, trios } from './geometry.js';
import {
  type Pt,
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
import type { Nick, Sheet } from './sheet.js';
import { placedAt } from './story-people.js';
import { nightWater, water } from './water.js';
import { benchWater, tweezers, workBench } from './work-bench.js';

/** A pair of clay lips about the origin, 70 wide: shut, or open on a row of teeth. */
function lips(s: Sheet, color: string, line: string, open: boolean): void {
  if (!open) {
    s.soft(color, pts('-38,0 -18,-10 0,-6 18,-10 38,0 18,13 -18,13'));
    s.nicks(line, slits('-32,1,32,1,7'));
    return;
  }
  s.soft(color, pts('-40,-2 -22,-30 0,-24 22,-30 40,-2 26,30 0,40 -26,30'));
  s.soft(ink, pts('-26,-2 0,-14 26,-2 16,20 0,26 -16,20'));
  s.cut(foam, pts('-20,-7 0,-13 20,-7 18,0 -18,0'));
  s.soft(rust, pts('-12,18 0,10 12,18 0,24'));
}

/** A bare footprint cut from tape, the toes up. */
function footprint(s: Sheet, color: string, left: boolean): void {
  const k = left ? 1 : -1;
  const at = (text: string): Pt[] => pts(text).map(([x, y]): Pt => [x * k, y]);
  s.soft(color, at('-20,-34 14,-38 24,-8 12,20 16,48 0,60 -16,48 -12,16 -22,-10'));
  for (const [x, y, r] of trios('14,-52,9 -2,-53,7 -16,-46,6')) s.oval(color, x * k, y, r);
}

/** Maker's Benches 4 to 8. */
export const benchesFirst: readonly Picture[] = [
  {
    id: 'be04',
    draw: (s) => {
      workBench(s, deep, 600);
      s.hatch(lake, -30, -10, 700, 600, 50, 40, 70, 6);
      placedAt(s, 236, 590, 0.72, () => {
        s.bar(timber, 0, -200, 0, -30, 9);
        s.cut(foam, pts('8,-180 96,-60 8,-56'));
        s.cut(amber, pts('-8,-160 -60,-66 -8,-62'));
        rowingBoat(s, rust, ember);
      });
      const strand: Nick[] = [];
      s.within({ opacity: 0.85 }, () => {
        s.soft(
          foam,
          pts(
            '420,150 520,160 560,250 500,330 420,380 380,480 280,440 200,510 90,450 -60,500 -60,300 60,250 160,290 260,220 340,230',
          ),
        );
        s.soft(mist, pts('-60,330 80,300 190,340 310,280 420,250 330,320 220,380 100,370 -60,400'));
      });
      for (let i = 0; i < 15; i += 1) {
        const x = s.rand(-20, 400);
        const y = 440 - x * 0.36 + s.rand(-90, 50);
        strand.push([x, y, x + s.rand(60, 120), y - s.rand(10, 50), 5]);
      }
      s.nicks(paper, strand);
      placedAt(
        s,
        452,
        232,
        1,
        () => {
          s.cut(rust, pts('-150,-36 150,-40 156,4 -156,6'));
          for (let i = 0; i < 13; i += 1)
            s.cut(rust, [
              [-148 + i * 24, 0],
              [-136 + i * 24, 0],
              [-140 + i * 24, 78],
            ]);
          s.nicks(ember, slits('-140,-20,130,-24,8'));
        },
        -24,
      );
      arm(s, amber, plank, timber, pts('700,60 620,130 560,176'), 88, 66, 78, true);
      benchWater(s, 640);
    },
  },
  {
    id: 'be05',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, -20, 700, 760, 40, 12, 90, 6);
      s.cut(tar, pts('50,50 590,40 600,650 40,656'));
      s.cut(timber, pts('70,70 570,60 578,630 62,636'));
      const [cols, rows, open] = [4, 5, 9];
      for (let i = 0; i < cols * rows; i += 1) {
        const [c, r] = [i % cols, Math.floor(i / cols)];
        const [x, y] = [84 + c * 121, 82 + r * 109];
        s.box(i === open ? glim : tar, x, y, 106, 94);
        const tones = [clay, kiln, ember, plank];
        placedAt(
          s,
          x + 53,
          y + 47,
          i === open ? 1.14 : 1,
          () => lips(s, i === open ? rust : (tones[(i * 7 + r) % 4] ?? clay), ink, i === open),
          s.rand(-5, 5),
        );
      }
      placedAt(s, 396, 380, 1.15, () => tweezers(s), 42);
      water(s, 690, nightWater);
    },
  },
  {
    id: 'be06',
    draw: (s) => {
      workBench(s, glim, 596, plank, timber);
      s.hatch(foam, -30, 0, 700, 580, 50, 70, 60, 7);
      s.soft(shoal, pts('372,596 386,330 420,214 484,190 548,214 582,330 596,596'));
      s.soft(mist, pts('396,560 410,340 436,244 470,216 452,330 440,560'));
      s.cut(lake, pts('362,560 606,560 610,602 358,602'));
      s.bar(lake, 384, 400, 586, 400, 14);
      const dimples: Pt[][] = [];
      for (let r = 0; r < 5; r += 1)
        for (let c = 0; c < 6; c += 1)
          dimples.push(arc(412 + c * 29 + (r % 2) * 12 - 4, 430 + r * 27, 7, 7, 0, 360, 7));
      for (let c = 0; c < 5; c += 1)
        for (let r = 0; r < 4; r += 1)
          dimples.push(arc(434 + c * 26 - (r % 2) * 8, 268 + r * 30, 6, 6, 0, 360, 7));
      s.cut(deep, ...dimples);
      s.soft(
        rust,
        pts(
          '110,420 152,396 176,384 206,400 236,384 262,396 304,424 330,560 296,572 264,470 264,590 146,590 148,470 118,572 82,556',
        ),
      );
      for (let r = 0; r < 5; r += 1)
        s.nicks(
          r % 2 === 0 ? foam : ember,
          Array.from({ length: 8 }, (_, i): Nick => [
            156 + i * 13,
            446 + r * 28,
            164 + i * 13,
            460 + r * 28,
            6,
          ]),
        );
      s.bar(ink, 60, 330, 330, 424, 9);
      s.bar(ink, 350, 316, 90, 424, 9);
      s.oval(amber, 54, 326, 19);
      s.oval(foam, 356, 312, 19);
      s.limb(rust, 6, 6, pts('264,592 330,610 300,660 380,640'));
      benchWater(s, 664);
    },
  },
  {
    id: 'be07',
    draw: (s) => {
      workBench(s, ember, 610);
      s.hatch(rust, -30, 0, 700, 600, 60, 60, 60, 6);
      boards(s, 110, 250, 240, 370, 4, night, ink, shoal);
      s.cut(deep, pts('86,190 230,40 374,190'));
      s.bar(amber, 230, 44, 230, -6, 8);
      s.cut(amber, pts('230,-10 276,4 230,20'));
      s.cut(night, pts('96,190 364,186 364,400 96,404'));
      s.bar(amber, 88, 404, 372, 400, 15);
      s.oval(amber, 230, 292, 104);
      s.oval(foam, 230, 292, 88);
      const ticks: Nick[] = [];
      for (let i = 0; i < 12; i += 1) {
        const [c, d] = [Math.cos(i * 0.5236), Math.sin(i * 0.5236)];
        ticks.push([230 + c * 64, 292 + d * 64, 230 + c * 82, 292 + d * 82, i % 3 === 0 ? 11 : 7]);
      }
      s.nicks(ink, ticks);
      s.bar(ink, 230, 292, 192, 270, 13);
      s.bar(rust, 230, 292, 208, 222, 10);
      s.oval(ink, 230, 292, 10);
      s.cut(ink, pts('196,520 230,480 264,520 266,612 194,612'));
      s.cut(glim, pts('140,440 168,440 168,490 140,490'), pts('292,440 320,440 320,490 292,490'));
      placedAt(s, 212, 226, 1.25, () => tweezers(s, mist, foam), -4);
      arm(s, lake, clay, ink, pts('740,330 640,260 560,214'), 96, 74, 84);
      benchWater(s, 664);
    },
  },
  {
    id: 'be08',
    draw: (s) => {
      s.ground(plank);
      for (let i = 0; i < 7; i += 1) s.bar(timber, i * 104 - 10, -40, i * 104 - 4, 720, 7);
      s.hatch(timber, -30, -20, 700, 740, 18, 90, 130, 4);
      s.oval(tar, 330, 348, 148);
      s.oval(timber, 322, 336, 148);
      s.oval(deep, 322, 336, 124);
      s.oval(lake, 322, 336, 96);
      for (const r of [46, 66]) s.ring(shoal, 322, 336, r, r * 0.8, 4);
      placedAt(s, 316, 372, 0.26, () => heron(s, true, ink, amber));
      const path: (readonly [number, number])[] = [];
      for (let i = 0; i < 11; i += 1) {
        const a = ((100 + i * 32) * Math.PI) / 180;
        const r = 296 - i * 9;
        path.push([322 + Math.cos(a) * r * 0.92, 336 + Math.sin(a) * r]);
      }
      path.forEach(([x, y], i) => {
        const turn = 100 + i * 32 + 180;
        placedAt(s, x, y, 0.82, () => footprint(s, i % 2 === 0 ? foam : glim, i % 2 === 0), turn);
      });
      s.lines(
        rust,
        9,
        pts('556,560 590,600'),
        pts('590,560 556,600'),
        pts('40,44 74,84'),
        pts('74,44 40,84'),
      );
      water(s, 690, [shoal, lake, deep]);
    },
  },
];
