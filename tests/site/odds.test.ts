import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, it } from 'vitest';

import { buildSite } from '../../pipeline/out/site/index.js';
import type { PublicData } from '../../schema/index.js';
import { data, images } from './fixture.js';
import { pagesOf } from './support.js';

type Odds = PublicData['sets'][number]['products'][number]['odds'];

const of = (subset: string | null, parallel: string | null, title: string, packs: number) => ({
  subset,
  parallel,
  title,
  packs,
});

/** The fixture with these odds of its first products, and nothing that is worked out of them. */
function dataWith(all: readonly Odds[]): PublicData {
  return {
    ...data,
    sets: data.sets.map((set) => ({
      ...set,
      products: set.products.map(({ id, title, pack, box }, at) => {
        return { id, title, pack, box, odds: all[at] ?? [] };
      }),
    })),
  };
}

async function pageWith(all: readonly Odds[]): Promise<string> {
  const pages = pagesOf(await buildSite(dataWith(all), { images }));
  const page = pages.get('high-water/index.html');
  if (page === undefined) throw new Error('there is no page of the set');
  return page;
}

/** The cells of each row of the table of odds, as words. */
function rowsOf(page: string): readonly (readonly string[])[] {
  const section = page.split('id="set--odds"')[1]?.split('</table>')[0] ?? '';
  return section
    .split('<tr>')
    .slice(1)
    .map((row) =>
      [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, cell = '']) =>
        cell.replace(/<[^>]*>/g, ''),
      ),
    );
}

describe('the odds of a set', () => {
  let page: string;
  beforeAll(async () => {
    page = await pageWith([
      [of('charts', null, 'Lake Charts', 4), of(null, 'keel', 'Keel', 12_686)],
      [of('charts', null, 'Lake Charts', 8), of(null, 'tarred', 'Tar & <b>', 1)],
    ]);
  });

  it('are a table, a column for each product', () => {
    expect(rowsOf(page)).toEqual([
      ['Found', 'Hobby', 'Retail'],
      ['Lake Charts', '1:4', '1:8'],
      ['Keel', '1:12,686', ''],
      ['Tar &amp; &lt;b&gt;', '', '1:1'],
    ]);
  });

  it('stand over the cautions, and in the contents', () => {
    expect(page).toContain('Odds are averages over all the packs that are made, rounded up.');
    expect(page).toContain('A pack, a box or a case may hold more of something, fewer, or none.');
    expect(page).toContain('Prizes and promotions have rules of their own');
    expect(page).toContain('href="#set--odds"');
    expect(page).toContain('href="#charts">Lake Charts</a>');
  });

  it('are sound HTML', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:a11y', 'html-validate:document', 'html-validate:standard'],
      rules: { 'require-sri': ['error', { target: 'crossorigin' }] },
    });
    const report = await validator.validateString(page);
    expect(report.results.flatMap(({ messages }) => messages)).toEqual([]);
  });

  it('have a column only for products that tell some', async () => {
    expect(rowsOf(await pageWith([[], [of('charts', null, 'Lake Charts', 8)]]))).toEqual([
      ['Found', 'Retail'],
      ['Lake Charts', '1:8'],
    ]);
  });

  it('are not spoken of where none are said', async () => {
    const bare = await pageWith([]);
    expect(bare).not.toContain('set--odds');
    expect(bare).not.toMatch(/\bodds\b/i);
  });
});
