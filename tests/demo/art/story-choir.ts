import { boards, grain } from './buildings.js';
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
import { hat, pimHead, placedAt, type Hat } from './story-people.js';
import { rays } from './things.js';
import { water } from './water.js';

/** A slice of toast standing in a rack, its foot at (x, y). */
function toast(s: Sheet, x: number, y: number, k: number): void {
  s.soft(plank, [
    [x - 34 * k, y],
    [x - 36 * k, y - 50 * k],
    [x - 44 * k, y - 76 * k],
    [x, y - 92 * k],
    [x + 44 * k, y - 76 * k],
    [x + 36 * k, y - 50 * k],
    [x + 34 * k, y],
  ]);
  s.soft(glim, [
    [x - 24 * k, y - 8 * k],
    [x - 26 * k, y - 54 * k],
    [x, y - 78 * k],
    [x + 26 * k, y - 54 * k],
    [x + 24 * k, y - 8 * k],
  ]);
}

/** A singer from the shoulders up: a plain face with its mouth wide open. */
function singer(s: Sheet, cloth: string, brown: boolean, hatted: readonly [Hat, string]): void {
  const [skin, shade] = brown ? [plank, timber] : [clay, kiln];
  s.soft(cloth, pts('-130,220 -124,130 -70,86 70,86 124,130 130,220'));
  s.box(shade, -24, 50, 48, 60);
  s.oval(skin, 0, 0, 66, 82);
  s.cut(shade, [...arc(0, 0, 66, 82, -88, 88, 6), [-4, 34], [-22, 20], [-2, -16]]);
  s.ring(ink, -30, -14, 13, 10, 6, 200, 340);
  s.ring(ink, 30, -14, 13, 10, 6, 200, 340);
  s.oval(ink, 0, 46, 20, 25);
  hat(s, hatted[0], hatted[1], 0, 0, 72);
}

/** A small palm held up, with four fingers and no thumb. */
function fourFingers(s: Sheet, x: number, y: number, side: 1 | -1): void {
  s.oval(plank, x, y, 21, 20);
  const tips: readonly Pt[] = pts('-24,-40 -9,-50 8,-50 23,-40');
  for (const [dx, dy] of tips) s.bar(plank, x + dx * 0.62, y - 8, x + dx + side * 4, y + dy, 10);
}

