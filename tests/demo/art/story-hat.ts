import { arm, coat } from './figures.js';
import { pts, slits, trios } from './geometry.js';
import {
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
  type Pt,
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Nick } from './sheet.js';
import { pimHead, placedAt, ternHat, ternHead } from './story-people.js';
import { pump, sealPrint } from './story-things.js';
import { water } from './water.js';

/** The magistrate comes to town, and what follows. */
export const storyHat: readonly Picture[] = [
  {
    id: 's066',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, -20, 700, 360, 44, -6, 90, 8);
      for (const [x, y] of pts('76,240 214,186 556,216'))
        s.limb(foam, 12, 40, [
          [x, y],
          [x + 26, y - 50],
          [x + 4, y - 96],
          [x + 40, y - 150],
        ]);
      const stacks = trios('76,258,44 146,230,36 214,204,46 470,208,38 556,236,44 616,270,36');
      s.cut(
        rust,
        ...stacks.map(([x, y, w]): Pt[] => [
          [x - w / 2, y],
          [x + w / 2, y - 3],
          [x + w / 2 + 3, y + 170],
          [x - w / 2 - 3, y + 170],
        ]),
      );
      s.cut(
        tar,
        ...stacks.map(([x, y, w]): Pt[] => [
          [x - w / 2 - 7, y],
          [x + w / 2 + 7, y - 4],
          [x + w / 2 + 6, y + 18],
          [x - w / 2 - 6, y + 20],
        ]),
      );
      placedAt(s, 344, 352, 1.16, () => ternHat(s, 244), 4);
      s.soft(timber, pts('-60,380 60,320 200,300 330,306 460,300 580,326 700,380 700,780 -60,780'));
      s.hatch(tar, -30, 350, 700, 330, 46, 12, 70, 6);
      s.soft(
        paper,
        pts(
          '318,312 372,312 430,346 350,392 250,434 270,486 430,540 470,620 420,720 190,720 250,640 330,590 320,550 190,500 160,440 230,390 330,352',
        ),
      );
      s.nicks(
        plank,
        slits(
          '360,334,400,344,6 270,400,330,376,6 200,446,230,470,6 300,520,390,556,7 400,600,380,680,8',
        ),
      );
      s.cut(
        deep,
        pts('30,560 34,440 70,410 108,440 112,560'),
        pts('520,600 524,470 572,430 618,470 622,600'),
      );
      s.cut(glim, pts('56,470 86,470 86,506 56,506'), pts('548,500 592,500 592,546 548,546'));
      water(s, 690, [mist, shoal, lake]);
    },
  },
  {
    id: 's067',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, -20, 700, 560, 54, 30, 70, 7);
      s.box(plank, -40, 592, 720, 170);
      s.nicks(tar, slits('-40,626,680,622,7 130,594,126,700,7 420,594,424,700,7'));
      pump(s, ink, night, 548, 606, 520);
      sealPrint(s, 548, 404, 40, ember);
      s.bar(amber, 262, 570, 254, 640, 17);
      s.bar(amber, 320, 570, 330, 640, 17);
      s.cut(amber, pts('222,648 256,626 296,650'), pts('298,650 330,628 372,648'));
      s.limb(foam, 96, 52, pts('372,430 420,340 396,230 372,150'));
      s.soft(foam, pts('326,120 368,90 416,110 420,160 370,182 334,164'));
      s.soft(foam, pts('90,372 170,350 290,340 400,360 444,440 400,540 300,590 190,570 120,490'));
      s.nicks(mist, slits('130,400,230,470,11 110,420,190,500,10 240,560,380,530,9'));
      s.cut(amber, pts('338,124 262,152 336,164'));
      s.nicks(rust, slits('270,152,336,148,5'));
      s.oval(ink, 366, 128, 9);
      s.nicks(ink, slits('344,106,384,100,8'));
      sealPrint(s, 318, 452, 74);
      s.soft(foam, pts('24,636 130,618 236,636 210,660 50,660'));
      s.soft(kiln, pts('56,630 66,570 130,544 196,570 204,630 130,642'));
      sealPrint(s, 130, 592, 32);
      water(s, 694, [shoal, lake, deep]);
    },
  },
  {
    id: 's068',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, -20, 700, 560, 56, 0, 90, 8);
      s.oval(foam, 120, 150, 66);
      s.oval(ember, 142, 138, 64);
      s.soft(rust, pts('-60,560 40,480 180,500 300,470 420,510 560,470 700,520 700,640 -60,640'));
      s.box(tar, 330, 60, 36, 560);
      s.box(tar, 556, 60, 36, 560);
      s.box(timber, 290, 96, 342, 296);
      s.nicks(tar, slits('292,170,630,168,7 292,244,630,246,7 292,320,630,318,7'));
      s.cut(foam, pts('348,82 578,90 572,374 352,370'));
      const nails: Nick[] = [];
      for (let i = 0; i < 8; i += 1)
        nails.push([378, 146 + i * 26, i % 3 === 2 ? 480 : 546, 147 + i * 26, 8]);
      s.nicks(ink, nails);
      s.bar(ink, 420, 118, 508, 118, 13);
      for (const [x, y] of pts('366,98 462,96 560,104 562,226 558,358 462,356 368,354 366,226'))
        s.oval(rust, x, y, 10);
      s.box(ink, -40, 596, 720, 160);
      s.cut(ink, pts('60,606 64,430 58,372 150,366 148,470 170,520 236,540 254,576 250,606'));
      s.nicks(ember, slits('70,396,142,390,7 164,520,196,560,6'));
      s.soft(
        ink,
        pts(
          '300,470 312,446 342,438 366,456 368,490 390,520 470,530 536,500 528,570 470,606 360,606 320,570 326,510',
        ),
      );
      s.cut(ink, pts('308,456 258,478 312,484'));
      s.oval(amber, 336, 466, 7);
      s.nicks(ember, slits('390,556,490,548,7'));
      water(s, 676, [lake, deep, ink]);
    },
  },
  {
    id: 's069',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, -20, 700, 620, 50, 80, 90, 8);
      for (const [x, w, h] of trios('470,56,80 548,70,110 622,50,70')) {
        s.box(x === 548 ? amber : shoal, x, 190 - h, w, h);
        s.box(tar, x - 3, 182 - h, w + 6, 16);
      }
      s.box(timber, 452, 190, 240, 20);
      s.bar(timber, 500, 214, 500, 262, 14);
      coat(s, ink, night, 400, 640, 170, 190, 180);
      s.cut(foam, pts('310,590 400,666 490,590 504,700 400,760 296,700'));
      placedAt(s, 400, 552, 1.24, () => ternHead(s, 388));
      s.nicks(night, slits('350,110,360,340,12 384,110,386,240,9'));
      s.box(timber, -40, 474, 290, 24);
      s.bar(tar, 40, 500, 40, 590, 17);
      s.bar(tar, 44, 580, 180, 502, 13);
      s.bar(ink, 110, 410, 104, 466, 32);
      s.bar(ink, 160, 410, 168, 466, 32);
      s.oval(ink, 96, 468, 28, 13);
      s.oval(ink, 180, 468, 28, 13);
      coat(s, rust, ember, 134, 290, 62, 80, 140);
      placedAt(s, 138, 204, 0.86, () => pimHead(s, { mouth: 'level' }), 6);
      s.box(foam, 262, 62, 44, 424);
      const marks: Nick[] = [];
      for (let i = 0; i < 16; i += 1)
        marks.push([264, 80 + i * 25, i % 4 === 0 ? 298 : 282, 81 + i * 25, 7]);
      s.nicks(ink, marks);
      arm(s, rust, plank, tar, pts('186,318 230,290 262,206'), 46, 36, 40);
      arm(s, rust, plank, tar, pts('90,330 140,390 254,372'), 46, 36, 40);
      water(s, 694, [shoal, lake, night]);
    },
  },
];
