import type { PublicData } from '../../schema/index.js';

/** Text that closes attributes, opens elements and looks like an entity. */
const HOSTILE = `<script>"'&amp;</script>`;

/** Keys whose values are addresses, instants or words of a fixed list, and no free text. */
const FIXED = new Set(['id', 'page', 'file', 'asOf', 'opens', 'revealed', 'at', 'accent', 'state']);
const FIXED_PATHS = [
  /^openings/,
  /^property\.zone$/,
  /\.of\.\d+$/,
  /\.shortPrint$/,
  /\.parallel$/,
  /^news\./,
  /\.look\./,
  /^property\.address$/,
];

interface Mark {
  readonly mark: string;
  readonly path: string;
}

/** The data with hostile text, marked by its place, at the start of every free text. */
export function hostileStrings(data: PublicData): { data: PublicData; marks: readonly Mark[] } {
  const marks: Mark[] = [];
  const spoil = (value: unknown, key: string, path: string): unknown => {
    if (Array.isArray(value)) {
      return value.map((one: unknown, at) => spoil(one, '', `${path}.${String(at)}`));
    }
    if (value !== null && typeof value === 'object') {
      const entries = Object.entries(value).map(([name, one]: [string, unknown]) => {
        return [name, spoil(one, name, path === '' ? name : `${path}.${name}`)];
      });
      return Object.fromEntries(entries);
    }
    const fixed = FIXED.has(key) || FIXED_PATHS.some((shape) => shape.test(path));
    if (typeof value !== 'string' || fixed || value === '\n') return value;
    const mark = `X${String(marks.length)}X`;
    marks.push({ mark, path });
    return `${mark}${HOSTILE}${value}`;
  };
  return { data: spoil(data, '', '') as PublicData, marks };
}
