import { useEffect, useState } from 'preact/hooks';
import type { StatusAnswer } from '../../protocol.js';
import { sentenceOf, type Desk } from '../line/desk.js';
import type { Live } from '../line/live.js';
import { say } from './announce.js';

/** How long news are gathered before the sheet is asked for again, in ms. */
const GATHER = 250;

/** The status sheet; asked for again when it may be other than before, while it is looked at. */
export function useStatus(desk: Desk, live: Live, isLookedAt: boolean): StatusAnswer | null {
  const [status, setStatus] = useState<StatusAnswer | null>(null);
  useEffect(() => {
    let isGone = false;
    // What came before all rules had looked is half of it: the rest is wanted on every screen.
    let isHalf = status?.looked !== true;
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const ask = (): void => {
      desk.status().then(
        (answer) => {
          if (isGone) return;
          isHalf = !answer.looked;
          setStatus(answer);
        },
        (thrown: unknown) => say(sentenceOf(thrown)),
      );
    };
    const soon = (): void => {
      clearTimeout(waiting);
      waiting = setTimeout(ask, GATHER);
    };
    if (isLookedAt || status === null) ask();
    const offs = [
      live.on(({ type }) => {
        if ((isLookedAt || isHalf) && (type === 'settled' || type === 'changed')) soon();
      }),
      live.onConnected((isConnected) => {
        if (isConnected) soon();
      }),
    ];
    return () => {
      isGone = true;
      clearTimeout(waiting);
      for (const off of offs) off();
    };
  }, [desk, live, isLookedAt]);
  return status;
}
