import { HtmlValidate } from 'html-validate';
import { beforeAll, describe, expect, it } from 'vitest';

import { buildSite } from '../../pipeline/out/site/index.js';
import { root } from '../house/files.js';
import { data, images } from './fixture.js';
import { pagesOf, textOf, type Files } from './support.js';

/** Another theme of the same data: the one that people copy. */
const theme = `${root}recipes/theme`;

let site: Files;
let own: Files;

beforeAll(async () => {
  [site, own] = await Promise.all([
    buildSite(data, { images, theme }),
    buildSite(data, { images, inThisProcess: true }),
  ]);
});

describe('another theme', () => {
  it('has a page for each set and each card at the same address', () => {
    const cards = data.sets.flatMap(({ subsets }) => subsets.flatMap((subset) => subset.cards));
    const addresses = cards.flatMap(({ page }) => (page === null ? [] : `${page}index.html`));
    const sets = data.sets.map(({ id }) => `${id}/index.html`);
    expect([...pagesOf(site).keys()].sort()).toEqual([...addresses, ...sets, 'index.html'].sort());
    for (const address of addresses) expect(own.has(address), address).toBe(true);
  });

  it('has the same data, pictures, fonts, sheets and lists beside its pages', () => {
    const beside = (files: Files): [string, string][] =>
      [...files]
        .filter(
          ([path]) =>
            !/index\.html$|^release\.json$|^404|^sw\.js$|^assets\/.*\.(css|js|svg)$/.test(path),
        )
        .map(([path, bytes]) => [path, Buffer.from(bytes).toString('base64')]);
    expect(beside(site)).toEqual(beside(own));
    expect(beside(site).length).toBeGreaterThan(25);
  });

  it('escapes, says its day, and folds what tells more', () => {
    expect(textOf(site.get('high-water/index.html'))).toContain('© 2027 Lantern &amp; Oar');
    expect(textOf(site.get('high-water/crew/18/index.html'))).toContain(
      '<summary>Tells of First cards</summary>',
    );
    expect(textOf(site.get('high-water/crew/18/index.html'))).toContain('Lantern &#38; Oar');
    expect(textOf(site.get('index.html'))).toContain('Free to use with the name of the publisher.');
  });

  it('makes pages in which the validator finds nothing', async () => {
    const validator = new HtmlValidate({
      extends: ['html-validate:document', 'html-validate:a11y'],
    });
    for (const [path, page] of pagesOf(site)) {
      const report = await validator.validateString(page);
      expect(
        report.results.flatMap(({ messages }) => messages.map(({ message }) => message)),
        path,
      ).toEqual([]);
    }
  });
});
