import { boards, town } from './buildings.js';
import { clothesLine, drips, fish } from './depth-things.js';
import { arm, coat, head } from './figures.js';
import { pts, slits } from './geometry.js';
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
import { bubbles, ripples, sheetOfWater, water } from './water.js';

/** An open book hung over a line at (x, y), its pages down. */
function hungBook(s: Sheet, cover: string, x: number, y: number, w: number, h: number): void {
  s.cut(cover, [
    [x - w / 2, y + 4],
    [x + w / 2, y - 4],
    [x + w * 0.72, y + h],
    [x - w * 0.72, y + h],
  ]);
  s.cut(foam, [
    [x - w * 0.5, y + 16],
    [x - 5, y + 12],
    [x - 7, y + h + 10],
    [x - w * 0.64, y + h - 8],
  ]);
  s.cut(paper, [
    [x + 5, y + 12],
    [x + w * 0.5, y + 10],
    [x + w * 0.64, y + h - 10],
    [x + 7, y + h + 10],
  ]);
  const list: Nick[] = [];
  for (let i = 0; i < 4; i += 1) {
    const yy = y + 34 + (i * (h - 50)) / 4;
    list.push([x - w * 0.48, yy, x - 14, yy + 2, 5], [x + 14, yy + 2, x + w * 0.48, yy, 5]);
  }
  s.nicks(shoal, list);
}

