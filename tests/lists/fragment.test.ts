import fc from 'fast-check';
import { HtmlValidate } from 'html-validate';
import { parseFragment, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';

import { folded } from '../../pipeline/out/lists/folded.js';
import type { PublicData } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, hostile, preview, troubled, withoutAddress } from './fixture.js';
import { textAt } from './support.js';

type Element = DefaultTreeAdapterTypes.Element;
type Node = DefaultTreeAdapterTypes.ChildNode;

const PATH = 'high-water/fragment.html';

/** Whatever loads something, runs, or works without being asked to. */
const ACTIVE =
  /^(script|link|img|iframe|object|embed|form|input|svg|base|meta|template|video|audio)$/;

const isElement = (node: Node): node is Element => 'tagName' in node;

function elementsOf(nodes: readonly Node[]): Element[] {
  return nodes.filter(isElement).flatMap((node) => [node, ...elementsOf(node.childNodes)]);
}

function fragmentOf(some: PublicData): Element[] {
  return elementsOf(parseFragment(textAt(some, PATH)).childNodes);
}

function textOf(nodes: readonly Node[]): string {
  return nodes
    .map((node) => {
      if ('value' in node) return node.value;
      return 'childNodes' in node ? textOf(node.childNodes) : '';
    })
    .join('');
}

function named(elements: readonly Element[], name: string): Element[] {
  return elements.filter(({ tagName }) => tagName === name);
}

test('a fold says what the most telling of it tells, and is none where nothing does', () => {
  const levels = ['Known', 'First cards', 'Episodes 1 & 2'];
  const pieces = [
    { html: 'a', level: 1 },
    { html: 'b', level: 0 },
    { html: 'c', level: 2 },
    { html: 'd', level: 0 },
  ];
  expect(folded(pieces, levels)).toBe(
    'b; d<details><summary>Tells of Episodes 1 &amp; 2</summary>a; c</details>',
  );
  expect(folded(pieces.slice(1, 2), levels)).toBe('b');
  expect(folded([], levels)).toBe('');
  expect(folded([{ html: 'a', level: 3 }], levels)).toContain('Tells of the story');
});

