import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { stepId, uuidOf } from '../../pipeline/out/lists/identity.js';
import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { atomFaults, children, TAG, textOf, UUID } from './atom-rules.js';
import { data, empty, hostile, preview, SPRING, troubled, withoutAddress } from './fixture.js';
import { textAt, xmlOf } from './support.js';

function feedOf(some: PublicData) {
  const feed = xmlOf(textAt(some, 'feed.atom')).documentElement;
  if (!feed) throw new Error('no feed');
  return feed;
}

function entriesOf(some: PublicData) {
  return children(feedOf(some), 'entry');
}

/** The lines of an entry as they are read. */
function linesOf(entry: ReturnType<typeof feedOf>): string[] {
  const content = children(entry, 'content')[0]?.textContent ?? '';
  return content
    .split('\n')
    .map((line) => line.trim())
    .filter(Boolean);
}

describe('the feed', () => {
  test('is what it is, whole', () => {
    expect(textAt(data, 'feed.atom')).toBe(`<?xml version="1.0" encoding="utf-8"?>
<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="en">
<id>urn:uuid:c22680b5-4215-5a0b-927c-3b64a6b406e3</id>
<title>The Ferrywrights: the cards</title>
<updated>2027-04-16T09:00:00+01:00</updated>
<author><name>The Ferrywrights: the cards</name></author>
<rights>© 2027 Lantern &amp; Oar · Free to use with the name of the publisher.</rights>
<link rel="self" type="application/atom+xml" href="https://cards.example/ferrywrights/feed.atom"/>
<link rel="alternate" type="text/html" href="https://cards.example/ferrywrights/"/>
<entry>
<id>tag:cards.example,2027-04-16:/ferrywrights/new/2027-04-16T08:00:00Z</id>
<title>Revealed on 16 April 2027: 2 cards and 1 parallel; more told: 1 card</title>
<updated>2027-04-16T09:00:00+01:00</updated>
<link rel="alternate" type="text/html" href="https://cards.example/ferrywrights/new/"/>
<content type="xhtml"><div xmlns="http://www.w3.org/1999/xhtml">
<p>The Ferrywrights: High Water</p>
<ul>
<li><a href="https://cards.example/ferrywrights/high-water/crew/17/">Crew and Craft 17</a>, Odalys Thrane, tells more: bio and picture</li>
<li><a href="https://cards.example/ferrywrights/high-water/crew/18/">Crew and Craft 18</a> is revealed</li>
<li><a href="https://cards.example/ferrywrights/high-water/signatures/SG-9/">Signatures SG-9</a>, The two divers, is revealed</li>
<li>The parallel Varnished is revealed</li>
</ul>
</div></content>
</entry>
<entry>
<id>tag:cards.example,2026-09-01:/ferrywrights/new/2026-09-01T08:00:00Z</id>
<title>Revealed on 1 September 2026: 1 card</title>
<updated>2026-09-01T09:00:00+01:00</updated>
<link rel="alternate" type="text/html" href="https://cards.example/ferrywrights/new/"/>
<content type="xhtml"><div xmlns="http://www.w3.org/1999/xhtml">
<p>The Ferrywrights: High Water</p>
<ul>
<li><a href="https://cards.example/ferrywrights/high-water/crew/17/">Crew and Craft 17</a>, Odalys Thrane, is revealed</li>
</ul>
</div></content>
</entry>
</feed>
`);
  });

  test('tells of no name that tells anything of the story, whatever list it stands in', () => {
    const feed = textAt(data, 'feed.atom');
    expect(feed).not.toContain('Tern');
    expect(feed).not.toContain('Voss');
    expect(linesOf(feedEntry(data, 0))).toEqual([
      'The Ferrywrights: High Water',
      'Crew and Craft 17, Odalys Thrane, tells more: bio and picture',
      'Crew and Craft 18 is revealed',
      'Signatures SG-9, The two divers, is revealed',
      'The parallel Varnished is revealed',
    ]);
  });

  function feedEntry(some: PublicData, at: number) {
    const entry = entriesOf(some)[at];
    if (!entry) throw new Error(`no entry ${String(at)}`);
    return entry;
  }

  test.each([
    ['level', { level: 1, nameLevel: 0 }],
    ['nameLevel', { level: 0, nameLevel: 1 }],
  ])('leaves out a name by its %s', (_, levels) => {
    const some = structuredClone(data);
    const card = some.sets[0]?.subsets[0]?.cards[0];
    if (!card) throw new Error('the fixture has a card');
    Object.assign(card, levels);
    expect(textAt(some, 'feed.atom')).not.toContain('Thrane');
    expect(textAt(data, 'feed.atom')).toContain('Thrane');
  });

  test.each([
    ['a set with news', data],
    ['another', siteData],
    ['no news', empty],
    ['no address', withoutAddress],
    ['a preview', preview],
    ['hostile texts', hostile(siteData)],
  ])('keeps the rules of RFC 4287 with %s', (_, some) => {
    expect(atomFaults(xmlOf(textAt(some, 'feed.atom')))).toEqual([]);
    expect(entriesOf(some)).toHaveLength(some.news.length);
  });

  test('keeps them whatever the texts are', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        expect(atomFaults(xmlOf(textAt(some, 'feed.atom')))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  });

  test.each([
    ['<id>urn', '<x>urn', '</id>\n<title>', '</x>\n<title>', '4.1: feed has exactly one id'],
    ['<author><name>', '<author><x>', '</name></author>', '</x></author>', '3.2.1'],
    ['<updated>2027-04-16T', '<updated>2027-04-16 ', '', '', '3.3: feed'],
    ['rel="self"', 'rel="alternate"', 'application/atom+xml', 'text/html', '4.1: two alternates'],
    ['<id>tag:', '<id>a tag:', '', '', '4.2.6: entry'],
    ['<content type="xhtml">', '<content>', '', '', '4.1.3.3'],
    ['http://www.w3.org/2005/Atom', 'http://www.w3.org/2005/Atoms', '', '', '4.1.1: no atom:feed'],
  ])('would be found out without %s', (from, to, alsoFrom, alsoTo, rule) => {
    const broken = textAt(data, 'feed.atom').replace(from, to).replace(alsoFrom, alsoTo);
    expect(atomFaults(xmlOf(broken)).join('\n')).toContain(rule);
  });
});

