import { inflateRawSync } from 'node:zlib';

import { describe, expect, it } from 'vitest';

import type { ViewCard } from '../../pipeline/gate/index.js';
import { packetPage } from '../../pipeline/out/packet/index.js';
import type { PageCard, PageData } from '../../pipeline/out/packet/page-data.js';
import { proofSheets } from '../../pipeline/out/proof/index.js';
import { DEMO, HOUSE, OPTIONS, person, seenBy } from '../proof/fixture.js';
import {
  PASSPHRASE,
  SCRIPTS,
  VIEW,
  digest,
  sealedPacket,
  submissionOf,
  submitted,
} from './fixture.js';

const WITH = { fonts: DEMO.fonts, art: () => null, scripts: SCRIPTS };

/** Every card of the view by its key. */
const KEYS = VIEW.sets.flatMap((set) =>
  set.subsets.flatMap((subset) =>
    subset.cards.flatMap(({ identity }) => (identity === null ? [] : [`${set.id}/${identity}`])),
  ),
);

function dataOf(page: string): PageData {
  const [, text = ''] = /<template id="packet">([^<]*)</.exec(page) ?? [];
  return JSON.parse(inflateRawSync(Buffer.from(text, 'base64')).toString()) as PageData;
}

function cardOf(key: string, more: Parameters<typeof submitted>[1] = {}, view = VIEW): PageCard {
  const page = packetPage(view, submissionOf([submitted(key, more)]), WITH);
  const [card] = dataOf(page).cards;
  if (!card) throw new Error(`no ${key}`);
  return card;
}

/** The words of a drawing with the place of each: points from the trimmed corner. */
function drawnWords(svg: string): readonly { text: string; x: number; y: number }[] {
  return [...svg.matchAll(/<text y="([\d.-]+)"[^>]*>(.*?)<\/text>/gs)].flatMap(([, y, set = '']) =>
    [...set.matchAll(/<tspan x="([\d.-]+)">([^<]*)<\/tspan>/g)].map(([, x, text = '']) => ({
      text: text.replaceAll('&amp;', '&').replaceAll('&#39;', "'").replaceAll('&quot;', '"'),
      x: Number(x),
      y: Number(y),
    })),
  );
}

describe('the two sides of a card', () => {
  it('have every word of every bio where the proof has it, within 0.01 pt', async () => {
    const { placed } = await proofSheets(VIEW, OPTIONS);
    const cards = dataOf(packetPage(VIEW, submissionOf(KEYS.map((key) => submitted(key))), WITH));
    const byKey = new Map(cards.cards.map((card) => [card.key, drawnWords(card.html)]));
    let compared = 0;
    const astray = placed
      .filter(({ turn, scale }) => turn === 'none' && scale === 1)
      .flatMap(({ set, identity, trim, bio }) => {
        const drawn = byKey.get(`${set}/${identity ?? ''}`) ?? [];
        compared += bio.length;
        return bio.filter(
          ({ text, x, baseline }) =>
            !drawn.some(
              (word) =>
                text.startsWith(word.text) &&
                Math.abs(word.x - (x - trim.x)) < 0.01 &&
                Math.abs(word.y - (baseline - trim.y)) < 0.01,
            ),
        );
      });
    expect(compared).toBeGreaterThan(3000);
    expect(astray).toEqual([]);
  });

  it('show a picture by its kind, and a hatch that says so where there is none yet', () => {
    const key = 'high-water/crew/c001';
    expect(cardOf(key).html).toContain('>Art to come</text>');
    const art = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 1]);
    const page = packetPage(VIEW, submissionOf([submitted(key)]), { ...WITH, art: () => art });
    expect(dataOf(page).cards[0]?.html).toContain(' data-picture="picture-0"/>');
    expect(page).toContain('<template id="picture-0">data:image/png;base64,iVBORwE=</template>');
    expect(page).not.toContain('picture-1');
    const odd = packetPage(VIEW, submissionOf([submitted(key)]), {
      ...WITH,
      art: () => Uint8Array.from([1, 2, 3]),
    });
    expect(dataOf(odd).cards[0]?.html).toContain('>Art to come</text>');
  });
});

