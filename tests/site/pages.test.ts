import { createHash } from 'node:crypto';
import { tmpdir } from 'node:os';
import canonicalize from 'canonicalize';
import { HtmlValidate } from 'html-validate';
import { Value } from 'typebox/value';
import { beforeAll, describe, expect, it } from 'vitest';
import { buildSite, siteFiles } from '../../pipeline/out/site/index.js';
import { PublicRelease } from '../../schema/index.js';
import { bareData, data, images } from './fixture.js';
import { hostileStrings } from './hostile-strings.js';
import { pagesOf, textOf, type Files } from './support.js';

const NONE: Files = new Map();

/** Where the site says that it stands. */
const TOP = 'https://cards.example/ferrywrights/';

const PRESETS: readonly string[] = ['a11y', 'document', 'standard'];

/** Faults that the validator finds; the site's own style sheet needs no digest in its link. */
async function faultsOf(page: string, presets = PRESETS): Promise<readonly string[]> {
  const validator = new HtmlValidate({
    extends: presets.map((preset) => `html-validate:${preset}`),
    rules: { 'require-sri': ['error', { target: 'crossorigin' }] },
  });
  const report = await validator.validateString(page);
  const messages = report.results.flatMap((result) => result.messages);
  return messages.map(({ ruleId, message, line }) => `${String(line)}: ${ruleId}: ${message}`);
}

let site: Files;
let pages: ReadonlyMap<string, string>;

beforeAll(async () => {
  site = await buildSite(data, { images });
  pages = pagesOf(site);
});

function pageOf(path: string): string {
  const page = pages.get(path);
  if (page === undefined) throw new Error(`no page ${path}`);
  return page;
}

/** The words of a row of a table, as they are read. */
function rowOf(page: string, number: string): string {
  const row = page
    .split('<tr')
    .map((part) => part.split('</tr>')[0] ?? '')
    .find((part) => wordsOf(part).startsWith(`${number} `));
  if (row === undefined) throw new Error(`no row ${number}`);
  return wordsOf(row);
}

function wordsOf(part: string): string {
  const inner = part.slice(part.indexOf('>') + 1).replace(/<\/(td|th)>/g, ' ');
  return inner
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ')
    .trim();
}

/** A script of the site, or data for programs, in which nothing can end the element. */
const KNOWN_SCRIPT =
  /<script type="module" src="(\.{0,2}\/)*assets\/[a-z-]+-[0-9a-f]{16}\.js"><\/script>|<script type="application\/(ld\+)?json"[^<>]*>[^<]*<\/script>/g;

/** What stands beside the page of a set. */
const OF_A_SET = [
  'checklist-a4.pdf',
  'checklist-letter.pdf',
  'checklist.csv',
  'checklist.json',
  'checklist.txt',
  'counter-a4.pdf',
  'counter-letter.pdf',
  'fragment.html',
];

