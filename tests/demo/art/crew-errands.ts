import { town } from './buildings.js';
import { moored } from './craft.js';
import { armchair, friedEgg, mailSkiff, schoolHalf } from './crew-boats.js';
import { arm, brows, coat, hand, head } from './figures.js';
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
import { hat, placedAt } from './story-people.js';
import { pump } from './story-things.js';
import { glitter, nightWater, ripples, sheetOfWater, water } from './water.js';

/** A wooden spoon from the fist that holds it to the middle of its bowl. */
function spoon(s: Sheet, x1: number, y1: number, x2: number, y2: number, r: number): void {
  s.bar(timber, x1, y1, x2, y2, 17);
  s.oval(timber, x2, y2, r, r * 1.2);
  s.nicks(plank, [[x2 - r * 0.3, y2 + r * 0.5, x2 + r * 0.2, y2 - r * 0.6, r * 0.3]]);
}

/** A cook, the post and its postman, a houseboat, a measurer and the school. */
export const crewErrands: readonly Picture[] = [
  {
    id: 'c021',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, -20, 700, 600, 46, 90, 80, 8);
      s.limb(foam, 60, 190, pts('176,600 116,500 150,400 70,300 90,170 10,60 0,-60'));
      s.limb(foam, 50, 150, pts('470,590 540,500 500,420 580,320 556,200 640,90 640,-60'));
      s.limb(paper, 24, 70, pts('470,590 556,490 524,410 596,320 590,210'));
      s.limb(paper, 24, 80, pts('176,600 96,500 120,400 50,310 60,200'));
      spoon(s, 300, 190, 410, 66, 30);
      coat(s, rust, ember, 318, 372, 132, 150, 320);
      s.cut(foam, pts('246,410 390,410 404,640 232,640'));
      head(s, 318, 250, { skin: clay, shade: kiln, size: 92, dark: 1, wide: 0.9, mouth: 'level' });
      brows(s, tar, 318, 250, 92, -0.04, 0.1);
      s.oval(tar, 318, 138, 52, 42);
      hat(s, 'bun', tar, 318, 250, 92);
      s.bar(foam, 240, 176, 396, 174, 18);
      spoon(s, 96, 330, 56, 160, 36);
      spoon(s, 544, 330, 590, 166, 36);
      arm(s, rust, clay, ink, pts('206,424 118,470 98,372'), 72, 52, 58);
      arm(s, rust, clay, ink, pts('430,424 520,470 542,372'), 72, 52, 58, true);
      s.cut(tar, pts('150,566 486,566 470,612 166,612'));
      s.bar(tar, 480, 578, 610, 566, 22);
      s.oval(ink, 318, 566, 168, 20);
      friedEgg(s, 260, 560, 58);
      friedEgg(s, 384, 564, 50);
      s.box(ink, 40, 606, 560, 130);
      s.bar(night, 30, 612, 610, 612, 22);
      s.cut(tar, pts('200,646 440,646 440,720 200,720'));
      s.soft(amber, pts('216,724 236,668 262,706 296,654 330,704 366,660 394,700 420,672 428,724'));
      s.nicks(night, slits('70,650,70,712,9 560,650,560,712,9 120,680,170,680,9'));
      water(s, 716, [shoal, lake, deep]);
    },
  },
  {
    id: 'c022',
    draw: (s) => {
      s.ground(mist);
      s.oval(foam, 170, 190, 104);
      s.oval(glim, 170, 190, 70);
      s.hatch(foam, -30, -20, 700, 500, 40, 8, 90, 8);
      town(s, 330, 690, 560, 60, 160, shoal, lake, foam);
      s.nicks(
        ink,
        slits('396,150,426,168,9 426,168,456,146,9 500,210,522,224,8 522,224,546,206,8'),
      );
      sheetOfWater(s, shoal, 546, 90, 11);
      moored(s, 312, 640, 0.98, () => mailSkiff(s), -4);
      s.bar(timber, 360, 470, 566, 720, 15);
      s.cut(timber, pts('548,690 580,672 614,738 580,762'));
      water(s, 646, [lake, deep, night]);
    },
  },
  {
    id: 'c023',
    draw: (s) => {
      s.ground(clay);
      s.hatch(foam, -30, -20, 700, 250, 30, 0, 100, 8);
      moored(s, 230, 336, 0.66, () => {
        s.bar(timber, 0, -280, -190, 120, 17);
        coat(s, night, lake, 130, -320, 104, 112, 230);
        head(s, 136, -410, { skin: timber, shade: tar, size: 84, dark: -1, mouth: 'smile' });
        s.cut(ink, pts('50,-438 66,-504 206,-504 222,-438 280,-426 276,-412 50,-420'));
        s.bar(amber, 62, -450, 212, -450, 14);
        mailSkiff(s);
      });
      s.cut(deep, pts('-40,330 60,338 180,326 300,338 420,328 540,338 680,328 680,940 -40,940'));
      s.hatch(lake, -30, 360, 700, 420, 46, 0, 90, 6);
      s.cut(night, pts('300,520 590,510 600,780 304,780'));
      s.cut(ink, pts('268,536 440,404 624,524 600,548 290,556'));
      s.cut(rust, pts('410,430 412,384 480,380 484,450'));
      s.bar(ember, 402, 384, 490, 380, 14);
      s.cut(shoal, pts('400,620 480,616 482,780 402,780'));
      s.oval(glim, 466, 704, 7);
      s.cut(deep, pts('326,596 374,594 376,660 328,662'), pts('514,590 564,588 566,654 516,656'));
      s.nicks(
        lake,
        slits('326,628,374,628,5 514,622,566,620,5 350,596,350,660,5 540,590,540,654,5'),
      );
      for (const y of [470, 500]) s.nicks(lake, [[330, y + 40, 540, y + 36, 5]]);
      placedAt(s, 150, 790, 0.5, () => pump(s, night, lake, 0, 0, 400));
      s.cut(
        mist,
        pts('60,560 82,546 104,556 122,544 120,572 104,562 82,570'),
        pts('190,470 208,460 226,468 240,458 238,482 226,474 208,480'),
      );
      s.cut(foam, pts('420,272 476,264 484,340 428,346'));
      s.nicks(rust, slits('432,288,470,284,4 452,300,472,320,6'));
      arm(s, night, timber, ink, pts('350,170 420,180 446,238'), 46, 34, 40);
      sheetOfWater(s, night, 752, 150, 15);
      sheetOfWater(s, ink, 812, 170, 14);
    },
  },
  {
    id: 'c024',
    draw: (s) => {
      s.ground(night);
      s.oval(foam, 566, 104, 52);
      s.oval(night, 546, 92, 46);
      s.hatch(lake, -30, 10, 700, 400, 34, 0, 90, 5);
      for (const [i, x] of [150, 262, 374].entries()) s.box(rust, x, 146 + (i % 2) * 12, 46, 110);
      s.bar(ink, 486, 270, 492, 150, 18);
      s.cut(ink, pts('470,158 492,132 514,158'));
      s.cut(tar, pts('44,268 120,196 516,196 592,268'));
      s.hatch(timber, 80, 206, 470, 54, 22, 82, 34, 5);
      s.box(plank, 76, 262, 484, 300);
      const panes = [104, 222, 340, 458].map((x) => [x, 300, 78, 128] as const);
      for (const [x, y, w, h] of panes) {
        s.box(tar, x - 8, y - 10, w + 16, h + 18);
        s.box(glim, x, y, w, h);
        s.box(foam, x, y, w, 26);
        s.nicks(ember, [[x + 4, y + 20, x + w - 4, y + 20, 5]]);
        s.bar(tar, x + w / 2, y + 26, x + w / 2, y + h, 5);
      }
      s.nicks(timber, slits('80,450,200,452,5 230,456,330,454,5 360,450,540,452,5'));
      s.soft(deep, pts('-30,560 60,578 590,578 668,556 610,720 20,720'));
      s.bar(shoal, -20, 574, 656, 572, 18);
      s.nicks(shoal, slits('60,620,250,628,7 300,626,560,618,7 80,660,300,664,6'));
      placedAt(s, 116, 580, 0.9, () => armchair(s, rust, ember));
      placedAt(s, 278, 584, 0.96, () => armchair(s, amber, glim));
      placedAt(s, 440, 580, 0.9, () => armchair(s, lake, shoal));
      s.bar(foam, 538, 500, 534, 580, 9);
      s.bar(foam, 580, 500, 586, 580, 9);
      s.bar(foam, 534, 548, 584, 548, 7);
      s.cut(foam, pts('522,486 596,484 598,504 520,506'));
      water(s, 672, nightWater);
      glitter(s, amber, 300, 700, 80, 300);
    },
  },
  {
    id: 'c025',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, -20, 700, 720, 60, 8, 80, 8);
      pump(s, ink, shoal, 132, 740, 640);
      coat(s, deep, night, 346, 424, 156, 172, 330);
      head(s, 346, 290, { skin: plank, shade: timber, size: 98, dark: -1, wide: 0.82 });
      hat(s, 'brim', tar, 346, 290, 98);
      s.bar(glim, 278, 244, 416, 244, 14);
      brows(s, tar, 346, 290, 98, 0.05, 0.09);
      arm(s, deep, plank, tar, pts('466,480 566,470 556,330'), 86, 62, 100);
      s.limb(night, 64, 60, pts('566,420 558,346'));
      s.nicks(
        foam,
        slits('478,170,452,148,9 508,130,494,100,9 600,136,616,106,9 628,176,652,160,9'),
      );
      s.limb(deep, 86, 70, pts('230,480 196,600 290,628'));
      s.soft(glim, pts('286,586 350,570 404,578 438,612 424,664 360,682 290,670'));
      s.soft(glim, pts('330,590 340,540 372,532 388,566 378,600'));
      s.cut(rust, pts('270,580 306,578 308,676 272,676'));
      s.nicks(rust, slits('330,606,420,606,8 326,632,428,634,8 330,658,410,660,8'));
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 'c026',
    draw: (s) => {
      s.ground(shoal);
      s.soft(foam, pts('40,190 90,140 160,150 200,110 290,120 330,170 300,206 60,214'));
      s.soft(mist, pts('390,120 450,80 520,96 560,70 640,90 700,130 400,136'));
      s.soft(lake, pts('-60,520 40,430 170,470 300,400 460,460 560,420 700,470 700,640 -60,640'));
      sheetOfWater(s, mist, 540, 90, 11);
      placedAt(s, 132, 636, 1, () => schoolHalf(s, foam, rust, tar));
      placedAt(s, 418, 640, 0.98, () => schoolHalf(s, foam, rust, tar), 0, -0.98);
      for (const [x, y, color] of [
        [90, 536, timber],
        [138, 528, clay],
        [430, 532, plank],
        [470, 540, clay],
      ] as const) {
        s.oval(color, x, y, 17, 19);
        s.oval(ink, x, y - 12, 19, 11);
      }
      s.limb(ink, 7, 7, pts('244,572 280,606 318,572'));
      s.limb(ink, 6, 6, pts('536,588 560,618 586,604'));
      s.soft(plank, pts('556,596 642,594 634,664 566,664'));
      s.bar(ink, 560, 612, 640, 610, 9);
      s.oval(clay, 598, 566, 28, 30);
      s.soft(rust, arc(598, 544, 32, 17));
      s.oval(ink, 590, 566, 3, 4);
      s.oval(ink, 606, 566, 3, 4);
      hand(s, clay, ink, 636, 578, 26, -60);
      water(s, 648, [shoal, lake, deep]);
      ripples(s, foam, 690, 20, 5, 90);
    },
  },
];
