import {
  opensLater,
  sayHold,
  spotOf,
  type Card,
  type Hold,
  type Schedule,
  type Spot,
} from '../model/index.js';
import type { NamesFile } from '../../schema/index.js';
import type { NameIndex } from '../text/index.js';
import type { Bearer } from './cast.js';
import { knownField } from './known-hold.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';
import { heldBy, namePlaces, surelyTold, type NamePlaces } from './told/early.js';
import { castIndex } from './told/scan.js';
import { valueText } from './told/text.js';

const NAMES = `names:
  - { name: Ysolde Marrack, kind: character, level: later, publicName: The voice }
`;

/** The sample with a name that opens later, and an open card that bears it. */
function named(lines: string): Record<string, string | null> {
  return {
    'names.yaml': NAMES,
    ...edited('one/cards/base/a2.md', ['name: The Lamp', lines]),
  };
}

/** An open card under a held name, without the keys by which another name stands for it. */
export const nameHeld: Rule = {
  id: 'name-held',
  about: 'spoilers',
  severity: 'error',
  why: 'The name of a card is in every list, and nothing else says that it must wait.',
  acceptable: false,
  look: heldNames,
  examples: {
    passes: [
      {
        says: 'a public name until the name opens',
        files: named('name: Ysolde Marrack\npublicName: The voice\nholds: { name: later }'),
      },
      {
        says: 'a card that is held as long as its name',
        files: {
          'names.yaml': NAMES,
          ...edited(
            'one/cards/base/a2.md',
            ['name: The Lamp', 'name: Ysolde Marrack'],
            ['spoiler: open', 'spoiler: later'],
          ),
        },
      },
    ],
    fails: [
      {
        says: 'neither key',
        files: named('name: Ysolde Marrack'),
        gives: {
          at: 'one/cards/base/a2.md:3:7',
          covers: 'Ysolde Marrack',
          message: 'the name of this card opens later than the card',
          found: 'Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: '`holds: { name: later }` and a `publicName`, such as The voice',
          fix: 'Ysolde Marrack\npublicName: The voice\nholds: { name: later }',
          related: ['names.yaml:2:13 the name'],
        },
      },
      {
        says: 'held, and nothing stands for it',
        files: named('name: Ysolde Marrack\nholds: { name: later }'),
        gives: {
          at: 'one/cards/base/a2.md:3:7',
          covers: 'Ysolde Marrack',
          message: 'nothing stands for the name of this card while it is held',
          found: 'Ysolde Marrack is held by later until 16 April 2027, 20:00',
          expected: 'a `publicName`, such as The voice',
          fix: 'Ysolde Marrack\npublicName: The voice',
          related: ['names.yaml:2:13 the name'],
        },
      },
    ],
  },
};

function* heldNames(subject: Subject): Generator<Remark> {
  const { cards, holds, schedule } = subject;
  const index = castIndex(subject);
  const places = namePlaces(subject);
  for (const card of cards) {
    const around = holds.get(card);
    const own = around && knownField(card, 'name', around, schedule);
    if (!around || !own) continue;
    const bearer = bearerOf(card, around, index);
    if (!bearer?.hold) continue;
    const told = opensLater(bearer.hold, own);
    if (told || card.front.publicName === undefined) {
      yield remarkOn({ card, bearer, hold: bearer.hold, around, told }, places, subject);
    }
  }
}

/** Whose name the card bears, if it opens later than the card. */
function bearerOf(card: Card, hold: Hold, index: NameIndex<Bearer>): Bearer | null {
  const around = { hold, source: card.source, owner: {} };
  const text = valueText('`name`', card.front.name, ['name'], around);
  return surelyTold(index.find(text.text), text);
}

interface HeldName {
  readonly card: Card;
  readonly bearer: Bearer;
  readonly hold: Hold;
  /** What holds the card. */
  readonly around: Hold;
  /** Whether the card tells the name; else only something that stands for it is missing. */
  readonly told: boolean;
}

function remarkOn(held: HeldName, places: NamePlaces, subject: Subject): Remark {
  const { card, bearer, hold, around, told } = held;
  const spot = spotOf(card.source, ['name']);
  const keys = missingKeys(held, subject);
  const fix = fixOf(spot, keys, card);
  return {
    ...ofCard(card),
    spot,
    message: told
      ? 'the name of this card opens later than the card'
      : 'nothing stands for the name of this card while it is held',
    found: `${bearer.name} is held by ${heldBy(hold, around, subject)}`,
    expected: sayKeys(keys, hold, subject.schedule),
    ...(fix === null ? {} : { fix }),
    related: places(bearer),
  };
}

/** The keys that the card lacks; null for one whose value nobody can know. */
interface Keys {
  readonly publicName?: string | null;
  readonly holds?: string | null;
}

function missingKeys({ card, bearer, hold, around, told }: HeldName, subject: Subject): Keys {
  const { publicName } = card.front;
  const name = subject.content.names?.value.names.find((each) => each.name === bearer.name);
  return {
    ...(publicName === undefined ? { publicName: standIn(name) } : {}),
    ...(told ? { holds: holdId(hold, around, subject.schedule) } : {}),
  };
}

function standIn(name: NamesFile['names'][number] | undefined): string | null {
  return name?.publicName ?? null;
}

/** The one level or embargo that `holds` must name; null if one is not enough. */
function holdId(hold: Hold, around: Hold, schedule: Schedule): string | null {
  const embargoes = hold.embargoes.filter((id) => !around.embargoes.includes(id));
  const level = hold.level > around.level ? [schedule.levels[hold.level]?.id ?? ''] : [];
  const [only, ...others] = [...level, ...embargoes];
  return only === undefined || others.length > 0 ? null : only;
}

function sayKeys({ publicName, holds }: Keys, hold: Hold, schedule: Schedule): string {
  const id = holds ?? sayHold(schedule, hold);
  const such = publicName === null ? '' : `, such as ${publicName ?? ''}`;
  const parts = [
    ...(holds === undefined ? [] : [`\`holds: { name: ${id} }\``]),
    ...(publicName === undefined ? [] : [`a \`publicName\`${such}`]),
  ];
  return parts.join(' and ');
}

/** The name with the missing keys below it; null if one is not known, or `holds` stands already. */
function fixOf({ source, from, to }: Spot, { publicName, holds }: Keys, card: Card): string | null {
  if (publicName === null || holds === null) return null;
  if (holds !== undefined && card.front.holds !== undefined) return null;
  const lines = [
    source.text.slice(from, to),
    ...(publicName === undefined ? [] : [`publicName: ${scalar(publicName)}`]),
    ...(holds === undefined ? [] : [`holds: { name: ${holds} }`]),
  ];
  return lines.join(source.text.includes('\r\n') ? '\r\n' : '\n');
}

/** Words as they may stand in YAML. */
function scalar(words: string): string {
  return /^\p{L}[\p{L}\p{N} ’'.-]*$/u.test(words) ? words : JSON.stringify(words);
}
