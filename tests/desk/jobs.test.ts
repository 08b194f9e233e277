import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';

import { afterEach, beforeEach, describe, expect, it } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import type { DeskEvent, Job, JobAnswer, JobsAnswer } from '../../pipeline/desk/protocol.js';
import { Jobs } from '../../pipeline/desk/jobs.js';
import { makeProof } from '../../pipeline/desk/proof-job.js';
import { diskFolder } from '../../pipeline/read/index.js';
import { pageTexts } from '../proof/tools.js';
import { DeskGround, chrome, type Client } from './ground.js';
import { SET_FILES } from './sample-files.js';

const BEFORE = '2027-03-01T09:00:00+00:00[Europe/London]';
const AFTER = '2027-06-05T09:00:00+01:00[Europe/London]';
const HELD = 'Ink, and a thumbprint of the lake.';
const OPEN = 'The quay stands in water to the knee.';

/** The sample with one card that is held, and bios on its site. */
function files(): Record<string, string> {
  const property = sampleWith({}).get('property.yaml') ?? '';
  return {
    ...SET_FILES,
    'property.yaml': `${property}site: { shows: { bio: full } }\n`,
    'one/cards/extra/b1.md': `---\nnumber: X-1\nname: The Chart\npublicName: A chart\nspoiler: later\n---\n${HELD}\n`,
  };
}

let ground: DeskGround;
let client: Client;
beforeEach(async () => {
  ground = new DeskGround(files());
  client = await ground.open();
});
afterEach(async () => {
  await ground.end();
  expect(ground.failures).toEqual([]);
});

const isOf = (event: DeskEvent, ended: Job['state']): boolean =>
  event.type === 'job' && event.job.state === ended;

/** Starts a job and hears of it until it has ended in this way. */
async function ended(path: string, request: unknown, state: Job['state']): Promise<readonly Job[]> {
  let begun = (): void => undefined;
  const listening = new Promise<void>((resolve) => (begun = resolve));
  const events = client.listen((event) => {
    if (event.type === 'hello') begun();
    return isOf(event, state);
  }, 60_000);
  await listening;
  expect((await client.post<JobAnswer>(path, request)).status).toBe(200);
  return (await events).flatMap((event) => (event.type === 'job' ? [event.job] : []));
}

/** What is left in the folder for things that are thrown away, besides content and drafts. */
function left(): readonly string[] {
  return readdirSync(ground.root).filter((name) => name !== 'content' && name !== 'drafts');
}

function textsOf(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => readFileSync(join(entry.parentPath, entry.name), 'latin1'));
}

describe('a proof', () => {
  it('is made with its steps told, and is a PDF of the cards that were asked for', async () => {
    const jobs = await ended('/api/proof', { card: 'one/base/a1', kind: 'deck' }, 'done');
    expect(jobs[0]).toMatchObject({ kind: 'proof', state: 'running', step: 'reading' });
    const { address = '', title } = jobs.at(-1) ?? {};
    expect(title).toBe('Proof of one/base/a1 (deck)');
    const answer = await fetch(client.origin + (address ?? ''));
    expect(answer.headers.get('content-type')).toBe('application/pdf');
    const text = pageTexts(new Uint8Array(await answer.arrayBuffer())).join('\n');
    expect(text).toContain('INTERNAL');
    expect(text.replace(/\s+/g, ' ')).toContain(OPEN);
    expect(text).not.toContain('thumbprint');
  });

  it('of a card that is none fails with a sentence', async () => {
    const jobs = await ended('/api/proof', { card: 'one/base/zz' }, 'failed');
    expect(jobs.at(-1)).toMatchObject({ message: 'there is no such card', address: null });
  });

  it.each(['reading', 'setting sheets'])(
    'that is stopped while it is %s has no result, and is told as stopped',
    async (when) => {
      const told: Job[] = [];
      let clock = 0;
      const jobs: Jobs = new Jobs(
        (event) => {
          if (event.type !== 'job') return;
          told.push(event.job);
          if (event.job.step === when) jobs.cancel(event.job.id);
        },
        () => (clock += 1000),
      );
      const order = { folder: diskFolder(ground.content), now: 0, chrome };
      let made = false;
      jobs.start('proof', 'All', async (working) => {
        await makeProof(order, { kind: 'deck' }, working);
        made = true;
        return '/made/proof.pdf';
      });
      await expect.poll(() => told.at(-1)?.state).toBe('cancelled');
      await new Promise((resolve) => setTimeout(resolve, 300));
      expect(jobs.all).toMatchObject([{ state: 'cancelled', step: 'stopped', address: null }]);
      expect(made).toBe(false);
    },
  );

  it('tells the step it has come to, however soon that came after another', async () => {
    const told: string[] = [];
    const jobs = new Jobs((event) => {
      if (event.type === 'job') told.push(event.job.step);
    });
    jobs.start('proof', 'All', ({ step }) => {
      for (const each of ['reading', 'checking', 'setting']) step(each);
      return new Promise(() => undefined);
    });
    await expect.poll(() => told).toEqual(['reading', 'setting']);
    jobs.end();
  });

  it('that nobody started cannot be stopped', async () => {
    expect((await client.post('/api/cancel', { job: 'job-9' })).status).toBe(404);
  });
});

