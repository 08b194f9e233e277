import type { Files } from './rule.js';
import { edited } from './sample.js';

/** A small card layout for the examples of the rules about fit. */
export const SMALL_LAYOUT = `id: small
trim: { width: 63.5, height: 88.9 }
bleed: 3
safe: 3
fonts:
  body: { package: "@fontsource/alegreya-sans", regular: files/alegreya-sans-latin-400-normal.woff }
zones:
  bio: { x: 5, y: 5, width: 30, height: 7, font: body, size: 7, leading: 9 }
  legal: { x: 5, y: 80, width: 40, height: 4, font: body, size: 5, leading: 6 }
`;

/** The sample with the layout on the insert set. */
export const WITH_LAYOUT: Files = {
  ...edited('one/plan.yaml', ['group: inserts,', 'group: inserts, back: small,']),
  'backs/small.yaml': SMALL_LAYOUT,
};

/** The sample with a layout that has one stretch of it changed. */
export function withLayout(from: string, to: string): Files {
  return { ...WITH_LAYOUT, 'backs/small.yaml': SMALL_LAYOUT.replace(from, () => to) };
}
