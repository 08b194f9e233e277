import { EventText, type StreamEvent } from './event-text.js';

const NAME = 'desk-events';
/** How long is waited before a stream that ended is opened again, in ms. */
const AGAIN = 1_000;

/** What a tab hears of the stream: an event, or whether the desk can be reached. */
export interface Listener {
  readonly event: (event: StreamEvent) => void;
  readonly connected: (isConnected: boolean) => void;
}

type Message = { readonly event: StreamEvent } | { readonly connected: boolean };

/**
 * One stream for all tabs of a browser: a browser opens six connections to a server, and a stream
 * takes one for as long as it is open. The tab that has the lock reads it and tells the others;
 * when that tab is closed, the lock goes to the next one.
 */
export function shareStream(
  open: (signal: AbortSignal) => Promise<Response>,
  listener: Listener,
): void {
  const channel = new BroadcastChannel(NAME);
  const tell = (message: Message): void => {
    hear(message, listener);
    channel.postMessage(message);
  };
  channel.addEventListener('message', ({ data }: MessageEvent<Message>) => hear(data, listener));
  const lead = (): void => void navigator.locks.request(NAME, () => readUntilHidden(open, tell));
  addEventListener('pageshow', ({ persisted }) => {
    if (persisted) lead();
  });
  lead();
}

/**
 * Reads the stream, again and again, until the page is left. A page that the browser keeps for its
 * back button stands still, so the lock must be gone with the event itself.
 */
function readUntilHidden(
  open: (signal: AbortSignal) => Promise<Response>,
  tell: (message: Message) => void,
): Promise<void> {
  const closing = new AbortController();
  const { signal } = closing;
  return new Promise((resolve) => {
    const leave = (): void => {
      closing.abort();
      resolve();
    };
    addEventListener('pagehide', leave, { once: true });
    void readAgain(open, signal, tell);
  });
}

async function readAgain(
  open: (signal: AbortSignal) => Promise<Response>,
  signal: AbortSignal,
  tell: (message: Message) => void,
): Promise<void> {
  for (;;) {
    await readOnce(open, signal, tell);
    if (signal.aborted) return;
    tell({ connected: false });
    await new Promise((resolve) => setTimeout(resolve, AGAIN));
  }
}

function hear(message: Message, { event, connected }: Listener): void {
  if ('event' in message) event(message.event);
  else connected(message.connected);
}

/** Reads the stream until it ends, for whatever reason. */
async function readOnce(
  open: (signal: AbortSignal) => Promise<Response>,
  signal: AbortSignal,
  tell: (message: Message) => void,
): Promise<void> {
  try {
    const { ok, body } = await open(signal);
    if (!ok || body === null) return;
    tell({ connected: true });
    const events = new EventText();
    const reader = body.pipeThrough(new TextDecoderStream()).getReader();
    for (let piece = await reader.read(); !piece.done; piece = await reader.read()) {
      for (const event of events.add(piece.value)) tell({ event });
    }
  } catch {
    // The desk was stopped, or this tab is going: the loop says so and tries again.
  }
}
