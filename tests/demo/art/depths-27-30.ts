import { boards, town } from './buildings.js';
import { raft } from './craft.js';
import { plainHead } from './depth-people.js';
import { drips, quay, rowingBoat } from './depth-things.js';
import { hand } from './figures.js';
import { arc, pts, slits } from './geometry.js';
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
import { pimHead, placedAt } from './story-people.js';
import { sheetOfWater, water } from './water.js';

/** One map on its pegs: the land that is left, and the lake, which is more each time. */
function pinnedMap(s: Sheet, x: number, y: number, lakes: number, land: string): void {
  placedAt(
    s,
    x,
    y,
    1,
    () => {
      const sheet = pts('-62,0 62,-3 66,226 -64,230');
      s.cut(land, sheet);
      s.clipped(sheet, () => {
        const reach = 250 - lakes * 58;
        const shore = (k: number): Pt[] => [
          [-90, reach + k + 20],
          [-40, reach + k - 14],
          [10, reach + k + 12],
          [50, reach + k - 20],
          [90, reach + k],
          [90, 260],
          [-90, 260],
        ];
        s.soft(shoal, shore(0));
        s.soft(lake, shore(34));
        s.soft(deep, shore(76));
        for (const [px, py] of pts('-40,20 -6,40 30,18'))
          if (lakes < 4) s.box(rust, px, py, 16, 14);
      });
      s.lines(ink, 4, pts('-52,12 52,9 55,214 -53,217 -52,12'));
      for (const px of [-46, 42]) s.box(timber, px, -16, 11, 34);
    },
    s.rand(-3, 3),
  );
}

