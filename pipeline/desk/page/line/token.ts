/** The token of a session is kept in its tab, and handed to other tabs of the same origin. */
const KEPT_AS = 'desk-token';
const CHANNEL = 'desk-token';
/** How long another tab is waited for, in ms. */
const LONGEST = 400;

type Message = { readonly asks: true } | { readonly token: string };

/**
 * The token: from the address that the command opened, from this tab before, or from another tab
 * of the desk. Null if there is none. It does not stay in the address, and so not in the history.
 */
export async function sessionToken(): Promise<string | null> {
  const token = fromAddress() ?? sessionStorage.getItem(KEPT_AS) ?? (await fromOtherTab());
  if (token === null) return null;
  sessionStorage.setItem(KEPT_AS, token);
  answerOtherTabs(token);
  return token;
}

/** Takes the token out of this tab: it is no longer good. */
export function forgetToken(): void {
  sessionStorage.removeItem(KEPT_AS);
}

function fromAddress(): string | null {
  const token = new URLSearchParams(location.hash.slice(1)).get('token');
  if (token === null || token === '') return null;
  history.replaceState(null, '', `${location.pathname}${location.search}`);
  return token;
}

function fromOtherTab(): Promise<string | null> {
  const channel = new BroadcastChannel(CHANNEL);
  return new Promise((resolve) => {
    const end = (token: string | null): void => {
      channel.close();
      resolve(token);
    };
    channel.addEventListener('message', ({ data }: MessageEvent<Message>) => {
      if ('token' in data) end(data.token);
    });
    channel.postMessage({ asks: true } satisfies Message);
    setTimeout(() => end(null), LONGEST);
  });
}

function answerOtherTabs(token: string): void {
  const channel = new BroadcastChannel(CHANNEL);
  channel.addEventListener('message', ({ data }: MessageEvent<Message>) => {
    if ('asks' in data) channel.postMessage({ token } satisfies Message);
  });
}
