import { existsSync } from 'node:fs';
import { mkdir, mkdtemp, readdir, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { renderSite, SiteError } from '../../pipeline/out/site/index.js';
import type { PublicData } from '../../schema/index.js';
import { data } from './fixture.js';
import { textOf, withFolder, type Files } from './support.js';

/** A folder in which the theme works, beside one that it must not reach. */
let ground: string;
let outside: string;

beforeAll(async () => {
  ground = await mkdtemp(join(tmpdir(), 'site-ground-'));
  outside = join(ground, 'outside');
  await mkdir(outside);
  await mkdir(join(ground, 'work'));
  await writeFile(join(outside, 'held.txt'), 'Ysolde Marrack');
  await writeFile(join(outside, 'held.mjs'), "export const held = 'Ysolde Marrack';");
});

afterAll(() => rm(ground, { recursive: true, force: true }));

async function render(
  files: Readonly<Record<string, string>>,
  some: PublicData = data,
): Promise<Files> {
  return withFolder(files, (theme) =>
    renderSite(some, { theme, fonts: [], downloads: [], workFolder: join(ground, 'work') }),
  );
}

/** A template whose page is what the given function body returns. */
function page(body: string, permalink = 'index.html'): string {
  return `export const data = { permalink: ${JSON.stringify(permalink)} };
export async function render({ publicData }) { ${body} }
`;
}

async function expectNothingLeft(): Promise<void> {
  expect(await readdir(join(ground, 'work'))).toEqual([]);
  expect((await readdir(ground)).sort()).toEqual(['outside', 'work']);
  expect((await readdir(outside)).sort()).toEqual(['held.mjs', 'held.txt']);
}

/** Runs each attempt on the walls, and makes a page of what came of it. */
function attempts(all: Readonly<Record<string, string>>): string {
  const tries = Object.entries(all).map(
    ([name, body]) => `${JSON.stringify(name)}: async () => { ${body} }`,
  );
  return page(`
    const outcomes = {};
    for (const [name, attempt] of Object.entries({ ${tries.join(',\n')} })) {
      outcomes[name] = await attempt().then(
        (came) => 'came through: ' + String(came),
        (error) => error.code ?? error.message,
      );
    }
    return JSON.stringify(outcomes);`);
}

describe('a theme', () => {
  it('is given the public data, and can do no more than make pages of them', async () => {
    const heldText = JSON.stringify(join(outside, 'held.txt'));
    const heldModule = JSON.stringify(join(outside, 'held.mjs'));
    const escaped = JSON.stringify(join(outside, 'escaped.txt'));
    const node = JSON.stringify(process.execPath);
    const files = await render({
      'given.11ty.js': page(
        `const variables = Object.keys(process.env).filter((name) => !name.startsWith('ELEVENTY_'));
         return JSON.stringify([publicData.asOf, variables, process.argv.length]);`,
        'given.html',
      ),
      'njk.njk': '---\npermalink: njk/index.html\n---\n<p>{{ publicData.property.legal }}</p>',
      'notes.md': '# Not a page',
      '.hidden.11ty.js': page('return "1";', 'hidden.html'),
      'attempts.11ty.js': attempts({
        'read data': `return (await import('node:fs')).readFileSync('data.json', 'utf8').length;`,
        'read outside': `return (await import('node:fs')).readFileSync(${heldText}, 'utf8');`,
        'list outside': `return (await import('node:fs')).readdirSync(${JSON.stringify(outside)});`,
        'import outside': `return (await import(${heldModule})).held;`,
        'write outside': `return (await import('node:fs')).writeFileSync(${escaped}, 'x');`,
        'write input': `return (await import('node:fs')).writeFileSync('input/more.njk', 'x');`,
        'write data': `return (await import('node:fs')).writeFileSync('data.json', '{}');`,
        link: `return (await import('node:fs')).linkSync(${heldText}, 'output/linked.html');`,
        'symbolic link': `return (await import('node:fs')).symlinkSync(${heldText}, 'output/linked.html');`,
        process: `return (await import('node:child_process')).execFileSync(${node}, ['-e', '']);`,
        worker: `const { Worker } = await import('node:worker_threads');
          return new Worker('require("node:fs").readFileSync(' + ${JSON.stringify(heldText)} + ')', { eval: true, execArgv: [], env: {} });`,
      }),
    });
    expect([...files.keys()]).toEqual(['given.html', 'index.html', 'njk/index.html']);
    expect(textOf(files.get('given.html'))).toBe(JSON.stringify([data.asOf, [], 2]));
    expect(textOf(files.get('njk/index.html'))).toBe('<p>© 2027 Lantern &amp; Oar</p>');
    const denied = 'ERR_ACCESS_DENIED';
    expect(JSON.parse(textOf(files.get('index.html')))).toEqual({
      'read data': expect.stringMatching(/^came through: \d+$/),
      'read outside': denied,
      'list outside': denied,
      'import outside': denied,
      'write outside': denied,
      'write input': denied,
      'write data': denied,
      link: denied,
      'symbolic link': expect.stringMatching(/^fs.symlink API requires full|ERR_ACCESS_DENIED/),
      process: denied,
      worker: denied,
    });
    await expectNothingLeft();
  });

  const hostile: readonly (readonly [
    string,
    Readonly<Record<string, string>>,
    readonly string[],
  ])[] = [
    [
      'reads a file outside',
      {
        'a.11ty.js': page(
          `return (await import('node:fs')).readFileSync('../../outside/held.txt', 'utf8');`,
        ),
      },
      ['Access to this API has been restricted'],
    ],
    [
      'writes above the folder by its permalink',
      { 'a.11ty.js': page('return "1";', '../../escaped.html') },
      ['Access to this API has been restricted'],
    ],
    [
      'writes beside the output by its permalink',
      { 'a.11ty.js': page('return "1";', '../escaped.html') },
      ['Access to this API has been restricted'],
    ],
    [
      'opens with a fence that runs',
      { 'a.njk': '---js\n{ permalink: (globalThis.ran = true, "a.html") }\n---\n1' },
      ['asks to be executed'],
    ],
    [
      'opens with a fence that runs, by its long name and in capitals',
      { 'a.njk': '---JavaScript\n{ permalink: "a.html" }\n---\n1' },
      ['asks to be executed'],
    ],
    [
      'gives files names that a site may not have',
      {
        'a.11ty.js': page('return "1";', 'a b.html'),
        'b.11ty.js': page('return "1";', '.well/a.html'),
        'c.11ty.js': page('return "1";', 'a/index.html'),
        'd.11ty.js': page('return "1";', 'A/index.html'),
      },
      ['"a b.html"', '".well/a.html"', 'a/index.html and A/index.html are the same address'],
    ],
    [
      'asks for what is not there',
      { 'a.njk': '---\npermalink: a.html\n---\n{{ nothing.there }}' },
      ['undefined'],
    ],
  ];

  it.each(hostile)('that %s is refused', async (_, files, reasons) => {
    const fault: unknown = await render(files).catch((error: unknown) => error);
    expect(fault).toBeInstanceOf(SiteError);
    const message = fault instanceof Error ? fault.message : '';
    for (const reason of reasons) expect(message).toContain(reason);
    expect(message).not.toContain(ground);
    expect(message).not.toContain('Marrack');
    await expectNothingLeft();
  });

  it('with a link in its folder is refused', async () => {
    await withFolder({ 'a.11ty.js': page('return 1;') }, async (theme) => {
      await symlink(join(outside, 'held.txt'), join(theme, 'held.txt'));
      const made = renderSite(data, {
        theme,
        fonts: [],
        downloads: [],
        workFolder: join(ground, 'work'),
      });
      await expect(made).rejects.toThrow('held.txt is a link');
    });
    await expectNothingLeft();
  });

  it('is not run where a folder cannot be walled in', async () => {
    const work = join(ground, 'work', 'a,b');
    await mkdir(work);
    const made = withFolder({ 'a.11ty.js': page('return 1;') }, (theme) =>
      renderSite(data, { theme, fonts: [], downloads: [], workFolder: work }),
    );
    await expect(made).rejects.toThrow('cannot be walled in');
    await rm(work, { recursive: true });
  });
});

describe('addresses', () => {
  const [set, other] = data.sets;
  const [group] = set?.subsets ?? [];
  const [card] = group?.cards ?? [];
  if (!set || !other || !group || !card) throw new Error('the fixture has sets and cards');
  const withSets = (...sets: PublicData['sets']): PublicData => ({ ...data, sets });
  const withCards = (...cards: (typeof group)['cards']): PublicData =>
    withSets({ ...set, subsets: [{ ...group, cards }] });

  const unfit: readonly (readonly [string, PublicData])[] = [
    ...[
      '..',
      '',
      'about',
      'Assets',
      'data.json',
      'a/b',
      'a b',
      'é',
      '-a',
      'a..b',
      'x'.repeat(129),
    ].map(
      (id) => [`the set ${JSON.stringify(id)}`, withSets({ ...set, id, subsets: [] })] as const,
    ),
    ...['..', '', 'a/b', '.'].map(
      (id) =>
        [
          `the subset ${JSON.stringify(id)}`,
          withSets({ ...set, subsets: [{ ...group, id, cards: [] }] }),
        ] as const,
    ),
    ...[
      'high-water/crew/',
      'high-water/crew/1',
      'high-water/crew/../',
      'high-water/crew/1/2/',
      '/1/',
      'depth-charts/crew/1/',
    ].map((address) => [`the page ${address}`, withCards({ ...card, page: address })] as const),
    [
      'two sets that differ in capitals',
      withSets(set, { ...other, id: 'High-Water', subsets: [] }),
    ],
    ['one page for two cards', withCards(card, card)],
    ...['../a.png', '/a.png', 'a.svg', 'art/a.png, art/b.png'].map(
      (file) =>
        [
          `the picture ${file}`,
          withCards({
            ...card,
            image: { alt: '', level: 0, files: [{ file, width: 1, height: 1 }] },
          }),
        ] as const,
    ),
  ];

  it.each(unfit)('refuse %s before anything is run', async (_, some) => {
    const marker = join(ground, 'work');
    const made = renderSite(some, {
      theme: join(ground, 'no-theme'),
      fonts: [],
      downloads: [],
      workFolder: marker,
    });
    await expect(made).rejects.toThrow(SiteError);
    expect(existsSync(join(ground, 'no-theme'))).toBe(false);
    await expectNothingLeft();
  });
});
