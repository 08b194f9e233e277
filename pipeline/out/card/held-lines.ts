import type { ViewCard } from '../../gate/index.js';
import type { SetLine } from '../../typeset/index.js';

/** Lines of a bio that have words under one hold, the first and the last included. */
export interface HeldLines {
  readonly hold: string;
  readonly lines: readonly SetLine[];
}

/** Where the words that a level or an embargo holds have come to stand. */
export function heldLines(bio: ViewCard['bio'], lines: readonly SetLine[]): readonly HeldLines[] {
  const byHold = new Map<string, SetLine[]>();
  bio.forEach((paragraph, index) => {
    if (paragraph.every((run) => 'held' in run || run.hold === null)) return;
    const letters = paragraph.flatMap((run) =>
      'held' in run ? [] : Array.from(run.text).map((letter) => ({ letter, hold: run.hold })),
    );
    let next = 0;
    for (const line of lines.filter((each) => each.paragraph === index)) {
      const holds = new Set<string>();
      for (const letter of lettersOf(line)) {
        const at = letters.findIndex((each, place) => place >= next && each.letter === letter);
        const hold = letters[at]?.hold;
        if (at >= 0) next = at + 1;
        if (hold !== undefined && hold !== null) holds.add(hold);
      }
      for (const hold of holds) byHold.set(hold, [...(byHold.get(hold) ?? []), line]);
    }
  });
  return [...byHold].map(([hold, held]) => ({ hold, lines: held }));
}

/** The letters of a line in order, without the hyphen that divides its last word. */
function lettersOf(line: SetLine): readonly string[] {
  const letters = line.words.flatMap((word) => Array.from(word.text));
  return line.hyphenated ? letters.slice(0, -1) : letters;
}
