import { arc, pts, slits } from './geometry.js';
import {
  ink,
  night,
  deep,
  lake,
  shoal,
  mist,
  foam,
  paper,
  amber,
  glim,
  tar,
  timber,
  plank,
  rust,
  ember,
  type Pt,
} from './palette.js';
import { rays, glow, lamp, key } from './things.js';
import { sheetOfWater, water } from './water.js';
import type { Picture } from './scenes.js';
import type { Nick, Sheet } from './sheet.js';

/** A sliver of wood behind a window, in a frame with a device of its own. */
export function relic(
  s: Sheet,
  ground: string,
  frame: string,
  line: string,
  wood: string,
  veins: string,
  device: (s: Sheet) => void,
): void {
  s.ground(ground);
  s.hatch(line, -30, -20, 700, 740, 50, 90, 60, 5);
  s.cut(frame, pts('140,96 500,90 512,690 128,696'));
  s.lines(line, 5, pts('160,118 480,114 490,670 150,674 160,118'));
  s.cut(ink, pts('216,250 420,244 428,610 210,614'));
  s.cut(wood, pts('256,262 392,256 410,420 382,600 240,604 228,430'));
  const marks: Nick[] = [];
  for (let i = 0; i < 9; i += 1)
    marks.push([
      254 + i * 15,
      272 + s.rand(0, 40),
      248 + i * 16 + s.rand(-6, 6),
      590 - s.rand(0, 60),
      5,
    ]);
  s.nicks(veins, marks);
  for (const [x, y] of pts('176,134 466,130 474,654 166,658')) s.oval(line, x, y, 8);
  device(s);
  water(s, 714, [shoal, lake, deep]);
}

/** An oval medallion with a rope of cuts about it. */
export function medallion(
  s: Sheet,
  x: number,
  y: number,
  rx: number,
  ry: number,
  rim: string,
  field: string,
): void {
  s.soft(rim, arc(x, y, rx + 26, ry + 26, 0, 360, 26));
  const nicks: Nick[] = arc(x, y, rx + 13, ry + 13, 0, 360, 36).map(([px, py]): Nick => [
    px - 8,
    py - 9,
    px + 8,
    py + 9,
    6,
  ]);
  s.nicks(ink, nicks);
  s.soft(field, arc(x, y, rx, ry, 0, 360, 26));
}

/** A head in profile, cut in one piece and looking right. */
export function profile(s: Sheet, color: string, x: number, y: number, k: number): void {
  const at = (px: number, py: number): Pt => [x + px * k, y + py * k];
  s.cut(color, [
    at(-40, -70),
    at(0, -92),
    at(40, -78),
    at(54, -40),
    at(58, -14),
    at(78, 14),
    at(58, 24),
    at(60, 44),
    at(50, 62),
    at(16, 70),
    at(22, 110),
    at(-52, 110),
    at(-44, 60),
    at(-64, 10),
    at(-62, -40),
  ]);
  s.soft(color, [
    at(-150, 190),
    at(-120, 126),
    at(-50, 92),
    at(24, 92),
    at(110, 130),
    at(140, 190),
  ]);
}

/** The paper strip where a name is signed. */
export function signatureStrip(s: Sheet, x: number, y: number, w: number): void {
  s.cut(foam, [
    [x, y],
    [x + w, y - 4],
    [x + w + 6, y + 86],
    [x - 5, y + 90],
  ]);
  s.nicks(timber, [[x + 24, y + 66, x + w - 24, y + 64, 5]]);
  s.nicks(rust, [
    [x + 30, y + 34, x + 46, y + 56, 6],
    [x + 30, y + 56, x + 46, y + 34, 6],
  ]);
}

