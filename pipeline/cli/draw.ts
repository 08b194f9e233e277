import type { Draw } from '../out/site/index.js';
import { drawnBy, rasterise } from '../read/index.js';
import { remembered } from '../release/index.js';
import { goOn } from './interrupts.js';
import type { Io } from './io.js';

/** What draws the pictures of a site: each once, however many sites a process makes. */
export const DRAW: Draw = {
  picture: remembered((art, width) => rasterise(art, width, 'webp')),
  share: async (svg) => (await rasterise(svg, 1200, 'png')).bytes,
  by: drawnBy,
};

/** The same, until Ctrl-C stops it. */
export function drawWith({ interrupts }: Io): Draw {
  return {
    ...DRAW,
    picture: (art, width) => {
      goOn(interrupts?.signal);
      return DRAW.picture(art, width);
    },
  };
}