/** Depth Charts 27 to 30. */
export const depths27To30: readonly Picture[] = [
  {
    id: 'd027',
    draw: (s) => {
      s.ground(lake);
      s.hatch(deep, -30, -20, 700, 700, 60, 0, 90, 6);
      s.soft(deep, arc(240, 440, 226, 180, 0, 360, 22));
      for (const [i, color] of [mist, foam, shoal, mist, shoal, foam].entries())
        s.ring(
          color,
          240 + i * 2,
          440,
          40 + i * 36,
          (40 + i * 36) * 0.8,
          10 - i * 0.8,
          20 * i,
          20 * i + 330,
        );
      s.nicks(foam, slits('200,440,280,436,10 220,460,262,458,7'));
      s.cut(shoal, pts('262,420 400,210 470,262'));
      s.cut(foam, pts('270,414 392,206 412,216'));
      s.cut(foam, pts('274,422 460,240 478,262'));
      s.nicks(mist, slits('330,350,366,372,6 366,304,410,330,6 400,262,450,296,6'));
      placedAt(s, 500, 150, 0.6, () => raft(s), -50);
      for (const side of [-1, 1]) {
        placedAt(
          s,
          500 + side * 40,
          150 + side * 36,
          1.3,
          () => {
            s.oval(side === 1 ? rust : foam, 0, 0, 25, 21);
            s.oval(side === 1 ? ink : amber, 0, 0, 13);
            s.bar(ink, side * 10, -6, side * 82, -34, 9);
            s.soft(
              foam,
              pts('70,-46 112,-60 118,-38 76,-24').map(([x, y]): Pt => [x * side, y]),
            );
          },
          -40,
        );
      }
      s.nicks(
        night,
        slits('60,120,150,122,7 80,200,140,202,6 420,600,560,602,7 470,560,540,560,6'),
      );
      water(s, 676, [deep, night, ink]);
    },
  },
  {
    id: 'd028',
    draw: (s) => {
      s.ground(amber);
      s.oval(glim, 120, 110, 66);
      s.hatch(glim, -30, 0, 700, 230, 22, 0, 110, 8);
      sheetOfWater(s, mist, 250, 120, 10);
      sheetOfWater(s, shoal, 300, 120, 12);
      sheetOfWater(s, '#459a8f', 420, 130, 13);
      s.hatch(lake, -30, 330, 700, 330, 40, 0, 80, 5);
      placedAt(s, 318, 286, 1.3, () => {
        s.bar(timber, -30, -40, -142, -166, 9);
        s.bar(timber, 40, -40, 160, -164, 9);
        s.cut(plank, pts('-136,-176 -160,-214 -178,-204 -150,-158'));
        s.cut(plank, pts('152,-172 176,-212 194,-202 168,-156'));
        s.soft(rust, pts('-34,-34 -30,-86 0,-98 30,-86 36,-34'));
        placedAt(s, 2, -128, 0.84, () =>
          plainHead(s, { cloth: rust, hat: ['cap', night], eyes: 'shut' }),
        );
        s.soft(deep, pts('86,-38 90,-78 112,-88 136,-78 140,-38'));
        placedAt(s, 114, -116, 0.74, () =>
          plainHead(s, { cloth: deep, hat: ['brim', ink], brown: true, mouth: 'oh' }),
        );
        s.limb(deep, 17, 12, pts('94,-70 78,-64 98,-92'));
        rowingBoat(s, tar, plank);
      });
      drips(s, foam, [110, 80], [156, 110], 3, 60, 11);
      drips(s, foam, [506, 80], [560, 70], 3, 60, 11);
      s.bar(amber, 150, 480, 150, 668, 15);
      s.bar(amber, 490, 540, 490, 668, 15);
      for (const x of [150, 490]) s.oval(amber, x, x === 150 ? 470 : 532, 15);
      for (const y of [500, 540]) s.bar(amber, 120, y, 180, y - 4, 8);
      s.cut(foam, pts('158,584 486,584 486,640 158,640'));
      s.soft(paper, pts('164,584 170,546 240,544 250,586'));
      s.soft(night, pts('240,580 360,560 486,578 488,644 240,640'));
      s.nicks(
        shoal,
        slits('270,590,266,636,7 330,584,332,636,7 400,580,404,636,7 450,584,452,636,7'),
      );
      s.soft(amber, pts('330,510 360,492 396,496 416,510 396,524 360,526'));
      s.cut(amber, pts('336,510 300,490 306,530'));
      s.oval(ink, 394, 506, 5);
      water(s, 656, [lake, deep, night]);
    },
  },
  {
    id: 'd029',
    draw: (s) => {
      s.ground(foam);
      s.hatch(mist, -30, 0, 700, 580, 60, 20, 80, 8);
      town(s, -50, 240, 600, 80, 160, mist, shoal, null);
      quay(s, 612, plank, paper, timber);
      s.cut(timber, pts('170,80 500,80 506,636 166,636'));
      s.cut(tar, pts('148,54 522,54 508,92 162,92'));
      s.soft(tar, pts('220,56 270,24 336,14 400,24 450,56'));
      s.cut(ink, pts('200,110 470,110 474,610 198,610'));
      s.box(plank, 196, 262, 280, 18);
      s.cut(rust, pts('304,262 308,226 400,226 460,234 462,262'));
      placedAt(s, 262, 204, 0.66, () => pimHead(s, { mouth: 'smile' }));
      hand(s, plank, timber, 270, 266, 36, 20);
      s.bar(amber, 204, 316, 470, 312, 9);
      s.limb(amber, 7, 7, pts('350,314 356,330 350,344'));
      s.soft(deep, pts('320,346 384,346 422,384 420,560 400,590 300,590 286,560 284,384'));
      s.nicks(lake, slits('352,360,352,586,7 306,400,300,570,7 398,400,404,570,7'));
      s.cut(ink, pts('300,480 336,478 336,486 300,490'), pts('368,478 404,482 404,492 368,486'));
      for (const y of [400, 440, 530]) s.oval(amber, 362, y, 7);
      for (const [x, y] of pts('312,470 326,466 384,470')) s.oval(amber, x, y, 9);
      s.cut(timber, pts('166,80 60,36 52,690 166,636'));
      s.lines(
        plank,
        7,
        pts('148,110 76,84 74,320 148,330 148,110'),
        pts('148,380 74,382 70,630 148,604 148,380'),
      );
      s.oval(amber, 84, 350, 10);
      s.bar(timber, 520, 640, 604, 400, 12);
      s.cut(shoal, pts('574,400 634,392 628,456 582,460'));
      s.soft(ink, arc(604, 396, 32, 9));
      water(s, 664, [shoal, lake, deep]);
    },
  },
  {
    id: 'd030',
    draw: (s) => {
      s.ground(ember);
      boards(s, -40, 150, 720, 380, 8, timber, tar, plank);
      const stripes: Pt[][] = [];
      for (let i = 0; i < 7; i += 1) {
        const x = -30 + i * 104;
        stripes.push([
          [x + 10, 20],
          [x + 62, 20],
          [x + 52, 150],
          [x + 26, 180],
          [x, 150],
        ]);
      }
      s.cut(rust, pts('-40,10 680,10 680,150 -40,150'));
      s.cut(foam, ...stripes);
      s.bar(ink, -40, 208, 680, 202, 6);
      for (const [i, land] of [paper, glim, glim, mist].entries())
        pinnedMap(s, 88 + i * 154, 218, i + 1, land);
      s.box(plank, -40, 520, 720, 40);
      s.cut(lake, pts('-40,556 680,556 680,760 -40,760'));
      for (let i = 0; i < 5; i += 1)
        s.cut(deep, [
          [i * 140 - 20, 556],
          [i * 140 + 50, 556],
          [i * 140 + 44, 720],
          [i * 140 - 14, 720],
        ]);
      s.limb(foam, 34, 34, pts('380,500 460,492 540,500'));
      s.limb(paper, 34, 34, pts('430,470 500,462 570,472'));
      s.oval(rust, 380, 500, 10);
      s.nicks(ink, slits('470,482,470,512,6 500,450,500,480,6'));
      s.oval(amber, 110, 510, 17, 8);
      s.oval(amber, 130, 500, 17, 8);
      s.oval(glim, 168, 512, 17, 8);
      water(s, 656, [shoal, deep, night]);
    },
  },
];
