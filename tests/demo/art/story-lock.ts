import { arm, coat, head } from './figures.js';
import { arc, pts, quads, slits, trios } from './geometry.js';
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
import type { Nick, Sheet } from './sheet.js';
import { emericHead, hat, placedAt } from './story-people.js';
import { glow, lamp, rays } from './things.js';
import { nightWater, ripples, sheetOfWater, water } from './water.js';

/** A roof seen from straight above: two slopes, the ridge and a chimney. */
function roofAbove(
  s: Sheet,
  x: number,
  y: number,
  w: number,
  h: number,
  lit: string,
  dim: string,
): void {
  const ridge = x + w * s.rand(0.44, 0.56);
  s.cut(lit, [
    [x, y],
    [ridge, y - 4],
    [ridge, y + h],
    [x, y + h - 4],
  ]);
  s.cut(dim, [
    [ridge, y - 4],
    [x + w, y + 3],
    [x + w, y + h],
    [ridge, y + h],
  ]);
  s.bar(shoal, ridge, y, ridge, y + h - 4, 6);
  s.nicks(
    ink,
    [0.25, 0.5, 0.75].flatMap((k): Nick[] => [
      [x + 8, y + h * k, ridge - 10, y + h * k - 3, 5],
      [ridge + 10, y + h * k, x + w - 8, y + h * k, 5],
    ]),
  );
  s.box(ink, ridge - 14, y + h * s.rand(0.2, 0.6), 26, 26);
}

/** A saw trestle, its bar centred on (x, y). */
function trestle(s: Sheet, x: number, y: number): void {
  for (const side of [-1, 1]) {
    s.bar(tar, x + side * 14, y, x + side * 48, y + 180, 17);
    s.bar(timber, x + side * 34, y + 110, x, y + 110, 11);
  }
  s.bar(timber, x - 62, y, x + 62, y - 3, 26);
}

