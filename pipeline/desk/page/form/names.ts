import type { FieldPath } from '../../protocol.js';

/** The id of the element that holds the value at a path. */
export function nameOfPath(path: FieldPath): string {
  return `field-${path.join('-').replace(/[^A-Za-z0-9-]/g, '_')}`;
}

/** The element of the value at a path, or of the nearest value around it that is on the screen. */
export function elementOfPath(path: FieldPath): HTMLElement | null {
  for (let length = path.length; length > 0; length -= 1) {
    const found = document.getElementById(nameOfPath(path.slice(0, length)));
    if (found) return found;
  }
  return null;
}
