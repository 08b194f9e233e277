import { boards, house, town } from './buildings.js';
import { pts, slits, trios } from './geometry.js';
import {
  type Pt,
  amber,
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
import { litLamp, stars } from './signal-lamps.js';
import { placedAt } from './story-people.js';
import { glow, lamp, post, rays } from './things.js';
import { duskWater, glitter, nightWater, ripples, sheetOfWater, water } from './water.js';

/** A bar of light, lying level: a flash that lasts. */
function flash(s: Sheet, x: number, y: number, w: number): void {
  placedAt(s, x, y, 1, () => glow(s, 0, 0, 66), 0, (w + 56) / 132);
  const half = w / 2;
  const bar = (k: number, t: number): Pt[] => [
    [x - half + t, y],
    [x - half + t + 3, y - k * 0.8],
    [x - half + t + 14, y - k],
    [x + half - t - 14, y - k],
    [x + half - t - 3, y - k * 0.8],
    [x + half - t, y],
    [x + half - t - 3, y + k * 0.8],
    [x + half - t - 14, y + k],
    [x - half + t + 14, y + k],
    [x - half + t + 3, y + k * 0.8],
  ];
  s.soft(amber, bar(30, 0));
  s.soft(glim, bar(14, 14));
  for (let px = x - half + 14; px < x + half; px += 44)
    s.nicks(glim, [
      [px, y - 50, px - 3, y - 84, 8],
      [px, y + 50, px + 3, y + 84, 8],
    ]);
}

/** Night Signals 4 to 9. */
export const signalsFirst: readonly Picture[] = [
  {
    id: 'si04',
    draw: (s) => {
      s.ground(night);
      stars(s, shoal, 10, 300, 26);
      s.soft(deep, pts('-60,640 -40,520 120,470 300,500 460,440 700,480 700,700'));
      s.cut(tar, pts('60,700 76,500 560,500 580,700'));
      s.cut(rust, pts('20,520 120,392 520,392 620,520'));
      s.hatch(ember, 70, 404, 490, 100, 40, 84, 26, 5);
      s.cut(timber, pts('420,410 426,250 520,250 526,410'));
      s.nicks(
        tar,
        slits('426,300,520,298,6 424,346,524,344,6 470,258,470,296,5 450,304,450,342,5'),
      );
      s.box(ink, 412, 232, 122, 24);
      s.limb(mist, 24, 6, pts('474,228 452,186 492,150 470,100'));
      s.cut(glim, pts('110,550 240,550 240,640 110,640'));
      s.soft(amber, pts('122,640 130,580 174,560 220,580 228,640'));
      s.bar(tar, 175, 548, 175, 642, 9);
      s.cut(ink, pts('300,700 304,556 390,556 394,700'));
      for (const [x, y, foot] of trios('96,268,400 226,170,396 356,72,396')) {
        s.bar(ink, x, y - 6, x, foot + 6, 11);
        s.bar(ink, x - 2, y - 4, x + 46, y - 6, 10);
        litLamp(s, x + 40, y, 82);
      }
      water(s, 656, nightWater);
      glitter(s, amber, 175, 676, 70, 80);
    },
  },
  {
    id: 'si05',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, 0, 700, 400, 44, -6, 80, 5);
      flash(s, 126, 218, 184);
      flash(s, 318, 218, 56);
      flash(s, 510, 218, 184);
      s.box(tar, -40, 470, 720, 240);
      boards(s, -40, 500, 720, 210, 9, timber, tar, plank);
      s.bar(plank, -40, 486, 680, 480, 40);
      for (const x of [60, 232, 404, 576]) post(s, x, 424, 44, 250);
      for (const [x, sag, w] of trios('60,110,11 232,150,9 404,96,12')) {
        s.limb(foam, w, w, [
          [x, 470],
          [x + 46, 470 + sag],
          [x + 126, 470 + sag + 6],
          [x + 172, 468],
        ]);
        s.limb(amber, 7, 7, [
          [x, 478],
          [x + 60, 540 + sag],
          [x + 120, 530 + sag],
          [x + 172, 474],
        ]);
      }
      s.limb(rust, 8, 8, pts('232,476 286,540 350,544 404,472'));
      s.limb(foam, 9, 9, pts('-20,520 20,560 60,474'));
      s.limb(rust, 9, 9, pts('576,474 610,560 660,540'));
      water(s, 676, nightWater);
    },
  },
  {
    id: 'si06',
    draw: (s) => {
      s.ground(ink);
      stars(s, shoal, 0, 260, 22);
      house(s, 440, 700, 250, 440, night, '#0c1728', null);
      s.cut('#0c1728', pts('486,330 590,330 590,450 486,450'));
      s.lines(deep, 7, pts('486,390 590,390'), pts('538,330 538,450'));
      s.cut(deep, pts('478,444 600,444 600,460 478,460'));
      s.nicks(deep, slits('460,500,460,640,6 620,480,616,600,6'));
      s.cut(timber, pts('-40,700 -40,40 352,70 360,700'));
      s.hatch(tar, -30, 60, 380, 640, 60, 2, 60, 6);
      s.cut(ink, pts('-40,-40 330,-40 386,84 -40,60'));
      s.box(tar, 20, 176, 296, 306);
      s.box(glim, 44, 200, 248, 258);
      s.within({ opacity: 0.5 }, () => s.oval(amber, 168, 340, 116, 110));
      for (const x of [106, 230]) {
        rays(s, foam, x, 338, 50, 84, 12, 6);
        lamp(s, x, 244, 116, true, ink);
      }
      s.bar(tar, 168, 196, 168, 462, 12);
      s.box(plank, 4, 476, 326, 26);
      water(s, 634, nightWater);
      glitter(s, amber, 168, 654, 96, 210);
    },
  },
  {
    id: 'si07',
    draw: (s) => {
      s.ground(lake);
      s.hatch(deep, -30, 0, 700, 560, 50, 20, 80, 6);
      s.oval(shoal, 414, 176, 128);
      s.bar(plank, 322, 420, 300, 92, 13);
      for (let i = 0; i < 8; i += 1)
        s.limb(i % 2 === 0 ? foam : paper, 20, 11, [
          [286 + i * 4, 62],
          [238 + i * 18, 74 + Math.abs(i - 3.5) * 5],
          [214 + i * 24, 150 + (i % 2) * 16 - Math.abs(i - 3.5) * 4],
        ]);
      s.cut(rust, pts('268,46 334,42 338,74 272,78'));
      s.bar(plank, 330, 58, 420, 76, 10);
      litLamp(s, 414, 80, 108);
      s.bar(tar, 318, 300, 318, 590, 22);
      s.bar(tar, 250, 470, 386, 466, 12);
      s.lines(ink, 4, pts('318,300 200,560'), pts('318,300 440,560'));
      for (const y of [330, 350, 370]) s.bar(foam, 298, y, 336, y - 4, 9);
      for (const y of [540, 560]) s.bar(foam, 298, y, 340, y - 3, 9);
      s.cut(rust, pts('268,700 276,560 360,560 370,700'));
      s.nicks(ember, slits('280,590,330,590,6 310,620,362,620,6 274,650,330,650,6'));
      s.box(ink, 260, 540, 116, 22);
      town(s, -50, 250, 680, 40, 90, night, ink, amber);
      town(s, 390, 690, 680, 30, 80, night, ink, amber);
      s.cut(ink, pts('120,690 300,610 350,610 540,690'));
      water(s, 660, nightWater);
    },
  },
  {
    id: 'si08',
    draw: (s) => {
      s.ground(rust);
      s.hatch(ember, -30, 0, 700, 400, 50, 2, 110, 8);
      s.soft(tar, pts('-60,440 40,380 200,400 330,360 500,390 700,350 700,520 -60,520'));
      sheetOfWater(s, night, 424, 90, 11);
      ripples(s, lake, 470, 150, 12, 80);
      s.limb(ink, 40, 12, pts('90,640 240,340 420,70'));
      s.bar(ink, 150, 300, 396, 376, 12);
      s.lines(ink, 4, pts('420,70 -20,620'), pts('166,306 90,640'), pts('390,372 240,560'));
      s.cut(tar, pts('-40,470 20,470 36,506 296,606 330,690 -40,700'));
      s.bar(ink, 20, 484, 306, 596, 15);
      for (const [x, y] of pts('30,560 106,590 182,620')) s.oval(ink, x, y, 17);
      s.nicks(plank, slits('-20,530,10,536,7 60,546,230,612,6 -20,620,120,656,6'));
      s.lines(ink, 6, pts('418,76 452,190 452,352'));
      litLamp(s, 452, 346, 120, ink);
      glitter(s, amber, 452, 520, 150, 150);
      s.cut(foam, pts('250,300 330,326 300,420 262,400'));
      s.nicks(rust, slits('270,330,280,380,6'));
      water(s, 670, duskWater);
      glitter(s, glim, 452, 690, 50, 90);
    },
  },
  {
    id: 'si09',
    draw: (s) => {
      s.ground(ink);
      stars(s, mist, 10, 260, 20);
      s.cut(night, pts('-40,-40 70,-40 84,560 -40,620'));
      s.cut(night, pts('590,120 690,110 690,640 600,600'));
      s.cut(deep, pts('570,130 640,40 700,40 700,124'));
      s.box(amber, 622, 330, 34, 54);
      s.box(amber, -4, 330, 38, 54);
      s.limb(foam, 6, 6, pts('70,90 220,156 400,220 600,270'));
      for (const [x, y, turn] of trios('140,116,22 270,176,14 398,220,22 524,254,14')) {
        placedAt(s, x, y, 1, () => litLamp(s, 0, -4, 92), turn);
        s.bar(plank, x - 6, y - 16, x - 2, y + 16, 10);
      }
      s.nicks(glim, slits('64,280,84,300,6 180,340,204,352,6 330,370,350,356,6 450,410,474,420,6'));
      sheetOfWater(s, deep, 452, 90, 12);
      ripples(s, lake, 490, 110, 12, 80);
      placedAt(
        s,
        290,
        566,
        1.1,
        () => {
          s.cut(
            foam,
            pts(
              '-66,-92 -34,-94 -30,-58 -12,-40 12,-40 30,-58 34,-94 66,-92 64,-50 90,-20 96,84 -96,84 -90,-20 -64,-50',
            ),
          );
          s.nicks(mist, slits('-60,0,-64,64,8 -10,-10,-8,54,7 56,4,62,60,8'));
          s.bar(rust, -92, 52, 92, 52, 8);
          s.bar(rust, -92, 68, 92, 68, 8);
        },
        24,
      );
      sheetOfWater(s, deep, 640, 120, 14);
      s.nicks(mist, slits('120,618,220,622,7 330,624,420,620,7'));
      water(s, 664, nightWater);
    },
  },
];
