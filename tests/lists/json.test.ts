import { Value } from 'typebox/value';
import { expect, test } from 'vitest';

import { canonicalText } from '../../pipeline/review/index.js';
import { PublicChecklist } from '../../schema/index.js';
import { data as siteData } from '../site/fixture.js';
import { data, preview } from './fixture.js';
import { listAt, textAt } from './support.js';

test('a set as JSON is canonical (RFC 8785) and has the set as data.json has it', () => {
  const text = textAt(data, 'high-water/checklist.json');
  const value = JSON.parse(text) as object;
  expect(text).toBe(`${canonicalText(value)}\n`);
  expect(value).toEqual({
    format: 1,
    asOf: data.asOf,
    preview: false,
    property: {
      title: 'The Ferrywrights',
      legal: '© 2027 Lantern & Oar',
      dataTerms: 'Free to use with the name of the publisher.',
      zone: 'Europe/London',
      levels: ['Known from the trailers', 'First cards'],
    },
    set: data.sets[0],
  });
});

test('a set as JSON has its shape and nothing more', () => {
  for (const [some, path] of [
    [preview, 'high-water/checklist.json'],
    [siteData, 'high-water/checklist.json'],
    [siteData, 'depth-charts/checklist.json'],
  ] as const) {
    const value = JSON.parse(textAt(some, path)) as object;
    expect([...Value.Errors(PublicChecklist, value)], path).toEqual([]);
    expect(Value.Check(PublicChecklist, { ...value, more: 1 })).toBe(false);
  }
  expect(listAt(data, 'high-water/checklist.json').type).toBe('application/json');
});
