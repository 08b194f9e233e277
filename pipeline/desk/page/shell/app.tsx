import { useEffect, useRef, useState } from 'preact/hooks';
import { CardScreen } from '../card/screen.js';
import type { Desk } from '../line/desk.js';
import type { Live } from '../line/live.js';
import { MakingScreen } from '../making/screen.js';
import { RevealsScreen } from '../reveals/screen.js';
import { StatusScreen } from '../status/screen.js';
import type { StatusAnswer } from '../../protocol.js';
import { onSaid } from './announce.js';
import { Help } from './help.js';
import { useKeys } from './keys.js';
import { addressOf, go, useRoute, type Route } from './route.js';
import { useStatus } from './use-status.js';

const SCREENS: readonly (readonly [Route, string])[] = [
  [{ screen: 'status' }, 'Status sheet'],
  [{ screen: 'reveals' }, 'Reveals'],
  [{ screen: 'making', of: '' }, 'Proofs and preview'],
];

/** The whole page: the way around it, what is said, and one screen. */
export function App({ desk, live }: { readonly desk: Desk; readonly live: Live }) {
  const route = useRoute();
  const status = useStatus(desk, live, route.screen === 'status');
  const [isHelping, setHelping] = useState(false);
  const main = useRef<HTMLElement>(null);
  const address = addressOf(route);
  const first = useRef(address);
  useEffect(() => {
    if (first.current === address) return;
    first.current = '';
    main.current?.focus();
    scrollTo(0, 0);
  }, [address]);
  useKeys('Everywhere', [
    { chord: 's', does: 'Status sheet', press: () => go({ screen: 'status' }) },
    { chord: 'r', does: 'Reveals', press: () => go({ screen: 'reveals' }) },
    { chord: 'p', does: 'Proofs and preview', press: () => go({ screen: 'making', of: '' }) },
    { chord: '?', does: 'This list', press: () => setHelping(true) },
  ]);
  return (
    <>
      <header class="top">
        <a
          class="skip"
          href={address}
          onClick={(event) => {
            event.preventDefault();
            main.current?.focus();
          }}
        >
          To the screen
        </a>
        <nav aria-label="Screens">
          <ul>
            {SCREENS.map(([to, words]) => (
              <li key={words}>
                <a
                  href={addressOf(to)}
                  {...(to.screen === route.screen ? { 'aria-current': 'page' as const } : {})}
                >
                  {words}
                </a>
              </li>
            ))}
          </ul>
        </nav>
        <div class="end">
          {status && <span class="mark">INTERNAL: {status.marked}</span>}
          <button type="button" onClick={() => setHelping(true)}>
            Shortcuts
          </button>
        </div>
      </header>
      <Said live={live} />
      <main ref={main} tabIndex={-1} aria-labelledby="screen-title">
        <Screen desk={desk} live={live} route={route} status={status} />
      </main>
      {isHelping && <Help close={() => setHelping(false)} />}
    </>
  );
}

function Screen(props: {
  readonly desk: Desk;
  readonly live: Live;
  readonly route: Route;
  readonly status: StatusAnswer | null;
}) {
  const { desk, live, route, status } = props;
  if (route.screen === 'card') {
    return (
      <CardScreen key={route.card} desk={desk} live={live} card={route.card} status={status} />
    );
  }
  if (route.screen === 'reveals') return <RevealsScreen desk={desk} status={status} />;
  if (route.screen === 'making') {
    return <MakingScreen key={route.of} desk={desk} live={live} of={route.of} status={status} />;
  }
  return <StatusScreen status={status} />;
}

/** What the page says, to who looks and to who listens. */
function Said({ live }: { readonly live: Live }) {
  const [words, setWords] = useState('');
  const [isConnected, setConnected] = useState(true);
  useEffect(() => {
    onSaid(setWords);
    const offs = [
      live.onConnected(setConnected),
      live.on((event) => {
        if (event.type === 'trouble') setWords(event.message);
      }),
    ];
    return () => {
      for (const off of offs) off();
    };
  }, [live]);
  return (
    <div class="said">
      <p id="said" role="status">
        {words}
      </p>
      {!isConnected && (
        <p class="notice bad" role="alert">
          The desk cannot be reached. What you type stays on this page until it can.
        </p>
      )}
    </div>
  );
}
