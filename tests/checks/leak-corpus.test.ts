import { describe, expect, test } from 'vitest';

import { check } from '../../pipeline/checks/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { demoFiles } from '../demo/copy.js';
import { Dice } from './dice.js';
import { DISGUISES, PAIRS, type Disguise } from './disguises.js';
import { HELD, castSpeaking, findingsOn, novelSentences, planted } from './planted-names.js';
import { NO_DICTIONARIES } from '../../pipeline/text/index.js';

/** Names of the cast that are open. */
const OPEN = [
  'Odalys',
  'Emeric Hask',
  'Old Pell',
  'Sister Quillon Ash',
  'Dorrit',
  'Thimble Quay',
  'the Argument',
  'Tin Magistrate',
  'the voice in the lock',
  'Bell Sill',
];
const SENTENCES = novelSentences(5000);
const PLAIN = 'Nobody who was there that evening said much about it to anyone afterwards.';

/** A name or a secret, hidden in one or two ways in a sentence, and what was found of it. */
interface Plant {
  readonly ways: readonly Disguise[];
  readonly bio: string;
}

interface Tally {
  readonly says: string;
  readonly of: number;
  readonly found: number;
  readonly missed: readonly string[];
}

/** How many of the plants that a way had a part in were found, for each way. */
function tallyOf(
  rule: 'leak' | 'secret',
  plants: readonly Plant[],
): {
  readonly all: Tally;
  readonly byKind: readonly Tally[];
  readonly findings: ReturnType<typeof findingsOn>;
} {
  const findings = findingsOn([rule], plants);
  const tally = (says: string, wants: (plant: Plant, severities: readonly string[]) => boolean) => {
    const own = plants.flatMap((plant, at) => {
      const severities = findings[at] ?? [];
      return wants(plant, severities) ? [{ bio: plant.bio, hit: severities.length > 0 }] : [];
    });
    const missed = own.filter(({ hit }) => !hit).map(({ bio }) => bio);
    return { says, of: own.length, found: own.length - missed.length, missed };
  };
  return {
    all: tally('all', () => true),
    findings,
    byKind: DISGUISES.map((way) => tally(way.says, ({ ways }) => ways.includes(way))),
  };
}

function share({ of, found }: Tally): number {
  return found / of;
}

describe('names in one disguise', () => {
  const dice = new Dice(1851);
  const plants = DISGUISES.flatMap((way) =>
    HELD.flatMap((name) =>
      [1, 2].map(() => {
        const put = way.put(name, dice);
        return { way, ways: [way], put, bio: planted(dice.pick(SENTENCES), [put], dice) };
      }),
    ),
  );
  const { all, byKind, findings } = tallyOf('leak', plants);
  const seen = plants.map((plant, at) => ({ ...plant, severities: findings[at] ?? [] }));

  test.each(byKind)('$says: $found of $of', (tally) => {
    expect(tally.of).toBe(2 * HELD.length);
    expect(share(tally), tally.missed.join('\n')).toBeGreaterThanOrEqual(0.99);
  });

  test(`all: ${String(all.found)} of ${String(all.of)}`, () => {
    expect(share(all)).toBeGreaterThanOrEqual(0.99);
  });

  test('what hides no letter from a reader is an error', () => {
    const milder = seen.filter(
      ({ way, severities }) => way.doubtful !== true && !severities.includes('error'),
    );
    expect(milder.map(({ way, put }) => `${way.says}: ${put}`)).toStrictEqual([]);
  });

  test('one letter wrong is a warning, unless another word of the name tells it by itself', () => {
    const slips = seen.filter(({ way, put }) => way.doubtful === true && /^\p{Lu}\S*$/u.test(put));
    expect(slips.length).toBeGreaterThan(5);
    expect(slips.map(({ severities }) => severities)).toStrictEqual(slips.map(() => ['warning']));
  });
});

describe('names in two disguises, one over the other', () => {
  const dice = new Dice(5);
  const plants = PAIRS.map((ways) => {
    const told = ways.reduce((name, way) => way.put(name, dice), dice.pick<string>(HELD));
    return { ways, bio: planted(dice.pick(SENTENCES), [told], dice) };
  });
  const { all, byKind } = tallyOf('leak', plants);

  test.each(byKind)('$says: $found of $of', (tally) => {
    const slip = DISGUISES.some(({ says, doubtful }) => says === tally.says && doubtful === true);
    expect(tally.of).toBeGreaterThan(20);
    // Two warnings of one name may be too little to know it by.
    expect(share(tally), tally.missed.join('\n')).toBeGreaterThanOrEqual(slip ? 0.85 : 0.9);
  });

  test(`all: ${String(all.found)} of ${String(all.of)}`, () => {
    expect(all.of).toBeGreaterThan(3000);
    expect(share(all), all.missed.join('\n')).toBeGreaterThanOrEqual(0.99);
  });
});

