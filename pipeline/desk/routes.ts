import type { IncomingMessage, ServerResponse } from 'node:http';

import { select } from '../select/index.js';
import { statusSheet } from '../status/index.js';
import { bioFits } from '../checks/index.js';
import type { StatusSheet } from '../../schema/index.js';
import { view } from '../gate/index.js';
import { rasterise, readArt, type Folder } from '../read/index.js';
import { sendBytes, sendJson } from './answers.js';
import type { Desk } from './desk.js';
import { findingElsewhere } from './desk-findings.js';
import { cardFileOf } from './card-files.js';
import type { Events } from './events.js';
import { Jobs } from './jobs.js';
import type { Made } from './made.js';
import { makePreview, type PreviewGround } from './preview-job.js';
import type { Preview } from './preview.js';
import { makeProof } from './proof-job.js';
import type { PreviewRequest, ProofRequest, StatusAnswer } from './protocol.js';
import { Refusal, badRequest, unknown } from './refusal.js';
import {
  BASE,
  CANCEL,
  CARD,
  DRAFT,
  FIX,
  NOTHING,
  PREVIEW,
  PROOF,
  SAVE,
  editOf,
  read,
} from './requests.js';
import { revealsReport } from './reveals.js';
import type { Tickets } from './tickets.js';

/** What the routes work with. */
export interface Bench {
  readonly desk: Desk;
  readonly events: Events;
  readonly jobs: Jobs;
  readonly made: Made;
  readonly tickets: Tickets;
  readonly folder: Folder;
  readonly now: () => number;
  readonly preview: Omit<PreviewGround, 'folder' | 'now'>;
  readonly chrome: Parameters<typeof makeProof>[0]['chrome'];
  readonly serving: { preview: Preview | null };
}

/** A request that the guard let through. */
export interface Asked {
  readonly query: URLSearchParams;
  readonly body: unknown;
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
}

type Route = (bench: Bench, asked: Asked) => unknown;

/** Answers that are written by the route itself. */
export const WRITTEN: unique symbol = Symbol('written');

/** What is asked, by path. */
export const GETS: Readonly<Record<string, Route>> = {
  '/api/status': ({ desk, now }) => statusAnswer(desk, now),
  '/api/card': ({ desk }, { query }) => desk.card({ card: wordOf(query, 'card') }),
  '/api/findings': ({ desk }, { query }) => desk.findings({ card: wordOf(query, 'card') }),
  '/api/reveals': ({ desk }) => {
    const released = select(desk.ground.known().standing.content);
    if (!released) throw new Refusal(409, UNREADABLE);
    return revealsReport(released);
  },
  '/api/jobs': ({ jobs }) => ({ jobs: jobs.all }),
  '/api/font': ({ desk }, { query, response }) => {
    const bytes = desk.ground.faces.bytesOf(wordOf(query, 'key'));
    if (!bytes) throw unknown('there is no such font');
    sendBytes(response, { type: 'font/ttf' }, bytes);
    return WRITTEN;
  },
  '/api/art': artOf,
  '/api/events': ({ events }, { response }) => {
    if (!events.hasRoom) {
      const message = 'too many streams are open: share one among the tabs';
      throw new Refusal(429, { error: 'too many', message });
    }
    events.open(response);
    return WRITTEN;
  },
};

const UNREADABLE = {
  error: 'failed',
  message: 'some files cannot be read: mend their findings first',
} as const;

/** What is done, by path. */
export const POSTS: Readonly<Record<string, Route>> = {
  '/api/draft': ({ desk }, { body }) => {
    const { edit, ...rest } = read(DRAFT, body);
    return desk.draft({ ...rest, edit: editOf(edit) });
  },
  '/api/discard': ({ desk }, { body }) => desk.discard(read(CARD, body)),
  '/api/save': ({ desk }, { body }) => {
    const { edit, ...rest } = read(SAVE, body);
    return desk.save({ ...rest, edit: editOf(edit) });
  },
  '/api/hand-in': ({ desk }, { body }) => {
    const { edit, ...rest } = read(SAVE, body);
    return desk.handIn({ ...rest, edit: editOf(edit) });
  },
  '/api/fix': ({ desk }, { body }) => {
    const { edit, ...rest } = read(FIX, body);
    return desk.fix({ ...rest, edit: editOf(edit) });
  },
  '/api/undo': ({ desk }, { body }) => desk.step(read(BASE, body), 'back'),
  '/api/redo': ({ desk }, { body }) => desk.step(read(BASE, body), 'forth'),
  '/api/ticket': ({ tickets }, { body }) => {
    read(NOTHING, body);
    return { ticket: tickets.give() };
  },
  '/api/proof': (bench, { body }) => ({ job: startProof(bench, read(PROOF, body)) }),
  '/api/publish-preview': (bench, { body }) => ({ job: startPreview(bench, read(PREVIEW, body)) }),
  '/api/cancel': ({ jobs }, { body }) => ({ job: jobs.cancel(read(CANCEL, body).job) }),
};