describe('the files of a site', () => {
  it('are a page for each address, pictures, fonts, styles, data and the release', () => {
    const digest = /-[0-9a-f]{16}\./;
    const names = [...site.keys()].map((name) => name.replace(digest, '-#.'));
    const numbers = (folder: string, all: readonly (string | number)[]) =>
      all.map((number) => `${folder}/${String(number)}/index.html`);
    const crew = Array.from({ length: 20 }, (_, at) => at + 1);
    const cuts = ['400-italic', '400-normal', '500-normal', '700-italic', '700-normal'];
    const faces = (family: string, list: readonly string[]) =>
      ['latin', 'latin-ext'].flatMap((script) =>
        list.map((cut) => `assets/${family}-${script}-${cut}-#.woff2`),
      );
    const subsets = data.sets.flatMap((set) => set.subsets.map(({ id }) => `${set.id}/${id}`));
    const ofSets = data.sets.flatMap(({ id }) => OF_A_SET.map((name) => `${id}/${name}`));
    expect(names.filter((name) => !/^assets\/[a-z-]+-#\.js$/.test(name)).sort()).toEqual(
      [
        ...['404.html', 'about/index.html', 'data.json', 'index.html', 'release.json', 'sw.js'],
        ...['corrections', 'new', 'signers', ...subsets].map((folder) => `${folder}/index.html`),
        ...['checklist.schema.json', 'data.schema.json', 'feed.atom', 'lifts.ics', 'sitemap.xml'],
        ...['assets/mark-#.svg', 'assets/site-#.css', ...images.keys()],
        ...ofSets,
        ...faces('alegreya', cuts),
        ...faces('alegreya-sans', ['400-normal', '500-normal']),
        ...['depth-charts/index.html', 'high-water/index.html'],
        ...numbers('depth-charts/soundings', [1, 2, 3]),
        ...numbers('high-water/crew', [...crew, '17b']),
        ...numbers('high-water/story', [49, 50, 51, 52, 53, 54, 55]),
        ...numbers('high-water/charts', ['LC-1', 'LC-2', 'LC-3', 'LC-4']),
        ...numbers('high-water/signatures', ['SG-1', 'SG-9']),
        ...numbers('high-water/relics', ['TR-3', 'TR-4']),
      ].sort(),
    );
  });

  it('stand in the order of their names', () => {
    expect([...site.keys()]).toEqual([...site.keys()].sort());
  });

  it('are the same bytes for the same data', async () => {
    const again = await buildSite(structuredClone(data), { images });
    expect([...again.keys()]).toEqual([...site.keys()]);
    for (const [name, bytes] of again)
      expect(Buffer.compare(bytes, site.get(name) ?? bytes), name).toBe(0);
  });

  it('tell nothing of the machine', () => {
    for (const [path, page] of pages) {
      expect(page, path).not.toContain(process.cwd());
      expect(page, path).not.toContain(tmpdir());
      expect(page, path).not.toMatch(/eleventy|generator/i);
    }
  });

  it('have the public data as canonical JSON', () => {
    expect(textOf(site.get('data.json'))).toBe(`${canonicalize(data) ?? ''}\n`);
  });

  it('are all in release.json with their SHA-256, but for itself', () => {
    const release: unknown = JSON.parse(textOf(site.get('release.json')));
    expect(Value.Check(PublicRelease, release)).toBe(true);
    const digests = [...site]
      .filter(([name]) => name !== 'release.json')
      .map(([name, bytes]) => [name, createHash('sha256').update(bytes).digest('hex')]);
    expect(release).toEqual({
      format: 1,
      asOf: data.asOf,
      preview: false,
      files: Object.fromEntries(digests),
    });
  });

  it('have no picture that no card shows, and lack none', () => {
    const more = new Map([...images, ['art/held.png', new Uint8Array()]]);
    expect(() => siteFiles(data, NONE, [more])).toThrow('no card shows art/held.png');
    expect(() => siteFiles(data, NONE, [])).toThrow('art/3f9a1c0b7d2e4a51.png is missing');
  });

  it('do not take one another’s place', () => {
    const pagesThatMeet = new Map([['Data.json', new Uint8Array()]]);
    expect(() => siteFiles(bareData, pagesThatMeet, [])).toThrow('are the same address');
  });
});

describe('the pages', () => {
  it('lead to files and places that are there', () => {
    for (const [path, page] of pages) {
      for (const [, address = ''] of page.matchAll(/(?:href|src)="([^"]*)"/g)) {
        const url = new URL(address.replace(TOP, 'http://site.test/'), `http://site.test/${path}`);
        const target = url.pathname.slice(1).replace(/(^|\/)$/, '$1index.html');
        expect(site.has(target), `${path} asks for ${address}`).toBe(true);
        if (url.hash !== '') expect(pageOf(target), path).toContain(`id="${url.hash.slice(1)}"`);
      }
    }
  });

  it('are sound HTML that everyone can use', async () => {
    for (const [path, page] of pages) {
      expect(await faultsOf(page), path).toEqual([]);
    }
    const bad = pageOf('index.html')
      .replace('<!doctype html>', '')
      .replace('</ol>', '')
      .replace('<h1>', '<h3>')
      .replace('<p class="lede">', '<p class="lede"><img src="data.json">');
    const found = (await faultsOf(bad)).join('\n');
    for (const rule of ['missing-doctype', 'close-order', 'heading-level', 'wcag/h37']) {
      expect(found).toContain(`: ${rule}: `);
    }
  });

  it('list the sets, what is listed of them and what is to come', () => {
    const home = pageOf('index.html');
    expect(home.indexOf('High Water')).toBeLessThan(home.indexOf('Depth Charts'));
    expect(wordsOf(home)).toContain('The checklist: 42 cards listed in 2 sets.');
    expect(home).toContain('<p class="tally">39 cards listed</p>');
    expect(home).toContain(
      'On <time datetime="2027-05-14T20:00:00+01:00">14 May 2027 at 20:00</time> (London time)',
    );
  });

  it('give the day on which an instant falls in the zone of the property', () => {
    expect(wordsOf(pageOf('high-water/index.html'))).toContain(
      'In shops 16 April 2027 (UK), 17 April 2027 (AU). 39 cards listed.',
    );
    expect(wordsOf(pageOf('depth-charts/index.html'))).toContain('In shops 2 October 2026.');
  });

  it('have a row for each card with what is known of it', () => {
    const set = pageOf('high-water/index.html');
    expect(rowOf(set, '17')).toBe('17 Odalys Thrane');
    expect(rowOf(set, '17b')).toBe(
      '17b Odalys Thrane variation: the lamp is lit; short print (SP); 250 copies',
    );
    expect(rowOf(set, '19')).toBe('19 The voice in the lock to be revealed on 14 May 2027');
    expect(rowOf(set, '20')).toBe('20 to be revealed on 14 May 2027');
    expect(rowOf(set, '55')).toBe('55 to be revealed');
    expect(rowOf(set, 'SG-9')).toBe(
      'SG-9 The two divers super short print (SSP); one of one; signed by Mirela Voss as Dorrit Sill and Caspar Voss (redemption)',
    );
    expect(rowOf(set, 'TR-4')).toBe('TR-4 A plank of the Widow’s Kettle not issued');
    expect(rowOf(set, 'Varnished')).toBe(
      'Varnished Crew and Craft 84 copies of each gloss over the art',
    );
  });

  it('leave out a column that would stay empty', () => {
    expect(pageOf('depth-charts/index.html')).not.toContain('>Notes</th>');
  });

  it('tell what is corrected', () => {
    expect(wordsOf(pageOf('depth-charts/index.html'))).toContain(
      '3 November 2026 2 nine fathoms six fathoms on the back',
    );
  });

  it('set a bio with its faces and breaks, and one mark for what is held', () => {
    const card = pageOf('high-water/crew/17/index.html');
    expect(card).toContain('She takes the <em>Patient Heron</em> across');
    expect(card).toContain(
      '<strong>Nobody</strong> else will. <span class="held">to be revealed</span></p>',
    );
    expect(card).toContain(
      'Her log is short:<br>“Went over. Came back.”<br><strong><em>Twice</em></strong> it',
    );
    const whole = pageOf('high-water/crew/18/index.html');
    expect(whole).toContain(
      '<div class="bio"><p><span class="held">to be revealed</span></p></div>',
    );
  });

  it('keep a place for each picture', () => {
    expect(pageOf('high-water/crew/17/index.html')).toContain(
      'src="../../../art/8c01d7e9a2b34f66.png" srcset="../../../art/3f9a1c0b7d2e4a51.png 400w, ../../../art/8c01d7e9a2b34f66.png 800w"',
    );
    expect(pageOf('high-water/crew/17/index.html')).toContain('width="800" height="1120"');
  });

  it('say nothing of a preview when there is none', () => {
    for (const [path, page] of pages) expect(page, path).not.toContain('Preview');
  });

  it('have no script but files of the site and data, and nothing of style beside the sheet', () => {
    for (const [path, page] of pages) {
      expect(page.match(KNOWN_SCRIPT)?.length, path).toBeGreaterThan(0);
      expect(page.replace(KNOWN_SCRIPT, ''), path).not.toMatch(/<script|<style|style=|\son\w+=/);
    }
  });
});

