import type { RevealsReport } from '../../../../schema/index.js';
import type {
  BaseRequest,
  CancelRequest,
  CardAnswer,
  CardKey,
  CardRequest,
  Conflict,
  DraftAnswer,
  DraftRequest,
  FindingsAnswer,
  FixAnswer,
  FixRequest,
  JobAnswer,
  JobsAnswer,
  NotHandedIn,
  PreviewRequest,
  ProofRequest,
  SavedAnswer,
  SaveRequest,
  StatusAnswer,
  TokenHeader,
  Trouble,
} from '../../protocol.js';

const HEADER: TokenHeader = 'x-holdback-token';

/** The desk said no: its sentence is for whoever reads it. */
export class DeskTrouble extends Error {
  constructor(
    readonly trouble: Trouble,
    readonly status: number,
  ) {
    super(trouble.message);
  }
}

/** What the desk does for this page. Every method throws a `DeskTrouble` where it will not. */
export class Desk {
  readonly #token: string;

  constructor(token: string) {
    this.#token = token;
  }

  status(): Promise<StatusAnswer> {
    return this.#get('status', outline<StatusAnswer>('cards'));
  }

  card(card: CardKey): Promise<CardAnswer> {
    return this.#get(`card?card=${encodeURIComponent(card)}`, outline<CardAnswer>('digest'));
  }

  draft(request: DraftRequest): Promise<DraftAnswer> {
    return this.#post('draft', request, outline<DraftAnswer>('look'));
  }

  discard(request: CardRequest): Promise<CardAnswer> {
    return this.#post('discard', request, outline<CardAnswer>('digest'));
  }

  save(request: SaveRequest): Promise<SavedAnswer | Conflict> {
    return this.#saved('save', request);
  }

  undo(request: BaseRequest): Promise<SavedAnswer | Conflict> {
    return this.#saved('undo', request);
  }

  redo(request: BaseRequest): Promise<SavedAnswer | Conflict> {
    return this.#saved('redo', request);
  }

  async handIn(request: SaveRequest): Promise<SavedAnswer | Conflict | NotHandedIn> {
    const isNot = outline<NotHandedIn>('findings');
    return this.#post(
      'hand-in',
      request,
      (value): value is SavedAnswer | Conflict | NotHandedIn =>
        isSavedOrConflict(value) || isNot(value),
    );
  }

  fix(request: FixRequest): Promise<FixAnswer> {
    return this.#post('fix', request, outline<FixAnswer>('look'));
  }

  findings(card: CardKey): Promise<FindingsAnswer> {
    const path = `findings?card=${encodeURIComponent(card)}`;
    return this.#get(path, outline<FindingsAnswer>('findings'));
  }

  reveals(): Promise<RevealsReport> {
    return this.#get('reveals', outline<RevealsReport>('steps'));
  }

  proof(request: ProofRequest): Promise<JobAnswer> {
    return this.#post('proof', request, outline<JobAnswer>('job'));
  }

  preview(request: PreviewRequest): Promise<JobAnswer> {
    return this.#post('publish-preview', request, outline<JobAnswer>('job'));
  }

  cancel(request: CancelRequest): Promise<JobAnswer> {
    return this.#post('cancel', request, outline<JobAnswer>('job'));
  }

  jobs(): Promise<JobsAnswer> {
    return this.#get('jobs', outline<JobsAnswer>('jobs'));
  }

  events(signal: AbortSignal): Promise<Response> {
    return this.#fetch('events', { signal });
  }

  async font(key: string): Promise<ArrayBuffer> {
    return (await this.#bytes(`font?key=${encodeURIComponent(key)}`)).arrayBuffer();
  }

  /** The picture of a card; null where it has none. */
  async art(card: CardKey): Promise<Blob | null> {
    const answer = await this.#fetch(`art?card=${encodeURIComponent(card)}`, {});
    return answer.ok ? answer.blob() : null;
  }

  async #bytes(path: string): Promise<Response> {
    const answer = await this.#fetch(path, {});
    if (answer.ok) return answer;
    throw new DeskTrouble(troubleOf(null), answer.status);
  }

  #saved(path: string, request: BaseRequest): Promise<SavedAnswer | Conflict> {
    return this.#post(path, request, isSavedOrConflict);
  }

  async #get<T>(path: string, is: (value: unknown) => value is T): Promise<T> {
    return answered(await this.#fetch(path, {}), is);
  }

  async #post<T>(path: string, body: unknown, is: (value: unknown) => value is T): Promise<T> {
    const headers = { 'content-type': 'application/json' };
    const sent = await this.#fetch(path, { method: 'POST', headers, body: JSON.stringify(body) });
    return answered(sent, is);
  }

  #fetch(path: string, { headers, ...rest }: RequestInit): Promise<Response> {
    const all = new Headers(headers);
    all.set(HEADER, this.#token);
    return fetch(`/api/${path}`, { ...rest, headers: all, cache: 'no-store' });
  }
}

/** The answer, if it is one that was asked for: its outline is enough, the desk is ours. */
async function answered<T>(answer: Response, is: (value: unknown) => value is T): Promise<T> {
  const value = await readValue(answer);
  if (is(value)) return value;
  throw new DeskTrouble(troubleOf(value), answer.status);
}

/** What was answered; null where it is no JSON. */
async function readValue(answer: Response): Promise<unknown> {
  try {
    return await answer.json();
  } catch {
    return null;
  }
}

const isTrouble = outline<Trouble>('message');

function troubleOf(value: unknown): Trouble {
  return isTrouble(value)
    ? value
    : { error: 'failed', message: 'The desk gave no answer that can be read.' };
}

function outline<T extends object>(key: string & keyof T) {
  return (value: unknown): value is T =>
    typeof value === 'object' && value !== null && key in value;
}

const isSaved = outline<SavedAnswer>('saved');
const isConflict = outline<Conflict>('disk');

function isSavedOrConflict(value: unknown): value is SavedAnswer | Conflict {
  return isSaved(value) || isConflict(value);
}

/** The sentence of whatever was thrown. */
export function sentenceOf(thrown: unknown): string {
  if (thrown instanceof DeskTrouble) return thrown.message;
  return 'The desk cannot be reached: is it still running? What you typed stays on this page.';
}
