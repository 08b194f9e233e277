import { describe, expect, test } from 'vitest';

import { addressOf, routeOf, type Route } from '../../../pipeline/desk/page/shell/route.js';
import { NO_FILTERS, filtered, type Filters } from '../../../pipeline/desk/page/status/filters.js';
import { MadeUpCard } from './stub-answers.js';

const ROW = new MadeUpCard('Odalys Thrane', 'one').row();
const ROWS = [
  ROW,
  { ...ROW, card: 'high-water/story/s049', subset: 'story', name: 'The spring rise', number: '49' },
  { ...ROW, card: 'depth-charts/crew/d001', set: 'depth-charts', name: 'Pim', level: 'spring' },
  { ...ROW, card: 'high-water/crew/c004', name: 'Dace Sill', writer: null, writerName: null },
  { ...ROW, card: 'high-water/crew/c005', name: 'Osk', errors: 2, state: 'overset' as const },
  {
    ...ROW,
    card: 'high-water/crew/c006',
    name: 'Old Pell',
    warnings: 1,
    writer: 'sefa',
    state: null,
  },
];

describe('the status sheet narrows to', () => {
  test.each<[string, Partial<Filters>, readonly string[]]>([
    ['all', {}, ROWS.map(({ name }) => name)],
    ['words of several columns', { text: ' SPRING  49' }, ['The spring rise']],
    ['one subset of one set', { subset: 'depth-charts/crew' }, ['Pim']],
    ['a state', { state: 'overset' }, ['Osk']],
    ['files that cannot be read', { state: 'unreadable' }, ['Old Pell']],
    ['a level', { level: 'spring' }, ['Pim']],
    ['cards of mine', { writer: 'me', me: 'sefa' }, ['Old Pell']],
    ['cards of nobody', { writer: 'none' }, ['Dace Sill']],
    ['some findings', { findings: 'any' }, ['Osk', 'Old Pell']],
    ['errors', { findings: 'errors' }, ['Osk']],
    ['no findings, and a word', { findings: 'none', text: 'pi' }, ['Pim']],
  ])('%s', (_, filters, names) => {
    const rows = filtered(ROWS, { ...NO_FILTERS, ...filters });
    expect(rows.map(({ name }) => name)).toEqual(names);
  });
});

describe('the address of a screen', () => {
  const routes: readonly Route[] = [
    { screen: 'status' },
    { screen: 'card', card: 'high-water/crew/c017' },
    { screen: 'card', card: 'a b/ö%/#?' },
    { screen: 'reveals' },
    { screen: 'making', of: '' },
    { screen: 'making', of: 'high-water/crew' },
  ];

  test.each(routes)('leads back to it: $screen', (route) => {
    expect(routeOf(addressOf(route))).toEqual(route);
  });

  test.each(['', '#', '#/', '#/card', '#/nothing', '#token=abc', '#/card/'])(
    '%s leads to the status sheet',
    (hash) => expect(routeOf(hash)).toEqual({ screen: 'status' }),
  );

  test('that cannot be decoded is taken as it stands', () => {
    expect(routeOf('#/card/a/%E0%A4%A')).toEqual({ screen: 'card', card: 'a/%E0%A4%A' });
  });
});
