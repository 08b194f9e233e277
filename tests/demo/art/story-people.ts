import { brows, coat, head, type Face } from './figures.js';
import { pts, slits } from './geometry.js';
import {
  amber,
  clay,
  deep,
  ember,
  foam,
  ink,
  kiln,
  lake,
  mist,
  paper,
  plank,
  rust,
  shoal,
  tar,
  timber,
  type Pt,
} from './palette.js';
import type { Sheet } from './sheet.js';

/** Draws in a frame moved to (x, y), turned in degrees and scaled; a negative `wide` mirrors it. */
export function placedAt(
  s: Sheet,
  x: number,
  y: number,
  scale: number,
  draw: () => void,
  turn = 0,
  wide = scale,
): void {
  const turned = turn === 0 ? '' : ` rotate(${turn})`;
  s.within({ transform: `translate(${x} ${y})${turned} scale(${wide} ${scale})` }, draw);
}

type Look = Pick<Face, 'eyes' | 'mouth'>;

/** The apprentice's head with its tufts and the pencil, centred on the origin. */
export function tamsinHead(s: Sheet, look: Look = {}): void {
  head(s, 0, 0, { skin: clay, shade: kiln, size: 80, dark: -1, wide: 0.88, mouth: 'oh', ...look });
  s.soft(tar, pts('-80,16 -92,-54 -54,-98 2,-108 62,-96 90,-50 80,14 56,-42 12,-54 -56,-38'));
  s.nicks(tar, slits('-48,-88,-92,-124,22 2,-98,-2,-144,22 46,-90,84,-128,22'));
  s.bar(rust, 78, -22, 118, -64, 12);
}

/** The lamp tender's head: white beard, red cap and its bobble. */
export function pellHead(s: Sheet): void {
  head(s, 0, 0, { skin: clay, shade: kiln, size: 66, dark: -1, mouth: 'smile' });
  s.soft(foam, pts('-54,18 -26,40 0,32 34,38 52,16 40,100 0,152 -34,98'));
  s.nicks(mist, slits('-20,58,-10,114,6 4,50,4,128,6 28,54,18,108,6'));
  s.soft(rust, pts('-68,-8 -52,-66 0,-86 52,-66 64,-10 0,-24'));
  s.oval(amber, -4, -90, 15);
}

/** The warden's head: white beard, black cap with a brass band. */
export function emericHead(s: Sheet): void {
  head(s, 0, 0, { skin: plank, shade: timber, size: 94, dark: -1, wide: 0.92 });
  s.soft(foam, pts('-90,26 -56,52 0,38 56,52 90,26 84,106 0,162 -84,106'));
  s.nicks(paper, slits('-48,76,-36,124,7 0,72,0,140,7 48,76,34,124,7'));
  s.nicks(ink, slits('-28,68,28,68,8'));
  brows(s, foam, 0, 0, 94, 0.02, 0.12);
  s.cut(ink, pts('-104,-40 -86,-108 86,-108 104,-40 122,-26 -122,-26'));
  s.bar(amber, -92, -56, 92, -56, 13);
}

/** The toll child's head under its green cap. */
export function pimHead(s: Sheet, look: Look = {}): void {
  head(s, 0, 0, {
    skin: plank,
    shade: timber,
    size: 82,
    dark: -1,
    wide: 0.94,
    mouth: 'smile',
    ...look,
  });
  s.soft(deep, pts('-96,-12 -76,-86 0,-116 76,-86 96,-12 0,-40'));
  s.soft(lake, pts('-108,-18 0,-48 108,-18 100,6 0,-24 -100,6'));
}

/** The eel seller's head: moustache, and the white hat unless it is the night for none. */
export function harlHead(s: Sheet, hat = true, look: Look = { mouth: 'oh' }): void {
  head(s, 0, 0, { skin: clay, shade: ember, size: 92, dark: 1, wide: 0.94, ...look });
  s.nicks(tar, slits('-62,44,0,32,26 0,32,62,44,26'));
  if (!hat) return;
  s.cut(foam, pts('-98,-42 -80,-96 80,-96 98,-42'));
  s.nicks(shoal, slits('-86,-78,86,-78,9 -92,-58,92,-58,9'));
}

/** The chart inker's head in its hood. */
export function quillonHead(s: Sheet): void {
  s.soft(ink, pts('-128,144 -122,-26 -78,-126 0,-160 78,-126 122,-26 128,144 0,194'));
  s.soft(shoal, pts('-96,124 -96,-26 -56,-100 0,-118 56,-100 96,-26 96,124 0,164'));
  head(s, 0, 0, {
    skin: plank,
    shade: timber,
    size: 82,
    dark: 1,
    eyes: 'shut',
    mouth: 'smile',
  });
  s.soft(shoal, pts('-92,68 -44,74 0,82 44,74 86,68 86,154 0,176 -86,156'));
}

