import { answersOf, type Answers } from './new-set-answers.js';
import { titleFrom } from './new-set-ids.js';
import { instantText } from './new-set-instant.js';
import { listOf, readSpec } from './new-set-spec.js';

/** A level as it is asked for: the first has no lift. */
export interface LevelDraft {
  readonly id: string;
  readonly label: string;
  readonly print?: string;
  readonly lift?: string;
  readonly held?: string;
  readonly announce?: boolean;
}

/** What may be said of a level. */
export const LEVEL_KEYS = ['id', 'label', 'lift', 'print', 'held', 'announce'] as const;

/** What is known beforehand, and all the rest, which stays held until somebody gives it a lift. */
export const USUAL_LEVELS: readonly LevelDraft[] = [
  { id: 'open', label: 'Known beforehand' },
  { id: 'story', label: 'Not told yet', lift: 'unset' },
];

/**
 * The levels of a new property. An answer is `id=premiere;label=Episodes 1 to 3;lift=2027-04-16 20:00`,
 * or ids alone, such as `open, premiere, finale`; without a lift it is held until it gets one.
 */
export function levelsOf(
  answers: Answers,
  zone: string,
): { readonly levels: readonly LevelDraft[]; readonly why: readonly string[] } {
  const texts = answersOf(answers, 'levels');
  if (texts.length === 0) return { levels: USUAL_LEVELS, why: [] };
  const specs = texts.flatMap((text) =>
    text.includes('=') ? [text] : listOf(text).map((id) => `id=${id}`),
  );
  const read = specs.map((spec, at) => levelOf(spec, at === 0, zone));
  return { levels: read.map(({ level }) => level), why: read.flatMap(({ why }) => why) };
}

function levelOf(
  text: string,
  isFirst: boolean,
  zone: string,
): { readonly level: LevelDraft; readonly why: readonly string[] } {
  const { said, why } = readSpec(text, LEVEL_KEYS);
  const id = said.get('id') ?? '';
  const [lift, print] = (['lift', 'print'] as const).map((key) => {
    const instant = said.get(key);
    return instant === undefined ? undefined : instantText(instant, zone);
  });
  const held = said.get('held');
  const announce = said.get('announce');
  const level = {
    id,
    label: said.get('label') ?? titleFrom(id),
    ...(print === undefined ? {} : { print }),
    ...(lift === undefined ? (isFirst ? {} : { lift: 'unset' }) : { lift }),
    ...(held === undefined ? {} : { held }),
    ...(announce === undefined ? {} : { announce: announce !== 'no' && announce !== 'false' }),
  };
  const missing = id === '' ? ['a level has no id: write it like id=premiere;label=Episode 1'] : [];
  return { level, why: [...why, ...missing] };
}
