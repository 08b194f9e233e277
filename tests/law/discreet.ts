import { check, RULES } from '../../pipeline/checks/index.js';
import { discreetReport } from '../../pipeline/release/index.js';
import { memoryFolder, readContent, keptDictionaries } from '../../pipeline/read/index.js';
import type { DiscreetReport } from '../../schema/index.js';
import { draftOf, type Dice } from './edit.js';
import { standing, type Eye } from './held.js';
import { shownCards } from './hidden-cards.js';
import { filesOf, type Plain } from './plain.js';

/** Faults that everybody may see, each on a card that is shown. */
const BREAKS: readonly ((plain: Plain, eye: Eye, dice: Dice) => void)[] = [
  (plain, eye, dice) => {
    const [one, other] = [dice.pick(shownCards(plain, eye)), dice.pick(shownCards(plain, eye))];
    if (one && other) one.card.front.number = other.card.front.number;
  },
  (plain, eye, dice) => {
    const told = dice.pick(shownCards(plain, eye))?.card;
    const name = plain.names.names.find(({ level }) => standing(plain, eye, level) !== 'open');
    if (told && name) told.front.publicName = name.name;
  },
  (plain, eye, dice) => {
    const bare = dice.pick(shownCards(plain, eye))?.card;
    if (!bare) return;
    bare.bio = [];
    delete bare.front.bio;
  },
  (plain, eye, dice) => {
    const odd = dice.pick(shownCards(plain, eye))?.card;
    if (odd) odd.front.name += ' Hеron'; // the second letter is Cyrillic
  },
];

/** The content with something wrong that everybody may see. */
export function broken(plain: Plain, eye: Eye, dice: Dice): Plain {
  const draft = draftOf(plain);
  for (const spoil of BREAKS) spoil(draft, eye, dice);
  return draft;
}

/** What a check of the content's files says where others read the log; fonts are left out. */
export function toldOf(plain: Plain, at: number): DiscreetReport {
  const content = readContent(memoryFolder(new Map(filesOf(plain))));
  return discreetReport(
    content,
    at,
    !check(content, { fonts: new Map(), dictionaries: keptDictionaries }).ok,
  );
}

/** While something runs, two of the rules say of single texts whether they break them. */
export function whileRulesSpeak<T>(run: () => T): T {
  const speaking = RULES.filter(({ offends }) => offends === undefined).slice(0, 2);
  const [one, other] = speaking;
  if (one) Object.assign(one, { offends: (text: string) => text.includes('Heron') });
  if (other) Object.assign(other, { offends: (text: string) => text.includes('and') });
  try {
    return run();
  } finally {
    for (const rule of speaking) Reflect.deleteProperty(rule, 'offends');
  }
}

/** The content with fonts that are installed in all its layouts, so that it can be read whole. */
export function withFonts(plain: Plain): Plain {
  const draft = draftOf(plain);
  for (const layout of draft.layouts) layout.fonts = { body: FONT };
  return draft;
}

const FONT = {
  package: '@fontsource/alegreya-sans',
  regular: 'files/alegreya-sans-latin-400-normal.woff',
};