describe('a preview', () => {
  it('is a site of its instant on another port without a token, with nothing that is held then', async () => {
    const jobs = await ended('/api/publish-preview', { at: BEFORE }, 'done');
    expect(jobs.map(({ step }) => step)).toContain('reading and checking');
    const { address } = jobs.at(-1) ?? {};
    const { hostname, port } = new URL(address ?? '');
    expect([hostname, port === String(client.desk.port)]).toEqual(['127.0.0.1', false]);
    const page = await fetch(address ?? '');
    expect([page.status, page.headers.get('set-cookie')]).toEqual([200, null]);
    expect(await page.text()).not.toContain(client.desk.token);
    const [place = ''] = left();
    const texts = textsOf(join(ground.root, place, 'site'));
    expect(texts.length).toBeGreaterThan(5);
    expect(texts.some((text) => text.includes(OPEN))).toBe(true);
    expect(texts.filter((text) => text.includes('thumbprint'))).toEqual([]);
    expect(texts.filter((text) => text.includes('The Chart'))).toEqual([]);

    const later = await ended('/api/publish-preview', { at: AFTER }, 'done');
    expect(left()).toHaveLength(1);
    const [second = ''] = left();
    expect(second).not.toBe(place);
    const opened = textsOf(join(ground.root, second, 'site'));
    expect(opened.some((text) => text.includes('thumbprint'))).toBe(true);
    expect(await fetch(address ?? '').catch(() => null)).toBeNull();
    expect((await fetch(later.at(-1)?.address ?? '')).status).toBe(200);
    await client.desk.close();
    expect(left()).toEqual([]);
  });

  it('that is stopped leaves no folder and serves nothing', async () => {
    let id = '';
    const stopAtPages = (event: DeskEvent): boolean => {
      if (event.type !== 'job' || event.job.step !== 'making pages') return false;
      id = event.job.id;
      return true;
    };
    const events = client.listen(stopAtPages, 60_000);
    await client.post<JobAnswer>('/api/publish-preview', { at: BEFORE });
    await events;
    const { value: stopped } = await client.post<JobAnswer>('/api/cancel', { job: id });
    expect(stopped.job).toMatchObject({ state: 'cancelled', step: 'stopped', address: null });
    await new Promise((resolve) => setTimeout(resolve, 1000));
    const { value: all } = await client.get<JobsAnswer>('/api/jobs');
    expect(all.jobs).toEqual([stopped.job]);
    expect(left()).toEqual([]);
  });

  it('of an instant that is none says what is wrong with it', async () => {
    const jobs = await ended('/api/publish-preview', { at: 'tomorrow' }, 'failed');
    expect(jobs.at(-1)?.message).toMatch(/^tomorrow: /);
  });
});

describe('jobs', () => {
  it('run two at a time', async () => {
    const all = await Promise.all([1, 2, 3].map(() => client.post('/api/proof', { kind: 'deck' })));
    expect(all.map(({ status }) => status)).toEqual([200, 200, 429]);
  });

  it('let a draft through while they run', async () => {
    const { digest } = await client.card('one/base/a1');
    const { value } = await client.post<JobAnswer>('/api/publish-preview', { at: BEFORE });
    const draft = { card: 'one/base/a1', base: digest, edit: { copy: 'Mud.' }, sequence: 1 };
    expect((await client.post('/api/draft', draft)).status).toBe(200);
    const { value: all } = await client.get<JobsAnswer>('/api/jobs');
    expect(all.jobs[0]?.state).toBe('running');
    await client.post('/api/cancel', { job: value.job.id });
  });
});
