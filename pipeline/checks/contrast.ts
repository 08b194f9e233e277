import type { BackFile } from '../../schema/index.js';
import { WITH_LAYOUT, withLayout } from './fit-sample.js';
import { layoutZones, onZone, type LayoutZone } from './layout-remarks.js';
import type { Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

/**
 * The least contrast of text: 4.5, as WCAG 2.2, 1.4.3, asks on screens. Paper is no screen, and ink
 * on stock loses contrast rather than gains it.
 */
const LEAST = 4.5;
const INK = '#000000';
const PAPER = '#ffffff';

/** Text whose colour is too near to what it is printed on. */
export const contrast: Rule = {
  id: 'contrast',
  about: 'fit',
  severity: 'warning',
  why: 'Grey on grey is read by nobody under a shop’s light.',
  look: faintTexts,
  examples: {
    passes: [{ says: 'black on white', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'grey on white',
        files: withLayout('size: 7, leading: 9', 'size: 7, leading: 9, colour: "#777777"'),
        gives: {
          at: 'backs/small.yaml:8:85',
          covers: '"#777777"',
          message: '`bio` has a contrast of 4.48 with what it is printed on',
          found: '#777777 on #ffffff',
          expected: 'a contrast of 4.5 or more',
          severity: 'warning',
        },
      },
    ],
  },
};

function* faintTexts(subject: Subject): Generator<Remark> {
  for (const placed of layoutZones(subject)) {
    const colour = placed.zone.colour ?? INK;
    if (placed.side === 'front' && placed.layout.value.frontPaper === undefined) continue;
    const worst = groundsOf(placed)
      .map((ground) => ({ ground, ratio: contrastOf(colour, ground) }))
      .sort((a, b) => a.ratio - b.ratio)[0];
    if (!worst || worst.ratio >= LEAST) continue;
    yield onZone(placed, placed.zone.colour === undefined ? null : 'colour', {
      message: `\`${placed.name}\` has a contrast of ${worst.ratio.toFixed(2)} with what it is printed on`,
      found: `${colour} on ${worst.ground}`,
      expected: `a contrast of ${String(LEAST)} or more`,
    });
  }
}

/** What a zone is printed on: the paper of its side and every panel that it touches. */
function groundsOf({ layout, side, zone }: LayoutZone): string[] {
  const { paper, frontPaper, panels } = layout.value;
  if (side === 'front') return [frontPaper ?? PAPER];
  const touched = (panels ?? []).filter((panel) => touches(panel, zone));
  const covered = touched.some((panel) => covers(panel, zone));
  return [...touched.map((panel) => panel.colour), ...(covered ? [] : [paper ?? PAPER])];
}

type Box = Pick<NonNullable<BackFile['panels']>[number], 'x' | 'y' | 'width' | 'height'>;

function touches(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;
}

function covers(a: Box, b: Box): boolean {
  return (
    a.x <= b.x && a.y <= b.y && a.x + a.width >= b.x + b.width && a.y + a.height >= b.y + b.height
  );
}

/** Contrast ratio of two colours, 1 to 21: WCAG 2.2, definition of contrast ratio. */
export function contrastOf(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
}

/** Relative luminance of an sRGB colour, 0 to 1: WCAG 2.2, definition of relative luminance. */
function luminance(colour: string): number {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
