import { YEARS_BEFORE_SCHOOL, type Reading } from '../text/index.js';
import { isIssued } from '../model/index.js';
import { bioSpot } from './bounds.js';
import { bioReadings, type BioReading } from './reading-bios.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import { spotInParagraph } from './style/spot.js';
import type { Subject } from './subject.js';

/**
 * How many years above the reading age the grade of one bio may come out. The formulas were made for
 * samples of a hundred words: in a bio of 50 words a stop more or less moves the grade by one and a
 * half, and the 57 bios of the demo, written for one age, scattered with a standard deviation of 1.3
 * grades. Two of these are chance; beyond three years it is the text.
 */
export const MARGIN_YEARS = 3;

/** Words below which a grade says nothing. */
const LEAST_WORDS = 20;

const HARD =
  'Notwithstanding considerable opposition from the harbour administration, whose regulations are notoriously complicated, the apprentice succeeded in completing an accurate survey of the quay.';

/** A bio that is harder to read than the product's readers can. */
export const readability: Rule = {
  id: 'readability',
  about: 'language',
  severity: 'warning',
  why: 'A child who cannot read the back turns it over and does not come back.',
  look: findHard,
  examples: {
    passes: [
      {
        says: 'short sentences of short words',
        files: withAge(
          'The quay stands in water to the knee. Each spring it goes down by one step. The cat who lives on the last step moves up.',
        ),
      },
      {
        says: 'hard words, where no reading age is named',
        files: edited('one/cards/base/a1.md', ['The quay stands in water to the knee.', HARD]),
      },
    ],
    fails: [
      {
        says: 'one long sentence of long words for readers of eight',
        files: withAge(HARD),
        gives: {
          at: 'one/cards/base/a1.md:7:1',
          covers: HARD,
          message: 'the bio reads as for grown-ups, and the set is for readers from 8',
          found: 'grade 22.6, reading ease -26.2: 23 words, 1 sentence, 57 syllables',
          expected:
            'grade 6 at most: shorter sentences, or easier words than `considerable`, `administration`, `notoriously`',
          related: ['one/cards/base/a1.md:7:1 the longest sentence, of 23 words'],
        },
      },
    ],
  },
};

function withAge(bio: string): Readonly<Record<string, string | null>> {
  return {
    ...edited('one/plan.yaml', ['style:', 'readingAge: 8\nstyle:']),
    ...edited('one/cards/base/a1.md', ['The quay stands in water to the knee.', bio]),
  };
}

function* findHard({ sets, content }: Subject): Generator<Remark> {
  for (const { plan, cards } of sets) {
    const { readingAge } = plan.value;
    if (readingAge === undefined) continue;
    for (const bio of bioReadings(cards.filter(isIssued), content.names)) {
      const { words, grade } = bio.reading;
      const most = gradeFor(readingAge) + MARGIN_YEARS;
      if (words >= LEAST_WORDS && grade > most) yield remarkOn(bio, readingAge, most);
    }
  }
}

/** The grade of an American school that children of an age are in. */
export function gradeFor(age: number): number {
  return age - YEARS_BEFORE_SCHOOL;
}

function remarkOn({ card, reading }: BioReading, readingAge: number, most: number): Remark {
  const age = sayAge(reading.grade);
  const hard = reading.hardest.map((word) => `\`${word}\``).join(', ');
  return {
    ...ofCard(card),
    spot: bioSpot(card),
    message: `the bio reads as for ${age}, and the set is for readers from ${String(readingAge)}`,
    found: sayReading(reading),
    expected: `grade ${String(most)} at most: shorter sentences${hard === '' ? '' : `, or easier words than ${hard}`}`,
    related: reading.longest.map(({ paragraph, from, to, words }, at) => ({
      message: `${at === 0 ? 'the longest sentence' : 'the next longest'}, of ${amount(words, 'word')}`,
      spot: spotInParagraph(card.bio[paragraph] ?? [], from, to, card.source),
    })),
  };
}

/** Whom a grade is for: its age, or grown-ups from the last school year on. */
function sayAge(grade: number): string {
  const age = Math.round(grade + YEARS_BEFORE_SCHOOL);
  return age > 18 ? 'grown-ups' : `the age of ${String(age)}`;
}

/** "grade 6.3, reading ease 71.3: 48 words, 4 sentences, 70 syllables". */
export function sayReading({ grade, ease, words, sentences, syllables }: Reading): string {
  const counts = [
    amount(words, 'word'),
    amount(sentences, 'sentence'),
    amount(syllables, 'syllable'),
  ];
  return `grade ${grade.toFixed(1)}, reading ease ${ease.toFixed(1)}: ${counts.join(', ')}`;
}

function amount(count: number, what: string): string {
  return `${String(count)} ${what}${count === 1 ? '' : 's'}`;
}
