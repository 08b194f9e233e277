import { readXml } from './xml.js';

/** Number formats that have no code in the file (ECMA-376 Part 1, 18.8.30), those without dates. */
const BUILT_IN: ReadonlyMap<number, string> = new Map([
  [0, 'General'],
  [1, '0'],
  [2, '0.00'],
  [3, '#,##0'],
  [4, '#,##0.00'],
  [9, '0%'],
  [10, '0.00%'],
  [11, '0.00E+00'],
  [12, '# ?/?'],
  [13, '# ??/??'],
  [37, '#,##0 ;(#,##0)'],
  [38, '#,##0 ;[Red](#,##0)'],
  [39, '#,##0.00;(#,##0.00)'],
  [40, '#,##0.00;[Red](#,##0.00)'],
  [48, '##0.0E+0'],
  [49, '@'],
]);

/** Codes that show dates or times, in every language's built-in formats. */
function isBuiltInDate(id: number): boolean {
  return (
    (id >= 14 && id <= 22) ||
    (id >= 27 && id <= 36) ||
    (id >= 45 && id <= 47) ||
    (id >= 50 && id <= 58)
  );
}

/** How numbers are shown, by the style of their cell. */
export interface NumberStyle {
  readonly code: string;
  readonly isDate: boolean;
}

/** The styles of a workbook's cells, in their order. */
export function readStyles(xml: string): readonly NumberStyle[] {
  const codes = new Map(BUILT_IN);
  const ids: number[] = [];
  let inCells = false;
  readXml(xml, {
    open: (name, attributes) => {
      if (name === 'cellXfs') inCells = true;
      if (name === 'numFmt') {
        codes.set(Number(attributes.get('numFmtId')), attributes.get('formatCode') ?? 'General');
      }
      if (name === 'xf' && inCells) ids.push(Number(attributes.get('numFmtId') ?? '0'));
    },
    close: (name) => {
      if (name === 'cellXfs') inCells = false;
    },
  });
  return ids.map((id) => {
    const code = codes.get(id);
    return code === undefined
      ? { code: 'General', isDate: isBuiltInDate(id) }
      : { code, isDate: showsDate(code) };
  });
}

/** Whether a code has a part of a date or time in it, outside quotes, escapes and colours. */
function showsDate(code: string): boolean {
  const bare = code
    .replace(/"[^"]*"|[\\_*]./gu, '')
    .replace(/\[(?!h+\]|m+\]|s+\])[^\]]*\]/gi, '')
    .replace(/General/gi, '');
  return /[dmyhsge]/i.test(bare.replace(/E[+-]/gi, ''));
}

const DAY = 86_400_000;

/** The day of a serial number (ECMA-376 Part 1, 18.17.4.1), such as `2027-01-02`. */
export function dayOf(serial: string, from1904: boolean): string {
  const number = Math.floor(Number(serial));
  if (!Number.isFinite(number) || number < 0 || number > 2_958_465) return serial;
  // Before 1 March 1900 the programs count a 29 February that never was.
  const first = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, number < 60 ? 31 : 30);
  return new Date(first + number * DAY).toISOString().slice(0, 10);
}

/** What is typed of a whole number in a text cell, if that is certain: its format adds nothing. */
export function writtenForm(digits: string, format: string | undefined): string | null {
  const plain = ['General', '0', '#', '@', undefined].includes(format);
  return plain && /^(?:0|[1-9]\d{0,14})$/.test(digits) ? digits : null;
}

/** What a number looks like under a format of zeros alone, such as 007; null for others. */
export function paddedForm(digits: string, format: string | undefined): string | null {
  if (format === undefined || !/^0{2,15}$/.test(format) || !/^\d{1,15}$/.test(digits)) return null;
  return digits.padStart(format.length, '0');
}
