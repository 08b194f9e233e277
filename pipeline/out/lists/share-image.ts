import type { Font } from 'fontkit';

import type { PublicData } from '../../../schema/index.js';
import { listed, previewWords } from '../wording/index.js';
import { fitLines, type FittedLines, type Room } from './fit-lines.js';
import { hundredths, Lettering } from './outline.js';

const WIDTH = 1200;
const HEIGHT = 630;
const EDGE = 88;

/** The light ground of the site, where the publisher states no other. */
const COLOURS = { paper: '#f6f8f7', ink: '#15242b', quiet: '#4b5f67', accent: '#0b6e69' } as const;

const TITLE: Room = {
  width: WIDTH - 2 * EDGE,
  height: 270,
  lines: 3,
  largest: 128,
  smallest: 40,
  step: 4,
  leading: 1.08,
};
const SMALL: Room = { ...TITLE, height: 60, lines: 1, largest: 36, smallest: 18, step: 1 };
const LEGAL: Room = { ...TITLE, height: 64, lines: 2, largest: 22, smallest: 14, step: 1 };

/** Baselines, from the top. */
const AT = { preview: 76, title: 356, counts: 424, water: 486, legal: 570 } as const;

/**
 * The picture that is shown where a link to the site is passed on: an SVG of 1200 by 630 with all
 * its words as shapes. It has the title, counts and the legal line, and names no card.
 * @param font in which its words are drawn.
 * @param others for characters that it lacks, in this order.
 */
export function shareImage(data: PublicData, font: Font, ...others: readonly Font[]): string {
  const { look, siteTitle, legal } = data.property;
  const lettering = new Lettering([font, ...others]);
  const paper = look.paper ?? COLOURS.paper;
  const ink = look.ink ?? COLOURS.ink;
  const quiet = look.ink ?? COLOURS.quiet;
  const accent = look.accent ?? COLOURS.accent;
  const title = fitLines(siteTitle, lettering, TITLE);
  const above = (title.lines.length - 1) * title.size * TITLE.leading;
  const parts = [
    `<rect width="${String(WIDTH)}" height="${String(HEIGHT)}" fill="${paper}"/>`,
    words(previewWords(data) ?? '', SMALL, AT.preview),
    shapes(title, AT.title - above, ink),
    words(countWords(data), SMALL, AT.counts),
    water(accent),
    words(legal ?? '', LEGAL, AT.legal),
  ];
  const box = `0 0 ${String(WIDTH)} ${String(HEIGHT)}`;
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${String(WIDTH)}" height="${String(HEIGHT)}" viewBox="${box}">
${parts.filter(Boolean).join('\n')}
</svg>
`;

  function words(text: string, room: Room, baseline: number): string {
    return shapes(fitLines(text, lettering, room), baseline, quiet);
  }

  function shapes({ size, lines }: FittedLines, baseline: number, fill: string): string {
    const outlines = lines
      .map((line, at) => lettering.path(line, EDGE, baseline + at * size * TITLE.leading, size))
      .join('');
    return outlines === '' ? '' : `<path fill="${fill}" d="${outlines}"/>`;
  }
}

/** "42 cards listed in 2 sets". */
function countWords({ sets }: PublicData): string {
  const count = sets.reduce((sum, set) => sum + set.listed, 0);
  if (sets.length === 0) return 'No cards are listed yet';
  return `${listed(count)} in ${sets.length === 1 ? 'one set' : `${String(sets.length)} sets`}`;
}

const WAVE = 72;
const CREST = 10;

/** The line of the water, as wide as the picture, and the water below it. */
function water(accent: string): string {
  const count = Math.ceil(WIDTH / WAVE) + 1;
  const turns = Array.from({ length: 2 * count - 1 }, (_, at) => {
    return `T${hundredths(((at + 2) * WAVE) / 2 - WAVE / 4)} ${String(AT.water)}`;
  });
  const first = `M${hundredths(-WAVE / 4)} ${String(AT.water)}Q0 ${String(AT.water - CREST)} ${hundredths(WAVE / 4)} ${String(AT.water)}`;
  const line = `${first}${turns.join('')}`;
  const below = `${line}V${String(HEIGHT)}H${hundredths(-WAVE / 4)}Z`;
  return `<path fill="${accent}" fill-opacity=".1" d="${below}"/>
<path fill="none" stroke="${accent}" stroke-width="4" d="${line}"/>`;
}
