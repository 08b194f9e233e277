import { arm } from './figures.js';
import { arc, pts, slits, trios } from './geometry.js';
import {
  amber,
  clay,
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
import {
  drayHead,
  harlHead,
  neighbour,
  placedAt,
  quillonHead,
  tamsinHead,
} from './story-people.js';
import { eel, water } from './water.js';

/** What the town did not hear, what it counts and what it draws. */
export const storyHearsay: readonly Picture[] = [
  {
    id: 's060',
    draw: (s) => {
      s.ground(night);
      s.oval(glim, 520, 116, 56);
      s.oval(night, 494, 104, 50);
      s.hatch(mist, -30, -10, 700, 260, 26, 80, 14, 5);
      s.box(timber, -40, 566, 720, 200);
      s.nicks(
        tar,
        slits(
          '-40,590,680,588,9 -40,640,680,642,9 90,590,88,640,7 300,590,302,640,7 520,590,518,640,7',
        ),
      );
      const sleepers = [
        { x: 66, cloth: foam, tilt: -14, head: () => harlHead(s, false, { mouth: 'level' }) },
        { x: 194, cloth: glim, tilt: 10, head: () => drayHead(s) },
        { x: 324, cloth: mist, tilt: 0, head: () => placedAt(s, 0, 6, 0.9, () => quillonHead(s)) },
      ];
      sleepers.forEach(({ x, cloth, tilt, head: own }, i) =>
        placedAt(s, x, 640 - (i % 2) * 18, 1.16, () =>
          neighbour(s, { cloth, fold: shoal, dark: 1, head: own, tilt, legs: clay }),
        ),
      );
      placedAt(s, 452, 622, 1.16, () =>
        neighbour(s, {
          cloth: paper,
          fold: plank,
          dark: 1,
          brown: true,
          hat: ['nightcap', rust],
          tilt: -22,
          legs: plank,
        }),
      );
      placedAt(s, 574, 640, 1.16, () =>
        neighbour(s, {
          cloth: foam,
          fold: shoal,
          dark: -1,
          hat: ['bun', timber],
          face: { eyes: 'shut' },
          tilt: 12,
          legs: clay,
        }),
      );
      eel(s, lake, pts('104,470 60,500 20,470 -30,520'), 20, glim);
      water(s, 690, [deep, night, ink]);
    },
  },
  {
    id: 's061',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, -20, 700, 300, 40, 0, 90, 8);
      s.soft(shoal, pts('120,640 200,380 320,240 470,180 600,190 720,260 720,660'));
      const stacks = trios(
        '330,250,1 386,214,1 446,192,1.1 506,184,1.3 570,190,1 624,206,1.1 280,330,1.1 342,330,1.2 410,296,1.2 476,290,1.1 540,290,1.3 604,306,1.2 300,420,1.3 376,410,1.3 450,396,1.4 526,400,1.3 600,412,1.4',
      );
      const block = (
        [x, y, k]: readonly [number, number, number],
        w: number,
        top: number,
        h: number,
      ): Pt[] => [
        [x - w * k, y + h * k],
        [x - w * k, y + top * k],
        [x + w * k, y + top * k],
        [x + w * k, y + h * k],
      ];
      s.cut(
        deep,
        ...stacks.map((p): Pt[] => [
          [p[0] - 34, p[1] + 84],
          [p[0] + 2, p[1] + 12],
          [p[0] + 36, p[1] + 84],
        ]),
      );
      s.cut(rust, ...stacks.filter((_, i) => i !== 3).map((p) => block(p, 10, -34, 40)));
      s.cut(ink, ...stacks.filter((_, i) => i !== 3).map((p) => block(p, 14, -44, -32)));
      s.bar(rust, 500, 196, 502, 118, 6);
      s.bar(rust, 518, 196, 514, 118, 6);
      s.soft(foam, pts('470,110 490,70 530,70 566,104 520,128'));
      s.soft(ink, pts('520,92 596,112 540,128 508,118'));
      s.limb(foam, 24, 16, pts('488,96 470,60 478,26 462,8'));
      s.oval(foam, 462, 8, 15);
      s.cut(rust, pts('452,0 396,22 454,18'));
      s.oval(ink, 458, 4, 4);
      s.cut(rust, pts('-40,520 680,580 680,760 -40,760'));
      for (let r = 0; r < 3; r += 1)
        for (let i = 0; i < 9; i += 1)
          s.ring(
            r % 2 === 0 ? ember : tar,
            0 + i * 84 - r * 40,
            540 + i * 7 + r * 48,
            40,
            30,
            7,
            0,
            180,
          );
      s.limb(ink, 44, 30, pts('60,520 -10,470 -20,380'));
      s.limb(tar, 52, 26, pts('100,520 40,480 50,392 30,370'));
      s.soft(amber, pts('-30,560 20,474 150,456 250,490 280,566 120,572'));
      s.nicks(timber, slits('20,520,180,500,9 60,552,200,540,8'));
      placedAt(
        s,
        262,
        404,
        1.1,
        () => {
          tamsinHead(s, { eyes: 'none', mouth: 'level' });
          s.oval(ink, -34, -3, 8, 11);
          s.nicks(ink, slits('14,-12,48,2,7 14,6,48,0,7'));
        },
        9,
      );
      arm(s, amber, clay, ink, pts('160,520 196,562 214,506'), 46, 40, 42);
      arm(s, amber, clay, ink, pts('280,540 352,560 396,470'), 46, 38, 40);
      s.bar(foam, 406, 446, 418, 402, 13);
      water(s, 700, [shoal, lake, night]);
    },
  },
  {
    id: 's062',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, -20, 700, 700, 60, 84, 90, 6);
      const peg = (
        x: number,
        y: number,
        turn: number,
        color: string,
        mark: string,
        dots: number,
      ): void =>
        placedAt(
          s,
          x,
          y,
          1,
          () => {
            s.cut(color, pts('-22,-40 22,-40 25,170 8,174 5,60 -5,60 -8,174 -25,170'));
            s.oval(color, 0, -62, 27, 29);
            s.nicks(tar, slits('-20,-36,20,-36,7'));
            for (let i = 0; i < dots; i += 1)
              s.nicks(mark, [[-14 + i * 9, -10, -14 + i * 9, 26, 6]]);
          },
          turn,
        );
      const colors = [paper, foam, plank, glim, foam, ember, glim];
      colors.forEach((color, i) =>
        peg(
          172 + i * 49,
          316 - (i % 2) * 34 + Math.abs(i - 3) * 8,
          -24 + i * 8,
          color,
          ink,
          (i % 4) + 1,
        ),
      );
      s.cut(timber, pts('130,360 506,360 466,740 170,740'));
      s.nicks(
        tar,
        slits(
          '190,368,214,730,8 254,368,266,730,8 318,368,318,730,8 382,368,370,730,8 446,368,424,730,8',
        ),
      );
      s.nicks(
        plank,
        slits(
          '158,390,180,560,6 224,420,236,600,6 288,400,290,560,6 350,440,346,620,6 414,400,402,560,6 478,396,458,540,6',
        ),
      );
      s.soft(ink, arc(318, 436, 186, 24, 0, 180).concat(arc(318, 402, 186, 22, 180, 0)));
      s.soft(ink, arc(318, 630, 158, 24, 0, 180).concat(arc(318, 598, 158, 22, 180, 0)));
      s.ring(shoal, 318, 390, 186, 150, 11, 8, 172);
      peg(470, 130, 20, foam, rust, 3);
      arm(s, rust, clay, ink, pts('700,-90 620,-20 546,44'), 96, 70, 82, true);
      water(s, 702, [shoal, lake, night]);
    },
  },
];
