import { describe, expect, it } from 'vitest';

import { canonicalText, digestOf, sha256 } from '../../pipeline/review/index.js';

/** RFC 8785, 3.2.2: the sample, and 3.2.4: its octets. */
const SAMPLE: unknown = JSON.parse(
  String.raw`{
    "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
    "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
    "literals": [null, true, false]
  }`,
);
const SAMPLE_TEXT = String.raw`{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\u000f\nA'B\"\\\\\"/"}`;

/** RFC 8785, Appendix B: IEEE 754 doubles in hexadecimal, and what they are written as. */
const NUMBERS = [
  ['0000000000000000', '0'],
  ['8000000000000000', '0'],
  ['0000000000000001', '5e-324'],
  ['8000000000000001', '-5e-324'],
  ['7fefffffffffffff', '1.7976931348623157e+308'],
  ['ffefffffffffffff', '-1.7976931348623157e+308'],
  ['4340000000000000', '9007199254740992'],
  ['c340000000000000', '-9007199254740992'],
  ['4430000000000000', '295147905179352830000'],
  ['44b52d02c7e14af5', '9.999999999999997e+22'],
  ['44b52d02c7e14af6', '1e+23'],
  ['44b52d02c7e14af7', '1.0000000000000001e+23'],
  ['444b1ae4d6e2ef4e', '999999999999999700000'],
  ['444b1ae4d6e2ef4f', '999999999999999900000'],
  ['444b1ae4d6e2ef50', '1e+21'],
  ['3eb0c6f7a0b5ed8c', '9.999999999999997e-7'],
  ['3eb0c6f7a0b5ed8d', '0.000001'],
  ['41b3de4355555553', '333333333.3333332'],
  ['41b3de4355555554', '333333333.33333325'],
  ['41b3de4355555555', '333333333.3333333'],
  ['41b3de4355555556', '333333333.3333334'],
  ['41b3de4355555557', '333333333.33333343'],
  ['becbf647612f3696', '-0.0000033333333333333333'],
  ['43143ff3c1cb0959', '1424953923781206.2'],
] as const;

const numberOf = (hex: string): number => Buffer.from(hex, 'hex').readDoubleBE(0);

describe('canonical JSON', () => {
  it('writes the sample of RFC 8785, 3.2.4, and a digest is over these octets', () => {
    expect(canonicalText({ SAMPLE })).toBe(`{"SAMPLE":${SAMPLE_TEXT}}`);
    expect(
      digestOf({
        string: '€$\u000f\nA\'B"\\\\"/',
        literals: [null, true, false],
        numbers: [333333333.3333333, 1e30, 4.5, 2e-3, 1e-27],
      }),
    ).toBe(sha256(SAMPLE_TEXT));
  });

  it('sorts keys by UTF-16 units, as the sample of RFC 8785, 3.2.3', () => {
    const said = {
      '\u20ac': 'Euro Sign',
      '\r': 'Carriage Return',
      '\ufb33': 'Hebrew Letter Dalet With Dagesh',
      '1': 'One',
      '\ud83d\ude00': 'Emoji: Grinning Face',
      '\u0080': 'Control',
      '\u00f6': 'Latin Small Letter O With Diaeresis',
    };
    expect(canonicalText(said)).toBe(
      '{"\\r":"Carriage Return","1":"One","\u0080":"Control",' +
        '"ö":"Latin Small Letter O With Diaeresis","€":"Euro Sign",' +
        '"😀":"Emoji: Grinning Face","\ufb33":"Hebrew Letter Dalet With Dagesh"}',
    );
  });

  it.each(NUMBERS)('writes the number %s as %s', (hex, text) => {
    expect(canonicalText(numberOf(hex))).toBe(text);
    expect(digestOf([numberOf(hex)])).toBe(sha256(`[${text}]`));
  });

  it.each([
    ['7fffffffffffffff', 'not a number'],
    ['7ff0000000000000', 'infinity'],
  ])('refuses the number %s: %s', (hex) => {
    expect(() => canonicalText(numberOf(hex))).toThrow(TypeError);
    expect(() => canonicalText({ deep: [numberOf(hex)] })).toThrow(TypeError);
    expect(() => digestOf({ deep: numberOf(hex) })).toThrow(TypeError);
  });

  // RFC 8785, 3.2.2.2: lone surrogates end the making; a member without value is none.
  it('refuses half a character and leaves out what has no value', () => {
    expect(() => canonicalText({ a: '\ud83d' })).toThrow(TypeError);
    expect(() => digestOf({ '\ude00': 1 })).toThrow(TypeError);
    expect(canonicalText({ a: undefined, b: 1 })).toBe('{"b":1}');
  });
});