describe('a fragment', () => {
  test('has the cards subset by subset', () => {
    const rows = named(fragmentOf(data), 'tr').map((row) =>
      row.childNodes.filter(isElement).map((cell) => textOf(cell.childNodes)),
    );
    expect(rows).toEqual([
      ['Number', 'Name', 'Notes'],
      ['17', 'Odalys Thrane', ''],
      ['17b', 'Odalys Thrane', 'variation: the lamp is lit; short print (SP); 250 copies'],
      ['18', 'Tells of First cardsMagistrate Tern', ''],
      ['19', 'The voice in the lock', 'to be revealed on 14 May 2027'],
      ['20', 'To be revealed', 'on 14 May 2027'],
      ['21', 'A plank of the Widow’s Kettle', 'not issued'],
      ['Number', 'Name', 'Notes'],
      [
        'SG-9',
        'The two divers',
        'one of oneTells of First cardssigned by Mirela Voss as Dorrit Sill and Caspar Voss (redemption)',
      ],
      ['', 'To be revealed', ''],
    ]);
    const captions = named(fragmentOf(data), 'caption').map(({ childNodes }) => textOf(childNodes));
    expect(captions).toEqual([
      'Crew and Craft Base set, found in packs, 4 cards listed',
      'Signatures Autographs, found in boxes, 2 cards listed',
    ]);
    const paragraphs = named(fragmentOf(data), 'p').map(({ childNodes }) => textOf(childNodes));
    expect(paragraphs).toEqual([
      'In shops 16 April 2027 (UK), 17 April 2027 (AU). 8 cards listed.',
      'Sketch Cards Sketches, 2 artists',
      'Artists: Tove Lindqvist and Bram Ostrey.',
      'As of 16 April 2027, 09:00 (London time). The list may change.',
      '© 2027 Lantern & Oar',
      'Free to use with the name of the publisher.',
    ]);
    const first = named(fragmentOf(preview), 'p')[0]?.childNodes ?? [];
    expect(textOf(first)).toMatch(/^Preview: not to be passed on before 16 April 2027, 09:00/);
  });

  test('folds what tells of the story, and nothing else, and opens none of it', () => {
    const folds = named(fragmentOf(data), 'details');
    expect(folds.map(({ childNodes }) => textOf(childNodes))).toEqual([
      'Tells of First cardsMagistrate Tern',
      'Tells of First cardssigned by Mirela Voss as Dorrit Sill and Caspar Voss (redemption)',
    ]);
    expect(folds.flatMap(({ attrs }) => attrs)).toEqual([]);
    const summaries = named(fragmentOf(data), 'summary');
    expect(summaries.map(({ childNodes }) => textOf(childNodes))).toEqual([
      'Tells of First cards',
      'Tells of First cards',
    ]);
  });

  test('leads to the pages of the site where another page can know its address', () => {
    const links = named(fragmentOf(data), 'a').flatMap(({ attrs }) =>
      attrs.map((each) => each.value),
    );
    const site = 'https://cards.example/ferrywrights/high-water/';
    const pages = ['17', '17b', '18', '19', '20', '21'].map((number) => `${site}crew/${number}/`);
    expect(links).toEqual([site, ...pages, `${site}signatures/SG-9/`]);
    expect(named(fragmentOf(withoutAddress), 'a')).toEqual([]);
  });

  const cases = [
    ['each kind of card', data],
    ['another site', siteData],
    ['a preview', preview],
    ['no address', withoutAddress],
    ['hostile texts', hostile(siteData)],
  ] as const;

  test.each(cases)('is one section that asks for nothing and has no ids: %s', (_, some) => {
    const { childNodes } = parseFragment(textAt(some, PATH));
    const top = childNodes.filter(isElement);
    expect(top.map(({ tagName }) => tagName)).toEqual(['section']);
    const elements = elementsOf(childNodes);
    expect(elements.filter(({ tagName }) => ACTIVE.test(tagName))).toEqual([]);
    const attributes = new Set(elements.flatMap(({ attrs }) => attrs.map(({ name }) => name)));
    const known = ['aria-label', 'class', 'href', 'lang', 'scope'];
    expect([...attributes].filter((name) => !known.includes(name))).toEqual([]);
    expect(textAt(some, PATH)).not.toMatch(/url\(|@import|<html|<body/);
  });

  test.each(cases)('styles nothing outside of it: %s', (_, some) => {
    const [section] = fragmentOf(some);
    const own = section?.attrs.find(({ name }) => name === 'class')?.value ?? '';
    expect(own).toBe('holdback-checklist-high-water');
    const style = textOf(named(fragmentOf(some), 'style')[0]?.childNodes ?? []);
    const selectors = [...style.matchAll(/([^{}]+)\{[^{}]*\}/g)].flatMap(([, list = '']) =>
      list.split(',').map((selector) => selector.trim()),
    );
    expect(selectors.length).toBeGreaterThan(10);
    expect(selectors.filter((one) => !new RegExp(`^\\.${own}( |$)`).test(one))).toEqual([]);
  });

  test.each(cases)('is valid HTML but for where its style stands: %s', async (_, some) => {
    // HTML lets a style element stand in the head alone; a piece for another page has no head.
    const [opening = '', rest = ''] = textAt(some, PATH).split('<style>\n');
    const body = opening + rest.slice(rest.indexOf('</style>\n') + 9);
    const validator = new HtmlValidate({
      extends: ['html-validate:a11y', 'html-validate:standard'],
    });
    const page = `<!doctype html>\n<html lang="en"><head><title>A shop</title></head><body><h1>A shop</h1>\n${body}</body></html>\n`;
    const report = await validator.validateString(page);
    const messages = report.results.flatMap((result) => result.messages);
    expect(messages.map(({ ruleId, message }) => `${ruleId}: ${message}`)).toEqual([]);
  });

  test('is read as it was written, whatever the texts are', () => {
    fc.assert(
      fc.property(troubled, (some) => {
        const faults: string[] = [];
        const text = textAt(some, PATH);
        const { childNodes } = parseFragment(text, {
          onParseError: ({ code }) => faults.push(code),
        });
        expect(faults).toEqual([]);
        const set = some.sets[0];
        const cards = set?.subsets.reduce((sum, subset) => sum + subset.cards.length, 0);
        const tables = set?.subsets.filter((subset) => subset.cards.length > 0).length;
        expect(named(elementsOf(childNodes), 'tr')).toHaveLength((cards ?? 0) + (tables ?? 0));
      }),
      { numRuns: 40 },
    );
  });
});
