import { blue } from './crew-boats.js';
import { pts, slits, trios } from './geometry.js';
import { medallion, profile, signatureStrip } from './keepsakes.js';
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
  rust,
  shoal,
  tar,
  timber,
} from './palette.js';
import type { Picture } from './scenes.js';
import { inside, mirrored, whiskers } from './signing-parts.js';
import { key, rays } from './things.js';
import { eel, sheetOfWater, water } from './water.js';

/** Signed medallions, four to eight. */
export const signings: readonly Picture[] = [
  {
    id: 'au04',
    draw: (s) => {
      s.ground(amber);
      rays(s, glim, 318, 280, 230, 560, 44, 11);
      medallion(s, 318, 276, 176, 206, rust, foam);
      inside(s, 318, 276, 176, 206, () => {
        whiskers(s, 318, 290, 1.24);
        sheetOfWater(s, lake, 446, 70, 10);
      });
      for (let i = 0; i < 7; i += 1) {
        const a = ((36 + i * 18) * Math.PI) / 180;
        const [x, y] = [318 + Math.cos(a) * 192, 282 + Math.sin(a) * 222];
        key(s, i % 2 === 0 ? ink : timber, x, y - 8, 84 + (i % 3) * 12, (i - 3) * -3);
      }
      water(s, 724, [shoal, lake, deep]);
      signatureStrip(s, 128, 620, 380);
    },
  },
  {
    id: 'au05',
    draw: (s) => {
      s.ground(lake);
      rays(s, shoal, 318, 310, 240, 560, 44, 11);
      medallion(s, 318, 310, 196, 232, glim, ember);
      inside(s, 318, 310, 196, 232, () => {
        for (const [x, y, r] of trios(
          '220,230,60 260,170,62 318,150,66 378,172,62 418,232,60 206,300,44 430,300,44',
        ))
          s.oval(ink, x, y, r);
        s.soft(tar, pts('120,560 150,450 250,412 276,380 360,380 386,412 486,450 520,560'));
        s.soft(tar, pts('236,250 244,180 318,150 392,180 400,250 388,340 318,410 248,340'));
        s.oval(tar, 232, 280, 17, 30);
        s.oval(tar, 404, 280, 17, 30);
        s.soft(amber, pts('200,448 250,420 318,470 386,420 436,448 400,500 318,520 236,500'));
        s.bar(foam, 170, 262, 252, 232, 21);
        s.bar(foam, 468, 256, 386, 226, 21);
        sheetOfWater(s, deep, 506, 70, 10);
      });
      water(s, 720, [shoal, deep, night]);
      signatureStrip(s, 128, 598, 380);
    },
  },
  {
    id: 'au06',
    draw: (s) => {
      s.ground(paper);
      rays(s, foam, 318, 310, 240, 560, 44, 11);
      for (const [x, y, turn] of trios(
        '70,110,-30 560,150,24 60,420,14 584,430,-24 92,640,40 556,600,-14 318,34,80',
      ))
        s.within({ transform: `translate(${x} ${y}) rotate(${turn})` }, () => {
          for (const r of [12, 24, 36]) s.ring(blue, 0, 0, r, r * 1.36, 6, 20 + r, 330 + r);
          s.nicks(blue, slits('-6,4,6,-10,6'));
        });
      medallion(s, 318, 310, 176, 216, blue, mist);
      inside(s, 318, 310, 176, 216, () => {
        mirrored(s, 318, () => {
          profile(s, timber, 318, 330, 1.24);
          s.oval(foam, 228, 230, 46, 44);
          s.soft(
            foam,
            pts('240,330 234,250 268,206 330,200 384,240 384,270 330,256 290,280 276,340'),
          );
          s.soft(rust, pts('230,440 300,424 366,446 380,500 250,520 200,480'));
          s.nicks(ember, slits('250,456,350,462,8 240,482,360,486,7'));
        });
        sheetOfWater(s, lake, 490, 70, 10);
      });
      water(s, 720, [shoal, lake, deep]);
      signatureStrip(s, 128, 598, 380);
    },
  },
  {
    id: 'au07',
    draw: (s) => {
      s.ground(ember);
      rays(s, rust, 318, 300, 160, 620, 46, 12);
      medallion(s, 318, 292, 138, 266, foam, deep);
      inside(s, 318, 292, 138, 266, () => {
        profile(s, ink, 310, 440, 0.84);
        s.cut(ink, pts('256,380 262,68 356,64 362,380'));
        s.cut(ink, pts('216,372 404,366 402,390 216,396'));
        s.bar(amber, 258, 344, 362, 340, 22);
        s.cut(foam, pts('256,520 318,548 350,510 360,540 318,590 250,560'));
        sheetOfWater(s, lake, 526, 60, 9);
      });
      water(s, 724, [shoal, lake, night]);
      signatureStrip(s, 128, 606, 380);
    },
  },
  {
    id: 'au08',
    draw: (s) => {
      s.ground(glim);
      rays(s, foam, 318, 310, 240, 560, 44, 12);
      medallion(s, 318, 310, 196, 232, deep, shoal);
      inside(s, 318, 310, 196, 232, () => {
        eel(s, ink, pts('236,190 176,210 150,280 190,350 150,420 176,500'), 44, glim);
        profile(s, rust, 340, 330, 1.3);
        s.soft(tar, pts('256,330 250,250 300,200 380,206 418,260 400,280 350,256 310,280 290,350'));
        s.soft(tar, pts('376,362 430,356 470,378 440,392 384,388'));
        s.soft(foam, pts('240,478 330,450 400,470 440,520 230,530'));
        s.limb(ink, 36, 30, pts('130,430 170,470 240,480 300,470'));
        sheetOfWater(s, lake, 506, 70, 10);
      });
      water(s, 720, [shoal, lake, deep]);
      signatureStrip(s, 128, 598, 380);
    },
  },
];