function wordOf(query: URLSearchParams, key: string): string {
  const [word, second] = query.getAll(key);
  if (word === undefined || second !== undefined) throw badRequest(`say one ${key}`);
  return word;
}

/** The sheet of what opens next takes a while, so it is made once for each state of the disk. */
const sheets = new WeakMap<object, StatusSheet>();

function statusAnswer(desk: Desk, now: () => number): StatusAnswer {
  const { ground } = desk;
  const known = ground.known();
  const { content, options } = known.standing;
  const property = content.property?.value;
  const released = select({ ...content, faults: [] });
  const rows = ground.rows();
  const findings = [...known.findings];
  const report = { ok: false, counts: NO_COUNTS, findings };
  const sheet =
    sheets.get(ground.review) ??
    (ground.hasLooked && released
      ? statusSheet({
          released,
          report,
          fits: bioFits(content, options.fonts),
          rehearsal: null,
          reviewed: rows.reviewed,
          now: now(),
        })
      : null);
  if (sheet) sheets.set(ground.review, sheet);
  return {
    property: property?.title ?? '',
    marked: (released && view(released, { kind: 'house' })?.highest) ?? '',
    zone: property?.zone ?? 'UTC',
    cards: rows.all(ground.files),
    people: (content.people?.value.people ?? []).map(({ id, name, role }) => ({ id, name, role })),
    levels: (property?.levels ?? []).map(({ id, label }) => ({ id, label: label ?? id })),
    sheet,
    others: findings.filter(({ file }) => cardFileOf(file) === null).map(findingElsewhere),
    looked: ground.hasLooked,
    settled: desk.isSettled,
  };
}

const NO_COUNTS = { sets: 0, cards: 0, errors: 0, warnings: 0, accepted: 0 };

/** Pixels across of a picture on the desk. */
const SCREEN_WIDTH = 640;

async function artOf({ desk, folder }: Bench, { query, response }: Asked): Promise<typeof WRITTEN> {
  const file = desk.ground.files.get(wordOf(query, 'card'));
  const found = file && desk.ground.find(file);
  const image = found?.card.front.image?.file;
  if (!found || image === undefined || !found.set.art.has(image)) {
    throw unknown('there is no picture');
  }
  const { bytes } = await rasterise(
    readArt(folder, `${found.set.id}/${image}`),
    SCREEN_WIDTH,
    'jpeg',
  );
  sendBytes(response, { type: 'image/jpeg' }, bytes);
  return WRITTEN;
}

function startProof(bench: Bench, asked: ProofRequest): ReturnType<Jobs['start']> {
  const { jobs, folder, now, chrome, made } = bench;
  const what = asked.card ?? asked.subset ?? asked.set ?? 'everything';
  const kind = asked.kind ?? 'annotated';
  return jobs.start('proof', `Proof of ${what} (${kind})`, async (working) => {
    const pdf = await makeProof({ folder, now: now(), chrome }, asked, working);
    return made.put('proof.pdf', pdf);
  });
}

function startPreview(bench: Bench, asked: PreviewRequest): ReturnType<Jobs['start']> {
  const { jobs, folder, now, preview, serving } = bench;
  return jobs.start('publish-preview', `Site as of ${asked.at}`, async (working) => {
    const fresh = await makePreview({ folder, now: now(), ...preview }, asked, working);
    if (working.signal.aborted) {
      await fresh.close();
      return '';
    }
    const before = serving.preview;
    serving.preview = fresh;
    await before?.close();
    return fresh.address;
  });
}

/** Answers a request that was let through: the rules wait for it, and never it for them. */
export async function answer(route: Route, bench: Bench, asked: Asked): Promise<void> {
  bench.desk.rest();
  const value = await route(bench, asked);
  if (value !== WRITTEN) sendJson(asked.response, value);
}
