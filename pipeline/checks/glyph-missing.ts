import { mixedWords } from '../text/index.js';
import { fittedZones, sayZone, type FittedZone } from './fitted.js';
import { WITH_LAYOUT } from './fit-sample.js';
import type { Remark, Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

/** A character that the font of its zone does not have. */
export const glyphMissing: Rule = {
  id: 'glyph-missing',
  about: 'fit',
  severity: 'error',
  why: 'A character without a glyph prints as an empty box, or not at all.',
  look: missingGlyphs,
  examples: {
    passes: [{ says: 'letters that the font has', files: WITH_LAYOUT }],
    fails: [
      {
        says: 'a letter that a Latin font file has not',
        files: { ...WITH_LAYOUT, ...edited('one/cards/extra/b1.md', ['Ink,', 'Ink, Ω,']) },
        gives: {
          at: 'one/cards/extra/b1.md:6:1',
          covers: 'Ink, Ω, and a thumbprint of the lake.',
          message:
            '`bio` has a character that alegreya-sans-latin-400-normal.woff has no glyph for',
          found: 'Ω, U+03A9',
          expected: 'characters of the font, or a font that has them',
        },
      },
    ],
  },
};

function* missingGlyphs(subject: Subject): Generator<Remark> {
  for (const fitted of fittedZones(subject)) {
    if (fitted.fit.missing.length === 0) continue;
    const stray = strayLetters(fitted);
    for (const { character, face } of fitted.fit.missing) {
      if (stray.includes(character)) continue;
      const code = (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
      yield {
        ...fitted.place(),
        message: `${sayZone(fitted)} has a character that ${face} has no glyph for`,
        found: `${character}, U+${code}`,
        expected: 'characters of the font, or a font that has them',
      };
    }
  }
}

/** Letters of another script inside a word: `mixed-script` speaks of those. */
function strayLetters({ text }: FittedZone): string {
  const words = text.flatMap((runs) => runs.map((run) => run.text)).join(' ');
  return mixedWords(words)
    .map(({ odd }) => odd)
    .join('');
}
