import type { CardSides } from '../../protocol.js';
import type { Desk } from '../line/desk.js';

const asked = new Set<string>();

/** Fetches the fonts that the sides are set in, each once: their words are drawn anew as they come. */
export function fetchFaces(desk: Desk, { front, back }: CardSides): void {
  const lines = [front, back].flatMap((side) => side?.zones.flatMap((zone) => zone.lines) ?? []);
  const keys = new Set(lines.flatMap(({ pieces }) => pieces.map(({ font }) => font)));
  for (const key of keys) {
    if (asked.has(key)) continue;
    asked.add(key);
    void fetchFace(desk, key);
  }
}

async function fetchFace(desk: Desk, key: string): Promise<void> {
  try {
    const face = new FontFace(`holdback-${key}`, await desk.font(key));
    document.fonts.add(await face.load());
  } catch {
    asked.delete(key); // asked for again with the next setting
  }
}
