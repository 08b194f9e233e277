import { town } from './buildings.js';
import { arm, brows, buttons, coat, head } from './figures.js';
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
import type { Sheet } from './sheet.js';
import { placedAt } from './story-people.js';
import { key, rays } from './things.js';
import { sheetOfWater, water } from './water.js';

/** A cat that sits and looks up, its paws at the origin. */
function sittingCat(s: Sheet, color: string, mark: string): void {
  s.limb(color, 24, 10, pts('40,-14 84,-20 96,-70 80,-100'));
  s.soft(color, pts('-34,0 -40,-70 -14,-116 20,-116 48,-60 54,0'));
  s.oval(color, -6, -130, 42, 36);
  s.cut(color, pts('-42,-140 -44,-190 -8,-160'), pts('30,-140 34,-190 0,-160'));
  s.oval(mark, -22, -136, 6, 8);
  s.oval(mark, 10, -136, 6, 8);
  s.cut(mark, pts('-12,-122 0,-122 -6,-114'));
}

/** A donkey, a fisher of keys, a clerk and his launch. */
export const crewUphill: readonly Picture[] = [
  {
    id: 'c045',
    draw: (s) => {
      s.ground(glim);
      s.hatch(foam, -30, -20, 700, 560, 50, 24, 90, 9);
      town(s, 380, 700, 380, 60, 150, shoal, lake, foam);
      const steps: Pt[] = [];
      for (let i = 0; i < 9; i += 1)
        steps.push([-60 + i * 90, 330 + i * 48], [30 + i * 90, 330 + i * 48]);
      s.cut(timber, [[-60, 800], ...steps, [760, 800]]);
      for (let i = 0; i < 9; i += 1)
        s.bar(plank, -62 + i * 90, 334 + i * 48, 36 + i * 90, 333 + i * 48, 14);
      s.hatch(tar, -20, 520, 420, 180, 22, 0, 80, 6);
      s.within({ transform: 'translate(318 430) rotate(26)' }, () => {
        for (const [x, y, low] of trios('-130,30,120 -80,40,124 90,40,116 140,30,120')) {
          s.bar(night, x, y, x + 6, low, 30);
          s.bar(ink, x - 14, low, x + 24, low, 24);
        }
        s.limb(night, 11, 16, pts('170,-20 206,20 196,80'));
        s.soft(ink, pts('184,70 208,66 214,114 190,124'));
        s.soft(night, pts('-170,30 -160,-46 -60,-62 80,-58 172,-40 178,40 120,70 -110,70'));
        s.nicks(lake, slits('-120,-20,-60,-30,8 -40,50,60,54,8 100,-10,150,10,8'));
        s.limb(night, 100, 70, pts('-130,0 -190,-80 -226,-130'));
        s.soft(night, pts('-190,-190 -210,-110 -260,-60 -320,-70 -330,-110 -280,-150 -236,-196'));
        s.soft(mist, pts('-270,-120 -256,-62 -310,-56 -336,-84 -326,-116'));
        s.cut(
          night,
          pts('-226,-180 -246,-290 -216,-270 -200,-190'),
          pts('-200,-186 -190,-290 -166,-262 -176,-184'),
        );
        s.nicks(ember, slits('-222,-200,-232,-260,9 -188,-200,-182,-258,9'));
        s.oval(foam, -248, -140, 12, 13);
        s.oval(ink, -250, -140, 7, 8);
        s.oval(ink, -316, -96, 5);
        s.nicks(ink, slits('-206,-190,-160,-100,18 -196,-160,-140,-70,18'));
        s.lines(rust, 9, pts('-300,-138 -254,-52'), pts('-276,-100 -196,-110'));
        s.box(rust, -94, -340, 220, 286);
        s.cut(tar, pts('-110,-336 -96,-366 128,-366 142,-336'));
        s.box(ember, -76, -316, 84, 220);
        s.box(tar, 26, -316, 84, 220);
        s.cut(ember, pts('110,-316 160,-292 160,-116 110,-96'));
        s.cut(foam, pts('34,-96 40,-250 70,-262 100,-250 104,-96'));
        s.bar(amber, 30, -286, 106, -286, 6);
        s.oval(amber, -8, -206, 9);
        s.nicks(rust, slits('-60,-300,-60,-110,7 -36,-300,-36,-110,7'));
        s.lines(
          amber,
          10,
          pts('-104,-120 136,-116'),
          pts('-70,-340 -86,60'),
          pts('96,-340 104,62'),
        );
        s.box(rust, -96, -92, 224, 40);
      });
      water(s, 706, [shoal, lake, deep]);
    },
  },
  {
    id: 'c046',
    draw: (s) => {
      s.ground(shoal);
      rays(s, mist, 410, 400, 190, 600, 38, 13);
      s.box(plank, -40, 610, 720, 130);
      s.nicks(
        timber,
        slits('-20,640,200,642,7 220,660,480,658,7 470,640,660,642,7 60,690,300,692,7'),
      );
      s.bar(tar, 70, 530, 66, 660, 34);
      s.bar(tar, 130, 530, 140, 660, 34);
      s.soft(ink, pts('40,650 86,650 86,684 24,684'), pts('118,650 162,650 182,684 118,684'));
      coat(s, rust, ember, 102, 402, 72, 96, 150);
      s.oval(tar, 36, 268, 44, 46);
      s.oval(tar, 180, 268, 44, 46);
      head(s, 108, 306, {
        skin: timber,
        shade: tar,
        size: 78,
        dark: -1,
        wide: 0.92,
        mouth: 'smile',
      });
      s.soft(tar, pts('38,306 44,240 108,218 172,240 180,306 140,256 78,256'));
      s.bar(amber, 62, 250, 48, 278, 13);
      s.bar(amber, 154, 250, 170, 278, 13);
      s.bar(timber, 170, 640, 388, 80, 17);
      s.cut(timber, pts('372,92 362,40 378,36 392,74 424,56 430,70 402,98'));
      s.lines(foam, 6, pts('132,514 210,470 300,250 392,66 410,120 410,290'));
      arm(s, rust, timber, ink, pts('152,440 210,420 242,400'), 46, 36, 42);
      arm(s, rust, timber, ink, pts('58,450 60,520 120,520'), 46, 36, 40);
      const keys: readonly (readonly [number, number, number, number, string])[] = [
        [306, 500, 132, 70, rust],
        [320, 540, 150, 44, tar],
        [350, 556, 130, 22, plank],
        [384, 540, 150, 4, rust],
        [440, 540, 140, -6, tar],
        [474, 556, 136, -28, rust],
        [500, 536, 150, -52, timber],
        [516, 500, 126, -76, tar],
        [330, 470, 120, 96, timber],
        [496, 470, 116, -100, plank],
        [410, 560, 120, -2, amber],
        [350, 520, 110, 118, rust],
      ];
      for (const [x, y, size, turn, color] of keys) key(s, color, x, y - 20, size, turn);
      s.ring(rust, 410, 390, 92, 100, 66, 180, 360);
      s.box(rust, 286, 386, 64, 90);
      s.box(rust, 470, 386, 64, 90);
      s.box(foam, 284, 470, 68, 56);
      s.box(foam, 468, 470, 68, 56);
      s.nicks(ember, slits('306,440,320,340,11 330,330,390,290,11 490,400,490,460,9'));
      s.nicks(mist, slits('296,484,296,516,6 480,484,480,516,6'));
      water(s, 712, [lake, deep, night]);
    },
  },
  {
    id: 'c047',
    draw: (s) => {
      s.ground(ember);
      s.hatch(rust, -30, -20, 700, 700, 56, 90, 90, 8);
      s.cut(paper, pts('-40,640 680,630 680,760 -40,760'));
      s.nicks(plank, slits('-20,664,240,660,6 260,690,520,684,6 400,654,660,652,6'));
      coat(s, ink, night, 318, 356, 150, 164, 330);
      s.cut(foam, pts('270,350 318,440 366,350 318,372'));
      s.cut(ink, pts('318,392 290,376 290,412'), pts('318,392 346,376 346,412'));
      head(s, 318, 236, {
        skin: plank,
        shade: timber,
        size: 92,
        dark: 1,
        wide: 0.72,
        mouth: 'down',
      });
      s.soft(tar, pts('248,240 250,176 286,140 350,138 386,172 390,240 372,190 318,166 266,190'));
      brows(s, tar, 318, 236, 92, 0.06, 0.09);
      s.cut(foam, pts('196,432 440,432 436,640 200,640'));
      for (let i = 0; i < 6; i += 1)
        s.bar(i % 2 === 0 ? rust : shoal, 222 + i * 38, 470, 222 + i * 38, 640, 15);
      s.soft(paper, arc(318, 640, 118, 26));
      s.bar(amber, 186, 450, 450, 450, 36);
      s.soft(amber, arc(318, 432, 132, 30));
      s.soft(tar, arc(318, 434, 112, 20));
      s.soft(plank, pts('240,430 250,396 290,386 326,400 336,432'));
      s.nicks(kiln, slits('262,410,310,404,9 270,424,320,420,7'));
      for (const [x, y, turn] of trios(
        '366,424,-20 420,414,40 444,470,86 440,540,100 420,604,116 384,654,140',
      )) {
        const a = (turn * Math.PI) / 180;
        const [c, d] = [Math.cos(a) * 30, Math.sin(a) * 30];
        s.limb(rust, 40, 34, [
          [x - c, y - d],
          [x - d * 0.14, y + c * 0.14],
          [x + c, y + d],
        ]);
        s.nicks(clay, [[x - c * 0.6 - 8, y - d * 0.6, x + c * 0.4 - 8, y + d * 0.4, 7]]);
      }
      s.limb(ink, 72, 54, pts('184,430 110,520 176,572'));
      s.limb(ink, 72, 54, pts('452,430 540,510 466,572'));
      arm(s, ink, plank, tar, pts('110,520 140,556 178,574'), 60, 50, 50);
      arm(s, ink, plank, tar, pts('538,512 510,556 466,580'), 60, 50, 50);
      buttons(s, amber, 246, 390, 30, 1, 7);
      placedAt(s, 96, 716, 1, () => sittingCat(s, tar, glim));
      placedAt(s, 548, 716, 0.92, () => sittingCat(s, foam, ink), 0, -0.92);
      water(s, 710, [mist, shoal, lake]);
    },
  },
  {
    id: 'c048',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, -20, 700, 500, 44, 0, 120, 9);
      s.oval(foam, 150, 170, 80);
      sheetOfWater(s, shoal, 520, 90, 11);
      s.cut(tar, pts('40,470 70,470 76,740 36,740'), pts('150,470 180,470 186,740 146,740'));
      s.cut(plank, pts('-40,400 216,404 222,470 -40,470'));
      s.cut(timber, pts('-40,466 222,466 224,620 -40,624'));
      s.nicks(tar, slits('-20,420,190,424,6 -20,446,200,448,6'));
      s.cut(foam, pts('20,424 196,420 200,596 24,600'));
      s.cut(rust, pts('38,442 182,438 186,578 42,582'));
      s.cut(foam, pts('52,456 168,452 171,564 56,568'));
      s.nicks(
        rust,
        slits('62,546,92,470,22 92,550,122,470,22 122,548,150,468,22 146,554,164,490,16'),
      );
      s.cut(night, pts('400,420 410,270 640,250 700,250 700,440'));
      s.cut(glim, pts('440,300 520,294 520,370 436,374'), pts('556,292 660,286 660,364 556,368'));
      s.cut(ink, pts('386,276 396,246 700,220 700,262'));
      s.bar(ink, 560, 240, 566, 110, 44);
      s.bar(amber, 540, 130, 588, 128, 21);
      s.bar(rust, 640, 230, 640, 60, 9);
      s.cut(rust, pts('640,62 560,78 566,50 552,26 640,12'));
      s.nicks(foam, slits('580,50,624,40,7'));
      s.cut(ink, pts('352,430 700,400 700,720 420,720 350,600'));
      s.nicks(shoal, slits('400,470,680,446,8 400,560,680,560,7 440,640,680,640,7'));
      s.bar(amber, 360, 440, 700, 412, 15);
      s.cut(tar, pts('352,400 440,392 446,640 360,654'));
      s.cut(rust, pts('226,376 358,398 366,662 236,624'));
      s.cut(ember, pts('240,394 344,412 350,640 250,608'));
      s.cut(rust, pts('254,414 332,426 336,616 262,590'));
      s.nicks(
        ember,
        slits('274,586,296,440,18 296,594,318,450,18 262,560,272,440,12 320,606,328,500,12'),
      );
      s.nicks(rust, slits('206,404,214,376,9 210,630,202,660,9 196,396,190,372,8'));
      s.nicks(plank, slits('372,420,384,634,7 410,412,416,630,7'));
      water(s, 652, [lake, deep, night]);
      s.nicks(foam, slits('300,664,470,662,11 270,684,380,684,8'));
    },
  },
];
