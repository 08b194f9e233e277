import { useEffect, useRef, useState } from 'preact/hooks';
import type { CardKey } from '../../protocol.js';
import { sentenceOf, type Desk } from '../line/desk.js';
import type { Live } from '../line/live.js';
import { say } from '../shell/announce.js';
import { CardWork } from './card-work.js';
import type { WorkState } from './work-state.js';

/** A card that is fetched and worked on for as long as its screen stands. */
export interface OpenWork {
  readonly work: CardWork;
  readonly state: WorkState;
}

/** Fetches a card: null until it is there, a sentence if it cannot be had. */
export function useWork(desk: Desk, live: Live, card: CardKey): OpenWork | string | null {
  const [shown, setShown] = useState<OpenWork | string | null>(null);
  const kept = useRef<CardWork | null>(null);
  useEffect(() => {
    let isGone = false;
    const begin = async (): Promise<void> => {
      try {
        const answer = await desk.card(card);
        if (isGone) return;
        const work = new CardWork(desk, answer, (state) => {
          if (!isGone) setShown({ work, state });
        });
        kept.current = work;
        setShown({ work, state: work.state });
        if (work.state.isOtherOnDisk) await work.save();
      } catch (thrown) {
        if (!isGone) setShown(sentenceOf(thrown));
      }
    };
    void begin();
    const offs = [
      live.on((event) => kept.current?.hear(event)),
      live.onConnected((isConnected) => {
        if (isConnected) kept.current?.again();
      }),
    ];
    return () => {
      isGone = true;
      for (const off of offs) off();
      if (kept.current?.isUnsaved === true) {
        say('What you typed on the card before is kept by the desk, and not saved.');
      }
      kept.current = null;
    };
  }, [card]);
  useEffect(() => {
    const warn = (event: BeforeUnloadEvent): void => {
      if (kept.current?.isUnsaved === true) event.preventDefault();
    };
    addEventListener('beforeunload', warn);
    return () => removeEventListener('beforeunload', warn);
  }, []);
  return shown;
}
