import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { siteLists } from '../../pipeline/out/lists/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, empty, preview, SPRING, troubled, withoutAddress } from './fixture.js';
import { textAt } from './support.js';

const OF_A_SET = ['checklist.csv', 'checklist.txt', 'checklist.json', 'fragment.html'];

describe('the lists', () => {
  test('stand in a fixed order: those of each set, then those of the site', () => {
    expect(
      siteLists(siteData).map(({ path, set, kind, title, type }) => [path, set, kind, title, type]),
    ).toEqual([
      ...[
        ['high-water', 'High Water'],
        ['depth-charts', 'Depth Charts'],
      ].flatMap(([set = '', short = '']) => [
        [`${set}/checklist.csv`, set, 'csv', `${short}: checklist as CSV`, 'text/csv'],
        [`${set}/checklist.txt`, set, 'text', `${short}: checklist as text`, 'text/plain'],
        [`${set}/checklist.json`, set, 'json', `${short}: checklist as JSON`, 'application/json'],
        [
          `${set}/fragment.html`,
          set,
          'fragment',
          `${short}: checklist for another page`,
          'text/html',
        ],
      ]),
      ['feed.atom', null, 'feed', 'What is new, as a feed', 'application/atom+xml'],
      ['lifts.ics', null, 'calendar', 'When more is revealed, as a calendar', 'text/calendar'],
      ['sitemap.xml', null, 'sitemap', 'Map of the site', 'application/xml'],
    ]);
  });

  test('have no map of the site where it has no address, nor of a preview', () => {
    const paths = [...OF_A_SET.map((name) => `high-water/${name}`), 'feed.atom', 'lifts.ics'];
    for (const some of [withoutAddress, preview]) {
      expect(siteLists(some).map(({ path }) => path)).toEqual(paths);
    }
    expect(siteLists(empty).map(({ path }) => path)).toEqual([
      'feed.atom',
      'lifts.ics',
      'sitemap.xml',
    ]);
  });

  test('are the same bytes for the same data, whatever was made before', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        const before = siteLists(some);
        siteLists(data);
        expect(siteLists(structuredClone(some))).toStrictEqual(before);
      }),
      { numRuns: 20 },
    );
  });

  test('are UTF-8 without a mark, and differ when the data do', () => {
    for (const { path } of siteLists(data)) {
      expect(textAt(data, path), path).not.toMatch(/^\ufeff/);
      const other: typeof data = {
        ...data,
        asOf: SPRING,
        property: { ...data.property, zone: 'Europe/Lisbon', address: 'https://b.example/' },
        news: data.news.map((news) => ({ ...news, at: SPRING })),
      };
      expect(textAt(other, path), path).not.toBe(textAt(data, path));
    }
  });

  test('say of a preview that it is one, each in its own form', () => {
    const notice = 'Preview: not to be passed on before 16 April 2027, 09:00 (London time).';
    const unfolded = (text: string) => text.replaceAll('\r\n ', '').replaceAll('\\,', ',');
    for (const path of ['high-water/checklist.txt', 'high-water/fragment.html', 'feed.atom']) {
      expect(textAt(preview, path), path).toContain(notice);
      expect(textAt(data, path), path).not.toMatch(/preview/i);
    }
    expect(textAt(preview, 'high-water/checklist.txt').split('\n')[0]).toBe(notice);
    expect(textAt(preview, 'feed.atom')).toContain(
      `<title>${notice} The Ferrywrights: the cards</title>`,
    );
    const descriptions = unfolded(textAt(preview, 'lifts.ics')).split(`DESCRIPTION:${notice}`);
    expect(descriptions.length - 1).toBe(5);
    expect(JSON.parse(textAt(preview, 'high-water/checklist.json'))).toMatchObject({
      preview: true,
    });
    expect(textAt(preview, 'high-water/checklist.csv')).toBe(
      textAt(data, 'high-water/checklist.csv'),
    );
  });
});

describe('what is said', () => {
  /** Words of the lists that no data gave them; figures stand for themselves. */
  const OWN = new Set(
    `a also April and are artists as at autographs back base be before bio box boxes by card cards checklist come copies
    corrections days each entry facts feed finishes found how in is issued it its legal list listed
    London may May more name new notes not number October of on one or other packs parallel parallels
    passed picture preview print printed redemption revealed same September series set shops short
    signed signers sketches SP story street tells the time title to told UK AU variation was what when
    wrongly change cards' http https`
      .split(/\s+/)
      .map((word) => word.toLowerCase()),
  );

  function wordsIn(text: string): string[] {
    return text.toLowerCase().match(/\p{L}[\p{L}\p{M}’']*/gu) ?? [];
  }

  function stringsOf(value: unknown): string[] {
    if (typeof value === 'string') return [value];
    if (value === null || typeof value !== 'object') return [];
    return Object.values(value).flatMap(stringsOf);
  }

  test.each([
    ['high-water/checklist.txt', (text: string) => text],
    ['high-water/fragment.html', (text: string) => textOfHtml(text)],
    [
      'feed.atom',
      (text: string) =>
        textOfHtml(text)
          .replace(/(urn|tag):\S+/g, '')
          .replace(/\d\S+Z|\d\S+T\S+/g, ''),
    ],
    [
      'lifts.ics',
      (text: string) =>
        [...text.matchAll(/^(?:SUMMARY|NAME):(.*)$/gm)].map(([, said]) => said).join(' '),
    ],
  ])('in %s are words of the data, and few others', (path, shown) => {
    const given = new Set(stringsOf(data).flatMap(wordsIn));
    const said = wordsIn(shown(textAt(data, path)));
    expect(said.length).toBeGreaterThan(10);
    expect(said.filter((word) => !given.has(word) && !OWN.has(word))).toEqual([]);
  });

  function textOfHtml(text: string): string {
    return text
      .replace(/<style>[^]*<\/style>/, ' ')
      .replace(/<[^>]*>/g, ' ')
      .replaceAll('&amp;', '&');
  }
});
