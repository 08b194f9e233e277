import { heron, moored } from './craft.js';
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
  topper,
  type Pt,
} from './palette.js';
import { arc, pts, trios, slits } from './geometry.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';
import { boards, gate, house, town } from './buildings.js';
import { glow, lamp, rays, seal } from './things.js';
import { glitter, nightWater, ripples, sheetOfWater, water } from './water.js';

/** The far shore at night, the ground of every signal. */
function nightShore(s: Sheet, sky: string, hills: string): void {
  s.ground(sky);
  s.hatch(hills, -30, 0, 700, 460, 50, 0, 90, 5);
  s.soft(hills, pts('-60,560 60,470 180,500 300,440 460,500 580,450 700,500 700,720 -60,720'));
  town(s, -50, 680, 600, 40, 90, ink, ink, null);
  water(s, 596, nightWater);
}

/** A folded letter with its seal, wet at the edges. */
function letter(s: Sheet, x: number, y: number, turn: number, k: number): void {
  s.within({ transform: `translate(${x} ${y}) rotate(${turn}) scale(${k})` }, () => {
    s.cut(foam, pts('-170,-110 170,-116 178,104 60,118 -174,112'));
    s.cut(paper, pts('-170,-110 170,-116 10,30'));
    s.nicks(plank, slits('-166,106,-26,4,5 170,98,40,6,5 -168,-108,8,30,5 168,-114,12,30,5'));
    s.within({ opacity: 0.55 }, () =>
      s.soft(shoal, pts('-178,116 -174,62 -110,80 -40,64 40,88 110,60 182,76 182,116')),
    );
    seal(s, rust, glim, 6, 26, 50);
  });
}