describe('other data', () => {
  it('of a preview say on every page what it is', async () => {
    const preview = pagesOf(await buildSite({ ...data, preview: true }, { images }));
    expect(preview.size).toBe(pages.size);
    for (const [path, page] of preview) {
      const words = wordsOf(page);
      const notice = words.indexOf(
        'Preview. This is the list as it will stand on 16 April 2027, 09:00 (London time). It is not to be passed on before then.',
      );
      expect(notice, path).toBeGreaterThan(0);
      expect(notice, path).toBeLessThan(words.indexOf('About and data', words.indexOf('Preview.')));
      expect(page, path).toContain('<meta name="robots" content="noindex">');
    }
  });

  it('without a set still make a site', async () => {
    const empty = pagesOf(
      await buildSite({ ...data, sets: [], openings: [], news: [] }, { images: NONE }),
    );
    expect([...empty.keys()]).toEqual(['404.html', 'about/index.html', 'index.html']);
    expect(empty.get('index.html')).toContain('No cards are listed yet.');
  });

  it('that read like markup are shown as text, whatever field they stand in', async () => {
    const { data: hostile, marks } = hostileStrings(data);
    const made = pagesOf(await buildSite(hostile, { images }));
    const all = [...made.values()].join('\n');
    expect(marks.length).toBeGreaterThan(100);
    for (const { mark, path } of marks) {
      expect(all, path).toContain(`${mark}&lt;script&gt;&quot;&#39;&amp;amp;&lt;/script&gt;`);
    }
    expect(all.replace(KNOWN_SCRIPT, '')).not.toMatch(/<script|<\/script/i);
    const kinds = ['', 'about/', 'high-water/', 'depth-charts/', 'high-water/crew/17/'];
    for (const kind of kinds) {
      const page = made.get(`${kind}index.html`) ?? '';
      expect(await faultsOf(page, ['document', 'standard']), kind).toEqual([]);
    }
  });
});
