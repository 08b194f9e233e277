import { grain } from './buildings.js';
import { arm } from './figures.js';
import { pts, slits } from './geometry.js';
import {
  ink,
  night,
  deep,
  lake,
  shoal,
  mist,
  foam,
  clay,
  kiln,
  amber,
  glim,
  tar,
  timber,
  plank,
  rust,
  ember,
  type Pt,
} from './palette.js';
import { crest, water, nightWater } from './water.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';

/** The work bench: a wall of tools over a thick top. */
function bench(s: Sheet, wall: string, y: number): void {
  s.ground(wall);
  s.box(timber, -40, y, 720, 60);
  grain(s, tar, -40, y, 720, 56, 2);
  s.box(tar, -40, y + 60, 720, 300);
  water(s, y + 130, nightWater);
}

/** How the models are made. */
export const makers: readonly Picture[] = [
  {
    id: 'be01',
    draw: (s) => {
      bench(s, mist, 604);
      s.hatch(foam, -30, 0, 700, 120, 14, 0, 90, 7);
      const curveY = (x: number): number => 30 * Math.sin(((x - 60) / 520) * Math.PI);
      s.soft(rust, pts('70,470 110,540 318,576 530,540 590,440 560,524 500,580 130,580'));
      const tones = [timber, plank, ember];
      for (let i = 0; i < 4; i += 1) {
        const y = 130 + i * 56;
        const [a, b] = [96 + i * 6, 524 - i * 8];
        const pts: Pt[] = [
          [a, y],
          [318, y + curveY(318)],
          [b, y - 10],
          [b - 8, y + 22],
          [318, y + 36 + curveY(318)],
          [a + 4, y + 34],
        ];
        s.soft(tones[i % 3] ?? timber, pts);
      }
      for (let i = 0; i < 5; i += 1) {
        const x = 146 + i * 86;
        s.limb(i % 2 === 0 ? tar : ink, 17, 13, [
          [x, 404 + Math.abs(i - 2) * 4],
          [x + 4, 470],
          [x + 24, 510],
          [x + 50, 516],
        ]);
      }
      s.soft(deep, pts('566,60 600,80 584,220 552,320 540,310 560,210'));
      s.nicks(
        foam,
        slits('130,150,330,184,5 150,262,400,296,5 130,320,280,348,5 150,548,420,570,6'),
      );
      s.lines(ink, 3, pts('62,150 62,500'), pts('54,150 70,150'), pts('54,500 70,500'));
      s.bar(amber, 40, 588, 210, 592, 15);
      s.cut(shoal, pts('430,600 580,600 560,578 470,580'));
    },
  },
  {
    id: 'be02',
    draw: (s) => {
      bench(s, amber, 610);
      s.hatch(glim, -30, 0, 700, 560, 40, 16, 70, 7);
      const top = crest(s, 430, 74, 16).filter(([x]) => x > 130 && x < 520);
      s.cut(lake, [...top, [532, 606], [104, 606]]);
      s.cut(shoal, [...top.map(([x, y]): Pt => [x + 3, y + 26]), [532, 520], [104, 530]]);
      s.nicks(
        foam,
        slits(
          '140,476,230,480,6 280,500,400,502,6 420,470,500,474,6 150,570,152,604,6 480,546,482,596,6',
        ),
      );
      s.soft(tar, pts('200,456 280,444 290,400 300,444 360,452 340,480 220,480'));
      s.cut(foam, pts('294,336 332,408 296,408'));
      s.limb(shoal, 30, 18, pts('356,246 402,300 410,380 406,450'));
      s.within({ transform: 'rotate(38 420 180)' }, () => {
        s.cut(foam, pts('340,96 520,96 500,270 362,270'));
        s.cut(foam, pts('344,100 310,86 350,150'));
        s.cut(shoal, pts('350,160 512,110 500,262 366,262'));
        s.ring(foam, 520, 180, 46, 54, 17, -80, 80);
        s.nicks(mist, slits('396,170,400,246,9 440,160,442,210,7'));
      });
      arm(s, rust, clay, ink, pts('690,300 640,300 570,262'), 78, 58, 62);
      s.bar(timber, 60, 604, 70, 440, 13);
      s.soft(ink, pts('56,440 84,440 82,390 70,366 58,392'));
    },
  },
  {
    id: 'be03',
    draw: (s) => {
      s.ground(night);
      s.hatch(deep, -30, -20, 700, 800, 40, 90, 70, 5);
      const tones = [clay, plank, timber, foam, kiln, ember, clay, timber, plank, foam];
      for (let r = 0; r < 10; r += 1) {
        const y = 62 + r * 66;
        const shapes: Pt[][] = [];
        for (let c = 0; c < 10; c += 1) {
          const x = 48 + c * 60;
          const m = (c + r) % 2 === 0 ? 1 : -1;
          shapes.push([
            [x - 7 * m, y + 46],
            [x - 12 * m, y + 24],
            [x - 24 * m, y + 12],
            [x - 17 * m, y + 8],
            [x - 11 * m, y + 14],
            [x - 10 * m, y - 6],
            [x - 3 * m, y + 10],
            [x, y - 10],
            [x + 4 * m, y + 10],
            [x + 11 * m, y - 4],
            [x + 12 * m, y + 26],
            [x + 7 * m, y + 46],
          ]);
        }
        s.cut(tones[r] ?? clay, ...shapes);
      }
      for (let r = 0; r < 10; r += 1) s.bar(tar, -40, 110 + r * 66, 680, 110 + r * 66, 9);
      water(s, 732, [lake, deep, ink]);
    },
  },
];
