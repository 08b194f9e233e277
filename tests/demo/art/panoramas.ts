import { house } from './buildings.js';
import { cookBoat, heron, moored } from './craft.js';
import { blue, ladder } from './crew-boats.js';
import { arc, pts, quads, slits } from './geometry.js';
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
  plank,
  rust,
  shoal,
  tar,
  timber,
  topper,
  type Pt,
} from './palette.js';
import type { Picture } from './scenes.js';
import type { Nick, Sheet } from './sheet.js';
import { placedAt } from './story-people.js';
import { rays } from './things.js';
import { glitter, sheetOfWater } from './water.js';

/** A dog that stands on the quay, its feet at the origin. */
function dog(s: Sheet, color: string): void {
  for (const x of [-60, -36, 40, 62]) s.bar(color, x, -60, x + 2, 0, 17);
  s.limb(color, 14, 6, pts('66,-96 96,-120 104,-156'));
  s.soft(color, pts('-76,-60 -70,-106 60,-110 80,-90 76,-54'));
  s.soft(color, pts('-60,-90 -80,-150 -120,-146 -136,-128 -110,-112'));
  s.cut(color, pts('-84,-144 -70,-186 -58,-134'));
}

/** A roof from straight above: the dark slope, the lit slope and the chimney. */
interface Roof {
  readonly dark: readonly Pt[];
  readonly lit: readonly Pt[];
  readonly chimney: Pt;
}

function roofAbove(x: number, y: number, w: number, h: number, turn: number): Roof {
  const a = (turn * Math.PI) / 180;
  const at = (px: number, py: number): Pt => [
    x + px * Math.cos(a) - py * Math.sin(a),
    y + px * Math.sin(a) + py * Math.cos(a),
  ];
  return {
    dark: [at(0, -h / 2), at(w / 2, -h / 2), at(w / 2, h / 2), at(0, h / 2)],
    lit: [at(-w / 2, -h / 2), at(0, -h / 2), at(0, h / 2), at(-w / 2, h / 2)],
    chimney: at(w * 0.16, -h * 0.22),
  };
}

