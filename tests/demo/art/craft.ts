import { pts, slits } from './geometry.js';
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
  type Pt,
} from './palette.js';
import type { Nick, Sheet } from './sheet.js';
import { lamp } from './things.js';

/** Places a boat: its water line at (x, y). */
export function moored(
  s: Sheet,
  x: number,
  y: number,
  scale: number,
  draw: () => void,
  turn = 0,
): void {
  const r = turn === 0 ? '' : ` rotate(${turn})`;
  s.within({ transform: `translate(${x} ${y})${r} scale(${scale})` }, draw);
}

/** The night ferry: a tall house on a hull whose bow rises into a neck and a beak. */
export function heron(s: Sheet, lit: boolean, body = tar, trim = plank): void {
  const pane = lit ? glim : mist;
  s.cut(timber, pts('-150,-70 -146,-190 56,-190 66,-70'));
  s.cut(body, pts('-164,-186 -150,-212 62,-212 74,-186'));
  s.cut(rust, pts('-124,-212 -118,-316 26,-316 32,-212'));
  s.cut(body, pts('-136,-312 -124,-336 34,-336 44,-312'));
  s.cut(foam, pts('-90,-336 -86,-420 -2,-420 2,-336'));
  s.cut(body, pts('-106,-414 -44,-468 18,-414'));
  s.cut(
    pane,
    pts('-74,-400 -50,-400 -50,-352 -74,-352'),
    pts('-36,-400 -14,-400 -14,-352 -36,-352'),
    pts('-102,-296 -74,-296 -74,-240 -102,-240'),
    pts('-20,-296 8,-296 8,-240 -20,-240'),
    pts('-128,-170 -100,-170 -100,-116 -128,-116'),
    pts('16,-170 42,-170 42,-116 16,-116'),
  );
  s.cut(body, pts('-62,-296 -34,-296 -34,-214 -62,-214'), pts('-70,-172 -20,-172 -18,-70 -72,-70'));
  s.nicks(
    trim,
    slits('-146,-106,-76,-104,4 -144,-140,-80,-142,4 -12,-96,62,-98,4 -116,-226,-70,-226,4'),
  );
  s.limb(body, 96, 30, pts('96,4 150,-60 204,-140 196,-240 158,-300 172,-366 222,-378'));
  s.soft(body, pts('176,-372 204,-408 244,-402 262,-378 244,-356 200,-354'));
  s.cut(body, pts('240,-398 372,-350 240,-360'));
  s.nicks(body, slits('204,-402,96,-424,14 196,-392,106,-396,10'));
  s.oval(amber, 226, -382, 8);
  s.soft(
    body,
    pts('-226,-116 -196,-92 -60,-78 70,-78 150,-90 206,-130 190,-20 150,34 -150,34 -196,-20'),
  );
  s.nicks(
    trim,
    slits(
      '-204,-84,-20,-58,6 -10,-56,150,-70,6 -190,-52,30,-28,6 44,-30,168,-42,6 -170,-16,-60,-4,6 -40,-4,140,-10,6 190,-130,200,-200,6 182,-250,166,-300,5',
    ),
  );
  s.bar(body, -190, -100, -268, -10, 13);
  s.nicks(body, slits('302,-372,302,-318,5'));
  lamp(s, 302, -330, 62, lit, body);
}

/** The squat toll launch under a tin roof. */
export function launch(s: Sheet): void {
  s.box(timber, -180, -176, 16, 120);
  s.box(timber, 150, -176, 16, 120);
  s.box(night, -140, -160, 266, 100);
  s.cut(
    glim,
    pts('-116,-142 -58,-142 -58,-92 -116,-92'),
    pts('-30,-142 28,-142 28,-92 -30,-92'),
    pts('54,-142 106,-142 106,-92 54,-92'),
  );
  s.cut(shoal, pts('-232,-166 -196,-262 176,-262 216,-166'));
  const seams: Nick[] = [];
  for (let i = 0; i < 11; i += 1) seams.push([-190 + i * 36, -258, -218 + i * 42, -168, 8]);
  s.nicks(deep, seams);
  s.nicks(
    foam,
    seams.slice(0, 9).map(([a, b, c, d]): Nick => [a + 14, b + 8, c + 17, d - 22, 5]),
  );
  s.cut(rust, pts('-60,-262 -54,-330 -6,-330 0,-262'));
  s.box(ink, -66, -346, 66, 18);
  s.soft(ink, pts('-262,-86 -150,-64 150,-64 254,-92 222,30 -226,30'));
  s.nicks(shoal, slits('-236,-58,40,-40,6 60,-40,226,-62,6 -220,-24,-30,-10,6 10,-10,216,-22,6'));
  s.bar(rust, 196, -80, 300, -226, 12);
  s.bar(foam, 228, -124, 248, -152, 13);
  s.bar(foam, 268, -180, 286, -206, 13);
}

