import { border, cartouche, rhumbs, roofs, rose, shore, soundings, track } from './chart-marks.js';
import { arc, pts, trios, quads, slits } from './geometry.js';
import {
  amber,
  deep,
  foam,
  glim,
  ink,
  lake,
  landscape,
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
import type { Sheet } from './sheet.js';
import { gate } from './buildings.js';
import { eel } from './water.js';

/** The ground of a chart: tinted paper, its rhumb lines, what is drawn on it, and its frame. */
function chart(
  id: string,
  ground: string,
  at: readonly [number, number],
  draw: (s: Sheet) => void,
): Picture {
  return {
    id,
    format: landscape,
    draw: (s) => {
      s.ground(ground);
      s.hatch(foam, -30, -30, 950, 700, 40, 3, 70, 3);
      rhumbs(s, at[0], at[1]);
      draw(s);
      rose(s, at[0], at[1], 62);
      border(s);
    },
  };
}

/** A tree of the orchard, in three cuts. */
function tree(s: Sheet, x: number, y: number, k: number, crown: string): void {
  s.bar(tar, x, y, x, y + 30 * k, 7 * k);
  s.oval(crown, x, y - 8 * k, 19 * k, 21 * k);
  s.nicks(foam, [[x - 8 * k, y - 4 * k, x + 2 * k, y - 20 * k, 4 * k]]);
}

/** The eight inked charts, as many as were counted. */
export const charts: readonly Picture[] = [
  chart('ch01', paper, [730, 160], (s) => {
    shore(
      s,
      plank,
      pts('-60,180 90,200 190,190 250,260 230,400 260,520 180,700 -80,700'),
      -60,
      420,
    );
    s.cut(timber, pts('200,312 420,306 420,352 200,350'));
    s.cut(tar, pts('404,252 440,248 444,412 406,408'));
    s.soft(timber, pts('436,262 520,266 570,286 592,330 570,376 520,396 436,400'));
    for (let r = 0; r < 4; r += 1)
      for (let c = 0; c < 3 + (r === 1 || r === 2 ? 1 : 0); c += 1)
        s.oval(foam, 464 + c * 30 + (r % 2) * 8, 286 + r * 30, 5);
    s.nicks(plank, slits('214,322,396,320,5 214,340,396,342,5'));
    roofs(
      s,
      rust,
      quads(
        '70,250,44,34 130,262,38,44 80,330,52,40 150,340,36,36 70,420,40,46 128,430,54,34 90,510,46,36',
      ),
    );
    track(s, rust, pts('560,420 620,500 740,470 900,520'));
    soundings(
      s,
      ink,
      trios(
        '330,200,4 420,190,6 520,180,9 610,230,12 640,330,14 360,440,5 450,470,8 560,520,11 330,530,3 760,350,19 700,540,17',
      ),
    );
    cartouche(s, 330, 78, 240);
  }),
  chart('ch02', mist, [150, 480], (s) => {
    s.soft(shoal, pts('220,160 440,100 690,130 800,290 740,480 520,540 310,500 190,330'));
    s.soft('#459a8f', pts('280,200 450,150 650,180 730,300 680,440 510,480 340,450 250,330'));
    s.soft(lake, pts('350,240 460,200 620,230 670,310 620,400 500,430 380,400 320,320'));
    for (let r = 0; r < 4; r += 1)
      for (let c = 0; c < 6 - (r % 2); c += 1)
        tree(
          s,
          340 + c * 66 + (r % 2) * 33,
          220 + r * 66,
          0.95,
          r === 2 && c === 3 ? rust : r % 2 === 0 ? deep : night,
        );
    track(s, rust, pts('90,130 230,240 300,330 520,510 760,560'));
    soundings(
      s,
      ink,
      trios(
        '230,330,7 260,250,6 470,110,5 690,190,6 748,320,4 690,470,3 330,520,4 530,558,2 120,260,11 110,190,13 790,130,8',
      ),
    );
    cartouche(s, 570, 66, 210);
  }),
  chart('ch03', glim, [740, 470], (s) => {
    for (const [r, color] of [
      [250, mist],
      [200, '#8fc0b3'],
      [150, shoal],
      [104, lake],
    ] as const)
      s.soft(color, arc(400, 320, r * 1.35, r, 0, 360, 22));
    s.limb(timber, 34, 60, pts('-40,130 120,210 260,330 400,420'));
    s.nicks(plank, slits('20,160,130,220,6 150,240,280,346,6'));
    s.soft(amber, pts('372,270 428,270 450,330 486,388 400,398 314,388 350,330'));
    s.ring(amber, 400, 258, 15, 15, 9);
    s.bar(timber, 344, 348, 456, 348, 9);
    s.oval(timber, 400, 404, 13);
    for (const r of [120, 160, 200]) s.ring(rust, 400, 330, r, r * 0.74, 3.5, -60, 60);
    soundings(
      s,
      ink,
      trios(
        '560,200,9 620,300,11 580,420,10 300,180,8 220,420,6 470,520,12 320,530,9 690,220,15 720,340,17 110,470,4 160,540,5 420,110,7',
      ),
    );
    cartouche(s, 580, 78, 200);
  }),
  chart('ch04', paper, [140, 160], (s) => {
    shore(s, plank, pts('300,700 340,480 480,430 600,470 760,400 960,420 960,720'), 700, 760);
    s.within({ transform: 'rotate(-24 450 330)' }, () => {
      s.box(timber, 180, 320, 620, 64);
      s.nicks(
        tar,
        Array.from({ length: 13 }, (_, i) => [210 + i * 46, 322, 210 + i * 46, 382, 6] as const),
      );
      s.limb(foam, 8, 8, pts('190,352 340,348 500,356 660,350 790,352'));
      s.nicks(rust, slits('182,320,798,318,7'));
    });
    s.limb(timber, 7, 7, pts('190,468 130,480 120,520 170,540 210,510 190,480 150,500 160,522'));
    roofs(s, rust, quads('620,500,44,36 690,480,40,44 760,460,50,36 650,560,44,30 730,550,38,36'));
    track(s, rust, pts('90,320 150,400 110,470 90,540'));
    soundings(
      s,
      ink,
      trios(
        '290,180,8 380,140,12 500,110,15 330,280,5 250,250,7 240,420,3 300,560,2 620,110,18 90,400,9',
      ),
    );
    cartouche(s, 300, 66, 220);
  }),
  chart('ch05', shoal, [760, 150], (s) => {
    s.soft(
      lake,
      pts('-60,220 200,180 460,240 700,220 960,300 960,480 700,470 420,500 180,470 -60,500'),
    );
    s.soft(
      deep,
      pts('-60,300 200,268 460,318 700,300 960,366 960,410 700,390 420,410 180,380 -60,400'),
    );
    const ends: (readonly [number, number, number, number])[] = [];
    for (let i = 0; i < 9; i += 1) {
      const y = 250 + 32 * Math.sin(i * 0.8);
      ends.push([80 + i * 82, y - 60, 56, 62], [88 + i * 82, y + 156, 54, 58]);
    }
    roofs(s, night, ends);
    s.nicks(
      mist,
      ends.map(([x, y, w, h]) => [x + 6, y + h / 2, x + w - 6, y + h / 2, 5] as const),
    );
    for (let i = 0; i < 6; i += 1) {
      const [x, y] = [120 + i * 128, 344 + 12 * Math.sin(i * 1.3)];
      s.oval(amber, x, y, 12);
      s.ring(glim, x, y, 22, 22, 3);
    }
    soundings(
      s,
      foam,
      trios(
        '170,320,5 300,330,6 430,348,7 560,350,7 690,344,8 120,130,3 260,110,2 420,120,3 560,110,4 200,550,4 380,560,3 560,552,5 760,540,6',
      ),
    );
    cartouche(s, 90, 78, 210);
  }),
  chart('ch06', paper, [760, 480], (s) => {
    s.soft(
      mist,
      pts(
        '-60,130 180,150 330,90 560,130 640,250 960,250 960,350 640,360 560,520 330,560 160,480 -60,520',
      ),
    );
    s.soft(
      shoal,
      pts('60,240 210,220 340,160 500,200 560,290 560,360 480,460 340,490 190,410 60,420'),
    );
    s.soft(lake, pts('200,300 300,250 420,250 480,310 420,390 310,400 220,360'));
    s.limb(timber, 20, 20, pts('640,214 760,220 960,214'));
    s.limb(timber, 20, 20, pts('640,392 760,388 960,392'));
    for (const x of [650, 770]) {
      s.bar(tar, x, 226, x + 38, 304, 17);
      s.bar(tar, x, 380, x + 38, 302, 17);
    }
    s.limb(rust, 8, 8, pts('600,190 640,214 600,250'));
    roofs(s, rust, quads('640,120,44,36 700,136,40,40 600,430,44,36 640,500,40,36'));
    track(s, ink, pts('880,304 700,304 520,320 340,440 120,330'));
    soundings(
      s,
      ink,
      trios(
        '120,260,6 230,250,9 330,200,8 460,230,7 520,400,6 410,460,8 230,430,9 560,250,5 560,300,5 320,330,14 400,310,15 690,330,3 820,270,4',
      ),
    );
    cartouche(s, 90, 64, 180);
  }),
  chart('ch07', mist, [150, 170], (s) => {
    s.cut(plank, pts('330,-40 960,-40 960,700 760,700 700,560 600,480 540,380 430,300 400,180'));
    const tones = [mist, '#8fc0b3', shoal, '#459a8f', lake, deep];
    tones.forEach((color, i) => {
      const [x, y] = [760 - i * 88, 60 + i * 82];
      s.cut(color, [
        [x - 40, y],
        [x + 140, y + 10],
        [x + 130, y + 110],
        [x - 60, y + 96],
      ]);
      s.nicks(foam, [
        [x - 50, y + 92, x + 30, y + 102, 8],
        [x + 40, y + 104, x + 130, y + 108, 8],
      ]);
      s.bar(tar, x - 46, y, x - 66, y + 96, 11);
    });
    s.soft(lake, pts('-60,470 140,450 300,500 420,560 520,700 -60,700'));
    eel(s, ink, pts('640,190 600,230 610,280 540,310 550,350'), 19, glim);
    eel(s, ink, pts('470,350 430,390 440,430 370,460 380,510 300,530'), 22, glim);
    eel(s, rust, pts('220,500 170,520 140,500 90,540'), 18, foam);
    roofs(s, rust, quads('760,300,44,40 730,370,40,40 800,380,38,46 700,450,40,40 780,460,44,40'));
    soundings(
      s,
      ink,
      trios('790,100,1 700,180,2 250,280,12 170,340,15 300,380,9 90,400,18 270,110,13 340,200,11'),
    );
    soundings(s, foam, trios('220,560,9 330,562,7 360,560,7'));
    cartouche(s, 560, 540, 210);
  }),
  chart('ch08', glim, [150, 150], (s) => {
    s.cut(timber, pts('-60,330 250,300 300,250 620,250 670,300 960,330 960,700 -60,700'));
    s.hatch(tar, -30, 350, 950, 260, 30, 8, 70, 5);
    s.cut(lake, pts('350,360 550,360 640,700 260,700'));
    s.cut(deep, pts('400,380 500,380 540,700 350,700'));
    gate(s, 300, 150, 310, 250, shoal, ink, foam);
    s.oval(amber, 455, 130, 20);
    s.nicks(rust, slits('455,74,455,104,8 405,92,424,112,8 505,92,486,112,8'));
    s.nicks(foam, slits('410,410,404,470,9 450,410,450,490,9 494,410,500,466,9'));
    track(s, foam, pts('450,570 452,500'));
    soundings(s, ink, trios('110,280,6 220,250,8 680,240,7 780,280,5 750,130,9 680,160,12'));
    soundings(s, foam, trios('380,520,16 470,530,18 340,560,14 540,556,15'));
    cartouche(s, 610, 70, 180);
  }),
];
