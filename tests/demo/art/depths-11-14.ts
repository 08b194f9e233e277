import { house } from './buildings.js';
import { type Passer, bust, passer, plainHead } from './depth-people.js';
import { rowingBoat, wash } from './depth-things.js';
import { arm, coat } from './figures.js';
import { pts, slits } from './geometry.js';
import {
  type Pt,
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
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Nick, Sheet } from './sheet.js';
import { emericHead, placedAt } from './story-people.js';
import { nightWater, sheetOfWater, water } from './water.js';

/** The six of the bench, from the foot of the stair up. */
const sitters: readonly Passer[] = [
  { cloth: lake, hat: ['curls', foam] },
  { cloth: plank, hat: ['cap', deep], brown: true, mouth: 'oh' },
  { cloth: night, hat: ['scarf', rust] },
  { cloth: amber, hat: ['cap', night], mouth: 'oh' },
  { cloth: deep, hat: ['bun', tar], brown: true },
  { cloth: rust, hat: ['brim', ink], mouth: 'oh' },
];

/** A patch of the long rug. */
function patch(s: Sheet, color: string, trim: string, x: number, y: number, w: number): void {
  s.cut(color, [
    [x, y],
    [x + w, y],
    [x + w + 3, y + 230],
    [x - 3, y + 230],
  ]);
  s.lines(trim, 5, [
    [x + 10, y + 16],
    [x + w - 10, y + 16],
    [x + w - 9, y + 214],
    [x + 9, y + 214],
    [x + 10, y + 16],
  ]);
}

/** A child in a nightshirt, sitting on a beam whose top is at the origin. */
function rider(s: Sheet, who: Passer): void {
  s.soft(who.cloth, pts('-22,-92 22,-92 46,-40 50,14 -50,14 -46,-40'));
  for (const x of [-20, 18]) {
    s.bar(plank, x, 6, x + 8, 56, 15);
    s.oval(plank, x + 14, 60, 15, 9);
  }
  s.nicks(mist, slits('-20,-60,-26,4,6 16,-70,22,0,6'));
  placedAt(s, 0, -122, 0.94, () => plainHead(s, who));
}