/** Breakfast, choir practice and the weather. */
export const storyChoir: readonly Picture[] = [
  {
    id: 's070',
    draw: (s) => {
      s.ground(deep);
      boards(s, -40, -40, 720, 520, 7, deep, night, lake);
      s.soft(tar, arc(480, 152, 94, 94, 0, 360, 22));
      s.soft(glim, arc(480, 152, 74, 74, 0, 360, 22));
      s.oval(amber, 458, 170, 34);
      s.bar(tar, 480, 76, 480, 230, 9);
      s.bar(tar, 404, 152, 556, 152, 9);
      s.cut(tar, pts('122,130 292,124 304,470 112,470'));
      s.nicks(timber, slits('150,146,146,440,8 206,146,206,200,8 266,142,272,440,8'));
      coat(s, ink, night, 206, 356, 104, 124, 200);
      s.cut(foam, pts('178,352 206,366 234,352 228,430 206,412 184,430'));
      s.within({ transform: 'rotate(-16 206 280)' }, () => {
        s.oval(kiln, 136, 262, 17, 20);
        s.oval(kiln, 276, 262, 17, 20);
        s.oval(kiln, 206, 258, 66, 76);
        s.soft(timber, pts('138,250 142,192 206,160 270,192 274,250 206,196'));
        s.cut(foam, pts('206,190 306,282 254,338 206,402 158,338 106,282'));
        s.lines(rust, 7, pts('206,212 280,284 206,378 132,284 206,212'));
        s.nicks(mist, slits('204,244,198,296,12 176,290,160,316,8 236,290,252,316,8'));
        s.nicks(paper, slits('184,316,228,316,9'));
      });
      s.cut(foam, pts('56,446 590,440 700,760 -60,760'));
      s.nicks(mist, slits('80,470,560,466,7 120,560,70,690,9 540,560,580,690,9'));
      for (const [x, y, k] of trios('356,470,0.66 418,470,0.66 480,470,0.66')) toast(s, x, y, k);
      s.bar(ink, 318, 476, 520, 474, 9);
      for (const [x, y, k] of trios('40,640,1.1 138,648,1.1 236,654,1.1')) toast(s, x, y, k);
      s.bar(ink, 14, 660, 300, 668, 12);
      s.cut(amber, pts('404,566 506,564 512,672 398,672'));
      s.box(foam, 394, 546, 122, 26);
      s.box(rust, 420, 600, 74, 40);
      s.nicks(glim, slits('414,580,410,664,10'));
      s.soft(mist, pts('306,560 344,552 382,560 344,570'));
      arm(s, ink, kiln, tar, pts('280,400 330,450 300,500'), 56, 42, 46);
      water(s, 702, [shoal, lake, night]);
    },
  },
  {
    id: 's071',
    draw: (s) => {
      s.ground(amber);
      rays(s, glim, 318, 250, 150, 620, 30, 12);
      for (const side of [-1, 1] as const) {
        s.limb(rust, 46, 34, [
          [318 + side * 40, 300],
          [318 + side * 104, 250],
          [318 + side * 106, 150],
        ]);
        s.bar(ember, 318 + side * 126, 172, 318 + side * 88, 170, 15);
        fourFingers(s, 318 + side * 106, 126, side);
      }
      s.soft(rust, pts('246,400 252,300 318,270 384,300 390,400'));
      placedAt(s, 318, 196, 0.8, () => pimHead(s, { mouth: 'oh' }));
      const back = [
        { x: 110, y: 348, cloth: night, brown: true, kind: 'brim', of: ink },
        { x: 526, y: 344, cloth: timber, brown: false, kind: 'scarf', of: ember },
        { x: 318, y: 420, cloth: deep, brown: true, kind: 'bun', of: foam },
      ] as const;
      const front = [
        { x: 96, y: 560, cloth: lake, brown: false, kind: 'curls', of: rust },
        { x: 540, y: 556, cloth: rust, brown: true, kind: 'cap', of: night },
        { x: 318, y: 610, cloth: paper, brown: false, kind: 'bun', of: tar },
      ] as const;
      [...back, ...front].forEach(({ x, y, cloth, brown, kind, of }, i) =>
        placedAt(
          s,
          x,
          y,
          i < 3 ? 0.98 : 1.1,
          () => singer(s, cloth, brown, [kind, of]),
          (x - 318) / -22,
        ),
      );
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 's072',
    draw: (s) => {
      s.ground(plank);
      grain(s, timber, -40, -20, 720, 740, 11);
      s.within({ transform: 'rotate(-7 318 400)' }, () => {
        s.cut(tar, pts('34,150 318,172 606,150 618,640 318,662 24,640'));
        s.cut(paper, pts('50,144 130,128 240,138 318,166 318,646 240,622 130,612 42,626'));
        s.cut(foam, pts('592,144 510,128 400,138 318,166 318,646 400,622 510,612 600,626'));
        s.limb(plank, 12, 12, pts('318,166 320,400 318,638'));
        const lines: Nick[] = [];
        for (let i = 0; i < 12; i += 1) {
          const y = 186 + i * 34;
          lines.push(
            [112, y, s.rand(190, 230), y + 4, 8],
            [s.rand(234, 244), y + 5, i % 4 === 3 ? 252 : 292, y + 12, 8],
          );
        }
        s.nicks(ink, lines);
        const drops: Nick[] = [];
        for (let i = 0; i < 12; i += 1)
          for (let k = 0; k <= i % 3; k += 1)
            drops.push([70 + k * 11, 176 + i * 34, 64 + k * 11, 196 + i * 34, 7]);
        s.nicks(lake, drops);
        s.nicks(ink, slits('356,190,460,182,8'));
        s.soft(ink, pts('438,330 462,322 484,338 488,362 466,380 440,374 428,352'));
        s.oval(ink, 500, 392, 5);
        s.oval(ink, 422, 386, 4);
      });
      s.limb(shoal, 6, 58, pts('470,420 520,330 566,220 600,60'));
      s.nicks(foam, slits('500,372,588,120,6'));
      s.bar(ink, 458, 444, 474, 412, 8);
      s.cut(ink, pts('60,56 150,50 164,130 46,136'));
      s.soft(night, arc(104, 54, 44, 14));
      s.nicks(shoal, slits('66,72,60,120,9'));
      water(s, 708, [shoal, lake, deep]);
    },
  },
];
