import { house } from './buildings.js';
import { moored } from './craft.js';
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
import { bell } from './story-first.js';
import { hat, placedAt } from './story-people.js';
import { nightWater, rings, ripples, sheetOfWater, water } from './water.js';

/** An elbow, a fire boat and a geranium, each at its window. */
export const crewWindows: readonly Picture[] = [
  {
    id: 'c042',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, -20, 400, 400, 30, 0, 100, 6);
      s.cut(rust, pts('330,-60 720,-60 720,780 350,780'));
      for (let r = 0; r < 11; r += 1)
        s.nicks(ember, [
          [360 + (r % 2) * 50, 30 + r * 66, 440 + (r % 2) * 50, 32 + r * 66, 9],
          [560 + (r % 2) * 30, 60 + r * 66, 640, 60 + r * 66, 9],
        ]);
      s.box(tar, 372, 110, 230, 330);
      s.box(glim, 390, 130, 194, 300);
      s.cut(shoal, pts('602,104 676,84 676,452 602,446'), pts('372,104 330,88 330,430 372,446'));
      s.nicks(
        deep,
        slits(
          '614,150,664,142,9 614,200,664,196,9 614,260,664,258,9 614,320,664,324,9 614,380,664,388,9',
        ),
      );
      coat(s, night, lake, 476, 330, 92, 104, 130);
      head(s, 446, 232, {
        skin: clay,
        shade: kiln,
        size: 78,
        dark: 1,
        mouth: 'level',
        eyes: 'shut',
      });
      s.soft(mist, pts('372,250 368,180 404,148 470,144 520,170 526,250 490,190 420,190'));
      s.oval(mist, 486, 142, 34, 30);
      s.bar(amber, 460, 160, 524, 112, 6);
      s.limb(night, 62, 52, pts('410,360 380,400 350,410'));
      s.limb(clay, 54, 46, pts('378,408 300,424 230,414'));
      s.oval(clay, 226, 412, 31, 29);
      s.nicks(kiln, slits('206,410,226,430,8'));
      s.limb(clay, 46, 38, pts('228,408 280,350 340,318'));
      s.limb(night, 52, 60, pts('336,326 376,318 420,330'));
      s.box(tar, 356, 432, 266, 26);
      s.nicks(plank, slits('370,442,600,444,6'));
      s.nicks(mist, slits('190,370,166,346,9 176,412,140,412,9 190,450,164,474,9'));
      s.soft(
        foam,
        pts(
          '-60,430 10,380 70,410 110,370 170,430 150,490 240,500 280,560 250,600 380,620 420,680 400,760 -60,760',
        ),
      );
      s.soft(paper, pts('-60,560 40,520 110,560 170,550 210,610 310,640 340,760 -60,760'));
      s.soft(mist, pts('-60,250 20,220 70,250 120,240 90,290 -60,310'));
      s.limb(foam, 26, 8, pts('-40,350 60,336 130,350'));
      water(s, 706, [mist, shoal, lake]);
    },
  },
  {
    id: 'c043',
    draw: (s) => {
      s.ground(ink);
      s.hatch(night, -30, -20, 700, 600, 44, 0, 90, 6);
      house(s, 380, 700, 230, 510, night, deep, null);
      s.within({ opacity: 0.4 }, () => s.oval(ember, 500, 330, 150));
      s.box(tar, 424, 250, 150, 150);
      s.box(glim, 436, 262, 126, 132);
      s.bar(tar, 412, 402, 588, 402, 17);
      s.cut(rust, pts('448,392 448,350 550,350 550,392'));
      s.soft(
        foam,
        pts('444,358 446,336 498,328 552,336 554,358 536,368 520,356 500,370 480,356 462,368'),
      );
      for (let i = 0; i < 8; i += 1) {
        s.bar(lake, 454 + i * 12.6, 336, 454 + i * 12.6, 306, 5);
        s.soft(amber, [
          [454 + i * 12.6, 282],
          [460 + i * 12.6, 298],
          [454 + i * 12.6, 308],
          [448 + i * 12.6, 298],
        ]);
      }
      s.box(amber, 426, 500, 44, 70);
      s.box(amber, 520, 500, 44, 70);
      s.limb(mist, 13, 30, pts('96,420 160,270 280,230 424,300'));
      s.limb(shoal, 13, 28, pts('236,414 270,340 340,320 430,350'));
      s.nicks(foam, slits('120,360,200,256,7 214,250,330,246,7 270,360,330,330,7'));
      s.nicks(
        mist,
        slits('380,236,404,214,9 404,250,420,226,8 392,380,404,400,9 412,372,420,396,8'),
      );
      moored(s, 200, 640, 0.88, () => {
        s.cut(rust, pts('-110,-90 -106,-230 70,-230 80,-90'));
        s.cut(ember, pts('-126,-222 -110,-262 80,-262 96,-222'));
        s.cut(
          glim,
          pts('-80,-200 -30,-200 -30,-140 -80,-140'),
          pts('0,-200 46,-200 48,-140 0,-140'),
        );
        placedAt(s, -16, -352, 0.24, () => bell(s, amber, timber, glim, 0, 0, 90));
        s.bar(ink, -70, -258, -16, -352, 11);
        s.bar(ink, 44, -258, -16, -352, 11);
        s.bar(amber, -150, -110, -124, -250, 19);
        s.bar(amber, 116, -110, 46, -258, 19);
        s.soft(rust, pts('-236,-130 -180,-92 140,-92 216,-134 230,-60 180,36 -190,36 -240,-40'));
        s.limb(glim, 17, 15, pts('-232,-100 -170,-66 140,-66 222,-104'));
        s.nicks(ember, slits('-210,-36,-20,-22,8 10,-22,200,-38,8 -180,4,160,4,8'));
        for (const x of [-140, 130]) {
          s.ring(foam, x, -20, 30, 30, 13);
          s.nicks(rust, [[x - 34, -20, x - 22, -20, 13]]);
        }
        s.limb(tar, 12, 12, pts('-150,-110 -190,-40 -130,30'));
      });
      water(s, 654, nightWater);
    },
  },
  {
    id: 'c044',
    draw: (s) => {
      s.ground(kiln);
      for (let r = 0; r < 8; r += 1) {
        for (let c = 0; c < 6; c += 1) {
          if (s.rand() < 0.5)
            s.box(r % 3 === 0 ? ember : clay, -60 + c * 124 + (r % 2) * 62, -20 + r * 70, 112, 60);
        }
      }
      s.box(foam, 116, 50, 404, 436);
      s.box(night, 144, 78, 348, 408);
      s.cut(paper, pts('144,78 230,78 190,250 144,330'), pts('492,78 410,78 446,250 492,330'));
      s.nicks(ember, slits('160,90,160,280,8 196,90,176,230,8 476,90,476,280,8 440,90,460,230,8'));
      coat(s, shoal, lake, 280, 386, 104, 120, 180);
      s.nicks(foam, slits('240,384,280,420,17 280,420,322,384,17'));
      head(s, 280, 278, { skin: plank, shade: timber, size: 82, dark: -1, mouth: 'smile' });
      hat(s, 'bun', foam, 280, 278, 82);
      s.nicks(timber, slits('238,292,252,298,4 306,298,322,292,4'));
      arm(s, shoal, plank, tar, pts('196,430 180,486 250,488'), 50, 40, 44);
      s.cut(deep, pts('440,404 406,350 424,340 446,392'), pts('446,400 436,320 458,320 454,392'));
      s.cut(deep, pts('452,400 490,350 500,366 460,404'));
      for (const [x, y, r] of trios('400,376,27 494,380,27 446,366,30'))
        s.oval(lake, x, y, r, r * 0.8);
      for (const [x, y, r] of trios('412,330,25 448,306,30 486,336,25')) {
        s.oval(rust, x, y, r);
        s.oval(ember, x - 4, y - 4, r * 0.5);
      }
      s.cut(rust, pts('406,410 490,410 478,486 418,486'));
      s.box(ember, 400, 404, 96, 18);
      s.box(foam, 84, 484, 470, 34);
      s.nicks(plank, slits('100,502,300,504,5 320,502,530,504,5'));
      sheetOfWater(s, mist, 524, 84, 12);
      s.within({ opacity: 0.5 }, () => s.cut(foam, pts('130,552 510,552 496,590 146,590')));
      sheetOfWater(s, shoal, 572, 100, 13);
      ripples(s, foam, 596, 60, 8, 90);
      rings(s, foam, 318, 650, 3, 60, 50);
      sheetOfWater(s, lake, 690, 120, 14);
      ripples(s, shoal, 720, 120, 9, 90);
    },
  },
];
