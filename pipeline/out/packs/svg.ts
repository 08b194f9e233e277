import { escapeMarkup } from '../../text/index.js';

/** Width of a picture, in its own units. */
export const WIDE = 960;
export const EDGE = 32;

export const INK = '#15242b';
export const GREY = '#4b5f67';
export const RULE = '#dfe6e7';
export const BAR = '#5c7f86';
export const BAND = '#b9c8cb';

/** Words at a place: their baseline begins, or ends, there. */
export function words(
  x: number,
  y: number,
  text: string,
  style: { readonly size?: number; readonly fill?: string; readonly more?: string } = {},
): string {
  const { size = 13, fill = INK, more = '' } = style;
  const rest = more === '' ? '' : ` ${more}`;
  return `<text x="${num(x)}" y="${num(y)}" font-size="${String(size)}" fill="${fill}"${rest}>${escapeMarkup(text)}</text>`;
}

export function rect(x: number, y: number, wide: number, high: number, fill: string): string {
  return `<rect x="${num(x)}" y="${num(y)}" width="${num(Math.max(0, wide))}" height="${num(high)}" fill="${fill}"/>`;
}

export function line(path: string, style: string): string {
  return `<path d="${path}" fill="none" ${style}/>`;
}

/** Letters are about half as wide as their size: a long text is cut. */
export function fitted(text: string, wide: number, size = 13): string {
  const most = Math.floor(wide / (size * 0.52));
  return text.length <= most ? text : `${text.slice(0, most - 1)}…`;
}

/** To a tenth of a unit: the same bytes wherever it is made. */
export function num(figure: number): string {
  return String(Math.round(figure * 10) / 10);
}

/** A part of a picture, from 0 down, and how high it is. */
export interface Panel {
  readonly marks: readonly string[];
  readonly high: number;
}

export function heading(text: string, note: string): readonly string[] {
  return [
    words(EDGE, 20, text, { size: 17, more: 'font-weight="bold"' }),
    words(EDGE, 40, note, { fill: GREY }),
  ];
}
