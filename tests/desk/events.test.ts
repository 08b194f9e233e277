import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import type {
  DeskEvent,
  DraftAnswer,
  SavedAnswer,
  StatusAnswer,
} from '../../pipeline/desk/protocol.js';
import { DeskGround, type Client } from './ground.js';
import { SET_FILES } from './sample-files.js';

const KEY = 'one/base/a1';
const FILE = 'one/cards/base/a1.md';

let ground: DeskGround;
let client: Client;
let onDisk: (paths: readonly string[]) => void;
beforeEach(async () => {
  ground = new DeskGround(SET_FILES);
  client = await ground.open({
    watch: (changed) => {
      onDisk = changed;
      return () => undefined;
    },
  });
});
afterEach(async () => {
  await ground.end();
  expect(ground.failures).toEqual([]);
});

/** Does something once the stream is open, and gives what is told until that is enough. */
async function told(
  act: () => unknown,
  enough: (event: DeskEvent) => boolean,
): Promise<readonly DeskEvent[]> {
  let begun = (): void => undefined;
  const open = new Promise<void>((resolve) => (begun = resolve));
  const events = client.listen((event) => {
    if (event.type === 'hello') begun();
    return enough(event);
  });
  await open;
  await act();
  return events;
}

const findingsOf = (events: readonly DeskEvent[]) =>
  events.flatMap((event) => (event.type === 'findings' ? [event] : []));

describe('the event stream', () => {
  it('begins with a word of who speaks', async () => {
    const [first] = await told(
      () => undefined,
      () => true,
    );
    expect(first).toMatchObject({
      type: 'hello',
      session: expect.stringMatching(/^[0-9a-f]{12}$/),
    });
  });

  it('tells what is found in a draft, with its sequence, and its answer does not', async () => {
    const { digest } = await client.card(KEY);
    const edit = { copy: 'The quay knows Miss Thrane.' };
    let answer: DraftAnswer | undefined;
    const draft = async (): Promise<void> => {
      const request = { card: KEY, base: digest, edit, sequence: 4 };
      answer = (await client.post<DraftAnswer>('/api/draft', request)).value;
    };
    const events = await told(draft, (event) => event.type === 'findings' && event.settled);
    expect(Object.keys(answer?.look ?? {})).toEqual(['sides', 'names']);
    const last = findingsOf(events).at(-1);
    expect(last).toMatchObject({ card: KEY, sequence: 4, settled: true });
    expect(last?.findings.map((each) => each.finding.rule)).toContain('name-avoided');
  });

  it('tells of a draft with nothing new to find that it was looked at', async () => {
    const { digest } = await client.card(KEY);
    await client.get(`/api/findings?card=${KEY}`);
    const request = {
      card: KEY,
      base: digest,
      edit: { copy: 'The quay stands dry.' },
      sequence: 9,
    };
    const events = await told(
      () => client.post('/api/draft', request),
      (event) => event.type === 'findings' && event.settled,
    );
    expect(findingsOf(events).at(-1)).toMatchObject({ sequence: 9, settled: true });
  });

  it('tells of a file that changed on the disk its digest, and what is found in it now', async () => {
    const before = await client.card(KEY);
    await client.get(`/api/findings?card=${KEY}`);
    const change = (): void => {
      ground.write(FILE, ground.read(FILE).replace('The quay', 'Miss Thrane'));
      onDisk([FILE]);
    };
    const events = await told(change, ({ type }) => type === 'settled');
    const after = await client.card(KEY);
    expect(after.digest).not.toBe(before.digest);
    expect(events.find(({ type }) => type === 'changed')).toEqual({
      type: 'changed',
      cards: [{ card: KEY, digest: after.digest }],
      others: false,
    });
    expect(findingsOf(events).at(-1)).toMatchObject({ card: KEY, sequence: null, settled: true });
    const others = await told(
      () => {
        onDisk(['names.yaml']);
      },
      ({ type }) => type === 'changed',
    );
    expect(others.at(-1)).toEqual({ type: 'changed', cards: [], others: true });
  });

  it('tells once of a save, though the watch of the disk tells of it again', async () => {
    const { digest } = await client.card(KEY);
    const save = async (): Promise<void> => {
      const request = { card: KEY, base: digest, edit: { copy: 'The quay stands dry.' } };
      expect((await client.post<SavedAnswer>('/api/save', request)).value.written).toBe(true);
      onDisk([FILE]);
      onDisk(['people.yaml']);
    };
    const isLast = (event: DeskEvent): boolean => event.type === 'changed' && event.others;
    const events = await told(save, isLast);
    const changes = events.flatMap((event) => (event.type === 'changed' ? [event] : []));
    expect(changes.map(({ cards }) => cards.map(({ card }) => card))).toEqual([[KEY], []]);
  });
});

describe('the first answers', () => {
  it('do not wait for the rules: every card is there, and what they find comes after', async () => {
    ground.write(FILE, ground.read(FILE).replace('The quay', 'Miss Thrane'));
    client = await ground.open();
    const early = (await client.get<StatusAnswer>('/api/status')).value;
    expect(early).toMatchObject({ looked: false, settled: false, sheet: null });
    expect(early.cards.map(({ card, fit, errors }) => [card, fit, errors])).toEqual([
      [KEY, null, 0],
      ['one/base/a2', null, 0],
      ['one/extra/b1', null, 0],
    ]);
    const card = await client.card(KEY);
    expect(card.look).toMatchObject({ settled: false, findings: [] });
    expect(card.look.sides?.fits.find(({ zone }) => zone === 'bio')?.says).toBe('3 lines free');
    const events = await told(
      () => undefined,
      ({ type }) => type === 'settled',
    );
    expect(findingsOf(events).map(({ card: of }) => of)).toEqual([KEY]);
    const late = (await client.get<StatusAnswer>('/api/status')).value;
    expect(late).toMatchObject({ looked: true, settled: true });
    expect(late.sheet).not.toBeNull();
    expect(late.cards[0]?.fit?.says).toBe('3 lines free');
    expect((late.cards[0]?.errors ?? 0) + (late.cards[0]?.warnings ?? 0)).toBeGreaterThan(0);
  });
});
