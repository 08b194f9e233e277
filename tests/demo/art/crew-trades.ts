import { launch, moored } from './craft.js';
import { oarSock } from './crew-boats.js';
import { arm, brows, coat, hand, head } from './figures.js';
import { arc, pts, slits } from './geometry.js';
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
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Nick, Sheet } from './sheet.js';
import { hat, placedAt } from './story-people.js';
import { glow, rays } from './things.js';
import { glitter, nightWater, sheetOfWater, water } from './water.js';

/** A candle with its foot at (x, y); a used one has a run of wax and a burnt wick. */
function candle(s: Sheet, color: string, x: number, y: number, w: number, h: number): void {
  s.bar(ink, x, y - h, x + 3, y - h - 16, 5);
  s.cut(color, [
    [x - w / 2, y],
    [x - w / 2, y - h],
    [x + w / 2, y - h + 5],
    [x + w / 2, y],
  ]);
}

/** The cheese that travels as somebody’s mother. */
function cheeseMother(s: Sheet, x: number, y: number, r: number): void {
  s.oval(foam, x, y - r * 0.1, r * 1.24, r * 1.26);
  for (const [px, py] of arc(x, y - r * 0.1, r * 1.2, r * 1.22, 150, 390, 13))
    s.oval(foam, px, py, r * 0.2);
  s.oval(amber, x, y, r, r * 1.02);
  s.nicks(glim, [[x - r * 0.74, y + r * 0.2, x - r * 0.34, y - r * 0.72, r * 0.16]]);
  for (const [px, py, k] of [
    [0.3, -0.4, 0.17],
    [-0.3, 0.12, 0.13],
    [0.42, 0.3, 0.11],
    [-0.12, -0.54, 0.09],
  ] as const)
    s.oval(kiln, x + px * r, y + py * r, k * r, k * r * 0.86);
  s.cut(rust, [
    [x, y + r * 1.02],
    [x - r * 0.5, y + r * 0.8],
    [x - r * 0.46, y + r * 1.36],
  ]);
  s.cut(rust, [
    [x, y + r * 1.02],
    [x + r * 0.5, y + r * 0.8],
    [x + r * 0.46, y + r * 1.36],
  ]);
}

