import { pts, slits, trios } from './geometry.js';
import { medallion, profile, relic, signatureStrip } from './keepsakes.js';
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
  plank,
  rust,
  shoal,
  tar,
  timber,
  type Pt,
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Sheet } from './sheet.js';
import { inside, mirrored, whiskers } from './signing-parts.js';
import { rays } from './things.js';
import { sheetOfWater, water } from './water.js';

/** Wood that has stood in the rain, and the shade in its grain. */
const weathered = '#8a9c9a';
const slate = '#54656b';

/** A length of drainpipe with an elbow and two collars, its mouth at (x, y). */
function drainpipe(s: Sheet, x: number, y: number, k: number): void {
  const at = (text: string): Pt[] => pts(text).map(([px, py]): Pt => [x + px * k, y + py * k]);
  s.limb(shoal, 62 * k, 62 * k, at('-70,-300 -70,-120 -60,-40 -20,0 40,4'));
  s.nicks(mist, [
    [x - 86 * k, y - 260 * k, x - 86 * k, y - 80 * k, 10 * k],
    [x - 70 * k, y - 30 * k, x - 20 * k, y - 10 * k, 8 * k],
  ]);
  s.bar(deep, x - 108 * k, y - 190 * k, x - 32 * k, y - 190 * k, 26 * k);
  s.bar(deep, x - 104 * k, y - 84 * k, x - 28 * k, y - 92 * k, 22 * k);
  s.cut(deep, at('26,-40 58,-44 58,50 26,46'));
  s.oval(ink, x + 58 * k, y + 3 * k, 17 * k, 44 * k);
}

/** Rings of a sound that leaves to the right. */
function sound(s: Sheet, color: string, x: number, y: number, k: number): void {
  for (const r of [50, 84, 118]) s.ring(color, x, y, r * k, r * k, 8 * k, -38, 38);
}

