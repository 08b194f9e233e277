import { house, town } from './buildings.js';
import { lettuce, quay } from './depth-things.js';
import { arc, pts, slits, trios } from './geometry.js';
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
import { type Hat, hat, placedAt } from './story-people.js';
import { rays } from './things.js';
import { glitter, sheetOfWater, water } from './water.js';

/** Depth Charts 7 to 10. */
export const depths07To10: readonly Picture[] = [
  {
    id: 'd007',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, 0, 700, 560, 50, 0, 110, 8);
      for (const [x, w, h] of trios('-30,160,430 490,180,380'))
        house(s, x, 640, w, h, tar, ink, null);
      house(s, 196, 640, 230, 470, mist, night, null);
      s.cut(night, pts('216,200 280,200 280,290 216,290'), pts('338,200 402,200 402,290 338,290'));
      s.cut(night, pts('214,360 330,360 330,510 214,510'));
      s.cut(foam, pts('236,392 312,388 314,462 238,466'));
      s.nicks(rust, slits('250,410,300,408,8 252,428,298,426,6 254,446,288,444,6'));
      s.cut(rust, pts('352,380 414,380 416,640 350,640'));
      s.oval(amber, 402, 516, 8);
      s.bar(tar, 362, 452, 404, 452, 9);
      s.nicks(shoal, slits('206,220,206,560,6 418,190,420,340,6 230,330,320,332,6'));
      sheetOfWater(s, shoal, 600, 84, 10);
      const pales: Pt[][] = [];
      for (let i = 0; i < 15; i += 1) {
        const x = -20 + i * 46;
        if (x > 330 && x < 440) continue;
        pales.push([
          [x, 566],
          [x + 12, 548],
          [x + 24, 566],
          [x + 24, 680],
          [x, 680],
        ]);
      }
      s.cut(foam, ...pales);
      s.bar(foam, -40, 594, 352, 592, 12);
      s.bar(foam, 436, 592, 680, 594, 12);
      s.cut(paper, pts('440,548 520,520 524,660 442,690'));
      s.nicks(ember, slits('460,560,462,660,8 490,550,492,650,8'));
      water(s, 644, [lake, deep, night]);
    },
  },
  {
    id: 'd008',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 460, 40, -8, 90, 8);
      s.oval(amber, 520, 130, 62);
      sheetOfWater(s, shoal, 430, 100, 11);
      town(s, -50, 300, 440, 40, 90, lake, deep, null);
      for (const x of [150, 318, 486]) {
        s.soft(timber, arc(x, 630, 86, 58, 0, 360, 16));
        s.nicks(tar, [
          [x - 40, 576, x - 46, 680, 8],
          [x + 40, 576, x + 46, 680, 8],
        ]);
      }
      s.cut(foam, pts('80,500 560,500 566,580 74,580'));
      s.cut(paper, pts('80,548 562,548 566,584 74,584'));
      s.cut(tar, pts('210,484 560,484 560,520 210,520'));
      s.soft(foam, pts('92,500 100,452 150,440 196,456 206,500 150,510'));
      for (let i = 0; i < 5; i += 1)
        lettuce(s, i % 2 === 0 ? deep : lake, mist, 254 + i * 66, 462, 48);
      for (const [x, top] of pts('70,270 576,350')) {
        s.ring(amber, x, top, 22, 22, 15);
        s.bar(amber, x, top + 16, x, 640, 20);
        s.nicks(glim, [[x - 4, top + 40, x - 5, 560, 6]]);
      }
      for (const [x, top, to] of trios('70,300,214 576,378,452')) {
        const inner = x < 300 ? 1 : -1;
        s.bar(amber, x, top + 10, x + inner * 58, top + 36, 15);
        for (let i = 1; i < 4; i += 1)
          s.bar(amber, x + inner * i * 17, top + 16 + i * 6, x + inner * i * 17, to + 280, 7);
        s.bar(amber, x + inner * 58, top + 30, x + inner * 58, 560, 12);
      }
      water(s, 640, [shoal, lake, deep]);
    },
  },
  {
    id: 'd009',
    draw: (s) => {
      s.ground(rust);
      s.hatch(ember, -30, 0, 700, 400, 40, 0, 130, 9);
      s.oval(amber, 330, 380, 190);
      rays(s, ember, 330, 380, 206, 420, 40, 11);
      s.oval(glim, 330, 380, 148);
      sheetOfWater(s, night, 380, 100, 10);
      glitter(s, amber, 330, 402, 130, 300);
      s.cut(tar, pts('-40,560 700,540 700,900 -40,900'));
      s.cut(timber, pts('-40,540 700,520 700,584 -40,604'));
      s.nicks(plank, slits('-20,560,220,552,7 300,556,600,542,7 40,590,300,580,6'));
      for (const [x, lean] of pts('120,0 262,10')) {
        s.soft(deep, [
          [x - 52, 312],
          [x + 42, 306],
          [x + 46, 440],
          [x + 96 + lean, 484],
          [x + 106 + lean, 552],
          [x - 56, 560],
        ]);
        s.bar(ink, x - 60, 556, x + 110 + lean, 550, 18);
        s.soft(lake, [
          [x + 2, 316],
          [x + 40, 300],
          [x + 54, 360],
          [x + 36, 420],
        ]);
        for (let i = 0; i < 4; i += 1) s.oval(amber, x + 44, 346 + i * 34, 5);
        s.limb(foam, 6, 5, [
          [x + 44, 344],
          [x + 80 + lean, 380],
          [x + 70, 440],
          [x + 112, 520],
        ]);
        s.limb(foam, 6, 5, [
          [x + 44, 380],
          [x + 16, 420],
          [x + 34, 480],
        ]);
        s.nicks(shoal, [
          [x - 38, 340, x - 36, 470, 10],
          [x - 30, 510, x + 60, 520, 8],
        ]);
      }
      s.soft(foam, pts('462,430 470,374 502,348 534,374 542,430'));
      s.soft(glim, pts('480,400 490,372 502,364 496,400'));
      s.soft(lake, pts('448,430 556,430 542,482 502,500 462,482'));
      s.cut(lake, pts('488,494 516,494 526,522 552,538 452,540 478,522'));
      s.bar(foam, 456, 448, 548, 448, 10);
      s.bar(mist, 560, 538, 620, 440, 9);
      s.oval(mist, 626, 428, 17, 21);
      water(s, 666, [deep, night, ink]);
    },
  },
  {
    id: 'd010',
    draw: (s) => {
      s.ground(glim);
      for (const [y, x] of pts('90,-40 210,40 330,-60 440,20'))
        s.limb(foam, 16, 3, [
          [x, y],
          [x + 150, y - 24],
          [x + 300, y + 12],
          [x + 420, y - 16],
          [x + 440, y - 50],
          [x + 410, y - 54],
        ]);
      quay(s, 600, plank, paper, timber);
      s.limb(timber, 74, 40, pts('520,620 506,500 520,380'));
      s.limb(timber, 26, 10, pts('514,440 450,380 420,300'));
      s.soft(
        deep,
        pts(
          '380,330 356,240 410,170 470,100 560,90 640,130 690,220 680,340 610,410 500,420 420,400',
        ),
      );
      s.soft(lake, pts('410,250 450,170 540,130 600,170 560,240 470,300'));
      const caught: readonly (readonly [Hat, string, number, number, number])[] = [
        ['brim', rust, 440, 240, -14],
        ['cap', amber, 540, 180, 12],
        ['brim', ink, 600, 270, 18],
        ['cap', rust, 480, 350, -8],
        ['brim', foam, 560, 370, 8],
        ['brim', amber, 510, 280, -22],
      ];
      for (const [kind, color, x, y, turn] of caught)
        placedAt(s, x, y, 1, () => hat(s, kind, color, 0, 26, 40), turn);
      const blown: readonly (readonly [Hat, string, number, number, number])[] = [
        ['brim', ink, 90, 170, -30],
        ['cap', rust, 230, 300, 24],
        ['brim', rust, 290, 120, 40],
        ['brim', deep, 110, 430, -50],
        ['nightcap', lake, 290, 480, 16],
      ];
      for (const [kind, color, x, y, turn] of blown)
        placedAt(s, x, y, 1, () => hat(s, kind, color, 0, 40, 56), turn);
      s.nicks(
        timber,
        slits(
          '20,200,60,190,7 160,330,196,320,7 210,160,250,146,7 40,480,76,470,7 220,520,250,512,7',
        ),
      );
      water(s, 664, [shoal, lake, deep]);
    },
  },
];