/** Signed medallions, and slivers of the boats. */
export const keepsakes: readonly Picture[] = [
  {
    id: 'au01',
    draw: (s) => {
      s.ground(deep);
      rays(s, lake, 318, 310, 240, 560, 44, 11);
      medallion(s, 318, 310, 196, 232, amber, mist);
      s.clipped(arc(318, 310, 194, 230, 0, 360, 26), () => {
        profile(s, ink, 318, 320, 1.35);
        s.soft(rust, pts('238,424 300,408 368,426 378,460 340,486 262,486 228,456'));
        s.cut(rust, pts('240,436 160,414 104,430 126,456 96,478 172,470 244,478'));
        s.nicks(ember, slits('250,444,356,448,8 262,466,340,470,6'));
        s.soft(lake, pts('222,250 250,184 330,170 400,226 404,250 318,236'));
        s.cut(tar, pts('226,240 396,234 440,262 400,262 224,262'));
        sheetOfWater(s, lake, 506, 70, 10);
      });
      water(s, 720, [shoal, lake, night]);
      signatureStrip(s, 128, 598, 380);
    },
  },
  {
    id: 'au02',
    draw: (s) => {
      s.ground(rust);
      rays(s, ember, 318, 320, 120, 600, 44, 11);
      medallion(s, 196, 330, 128, 168, glim, mist);
      medallion(s, 440, 270, 128, 168, glim, amber);
      s.clipped(arc(196, 330, 126, 166, 0, 360, 24), () => {
        profile(s, deep, 190, 340, 1);
        s.soft(tar, pts('116,320 130,260 190,236 246,262 236,292 180,300 150,350'));
        sheetOfWater(s, lake, 468, 60, 9);
      });
      s.clipped(arc(440, 270, 126, 166, 0, 360, 24), () => {
        s.within({ transform: 'translate(886 0) scale(-1 1)' }, () => {
          profile(s, night, 446, 280, 1);
          s.cut(tar, pts('376,244 390,186 480,186 500,232 530,246'));
        });
        sheetOfWater(s, lake, 408, 60, 9);
      });
      water(s, 720, [shoal, lake, deep]);
      signatureStrip(s, 96, 570, 250);
      signatureStrip(s, 300, 650, 250);
    },
  },
  {
    id: 'au03',
    draw: (s) => {
      s.ground(night);
      rays(s, deep, 318, 310, 240, 560, 44, 11);
      medallion(s, 318, 310, 196, 232, shoal, ink);
      s.clipped(arc(318, 310, 194, 230, 0, 360, 26), () => {
        glow(s, 318, 300, 130);
        s.bar(timber, 318, 60, 318, 190, 8);
        lamp(s, 318, 184, 180, true, timber);
        sheetOfWater(s, lake, 484, 70, 10);
        s.nicks(amber, slits('266,510,370,510,8 286,526,350,526,6'));
      });
      water(s, 720, [lake, deep, ink]);
      signatureStrip(s, 128, 598, 380);
    },
  },
  {
    id: 're01',
    draw: (s) =>
      relic(s, night, tar, amber, timber, plank, (t) => {
        t.limb(amber, 16, 10, pts('256,214 250,178 272,148 306,150'));
        t.cut(amber, pts('296,138 420,168 300,166'));
        t.oval(tar, 306, 150, 4);
      }),
  },
  {
    id: 're02',
    draw: (s) =>
      relic(s, glim, rust, foam, lake, mist, (t) => {
        for (let i = 0; i < 7; i += 1) t.box(i === 3 ? amber : foam, 190 + i * 38, 146, 26, 66);
        t.oval(amber, 372, 436, 15);
        key(t, foam, 318, 626, 40, 90);
      }),
  },
  {
    id: 're03',
    draw: (s) =>
      relic(s, paper, lake, foam, shoal, foam, (t) => {
        t.cut(foam, pts('196,206 226,148 410,148 442,206'));
        t.nicks(
          lake,
          Array.from({ length: 8 }, (_, i): Nick => [244 + i * 22, 150, 226 + i * 27, 204, 7]),
        );
        for (const y of [290, 560]) for (const x of [262, 372]) t.oval(deep, x, y, 8);
      }),
  },
  {
    id: 're04',
    draw: (s) =>
      relic(s, ember, timber, glim, plank, timber, (t) => {
        for (const [i, color] of [rust, foam, lake, plank, glim].entries())
          t.box(color, 196 + i * 50, 150 + (i % 2) * 10, 42, 50);
        t.nicks(ink, slits('190,178,446,184,7'));
        t.lines(foam, 7, pts('226,300 414,560'), pts('414,300 226,560'));
      }),
  },
];
