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
  type Pt,
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';
import { boards, grain, town } from './buildings.js';
import { lamp, post, rays } from './things.js';
import { bubbles, crest, eel, gauge, nightWater, ripples, sheetOfWater, water } from './water.js';

/** The night pilot at her wheel; the same cuts with the lamp dark or lit. */
function pilot(s: Sheet, lit: boolean): void {
  s.ground(night);
  s.hatch(lake, -30, 0, 700, 560, 56, -20, 60, 5);
  s.aside(() => {
    if (!lit) return;
    s.within({ opacity: 0.3 }, () => s.oval('#f08a24', 520, 172, 290));
    s.within({ opacity: 0.45 }, () => s.oval('#f08a24', 520, 172, 176));
    rays(s, glim, 520, 172, 100, 300, 30, 9);
  });
  sheetOfWater(s, deep, 560, 90, 11);
  s.bar(tar, -40, 44, 680, 36, 34);
  s.bar(tar, 600, 30, 610, 760, 30);
  lamp(s, 520, 56, 170, lit);
  s.limb(rust, 60, 26, pts('232,348 150,330 96,372 30,340 -40,380'));
  s.limb(ember, 40, 16, pts('230,366 160,380 110,430 40,420'));
  coat(s, ink, lake, 278, 372, 124, 150, 400);
  head(s, 282, 236, { skin: clay, shade: kiln, size: 92, dark: -1, wide: 0.7, mouth: 'level' });
  brows(s, tar, 282, 236, 92, -0.03, 0.09);
  s.soft(
    tar,
    pts('214,250 212,170 252,126 310,126 346,168 340,206 290,166 240,190 230,290 208,330'),
  );
  s.soft(lake, pts('208,172 236,118 290,100 344,124 362,176 290,160'));
  s.cut(ink, pts('196,172 290,152 392,180 384,198 290,176 204,192'));
  s.soft(rust, pts('204,350 250,322 320,326 364,350 350,396 282,412 214,396'));
  s.nicks(ember, slits('224,366,340,372,9 230,384,330,392,6'));
  s.aside(() => {
    if (lit)
      s.nicks(
        amber,
        slits('396,420,420,560,12 338,170,330,216,8 352,346,362,388,10 380,178,300,162,6'),
      );
  });
  const [cx, cy, r] = [318, 640, 150];
  const spokes: Pt[][] = [];
  for (let i = 0; i < 8; i += 1) {
    const a = ((i * 45 + 10) * Math.PI) / 180;
    const [c, d] = [Math.cos(a), Math.sin(a)];
    spokes.push([
      [cx - d * 7, cy + c * 7],
      [cx + d * 7, cy - c * 7],
      [cx + c * 194 + d * 11, cy + d * 194 - c * 11],
      [cx + c * 194 - d * 11, cy + d * 194 + c * 11],
    ]);
  }
  s.cut(plank, ...spokes);
  s.ring(timber, cx, cy, r, r, 30);
  s.ring(plank, cx, cy, r - 2, r - 2, 7);
  s.oval(timber, cx, cy, 40);
  s.oval(amber, cx, cy, 17);
  arm(s, night, clay, ink, pts('176,440 118,520 166,590'), 66, 46, 48);
  arm(s, night, clay, ink, pts('382,440 468,500 456,556'), 66, 46, 48);
  water(s, 726, nightWater);
}