/** Depth Charts 19 to 22. */
export const depths19To22: readonly Picture[] = [
  {
    id: 'd019',
    draw: (s) => {
      s.ground(deep);
      boards(s, -40, -40, 720, 700, 6, lake, deep, shoal);
      s.bar(tar, -40, 110, 680, 104, 44);
      for (const x of [112, 318, 524]) {
        s.bar(amber, x, 96, x, 140, 17);
        s.oval(amber, x, 142, 17);
      }
      s.soft(foam, pts('76,150 112,128 148,150 190,440 150,462 112,446 70,462 34,440'));
      s.nicks(mist, slits('100,170,70,430,9 124,170,150,420,9 112,150,112,430,7'));
      for (const y of [370, 396]) s.bar(rust, 44, y, 182, y - 4, 10);
      s.ring(rust, 318, 184, 40, 48, 14, 180, 360);
      s.bar(timber, 262, 350, 236, 470, 34);
      s.bar(timber, 374, 350, 400, 470, 34);
      s.bar(timber, 298, 440, 292, 520, 36);
      s.bar(timber, 340, 440, 346, 520, 36);
      s.limb(timber, 26, 6, pts('372,470 420,500 432,540'));
      s.soft(rust, pts('250,330 270,190 318,176 366,190 388,330 380,480 318,500 256,480'));
      s.nicks(ember, slits('274,220,264,440,9 362,220,372,440,9 318,350,318,480,8'));
      s.soft(plank, pts('268,250 276,206 318,190 360,206 368,250 352,320 318,336 284,320'));
      s.soft(
        timber,
        pts('272,214 244,240 236,320 266,320 284,260'),
        pts('364,214 392,240 400,320 370,320 352,260'),
      );
      s.oval(foam, 298, 250, 12, 14);
      s.oval(foam, 338, 250, 12, 14);
      s.oval(ink, 300, 254, 7);
      s.oval(ink, 336, 254, 7);
      s.soft(ink, pts('300,292 318,282 336,292 318,312'));
      s.cut(night, pts('468,190 488,130 560,130 580,190 640,210 632,236 416,236 408,210'));
      s.bar(amber, 466, 184, 582, 184, 13);
      s.nicks(shoal, slits('430,220,610,220,6 500,140,490,176,6'));
      drips(s, mist, [40, 466], [186, 466], 7, 100, 11);
      drips(s, mist, [240, 530], [430, 530], 9, 70, 11);
      drips(s, mist, [416, 244], [632, 244], 8, 190, 11);
      s.soft(shoal, pts('30,640 120,624 260,632 420,622 600,636 640,652 30,660'));
      water(s, 650, [lake, deep, night]);
    },
  },
  {
    id: 'd020',
    draw: (s) => {
      s.ground(night);
      sheetOfWater(s, deep, 40, 110, 11);
      s.hatch(lake, -30, 80, 700, 500, 40, 82, 70, 5);
      bubbles(s, shoal, 120, 540, 330, 9);
      s.limb(foam, 13, 13, pts('318,-40 316,60 322,140'));
      for (const y of [20, 74])
        s.cut(rust, pts(`300,${y} 336,${y + 4} 334,${y + 26} 302,${y + 24}`));
      s.ring(ink, 318, 160, 26, 30, 15);
      s.soft(ink, pts('284,190 352,190 392,420 396,470 240,470 244,420'));
      s.soft(shoal, pts('296,200 320,200 312,450 262,452 268,400'));
      s.nicks(mist, slits('300,220,284,430,9'));
      s.bar(amber, 240, 462, 398, 462, 15);
      placedAt(
        s,
        330,
        540,
        1,
        () => {
          const edge: Pt[] = [];
          const [w, h] = [94, 66];
          for (let i = 0; i <= 8; i += 1) edge.push([-w + (i * w) / 4, -h + (i % 2) * 11]);
          for (let i = 1; i <= 6; i += 1) edge.push([w - (i % 2) * 11, -h + (i * h) / 3]);
          for (let i = 1; i <= 8; i += 1) edge.push([w - (i * w) / 4, h - (i % 2) * 11]);
          for (let i = 1; i < 6; i += 1) edge.push([-w + (i % 2) * 11, h - (i * h) / 3]);
          s.cut(foam, edge);
          s.cut(rust, pts('-74,-46 74,-46 74,46 -74,46'));
          s.oval(glim, 36, -16, 17);
          s.cut(foam, pts('-34,16 -34,-32 6,16'));
          s.soft(ink, pts('-56,20 16,20 4,34 -44,34'));
          s.nicks(foam, slits('-70,42,70,42,6 20,30,64,30,5'));
        },
        -8,
      );
      fish(s, amber, ink, 520, 330, -0.9);
      fish(s, shoal, ink, 110, 250, 0.7);
      fish(s, ember, ink, 540, 170, -0.6);
      s.soft(tar, pts('-60,660 80,610 220,640 420,616 560,640 700,606 700,740 -60,740'));
      water(s, 676, [deep, night, ink]);
    },
  },
  {
    id: 'd021',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, 0, 700, 560, 40, 62, 60, 8);
      s.oval(ember, 540, 110, 54);
      town(s, -50, 680, 600, 60, 130, paper, plank, null);
      const line = pts('-40,150 120,196 318,216 516,196 680,150');
      s.bar(timber, 20, 120, 10, 640, 22);
      s.bar(timber, 612, 120, 624, 640, 22);
      clothesLine(s, ink, line, []);
      hungBook(s, rust, 118, 200, 106, 180);
      hungBook(s, deep, 278, 216, 130, 240);
      hungBook(s, amber, 424, 212, 92, 150);
      hungBook(s, night, 544, 194, 90, 190);
      const pegs = pts('86,194 150,202 236,216 320,218 396,214 452,208 518,198 570,188');
      clothesLine(s, ink, [], pegs);
      drips(s, lake, [60, 380], [180, 380], 4, 120, 12);
      drips(s, lake, [200, 460], [360, 460], 5, 90, 12);
      drips(s, lake, [370, 366], [480, 366], 3, 160, 12);
      drips(s, lake, [490, 390], [600, 390], 4, 130, 12);
      water(s, 616, [shoal, lake, deep]);
    },
  },
  {
    id: 'd022',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, 0, 700, 380, 44, 0, 110, 9);
      s.soft(ember, pts('380,316 460,266 540,282 620,246 700,266 700,336 380,336'));
      s.box(lake, -40, 314, 720, 480);
      ripples(s, shoal, 400, 240, 20, 90);
      s.cut(foam, pts('540,300 540,240 580,300'));
      s.cut(ink, pts('528,302 590,302 580,318 538,318'));
      coat(s, rust, ember, 170, 470, 150, 180, 300);
      s.cut(plank, pts('90,540 250,540 270,740 70,740'));
      s.lines(plank, 17, pts('104,546 120,470'), pts('236,546 220,470'));
      head(s, 180, 322, {
        skin: clay,
        shade: kiln,
        size: 108,
        dark: 1,
        eyes: 'none',
        mouth: 'smile',
      });
      s.ring(ink, 138, 312, 17, 13, 8, 200, 340);
      s.nicks(ink, slits('118,306,100,298,6 158,306,170,296,6'));
      s.oval(foam, 220, 316, 20, 22);
      s.oval(ink, 226, 316, 11, 13);
      s.nicks(tar, slits('192,276,250,270,13 112,288,160,286,11'));
      s.soft(deep, pts('78,300 84,220 150,186 220,190 272,240 280,296 200,248 120,254'));
      s.cut(deep, pts('76,270 40,330 96,310'));
      s.bar(foam, 272, 250, 326, 226, 9);
      s.box(tar, 300, 332, 400, 128);
      s.box(plank, 300, 314, 400, 116);
      s.nicks(
        timber,
        slits(
          '320,334,470,336,8 500,352,660,350,8 340,370,470,372,7 520,392,640,390,8 330,408,440,406,7',
        ),
      );
      for (const x of [400, 640]) s.oval(timber, x, 340, 9);
      arm(s, rust, clay, ink, pts('300,600 470,600 540,476'), 78, 54, 66);
      arm(s, ember, clay, ink, pts('120,560 270,570 364,478'), 78, 54, 66);
      water(s, 660, [lake, deep, night]);
    },
  },
];