/** Depth Charts 11 to 14. */
export const depths11To14: readonly Picture[] = [
  {
    id: 'd011',
    draw: (s) => {
      s.ground(night);
      s.hatch(foam, -30, -10, 700, 300, 24, 60, 16, 6);
      const row: readonly Passer[] = [
        { cloth: deep, hat: ['nightcap', rust], eyes: 'shut' },
        { cloth: timber, hat: ['scarf', amber], brown: true },
        { cloth: rust, hat: ['curls', tar] },
        { cloth: lake, hat: ['cap', foam], brown: true, mouth: 'oh' },
        { cloth: plank, hat: ['bun', tar], eyes: 'shut' },
      ];
      row.forEach((who, i) =>
        placedAt(s, 40 + i * 139, 278 + (i % 2) * 16, 1.3, () => bust(s, who, (i - 2) * 5)),
      );
      const knees = [0, 1, 2, 3, 4].map((i) => 40 + i * 139);
      for (const x of knees) s.oval(rust, x, 440, 70, 52);
      for (const [i, [color, trim]] of (
        [
          [ember, foam],
          [lake, amber],
          [amber, rust],
          [deep, glim],
          [rust, foam],
        ] as const
      ).entries())
        patch(s, color, trim, -29 + i * 139, 424, 139);
      for (const x of knees)
        s.nicks(ink, [
          [x - 44, 436, x - 20, 424, 7],
          [x + 44, 436, x + 20, 424, 7],
        ]);
      s.soft(ember, pts('262,500 268,462 296,480 340,480 368,462 376,500 368,570 318,598 270,570'));
      s.nicks(
        ink,
        slits(
          '318,480,318,520,13 296,484,304,512,10 340,484,332,512,10 268,530,296,534,9 370,530,342,534,9 272,556,298,552,9 366,556,340,552,9 294,582,342,582,7',
        ),
      );
      for (const x of [296, 340]) {
        s.oval(glim, x, 536, 12);
        s.oval(ink, x, 537, 6);
      }
      s.cut(ink, pts('304,556 332,556 318,572'));
      for (let i = 0; i < 17; i += 1) s.bar(foam, -30 + i * 40, 652, -32 + i * 40, 680, 6);
      water(s, 676, [lake, deep, ink]);
    },
  },
  {
    id: 'd012',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, 0, 700, 400, 36, 30, 70, 7);
      house(s, 470, 420, 120, 240, lake, deep, foam, 2);
      house(s, 360, 480, 100, 160, lake, deep, foam, 2);
      const steps: Pt[] = [[-40, 900]];
      for (let i = 0; i < 9; i += 1)
        steps.push([-40 + i * 84, 700 - i * 40], [44 + i * 84, 700 - i * 40]);
      s.cut(timber, [...steps, [720, 900]]);
      const edges: Nick[] = [];
      for (let i = 0; i < 9; i += 1)
        edges.push([-40 + i * 84, 704 - i * 40, 50 + i * 84, 702 - i * 40, 11]);
      s.nicks(paper, edges);
      const foot = (i: number): Pt => [58 + i * 100, 652 - i * 47.6];
      sitters.forEach((who, i) => {
        const [x, y] = foot(i);
        placedAt(s, x, y, 1.02, () => passer(s, who, pts('-20,-70 -44,0 20,-70 24,-4')), 9);
      });
      s.bar(tar, -20, 634, 660, 310, 20);
      s.bar(plank, -20, 620, 660, 296, 16);
      for (const [x, y] of pts('14,614 228,512 428,417 624,322'))
        s.bar(tar, x, y, x + 14, y + 86, 16);
      sitters.forEach((who, i) => {
        const [x, y] = foot(i);
        s.limb(who.cloth, 27, 19, [
          [x + 16, y - 156],
          [x + 52, y - 120],
          [x + 40, y - 76],
        ]);
        s.oval(who.brown === true ? timber : kiln, x + 38, y - 68, 14);
      });
      sheetOfWater(s, lake, 626, 90, 11);
      water(s, 664, [lake, deep, night]);
    },
  },
  {
    id: 'd013',
    draw: (s) => {
      s.ground(amber);
      s.oval(glim, 230, 250, 190);
      s.hatch(glim, -30, 0, 700, 500, 36, 0, 110, 8);
      sheetOfWater(s, mist, 520, 110, 10);
      s.soft(deep, pts('140,700 150,470 160,360 214,318 300,318 352,360 350,470 356,700'));
      s.soft(lake, pts('160,380 200,330 240,440 232,640 170,700 150,560'));
      s.nicks(shoal, slits('180,400,190,560,9 270,350,262,470,8 316,400,322,500,8'));
      s.box(ink, 150, 486, 204, 32);
      s.cut(amber, pts('226,478 280,478 280,526 226,526'));
      s.cut(ink, pts('240,490 268,490 268,514 240,514'));
      s.cut(deep, pts('232,270 276,270 286,332 224,332'));
      s.soft(deep, pts('202,220 210,160 256,138 300,160 306,220 288,270 254,286 218,270'));
      s.soft(deep, pts('196,200 214,170 236,250 216,312 182,330 176,296 190,250'));
      s.oval(deep, 184, 300, 25);
      s.nicks(shoal, slits('172,296,192,288,6 176,310,196,304,6'));
      s.cut(lake, pts('306,196 326,224 300,232'));
      s.nicks(ink, slits('256,206,274,206,9 290,206,304,208,8 268,250,298,248,7'));
      s.cut(ink, pts('176,186 190,134 318,134 334,186'));
      s.cut(ink, pts('160,176 352,176 340,194 172,194'));
      s.cut(shoal, pts('200,146 236,142 226,172 196,172'));
      s.limb(deep, 62, 40, pts('336,360 420,390 436,480 440,560'));
      s.nicks(shoal, slits('350,364,410,392,9 424,420,430,500,8'));
      s.soft(deep, pts('418,550 462,550 466,592 414,592'));
      s.cut(deep, pts('432,586 452,586 446,650 438,650'));
      sheetOfWater(s, shoal, 606, 90, 11);
      s.bar(foam, 420, 582, 464, 576, 9);
      s.limb(foam, 6, 6, pts('460,580 480,602 492,590'));
      placedAt(s, 546, 622, 0.6, () => rowingBoat(s, rust, ember));
      wash(s, 250, 622, 210);
      water(s, 650, [lake, deep, night]);
    },
  },
  {
    id: 'd014',
    draw: (s) => {
      s.ground(deep);
      s.oval(glim, 120, 120, 58);
      s.oval(deep, 146, 106, 52);
      s.hatch(shoal, -20, 10, 680, 250, 20, 34, 13, 5);
      s.cut(night, pts('-40,560 700,530 700,740 -40,740'));
      s.hatch(deep, -30, 570, 700, 90, 24, 0, 80, 6);
      s.cut(tar, pts('10,700 20,420 84,416 90,700'));
      s.bar(foam, -20, 470, 540, 396, 48);
      s.nicks(mist, slits('10,480,200,456,7 260,444,460,420,6'));
      s.cut(rust, pts('-4,446 34,440 38,494 0,500'));
      const kids: readonly Passer[] = [
        { cloth: foam, hat: ['nightcap', rust] },
        { cloth: mist, hat: ['curls', tar], brown: true, mouth: 'oh' },
        { cloth: glim, hat: ['nightcap', lake] },
        { cloth: foam, hat: ['bun', timber], eyes: 'shut' },
      ];
      kids.forEach((who, i) => placedAt(s, 92 + i * 98, 434 - i * 13, 0.92, () => rider(s, who)));
      s.bar(ink, 566, 560, 530, 690, 44);
      s.bar(tar, 616, 560, 640, 690, 44);
      placedAt(s, 594, 330, 1, () => coat(s, night, lake, 0, 0, 90, 110, 280), -14);
      placedAt(s, 544, 270, 0.74, () => emericHead(s), -16);
      arm(s, deep, plank, tar, pts('600,390 556,440 524,410'), 60, 44, 44);
      water(s, 660, nightWater);
    },
  },
];
