import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { divider } from '../../pipeline/typeset/divide.js';
import { HYPHEN_TEX } from '../../pipeline/typeset/hyphen-tex.js';
import { hyphenate } from '../../pipeline/typeset/index.js';
import { readPatterns } from '../../pipeline/typeset/liang.js';
import { withPlaces } from './support.js';

const shown = (word: string, places: readonly number[]): string => withPlaces(word, places, '-');
const hyphenated = (word: string): string => shown(word, hyphenate(word));

describe('hyphenation', () => {
  it('is of the published file: 4447 patterns and 14 exceptions', () => {
    // Counts: D. E. Knuth, The TeXbook, appendix H; the file's own notice forbids changes.
    const body = (command: string): readonly string[] =>
      (new RegExp(`^\\\\${command}\\{([^}]*)\\}`, 'mu').exec(HYPHEN_TEX)?.[1] ?? '')
        .replace(/%.*$/gmu, '')
        .split(/\s+/u)
        .filter((entry) => entry !== '');
    expect([body('patterns').length, body('hyphenation').length]).toEqual([4447, 14]);
    expect(HYPHEN_TEX).toMatch(
      /^% The Plain TeX hyphenation tables \[NOT TO BE CHANGED IN ANY WAY!\]/u,
    );
  });

  it('has the fourteen published exceptions', () => {
    // The end of Debian's hyphen.tex; The TeXbook, appendix H.
    const exceptions = `as-so-ciate as-so-ciates dec-li-na-tion oblig-a-tory phil-an-thropic present
      presents project projects reci-procity re-cog-ni-zance ref-or-ma-tion ret-ri-bu-tion ta-ble`;
    const words = exceptions.split(/\s+/u);
    expect(words.map((word) => hyphenated(word.replaceAll('-', '')))).toEqual(words);
  });

  it('divides the examples of TeX', () => {
    // \showhyphens of TeX 3.141592653 with hyphen.tex.
    const words = `hy-phen-ation con-cate-na-tion su-per-cal-ifrag-ilis-tic-ex-pi-ali-do-cious
      al-go-rithm type-set-ting daugh-ters math-e-mat-ics uni-ver-sity com-puter even-tu-ally
      ther-a-pist`.split(/\s+/u);
    expect(words.map((word) => hyphenated(word.replaceAll('-', '')))).toEqual(words);
  });

  it('agrees with TeX on 63,072 words, but for one', () => {
    const file = readFileSync(new URL('../oracles/tex-hyphens.txt.gz', import.meta.url));
    const words = gunzipSync(file).toString('utf8').trimEnd().split('\n');
    expect(words).toHaveLength(63_072);
    const differing = words.filter((word) => hyphenated(word.replaceAll('-', '')) !== word);
    // TeX divides its ligature of f, f and i here: `raff-ish` is raf-fish without ligatures.
    expect(differing.map((word) => word.replaceAll('-', ''))).toEqual(['raffish']);
  });

  it('reads patterns: the greatest number at a place wins, and an odd one divides', () => {
    const divide = readPatterns('\\patterns{ % a comment\n1ta 2tab ar1\n}\\hyphenation{tab-lets}');
    expect(divide('cartage')).toEqual([3]);
    expect(divide('cartable')).toEqual([]);
    expect(divide('tablets')).toEqual([3]);
  });
});

describe('words that may be divided', () => {
  const places = (text: string, undivided: readonly string[] = []): string =>
    shown(text, divider(undivided)(text));

  it('are divided with what stands around them', () => {
    expect(places('“university,”')).toBe('“uni-ver-sity,”');
    expect(places('University')).toBe('Uni-ver-sity');
    expect(places('therapist’s.')).toBe('ther-a-pist’s.');
  });

  it.each([
    ['a name', 'Algorithm', ['Captain Algorithm']],
    ['a name in capitals', 'ALGORITHM', ['Captain Algorithm']],
    ['a name in the possessive', 'Algorithm’s', ['Algorithm']],
    ['a compound', 'university-algorithm', []],
    ['an address', 'university.example/algorithm', []],
    ['a word with a digit', 'university4', []],
    ['a word with soft hyphens', 'univers\u00adity', []],
    ['a word that grows in small letters', 'İalgorithm', []],
    ['a short word', 'able', []],
  ])('leave %s whole', (_, word, undivided) => {
    expect(places(word, undivided)).toBe(word);
  });
});
