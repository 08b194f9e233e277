import { hidden, one, type HiddenEdit } from './edit.js';
import { HOLDS } from './generate-words.js';
import { aboutField, shows, standing, type Eye, type Placed, type Standing } from './held.js';
import { closedIds, shownCards } from './hidden-cards.js';
import type { Plain, Stretch } from './plain.js';
import { stretchOf } from './values.js';

/** A stretch of a bio that is shown, with the paragraph it stands in. */
interface Found {
  readonly at: Placed;
  readonly paragraph: Stretch[];
  readonly stretch: Stretch;
  readonly standing: Standing;
}

/** Cards whose bio an audience may read, but for what is held in it. */
function readable(draft: Plain, eye: Eye): Placed[] {
  if (!shows(draft, eye, 'bio')) return [];
  return shownCards(draft, eye).filter(
    ({ set, card }) => standing(draft, eye, ...aboutField(set, card, 'bio')) === 'open',
  );
}

function stretches(draft: Plain, eye: Eye): Found[] {
  return readable(draft, eye).flatMap((at) =>
    at.card.bio.flatMap((paragraph) =>
      paragraph.map((stretch) => ({
        at,
        paragraph,
        stretch,
        standing: spanStanding(draft, eye, at, stretch),
      })),
    ),
  );
}

function spanStanding(draft: Plain, eye: Eye, { set, card }: Placed, { hold }: Stretch): Standing {
  const about = aboutField(set, card, 'bio');
  return hold === null ? 'open' : standing(draft, eye, ...about, hold);
}

function closed(draft: Plain, eye: Eye, wanted: Standing): Found[] {
  return stretches(draft, eye).filter((found) => found.standing === wanted);
}

/** Takes a stretch out; a hard break on either side of it stays. */
function takeOut({ at, paragraph, stretch }: Found): void {
  const index = paragraph.indexOf(stretch);
  const next = paragraph[index + 1];
  if (next && stretch.broken) next.broken = true;
  paragraph.splice(index, 1);
  if (paragraph.length === 0) at.card.bio.splice(at.card.bio.indexOf(paragraph), 1);
}

/** Puts a stretch in; a hard break there stays, on one side of it or the other. */
function putIn(paragraph: Stretch[], index: number, stretch: Stretch): void {
  const next = paragraph[index];
  if (next && index > 0) {
    const broken = next.broken;
    const before = broken && stretch.broken;
    next.broken = broken && !before;
    paragraph.splice(index, 0, { ...stretch, broken: before });
  } else paragraph.splice(index, 0, stretch);
}

export const WORD_EDITS: readonly HiddenEdit[] = [
  hidden('words of a held span', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'placeholder'), ({ stretch }) => {
      stretch.words = dice.words();
      return true;
    }),
  ),
  hidden('markup of a held span', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'placeholder'), ({ stretch }) => {
      const [italic, bold] = [dice.below(4) === 0, dice.below(4) === 0];
      Object.assign(stretch, { italic, bold, stressed: !stretch.stressed });
      return true;
    }),
  ),
  hidden('what a held span counts', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'placeholder'), ({ stretch }) => {
      stretch.count = dice.pick(['crew', 'none', 'base']) ?? null;
      return true;
    }),
  ),
  hidden('what holds a held span', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'placeholder'), ({ at, stretch }) => {
      const others = HOLDS.filter((hold) => {
        const other = spanStanding(draft, eye, at, { ...stretch, hold });
        return hold !== stretch.hold && other === 'placeholder';
      });
      stretch.hold = dice.pick(others) ?? stretch.hold;
      return true;
    }),
  ),
  hidden('words and markup of an absent span', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'absent'), ({ stretch }) => {
      Object.assign(stretch, { words: dice.words(), italic: dice.chance(), bold: dice.chance() });
      return true;
    }),
  ),
  hidden('an absent span less', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'absent'), (found) => {
      takeOut(found);
      return true;
    }),
  ),
  hidden('an absent span more', (draft, eye, dice) => {
    const hold = dice.pick(closedIds(draft, eye, 'absent'));
    if (hold === undefined) return false;
    return one(dice, readable(draft, eye), ({ card }) => {
      const paragraph = dice.pick(card.bio);
      if (!paragraph) return false;
      putIn(paragraph, dice.below(paragraph.length + 1), stretchOf(dice, hold));
      return true;
    });
  }),
  hidden('an absent paragraph more', (draft, eye, dice) => {
    const hold = dice.pick(closedIds(draft, eye, 'absent'));
    if (hold === undefined) return false;
    return one(dice, readable(draft, eye), ({ card }) => {
      const paragraph = [stretchOf(dice, hold), stretchOf(dice, hold)];
      card.bio.splice(dice.below(card.bio.length + 1), 0, paragraph);
      return true;
    });
  }),
  hidden('what an open stretch counts', (draft, eye, dice) =>
    one(dice, closed(draft, eye, 'open'), ({ stretch }) => {
      stretch.count = dice.pick(['crew', 'none', 'base', null]) ?? null;
      return true;
    }),
  ),
];
