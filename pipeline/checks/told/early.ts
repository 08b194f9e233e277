import {
  NEVER,
  locatorOf,
  openingsOf,
  opensLater,
  sayInstant,
  type Hold,
  type Locator,
} from '../../model/index.js';
import type { NameMatch } from '../../text/index.js';
import type { Bearer } from '../cast.js';
import type { Remark } from '../rule.js';
import type { Subject } from '../subject.js';
import type { ToldText } from './text.js';

/** Who is told too early; null if anybody who bears the form may be told with the text. */
export function toldEarly({ from, to, of }: NameMatch<Bearer>, text: ToldText): Bearer | null {
  const own = text.holdOf(from, to);
  const early = of.filter(({ hold }) => hold !== null && opensLater(hold, own));
  return early.length === of.length ? (early[0] ?? null) : null;
}

/** The first who surely is named too early by a text; null if nobody is. */
export function surelyTold(matches: readonly NameMatch<Bearer>[], text: ToldText): Bearer | null {
  for (const match of matches) {
    const bearer = toldEarly(match, text);
    if (bearer && isSure(match, bearer)) return bearer;
  }
  return null;
}

/** Whether words surely are the name, and not a slip or a surname that others may have. */
export function isSure({ doubt }: NameMatch<Bearer>, { surname }: Bearer): boolean {
  return doubt === null && !surname;
}

/** "finale until 4 June 2027, 20:00": what of a hold a text itself is not held by. */
export function heldBy(hold: Hold, own: Hold, { schedule, property }: Subject): string {
  const embargoes = hold.embargoes.filter((id) => !own.embargoes.includes(id));
  const [level, ...others] = openingsOf(schedule, { level: hold.level, embargoes });
  const openings = hold.level > own.level && level ? [level, ...others] : others;
  return openings
    .map(({ id, lift }) =>
      lift === NEVER
        ? `${id}, which has no date`
        : `${id} until ${sayInstant(lift, property.zone)}`,
    )
    .join(' and ');
}

/** Where the cast has the name of a bearer, to go with a remark. */
export type NamePlaces = (bearer: Bearer) => NonNullable<Remark['related']>;

/** The cast is read for its places once, and only if there is something to remark. */
export function namePlaces({ content }: Subject): NamePlaces {
  const source = content.names?.source;
  let locate: Locator | null = null;
  return ({ path }) => {
    if (!source) return [];
    locate ??= locatorOf(source);
    return [{ message: 'the name', spot: locate(path) }];
  };
}
