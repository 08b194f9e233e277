import { arc, pts, slits } from './geometry.js';
import { arm, brows, buttons, coat, hand, head, helmet } from './figures.js';
import {
  amber,
  clay,
  kiln,
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
import type { Sheet } from './sheet.js';
import { boards, gate, town } from './buildings.js';
import { glow, key, lamp, rays, seal, tallies } from './things.js';
import { nightWater, rings, ripples, sheetOfWater, water } from './water.js';

/** One of the two divers; the other is the same puppet mirrored, with a clock. */
function sill(s: Sheet, clock: boolean): void {
  const [suit, fold] = clock ? [deep, shoal] : [timber, plank];
  coat(s, suit, fold, 318, 400, 150, 168, 330);
  s.soft(plank, pts('218,404 318,372 418,404 404,452 318,470 232,452'));
  s.nicks(glim, slits('236,424,400,428,7'));
  for (const x of [250, 296, 342, 388]) s.oval(glim, x, 446, 7);
  head(s, 318, 282, { skin: clay, shade: kiln, size: 84, dark: 1, mouth: 'smile' });
  s.soft(rust, pts('246,268 250,206 318,186 386,206 392,268 350,232 290,234'));
  if (clock) {
    s.nicks(rust, slits('262,324,318,318,22 318,318,374,326,22'));
  } else {
    s.limb(rust, 30, 12, pts('386,236 424,280 414,340 440,392'));
    s.bar(amber, 404, 352, 428, 346, 10);
  }
  helmet(s, 470, 572, 92, amber, glim, night);
  s.limb(ink, 80, 58, pts('452,444 548,520 570,620 500,668'));
  arm(s, suit, clay, ink, pts('452,444 548,520 570,620 500,668'), 70, 50, 48);
  s.nicks(fold, slits('470,452,556,540,9 574,560,562,640,8'));
  if (clock) {
    s.limb(ink, 80, 58, pts('186,444 84,540 80,660 150,694'));
    arm(s, suit, clay, ink, pts('186,444 84,540 80,660 150,694'), 70, 50, 48);
    s.cut(tar, pts('118,470 196,412 276,470 280,668 114,668'));
    s.cut(plank, pts('134,480 196,434 260,480 262,652 132,652'));
    s.oval(foam, 197, 538, 52);
    s.ring(tar, 197, 538, 52, 52, 7);
    s.lines(ink, 8, pts('197,538 197,502'), pts('197,538 222,552'));
    s.nicks(
      shoal,
      slits('136,664,132,714,11 176,664,178,740,12 222,664,220,706,10 262,664,264,730,12'),
    );
    s.nicks(tar, slits('160,620,236,622,7'));
    hand(s, clay, ink, 150, 664, 50, 6);
  } else {
    s.bar(tar, 120, 250, 112, 740, 17);
    s.limb(tar, 16, 5, pts('120,262 122,204 164,178 190,208 176,238'));
    s.limb(ink, 80, 60, pts('186,444 108,560 120,520'));
    arm(s, suit, clay, ink, pts('186,444 108,560 120,520'), 70, 50, 48);
    s.nicks(fold, slits('176,460,112,540,9'));
  }
}

/** People of the lake, the first of them. */
export const crewFirst: readonly Picture[] = [
  {
    id: 'c002',
    draw: (s) => {
      s.ground(rust);
      gate(s, 40, 70, 555, 620, ember, rust, glim);
      coat(s, ink, night, 318, 330, 250, 270, 420);
      s.soft(night, pts('150,336 230,300 318,372 406,300 486,336 430,420 318,470 206,420'));
      head(s, 318, 224, {
        skin: plank,
        shade: timber,
        size: 94,
        dark: -1,
        wide: 0.92,
        mouth: 'level',
      });
      s.soft(foam, pts('228,250 262,276 318,262 374,276 408,250 402,330 318,386 234,330'));
      s.nicks(paper, slits('270,300,282,348,7 318,296,318,364,7 366,300,352,348,7'));
      s.nicks(ink, slits('290,292,346,292,8'));
      brows(s, foam, 318, 224, 94, 0.02, 0.12);
      s.cut(ink, pts('214,184 232,116 404,116 422,184 440,198 196,198'));
      s.bar(amber, 226, 168, 410, 168, 13);
      buttons(s, amber, 318, 492, 54, 4, 12);
      s.limb(night, 116, 84, pts('118,420 92,530 196,560'));
      arm(s, ink, plank, tar, pts('118,420 92,530 196,560'), 104, 74, 62);
      s.ring(glim, 262, 586, 58, 54, 12);
      for (let i = 0; i < 9; i += 1) {
        const a = ((20 + i * 17.5) * Math.PI) / 180;
        key(
          s,
          i % 2 === 0 ? amber : glim,
          262 + Math.cos(a) * 56,
          584 + Math.sin(a) * 52,
          84 + (i % 3) * 10,
          20 + i * 17.5 - 90,
        );
      }
      hand(s, plank, tar, 216, 556, 66, 8);
      water(s, 716, [shoal, lake, deep]);
    },
  },
  {
    id: 'c003',
    draw: (s) => {
      s.ground(lake);
      boards(s, -40, -40, 720, 760, 6, deep, night, lake);
      tallies(s, foam, 66, 70, 62, 45, 5);
      coat(s, amber, glim, 318, 486, 104, 130, 260);
      s.cut(timber, pts('262,520 374,520 400,740 236,740'));
      s.lines(timber, 10, pts('268,524 288,474'), pts('368,524 348,474'));
      head(s, 318, 394, { skin: clay, shade: kiln, size: 80, dark: -1, wide: 0.88, mouth: 'oh' });
      s.soft(
        tar,
        pts('238,410 226,340 264,296 320,286 380,298 408,344 398,408 374,352 330,340 262,356'),
      );
      s.nicks(tar, slits('270,306,226,270,22 320,296,316,250,22 364,304,402,266,22'));
      s.bar(rust, 396, 372, 436, 330, 12);
      s.bar(tar, 508, 182, 508, 736, 38);
      s.bar(plank, 503, 190, 503, 730, 25);
      s.nicks(
        tar,
        Array.from(
          { length: 17 },
          (_, i) => [486, 220 + i * 26, i % 5 === 4 ? 526 : 508, 222 + i * 26, 8] as const,
        ),
      );
      arm(s, amber, clay, ink, pts('404,536 452,600 500,566'), 60, 44, 44);
      arm(s, amber, clay, ink, pts('234,540 156,560 128,470'), 60, 42, 44);
      s.bar(foam, 128, 430, 118, 372, 20);
      water(s, 700, [mist, shoal, lake]);
    },
  },
  {
    id: 'c004',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 600, 60, 62, 60, 6);
      town(s, -50, 330, 640, 90, 210, shoal, lake, foam);
      sheetOfWater(s, shoal, 632, 90, 11);
      glow(s, 486, 190, 120);
      rays(s, amber, 486, 190, 74, 150, 20, 7);
      s.bar(ink, 486, 700, 486, 250, 20);
      s.cut(ink, pts('450,262 522,262 508,236 464,236'));
      lamp(s, 486, 108, 110, true);
      s.bar(timber, 236, 320, 128, 740, 16);
      s.bar(timber, 330, 320, 300, 740, 16);
      for (let i = 0; i < 9; i += 1)
        s.bar(tar, 230 - i * 11.5, 344 + i * 46, 330 - i * 3, 344 + i * 46, 11);
      s.bar(ink, 236, 536, 224, 610, 34);
      s.bar(ink, 290, 530, 268, 566, 34);
      s.bar(ink, 268, 566, 278, 612, 30);
      s.soft(night, pts('196,560 176,450 186,350 240,296 310,296 356,330 344,400 322,470 322,560'));
      s.nicks(shoal, slits('206,390,208,540,8 234,350,244,540,7 296,440,298,546,8'));
      s.within({ transform: 'rotate(17 356 282)' }, () => {
        head(s, 356, 272, { skin: clay, shade: kiln, size: 66, dark: -1, mouth: 'smile' });
        s.soft(foam, pts('302,290 330,312 356,304 390,310 408,288 396,372 356,424 322,370'));
        s.nicks(mist, slits('336,330,346,386,6 360,322,360,400,6 384,326,374,380,6'));
        s.soft(rust, pts('288,264 304,206 356,186 408,206 420,262 356,248'));
        s.oval(amber, 352, 182, 15);
      });
      arm(s, night, clay, ink, pts('222,372 226,470 300,462'), 54, 40, 42);
      s.limb(rust, 15, 10, pts('262,560 360,420 448,290 472,226'));
      arm(s, lake, clay, ink, pts('312,372 330,450 372,420'), 50, 38, 40);
      water(s, 690, [shoal, lake, deep]);
      s.nicks(foam, slits('96,700,176,702,8 280,698,340,700,8 446,700,528,702,9'));
    },
  },
  {
    id: 'c005',
    draw: (s) => {
      s.ground(amber);
      rays(s, glim, 318, 270, 190, 520, 46, 12);
      s.oval(glim, 318, 270, 186);
      coat(s, deep, lake, 318, 396, 168, 200, 260);
      s.soft(ink, pts('190,420 196,250 240,150 318,116 396,150 440,250 446,420 318,470'));
      s.soft(shoal, pts('222,400 222,250 262,176 318,158 374,176 414,250 414,400 318,440'));
      head(s, 318, 276, {
        skin: plank,
        shade: timber,
        size: 82,
        dark: 1,
        eyes: 'shut',
        mouth: 'smile',
      });
      s.soft(shoal, pts('226,344 274,350 318,358 362,350 410,344 404,430 318,452 232,430'));
      s.nicks(
        mist,
        slits('248,376,388,386,8 256,402,380,410,8 236,220,232,330,8 400,220,404,330,8'),
      );
      s.cut(paper, pts('-40,606 675,590 675,740 -40,740'));
      s.cut(foam, pts('70,600 548,586 592,706 36,716'));
      for (const r of [36, 62, 90]) s.ring(shoal, 330, 654, r * 1.5, r * 0.44, 4);
      s.nicks(rust, slits('90,640,180,690,5 470,620,540,690,5'));
      arm(s, deep, ink, plank, pts('170,470 120,560 214,606'), 74, 50, 62);
      arm(s, deep, ink, plank, pts('466,470 520,550 438,590'), 74, 50, 62, true);
      s.limb(foam, 4, 46, pts('406,640 430,560 486,460 560,400'));
      s.nicks(amber, slits('430,560,552,410,5'));
      s.nicks(ink, slits('254,640,256,684,13 280,634,286,664,10 398,620,394,660,11'));
      s.oval(ink, 256, 690, 10, 9);
      s.oval(ink, 300, 682, 6, 5);
      water(s, 724, [lake, deep, night]);
    },
  },
  {
    id: 'c006',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, 0, 700, 640, 60, -60, 60, 6);
      sheetOfWater(s, lake, 620, 90, 11);
      sill(s, false);
      water(s, 700, [lake, deep, night]);
    },
  },
  {
    id: 'c007',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, 0, 700, 640, 60, 60, 60, 6);
      sheetOfWater(s, shoal, 620, 90, 11);
      s.within({ transform: 'translate(636 0) scale(-1 1)' }, () => sill(s, true));
      water(s, 700, [shoal, lake, deep]);
    },
  },
  {
    id: 'c008',
    draw: (s) => {
      s.ground(ink);
      boards(s, -40, -40, 720, 660, 7, night, ink, deep);
      s.bar(ink, -40, 90, 680, 84, 44);
      s.bar(ink, -40, 520, 680, 526, 44);
      for (let i = 0; i < 8; i += 1) s.oval(shoal, 26 + i * 84, i % 2 === 0 ? 86 : 90, 8);
      for (let i = 0; i < 8; i += 1) s.oval(shoal, 26 + i * 84, 523, 8);
      s.soft(shoal, arc(318, 302, 178, 178, 0, 360, 24));
      s.soft(tar, arc(318, 302, 156, 156, 0, 360, 24));
      for (const r of [34, 66, 98, 130]) s.ring(amber, 318, 326, r, r * 0.9, 9 - r / 22, 204, 336);
      s.oval(amber, 318, 330, 13, 10);
      for (const x of [-104, -52, 0, 52, 104])
        s.bar(
          shoal,
          318 + x,
          302 - Math.sqrt(160 ** 2 - x * x),
          318 + x,
          302 + Math.sqrt(160 ** 2 - x * x),
          15,
        );
      s.bar(shoal, 160, 302, 476, 302, 15);
      for (let i = 0; i < 12; i += 1)
        s.oval(ink, 318 + Math.cos(i * 0.5236) * 168, 302 + Math.sin(i * 0.5236) * 168, 7);
      sheetOfWater(s, deep, 606, 120, 12);
      rings(s, glim, 318, 690, 5, 50, 66);
      s.nicks(amber, slits('290,690,346,690,10 280,706,350,704,6'));
      sheetOfWater(s, ink, 800, 132, 14);
      ripples(s, deep, 826, 50, 6);
    },
  },
  {
    id: 'c009',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, 0, 700, 700, 70, 90, 80, 8);
      s.box(rust, 90, -40, 456, 780);
      s.hatch(ember, 100, 0, 430, 700, 30, 90, 80, 5);
      coat(s, ink, night, 318, 400, 128, 186, 360);
      head(s, 318, 314, {
        skin: foam,
        shade: mist,
        size: 84,
        dark: 1,
        wide: 0.66,
        mouth: 'down',
        blush: false,
        eyes: 'shut',
      });
      s.cut(foam, pts('226,350 318,424 410,350 420,430 318,500 216,430'));
      s.nicks(mist, slits('250,390,312,470,8 386,390,324,470,8'));
      s.cut(ink, pts('246,270 256,44 384,40 392,270'));
      s.cut(ink, pts('196,262 318,250 440,262 430,292 318,276 206,292'));
      s.bar(amber, 250, 224, 390, 220, 24);
      s.nicks(night, slits('278,66,276,200,10 300,70,300,150,6'));
      s.limb(amber, 20, 20, pts('244,400 276,500 318,566'));
      s.limb(amber, 20, 20, pts('392,400 360,500 318,566'));
      seal(s, rust, glim, 318, 610, 62);
      arm(s, night, foam, ink, pts('424,452 500,560 440,640'), 62, 44, 46);
      s.bar(glim, 392, 700, 478, 596, 28);
      s.bar(rust, 418, 676, 428, 664, 30);
      hand(s, foam, ink, 430, 640, 46, 130);
      water(s, 712, nightWater);
    },
  },
];
