import { house, town } from './buildings.js';
import { type Passer, passer, plainHead } from './depth-people.js';
import { pts, slits, trios } from './geometry.js';
import {
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
import type { Nick, Sheet } from './sheet.js';
import { placedAt } from './story-people.js';
import { glow } from './things.js';
import { glitter, nightWater, sheetOfWater, water } from './water.js';

/** A skater gliding to the right on one blade, the foot at the origin. */
function skater(s: Sheet, who: Passer, trail: string): void {
  s.bar(ink, -10, -84, 2, -8, 22);
  s.bar(ink, -14, -84, -92, -46, 22);
  s.nicks(shoal, slits('-34,2,40,2,9 -122,-26,-66,-54,8'));
  s.soft(who.cloth, pts('6,-180 40,-168 44,-110 20,-66 -56,-70 -30,-130'));
  s.limb(who.cloth, 22, 14, pts('10,-150 60,-140 96,-164'));
  s.limb(who.cloth, 22, 14, pts('0,-150 -50,-150 -88,-120'));
  s.limb(trail, 17, 9, pts('14,-182 -30,-190 -64,-176 -100,-196'));
  placedAt(s, 34, -212, 0.86, () => plainHead(s, who));
}

/** Depth Charts 34 to 36. */
export const depths34To36: readonly Picture[] = [
  {
    id: 'd034',
    draw: (s) => {
      s.ground(mist);
      house(s, 300, 470, 100, 170, shoal, lake, foam);
      house(s, 396, 490, 84, 120, lake, deep, foam, 1);
      s.soft(foam, pts('-60,500 200,500 460,530 560,580 600,720 -60,720'));
      s.nicks(paper, slits('20,560,120,566,7 200,610,300,616,7 60,640,160,642,6'));
      sheetOfWater(s, lake, 600, 90, 11);
      s.soft(foam, pts('-60,560 300,560 470,590 520,660 400,680 -60,680'));
      const team: readonly Passer[] = [
        { cloth: rust, hat: ['cap', foam] },
        { cloth: night, hat: ['scarf', amber], brown: true, mouth: 'oh' },
        { cloth: amber, hat: ['brim', ink] },
        { cloth: deep, hat: ['curls', tar], brown: true },
        { cloth: ember, hat: ['nightcap', lake], mouth: 'oh' },
      ];
      team.forEach((who, i) =>
        placedAt(
          s,
          66 + i * 118,
          566 + i * 14,
          1.28,
          () => passer(s, who, pts('-16,-70 34,0 20,-70 66,-4')),
          -24,
        ),
      );
      s.limb(plank, 17, 17, pts('-40,392 200,424 480,500 610,644'));
      const twists: Nick[] = [];
      for (let i = 0; i < 12; i += 1)
        twists.push([-20 + i * 40, 386 + i * 7.6, -6 + i * 40, 404 + i * 7.6, 6]);
      s.nicks(tar, twists);
      team.forEach((who, i) => {
        const [x, y] = [20 + i * 116, 400 + i * 25];
        s.limb(who.cloth, 28, 20, [
          [x - 36, y - 4],
          [x - 10, y + 34],
          [x + 30, y + 6],
        ]);
        s.oval(i % 2 === 0 ? rust : foam, x + 36, y + 2, 17);
      });
      for (const [x, y, r] of trios(
        '60,60,10 170,130,8 280,60,11 420,120,9 560,70,10 520,230,9 610,330,10 560,420,9',
      ))
        s.oval(foam, x, y, r);
      s.ring(foam, 606, 640, 46, 12, 6);
      s.ring(shoal, 606, 642, 80, 20, 5);
      water(s, 656, [lake, deep, night]);
    },
  },
  {
    id: 'd035',
    draw: (s) => {
      s.ground(glim);
      s.oval(ember, 530, 110, 56);
      s.soft(foam, pts('-60,240 80,170 220,210 380,160 520,214 700,150 700,340 -60,340'));
      town(s, 330, 690, 300, 30, 70, mist, shoal, null);
      s.box(mist, -40, 296, 720, 110);
      s.cut(foam, pts('-40,290 680,286 680,310 -40,316'));
      s.box('#8fc0b3', -40, 396, 720, 320);
      s.cut(foam, pts('-40,392 680,388 680,398 -40,402'));
      s.soft(shoal, pts('-60,470 160,440 400,470 700,430 700,740 -60,740'));
      for (const [i, [x, w, h]] of trios(
        '-20,104,120 104,96,90 214,110,130 390,100,100 500,120,140',
      ).entries())
        house(s, x, 668, w, h, i % 2 === 0 ? lake : deep, night, i % 2 === 0 ? amber : null, 2);
      s.nicks(
        foam,
        slits(
          '40,330,200,326,6 260,350,400,346,6 430,330,600,338,6 90,420,200,440,6 300,420,380,500,5 480,416,560,430,6',
        ),
      );
      placedAt(s, 170, 376, 1.12, () => skater(s, { cloth: rust, hat: ['cap', night] }, amber));
      placedAt(
        s,
        470,
        358,
        0.92,
        () => skater(s, { cloth: deep, hat: ['bun', tar], brown: true }, foam),
        0,
        -0.92,
      );
      placedAt(s, 330, 340, 0.5, () =>
        skater(s, { cloth: amber, hat: ['cap', rust], mouth: 'oh' }, rust),
      );
      water(s, 660, [lake, deep, night]);
    },
  },
  {
    id: 'd036',
    draw: (s) => {
      s.ground(night);
      s.hatch(foam, 200, -20, 240, 200, 12, 34, 12, 5);
      s.cut(ink, pts('-40,-40 150,40 252,250 252,420 -40,700'));
      s.cut(ink, pts('680,-40 490,40 386,250 386,420 680,700'));
      s.cut(rust, pts('-40,60 60,110 60,610 -40,680'));
      s.cut(timber, pts('60,140 150,190 150,540 60,610'), pts('680,60 580,110 580,610 680,680'));
      s.cut(deep, pts('150,210 218,260 218,490 150,540'), pts('580,140 490,190 490,540 580,610'));
      s.cut(plank, pts('490,210 424,260 424,490 490,540'));
      s.cut(
        glim,
        pts('80,230 126,250 126,320 80,310'),
        pts('166,290 200,306 200,352 166,346'),
        pts('510,250 556,230 556,310 510,320'),
        pts('440,306 472,290 472,346 440,352'),
        pts('600,200 650,170 650,270 600,280'),
      );
      s.cut(tar, pts('-40,700 240,430 400,430 680,700'));
      glow(s, 318, 400, 130);
      s.cut(foam, pts('290,424 350,424 470,660 160,660'));
      s.cut(paper, pts('160,660 470,660 476,700 154,700'));
      s.nicks(mist, slits('300,440,236,650,6 340,440,400,650,6'));
      for (const [y, k] of [
        [430, 0.34],
        [480, 0.5],
        [546, 0.74],
        [628, 1],
      ] as const) {
        for (const side of [-1, 1]) {
          const x = 318 + side * (34 + (y - 424) * 0.5) * 0.9;
          placedAt(s, x + side * 34 * k, y - 10 * k, k * 1.06, () => {
            s.soft(side === 1 ? rust : lake, pts('-40,70 -34,20 0,10 34,20 40,70'));
            s.oval(plank, 0, -14, 27, 30);
            s.soft(side === 1 ? amber : tar, pts('-30,-16 -24,-44 0,-54 24,-44 30,-16 0,-30'));
          });
        }
        s.bar(ember, 318, y - 4, 318, y - 64 * k, 16 * k);
        s.oval(amber, 318, y - 84 * k, 12 * k, 22 * k);
      }
      for (const [x, y, r] of trios('270,610,24 370,600,22 296,540,15 346,530,14')) {
        s.oval(shoal, x, y, r * 1.5, r * 0.6);
        s.oval(ember, x, y - r * 0.3, r * 0.8, r * 0.5);
      }
      s.box(plank, -40, 616, 140, 26);
      s.soft(night, pts('22,616 24,560 30,548 70,548 76,560 78,616'));
      s.soft(rust, pts('28,612 30,572 70,572 72,612'));
      placedAt(s, 50, 540, 1, () => s.cut(amber, pts('-28,-4 26,-14 28,2 -26,10')));
      water(s, 664, nightWater);
      glitter(s, amber, 318, 684, 60, 150);
    },
  },
];
