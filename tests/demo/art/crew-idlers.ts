import { gate } from './buildings.js';
import { arm, brows, buttons, coat, hand, head } from './figures.js';
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
import { sheetOfWater, water } from './water.js';

/** A cat, a sweeper, a barge and a tailor. */
export const crewIdlers: readonly Picture[] = [
  {
    id: 'c035',
    draw: (s) => {
      s.ground(glim);
      s.hatch(amber, -30, -20, 160, 760, 20, 90, 80, 8);
      s.cut(ink, pts('70,-40 680,-40 680,780 30,780 10,600 40,300'));
      s.hatch(night, 90, 0, 560, 700, 40, 86, 110, 8);
      s.limb(night, 16, 16, pts('560,-40 566,300 580,760'));
      buttons(s, amber, 612, 220, 170, 4, 22);
      for (const y of [220, 390, 560]) s.nicks(ink, [[600, y, 624, y, 6]]);
      s.soft(foam, pts('330,-60 350,40 420,110 500,150 580,110 650,30 680,-60'));
      s.nicks(paper, slits('420,-20,450,80,9 500,-20,502,126,9 580,-20,556,80,9'));
      s.soft(tar, pts('110,352 300,330 500,352 490,420 120,420'));
      s.soft(ember, pts('180,420 168,280 214,196 306,172 398,196 444,280 430,420'));
      s.cut(ember, pts('178,270 176,122 266,190'), pts('434,270 438,122 346,190'));
      s.cut(rust, pts('194,236 192,156 244,196'), pts('420,236 422,156 368,196'));
      s.nicks(rust, slits('306,180,306,244,15 272,186,276,234,12 340,186,336,234,12'));
      s.nicks(
        rust,
        slits('184,300,228,308,11 180,336,226,334,11 430,300,384,308,11 434,336,388,334,11'),
      );
      s.ring(tar, 252, 292, 34, 24, 9, 20, 160);
      s.ring(tar, 360, 292, 34, 24, 9, 20, 160);
      s.soft(foam, pts('306,322 356,334 372,376 330,412 282,412 240,376 256,334'));
      s.cut(rust, pts('284,330 328,330 306,356'));
      s.ring(tar, 286, 360, 20, 17, 6, 0, 130);
      s.ring(tar, 326, 360, 20, 17, 6, 50, 180);
      s.lines(
        foam,
        4,
        pts('240,360 150,344'),
        pts('240,374 152,384'),
        pts('372,360 462,344'),
        pts('372,374 460,384'),
      );
      s.cut(night, pts('104,392 506,392 514,640 306,690 96,640'));
      s.nicks(
        shoal,
        slits('124,420,120,620,6 130,636,300,672,6 312,672,480,636,6 488,420,492,620,6'),
      );
      s.cut(night, pts('96,384 512,384 516,422 92,422'));
      s.nicks(lake, slits('110,416,500,416,6'));
      s.hatch(ink, 140, 450, 340, 180, 20, 84, 80, 7);
      s.soft(ember, pts('150,360 210,356 222,400 218,470 186,488 152,470 146,400'));
      s.nicks(rust, slits('150,400,216,398,9 152,426,214,426,9'));
      s.soft(foam, pts('152,452 186,444 216,452 214,476 186,490 156,476'));
      s.nicks(kiln, slits('174,462,174,484,5 194,462,194,484,5'));
      water(s, 712, [shoal, lake, deep]);
    },
  },
  {
    id: 'c036',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, -20, 700, 560, 40, -18, 100, 9);
      s.limb(tar, 60, 18, pts('600,640 590,460 610,300 570,120 590,-60'));
      s.limb(tar, 26, 6, pts('598,330 540,260 530,180 480,120'));
      s.limb(tar, 22, 6, pts('594,240 640,180 690,160'));
      s.box(plank, -40, 620, 720, 140);
      s.box(timber, -40, 612, 720, 17);
      s.within({ transform: 'rotate(-7 318 560)' }, () => {
        s.cut(foam, pts('-80,534 560,546 570,606 -80,612'));
        s.nicks(paper, slits('-40,590,180,592,7 220,588,520,590,7 40,556,300,560,5'));
        s.box(ink, 470, 538, 26, 76);
        s.bar(ink, 150, 460, 130, 534, 30);
        s.bar(ink, 204, 460, 220, 534, 30);
        s.cut(tar, pts('96,522 150,522 152,542 92,542'), pts('190,522 246,522 250,542 188,542'));
        s.soft(lake, pts('116,470 112,330 170,232 262,220 300,290 268,400 250,476 180,486'));
        s.nicks(deep, slits('140,360,140,470,8 180,300,176,470,8 220,340,222,470,8'));
        s.within({ transform: 'rotate(16 290 220)' }, () => {
          head(s, 290, 206, { skin: clay, shade: kiln, size: 70, dark: -1, eyes: 'shut' });
          s.soft(
            foam,
            pts('232,214 262,236 290,228 320,236 346,212 344,300 312,420 296,440 268,330 238,280'),
          );
          s.nicks(mist, slits('274,260,286,370,7 304,262,304,380,7'));
          s.soft(rust, pts('216,196 230,146 286,110 344,144 364,196 290,176'));
          s.limb(rust, 34, 8, pts('300,120 350,104 376,134'));
          s.oval(glim, 378, 144, 15);
        });
        s.bar(timber, 286, 330, 414, 540, 15);
        s.cut(glim, pts('392,500 426,482 486,540 476,556 404,556'));
        s.nicks(plank, slits('412,506,420,552,6 426,500,452,550,6 440,500,474,546,6'));
        s.bar(rust, 394, 508, 432, 486, 11);
        arm(s, lake, clay, ink, pts('256,290 280,390 320,392'), 54, 40, 42);
        arm(s, deep, clay, ink, pts('176,300 220,420 336,430'), 54, 40, 42);
      });
      gate(s, 470, 600, 300, 160, lake, ink, mist);
      const leaves: Pt[][] = trios(
        '440,470,20 500,500,70 540,440,-30 470,400,50 530,350,10 420,520,-10 570,520,40 500,270,60 430,330,-40 590,400,0 450,200,30 390,90,-20 330,480,35 520,150,70',
      ).map(([x, y, turn]) => {
        const a = (turn * Math.PI) / 180;
        const [c, d] = [Math.cos(a) * 20, Math.sin(a) * 20];
        return [
          [x - c, y - d],
          [x - d * 0.5, y + c * 0.5],
          [x + c, y + d],
          [x + d * 0.5, y - c * 0.5],
        ];
      });
      s.cut(rust, ...leaves.slice(0, 8));
      s.cut(ember, ...leaves.slice(8));
      water(s, 704, [shoal, lake, deep]);
    },
  },
  {
    id: 'c037',
    draw: (s) => {
      s.ground(ember);
      s.hatch(clay, -30, -20, 700, 400, 44, 80, 16, 11);
      s.hatch(glim, -10, -20, 700, 400, 30, -10, 16, 11);
      sheetOfWater(s, shoal, 572, 90, 11);
      s.limb(timber, 13, 13, pts('96,580 110,330 200,180 318,140 436,180 526,330 540,580'));
      for (const [i, [x, y]] of arc(318, 356, 214, 216, 180, 360, 16).entries()) {
        s.oval(i % 2 === 0 ? foam : rust, x, y, 31);
        s.oval(i % 2 === 0 ? amber : glim, x, y, 12);
      }
      s.soft(
        tar,
        pts('-70,470 10,520 90,590 546,590 626,520 706,470 650,630 560,740 76,740 -14,630'),
      );
      s.soft(ink, pts('10,606 60,500 140,430 230,400 330,380 430,404 510,440 580,510 620,606'));
      const lumps = trios(
        '60,560,30 130,570,36 206,564,32 290,574,38 376,566,34 452,572,36 530,566,32 580,580,24',
      );
      s.cut(ink, ...lumps.map(([x, y, r]) => arc(x, y, r, r, 10, 370, 6)));
      s.nicks(
        lake,
        lumps.map(([x, y, r]) => [x - r * 0.6, y + 2, x, y - r * 0.4, 9] as const),
      );
      const hem: Pt[] = [];
      for (let x = 600; x >= 36; x -= 20)
        hem.push([x, 500 + (Math.round((600 - x) / 20) % 4 === 2 ? 46 : 20)]);
      s.soft(foam, [...pts('30,470 120,392 230,352 330,340 430,352 520,392 606,470'), ...hem]);
      for (let i = 0; i < 7; i += 1) {
        const x = 76 + i * 80;
        s.ring(ember, x, 480, 17, 17, 6);
        s.oval(ink, x, 522, 8);
        s.nicks(ember, [
          [x + 40, 462, x + 40, 500, 9],
          [x + 22, 482, x + 58, 482, 9],
        ]);
      }
      s.nicks(
        mist,
        slits(
          '150,400,110,448,7 240,370,220,440,7 330,362,330,440,7 420,372,440,440,7 500,400,540,450,7',
        ),
      );
      s.cut(rust, pts('318,330 262,296 258,362'), pts('318,330 374,296 378,362'));
      s.cut(rust, pts('310,336 280,430 318,410 326,336'), pts('322,336 362,430 326,412'));
      s.oval(ember, 318, 332, 17);
      s.nicks(
        plank,
        slits(
          '60,606,300,628,7 330,628,580,604,7 20,570,60,606,7 616,570,576,606,7 90,660,540,664,7',
        ),
      );
      water(s, 692, [shoal, lake, deep]);
    },
  },
  {
    id: 'c038',
    draw: (s) => {
      s.ground(mist);
      s.hatch(shoal, -30, -20, 700, 700, 40, 90, 90, 6);
      s.box(timber, 24, 50, 212, 330);
      s.box(night, 44, 70, 172, 290);
      s.bar(timber, 130, 60, 130, 370, 11);
      s.bar(timber, 30, 210, 230, 210, 11);
      s.oval(glim, 84, 130, 24);
      s.box(timber, 470, 120, 190, 15);
      for (const [i, color] of [rust, amber, deep, ember].entries()) {
        s.box(color, 486 + i * 42, 78, 28, 34);
        s.box(plank, 482 + i * 42, 72, 36, 8);
        s.box(plank, 482 + i * 42, 110, 36, 8);
      }
      coat(s, foam, paper, 330, 396, 142, 160, 330);
      s.cut(rust, pts('250,390 300,380 330,470 362,380 412,390 440,720 214,720'));
      s.nicks(ember, slits('256,430,244,660,8 404,430,420,660,8'));
      head(s, 330, 262, {
        skin: plank,
        shade: timber,
        size: 102,
        dark: 1,
        wide: 0.78,
        mouth: 'level',
      });
      s.soft(foam, pts('246,262 244,200 270,164 300,190 280,220 262,270'));
      s.soft(foam, pts('414,262 416,200 390,164 360,190 380,220 398,270'));
      brows(s, foam, 330, 262, 102, -0.03, 0.13);
      s.lines(
        ink,
        5,
        pts('308,328 298,352'),
        pts('322,328 318,356'),
        pts('338,328 342,356'),
        pts('352,328 362,352'),
      );
      for (const [x, y] of pts('296,355 317,360 343,360 364,355')) s.oval(glim, x, y, 8);
      s.limb(amber, 24, 22, pts('262,392 240,470 236,560 250,630'));
      s.limb(amber, 24, 22, pts('398,392 424,460 430,520'));
      s.nicks(
        ink,
        slits('226,470,244,474,5 224,510,240,512,5 224,550,240,550,5 418,470,436,466,5'),
      );
      s.soft(lake, pts('170,690 176,606 230,556 318,542 396,560 440,610 446,690'));
      s.nicks(shoal, slits('220,590,210,670,8 318,556,318,660,8'));
      s.soft(ink, pts('150,690 318,654 470,690 520,716 420,728 318,700 200,716 140,716'));
      s.limb(foam, 78, 54, pts('204,452 110,560 170,640'));
      hand(s, plank, ink, 186, 650, 58, 20);
      s.limb(foam, 78, 54, pts('456,450 556,430 548,350'));
      hand(s, plank, ink, 544, 330, 58, -100);
      s.lines(ink, 4, pts('526,300 500,400 440,500 392,590'));
      s.nicks(ink, slits('520,326,540,270,7'));
      water(s, 716, [shoal, lake, deep]);
    },
  },
];