/** The wide toppers, two to four. */
export const panoramas: readonly Picture[] = [
  {
    id: 'fp02',
    format: topper,
    draw: (s) => {
      s.ground(mist);
      s.hatch(foam, -60, -40, 1400, 560, 10, 0, 260, 17);
      rays(s, glim, 500, 760, 260, 1000, 32, 22);
      s.oval(glim, 500, 770, 230);
      s.oval(amber, 500, 770, 170);
      s.cut(
        shoal,
        pts(
          '-80,800 60,640 240,720 420,690 560,780 760,700 960,610 1150,680 1360,600 1360,880 -80,880',
        ),
      );
      for (const [x, y, w, h] of quads(
        '-20,850,110,210 96,850,96,150 196,850,84,110 1190,850,110,260',
      ))
        house(s, x, y, w, h, lake, deep, x === 1190 ? glim : null, 2);
      sheetOfWater(s, lake, 840, 170, 20);
      glitter(s, glim, 490, 880, 150, 260);
      moored(s, 760, 1190, 1.34, () => heron(s, true));
      sheetOfWater(s, shoal, 1190, 210, 24);
      s.limb(foam, 40, 170, pts('210,780 170,690 220,600 150,480 60,400 90,250 -60,120'));
      moored(s, 270, 1240, 1.14, () => cookBoat(s));
      sheetOfWater(s, deep, 1270, 230, 24);
      s.lines(foam, 9, pts('730,1200 720,1290 744,1360 790,1420'));
      s.bar(tar, 790, 1390, 792, 1440, 34);
      s.cut(tar, pts('-60,1480 1340,1460 1340,1560 -60,1560'));
      s.cut(plank, pts('-60,1420 1340,1404 1340,1480 -60,1494'));
      s.nicks(timber, slits('0,1450,380,1446,9 420,1470,800,1464,9 850,1440,1250,1434,9'));
      for (const x of [120, 520, 980]) s.bar(tar, x, 1490, x + 4, 1720, 54);
      s.cut(rust, pts('1010,1430 1016,1210 1196,1206 1200,1426'));
      s.cut(ink, pts('980,1216 1104,1112 1232,1210'));
      s.cut(glim, pts('1050,1260 1120,1258 1120,1330 1050,1332'));
      s.bar(timber, 900, 1430, 1090, 1020, 16);
      s.cut(amber, pts('1060,1010 1114,1010 1106,1070 1066,1070'));
      placedAt(s, 300, 1424, 0.94, () => dog(s, ink));
      placedAt(s, 560, 1420, 0.8, () => dog(s, timber), 0, -0.8);
      sheetOfWater(s, ink, 1600, 240, 28);
    },
  },
  {
    id: 'fp03',
    format: topper,
    draw: (s) => {
      s.ground(ink);
      const street = pts(
        '-60,1700 120,1420 330,1230 560,1080 640,900 700,640 860,420 980,180 1010,-60 1250,-60 1220,220 1080,520 930,720 890,980 800,1220 560,1400 380,1560 280,1820 -60,1840',
      );
      s.soft(tar, street);
      s.clipped(street, () => {
        s.hatch(timber, 600, -20, 660, 900, 40, 20, 60, 10);
        s.cut(
          lake,
          pts('-80,1040 300,1120 560,1080 760,1000 900,940 1000,1100 800,1400 500,1820 -80,1860'),
        );
        s.hatch(shoal, 0, 1080, 900, 700, 20, -30, 120, 11);
      });
      const roofs = [
        ...quads(
          '150,150,250,260 440,110,230,240 730,150,220,260 180,460,270,240 470,410,230,260 120,760,260,260 400,720,250,230 160,1040,240,220',
        ),
        ...quads(
          '1190,640,220,260 1110,930,250,220 1160,1200,280,230 900,1460,260,240 1180,1480,240,260 640,1640,270,230 950,1720,260,220',
        ),
      ].map(([x, y, w, h], i) => roofAbove(x, y, w, h, [-24, 12, -8, 66, -30, 40][i % 6] ?? 0));
      const tones = [
        [rust, ember],
        [night, blue],
        [timber, plank],
      ] as const;
      tones.forEach(([dark, lit], k) => {
        const some = roofs.filter((_, i) => i % 3 === k);
        s.cut(dark, ...some.map((roof) => roof.dark));
        s.cut(lit, ...some.map((roof) => roof.lit));
      });
      s.cut(foam, ...roofs.map(({ chimney: [x, y] }) => arc(x, y, 34, 34, 20, 380, 4)));
      s.cut(ink, ...roofs.map(({ chimney: [x, y] }) => arc(x, y, 19, 19, 20, 380, 4)));
      const lights = pts(
        '1110,60 1060,210 1110,330 990,430 940,560 850,650 830,800 770,930 720,1060 600,1190 480,1270',
      );
      for (const [x, y] of [...lights, [170, 1560] as const]) {
        s.within({ opacity: 0.3 }, () => s.cut('#f08a24', arc(x, y, 74, 74, 0, 360, 11)));
        s.cut(amber, arc(x, y, 27, 27, 0, 360, 7));
      }
      s.cut(
        glim,
        ...[...lights, [170, 1560] as const].map(([x, y]) => arc(x, y, 14, 14, 0, 360, 5)),
      );
      const hats: readonly (readonly [number, number, string])[] = lights.map(([x, y], i) => [
        x + (i % 2 === 0 ? 56 : -54),
        y + 40,
        [foam, rust, shoal, amber, ink][i % 5] ?? foam,
      ]);
      for (const [x, y, color] of hats) {
        s.cut(color, arc(x, y, 44, 40, 0, 360, 9));
        s.cut(color === foam ? plank : foam, arc(x - 3, y - 3, 23, 21, 0, 360, 6));
      }
      s.cut(
        paper,
        pts('900,470 990,500 966,570 876,540'),
        pts('650,1120 700,1090 730,1140 680,1170'),
      );
      ladder(s, plank, [200, 1690], [330, 1480], 46, 6);
      s.cut(foam, arc(240, 1610, 46, 42, 0, 360, 10));
      s.cut(rust, arc(237, 1607, 24, 22, 0, 360, 8));
      for (const r of [110, 160]) s.ring(mist, 210, 1590, r, r, 6, 190, 330);
    },
  },
  {
    id: 'fp04',
    format: topper,
    draw: (s) => {
      s.ground(night);
      s.hatch(ink, -60, -40, 1400, 700, 16, 0, 280, 17);
      s.cut(
        ink,
        pts('-80,760 120,620 330,690 560,560 760,650 980,540 1180,640 1360,580 1360,900 -80,900'),
      );
      s.cut('#0c1728', pts('-80,830 200,760 460,810 700,740 960,800 1360,720 1360,900 -80,900'));
      sheetOfWater(s, deep, 860, 170, 12);
      const lights: Pt[] = [];
      for (let i = 0; i < 40; i += 1)
        lights.push([24 + i * 28.4 + s.rand(-3, 3), 838 - 130 * s.rand() ** 2]);
      const high: Pt = [846, 566];
      lights.push(high);
      s.within({ opacity: 0.35 }, () =>
        s.cut('#f08a24', ...lights.map(([x, y]) => arc(x, y, 32, 32, 0, 360, 8))),
      );
      s.cut(amber, ...lights.map(([x, y]) => arc(x, y, 13, 13, 0, 360, 6)));
      s.cut(glim, ...lights.map(([x, y]) => arc(x, y, 8, 8, 0, 360, 4)));
      rays(s, glim, high[0], high[1], 22, 62, 12, 8);
      const doubled = lights.flatMap(([x, y]): Nick[] => {
        const mirror = 900 + (870 - y) * 1.25;
        return [0, 34, 72].map((more): Nick => [
          x - 22 + more / 6,
          mirror + more,
          x + 22 - more / 6,
          mirror + more,
          13,
        ]);
      });
      s.nicks(amber, doubled);
      s.hatch(lake, -40, 1060, 1350, 320, 16, 0, 200, 10);
      s.bar(timber, -60, 1330, 1340, 1304, 62);
      s.nicks(plank, slits('20,1318,480,1310,10 540,1312,1100,1300,10'));
      for (const x of [130, 450, 770, 1090]) s.bar(tar, x, 1350, x + 6, 1820, 66);
      s.bar(tar, -60, 1540, 1340, 1524, 38);
      s.soft(foam, pts('604,1296 612,1220 690,1216 700,1292'));
      s.ring(foam, 706, 1252, 26, 26, 12);
      s.bar(rust, 606, 1242, 696, 1238, 13);
      s.limb(mist, 12, 3, pts('650,1200 632,1150 664,1110 640,1060'));
      s.bar(ink, -60, 30, 1340, 14, 92);
      s.bar(ink, 1196, -60, 1210, 1820, 62);
      s.nicks(night, slits('40,40,600,34,10 700,30,1140,26,10 1190,200,1200,700,9'));
      sheetOfWater(s, ink, 1650, 240, 26);
    },
  },
];