/** The cook-boat. */
export function cookBoat(s: Sheet): void {
  s.cut(plank, pts('-150,-70 -140,-210 110,-210 124,-70'));
  s.cut(rust, pts('-172,-200 -140,-266 110,-266 146,-200'));
  s.hatch(ember, -150, -256, 260, 50, 20, 80, 30, 5);
  s.cut(ink, pts('-108,-178 -8,-178 -8,-104 -108,-104'));
  s.soft(amber, pts('-98,-106 -84,-150 -66,-126 -50,-164 -32,-128 -18,-106'));
  s.cut(ink, pts('20,-182 96,-182 100,-70 22,-70'));
  s.cut(tar, pts('-92,-262 -86,-380 -34,-380 -30,-262'));
  s.box(ink, -98, -396, 76, 20);
  s.soft(deep, pts('-248,-112 -150,-78 140,-78 246,-126 204,34 -206,34'));
  s.nicks(shoal, slits('-222,-76,0,-52,7 20,-52,214,-86,7 -206,-36,-40,-18,6 0,-18,200,-42,6'));
  s.lines(
    ink,
    5,
    pts('110,-206 232,-186'),
    pts('140,-202 140,-176'),
    pts('178,-196 178,-170'),
    pts('214,-190 214,-164'),
  );
  for (const [x, y] of pts('140,-166 178,-160 214,-154')) {
    s.cut(foam, [
      [x - 14, y - 10],
      [x + 14, y - 10],
      [x + 11, y + 16],
      [x - 11, y + 16],
    ]);
  }
  s.bar(ink, -250, -200, -180, -196, 8);
  s.oval(ink, -206, -170, 30, 30);
  s.oval(foam, -206, -170, 20, 17);
  s.oval(amber, -204, -170, 9, 8);
}

/** The salvage boat whose boiler is a kettle. */
export function kettleBoat(s: Sheet): void {
  s.soft(rust, pts('-120,-80 -150,-170 -110,-262 -20,-292 70,-262 112,-170 84,-80'));
  s.limb(rust, 58, 26, pts('84,-150 136,-176 158,-230 200,-256'));
  s.nicks(ember, slits('-122,-120,-106,-236,12 -94,-110,-82,-250,8 172,-226,196,-246,6'));
  s.cut(ink, pts('-64,-282 -44,-306 10,-306 30,-282'));
  s.oval(ink, -17, -318, 15, 15);
  s.limb(ink, 17, 17, pts('-108,-252 -126,-330 -80,-388 -18,-404 44,-388 90,-330 74,-252'));
  s.oval(ink, -14, -166, 44, 44);
  s.oval(glim, -14, -166, 31, 31);
  s.nicks(rust, slits('-42,-166,14,-166,7 -14,-194,-14,-138,7'));
  for (const x of [-100, -62, 36, 72]) s.oval(ember, x, -100, 6);
  s.soft(tar, pts('-256,-118 -160,-84 110,-84 240,-128 206,34 -214,34'));
  s.nicks(plank, slits('-230,-82,0,-56,7 30,-56,214,-88,7 -214,-40,-50,-18,6 -20,-18,200,-44,6'));
  s.bar(timber, -186, -90, -214, -330, 15);
  s.bar(timber, -216, -322, -110, -352, 12);
  s.lines(ink, 5, pts('-120,-350 -250,-110'));
  s.nicks(ink, slits('-250,-130,-252,-70,9'));
}

/** The ferry clad in seven house doors. */
export function doorFerry(s: Sheet): void {
  const colors = [rust, lake, amber, night, plank, shoal, ember];
  s.cut(timber, pts('-236,-206 -216,-250 214,-250 236,-206'));
  s.nicks(tar, slits('-220,-226,216,-230,7'));
  colors.forEach((color, i) => {
    const x = -226 + i * 65;
    const top = -198 + Math.abs(i - 3) * 2;
    const tall: Pt[] = [
      [x, top],
      [x + 58, top - 2],
      [x + 56, -52],
      [x + 2, -52],
    ];
    s.cut(color, tall);
    const trim = color === amber || color === shoal ? ink : foam;
    s.nicks(trim, [
      [x + 12, top + 14, x + 12, -112, 4],
      [x + 46, top + 14, x + 46, -112, 4],
      [x + 10, -106, x + 48, -106, 4],
      [x + 10, top + 14, x + 48, top + 14, 4],
    ]);
    s.oval(trim, x + 45, -90, 5);
  });
  s.soft(tar, pts('-276,-96 -200,-56 200,-56 276,-96 226,36 -230,36'));
  s.nicks(plank, slits('-240,-50,-10,-30,7 20,-30,236,-52,7 -220,-14,210,-6,6'));
  s.cut(night, pts('-60,-250 -56,-330 40,-330 46,-250'));
  s.cut(rust, pts('-76,-324 -8,-372 60,-324'));
  s.cut(glim, pts('-30,-306 14,-306 14,-262 -30,-262'));
}

/** The raft of boards that do not match. */
export function raft(s: Sheet): void {
  const colors = [plank, rust, timber, paper, lake, tar, plank, ember, timber];
  colors.forEach((color, i) => {
    const x = -270 + i * 60;
    const [a, b] = [s.rand(-14, 14), s.rand(-16, 16)];
    s.cut(color, [
      [x, -40 + a],
      [x + 56, -44 + a],
      [x + 54, 30 + b],
      [x + 3, 34 + b],
    ]);
  });
  s.nicks(ink, slits('-276,-18,270,-10,9 -270,12,274,8,9'));
  s.nicks(
    foam,
    slits(
      '-250,-30,-248,14,4 -130,-28,-132,10,4 -10,-30,-8,12,4 110,-24,108,16,4 230,-26,228,10,4',
    ),
  );
}