/** Signed medallions, nine to twelve, and two more slivers. */
export const signingsLast: readonly Picture[] = [
  {
    id: 'au09',
    draw: (s) => {
      s.ground(ink);
      rays(s, night, 318, 310, 240, 560, 44, 12);
      medallion(s, 318, 310, 196, 232, amber, tar);
      inside(s, 318, 310, 196, 232, () => {
        sound(s, glim, 360, 330, 1);
        drainpipe(s, 300, 330, 1.1);
        sheetOfWater(s, lake, 484, 70, 10);
      });
      water(s, 720, [lake, deep, night]);
      signatureStrip(s, 128, 598, 380);
    },
  },
  {
    id: 'au10',
    draw: (s) => {
      s.ground(mist);
      rays(s, foam, 250, 300, 120, 640, 44, 12);
      medallion(s, 232, 280, 168, 214, rust, glim);
      medallion(s, 516, 420, 78, 96, lake, foam);
      inside(s, 232, 280, 168, 214, () => {
        profile(s, timber, 226, 300, 1.2);
        for (const [x, y, r] of trios(
          '160,280,44 156,220,46 200,172,48 262,170,44 300,210,36 150,340,36',
        ))
          s.oval(tar, x, y, r);
        s.bar(foam, 150, 234, 306, 214, 21);
        s.bar(plank, 128, 150, 184, 260, 13);
        s.oval(plank, 120, 134, 22, 27);
        sheetOfWater(s, lake, 454, 66, 9);
      });
      inside(s, 516, 420, 78, 96, () => {
        mirrored(s, 516, () => {
          profile(s, deep, 512, 430, 0.56);
          s.soft(tar, pts('474,430 470,392 512,374 548,394 548,410 510,406 496,440'));
          s.oval(tar, 462, 402, 17, 17);
          s.bar(rust, 474, 396, 482, 412, 8);
        });
        sheetOfWater(s, shoal, 496, 40, 6);
      });
      water(s, 720, [shoal, lake, deep]);
      signatureStrip(s, 60, 556, 270);
      signatureStrip(s, 330, 640, 250);
    },
  },
  {
    id: 'au11',
    draw: (s) => {
      s.ground(night);
      rays(s, lake, 318, 300, 120, 620, 44, 11);
      medallion(s, 152, 300, 112, 160, amber, mist);
      medallion(s, 484, 300, 112, 160, shoal, ink);
      inside(s, 152, 300, 112, 160, () => {
        whiskers(s, 146, 310, 0.92);
        sheetOfWater(s, lake, 428, 56, 8);
      });
      inside(s, 484, 300, 112, 160, () => {
        mirrored(s, 484, () => {
          sound(s, glim, 506, 310, 0.7);
          drainpipe(s, 478, 310, 0.74);
        });
        sheetOfWater(s, lake, 428, 56, 8);
      });
      s.box(rust, 278, -40, 80, 790);
      for (let r = 0; r < 12; r += 1) {
        const y = -20 + r * 62;
        s.nicks(tar, [
          [274, y, 362, y + 2, 8],
          [r % 2 === 0 ? 318 : 296, y, r % 2 === 0 ? 319 : 296, y + 60, 7],
        ]);
      }
      s.nicks(
        ember,
        slits('286,60,350,62,9 284,250,310,250,9 326,316,352,316,9 284,500,350,500,9'),
      );
      water(s, 720, [lake, deep, ink]);
      signatureStrip(s, 26, 540, 250);
      signatureStrip(s, 362, 620, 250);
    },
  },
  {
    id: 'au12',
    draw: (s) => {
      s.ground(deep);
      rays(s, lake, 318, 240, 120, 640, 44, 12);
      const hats = [
        {
          at: [122, 330],
          rim: amber,
          field: ember,
          hang: (): void => {
            s.cut(foam, pts('-74,44 -56,-24 56,-24 74,44'));
            s.nicks(shoal, slits('-64,12,64,12,9 -70,32,70,32,9'));
          },
        },
        {
          at: [318, 222],
          rim: rust,
          field: glim,
          hang: (): void => {
            s.cut(ink, pts('-70,20 -46,-36 44,-36 70,8 106,22 98,36 -72,34'));
            s.nicks(night, slits('-36,-22,-50,12,7 10,-24,14,14,7'));
          },
        },
        {
          at: [514, 330],
          rim: amber,
          field: mist,
          hang: (): void => {
            s.cut(tar, pts('-48,20 -38,-40 38,-40 48,20 84,28 82,44 -82,44 -84,28'));
            s.bar(glim, -46, 12, 46, 12, 13);
          },
        },
      ] as const;
      hats.forEach(({ at: [x, y], rim, field, hang }, i) => {
        medallion(s, x, y, 84, 124, rim, field);
        s.bar(timber, x - 34, y - 74, x + 34, y - 74, 30);
        s.oval(plank, x, y - 56, 21, 20);
        s.nicks(clay, [[x - 10, y - 62, x + 4, y - 68, 6]]);
        s.within(
          {
            transform: `translate(${x} ${y}) rotate(${i === 1 ? -8 : 9}) scale(${i === 1 ? 0.84 : 1})`,
          },
          hang,
        );
      });
      water(s, 724, [shoal, lake, night]);
      signatureStrip(s, 30, 520, 196);
      signatureStrip(s, 410, 530, 196);
      signatureStrip(s, 216, 630, 206);
    },
  },
  {
    id: 're05',
    draw: (s) =>
      relic(s, shoal, deep, glim, clay, kiln, (t) => {
        t.ring(plank, 322, 440, 46, 50, 9);
        for (const [x, y, r] of trios('402,340,19 410,366,20 408,394,19')) t.oval(ink, x, y, r);
        t.cut(tar, pts('288,214 292,164 336,164 340,214'));
        t.box(tar, 284, 152, 60, 14);
        t.limb(foam, 13, 30, pts('314,148 300,132 330,122 400,136 440,122'));
      }),
  },
  {
    id: 're06',
    draw: (s) =>
      relic(s, mist, night, ember, tar, tar, (t) => {
        t.cut(ink, pts('216,250 420,244 428,610 210,614'));
        t.cut(weathered, pts('262,330 384,330 390,470 380,592 330,580 250,598 258,470'));
        t.nicks(
          slate,
          slits(
            '278,380,274,570,6 300,400,304,560,5 326,380,324,566,6 350,400,352,570,5 370,380,368,560,6',
          ),
        );
        t.soft(mist, pts('244,330 244,282 300,272 392,276 404,304 392,344 300,350'));
        t.nicks(weathered, slits('256,300,370,292,6 262,318,374,312,6 258,336,370,334,5'));
        t.oval(slate, 390, 310, 20, 34);
        t.ring(mist, 390, 310, 10, 19, 6);
        t.soft(rust, pts('276,212 272,180 290,158 320,154 348,160 364,182 360,212'));
        t.limb(rust, 15, 9, pts('360,192 382,184 392,164'));
        t.ring(ember, 318, 160, 34, 28, 7, 190, 350);
        t.oval(ember, 318, 150, 6);
      }),
  },
];
