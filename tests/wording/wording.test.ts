import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import * as words from '../../pipeline/out/wording/index.js';
import { day as siteDay, moment as siteMoment, plainDay } from '../../site/_lib/dates.js';
import { CAUTIONS, oddsTable } from '../../site/_lib/odds.js';
import { tallyOf } from '../../site/_lib/set-parts.js';
import { setTitle, streetDays as siteStreetDays } from '../../site/_lib/titles.js';
import * as site from '../../site/_lib/words.js';
import { card, dataOf, setOf, SHOPS, SPRING } from '../print/fixture.js';

/** What a browser shows of a piece of markup. */
function shown(markup: { readonly text: string } | string): string {
  const text = typeof markup === 'string' ? markup : markup.text;
  return text
    .replace(/<[^>]+>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');
}

describe('lists and sheets and the site say the same', () => {
  test('of counts', () => {
    fc.assert(
      fc.property(fc.nat(10_000_000), (count) => {
        expect(words.listed(count)).toBe(site.listed(count));
        expect(words.runWords(count)).toBe(site.runWords(count));
      }),
    );
    expect(words.listed(1)).toBe('1 card listed');
    expect(words.listed(12_500)).toBe('12,500 cards listed');
  });

  test('of a roster', () => {
    const roster = { id: 'a', title: 'A', group: 'a', found: null, listed: 0, cards: [] };
    for (const artists of [[], ['Wen'], ['Wen', 'Osk']]) {
      expect(words.subsetCount({ ...roster, artists })).toBe(tallyOf({ ...roster, artists }));
    }
  });

  test('of kinds, ways and places', () => {
    for (const way of ['pack', 'box', 'redemption', 'event', 'chance', 'constructor']) {
      expect(words.foundWords(way)).toBe(site.foundWords(way));
    }
    for (const group of ['base', 'inserts', 'box-toppers']) {
      expect(words.groupName(group)).toBe(site.groupName(group));
    }
    for (const region of ['uk', 'au', 'benelux']) {
      expect(words.regionName(region)).toBe(site.regionName(region));
    }
  });

  test.each(['Europe/London', 'America/New_York', 'Asia/Kolkata', 'UTC'])(
    'of days in %s',
    (zone) => {
      for (const instant of [SHOPS, SPRING, '2027-01-01T00:30:00+00:00[Europe/London]']) {
        expect(words.dayWords(instant, zone)).toBe(shown(siteDay(instant, zone)));
        expect(words.momentWords(instant, zone)).toBe(shown(siteMoment(instant, zone)));
      }
    },
  );

  test('of a day without a time', () => {
    expect(words.plainDayWords('2026-11-03')).toBe(shown(plainDay('2026-11-03')));
  });

  test('beside a name', () => {
    const some = <T>(...values: readonly T[]) => fc.constantFrom<readonly T[]>(values, []);
    const cards = fc.record({
      state: fc.constantFrom('shown' as const, 'placeholder' as const, 'not issued' as const),
      letter: fc.constantFrom(null, 'b'),
      opens: fc.constantFrom(null, SPRING),
      tell: fc.constantFrom(null, 'the lamp <is> lit'),
      shortPrint: fc.constantFrom(null, 'SP' as const, 'SSP' as const),
      run: fc.constantFrom(null, 1, 250, 12_000),
      signers: some(
        { name: 'Ines Albarran', as: 'Odalys Thrane', redemption: true },
        { name: 'Caspar Voss', as: null, redemption: false },
        { name: 'Mirela Voss', as: null, redemption: false },
      ),
    });
    fc.assert(
      fc.property(cards, ({ signers, ...more }) => {
        const one = card('1', 'Pim', { ...more, signers: [...signers] });
        const said = words.notes(one, 'Europe/London').map((note) => note.words);
        expect(said).toEqual(site.notes(one, 'Europe/London').map(shown));
        expect(words.printed(one)).toBe(site.printed(one));
        expect(words.isNameless(one)).toBe(site.isNameless(one));
        expect(one.signers.map(words.signerWords)).toEqual(one.signers.map(site.signer));
      }),
    );
  });

  test('of odds', () => {
    expect(words.ODDS_CAUTIONS).toEqual(CAUTIONS);
    const odds = [{ subset: 'a', parallel: null, title: 'Wen', packs: 12_500 }];
    const products = [{ id: 'hobby', title: 'Hobby', pack: 6, box: 24, odds }];
    const page = shown(oddsTable(setOf([], { products })) ?? '');
    for (const said of [...words.ODDS_CAUTIONS, words.oddsWords(12_500)]) {
      expect(page).toContain(said);
    }
    expect(words.oddsWords(12_500)).toBe('1:12,500');
  });

  test('of a title and its days in shops', () => {
    const street = [
      { region: 'uk', at: SHOPS },
      { region: null, at: SPRING },
    ];
    for (const title of ['The Ferrywrights: High Water', 'Depth Charts', 'The Ferrywrights']) {
      const set = setOf([], { title, street });
      const data = dataOf([set]);
      expect(words.titleParts(set, data).join('')).toBe(shown(setTitle(set, data)));
      expect(words.streetWords(set, 'Europe/London')).toBe(
        siteStreetDays(set, data).map(shown).join(''),
      );
    }
  });
});
