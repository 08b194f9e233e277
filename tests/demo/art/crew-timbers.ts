import { house, town } from './buildings.js';
import { blue, ladder } from './crew-boats.js';
import { arm, buttons, coat, head } from './figures.js';
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
import type { Nick } from './sheet.js';
import { hat, placedAt } from './story-people.js';
import { glow, lamp } from './things.js';
import { nightWater, sheetOfWater, water } from './water.js';

/** A stair builder, a caulker, a dredger and a net mender. */
export const crewTimbers: readonly Picture[] = [
  {
    id: 'c031',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, -20, 700, 640, 54, -36, 90, 9);
      s.soft(foam, pts('30,170 76,130 130,140 170,104 250,116 286,160 250,190 50,196'));
      s.within({ transform: 'translate(0 62)' }, () => {
        house(s, 350, 720, 250, 330, lake, night, foam, 2);
        town(s, -50, 220, 720, 80, 150, shoal, lake, foam);
        const steps: Pt[] = [];
        for (let i = 0; i < 11; i += 1)
          steps.push([20 + i * 46, 640 - i * 46], [66 + i * 46, 640 - i * 46]);
        const under = steps.filter((_, i) => i % 2 === 1).map(([x, y]): Pt => [x + 10, y + 62]);
        s.cut(timber, [...steps, ...under.reverse(), [20, 720]]);
        for (let i = 0; i < 11; i += 1)
          s.bar(plank, 12 + i * 46, 641 - i * 46, 72 + i * 46, 640 - i * 46, 13);
        const rail: Nick[] = [];
        for (let i = 0; i < 7; i += 1)
          rail.push([42 + i * 46, 640 - i * 46, 42 + i * 46, 552 - i * 46, 9]);
        s.nicks(tar, rail);
        s.bar(tar, 36, 556, 336, 258, 12);
        s.bar(tar, 474, 240, 474, 420, 15);
        s.bar(tar, 520, 194, 540, 420, 13);
        s.bar(ink, 404, 230, 396, 286, 26);
        s.bar(ink, 440, 224, 450, 246, 26);
        s.cut(ink, pts('376,276 414,276 414,292 370,292'), pts('440,232 480,232 482,248 436,248'));
        coat(s, rust, ember, 414, 88, 60, 66, 156);
        head(s, 418, 30, { skin: timber, shade: tar, size: 56, dark: -1, mouth: 'smile' });
        s.soft(amber, pts('362,22 372,-26 418,-44 464,-26 474,22 418,-2'));
        arm(s, rust, timber, ink, pts('380,120 350,176 394,190'), 40, 30, 36);
        arm(s, rust, timber, ink, pts('460,116 520,104 532,56'), 40, 30, 36);
        s.bar(plank, 538, 60, 574, -2, 11);
        s.bar(ink, 552, -20, 600, 12, 26);
        s.nicks(ink, slits('508,180,512,150,9'));
      });
      water(s, 708, [shoal, lake, deep]);
    },
  },
  {
    id: 'c032',
    draw: (s) => {
      s.ground(rust);
      s.hatch(ember, -30, 280, 700, 460, 44, 78, 80, 8);
      for (const r of [150, 210, 270]) s.ring(glim, 282, 480, r, r, 8, 210, 300);
      s.soft(tar, pts('-80,-80 -80,210 60,290 240,318 420,300 600,226 720,110 720,-80'));
      const planks: Nick[] = [];
      for (let i = 0; i < 4; i += 1)
        planks.push(
          [-40, 150 - i * 56, 300, 262 - i * 62, 8],
          [300, 262 - i * 62, 690, 90 - i * 50, 8],
        );
      s.nicks(plank, planks);
      s.limb(timber, 30, 26, pts('-70,214 60,296 240,324 420,306 600,232 700,140'));
      s.bar(timber, 92, 300, 60, 740, 22);
      s.bar(timber, 600, 240, 622, 740, 22);
      coat(s, lake, deep, 286, 540, 124, 140, 230);
      s.within({ transform: 'rotate(-10 282 440)' }, () => {
        head(s, 282, 440, {
          skin: clay,
          shade: kiln,
          size: 88,
          dark: 1,
          eyes: 'shut',
          mouth: 'level',
        });
        s.soft(ink, arc(284, 488, 34, 38));
        s.soft(ember, arc(284, 510, 20, 12));
        s.soft(amber, pts('196,436 198,372 282,336 366,372 368,436 330,396 282,384 234,396'));
        s.cut(amber, pts('360,400 420,420 410,452 362,432'));
      });
      arm(s, lake, clay, ink, pts('190,596 120,560 146,410'), 66, 48, 50);
      s.bar(ink, 158, 372, 178, 318, 18);
      s.nicks(foam, slits('178,330,186,300,8'));
      arm(s, lake, clay, ink, pts('390,596 480,600 506,500'), 66, 48, 52);
      s.within({ transform: 'rotate(24 520 460)' }, () => {
        s.bar(plank, 520, 490, 520, 340, 17);
        s.box(timber, 446, 312, 150, 62);
        s.bar(ink, 456, 310, 456, 376, 13);
        s.bar(ink, 586, 310, 586, 376, 13);
      });
      s.limb(paper, 12, 9, pts('146,330 110,380 126,450 90,520 116,600 80,680'));
      buttons(s, glim, 286, 600, 40, 2, 8);
      water(s, 704, [shoal, lake, deep]);
    },
  },
  {
    id: 'c033',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, -20, 700, 560, 46, 84, 80, 9);
      s.hatch(plank, -30, -20, 700, 520, 20, 84, 44, 4);
      s.soft(shoal, pts('-60,560 60,520 200,548 330,510 480,550 700,520 700,680 -60,680'));
      sheetOfWater(s, mist, 572, 90, 11);
      s.bar(ink, 470, 560, 520, 70, 24);
      s.bar(ink, 620, 560, 556, 70, 24);
      s.bar(ink, 486, 420, 606, 420, 15);
      s.bar(ink, 486, 420, 590, 250, 11);
      s.cut(rust, pts('356,560 360,430 464,430 468,560'));
      s.cut(tar, pts('340,436 350,398 474,398 484,436'));
      s.cut(glim, pts('384,456 440,456 440,512 384,512'));
      s.soft(tar, pts('176,560 300,580 560,580 680,548 680,720 250,720'));
      s.nicks(plank, slits('220,586,420,606,7 440,604,640,586,7 260,640,600,644,7'));
      s.soft(timber, pts('556,110 700,170 700,230 640,214 560,150'));
      s.nicks(tar, slits('590,146,680,196,7'));
      ladder(s, blue, [64, 760], [528, 70], 62, 13);
      for (const i of [0, 1, 2, 3, 4]) {
        const t = 0.12 + i * 0.185;
        placedAt(s, 64 + 464 * t, 740 - 690 * t, 0.94, () => {
          s.cut(tar, pts('-66,-50 34,-62 24,26 -44,30'));
          s.soft(plank, pts('-70,-48 -40,-78 0,-72 34,-60 6,-46 -40,-42'));
          s.nicks(timber, slits('-44,-36,-36,20,9 0,-40,2,16,9'));
          s.soft(plank, pts('-60,-44 -46,-46 -50,6 -58,26 -64,2'));
        });
      }
      s.oval(ink, 552, 78, 44);
      s.oval(amber, 552, 78, 18);
      water(s, 668, [shoal, lake, deep]);
      s.nicks(foam, slits('30,676,150,676,9 50,692,120,692,7'));
    },
  },
  {
    id: 'c034',
    draw: (s) => {
      s.ground(deep);
      s.hatch(lake, -30, -20, 700, 660, 40, 90, 100, 6);
      glow(s, 470, 190, 230);
      s.bar(ink, 470, -40, 470, 80, 8);
      lamp(s, 470, 70, 150, true);
      s.bar(tar, 60, 300, 56, 700, 20);
      for (const y of [330, 380]) s.bar(tar, 50, y, 150, y + 6, 17);
      coat(s, rust, ember, 222, 396, 118, 158, 330);
      head(s, 226, 280, { skin: plank, shade: timber, size: 88, dark: -1, mouth: 'smile' });
      hat(s, 'scarf', glim, 226, 280, 88);
      s.nicks(amber, slits('160,236,210,200,7 240,198,296,240,7'));
      s.bar(tar, 500, 590, 500, 720, 30);
      s.cut(timber, pts('330,560 672,560 672,604 330,604'));
      s.cut(ink, pts('372,452 604,452 650,566 336,566'));
      const squares: Pt[][] = [];
      for (let r = 0; r < 5; r += 1) {
        for (let c = r % 2; c < 6; c += 2) {
          const at = (k: number, row: number): Pt => {
            const y = 460 + row * 20;
            const inset = ((y - 452) / 114) * 36;
            return [378 - inset + k * ((220 + 2 * inset) / 6), y];
          };
          squares.push([at(c, r), at(c + 1, r), at(c + 1, r + 1), at(c, r + 1)]);
        }
      }
      s.cut(foam, ...squares);
      for (const [x, y, side] of trios(
        '420,472,0 496,472,0 560,494,0 402,532,1 468,552,1 590,536,1',
      )) {
        s.oval(tar, x, y + 6, 21, 12);
        s.oval(side === 0 ? rust : amber, x, y, 21, 12);
      }
      arm(s, rust, plank, tar, pts('318,450 366,520 416,500'), 62, 46, 48);
      const net = pts('70,540 170,516 330,530 392,610 404,730 330,780 40,780 34,640');
      s.soft(mist, net);
      s.clipped(net, () => {
        const lines: Pt[][] = [];
        for (let i = 0; i < 30; i += 1) {
          lines.push(
            [
              [-200 + i * 22, 500],
              [40 + i * 22, 740],
            ],
            [
              [i * 22, 500],
              [-240 + i * 22, 740],
            ],
          );
        }
        s.lines(night, 4, ...lines);
      });
      for (const [x, y] of pts('76,546 180,520 300,528 384,600 40,650'))
        s.oval(amber, x, y, 15, 11);
      arm(s, rust, plank, tar, pts('124,450 80,530 166,560'), 62, 46, 48);
      s.bar(foam, 176, 590, 236, 556, 8);
      water(s, 704, nightWater);
    },
  },
];
