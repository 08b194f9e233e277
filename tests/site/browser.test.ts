import axe, { type AxeResults } from 'axe-core';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { buildSite } from '../../pipeline/out/site/index.js';
import type { PublicData } from '../../schema/index.js';
import { data, images } from './fixture.js';
import { openBrowser, openPage, textOf, type Files } from './support.js';

/** One page of each kind. */
const KINDS = [
  ['the home page', ''],
  ['a set', 'high-water/'],
  ['a set with corrections', 'depth-charts/'],
  ['a card with all that can be shown', 'high-water/crew/17/'],
  ['a variation', 'high-water/crew/17b/'],
  ['a card whose bio is held', 'high-water/crew/18/'],
  ['a placeholder', 'high-water/crew/19/'],
  ['a placeholder without a name', 'high-water/story/52/'],
  ['a card that was not issued', 'high-water/relics/TR-4/'],
  ['a subset', 'high-water/charts/'],
  ['what is new', 'new/'],
  ['signers', 'signers/'],
  ['corrections', 'corrections/'],
  ['about', 'about/'],
  ['no page', '404.html'],
] as const;

const SIDEWAYS = 'document.documentElement.scrollWidth - document.documentElement.clientWidth';

const GROUND = 'getComputedStyle(document.body).backgroundColor';

let browser: Browser;
let site: Files;

beforeAll(async () => {
  [browser, site] = await Promise.all([
    openBrowser(),
    buildSite({ ...data, preview: true }, { images }),
  ]);
});

afterAll(() => browser.close());

async function withPage<T>(
  files: Files,
  path: string,
  look: { readonly width: number },
  use: (page: Page) => Promise<T>,
): Promise<T> {
  const page = await openPage(browser, files, path, look);
  try {
    return await use(page);
  } finally {
    await page.close();
  }
}

/** What axe finds: its rules of WCAG 2.2 at A and AA, and of good practice. */
async function axeFindings(page: Page): Promise<readonly string[]> {
  const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
  const options = JSON.stringify({ runOnly: { type: 'tag', values: tags } });
  const { violations } = await page.evaluate<AxeResults>(`axe.run(document, ${options})`);
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

describe.each(KINDS)('%s', (_, path) => {
  it('can be used by everyone, in light and in dark colours, on a telephone and on a desk', async () => {
    await withPage(site, path, { width: 360 }, async (page) => {
      await page.evaluate(axe.source);
      expect(await page.evaluate(SIDEWAYS)).toBe(0);
      const light = await page.evaluate(GROUND);
      expect(await axeFindings(page)).toEqual([]);
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await page.evaluate(GROUND)).not.toBe(light);
      expect(await axeFindings(page)).toEqual([]);
      for (const width of [768, 1440]) {
        await page.setViewportSize({ width, height: 800 });
        expect(await page.evaluate(SIDEWAYS)).toBe(0);
      }
    });
  });
});

