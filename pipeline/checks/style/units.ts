import type { HouseStyle } from '../../../schema/index.js';
import { slipsOf, type Slip } from './slip.js';

/** Signs of units that are no words and no letters of codes; degrees of an angle are never spaced. */
const UNIT =
  'mm|cm|km|dm|µm|mg|kg|g|ml|cl|dl|l|m|oz|lbs?|ft|yd|mph|kph|km/h|dpi|px|pt|Hz|kHz|MHz|kW|W|kV|V|°[CF]|℃|℉|%|‰';
const CLOSED = new RegExp(
  `(?<![\\p{L}\\p{N}-])(\\d+(?:[.,]\\d+)?)(${UNIT})(?![\\p{L}\\p{N}/])`,
  'gu',
);
const SPACED = new RegExp(
  `(?<![\\p{L}\\p{N}-])(\\d+(?:[.,]\\d+)?)([ \\u00a0\\u202f\\u2009])(${UNIT})(?![\\p{L}\\p{N}/'’])`,
  'gu',
);

/** Units that stand too close to their figure, or too far from it. */
export function unitSlips(text: string, style: HouseStyle['units']): Slip[] {
  if (style === undefined || !/\d/.test(text)) return [];
  if (style === 'spaced') {
    return slipsOf(text, CLOSED, ({ 0: measure, 1: figure = '', 2: unit = '', index }) => ({
      from: index,
      to: index + measure.length,
      message: `no space stands before the unit \`${unit}\``,
      expected: `${figure} ${unit}`,
      fix: `${figure} ${unit}`,
      certain: unit.length > 1 || /\W/.test(unit),
    }));
  }
  return slipsOf(text, SPACED, ({ 0: measure, 1: figure = '', 3: unit = '', index }) => ({
    from: index,
    to: index + measure.length,
    message: `a space stands before the unit \`${unit}\``,
    expected: figure + unit,
    fix: figure + unit,
    certain: unit.length > 1 || /\W/.test(unit),
  }));
}
