import { house } from './buildings.js';
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
import { hat, neighbour, pellHead, placedAt, type Hat } from './story-people.js';
import { pump } from './story-things.js';
import { glow, lamp, rays } from './things.js';
import { glitter, nightWater, sheetOfWater, water } from './water.js';

/** A kitchen chair, its seat at the origin. */
function chair(s: Sheet, color: string): void {
  s.bar(color, -56, -150, -52, 96, 15);
  s.bar(color, 50, 0, 58, 100, 15);
  s.bar(color, -20, 0, -24, 80, 12);
  s.bar(color, 22, -20, 22, 70, 10);
  s.bar(color, -4, -160, -2, -10, 14);
  for (const y of [-140, -100, -60]) s.bar(color, -58, y + 4, 0, y - 8, 14);
  s.cut(color, pts('-64,-8 30,-24 66,2 -44,18'));
}

/** A neighbour on both knees who lays a hand on something at the given place. */
function kneeling(
  s: Sheet,
  cloth: string,
  fold: string,
  skin: readonly [string, string],
  hatted: readonly [Hat, string],
  reach: readonly Pt[],
): void {
  s.soft(ink, pts('-90,300 -86,236 -20,220 70,236 110,268 112,300'));
  coat(s, cloth, fold, 0, 60, 82, 92, 206);
  head(s, 0, -20, { skin: skin[0], shade: skin[1], size: 70, dark: -1, mouth: 'level' });
  hat(s, hatted[0], hatted[1], 0, -20, 70);
  arm(s, cloth, skin[0], tar, reach, 50, 40, 48);
  const [wx, wy] = reach.at(-1) ?? [0, 0];
  const [ex, ey] = reach.at(-2) ?? [0, 0];
  s.limb(fold, 44, 42, [
    [(wx + ex) / 2, (wy + ey) / 2],
    [wx, wy],
  ]);
  s.nicks(lake, [
    [wx - 22, wy + 14, wx - 22, wy + 58, 10],
    [wx - 46, wy + 10, wx - 47, wy + 40, 8],
  ]);
}

/** The water is in the street: chairs, a lamp and a hand. */
export const storyRise: readonly Picture[] = [
  {
    id: 's057',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, -20, 700, 420, 40, 4, 90, 7);
      house(s, -34, 470, 96, 330, deep, ink, glim, 3);
      house(s, 566, 200, 100, 150, deep, ink, glim, 1);
      const steps: Pt[] = [];
      for (let i = 0; i < 8; i += 1)
        steps.push([-60 + i * 94, 660 - i * 70], [34 + i * 94, 660 - i * 70]);
      s.cut(timber, [[-60, 760], ...steps, [720, 170], [720, 760]]);
      for (let i = 0; i < 8; i += 1)
        s.bar(plank, -62 + i * 94, 664 - i * 70, 38 + i * 94, 663 - i * 70, 14);
      s.hatch(tar, 200, 500, 460, 200, 22, 0, 80, 6);
      const queue = [
        {
          x: 70,
          cloth: lake,
          fold: shoal,
          hat: 'scarf',
          of: rust,
          arms: '40,-200 70,-300 78,-400',
        },
        {
          x: 344,
          cloth: night,
          fold: lake,
          hat: 'bun',
          of: foam,
          arms: '-40,-200 -74,-270 -120,-318',
        },
      ] as const;
      queue.forEach(({ x, cloth, fold, hat: kind, of, arms }, i) =>
        placedAt(s, x, 592 - i * 207, 0.98, () => {
          const [brown, to] = [i === 1, pts(arms)];
          const skin = brown ? plank : clay;
          const other = to.map(([px, py], at): Pt => [
            px - (at === 0 ? 80 : 70) * (i === 0 ? 1 : -0.2),
            py + i * 60,
          ]);
          arm(s, fold, skin, tar, other, 40, 32, 36);
          neighbour(s, { cloth, fold, dark: 1, brown, hat: [kind, of], face: { mouth: 'smile' } });
          arm(s, cloth, skin, tar, to, 40, 32, 36);
        }),
      );
      placedAt(s, 180, 150, 1.02, () => chair(s, rust), 20);
      placedAt(s, 500, 252, 0.72, () => chair(s, ink), -4);
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 's058',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, 0, 700, 520, 40, 0, 80, 5);
      glow(s, 470, 300, 270);
      rays(s, glim, 470, 300, 130, 300, 30, 9);
      for (const [x, y, w] of trios('-10,560,110 110,560,70 560,560,100'))
        s.cut(ink, [
          [x, y + 30],
          [x + w / 2, y - w * 0.6],
          [x + w, y + 30],
        ]);
      sheetOfWater(s, lake, 566, 90, 10);
      s.bar(ink, 470, 700, 470, 440, 26);
      s.cut(ink, pts('420,448 520,448 500,414 440,414'));
      lamp(s, 470, 158, 210, true);
      s.bar(night, 158, 500, 156, 600, 44);
      s.bar(night, 220, 500, 224, 600, 44);
      s.soft(night, pts('92,560 96,440 116,352 160,310 224,310 268,350 280,440 284,560 190,576'));
      s.nicks(shoal, slits('120,400,116,540,9 160,420,156,550,7 250,430,256,540,8'));
      placedAt(s, 206, 258, 1.12, () => pellHead(s), 8);
      arm(s, lake, clay, ink, pts('250,370 310,420 366,356'), 56, 42, 44);
      s.bar(foam, 384, 330, 404, 296, 6);
      s.soft(amber, pts('404,304 394,284 406,256 418,284'));
      arm(s, night, clay, ink, pts('112,380 66,450 96,520'), 58, 44, 42);
      s.soft(tar, pts('-10,556 90,590 320,590 412,548 372,690 40,690'));
      s.nicks(plank, slits('20,594,200,612,7 220,612,384,586,7 40,640,350,640,6'));
      s.bar(plank, 60, 700, 300, 560, 13);
      water(s, 650, nightWater);
      glitter(s, glim, 470, 664, 110, 130);
    },
  },
  {
    id: 's059',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, -20, 700, 560, 50, 70, 70, 8);
      s.box(kiln, -40, 560, 720, 200);
      s.hatch(plank, -30, 570, 700, 120, 24, 0, 90, 6);
      pump(s, ink, shoal, 306, 700, 660);
      placedAt(
        s,
        548,
        330,
        1.04,
        () =>
          kneeling(s, deep, night, [plank, timber], ['brim', tar], pts('56,96 116,140 180,106')),
        0,
        -1.04,
      );
      placedAt(s, 108, 336, 1.06, () =>
        kneeling(s, rust, tar, [clay, kiln], ['bun', timber], pts('62,104 70,190 134,168')),
      );
      placedAt(
        s,
        470,
        446,
        0.8,
        () =>
          kneeling(s, amber, timber, [clay, kiln], ['curls', ember], pts('62,104 92,180 142,168')),
        0,
        -0.8,
      );
      water(s, 690, [shoal, lake, deep]);
    },
  },
];