/** The wall painter's head and his flat black hat. */
export function drayHead(s: Sheet): void {
  head(s, 0, 0, { skin: clay, shade: kiln, size: 76, dark: -1 });
  s.cut(ink, pts('-82,-14 -56,-70 54,-72 84,-24 134,-14 124,0'));
}

/** The magistrate's head and very tall hat. */
export function ternHead(s: Sheet, tall = 270): void {
  head(s, 0, 0, {
    skin: foam,
    shade: mist,
    size: 84,
    dark: 1,
    wide: 0.66,
    mouth: 'down',
    blush: false,
  });
  ternHat(s, tall);
}

/** Only the hat: its crown stands `tall` above the middle of the head. */
export function ternHat(s: Sheet, tall = 270): void {
  s.cut(ink, [
    [-72, -44],
    [-62, -tall],
    [66, -tall - 4],
    [74, -44],
  ]);
  s.cut(ink, pts('-122,-52 0,-64 122,-52 112,-22 0,-38 -112,-22'));
  s.bar(amber, -68, -90, 72, -94, 24);
}

/** What a neighbour wears on the head. */
export type Hat = 'cap' | 'nightcap' | 'bun' | 'scarf' | 'curls' | 'brim';

/** A hat or hair on a head of radius r, centred on (x, y). */
export function hat(s: Sheet, kind: Hat, color: string, x: number, y: number, r: number): void {
  const scaled = (text: string): Pt[] => pts(text).map(([px, py]): Pt => [x + px * r, y + py * r]);
  const cap = '-0.92,-0.1 -0.86,-0.72 0,-1.14 0.86,-0.72 0.92,-0.1 0,-0.5';
  if (kind === 'nightcap') {
    s.soft(
      color,
      scaled('-0.9,-0.16 -0.6,-0.9 0.1,-1.5 1.0,-1.3 1.5,-0.5 0.96,-0.9 0.9,-0.16 0,-0.5'),
    );
    s.oval(amber, x + r * 1.5, y - r * 0.42, r * 0.22);
  } else if (kind === 'bun') {
    s.oval(color, x, y - r * 1.22, r * 0.4);
    s.soft(
      color,
      scaled('-0.94,0.3 -0.94,-0.7 0,-1.12 0.94,-0.7 0.94,0.3 0.64,-0.4 0,-0.6 -0.64,-0.4'),
    );
  } else if (kind === 'scarf') {
    s.soft(
      color,
      scaled('-0.95,0.5 -0.98,-0.6 0,-1.16 0.98,-0.6 0.95,0.5 0.7,-0.3 0,-0.56 -0.7,-0.3'),
    );
    s.cut(color, scaled('-0.8,0.4 -1.3,0.9 -0.7,0.86'));
  } else if (kind === 'brim') {
    s.cut(
      color,
      scaled(
        '-0.74,-0.44 -0.6,-1.14 0.6,-1.14 0.74,-0.44 1.4,-0.34 1.36,-0.16 -1.36,-0.16 -1.4,-0.34',
      ),
    );
  } else if (kind === 'curls') {
    for (const [px, py] of scaled('-0.8,-0.3 -0.6,-0.8 0,-1.02 0.6,-0.8 0.8,-0.3'))
      s.oval(color, px, py, r * 0.4);
  } else {
    s.soft(color, scaled(cap));
  }
}

/** Somebody of the town, drawn from the feet up, about 330 tall. */
export interface Neighbour {
  readonly cloth: string;
  readonly fold: string;
  readonly dark: 1 | -1;
  readonly brown?: boolean;
  readonly hat?: readonly [Hat, string];
  readonly face?: Look;
  /** A head of one's own instead of the plain one, drawn about the origin at size 80. */
  readonly head?: () => void;
  readonly tilt?: number;
  readonly legs?: string;
}

/** The skin of a neighbour and its shaded half. */
export function skinOf(who: Neighbour): readonly [string, string] {
  return who.brown === true ? [plank, timber] : [clay, kiln];
}

/** Draws a neighbour whose feet stand at the origin. */
export function neighbour(s: Sheet, who: Neighbour): void {
  const [skin, shade] = skinOf(who);
  const legs = who.legs ?? ink;
  s.bar(legs, -24, -70, -26, -6, 26);
  s.bar(legs, 24, -70, 26, -6, 26);
  s.cut(legs, pts('-42,-14 -8,-14 -10,2 -54,2'), pts('10,-14 42,-14 54,2 8,2'));
  coat(s, who.cloth, who.fold, 0, -216, 56, 68, 172);
  placedAt(
    s,
    0,
    -276,
    0.62,
    () => {
      if (who.head !== undefined) {
        who.head();
        return;
      }
      head(s, 0, 0, { skin, shade, size: 80, dark: who.dark, ...who.face });
      if (who.hat !== undefined) hat(s, who.hat[0], who.hat[1], 0, 0, 80);
    },
    who.tilt ?? 0,
  );
}
