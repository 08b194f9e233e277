import { heron, moored } from './craft.js';
import { arm, coat } from './figures.js';
import { arc, pts, slits, trios } from './geometry.js';
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
import type { Nick, Sheet } from './sheet.js';
import { harlHead, hat, pimHead, placedAt, type Hat } from './story-people.js';
import { glow, lamp, rays } from './things.js';
import { nightWater, water } from './water.js';

/** An egg cup full of lamp oil, its foot at (x, y). */
function eggCup(
  s: Sheet,
  color: string,
  stripe: string,
  oil: string,
  x: number,
  y: number,
  k: number,
): void {
  const at = (list: string): Pt[] => pts(list).map(([px, py]): Pt => [x + px * k, y + py * k]);
  s.cut(color, at('-22,0 22,0 8,-18 8,-34 -8,-34 -8,-18'));
  s.soft(color, at('-36,-84 36,-84 32,-52 0,-30 -32,-52'));
  s.bar(stripe, x - 30 * k, y - 60 * k, x + 30 * k, y - 60 * k, 7 * k);
  s.oval(oil, x, y - 84 * k, 35 * k, 10 * k);
}

/** Somebody on the quay at night, looking up through the magistrate's spectacles. */
function stargazer(s: Sheet, cloth: string, brown: boolean, hatted: readonly [Hat, string]): void {
  const [skin, shade] = brown ? [plank, timber] : [clay, kiln];
  s.soft(cloth, pts('-116,300 -110,130 -60,92 60,92 110,130 116,300'));
  s.box(shade, -26, 56, 52, 56);
  hat(s, hatted[0], hatted[1], 0, -8, 90);
  s.oval(skin, 0, 0, 68, 80);
  s.cut(shade, [...arc(0, 0, 68, 80, -70, 88, 8), [-4, 40], [4, 4]]);
  for (const side of [-1, 1]) {
    s.oval(foam, side * 34, -26, 31, 33);
    s.ring(ink, side * 34, -26, 31, 33, 7);
    s.nicks(night, [
      [side * 34 - 10, -36, side * 34 + 10, -36, 7],
      [side * 34, -48, side * 34, -24, 7],
    ]);
  }
  s.ring(ink, 0, 42, 16, 12, 6, 20, 160);
}

