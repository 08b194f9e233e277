import { pts } from './geometry.js';
import { cookBoat, doorFerry, heron, kettleBoat, launch, moored, raft } from './craft.js';
import { arm, brows, coat, head } from './figures.js';
import {
  amber,
  clay,
  kiln,
  deep,
  ember,
  foam,
  glim,
  ink,
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
import { town } from './buildings.js';
import { glow, rays } from './things.js';
import { glitter, nightWater, sheetOfWater, water } from './water.js';

/** The craft of the lake. */
export const crewCraft: readonly Picture[] = [
  {
    id: 'c001',
    draw: (s) => {
      s.ground(night);
      s.oval(mist, 150, 176, 78);
      s.oval(foam, 142, 170, 68);
      s.hatch(shoal, -30, 40, 700, 400, 44, -14, 46, 4);
      town(s, -40, 680, 600, 60, 120, ink, ink, amber);
      sheetOfWater(s, lake, 588, 80, 10);
      glow(s, 542, 336, 116);
      rays(s, glim, 542, 336, 66, 150, 22, 6);
      moored(s, 258, 640, 0.93, () => heron(s, true));
      water(s, 640, nightWater);
      glitter(s, amber, 540, 668, 96, 100);
    },
  },
  {
    id: 'c010',
    draw: (s) => {
      s.ground(paper);
      s.hatch(foam, -30, 20, 700, 420, 60, 78, 70, 8);
      s.hatch(plank, -30, 20, 700, 420, 30, 78, 44, 3);
      town(s, -40, 680, 560, 90, 190, plank, timber, foam);
      sheetOfWater(s, shoal, 548, 90, 11);
      moored(s, 300, 640, 1, () => launch(s));
      water(s, 644, [shoal, lake, deep]);
    },
  },
  {
    id: 'c011',
    draw: (s) => {
      s.ground(glim);
      s.soft(foam, pts('470,150 560,190 590,280 540,360 440,360 360,300 350,220 400,160'));
      s.oval(amber, 470, 262, 66);
      rays(s, ember, 470, 262, 150, 260, 26, 7);
      sheetOfWater(s, mist, 556, 90, 11);
      s.limb(foam, 30, 130, pts('258,236 226,196 256,150 210,104 120,88 40,20 -40,-30'));
      s.limb(paper, 16, 60, pts('262,236 240,196 272,152 230,96 150,60 90,-10'));
      moored(s, 318, 640, 1.05, () => cookBoat(s));
      water(s, 644, [mist, shoal, lake]);
      glitter(s, glim, 470, 664, 80, 90);
    },
  },
  {
    id: 'c012',
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -30, 0, 700, 440, 50, -30, 60, 7);
      s.limb(foam, 20, 150, pts('540,340 570,280 520,220 560,150 480,90 380,60 300,-40'));
      s.limb(paper, 12, 60, pts('548,330 590,270 546,210 590,140 520,60'));
      town(s, -50, 240, 580, 60, 130, shoal, lake, null);
      sheetOfWater(s, shoal, 572, 90, 11);
      moored(s, 318, 640, 1.1, () => kettleBoat(s));
      water(s, 644, [lake, deep, night]);
    },
  },
  {
    id: 'c013',
    draw: (s) => {
      s.ground(deep);
      s.oval(glim, 318, 240, 150);
      rays(s, lake, 318, 240, 160, 420, 40, 9);
      sheetOfWater(s, shoal, 560, 90, 11);
      moored(s, 318, 640, 1.02, () => doorFerry(s));
      water(s, 644, nightWater);
      glitter(s, glim, 310, 668, 90, 120);
    },
  },
  {
    id: 'c014',
    draw: (s) => {
      s.ground(amber);
      s.hatch(glim, -30, 0, 700, 460, 50, 4, 90, 7);
      s.hatch(ember, -30, 0, 700, 460, 24, 4, 60, 4);
      sheetOfWater(s, mist, 560, 90, 11);
      sheetOfWater(s, shoal, 590, 90, 11);
      for (const side of [-1, 1] as const) {
        const [cloth, fold] = side === 1 ? [rust, ember] : [deep, shoal];
        s.within({ transform: `translate(318 22) scale(${side} 1) rotate(16 100 620)` }, () => {
          s.bar(tar, 222, 150, 214, 700, 15);
          s.bar(ink, 66, 520, 40, 640, 42);
          s.bar(ink, 116, 520, 130, 634, 42);
          coat(s, cloth, fold, 92, 350, 76, 84, 200);
          head(s, 92, 262, {
            skin: side === 1 ? clay : plank,
            shade: side === 1 ? kiln : timber,
            size: 66,
            dark: -1,
            mouth: 'down',
          });
          brows(s, tar, 92, 262, 62, -0.05, 0.1);
          if (side === 1) s.cut(ink, pts('22,240 40,188 146,186 172,240'));
          else s.soft(ink, pts('32,270 36,206 92,180 148,204 158,262 92,222'));
          arm(s, cloth, side === 1 ? clay : plank, ink, pts('44,396 110,460 196,436'), 52, 38, 36);
          arm(s, fold, side === 1 ? clay : plank, ink, pts('132,390 176,396 200,344'), 48, 36, 36);
        });
      }
      s.within({ transform: 'translate(318 650) scale(1.06)' }, () => raft(s));
      water(s, 668, [shoal, lake, deep]);
    },
  },
];