/** From the red door to the first night on the water. */
export const storyLock: readonly Picture[] = [
  {
    id: 's063',
    draw: (s) => {
      s.ground(lake);
      s.hatch(shoal, -30, -20, 700, 560, 50, -24, 80, 6);
      s.cut(glim, pts('-40,556 680,540 680,760 -40,760'));
      s.hatch(plank, -30, 570, 700, 120, 40, 14, 26, 6);
      s.cut(plank, pts('196,600 438,600 620,690 330,700'));
      coat(s, deep, night, 150, 330, 84, 96, 290);
      placedAt(
        s,
        176,
        236,
        1,
        () => {
          head(s, 0, 0, { skin: clay, shade: kiln, size: 80, dark: 1, mouth: 'oh' });
          hat(s, 'scarf', amber, 0, 0, 80);
        },
        14,
      );
      trestle(s, 134, 470);
      trestle(s, 512, 470);
      s.cut(tar, pts('438,84 462,94 460,612 436,618'));
      s.box(rust, 196, 82, 244, 534);
      s.nicks(tar, slits('256,90,256,608,7 318,90,316,608,7 378,90,380,608,7'));
      s.bar(ember, 206, 160, 430, 160, 46);
      s.bar(ember, 206, 540, 430, 540, 46);
      s.bar(ember, 206, 352, 430, 354, 46);
      s.limb(amber, 14, 10, pts('318,136 318,186 296,212 276,190'));
      s.oval(amber, 318, 136, 17);
      s.box(ink, 372, 320, 112, 66);
      s.bar(amber, 340, 354, 476, 352, 24);
      s.bar(amber, 372, 354, 374, 396, 16);
      s.oval(glim, 374, 398, 14);
      s.box(amber, 440, 312, 26, 84);
      s.nicks(glim, slits('352,348,460,346,6'));
      arm(s, deep, clay, ink, pts('120,400 110,350 176,338'), 50, 40, 44);
      water(s, 696, [shoal, lake, deep]);
    },
  },
  {
    id: 's064',
    draw: (s) => {
      s.ground(night);
      for (const [x, y, w, h] of quads(
        '-30,20,150,110 140,8,210,96 420,20,220,90 -40,150,100,120 260,300,90,110 300,480,210,100 520,480,180,120 -30,300,80,110 190,120,110,100',
      ))
        s.box('#24496a', x, y, w, h);
      glow(s, 250, 560, 260);
      s.soft(tar, arc(490, 300, 170, 170, 0, 360, 24));
      for (const [x, y, r] of trios(
        '356,210,44 384,160,36 440,126,34 620,170,46 352,390,40 560,466,44 470,474,38 640,400,40',
      ))
        s.oval(lake, x, y, r);
      s.soft(shoal, arc(490, 300, 146, 146, 0, 360, 24));
      s.soft(ink, arc(490, 300, 126, 126, 0, 360, 24));
      for (const d of [-84, -42, 0, 42, 84]) {
        const half = Math.sqrt(130 ** 2 - d * d);
        s.bar(shoal, 490 + d, 300 - half, 490 + d, 300 + half, 14);
      }
      s.bar(shoal, 362, 300, 618, 300, 14);
      for (const r of [30, 58, 86]) s.ring(amber, 490, 322, r, r * 0.9, 8 - r / 22, 206, 334);
      s.nicks(
        lake,
        slits(
          '352,400,346,470,20 384,440,380,520,16 470,470,468,540,18 560,470,566,530,18 600,440,606,486,14 350,180,338,240,16',
        ),
      );
      coat(s, ink, night, 130, 372, 160, 180, 380);
      placedAt(s, 198, 268, 0.98, () => emericHead(s), 15);
      arm(s, ink, plank, tar, pts('230,430 300,470 330,400'), 74, 50, 54);
      arm(s, ink, plank, tar, pts('60,430 90,560 200,570'), 90, 64, 56);
      rays(s, glim, 248, 626, 56, 130, 18, 7);
      lamp(s, 248, 556, 112, true, tar);
      water(s, 704, nightWater);
    },
  },
  {
    id: 's065',
    draw: (s) => {
      s.ground(deep);
      s.within({ opacity: 0.8 }, () => {
        for (const [x, y, w] of trios(
          '-50,-30,170 -50,128,196 -50,286,164 -50,444,190 -50,602,170 516,-60,170 490,98,196 520,256,170 494,414,196 520,572,170',
        ))
          roofAbove(s, x, y, w, 138, '#24496a', night);
      });
      ripples(s, lake, 0, 700, 36, 90);
      glow(s, 318, 92, 150);
      rays(s, glim, 318, 92, 50, 140, 24, 7);
      s.limb(shoal, 16, 3, pts('250,560 200,660 150,760'));
      s.limb(shoal, 16, 3, pts('386,560 436,660 486,760'));
      s.nicks(
        foam,
        slits('232,420,216,500,8 404,420,420,500,8 300,670,290,720,7 340,664,352,716,7'),
      );
      s.soft(tar, pts('318,186 384,290 402,430 384,580 350,640 286,640 252,580 234,430 252,290'));
      s.soft(plank, pts('318,232 364,310 380,430 362,570 338,606 298,606 274,570 256,430 272,310'));
      s.nicks(timber, slits('318,240,318,320,5 290,280,284,340,5 346,280,352,340,5'));
      for (const [x, y] of pts('270,350 266,400 368,360 372,410 270,510 366,520'))
        s.oval(x < 318 ? rust : lake, x, y, 11);
      const tier = (size: number, color: string, fold: string): void => {
        const corner: Pt[] = [
          [318 - size, 450 - size],
          [318 + size, 450 - size],
          [318 + size, 450 + size],
          [318 - size, 450 + size],
        ];
        s.cut(color, corner);
        s.nicks(
          fold,
          corner.map(([x, y]) => [318, 450, x, y, 6] as const),
        );
      };
      tier(74, timber, tar);
      tier(52, rust, ember);
      tier(28, foam, paper);
      tier(14, ink, night);
      s.limb(tar, 46, 22, pts('318,270 318,220 306,170 322,130'));
      s.soft(tar, pts('322,150 296,122 304,98 340,98 346,124'));
      s.cut(tar, pts('306,104 322,10 338,104'));
      s.oval(amber, 304, 112, 6);
      s.oval(amber, 340, 112, 6);
      s.oval(ink, 322, 60, 28);
      s.oval(glim, 322, 60, 18);
      s.bar(tar, 348, 620, 392, 700, 13);
      sheetOfWater(s, night, 742, 150, 16);
      sheetOfWater(s, ink, 800, 170, 14);
    },
  },
];