describe('a page', () => {
  it('that has faults is found out by axe', async () => {
    const bad = withText(site, 'index.html', (text) =>
      text.replace('lang="en"', '').replace('<h1>', '<img src="data.json"><h1>'),
    );
    const findings = await withPage(bad, '', { width: 360 }, async (page) => {
      await page.evaluate(axe.source);
      return axeFindings(page);
    });
    expect(findings.map((finding) => finding.split(':')[0])).toEqual(
      expect.arrayContaining(['html-has-lang', 'image-alt']),
    );
  });

  it('runs no script that was put into it, and takes no style', async () => {
    const put =
      '<script>document.title = "ran"</script><img src="x" alt="" onerror="document.title = \'ran\'"><h2 id="put" style="color: rgb(1, 2, 3)">Put</h2>';
    const spoilt = withText(site, 'about/index.html', (text) =>
      text.replace('</main>', `${put}</main>`),
    );
    const open = withText(spoilt, 'about/index.html', (text) =>
      text.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, ''),
    );
    const look = 'document.title + getComputedStyle(document.getElementById("put")).color';
    const outcome = (files: Files) =>
      withPage(files, 'about/', { width: 360 }, (page) => page.evaluate<string>(look));
    expect(await outcome(spoilt)).toMatch(/^About and data.*rgb\(21, 36, 43\)$/);
    expect(await outcome(open)).toBe('ranrgb(1, 2, 3)');
  });

  it('asks for nothing beyond the site, and gets all it asks for', async () => {
    const asked: string[] = [];
    await withPage(site, 'high-water/crew/17/', { width: 1440 }, async (opened) => {
      opened.on('response', (response) =>
        asked.push(`${String(response.status())} ${response.url()}`),
      );
      await opened.reload();
      await opened.evaluate('document.fonts.ready.then(() => true)');
    });
    expect(asked.length).toBeGreaterThan(4);
    for (const line of asked) expect(line).toMatch(/^200 http:\/\/site\.test\//);
  });

  it('has targets of 44 px in lists, tables and menus', async () => {
    const small = `[...document.querySelectorAll('nav a, .cards a, .contents a')]
      .filter((link) => link.getBoundingClientRect().height < 44)
      .map((link) => link.textContent)`;
    for (const path of ['', 'high-water/', 'high-water/crew/17/']) {
      const found = await withPage(site, path, { width: 360 }, (page) =>
        page.evaluate<string[]>(small),
      );
      expect(found, path).toEqual([]);
    }
  });

  it('begins, for the keyboard, with a way past its head', async () => {
    await withPage(site, 'high-water/', { width: 360 }, async (page) => {
      await page.keyboard.press('Tab');
      const first = `(() => { const { top } = document.activeElement.getBoundingClientRect();
        return [document.activeElement.textContent, top >= 0, getComputedStyle(document.activeElement).outlineStyle]; })()`;
      expect(await page.evaluate(first)).toEqual(['Skip to the content', true, 'solid']);
      await page.keyboard.press('Enter');
      expect(await page.evaluate('document.activeElement.localName')).toBe('main');
    });
  });

  it('holds long words and numbers', async () => {
    const long = await buildSite(withLongWords(data), { images });
    for (const path of ['', 'high-water/', 'high-water/crew/17/', 'high-water/crew/19/']) {
      const beyond = await withPage(long, path, { width: 360 }, (page) =>
        page.evaluate<number>(SIDEWAYS),
      );
      expect(beyond, path).toBe(0);
    }
  });

  it('keeps the head of a table in sight', async () => {
    await withPage(site, 'high-water/', { width: 1440 }, async (page) => {
      await page.evaluate(
        'document.querySelector(".cards tbody tr:nth-child(18)").scrollIntoView({ behavior: "instant" })',
      );
      const top = await page.evaluate(
        'document.querySelector(".cards thead th").getBoundingClientRect().top',
      );
      expect(top).toBe(0);
    });
  });
});

function withText(files: Files, path: string, change: (text: string) => string): Files {
  const text = textOf(files.get(path));
  const changed = change(text);
  if (changed === text) throw new Error(`${path} was not changed`);
  return new Map([...files, [path, new TextEncoder().encode(changed)]]);
}

function withLongWords(some: PublicData): PublicData {
  const word = 'Overmereferrywrightsguildhallkeeper';
  return {
    ...some,
    property: { ...some.property, title: word, siteTitle: word, legal: word.repeat(3) },
    sets: some.sets.map((set) => ({
      ...set,
      title: word,
      subsets: set.subsets.map((subset) => ({
        ...subset,
        title: word,
        cards: subset.cards.map((card) => ({
          ...card,
          name: card.name + word,
          number: card.number === null ? null : `FERRYWRIGHT-${card.number}`,
          facts: card.facts.map(({ level }) => ({ name: word, value: word, level })),
        })),
      })),
    })),
  };
}
