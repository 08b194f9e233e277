import type { SetReadings } from './reading-levels.js';

/**
 * How hard the bios are to read, as a table for the team: one line a bio, hardest first.
 * @param highest the label of the highest level in it; null if it is not known.
 * @param warn sets off what is too hard, besides its mark.
 */
export function readabilityText(
  sets: readonly SetReadings[],
  highest: string | null,
  warn: (text: string) => string,
): string {
  const blocks = sets.map((set) => [headOf(set), COLUMNS, ...rowsOf(set, warn)].join('\n'));
  const mark = highest === null ? 'INTERNAL' : `INTERNAL, up to: ${highest}`;
  return `${[mark, ...(blocks.length > 0 ? blocks : ['There are no bios.'])].join('\n\n')}\n`;
}

const COLUMNS = 'Grade   Age   Ease  Words  Sentences  Syllables  Card';

function headOf({ title, wanted, bios }: SetReadings): string {
  const mean = bios.reduce((sum, { reading }) => sum + reading.grade, 0) / bios.length;
  const asked =
    wanted === null
      ? 'no reading age is named'
      : `for readers from ${String(wanted.age)} (grade ${String(wanted.grade)})`;
  return `${title}: ${asked}; the mean of ${String(bios.length)} ${bios.length === 1 ? 'bio' : 'bios'} is grade ${mean.toFixed(1)}`;
}

function rowsOf({ wanted, bios }: SetReadings, warn: (text: string) => string): string[] {
  return bios
    .toSorted((a, b) => b.reading.grade - a.reading.grade)
    .map(({ card, name, reading }) => {
      const { grade, ease, words, sentences, syllables } = reading;
      const figures = [
        grade.toFixed(1).padStart(5),
        String(Math.round(grade + 5)).padStart(4),
        ease.toFixed(1).padStart(5),
        String(words).padStart(5),
        String(sentences).padStart(9),
        String(syllables).padStart(9),
      ].join('  ');
      const line = `${figures}  ${card} ${name}`;
      return wanted !== null && grade > wanted.most ? warn(`${line}  ▲ too hard`) : line;
    });
}
