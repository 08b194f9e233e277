import { plainHead } from './depth-people.js';
import { drips, fish, quay } from './depth-things.js';
import { arm, coat, helmet } from './figures.js';
import { pts, slits } from './geometry.js';
import {
  amber,
  clay,
  deep,
  ember,
  foam,
  glim,
  ink,
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
import { harlHead, placedAt } from './story-people.js';
import { tallies } from './things.js';
import { bubbles, eel, nightWater, sheetOfWater, water } from './water.js';

/** A diver in full dress on the lake bed, pulling at a rope; feet at the origin. */
function pulling(s: Sheet, suit: string, fold: string): void {
  s.bar(suit, -40, -120, -78, -20, 58);
  s.bar(suit, 36, -120, 62, -20, 58);
  s.cut(ink, pts('-112,-34 -44,-34 -40,2 -128,2'), pts('32,-34 92,-34 112,2 28,2'));
  coat(s, suit, fold, 0, -300, 84, 78, 200);
  helmet(s, 0, -366, 72, amber, glim, night);
  s.limb(foam, 9, 9, pts('52,-980 50,-600 46,-420 70,-300 40,-200'));
  arm(s, suit, clay, ink, pts('60,-260 108,-330 60,-420'), 54, 40, 44);
  arm(s, fold, clay, ink, pts('-62,-260 -30,-180 44,-230'), 52, 38, 44);
}

/** A wall of bricks as pale joints on one ground, down to `to`. */
function brickJoints(s: Sheet, color: string, to: number): void {
  const list: Nick[] = [];
  for (let r = 0; r * 64 < to; r += 1) {
    list.push([-40, r * 64, 340, r * 64 + 2, 5], [300, r * 64, 680, r * 64 - 2, 5]);
    for (let c = 0; c < 6; c += 1) {
      const x = c * 118 + (r % 2) * 59 - 20;
      list.push([x, r * 64 + 4, x + s.rand(-3, 3), r * 64 + 62, 5]);
    }
  }
  s.nicks(color, list);
}

/** Depth Charts 23 to 26. */
export const depths23To26: readonly Picture[] = [
  {
    id: 'd023',
    draw: (s) => {
      s.ground(shoal);
      s.box(mist, -40, -40, 720, 84);
      sheetOfWater(s, shoal, 36, 100, 11);
      s.hatch(lake, -30, 90, 700, 500, 50, 74, 80, 6);
      s.soft(
        lake,
        pts(
          '-60,600 60,560 60,430 140,430 140,560 300,590 470,540 480,470 560,470 570,560 700,600 700,740 -60,740',
        ),
      );
      bubbles(s, foam, 100, 250, 190, 7);
      bubbles(s, foam, 540, 240, 180, 7);
      placedAt(s, 180, 664, 0.98, () => pulling(s, timber, plank), -9);
      placedAt(s, 456, 664, 0.98, () => pulling(s, deep, lake), 9, -0.98);
      s.nicks(
        foam,
        slits(
          '236,180,256,196,7 240,210,264,220,7 400,180,380,196,7 396,214,372,224,7 240,330,262,336,6 396,334,376,338,6',
        ),
      );
      water(s, 656, [deep, night, ink]);
    },
  },
  {
    id: 'd024',
    draw: (s) => {
      s.ground(paper);
      s.hatch(shoal, -30, 0, 700, 240, 40, 78, 40, 5);
      sheetOfWater(s, shoal, 268, 100, 11);
      sheetOfWater(s, lake, 312, 120, 12);
      s.hatch(shoal, -30, 360, 700, 280, 30, 0, 80, 5);
      s.cut(night, pts('96,480 318,372 540,480'));
      s.cut(deep, pts('150,466 318,388 486,466'));
      s.oval(amber, 318, 440, 17);
      s.box(night, 96, 480, 444, 26);
      for (let i = 0; i < 6; i += 1) s.box(mist, 120 + i * 74, 506, 32, 160);
      s.cut(night, pts('286,660 290,548 346,548 350,660'));
      s.nicks(
        shoal,
        slits('128,510,128,650,6 202,510,202,650,6 424,510,424,650,6 498,510,498,650,6'),
      );
      s.lines(foam, 4, pts('230,300 214,474'));
      fish(s, ember, ink, 540, 400, -0.7);
      fish(s, amber, ink, 90, 420, 0.56);
      placedAt(s, 318, 284, 1, () => {
        s.soft(night, pts('-60,-40 -44,-116 0,-130 44,-116 60,-40'));
        s.cut(foam, pts('-14,-124 14,-124 0,-80'));
        placedAt(s, 0, -168, 1.05, () => plainHead(s, { cloth: night, hat: ['cap', ink] }));
        s.bar(timber, 62, -50, 76, -262, 9);
        s.limb(night, 28, 20, pts('40,-100 76,-80 70,-124'));
        s.oval(clay, 70, -126, 13);
        s.soft(
          rust,
          pts(
            '-84,-214 -50,-268 30,-300 120,-288 190,-234 206,-196 160,-216 110,-204 70,-218 20,-204 -30,-222',
          ),
        );
        s.nicks(ember, slits('60,-290,20,-210,8 80,-288,112,-210,8 40,-292,-40,-224,7'));
        s.cut(foam, pts('-96,-76 -20,-68 -24,-44 -100,-50'));
        s.cut(tar, pts('-240,-60 -200,-44 200,-44 240,-60 210,14 -210,14'));
        s.nicks(plank, slits('-210,-28,-20,-26,6 20,-26,210,-30,6'));
      });
      sheetOfWater(s, deep, 640, 120, 12);
      water(s, 664, nightWater);
    },
  },
  {
    id: 'd025',
    draw: (s) => {
      s.ground(rust);
      brickJoints(s, ember, 660);
      s.hatch(tar, -30, 0, 700, 640, 20, 80, 60, 5);
      s.soft(shoal, pts('160,700 180,560 150,480 200,470 214,560 226,700'));
      s.nicks(foam, slits('186,690,180,500,9'));
      placedAt(
        s,
        310,
        330,
        1.12,
        () => {
          s.soft(
            glim,
            pts(
              '-160,96 -120,60 60,56 130,50 150,-20 176,-60 214,-44 216,10 190,80 120,112 -100,116',
            ),
          );
          s.limb(glim, 13, 7, pts('188,-46 200,-96 190,-128'));
          s.limb(glim, 13, 7, pts('208,-40 236,-84 250,-104'));
          s.oval(ink, 190, -132, 12);
          s.oval(ink, 254, -108, 12);
          s.ring(ink, 202, 12, 16, 10, 5, 20, 150);
          s.oval(deep, -6, -20, 128, 118);
          s.ring(lake, 0, -14, 104, 94, 13, -200, 130);
          s.ring(shoal, 6, 60, 54, 26, 9, 20, 190);
          s.nicks(ember, slits('-140,106,-60,104,6 -20,108,80,102,6'));
        },
        -62,
      );
      tallies(s, foam, 204, 282, 84, 7, 2);
      s.nicks(mist, slits('90,120,92,180,7 520,90,518,170,8 560,430,558,500,7 80,420,84,470,7'));
      sheetOfWater(s, shoal, 618, 90, 11);
      water(s, 650, [lake, deep, night]);
    },
  },
  {
    id: 'd026',
    draw: (s) => {
      s.ground(night);
      s.hatch(shoal, -30, -20, 700, 640, 70, 74, 60, 5);
      quay(s, 620, tar, timber, ink);
      placedAt(s, 250, 350, 1, () => coat(s, paper, plank, 0, 0, 104, 116, 300), -4);
      s.cut(rust, pts('196,440 300,436 318,650 190,650'));
      placedAt(s, 240, 248, 0.94, () => harlHead(s, true, { mouth: 'smile' }));
      drips(s, mist, [150, 172], [330, 172], 8, 110, 13);
      drips(s, mist, [140, 400], [230, 400], 5, 200, 12);
      s.soft(timber, pts('380,480 580,476 606,560 584,660 376,660 354,560'));
      s.oval(ink, 480, 480, 100, 22);
      s.bar(ink, 362, 530, 600, 526, 15);
      s.bar(ink, 362, 612, 598, 610, 15);
      s.nicks(tar, slits('420,490,414,654,6 480,500,480,654,6 540,490,546,654,6'));
      eel(s, deep, pts('430,400 442,440 424,490'), 28, glim);
      eel(s, lake, pts('490,380 480,430 496,490'), 30, glim);
      eel(s, deep, pts('544,410 530,450 546,492'), 26, glim);
      s.bar(plank, 372, 480, 470, 190, 10);
      s.soft(
        deep,
        pts(
          '300,260 330,170 420,110 530,120 610,190 632,290 580,260 530,276 476,250 420,268 362,240',
        ),
      );
      s.nicks(
        shoal,
        slits('440,112,380,240,9 480,110,500,250,9 530,124,580,250,8 412,116,326,230,7'),
      );
      s.cut(deep, pts('462,118 470,80 480,118'));
      drips(s, foam, [310, 262], [624, 276], 8, 40, 12);
      arm(s, paper, clay, tar, pts('180,410 300,470 356,450'), 64, 46, 48);
      water(s, 664, nightWater);
    },
  },
];
