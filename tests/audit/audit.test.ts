import { describe, expect, it } from 'vitest';

import { auditSite, type AuditFinding } from '../../pipeline/audit/index.js';
import type { Content } from '../../pipeline/model/index.js';
import { memoryFolder, readContent } from '../../pipeline/read/index.js';
import { demoFiles, withEdit } from '../demo/copy.js';
import { DEMO_NOW } from '../demo/day.js';
import { HELD, HIDINGS, PATHS } from './planted.js';

const files = demoFiles({ art: false });
const demo = readContent(memoryFolder(files));
const INNOCENT = 'The Heron crosses the lake each night, and nobody aboard has ever been late.';
/** What the span tells, the bio that it ends (the card is held as well), and the span itself. */
const FROM = [
  'the secret lake-falls',
  'bio of high-water/letters/le01',
  'a held span of high-water/letters/le01',
];

function audit(file: string, text: string | Uint8Array, content: Content = demo): AuditFinding[] {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  return [...auditSite(new Map([[file, bytes]]), content, DEMO_NOW)];
}

describe('a held sentence is found in', () => {
  it.each(HIDINGS)('$way', ({ file, hide }) => {
    const found = audit(file, hide(HELD));
    expect(new Set(found.map(({ from }) => from))).toEqual(new Set(FROM));
    expect(found.filter(({ from }) => from === FROM[2])[0]).toMatchObject({
      file,
      card: 'high-water/letters/le01',
      words: HELD,
    });
    expect(audit(file, hide(INNOCENT))).toEqual([]);
  });

  it.each(PATHS)('a path: $way', ({ path }) => {
    const found = audit(path(HELD), '');
    expect(found.map(({ from }) => from)).toEqual(expect.arrayContaining(FROM));
    expect(found[0]?.place.inside[0]).toBe('its name');
    expect(audit(path(INNOCENT), '')).toEqual([]);
  });

  // Letters of HELD without spaces and stops: 40 from any place on are enough, 39 are not.
  it('any 40 letters in a row, and in no fewer', () => {
    const all = HELD.replace(/\W/g, '');
    const starts = Array.from({ length: all.length - 39 }, (_, start) => start);
    const found = (run: string): boolean =>
      audit('a.txt', `qz ${run} qz`).some(({ from }) => from === FROM[2]);
    expect(starts.length).toBeGreaterThan(15);
    expect(starts.filter((start) => !found(all.slice(start, start + 40)))).toEqual([]);
    expect(starts.filter((start) => found(all.slice(start, start + 39)))).toEqual([]);
  });
});

describe('a held name is found', () => {
  it.each([
    ['as it is written', 'here is Ysolde Marrack.'],
    ['in an address', '<a href="/names/ysolde-marrack/">'],
    ['with a case of its own', 'YSOLDE&nbsp;MARRACK’S'],
    ['as base64', btoa('the ferrywright Ysolde Marrack')],
  ])('%s', (_way, text) => {
    expect(audit('a.html', text).map(({ from }) => from)).toContain('the name Ysolde Marrack');
  });

  it('when it is short, only as a word of its own', () => {
    const content = readContent(
      memoryFolder(withEdit(files, 'names.yaml', 'name: Ysolde Marrack', 'name: Orl')),
    );
    expect(audit('a.txt', 'the world, whorl', content)).toEqual([]);
    expect(audit('a.txt', 'the Orl, orl-1', content).map(({ from }) => from)).toContain(
      'the name Orl',
    );
  });
});

describe('what is open in its own right is no finding', () => {
  const path = 'high-water/cards/crew/c001.md';
  const source = String(files.get(path)).trimEnd();
  const shared = 'The lake can fall as well as rise. I opened the gate';
  /** A secret stays one, whoever else says it. */
  const untold = (found: AuditFinding[]): AuditFinding[] => {
    expect(found.map(({ from }) => from)).toContain(FROM[0]);
    return found.filter(({ from }) => from !== FROM[0]);
  };
  const opened = (words: string): Content =>
    readContent(memoryFolder(new Map(files).set(path, `${source} ${words}\n`)));

  it('as a whole', () => {
    expect(untold(audit('a.txt', HELD, opened(HELD)))).toEqual([]);
  });

  it('nor with a letter more by chance, but with a word more', () => {
    const content = opened(`${shared} sometimes.`);
    expect(untold(audit('a.txt', `${shared} sometimes.`, content))).toEqual([]);
    expect(untold(audit('a.txt', `${shared}, but only once.`, content))).toEqual([]);
    expect(untold(audit('a.txt', `${shared} by a finger`, content))).toHaveLength(2);
  });

  it('but a held span of an open bio does not open itself', () => {
    const own = '[and, since the spring, without a licence](held:premiere)';
    const long = `[${HELD.replace('lake', 'river')}](held:premiere)`;
    const content = readContent(
      memoryFolder(withEdit(files, 'high-water/cards/crew/c017.md', own, long)),
    );
    const found = audit('a.txt', HELD.replace('lake', 'river').slice(5), content);
    expect(found.map(({ from }) => from)).toContain('a held span of high-water/crew/c017');
  });
});

it('a run that goes from one paragraph into the next is found', () => {
  const path = 'high-water/cards/story/s053.md';
  const content = readContent(memoryFolder(withEdit(files, path, 'heights of', 'heights of\n\n')));
  const run = 'roses, and then, in pencil, the heights of somebody’s children climbing';
  expect(audit('a.txt', run, content).map(({ from }) => from)).toEqual([
    'bio of high-water/story/s053',
  ]);
});
