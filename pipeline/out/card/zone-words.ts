import type { BackFile } from '../../../schema/index.js';
import { TO_BE_REVEALED, type View, type ViewCard, type ViewRun } from '../../gate/index.js';
import {
  legalText,
  zoneTexts,
  type ZoneRun,
  type ZoneText,
  type ZoneWords,
} from '../../model/index.js';

/** The one mark for whatever is held. It never tells how much it stands for. */
const MARK: ZoneRun = {
  text: `[${TO_BE_REVEALED.toLowerCase()}]`,
  italic: false,
  bold: false,
};

type Shared = Pick<BackFile, 'shared'>;

/** What a card has to print, by zone, as far as the view tells it. */
export function wordsOf(view: View, card: ViewCard, layout: Shared): ReadonlyMap<string, ZoneText> {
  return zoneTexts(zoneWordsOf(view, card, layout));
}

/** As `wordsOf`, before it is laid out in zones. */
export function zoneWordsOf(view: View, card: ViewCard, layout: Shared): ZoneWords {
  return {
    number: card.number,
    name: card.name,
    bio: card.bioHeld ? [[MARK]] : card.bio.map((runs) => runs.map(runOf)),
    facts: card.facts,
    texts: Object.fromEntries(card.texts.map(({ zone, value }) => [zone, value])),
    credits: card.credits,
    legal: legalText(view.property.legal, card.review?.owed ?? []),
    statement: card.review?.statement ?? null,
    shared: layout.shared ?? {},
  };
}

function runOf(run: ViewRun): ZoneRun {
  return 'held' in run ? MARK : run;
}