/** Signals, letters, promos, the gate and the topper. */
export const inserts: readonly Picture[] = [
  {
    id: 'si01',
    draw: (s) => {
      nightShore(s, ink, night);
      for (const [x, y] of pts('122,290 252,290')) {
        glow(s, x, y, 74);
        s.oval(amber, x, y, 36);
        s.oval(glim, x, y, 20);
        rays(s, glim, x, y, 44, 78, 14, 7);
        glitter(s, amber, x, 620, 110, 60);
      }
      s.within({ transform: 'translate(446 290) scale(2 1)' }, () => glow(s, 0, 0, 74));
      s.soft(amber, pts('340,290 356,256 446,250 536,256 556,290 536,324 446,330 356,324'));
      s.soft(glim, pts('364,290 446,272 532,290 446,308'));
      s.nicks(
        glim,
        slits(
          '350,246,340,214,7 400,240,394,206,7 446,238,446,202,7 496,240,502,206,7 542,246,554,214,7 350,336,340,368,7 400,340,394,374,7 446,342,446,378,7 496,340,502,374,7 542,336,554,368,7',
        ),
      );
      glitter(s, amber, 446, 620, 110, 200);
    },
  },
  {
    id: 'si02',
    draw: (s) => {
      nightShore(s, night, deep);
      s.bar(tar, 318, 640, 318, 60, 20);
      s.bar(tar, 240, 80, 396, 80, 14);
      s.bar(tar, 250, 336, 386, 336, 12);
      for (const y of [90, 344]) {
        glow(s, 318, y + 110, 140);
        rays(s, glim, 318, y + 110, 86, 160, 22, 8);
        lamp(s, 318, y, 150, true, ink);
      }
      glitter(s, amber, 318, 620, 130, 110);
    },
  },
  {
    id: 'si03',
    draw: (s) => {
      nightShore(s, ink, '#182d47');
      s.bar('#0c1728', -40, 96, 680, 90, 24);
      s.bar('#0c1728', 318, 96, 318, 170, 10);
      lamp(s, 318, 160, 290, false, '#0c1728');
      s.limb(mist, 11, 3, pts('366,250 392,214 374,176 410,140 396,60 430,-10'));
      s.nicks(lake, slits('240,320,232,440,9 262,300,258,360,6'));
      s.nicks(lake, slits('60,330,170,332,6 460,420,580,420,6 96,440,160,440,5 490,260,570,262,5'));
    },
  },
  {
    id: 'le01',
    draw: (s) => {
      s.ground(lake);
      boards(s, -40, -40, 720, 700, 5, deep, night, lake);
      const steps: Pt[] = pts('-40,620');
      for (let i = 0; i < 7; i += 1)
        steps.push([-40 + i * 104, 560 - i * 92], [64 + i * 104, 560 - i * 92]);
      s.cut(timber, [...steps, [700, -60], [700, 60], [20, 700], [-40, 700]]);
      for (let i = 0; i < 7; i += 1) {
        s.bar(plank, -46 + i * 104, 560 - i * 92, 78 + i * 104, 558 - i * 92, 17);
        s.nicks(tar, [[-36 + i * 104, 578 - i * 92, -34 + i * 104, 640 - i * 92, 6]]);
      }
      s.cut(ink, pts('20,700 700,76 700,720'));
      s.hatch(night, 330, 420, 320, 260, 20, -42, 70, 6);
      sheetOfWater(s, shoal, 650, 90, 11);
      letter(s, 402, 560, -8, 1);
      water(s, 668, [shoal, deep, night]);
    },
  },
  {
    id: 'le02',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, -20, 700, 720, 60, 90, 80, 8);
      s.cut(tar, pts('150,130 318,40 486,130 500,740 136,740'));
      s.cut(timber, pts('178,146 318,74 458,146 468,740 168,740'));
      s.oval(foam, 318, 224, 112);
      s.ring(tar, 318, 224, 112, 112, 13);
      for (let i = 0; i < 12; i += 1) {
        const a = (i * Math.PI) / 6;
        s.nicks(ink, [
          [
            318 + Math.cos(a) * 78,
            224 + Math.sin(a) * 78,
            318 + Math.cos(a) * 98,
            224 + Math.sin(a) * 98,
            9,
          ],
        ]);
      }
      s.lines(ink, 11, pts('318,224 318,156'), pts('318,224 276,250'));
      s.oval(rust, 318, 224, 11);
      s.cut(ink, pts('206,370 430,370 436,740 200,740'));
      s.bar(amber, 318, 370, 324, 440, 8);
      letter(s, 320, 560, 80, 0.78);
      s.nicks(plank, slits('190,370,186,640,6 448,370,454,660,6'));
      s.nicks(mist, slits('150,690,230,692,7 420,676,500,680,7'));
      water(s, 690, [shoal, lake, deep]);
    },
  },
  {
    id: 'ng01',
    draw: (s) => {
      s.ground(ink);
      s.cut(glim, pts('170,-40 466,-40 440,640 196,640'));
      s.cut(foam, pts('236,-40 400,-40 378,640 258,640'));
      rays(s, amber, 318, 470, 120, 620, 40, 13);
      s.oval(foam, 318, 470, 110);
      s.oval(glim, 318, 470, 80);
      s.cut(night, pts('-40,-40 60,-40 80,700 -40,700'));
      s.cut(night, pts('680,-40 576,-40 556,700 680,700'));
      s.cut(deep, pts('50,-40 196,30 214,606 64,700'));
      s.cut(deep, pts('586,-40 440,30 422,606 572,700'));
      for (const t of [0.12, 0.4, 0.68, 0.93]) {
        s.bar(ink, 54 + 12 * t, 740 * t - 40, 198 + 14 * t, 40 + 570 * t, 26);
        s.bar(ink, 582 - 12 * t, 740 * t - 40, 438 - 14 * t, 40 + 570 * t, 26);
      }
      s.nicks(
        lake,
        slits(
          '86,80,92,200,8 126,120,132,260,8 166,90,174,230,8 550,80,544,200,8 510,120,504,260,8 470,90,462,230,8 100,420,106,560,8 150,400,156,520,8 536,420,530,560,8 486,400,480,520,8',
        ),
      );
      s.nicks(glim, slits('196,34,214,604,10 440,34,422,604,10'));
      sheetOfWater(s, amber, 596, 70, 9);
      s.limb(ink, 15, 4, pts('270,612 318,622 372,606'));
      s.bar(ink, 318, 612, 320, 572, 10);
      s.oval(ink, 320, 564, 8);
      water(s, 640, [lake, deep, ink]);
      glitter(s, glim, 318, 612, 150, 240);
    },
  },
  {
    id: 'pr01',
    draw: (s) => {
      s.ground(rust);
      s.oval(amber, 200, 200, 120);
      rays(s, ember, 200, 200, 130, 500, 38, 11);
      s.nicks(foam, slits('420,90,452,108,9 452,108,484,88,9 490,150,516,164,8 516,164,542,148,8'));
      sheetOfWater(s, ember, 560, 120, 12);
      moored(s, 252, 620, 0.9, () => heron(s, true, ink, shoal), -6);
      s.soft(foam, pts('470,640 500,600 540,590 526,622 580,612 560,650 480,668'));
      s.nicks(foam, slits('-30,636,120,622,13 -20,660,90,650,10 430,640,520,600,12'));
      water(s, 622, [shoal, lake, deep]);
    },
  },
  {
    id: 'pr02',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, 0, 700, 600, 60, 78, 70, 6);
      town(s, -50, 680, 610, 120, 220, night, ink, ink);
      s.limb(tar, 10, 10, pts('-40,110 120,160 318,176 516,160 680,110'));
      for (const [x, y, k] of trios('66,142,1 192,166,1.12 318,174,1.2 444,166,1.12 570,142,1')) {
        lamp(s, x, y, 92 * k, false, ink);
        s.limb(mist, 7, 2, [
          [x, y + 6],
          [x - 9, y - 30],
          [x + 10, y - 58],
          [x - 4, y - 96],
        ]);
      }
      water(s, 610, nightWater);
    },
  },
  {
    id: 'fp01',
    format: topper,
    draw: (s) => {
      s.ground(ember);
      s.hatch(amber, -60, -40, 1400, 560, 12, 2, 280, 17);
      s.soft(amber, arc(880, 420, 190, 190, 0, 360, 26));
      const tiers: (readonly [number, number, number])[] = trios(
        '620,420,0.62 500,520,0.7 660,626,0.78 470,738,0.88 690,856,0.98 440,980,1.1 700,1108,1.2 410,1244,1.34 690,1400,1.5',
      );
      tiers.forEach(([x, y, k], i) => {
        const wall = i % 2 === 0 ? timber : tar;
        const homes = i % 2 === 0 ? [x - 270 * k, x + 300 * k] : [x - 300 * k, x + 330 * k];
        for (const hx of i < 2 ? [] : homes)
          house(
            s,
            hx,
            y + 90 * k,
            104 * k,
            104 * k,
            i % 3 === 0 ? night : i % 3 === 1 ? plank : deep,
            ink,
            glim,
            1,
          );
        s.cut(wall, [
          [-60, y + 84 * k],
          [1340, y + 80 * k],
          [1340, y + 250 * k],
          [-60, y + 250 * k],
        ]);
        s.cut(shoal, [
          [x - 60 * k, y + 150 * k],
          [x + 200 * k, y + 150 * k],
          [x + 230 * k, y + 250 * k],
          [x - 90 * k, y + 250 * k],
        ]);
        gate(s, x, y, 140 * k, 150 * k, i % 2 === 0 ? lake : deep, ink, mist);
      });
      sheetOfWater(s, lake, 1560, 190, 26);
      sheetOfWater(s, deep, 1620, 240, 30);
      ripples(s, shoal, 1650, 130, 8, 190);
      glitter(s, glim, 770, 1570, 140, 220);
    },
  },
];