describe('the id of an entry', () => {
  const idsOf = (some: PublicData) => entriesOf(some).map((entry) => textOf(entry, 'id'));

  test('is a tag of the site (RFC 4151), or a UUID (RFC 9562) where it has no address', () => {
    expect(idsOf(data)).toEqual([
      'tag:cards.example,2027-04-16:/ferrywrights/new/2027-04-16T08:00:00Z',
      'tag:cards.example,2026-09-01:/ferrywrights/new/2026-09-01T08:00:00Z',
    ]);
    expect(idsOf(data).every((id) => TAG.test(id))).toBe(true);
    expect(idsOf(withoutAddress).every((id) => UUID.test(id))).toBe(true);
    expect(new Set(idsOf(withoutAddress)).size).toBe(2);
    const port = { ...data.property, address: 'https://cards.example:8443/' };
    expect(stepId({ ...data, property: port }, SPRING)).toBe(
      'tag:cards.example,2027-05-14:/new/2027-05-14T19:00:00Z',
    );
  });

  test.each([
    ['with', data],
    ['without', withoutAddress],
  ])('stays when later news come, %s an address', (_, some) => {
    const later: PublicData = {
      ...some,
      asOf: SPRING,
      news: [
        {
          at: SPRING,
          cards: [{ set: 'high-water', subset: 'crew', at: 3, what: 'revealed', fields: [] }],
          parallels: [],
        },
        ...some.news.slice(0, 1),
      ],
    };
    expect(idsOf(later)[1]).toBe(idsOf(some)[0]);
    expect(idsOf(later)[0]).not.toBe(idsOf(some)[0]);
    expect(textOf(feedOf(later), 'id')).toBe(textOf(feedOf(some), 'id'));
  });

  test('is the same in whatever zone its step is written', () => {
    expect(stepId(data, '2027-05-14T19:00:00+00:00[UTC]')).toBe(stepId(data, SPRING));
  });

  // RFC 9562, Appendix A.4: the DNS name space and www.example.com.
  test('is made by name as RFC 9562 has it', () => {
    expect(uuidOf('6ba7b810-9dad-11d1-80b4-00c04fd430c8', 'www.example.com')).toBe(
      '2ed6657d-e927-568b-95e1-2665a8aea6a2',
    );
  });
});

describe('the title of an entry', () => {
  const titleOf = (news: PublicData['news'][number]) => {
    const [entry] = entriesOf({ ...data, news: [news] });
    return entry && textOf(entry, 'title');
  };
  const place = { set: 'high-water', subset: 'crew' };
  const revealed = { ...place, at: 2, what: 'revealed', fields: [] } as const;
  const more = { ...place, at: 0, what: 'more', fields: ['bio' as const] } as const;
  const parallel = { set: 'high-water', id: 'varnished' };

  test.each([
    ['Revealed on 16 April 2027: 2 cards', [revealed, revealed], []],
    ['Revealed on 16 April 2027: 1 card; more told: 1 card', [revealed, more], []],
    ['Revealed on 16 April 2027: 1 card and 1 parallel', [revealed], [parallel]],
    ['Revealed on 16 April 2027: 2 parallels', [], [parallel, parallel]],
    ['More told on 16 April 2027: 1 card', [more], []],
  ])('%s', (title, cards, parallels) => {
    const news = {
      at: data.asOf,
      cards: cards.map((each) => ({ ...each, fields: [...each.fields] })),
      parallels,
    };
    expect(titleOf(news)).toBe(title);
  });
});