/** People of the lake, the rest of them. */
export const crewLast: readonly Picture[] = [
  {
    id: 'c015',
    draw: (s) => {
      s.ground(lake);
      town(s, -50, 680, 560, 120, 240, deep, night, glim);
      s.box(plank, -40, 552, 720, 160);
      grain(s, timber, -40, 560, 720, 140, 5);
      coat(s, paper, plank, 318, 376, 160, 176, 420);
      s.cut(rust, pts('236,420 400,420 430,700 206,700'));
      head(s, 318, 256, { skin: clay, shade: ember, size: 92, dark: 1, wide: 0.94, mouth: 'oh' });
      s.nicks(tar, slits('256,300,318,288,26 318,288,380,300,26'));
      s.cut(foam, pts('220,214 238,160 398,160 416,214'));
      s.nicks(shoal, slits('232,178,404,178,9 226,198,410,198,9'));
      arm(s, paper, clay, tar, pts('180,430 90,420 92,300'), 70, 48, 54);
      arm(s, paper, clay, tar, pts('456,430 552,430 548,330'), 70, 48, 54, true);
      eel(
        s,
        ink,
        pts('40,190 110,214 96,280 180,340 318,372 420,330 520,300 548,240 610,214'),
        40,
        glim,
      );
      s.soft(timber, pts('190,520 446,520 478,610 446,740 190,740 158,610'));
      s.soft(ink, arc(318, 522, 128, 26));
      s.nicks(
        tar,
        slits('236,546,226,736,6 290,550,288,740,6 346,550,348,740,6 400,546,410,736,6'),
      );
      s.bar(ink, 168, 578, 468, 578, 17);
      s.bar(ink, 164, 668, 472, 668, 17);
      eel(s, deep, pts('252,468 270,500 244,540'), 26, glim);
      eel(s, deep, pts('390,478 366,506 384,540'), 26, glim);
      water(s, 716, [shoal, lake, deep]);
    },
  },
  {
    id: 'c016',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, 0, 700, 620, 60, 12, 80, 9);
      s.hatch(ember, -30, 0, 700, 560, 20, 12, 50, 4);
      sheetOfWater(s, mist, 596, 90, 11);
      post(s, 190, 596, 150, 200);
      s.limb(timber, 17, 10, pts('150,640 300,430 510,170'));
      s.lines(ink, 6, pts('510,170 540,210'), pts('510,170 492,226'));
      s.cut(shoal, pts('462,214 566,200 560,316 474,322'));
      s.nicks(foam, slits('480,236,486,306,9 508,226,544,222,6'));
      s.soft(ink, arc(514, 208, 52, 13));
      s.oval(amber, 522, 140, 22, 22);
      s.nicks(rust, slits('522,128,522,154,6'));
      s.nicks(ink, slits('486,128,474,108,6 558,128,572,110,6 522,104,522,80,6'));
      s.bar(ink, 168, 560, 158, 650, 32);
      s.bar(ink, 224, 560, 240, 650, 32);
      s.oval(ink, 148, 652, 28, 15);
      s.oval(ink, 250, 652, 28, 15);
      coat(s, rust, ember, 196, 426, 74, 96, 156);
      head(s, 196, 330, {
        skin: plank,
        shade: timber,
        size: 82,
        dark: -1,
        wide: 0.94,
        mouth: 'smile',
      });
      s.soft(deep, pts('100,318 120,244 196,214 272,244 292,318 196,290'));
      s.soft(lake, pts('88,312 196,282 304,312 296,336 196,306 96,336'));
      buttons(s, glim, 200, 468, 34, 3, 9);
      arm(s, rust, plank, tar, pts('254,468 288,520 318,440'), 50, 38, 40);
      arm(s, rust, plank, tar, pts('136,470 140,560 204,560'), 50, 38, 40);
      water(s, 690, [shoal, lake, deep]);
    },
  },
  { id: 'c017', draw: (s) => pilot(s, false) },
  { id: 'c017b', seed: 'c017', draw: (s) => pilot(s, true) },
  {
    id: 'c018',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, 140, 700, 640, 70, 70, 90, 7);
      const top = crest(s, 92, 96, 13).map(([x, y]): Pt => [x, y]);
      s.cut(mist, [...top, [700, -40], [-60, -40]]);
      s.nicks(shoal, slits('40,60,160,62,6 240,40,400,44,6 450,66,590,64,6'));
      coat(s, timber, plank, 270, 440, 150, 150, 360);
      s.cut(tar, pts('176,640 364,640 372,690 168,690'));
      helmet(s, 262, 320, 104, amber, glim, ink);
      s.limb(amber, 150, 40, pts('434,250 434,340 424,440 404,520'));
      s.soft(amber, arc(434, 224, 128, 52));
      s.soft(tar, arc(434, 222, 106, 36));
      s.soft(
        amber,
        pts(
          '316,240 400,400 404,560 440,650 512,640 530,560 500,500 470,520 480,470 560,500 584,590 550,690 440,720 366,640 352,470 318,330',
        ),
      );
      s.limb(amber, 34, 22, pts('500,560 440,500 360,440 300,380'));
      s.nicks(glim, slits('400,290,412,430,14 556,530,566,610,10 420,660,500,690,10'));
      for (const x of [404, 432, 460]) {
        s.box(plank, x - 8, 470, 16, 60);
        s.oval(glim, x, 466, 13, 8);
      }
      arm(s, timber, plank, tar, pts('390,500 440,580 432,512'), 66, 48, 44);
      arm(s, timber, plank, tar, pts('150,510 130,620 300,640 380,620'), 70, 50, 48);
      bubbles(s, mist, 450, 170, 110, 5);
      bubbles(s, mist, 150, 300, 180, 6);
      s.ring(foam, 530, 150, 17, 17, 6);
      sheetOfWater(s, night, 720, 170, 18);
      sheetOfWater(s, ink, 780, 190, 14);
    },
  },
  {
    id: 'c019',
    draw: (s) => {
      s.ground(foam);
      boards(s, -40, -40, 720, 620, 7, paper, plank, foam);
      s.box(timber, -40, 150, 720, 18);
      for (let i = 0; i < 7; i += 1) lamp(s, 50 + i * 92, 52 + (i % 2) * 6, 72, i === 5, tar);
      s.box(timber, -40, 168, 720, 6);
      coat(s, lake, deep, 270, 434, 150, 178, 320);
      s.cut(foam, pts('190,500 350,500 378,740 160,740'));
      head(s, 268, 322, {
        skin: timber,
        shade: tar,
        size: 86,
        dark: -1,
        wide: 0.84,
        mouth: 'level',
      });
      s.soft(rust, pts('188,320 190,252 236,216 300,216 346,252 350,318 268,268'));
      s.cut(rust, pts('196,300 150,340 164,384 206,330'));
      s.nicks(ember, slits('210,268,320,240,8 220,290,300,262,6'));
      s.cut(amber, pts('396,540 560,540 576,740 382,740'));
      s.soft(ink, arc(478, 540, 82, 22));
      s.soft(glim, arc(478, 544, 60, 13));
      s.nicks(glim, slits('416,570,406,720,13 540,566,550,700,6'));
      s.bar(foam, 474, 544, 506, 206, 15);
      s.bar(amber, 474, 544, 484, 440, 16);
      s.nicks(
        ink,
        Array.from(
          { length: 9 },
          (_, i) => [480 + i * 2.6, 480 - i * 28, 500 + i * 2.6, 482 - i * 28, 6] as const,
        ),
      );
      arm(s, lake, timber, ink, pts('390,500 440,440 492,356'), 62, 46, 46);
      arm(s, lake, timber, ink, pts('148,510 150,640 300,650 390,640'), 66, 48, 48);
      water(s, 714, [shoal, lake, deep]);
    },
  },
  {
    id: 'c020',
    draw: (s) => {
      s.ground(plank);
      for (let r = 0; r < 9; r += 1) {
        for (let c = 0; c < 5; c += 1) {
          if (s.rand() < 0.55)
            s.box(r % 2 === 0 ? ember : paper, -60 + c * 150 + (r % 2) * 76, -30 + r * 84, 138, 74);
        }
      }
      for (const [i, y] of [250, 330, 410].entries())
        s.limb(i === 2 ? foam : mist, 22, 20, [
          [i === 2 ? 330 : -40, y],
          [420, y + 3],
          [680, y - 2],
        ]);
      s.nicks(foam, slits('352,424,352,476,9 420,420,421,450,8 520,420,520,462,9'));
      s.lines(tar, 8, pts('64,-40 64,610'), pts('420,-40 420,610'));
      s.bar(timber, 10, 616, 480, 616, 30);
      s.nicks(tar, slits('30,612,220,614,5 240,620,460,616,5'));
      s.bar(ink, 168, 500, 160, 600, 44);
      s.bar(ink, 234, 500, 244, 600, 44);
      coat(s, deep, lake, 200, 330, 96, 106, 206);
      head(s, 206, 230, { skin: clay, shade: kiln, size: 76, dark: -1, mouth: 'level' });
      s.cut(ink, pts('124,216 150,160 260,158 290,206 340,216 330,230'));
      arm(s, deep, clay, ink, pts('126,380 96,470 84,520'), 52, 40, 42);
      s.cut(tar, pts('50,540 120,540 112,604 58,604'));
      s.bar(foam, 52, 542, 118, 542, 13);
      arm(s, deep, clay, ink, pts('276,380 300,450 336,432'), 52, 40, 42);
      s.bar(timber, 330, 440, 396, 400, 14);
      s.bar(tar, 390, 412, 412, 398, 44);
      s.bar(foam, 406, 402, 430, 388, 40);
      hand(s, clay, ink, 342, 430, 42, -24);
      gauge(s, 580, 520, 240);
      water(s, 684, [shoal, lake, deep]);
      ripples(s, mist, 712, 20, 4);
    },
  },
];
