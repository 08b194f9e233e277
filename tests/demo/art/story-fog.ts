import { house } from './buildings.js';
import { launch } from './craft.js';
import { pts, slits, trios } from './geometry.js';
import {
  amber,
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
import { placedAt } from './story-people.js';
import { glow, lamp, rays } from './things.js';
import { nightWater, ripples, sheetOfWater, water } from './water.js';

/** A moorhen or a chick of one, afloat at the origin and swimming right. */
function moorhen(s: Sheet, chick: boolean): void {
  s.soft(
    ink,
    pts('-96,-40 -70,-34 -20,-56 34,-56 62,-84 92,-96 118,-80 114,-50 88,-20 50,16 -50,16 -84,-8'),
  );
  s.cut(chick ? amber : rust, pts('112,-88 150,-66 112,-60 102,-88'));
  if (!chick) {
    s.cut(glim, pts('132,-78 152,-66 130,-64'));
    s.nicks(foam, slits('-70,-20,20,-6,9 -96,-42,-70,-26,12'));
  }
  s.ring(foam, 92, -74, 8, 6, 4, 10, 170);
}

/** Someone going up the steps, seen from behind, and the wet that the boots leave. */
function climber(s: Sheet, cloth: string, hair: string, dry: boolean): void {
  const [leather, shine] = dry ? [amber, glim] : [tar, shoal];
  s.soft(cloth, pts('-58,-112 -62,-240 -48,-320 -20,-344 30,-344 58,-320 76,-240 72,-112 0,-102'));
  s.nicks(ink, slits('-34,-290,-40,-130,9 14,-300,12,-120,8 46,-280,52,-130,9'));
  s.oval(kiln, 14, -384, 40, 46);
  s.soft(hair, pts('-36,-350 -40,-404 0,-440 44,-428 52,-396 30,-392 16,-350 -10,-338'));
  for (const [x, y] of pts('-24,0 40,-6')) {
    s.cut(leather, [
      [x - 24, y - 126],
      [x + 16, y - 128],
      [x + 18, y - 46],
      [x + 56, y - 30],
      [x + 64, y],
      [x - 24, y + 4],
    ]);
    s.bar(shine, x - 26, y - 118, x + 18, y - 120, 14);
    s.bar(dry ? rust : ink, x - 26, y + 3, x + 66, y + 1, 9);
    s.nicks(shine, [
      [x - 12, y - 100, x - 10, y - 30, 8],
      [x + 18, y - 32, x + 50, y - 18, 7],
    ]);
  }
  if (dry) return;
  s.nicks(
    shoal,
    slits(
      '-54,6,76,8,15 -60,-112,-62,-70,9 74,-110,76,-76,9 -44,14,-44,60,9 20,14,20,44,8 64,12,64,70,9',
    ),
  );
}

/** The chase, the fog, and the steps at home. */
export const storyFog: readonly Picture[] = [
  {
    id: 's080',
    draw: (s) => {
      s.ground(night);
      s.oval(foam, 110, 120, 62);
      s.hatch(lake, -30, -20, 700, 260, 26, 0, 80, 5);
      s.soft(ink, pts('-60,300 80,240 220,270 400,220 560,260 700,230 700,340 -60,340'));
      sheetOfWater(s, shoal, 306, 70, 8);
      s.limb(foam, 9, 3, pts('330,372 220,396 140,372 96,340'));
      s.limb(foam, 9, 3, pts('440,384 560,400 650,372'));
      s.within({ transform: 'translate(380 356) rotate(-3) scale(0.66 0.84)' }, () => launch(s));
      sheetOfWater(s, lake, 366, 110, 10);
      ripples(s, shoal, 390, 110, 16, 90);
      for (const r of [0, 1, 2])
        s.nicks(shoal, [[30 + r * 30, 596 + r * 16, 640 - r * 60, 598 + r * 16, 7]]);
      placedAt(s, 486, 584, 1.16, () => moorhen(s, false));
      for (const [x, y, k] of trios('332,588,0.44 242,566,0.42 172,592,0.42 96,568,0.4 34,594,0.4'))
        placedAt(s, x, y, k, () => moorhen(s, true));
      sheetOfWater(s, ink, 606, 120, 12);
      ripples(s, lake, 630, 60, 7);
      s.nicks(foam, slits('420,612,580,614,7 300,608,360,609,5 210,586,270,587,5'));
      sheetOfWater(s, night, 716, 150, 14);
    },
  },
  {
    id: 's081',
    draw: (s) => {
      s.ground(lake);
      s.hatch(deep, -30, -20, 700, 300, 30, 0, 80, 6);
      for (const [x, y, h] of trios('40,700,330 150,710,270 430,710,250 540,700,310'))
        house(s, x, y, 88, h, night, ink, deep, 2);
      house(s, 270, 710, 116, 330, ink, '#0c1728', null);
      s.cut(tar, pts('292,348 326,300 362,348 362,420 292,420'));
      glow(s, 327, 378, 96);
      s.box(glim, 304, 350, 46, 58);
      s.bar(tar, 327, 350, 327, 408, 5);
      rays(s, glim, 327, 378, 48, 92, 16, 6);
      s.soft(
        foam,
        pts(
          '-80,-80 720,-80 720,250 640,300 570,270 520,330 440,300 400,240 330,214 262,250 236,330 250,420 200,470 140,440 96,500 30,480 -80,540',
        ),
      );
      s.soft(
        mist,
        pts(
          '-80,-80 720,-80 720,150 620,190 540,160 470,210 380,150 280,150 200,230 170,330 110,330 60,400 -80,420',
        ),
      );
      s.nicks(
        shoal,
        slits(
          '300,60,520,64,9 60,120,240,124,9 400,110,600,112,8 -20,250,110,256,9 40,40,180,42,8',
        ),
      );
      s.within({ opacity: 0.9 }, () =>
        s.soft(
          foam,
          pts('380,640 430,560 500,580 540,520 600,540 700,480 700,740 300,740 320,660'),
        ),
      );
      s.nicks(mist, slits('440,630,560,632,9 520,580,640,582,8'));
      water(s, 700, [mist, shoal, lake]);
    },
  },
  {
    id: 's082',
    draw: (s) => {
      s.ground(glim);
      s.oval(amber, 520, 470, 90);
      rays(s, amber, 520, 470, 104, 330, 34, 9);
      s.cut(deep, pts('318,456 392,650 400,760 236,760 244,650'));
      s.cut(lake, pts('318,456 244,650 236,760 318,760'));
      s.nicks(
        ink,
        slits('302,520,296,560,8 334,520,342,570,8 286,580,278,630,8 350,590,358,640,8'),
      );
      s.bar(ink, 318, 476, 318, 390, 13);
      s.oval(amber, 318, 460, 15);
      s.limb(ink, 9, 9, pts('176,428 318,424 460,428'));
      s.cut(ink, pts('458,410 506,428 458,446'), pts('180,428 142,406 146,450'));
      s.soft(
        rust,
        pts('240,396 170,392 104,362 58,300 58,216 92,262 96,186 134,250 158,206 184,290 236,320'),
      );
      s.soft(
        rust,
        pts(
          '190,320 300,312 400,322 470,300 500,240 530,206 566,214 574,246 548,320 480,384 370,408 260,400',
        ),
      );
      s.cut(amber, pts('568,222 614,238 568,250'));
      s.soft(ember, pts('524,210 518,172 540,188 552,162 562,188 580,178 570,218'));
      s.soft(ember, pts('554,250 574,252 568,286 548,278'));
      s.oval(ink, 548, 234, 7);
      s.nicks(
        ember,
        slits(
          '84,240,150,350,11 126,230,186,340,11 250,340,330,384,12 310,330,420,366,11 500,280,470,340,10',
        ),
      );
      s.within({ transform: 'translate(306 292) rotate(-9) scale(0.66)' }, () => launch(s));
      s.nicks(lake, slits('206,322,202,352,7 400,304,402,330,7'));
      for (const [y, x, w] of trios('560,-60,50 620,300,60'))
        s.within({ opacity: 0.85 }, () =>
          s.limb(foam, w, 16, [
            [x, y],
            [x + 200, y - 10],
            [x + 420, y + 6],
          ]),
        );
      water(s, 676, [foam, shoal, lake]);
    },
  },
  {
    id: 's083',
    draw: (s) => {
      s.ground(night);
      s.hatch(deep, -30, -20, 700, 560, 50, 0, 80, 6);
      glow(s, 112, 120, 230);
      const steps: Pt[] = [];
      for (let i = 0; i < 4; i += 1)
        steps.push([-60 + i * 190, 650 - i * 118], [130 + i * 190, 650 - i * 118]);
      s.cut(lake, [[-60, 780], ...steps, [720, 296], [720, 780]]);
      for (let i = 0; i < 4; i += 1)
        s.bar(mist, -66 + i * 190, 656 - i * 118, 136 + i * 190, 654 - i * 118, 17);
      s.hatch(deep, 150, 560, 520, 130, 22, 0, 70, 7);
      s.bar(tar, 112, -40, 112, 40, 9);
      rays(s, glim, 112, 120, 84, 170, 24, 8);
      lamp(s, 112, 24, 150, true, ink);
      placedAt(s, 64, 640, 0.98, () => climber(s, rust, foam, false));
      placedAt(s, 240, 522, 0.76, () => climber(s, plank, tar, false));
      placedAt(s, 420, 404, 1.1, () => climber(s, ink, tar, true));
      placedAt(s, 600, 286, 1, () => climber(s, timber, tar, false));
      water(s, 704, nightWater);
    },
  },
];