/** A teacher, a chandler, a smuggler and his boat. */
export const crewTrades: readonly Picture[] = [
  {
    id: 'c027',
    draw: (s) => {
      s.ground(paper);
      s.hatch(plank, -30, -20, 700, 760, 34, 90, 90, 5);
      s.cut(timber, pts('40,40 606,28 616,520 30,534'));
      s.cut(night, pts('66,64 582,54 590,496 58,508'));
      s.hatch(ink, 80, 80, 490, 260, 26, -30, 90, 7);
      const blades: Nick[] = [];
      for (let i = 0; i < 46; i += 1) {
        const x = 74 + i * 11.2;
        blades.push([x, 500, x + s.rand(-16, 16), 500 - s.rand(60, 170), 8]);
      }
      s.nicks(foam, blades);
      s.nicks(
        mist,
        blades.slice(3, 40).map(([a, b, c, d]): Nick => [a + 6, b, c - 8, d + 60, 7]),
      );
      coat(s, rust, ember, 190, 380, 120, 142, 350);
      head(s, 196, 256, { skin: clay, shade: kiln, size: 86, dark: -1, mouth: 'smile' });
      hat(s, 'bun', ember, 196, 256, 86);
      for (const x of [164, 232]) s.ring(ink, x, 253, 25, 25, 6);
      s.bar(ink, 188, 250, 208, 250, 6);
      s.cut(foam, pts('140,372 196,420 256,372 250,346 196,388 146,346'));
      arm(s, rust, clay, ink, pts('290,430 370,470 430,400'), 66, 48, 52);
      s.bar(foam, 462, 366, 488, 328, 15);
      s.box(timber, -40, 640, 720, 100);
      s.bar(plank, -40, 640, 680, 636, 18);
      for (const x of [420, 500, 580]) {
        s.cut(ink, [
          [x - 24, 632],
          [x - 16, 594],
          [x + 16, 594],
          [x + 24, 632],
        ]);
        s.oval(lake, x, 594, 14, 5);
        s.nicks(foam, [[x - 30, 630, x - 22, 622, 7]]);
      }
      s.limb(rust, 70, 48, pts('86,440 40,560 130,626'));
      hand(s, clay, ink, 150, 630, 50, 10);
      water(s, 706, [mist, shoal, lake]);
    },
  },
  {
    id: 'c028',
    draw: (s) => {
      s.ground(tar);
      s.within({ transform: 'translate(636 0) scale(-1 1)' }, () => {
        glow(s, 430, 214, 330);
        for (const [y, row] of [170, 350, 520].entries()) {
          s.box(timber, -40, row, 720, 20);
          for (let i = 0; i < 9; i += 1) {
            const x = 30 + i * 74 + (y % 2) * 24;
            const color = [foam, paper, glim, mist][(i + y) % 4] ?? foam;
            candle(s, color, x, row, 24 + (i % 3) * 6, y === 2 ? s.rand(14, 34) : s.rand(50, 116));
          }
        }
        coat(s, deep, lake, 236, 440, 150, 164, 320);
        s.cut(plank, pts('160,480 320,480 338,720 140,720'));
        head(s, 240, 318, { skin: clay, shade: kiln, size: 100, dark: -1, wide: 0.86 });
        s.soft(foam, pts('150,330 134,280 152,246 172,262 168,320 162,360'));
        s.soft(foam, pts('330,330 346,280 328,246 308,262 312,320 318,360'));
        brows(s, foam, 240, 318, 100, 0.03, 0.1);
        s.soft(foam, pts('196,366 240,352 284,366 296,388 240,376 184,388'));
        s.limb(deep, 80, 54, pts('360,506 470,520 466,400'));
        s.cut(foam, pts('438,250 492,250 494,366 436,366'));
        s.soft(
          foam,
          pts('434,256 440,240 466,232 492,242 496,256 484,296 474,262 452,258 446,284'),
        );
        s.nicks(paper, slits('450,280,448,356,8'));
        hand(s, clay, ink, 466, 366, 66, -90);
        s.bar(ink, 465, 240, 466, 222, 6);
        rays(s, glim, 465, 186, 54, 130, 20, 8);
        s.soft(amber, pts('465,130 490,190 465,228 440,190'));
        s.soft(glim, pts('466,168 478,200 466,222 454,200'));
        s.lines(foam, 4, pts('492,316 540,350'));
        s.cut(glim, pts('530,344 556,330 604,396 566,424 528,372'));
        s.oval(tar, 546, 352, 5);
        s.nicks(tar, slits('552,376,578,360,4 562,396,588,380,4'));
        s.box(timber, -40, 640, 720, 100);
        s.bar(plank, -40, 640, 680, 644, 18);
        arm(s, deep, clay, ink, pts('110,510 70,600 150,636'), 72, 50, 50);
      });
      water(s, 708, nightWater);
    },
  },
  {
    id: 'c029',
    draw: (s) => {
      s.ground(shoal);
      s.hatch(mist, -30, -20, 700, 480, 44, 0, 110, 8);
      s.within({ opacity: 0.6 }, () => moored(s, 58, 474, 0.42, () => launch(s)));
      sheetOfWater(s, lake, 462, 80, 9);
      coat(s, ink, night, 196, 396, 104, 112, 250);
      head(s, 196, 306, { skin: plank, shade: timber, size: 76, dark: 1, mouth: 'level' });
      s.soft(rust, pts('118,284 128,222 196,192 264,222 274,284 196,262'));
      s.bar(rust, 114, 284, 278, 284, 15);
      s.soft(night, pts('140,380 196,360 254,380 244,410 196,420 148,410'));
      s.soft(ember, pts('330,640 316,520 356,446 450,420 548,446 590,520 574,640'));
      s.nicks(
        rust,
        slits('350,500,346,600,9 400,520,396,620,8 500,520,506,620,8 556,500,556,600,9'),
      );
      cheeseMother(s, 452, 352, 108);
      arm(s, ink, plank, tar, pts('130,440 150,520 126,560'), 60, 44, 46);
      arm(s, ink, plank, tar, pts('262,440 290,520 214,548'), 60, 44, 46);
      s.soft(tar, pts('-10,552 100,590 520,590 640,540 590,710 60,710'));
      s.soft(foam, pts('-16,546 40,558 64,700 40,690 0,600'));
      s.nicks(plank, slits('90,606,330,620,7 350,620,580,600,7 110,646,560,650,7'));
      s.nicks(paper, slits('-4,580,50,572,7 14,620,58,608,7'));
      water(s, 654, [lake, deep, night]);
      s.bar(timber, 150, 516, 238, 648, 17);
      placedAt(s, 272, 700, 0.74, () => oarSock(s, rust, foam), -34);
    },
  },
  {
    id: 'c030',
    draw: (s) => {
      s.ground(ink);
      s.oval(mist, 318, 190, 118);
      s.oval(foam, 318, 190, 100);
      s.hatch(night, -30, -20, 700, 560, 46, 0, 110, 7);
      s.soft(night, pts('-60,480 60,420 200,456 330,410 470,450 600,410 700,450 700,640 -60,640'));
      sheetOfWater(s, deep, 520, 90, 10);
      glitter(s, foam, 318, 540, 60, 170);
      for (const side of [-1, 1] as const) {
        const x = (far: number): number => 318 + side * far;
        s.bar(plank, x(10), 452, x(190), 556, 18);
        placedAt(s, x(222), 576, 1, () => oarSock(s, ember, foam), side * -63, side);
      }
      s.within({ transform: 'translate(64 112) scale(0.8)' }, () => {
        s.soft(
          timber,
          pts('160,512 200,500 318,524 436,500 476,512 440,660 380,724 256,724 196,660'),
        );
        s.soft(tar, pts('176,526 318,552 460,526 424,650 370,710 266,710 212,650'));
        s.limb(plank, 16, 16, pts('160,514 240,522 318,540 396,522 476,514'));
        s.nicks(
          plank,
          slits('196,566,280,600,6 356,600,440,566,6 214,620,280,650,6 356,650,422,620,6'),
        );
        s.soft(foam, pts('286,526 318,538 350,526 360,620 344,712 292,712 276,620'));
        s.nicks(
          paper,
          slits('280,572,354,550,8 278,610,358,586,8 280,650,356,624,8 286,688,352,664,8'),
        );
        s.cut(foam, pts('346,560 392,540 384,570 398,590 350,584'));
        for (const x of [220, 416]) {
          s.oval(amber, x, 508, 25, 17);
          s.nicks(glim, [[x - 14, 502, x + 8, 500, 6]]);
        }
      });
      water(s, 668, nightWater);
    },
  },
];
