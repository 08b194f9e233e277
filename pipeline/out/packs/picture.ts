import type { PacksSet } from '../../../schema/index.js';
import { escapeMarkup } from '../../text/index.js';
import { completionPanel } from './picture-completion.js';
import { contentsPanel } from './picture-contents.js';
import { madePanel } from './picture-made.js';
import { sheetsPanel } from './picture-sheets.js';
import { EDGE, GREY, WIDE, num, words, type Panel } from './svg.js';

const HEAD = 92;
const GAP = 28;

/**
 * The packs of a set as a picture (SVG 1.1) for the house: copies made from most to fewest, the
 * press sheets, what a pack holds, and how many packs complete a set. It needs no colour to be read.
 * @param mark who may see it.
 */
export function packsPicture(set: PacksSet, mark: string): string {
  const panels = [
    madePanel(set),
    sheetsPanel(set),
    ...set.products.map(contentsPanel),
    ...set.products.map(completionPanel),
  ].filter((panel): panel is Panel => panel !== null);
  const title = `${set.title}: what is packed`;
  let top = HEAD;
  const drawn = panels.map(({ marks, high }) => {
    const group = `<g transform="translate(0 ${num(top)})">\n${marks.join('\n')}\n</g>`;
    top += high + GAP;
    return group;
  });
  const high = num(top + EDGE - GAP);
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${num(WIDE)}" height="${high}" viewBox="0 0 ${num(WIDE)} ${high}" role="img" font-family="Candara, 'Segoe UI', 'DejaVu Sans', sans-serif">
<title>${escapeMarkup(title)}</title>
<rect width="100%" height="100%" fill="#fff"/>
${words(EDGE, 44, title, { size: 22, more: 'font-weight="bold"' })}
${words(EDGE, 68, mark, { size: 14, fill: GREY })}
${drawn.join('\n')}
</svg>
`;
}
