import { town } from './buildings.js';
import { launch } from './craft.js';
import { plainHead } from './depth-people.js';
import { fish } from './depth-things.js';
import { arc, pts, slits, trios } from './geometry.js';
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
import type { Nick } from './sheet.js';
import { placedAt } from './story-people.js';
import { sheetOfWater, water } from './water.js';

/** A cat asleep, seen from the side, as an outline about 250 long on a base line. */
const cat = pts(
  '-120,0 -132,-40 -110,-84 -116,-132 -86,-108 -58,-108 -30,-134 -30,-92 20,-116 80,-100 116,-56 124,-26 150,-20 172,-44 186,-34 170,-2 120,0',
);

/** Depth Charts 31 to 33. */
export const depths31To33: readonly Picture[] = [
  {
    id: 'd031',
    draw: (s) => {
      s.ground(paper);
      s.oval(amber, 330, 130, 78);
      s.hatch(foam, -30, 0, 700, 420, 40, 0, 120, 9);
      town(s, 380, 690, 520, 40, 80, foam, plank, null);
      sheetOfWater(s, shoal, 500, 110, 10);
      s.cut(night, pts('-40,300 210,300 330,480 370,640 -40,640'));
      const slates: Nick[] = [];
      for (let r = 0; r < 6; r += 1)
        for (let c = 0; c < 6; c += 1) {
          const x = -20 + c * 62 + (r % 2) * 30;
          if (x < 200 + r * 24) slates.push([x, 340 + r * 48, x + 48, 342 + r * 48, 7]);
        }
      s.nicks(shoal, slates);
      s.bar(rust, -40, 302, 218, 300, 17);
      s.cut(rust, pts('60,300 64,196 130,196 136,300'));
      s.box(tar, 50, 180, 94, 24);
      placedAt(s, 200, 306, 0.96, () => {
        s.bar(timber, -36, -120, -44, 0, 9);
        s.bar(timber, 40, -70, 48, 0, 9);
        s.bar(timber, -42, -62, 44, -66, 11);
        s.limb(ink, 22, 18, pts('-20,-64 36,-66 44,0'));
        s.soft(lake, pts('-34,-62 -34,-140 -6,-160 24,-140 30,-60'));
        placedAt(s, -4, -190, 0.9, () => plainHead(s, { cloth: lake, hat: ['brim', rust] }));
        s.limb(lake, 24, 16, pts('18,-130 64,-140 82,-196'));
        s.bar(timber, 82, -190, 88, -230, 8);
        s.box(foam, 50, -312, 78, 88);
        for (const [x, y] of pts('70,-292 108,-292 70,-268 108,-268 70,-244 108,-244'))
          s.oval(rust, x, y, 8);
      });
      placedAt(
        s,
        452,
        326,
        1.4,
        () => {
          s.limb(plank, 22, 17, pts('0,60 44,70 14,96'));
          s.limb(timber, 22, 17, pts('-20,60 24,84 -16,104'));
          s.soft(rust, pts('-34,0 0,-14 34,0 36,66 -34,70'));
          s.nicks(foam, slits('-32,20,34,18,9 -32,44,34,42,9'));
          s.limb(plank, 19, 14, pts('-28,4 -70,-20 -84,-64'));
          s.limb(plank, 19, 14, pts('28,4 70,-24 80,-70'));
          placedAt(
            s,
            2,
            -50,
            1,
            () => plainHead(s, { cloth: rust, hat: ['curls', tar], brown: true, mouth: 'oh' }),
            12,
          );
        },
        16,
      );
      s.nicks(foam, slits('300,290,346,306,8 316,380,356,384,8 350,456,384,444,8'));
      water(s, 616, [shoal, lake, deep]);
    },
  },
  {
    id: 'd032',
    draw: (s) => {
      s.ground(ember);
      s.hatch(amber, -30, 0, 700, 330, 44, 0, 110, 8);
      s.oval(glim, 130, 150, 66);
      town(s, -50, 680, 400, 60, 120, rust, tar, null);
      sheetOfWater(s, shoal, 396, 110, 10);
      placedAt(s, 318, 590, 1.04, () => launch(s));
      s.within({ opacity: 0.6 }, () => sheetOfWater(s, lake, 468, 120, 9));
      s.cut(
        glim,
        pts('197,442 258,442 258,494 197,494'),
        pts('287,442 347,442 347,494 287,494'),
        pts('374,442 428,442 428,494 374,494'),
      );
      s.nicks(foam, slits('-20,470,60,472,9 90,474,160,472,8 470,472,560,474,9 590,468,650,470,8'));
      for (const [x, y] of trios(
        '212,482,0 232,484,0 250,480,0 302,482,0 322,484,0 340,480,0 388,484,0 410,482,0',
      ))
        s.oval(amber, x, y, 10, 7);
      fish(s, foam, ink, 132, 494, 0.86);
      fish(s, rust, ink, 494, 500, -0.9);
      fish(s, amber, ink, 306, 536, 0.7);
      fish(s, foam, ink, 60, 590, 0.6);
      fish(s, rust, ink, 566, 580, -0.7);
      s.hatch(mist, -20, 560, 680, 90, 14, 0, 70, 5);
      water(s, 644, [lake, deep, night]);
    },
  },
  {
    id: 'd033',
    draw: (s) => {
      s.ground(plank);
      const brick: Pt[][] = [];
      for (let r = 0; r < 11; r += 1)
        for (let c = 0; c < 7; c += 1) {
          const x = c * 112 + (r % 2) * 56 - 70;
          brick.push([
            [x, r * 60 - 10],
            [x + 102, r * 60 - 10],
            [x + 102, r * 60 + 42],
            [x, r * 60 + 42],
          ]);
        }
      s.cut(kiln, ...brick);
      s.within({ opacity: 0.6 }, () => s.cut(amber, pts('-40,-40 480,-40 700,640 130,640')));
      const at = (x: number, y: number, k: number): Pt[] =>
        cat.map(([px, py]): Pt => [x + px * k, y + py * k]);
      s.box(foam, -40, 250, 720, 222);
      s.soft(kiln, at(300, 462, 1.5));
      s.clipped(at(300, 462, 1.46), () => {
        s.nicks(
          plank,
          slits(
            '80,292,560,292,9 80,352,560,352,9 80,412,560,412,9 200,296,200,350,9 320,296,320,350,9 440,296,440,350,9 150,356,150,410,9 262,356,262,410,9 380,356,380,410,9 494,356,494,410,9',
          ),
        );
      });
      s.nicks(foam, slits('20,464,18,530,10 90,464,92,510,9 560,464,558,550,11 620,464,622,500,9'));
      s.nicks(
        mist,
        slits('-20,280,100,276,8 20,430,110,434,8 480,290,620,284,8 560,440,640,436,8'),
      );
      s.cut(timber, pts('-40,560 700,560 700,700 -40,700'));
      s.nicks(plank, slits('-20,574,200,572,8 240,576,460,572,8 500,576,640,574,8'));
      s.cut(shoal, pts('500,500 600,496 588,600 512,602'));
      s.soft(foam, arc(550, 500, 50, 13));
      s.bar(timber, 556, 500, 610, 410, 12);
      water(s, 640, [shoal, lake, deep]);
    },
  },
];
