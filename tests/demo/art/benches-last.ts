import { house } from './buildings.js';
import { heron, moored } from './craft.js';
import { arm, coat, head } from './figures.js';
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
import type { Sheet } from './sheet.js';
import { hat } from './story-people.js';
import { nightWater, water } from './water.js';
import { benchWater, workBench } from './work-bench.js';

/** One painted sky: a cloth on a coat hook, with what is painted on it. */
function sky(s: Sheet, x: number, cloth: string, draw: () => void): void {
  const w = 116;
  s.limb(ink, 7, 7, [
    [x + w / 2, 72],
    [x + w / 2 + 12, 50],
    [x + w / 2, 36],
    [x + w / 2 - 12, 48],
  ]);
  s.lines(ink, 7, [
    [x + 4, 112],
    [x + w / 2, 72],
    [x + w - 4, 112],
  ]);
  const shape: Pt[] = [
    [x, 110],
    [x + w, 110],
    [x + w + s.rand(-5, 5), 590 + s.rand(-16, 16)],
    [x + s.rand(-5, 5), 590 + s.rand(-16, 16)],
  ];
  s.cut(cloth, shape);
  s.clipped(shape, draw);
}

/** Maker's Benches 9 to 12. */
export const benchesLast: readonly Picture[] = [
  {
    id: 'be09',
    draw: (s) => {
      s.ground(timber);
      s.hatch(tar, -30, -20, 700, 760, 50, 90, 80, 6);
      s.bar(plank, -40, 40, 680, 36, 17);
      sky(s, 8, ember, () => {
        s.oval(glim, 66, 500, 52);
        s.nicks(amber, slits('10,380,124,384,12 10,430,90,432,10 30,330,120,332,9'));
        s.nicks(rust, slits('10,160,124,164,14 10,210,100,212,12'));
      });
      sky(s, 134, deep, () => {
        s.soft(foam, pts('130,190 170,160 210,180 260,170 260,230 130,236'));
        s.hatch(foam, 134, 260, 116, 330, 26, 78, 40, 5);
      });
      sky(s, 260, mist, () => s.within({ opacity: 0.6 }, () => s.box(night, 250, 100, 140, 520)));
      sky(s, 386, night, () => {
        s.soft(glim, pts('440,170 476,190 480,240 446,262 466,226 462,190'));
        s.hatch(foam, 390, 290, 110, 290, 26, 34, 12, 6);
      });
      sky(s, 512, mist, () => {
        for (const [x, y, r] of trios(
          '540,170,9 590,210,11 556,270,8 604,310,9 536,340,11 580,390,9 550,450,10 606,470,8 572,530,11 530,560,8',
        ))
          s.oval(foam, x, y, r);
      });
      s.cut(foam, pts('296,190 344,186 348,236 300,240'));
      s.oval(rust, 321, 196, 6);
      s.nicks(ink, slits('308,212,338,210,4 308,224,330,223,4'));
      s.box(tar, -40, 640, 720, 90);
      water(s, 672, nightWater);
    },
  },
  {
    id: 'be10',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, -20, 700, 700, 60, 4, 90, 7);
      moored(s, 196, 564, 0.94, () => heron(s, true));
      moored(s, 466, 580, 0.34, () => heron(s, true, ink));
      s.soft(rust, pts('566,580 570,562 586,560 598,572 610,570 606,588 584,592'));
      s.limb(rust, 8, 5, pts('602,578 612,564 608,550 618,546'));
      s.oval(glim, 622, 556, 7);
      s.box(timber, -40, 590, 720, 36);
      s.nicks(tar, slits('-20,606,180,610,6 230,600,420,604,6 470,612,640,608,6'));
      for (const x of [90, 540])
        s.cut(tar, [
          [x, 626],
          [x + 34, 626],
          [x, 690],
        ]);
      s.lines(rust, 4, pts('30,60 30,570'), pts('18,60 42,60'), pts('18,570 42,570'));
      benchWater(s, 668);
    },
  },
  {
    id: 'be11',
    draw: (s) => {
      s.ground(lake);
      s.hatch(shoal, -30, 0, 700, 560, 50, -20, 70, 6);
      house(s, 20, 610, 116, 270, plank, tar, glim, 3);
      house(s, 136, 610, 96, 210, ember, tar, glim, 3);
      house(s, 540, 610, 120, 240, timber, tar, glim, 3);
      const side = pts('232,610 250,330 276,210 330,172 390,172 444,210 470,330 490,610');
      s.soft(mist, side);
      s.soft(foam, pts('258,570 276,330 300,236 340,204 324,330 312,570'));
      const dimples: Pt[][] = [];
      for (let r = 0; r < 4; r += 1)
        for (let c = 0; c < 6; c += 1)
          dimples.push(arc(292 + c * 27 + (r % 2) * 11, 232 + r * 32, 8, 8, 0, 360, 7));
      for (let r = 0; r < 5; r += 1)
        for (const c of [0, 1, 5, 6])
          dimples.push(arc(272 + c * 31 + (r % 2) * 10, 412 + r * 30, 8, 8, 0, 360, 7));
      s.cut(night, ...dimples);
      s.bar(night, 252, 376, 472, 374, 12);
      s.cut(shoal, pts('222,576 500,574 504,614 218,614'));
      s.cut(tar, pts('318,614 322,494 360,462 400,494 404,614'));
      s.cut(rust, pts('330,614 334,502 360,480 388,502 392,614'));
      s.oval(amber, 378, 560, 8);
      s.cut(glim, pts('348,520 372,520 372,544 348,544'));
      s.box(timber, -40, 608, 720, 50);
      s.nicks(plank, slits('-20,626,200,630,6 260,622,460,626,6 500,640,640,636,6'));
      benchWater(s, 648);
    },
  },
  {
    id: 'be12',
    draw: (s) => {
      workBench(s, ink, 600);
      s.cut(night, pts('-60,120 700,-60 700,560 -60,300'));
      s.cut(deep, pts('-60,170 700,60 700,470 -60,250'));
      s.bar(tar, 250, 470, 258, 596, 34);
      s.cut(tar, pts('232,576 280,576 316,600 232,600'));
      s.limb(tar, 36, 32, pts('330,460 400,480 420,540'));
      s.cut(tar, pts('396,530 440,522 486,546 476,566 400,566'));
      coat(s, rust, ember, 290, 300, 82, 92, 200);
      head(s, 300, 210, { skin: clay, shade: kiln, size: 78, dark: -1, mouth: 'oh', eyes: 'open' });
      hat(s, 'bun', tar, 300, 210, 78);
      arm(s, rust, clay, ink, pts('226,350 190,430 230,470'), 50, 38, 38);
      arm(s, ember, clay, ink, pts('356,346 430,360 396,276'), 50, 38, 42);
      s.soft(kiln, pts('348,262 356,230 392,218 428,232 434,264 392,274'));
      s.nicks(foam, slits('368,238,376,230,5 392,232,400,240,5 410,246,416,238,5'));
      s.within({ opacity: 0.4 }, () =>
        s.soft(
          foam,
          pts(
            '300,84 390,120 470,230 520,420 560,604 400,590 300,612 180,592 60,606 110,420 150,240 214,118',
          ),
        ),
      );
      s.within({ opacity: 0.7 }, () =>
        s.nicks(
          foam,
          slits(
            '214,140,120,560,12 170,300,180,590,9 400,150,520,560,12 440,320,440,590,9 300,90,250,190,8 350,108,420,220,8',
          ),
        ),
      );
      s.oval(glim, 700, 220, 60);
      benchWater(s, 656);
    },
  },
];
