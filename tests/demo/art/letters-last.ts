import { boards } from './buildings.js';
import { arc, pts, quads, slits, trios } from './geometry.js';
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
import type { Sheet } from './sheet.js';
import { placedAt } from './story-people.js';
import { glow, seal } from './things.js';
import { nightWater, water } from './water.js';

/** A folded letter with its seal, about 340 wide; `stain` is what it has lain in. */
function sealedLetter(s: Sheet, stain: string): void {
  s.cut(foam, pts('-170,-110 170,-116 178,104 60,118 -174,112'));
  s.cut(paper, pts('-170,-110 170,-116 10,30'));
  s.nicks(plank, slits('-166,106,-26,4,5 170,98,40,6,5 -168,-108,8,30,5 168,-114,12,30,5'));
  s.within({ opacity: 0.55 }, () =>
    s.soft(stain, pts('-178,116 -174,62 -110,80 -40,64 40,88 110,60 182,76 182,116')),
  );
  seal(s, rust, glim, 6, 26, 50);
}

/** The last four letters from the drowned street. */
export const lettersLast: readonly Picture[] = [
  {
    id: 'le03',
    draw: (s) => {
      s.ground(paper);
      for (let r = 0; r < 9; r += 1)
        for (let c = 0; c < 5; c += 1)
          if (s.rand() < 0.6)
            s.box(
              (r + c) % 3 === 0 ? foam : kiln,
              -70 + c * 150 + (r % 2) * 76,
              -36 + r * 62,
              138,
              52,
            );
      s.cut(rust, [...arc(290, 330, 262, 262, 180, 360), [552, 560], [28, 560]]);
      for (let i = 0; i < 9; i += 1) {
        const a = ((i * 20 + 10) * Math.PI) / -180;
        s.nicks(ember, [
          [
            290 + Math.cos(a) * 206,
            330 + Math.sin(a) * 206,
            290 + Math.cos(a) * 256,
            330 + Math.sin(a) * 256,
            11,
          ],
        ]);
      }
      s.cut(ink, [...arc(290, 336, 200, 200, 180, 360), [490, 560], [90, 560]]);
      s.hatch(night, 120, 220, 340, 180, 20, 30, 60, 6);
      s.box(timber, -40, 548, 720, 180);
      s.box(plank, -40, 540, 720, 24);
      placedAt(s, 286, 440, 1.02, () => sealedLetter(s, mist), -6);
      s.hatch(foam, 110, 300, 330, 60, 14, 20, 18, 7);
      s.hatch(foam, 60, 566, 420, 30, 16, 0, 24, 7);
      s.soft(foam, pts('92,552 150,536 230,548 330,540 430,552 300,566 150,566'));
      s.soft(lake, pts('466,430 620,430 636,500 610,590 560,612 500,606 460,570 450,490'));
      s.bar(foam, 452, 500, 634, 500, 14);
      s.soft(deep, pts('454,430 480,398 606,398 632,430 540,444'));
      s.oval(deep, 542, 384, 24, 17);
      s.nicks(shoal, slits('484,460,480,560,12 510,410,590,410,8'));
      s.soft(glim, pts('482,420 506,404 516,440 500,464 488,444'));
      water(s, 690, [shoal, lake, deep]);
    },
  },
  {
    id: 'le04',
    draw: (s) => {
      s.ground(ink);
      for (const [x, y, w, h] of quads(
        '-40,-30,150,80 124,-30,60,80 -40,66,90,84 64,66,120,84 -40,166,150,80 -40,262,110,84 460,-30,80,80 556,-30,120,80 460,66,140,84 460,166,90,80 566,166,110,80 480,262,160,84 -40,362,90,80 560,362,110,80',
      ))
        s.box(tar, x, y, w, h);
      s.within({ opacity: 0.35 }, () => s.cut(mist, pts('230,-40 430,-40 560,520 100,520')));
      s.within({ opacity: 0.5 }, () => s.cut(mist, pts('270,-40 390,-40 450,520 190,520')));
      s.hatch(ink, 180, 20, 280, 300, 18, 76, 26, 5);
      s.box(timber, -40, 518, 720, 40);
      s.box(tar, -40, 556, 720, 180);
      s.hatch(ink, -30, 570, 700, 110, 20, 0, 90, 8);
      s.soft(ink, pts('-40,520 60,500 150,516 260,506 380,520 700,506 700,536 -40,536'));
      s.cut(paper, pts('270,140 398,440 150,446'));
      s.cut(foam, pts('270,140 276,444 150,446'));
      s.nicks(plank, slits('270,150,274,430,5 300,250,350,400,5'));
      s.cut(foam, pts('30,388 270,458 516,378 440,520 112,524'));
      s.cut(paper, pts('270,458 516,378 440,520 300,522'));
      s.nicks(
        timber,
        slits('90,440,250,480,5 110,470,240,500,5 310,480,450,430,5 320,502,430,470,5'),
      );
      seal(s, rust, glim, 272, 462, 40);
      glow(s, 558, 470, 78, shoal);
      s.oval(lake, 558, 470, 48);
      s.soft(amber, pts('528,490 548,470 544,446 566,436 584,456 566,474 570,496'));
      s.nicks(foam, slits('526,462,540,438,12 586,488,574,502,7'));
      water(s, 694, nightWater);
    },
  },
  {
    id: 'le05',
    draw: (s) => {
      s.ground(shoal);
      boards(s, -40, -40, 720, 600, 6, shoal, lake, mist);
      s.box(timber, -40, 120, 720, 26);
      for (const [x, w, h] of trios('30,90,90 150,70,70 480,100,84')) {
        s.box(x === 150 ? amber : deep, x, 120 - h, w, h);
        s.box(foam, x - 4, 112 - h, w + 8, 20);
      }
      s.box(foam, -40, 556, 720, 180);
      const checks: Pt[][] = [];
      for (let i = 0; i < 9; i += 1)
        checks.push([
          [-30 + i * 80, 560],
          [10 + i * 80, 560],
          [4 + i * 84, 760],
          [-40 + i * 84, 760],
        ]);
      s.within({ opacity: 0.6 }, () => s.cut(ember, ...checks));
      s.bar(rust, -40, 612, 680, 610, 20);
      placedAt(s, 520, 380, 0.8, () => sealedLetter(s, kiln), 22);
      s.soft(foam, pts('60,404 130,300 220,262 318,252 416,262 506,300 576,404'));
      s.soft(mist, pts('50,424 590,424 530,510 430,552 318,560 206,552 110,510'));
      s.soft(lake, pts('36,404 318,384 600,404 604,420 318,428 32,420'));
      s.soft(night, pts('32,424 318,432 604,424 590,446 318,458 46,446'));
      s.nicks(
        lake,
        slits(
          '120,350,210,290,10 516,350,426,290,10 250,276,386,276,9 170,510,280,540,9 466,510,356,540,9',
        ),
      );
      s.limb(rust, 15, 15, pts('318,250 330,400 318,560'));
      s.limb(rust, 13, 13, pts('150,300 170,410 140,520'));
      s.ring(rust, 276, 218, 42, 26, 12);
      s.ring(rust, 362, 218, 42, 26, 12);
      s.limb(rust, 13, 6, pts('318,246 280,300 270,340'));
      s.limb(rust, 13, 6, pts('318,246 360,296 384,330'));
      s.oval(rust, 318, 244, 20, 18);
      water(s, 694, [shoal, lake, deep]);
    },
  },
  {
    id: 'le06',
    draw: (s) => {
      s.ground(glim);
      s.cut(foam, pts('-40,-40 680,-40 680,170 -40,186'));
      s.box(night, 110, -60, 420, 240);
      s.box(lake, 140, -60, 160, 200);
      s.box(lake, 340, -60, 160, 200);
      s.nicks(shoal, slits('170,-20,170,110,8 460,-20,460,100,8'));
      s.box(kiln, -40, 176, 720, 44);
      s.nicks(plank, slits('-20,196,300,198,6 340,200,650,196,6'));
      s.hatch(paper, -30, 240, 700, 460, 40, 0, 100, 9);
      s.within({ opacity: 0.5 }, () => s.cut(plank, pts('60,640 120,310 556,300 620,650')));
      placedAt(s, 470, 520, 0.94, () => sealedLetter(s, shoal), -14);
      s.cut(timber, pts('92,290 540,282 566,408 330,630 40,636'));
      s.cut(rust, pts('122,318 512,310 528,400 316,600 84,606'));
      s.hatch(ember, 110, 324, 370, 250, 46, 84, 36, 6);
      s.limb(glim, 12, 12, pts('160,354 470,348 484,392 298,564 124,570 160,354'));
      s.cut(tar, pts('566,408 330,630 344,470 400,420'));
      s.nicks(plank, slits('360,470,350,580,7 410,430,520,414,7 380,460,450,450,6'));
      s.lines(
        timber,
        8,
        pts('88,290 84,270'),
        pts('200,288 198,268'),
        pts('320,286 320,266'),
        pts('440,284 442,264'),
        pts('536,282 540,262'),
      );
      water(s, 696, [mist, shoal, lake]);
    },
  },
];
