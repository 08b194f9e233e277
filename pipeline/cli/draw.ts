import type { Draw } from '../out/site/index.js';
import { drawnBy, rasterise } from '../read/index.js';

/** What draws the pictures of a site. */
export const DRAW: Draw = {
  picture: (art, width) => rasterise(art, width, 'webp'),
  share: async (svg) => (await rasterise(svg, 1200, 'png')).bytes,
  by: drawnBy,
};