describe('what is told of a card', () => {
  const key = KEYS.find((each) => each.startsWith('high-water/crew/')) ?? '';
  const last = { verdict: 'approved' as const, isCurrent: false };
  const [copy, image, layout, web] = submitted(key).parts;
  if (!copy || !image || !layout || !web) throw new Error('no parts');

  it('names its reviewer and the submission on both sides and at its head', () => {
    const { html } = cardOf(key);
    expect(html.match(/Amara Linde/g)?.length).toBe(3);
    expect(html).toContain('For Amara Linde · submission 2');
    expect(html).toContain('Front · Amara Linde, submission 2');
    expect(html).toContain('Back · Amara Linde, submission 2');
  });

  it('says what changed of what was decided on, and only of that', () => {
    const name = cardOf(key).heading.replace(/^\S+ /, '');
    const decided = [{ ...copy, last }, image, layout, web];
    const was = [{ field: 'name', text: `${name} Marsh` }];
    const { html, isChanged } = cardOf(key, { parts: decided, was });
    expect(isChanged).toBe(true);
    expect(html).toContain(`${name}<del><span class="heard">taken out: </span> Marsh</del>`);
    expect(html).toContain('Changed since you last decided');
    const byWeb = cardOf(key, { parts: [copy, image, layout, { ...web, last }], was });
    expect(byWeb.html).not.toContain('Marsh');
  });

  it('says that it is unchanged, or new', () => {
    const same = { verdict: 'approved' as const, isCurrent: true };
    const parts = [copy, image, layout, web].map((part) => ({ ...part, last: same }));
    const unchanged = cardOf(key, { parts });
    expect(unchanged.html).toContain('<li>Unchanged since you last decided</li>');
    const was = [{ field: 'name', text: 'Marsh' }];
    expect(cardOf(key, { parts, was }).html).not.toContain('Changed since you last decided');
    expect(unchanged.isChanged).toBe(false);
    expect(cardOf(key).html).toContain('<li>New to you</li>');
    const toRead = cardOf(key, { parts: [] });
    expect(toRead.html).toContain('there is nothing on it for you to decide');
    expect(toRead.words).toBe(null);
  });

  it('has findings, earlier rounds, sources, openings and what the site shows', () => {
    const { html } = cardOf(key, {
      findings: ['overset: The bio is overset by <2> lines.'],
      earlier: [{ at: '3 November 2026', who: 'Amara Linde', what: 'rejected', more: ['<b>'] }],
    });
    expect(html).toContain('<li>overset: The bio is overset by &lt;2&gt; lines.</li>');
    expect(html).toContain(
      '<li><strong>Amara Linde</strong>, 3 November 2026: rejected<br>&lt;b&gt;</li>',
    );
    for (const title of ['The words', 'Opens', 'On the website']) {
      expect(html).toContain(`<h3>${title}</h3>`);
    }
    expect(html).toContain('<dt>The site shows</dt>');
  });

  it('has a line for each opening, with all that opens at it', () => {
    const variations = VIEW.sets.flatMap((set) =>
      set.subsets.flatMap(({ cards }) =>
        cards
          .filter(({ letter }) => letter !== null)
          .map(({ identity }) => `${set.id}/${identity ?? ''}`),
      ),
    );
    const { html } = cardOf(variations[0] ?? '');
    expect(html).toContain(
      'Picture, Picture in words, Drawn after, In the picture: opens 16 April 2027, 09:00 (First cards)',
    );
    expect(html).toContain('<dt>The site shows</dt><dd>art front, bio, credits, facts</dd>');
    expect(html.match(/<li>The card[^<]*: /g)?.length).toBe(1);
  });

  it('marks words that are held, with when they open', () => {
    const marked = KEYS.map((each) => cardOf(each).html).filter((html) =>
      /<span class="held">.*?\[held: opens \d/s.test(html),
    );
    expect(marked.length).toBeGreaterThan(0);
  });

  it('says of a card that is cut for its reviewer that it is not as printed', () => {
    const tobit = seenBy(person('tobit'));
    const keys = tobit.sets.flatMap((set) =>
      set.subsets.flatMap(({ cards }) =>
        cards
          .filter(({ state }) => state === 'placeholder')
          .map(({ identity }) => `${set.id}/${identity ?? ''}`),
      ),
    );
    const [held = ''] = keys;
    const { html } = cardOf(held, { parts: [] }, tobit);
    expect(html).toContain('<li>Not as printed</li>');
    expect(html).toContain('Amara Linde, submission 2 · not as printed');
  });
});

describe('a sales text', () => {
  const [[set, text] = []] = VIEW.sets.flatMap((each) =>
    each.sales.map((sales) => [each, sales] as const),
  );
  if (!set || !text) throw new Error('the demo has no sales text');
  const key = `${set.id}/sales/${text.id}`;
  const last = { verdict: 'rejected' as const, isCurrent: false };

  it('is shown as words, with what changed, and is decided on by itself', () => {
    const parts = [{ part: 'sales' as const, digest: digest(7), last }];
    const card = cardOf(key, { parts, was: [{ field: 'words', text: 'Nothing of it.' }] });
    expect(card).toMatchObject({ key, heading: text.title ?? text.kind, parts, words: null });
    expect(card.subset).toBe(`${set.id}/sales`);
    expect(card.html).toContain('For Amara Linde · submission 2');
    expect(card.html).toContain('<del><span class="heard">taken out: </span>Nothing');
    expect(card.html).not.toContain('<svg');
  });
});

describe('a packet', () => {
  it('is made of a person’s view alone, and of texts that are in it', () => {
    const one = submissionOf([submitted('high-water/crew/c001')]);
    expect(() => packetPage(seenBy(HOUSE), one, WITH)).toThrow(RangeError);
    const none = submissionOf([submitted('high-water/crew/none')]);
    expect(() => packetPage(VIEW, none, WITH)).toThrow('high-water/crew/none is not in the view');
    const broken = { page: 'let a = "</script>";', setter: '' };
    expect(() => packetPage(VIEW, one, { ...WITH, scripts: broken })).toThrow(RangeError);
  });

  it('is one page that asks for nothing outside of it', () => {
    const page = packetPage(VIEW, submissionOf(KEYS.map((key) => submitted(key))), WITH);
    const markup = page.replace(/<script>.*?<\/script>/gs, '');
    const cards = dataOf(page).cards.map(({ html }) => html);
    const all = [markup, ...cards].join('');
    expect(all).not.toMatch(/(?:src|href)="(?!data:)/);
    expect(all).not.toMatch(/<link|url\((?!data:)/);
  });

  it('lists the digests of its scripts in the clear, the same for every packet', async () => {
    const keys = ['high-water/crew/c001', 'high-water/crew/c002'];
    const [one = '', other = ''] = await Promise.all(
      keys.map(async (key) => (await sealedPacket(submissionOf([submitted(key)]))).html),
    );
    const bare = (html: string): string => html.replace(/<template [^>]*>[^<]*/, '');
    expect(bare(one)).toBe(bare(other));
    expect(one.match(/'sha256-[A-Za-z0-9+/]{43}='/g)?.length).toBe(3);
  });

  it('has no clear text of any card, raw or in base64', async () => {
    const { html } = await sealedPacket(submissionOf(KEYS.map((key) => submitted(key))));
    expect(html.length).toBeLessThan(3_000_000);
    const names = VIEW.names.map(({ name }) => name);
    const runs = VIEW.sets.flatMap((set) =>
      set.subsets.flatMap(({ cards }) =>
        cards.flatMap(({ name, bio }) => [name, ...bio.flatMap((each) => fourWords(each))]),
      ),
    );
    const secrets = [...new Set([...names, ...runs])].filter((text) => text.length >= 5);
    expect(secrets.length).toBeGreaterThan(1000);
    expect(secrets.filter((text) => html.includes(text))).toEqual([]);
    const forms = secrets.flatMap((text) => base64Forms(text));
    // Sealed octets are as good as chance: fewer characters than eight come up in them by themselves.
    const long = forms.filter((form) => form.length >= 8);
    expect(long.length).toBeGreaterThan(2500);
    expect(long.filter((form) => html.includes(form))).toEqual([]);
    expect(html).not.toContain(PASSPHRASE);
    expect(html).not.toContain(digest(1));
  });

  it('of 200 cards without art stays under 3 MB', async () => {
    const texts = Array.from({ length: 200 }, (_, at) => submitted(KEYS[at % KEYS.length] ?? ''));
    const { html } = await sealedPacket(submissionOf(texts));
    expect(html.length).toBeLessThan(3_000_000);
  });
});

function fourWords(runs: ViewCard['bio'][number]): readonly string[] {
  const words = runs
    .flatMap((run) => ('held' in run ? [] : [run.text]))
    .join('')
    .split(/\s+/);
  return words.slice(0, -3).map((_, at) => words.slice(at, at + 4).join(' '));
}

/** How a text can stand in base64: at three offsets, without the signs that its neighbours share. */
function base64Forms(text: string): readonly string[] {
  const octets = Buffer.from(text);
  return [0, 1, 2].map((offset) => {
    const skipped = octets.subarray((3 - offset) % 3);
    const whole = skipped.subarray(0, skipped.length - (skipped.length % 3));
    return whole.toString('base64');
  });
}