/** How the town gets round the rule. */
export const storyDodge: readonly Picture[] = [
  {
    id: 's073',
    draw: (s) => {
      s.ground(night);
      s.hatch(lake, -30, -20, 700, 420, 30, 60, 70, 5);
      glow(s, 270, 236, 170);
      const steps: Pt[] = [];
      for (let i = 0; i < 7; i += 1)
        steps.push([700 - i * 112, 660 - i * 66], [588 - i * 112, 660 - i * 66]);
      s.cut(deep, [[700, 780], ...steps, [-90, 780]]);
      for (let i = 0; i < 7; i += 1)
        s.bar(shoal, 706 - i * 112, 664 - i * 66, 584 - i * 112, 662 - i * 66, 13);
      s.hatch(ink, -20, 430, 480, 250, 26, 0, 80, 6);
      s.bar(ink, 108, 320, 84, 392, 34);
      s.bar(ink, 160, 320, 178, 330, 34);
      coat(s, paper, plank, 130, 172, 72, 88, 164);
      s.cut(rust, pts('100,200 166,200 180,326 86,326'));
      placedAt(s, 132, 92, 0.8, () => harlHead(s, true, { mouth: 'smile' }), -8);
      arm(s, paper, clay, tar, pts('184,204 232,236 264,196'), 48, 38, 40);
      rays(s, glim, 278, 252, 48, 116, 18, 7);
      lamp(s, 276, 196, 88, true, ink);
      const eels = [
        { at: '262,350 300,362 330,410 392,420 420,470', of: ink },
        { at: '372,410 420,420 440,480 510,492 540,550', of: shoal },
        { at: '484,474 532,486 556,548 626,556 690,620', of: ink },
        { at: '602,544 640,560 660,610 720,650', of: tar },
        { at: '300,452 350,470 360,530 430,548 470,600', of: shoal },
        { at: '430,560 480,570 500,622 560,640 620,700', of: ink },
        { at: '190,350 214,392 262,420 300,480', of: lake },
      ] as const;
      for (const { at, of } of eels) {
        const line = pts(at);
        const [x, y] = line[0] ?? [0, 0];
        s.limb(of, 46, 6, line);
        s.oval(of, x - 4, y - 8, 34, 24);
        s.oval(glim, x - 14, y - 14, 8);
        s.oval(ink, x - 15, y - 14, 4);
      }
      water(s, 706, nightWater);
    },
  },
  {
    id: 's074',
    draw: (s) => {
      s.ground(tar);
      for (const [x, y, w] of trios(
        '-30,20,130 120,20,110 -40,84,80 60,84,130 -20,148,120 460,212,120 560,20,110 500,84,150 580,148,100 20,212,90',
      ))
        s.box(timber, x, y, w, 50);
      s.within({ opacity: 0.9 }, () => s.cut(kiln, pts('226,-40 470,-40 600,560 60,560')));
      s.within({ opacity: 0.9 }, () => s.cut(glim, pts('278,-40 420,-40 480,420 200,420')));
      s.box(ink, 210, -40, 24, 60);
      s.box(ink, 464, -40, 24, 60);
      for (const [i, y] of [330, 452, 590].entries()) {
        s.box(i === 1 ? plank : timber, -40, y, 720, 140);
        s.box(kiln, -40, y, 720, 16);
        s.nicks(tar, [
          [60 + i * 90, y + 40, 280 + i * 60, y + 42, 6],
          [340, y + 70, 600, y + 68, 6],
        ]);
      }
      const tones = [foam, shoal, rust, mist, lake, ember, foam, deep, paper] as const;
      trios(
        '150,334,0.76 232,336,0.76 314,334,0.76 396,336,0.76 478,334,0.76 110,458,0.96 214,460,0.96 318,458,0.96 422,460,0.96 58,598,1.2 184,600,1.2 310,598,1.2 436,600,1.2',
      ).forEach(([x, y, k], i) => {
        const color = tones[i % tones.length] ?? foam;
        eggCup(
          s,
          color,
          color === foam || color === paper ? rust : foam,
          i === 11 ? timber : amber,
          x,
          y,
          k,
        );
      });
      s.bar(amber, 560, 660, 596, 190, 22);
      s.bar(foam, 594, 216, 604, 100, 30);
      s.nicks(
        ink,
        Array.from({ length: 8 }, (_, i): Nick => [
          560 + i * 3,
          600 - i * 42,
          582 + i * 3,
          602 - i * 42,
          8,
        ]),
      );
      water(s, 690, [shoal, deep, night]);
    },
  },
  {
    id: 's075',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, -20, 700, 640, 50, 86, 80, 8);
      s.cut(kiln, pts('-40,590 680,570 680,760 -40,760'));
      s.hatch(plank, -30, 600, 700, 100, 24, 10, 30, 6);
      s.cut(tar, pts('446,-40 470,-40 474,640 444,650'));
      s.box(rust, 40, -60, 410, 706);
      for (const [x, y, h] of trios('84,-50,210 266,-50,210 84,210,190 266,210,190'))
        s.box(ember, x, y, 142, h);
      s.nicks(
        glim,
        slits(
          '110,0,110,130,7 210,20,210,120,7 110,240,110,370,7 400,240,400,370,7 300,10,300,90,7',
        ),
      );
      s.box(amber, 150, 440, 200, 54);
      s.cut(ink, pts('166,452 336,452 332,480 170,480'));
      s.oval(amber, 412, 344, 20);
      rays(s, foam, 206, 196, 64, 138, 16, 11);
      arm(s, amber, clay, ink, pts('-70,60 40,110 120,158'), 104, 76, 10);
      s.soft(clay, pts('120,150 160,132 210,140 236,176 232,224 190,246 140,230 112,196'));
      s.nicks(ink, slits('170,144,232,168,7 168,172,236,190,7 166,200,232,212,7'));
      s.soft(kiln, pts('136,206 170,196 196,214 176,238 142,230'));
      s.bar(ink, 566, 560, 560, 650, 40);
      s.bar(ink, 500, 560, 490, 650, 40);
      s.oval(ink, 476, 652, 36, 16);
      s.oval(ink, 546, 652, 36, 16);
      s.soft(rust, pts('478,470 520,396 580,392 626,450 632,580 560,600 470,590'));
      s.nicks(ember, slits('570,430,600,570,9 530,480,540,580,8'));
      placedAt(s, 440, 412, 1, () => pimHead(s, { mouth: 'oh' }), -22);
      arm(s, rust, plank, tar, pts('526,450 470,550 392,496'), 52, 42, 42);
      water(s, 694, [shoal, lake, deep]);
    },
  },
  {
    id: 's076',
    draw: (s) => {
      s.ground(ink);
      s.hatch(foam, -30, -20, 210, 330, 9, 0, 18, 5);
      s.hatch(foam, 350, 10, 300, 90, 6, 0, 18, 5);
      for (const [x, y, r] of trios('80,70,20 158,150,14 596,46,18 400,40,14 40,240,12'))
        rays(s, glim, x, y, 2, r, 8, 5);
      s.within({ opacity: 0.4 }, () =>
        moored(s, 300, 470, 0.98, () => heron(s, false, '#3a6a86', lake)),
      );
      const row = [
        { x: 60, y: 440, cloth: deep, brown: true, kind: 'brim', of: tar },
        { x: 234, y: 470, cloth: rust, brown: false, kind: 'scarf', of: amber },
        { x: 404, y: 446, cloth: lake, brown: true, kind: 'bun', of: foam },
        { x: 574, y: 474, cloth: plank, brown: false, kind: 'cap', of: rust },
      ] as const;
      row.forEach(({ x, y, cloth, brown, kind, of }, i) =>
        placedAt(
          s,
          x,
          y,
          1.04,
          () => stargazer(s, cloth, brown, [kind, of]),
          i % 2 === 0 ? -10 : 8,
        ),
      );
      s.box(timber, -40, 664, 720, 100);
      s.nicks(tar, slits('-40,682,680,680,6'));
      water(s, 700, [deep, night, ink]);
    },
  },
];