describe('secrets in one disguise and in two', () => {
  const dice = new Dice(1791);
  const secrets = readContent(memoryFolder(castSpeaking([{}]))).names?.value.secrets ?? [];
  const sure = DISGUISES.filter(({ doubtful }) => doubtful !== true);
  const told = (ways: readonly Disguise[], allOf: readonly (readonly string[])[]): Plant => {
    const words = allOf.map((group) => dice.pick(group));
    const at = dice.below(words.length);
    const hidden = words.map((word, index) =>
      index === at ? ways.reduce((sum, way) => way.put(sum, dice), word) : word,
    );
    return { ways, bio: planted(PLAIN, hidden, dice) };
  };
  const pairs = PAIRS.filter(
    (pair, at) => at % 3 === 0 && pair.every(({ doubtful }) => doubtful !== true),
  );
  const plants = [
    ...sure.flatMap((way) => secrets.map(({ allOf }) => told([way], allOf))),
    ...pairs.map((pair) => told(pair, dice.pick(secrets).allOf)),
  ];
  const { all, byKind } = tallyOf('secret', plants);

  test.each(byKind.filter(({ of }) => of > 0))('$says: $found of $of', (tally) => {
    expect(share(tally), tally.missed.join('\n')).toBeGreaterThanOrEqual(0.95);
  });

  test(`all: ${String(all.found)} of ${String(all.of)}`, () => {
    expect(secrets.length).toBe(4);
    expect(share(all), all.missed.join('\n')).toBeGreaterThanOrEqual(0.99);
  });

  test('told by the subject of the card and one of its sentences', () => {
    const forms = ['Emeric', 'EMERIC', 'Eme\u00adric', 'Warden Hask', 'Hask, Emeric'];
    const cards = forms.map((name) => ({
      name,
      bio: 'Long ago. Her brother is Odalys’s sibling.',
    }));
    expect(findingsOn(['secret'], cards)).toStrictEqual(forms.map(() => ['error']));
    const public_ = { name: 'A Card', front: 'publicName: The voice in the lock\n' };
    expect(findingsOn(['secret'], [{ ...public_, bio: 'She is alive.' }])).toStrictEqual([
      ['error'],
    ]);
  });

  test('told by a name with one letter wrong: a warning', () => {
    const cards = [{ bio: 'It is said that Odalis has a brother, the warden.' }];
    expect(findingsOn(['secret'], cards)).toStrictEqual([['warning']]);
  });
});

describe('false alarms', () => {
  test('at most 1 in 100 of 5,000 innocent sentences with open names put in', () => {
    const dice = new Dice(7);
    const innocents = SENTENCES.map((sentence) => ({
      bio: planted(sentence, [dice.pick(OPEN)], dice),
    }));
    const findings = findingsOn(['leak', 'secret'], innocents);
    const suspected = innocents.filter((_, at) => (findings[at] ?? []).length > 0);
    const bios = suspected.map(({ bio }) => bio);
    expect(bios.length / innocents.length, bios.slice(0, 20).join('\n')).toBeLessThanOrEqual(0.01);
  });

  test('none in the demo’s own copy', () => {
    const content = readContent(memoryFolder(demoFiles({ art: true })));
    const only = ['leak', 'secret', 'id-tells', 'number-tells', 'name-held', 'depicts-held'];
    for (const rule of only) {
      expect(
        check(content, { fonts: new Map(), dictionaries: NO_DICTIONARIES, only: [rule] }).findings,
      ).toStrictEqual([]);
    }
  });

  test('names that are common words too are told by their capitals: at most 1 in 100', () => {
    const words = ['Hope', 'Grace', 'Will', 'Mark', 'Rose', 'Ash', 'Frank', 'Bill', 'Robin'];
    const names = words.map(
      (word) => `  - { name: ${word}, kind: character, level: finale, match: exact }\n`,
    );
    const files = new Map(castSpeaking(SENTENCES.map((bio) => ({ bio }))));
    files.set('names.yaml', `names:\n${names.join('')}`);
    const report = check(readContent(memoryFolder(files)), {
      fonts: new Map(),
      dictionaries: NO_DICTIONARIES,
      only: ['leak'],
    });
    expect(report.findings.length / SENTENCES.length).toBeLessThanOrEqual(0.01);
    expect(report.findings.length).toBeGreaterThan(0);
  });
});
