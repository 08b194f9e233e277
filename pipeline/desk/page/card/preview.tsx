import { useEffect, useRef, useState } from 'preact/hooks';
import type { CardKey, CardSides, ZoneFit } from '../../protocol.js';
import type { Desk } from '../line/desk.js';
import { counted } from '../parts/counted.js';
import { saySoon } from '../shell/announce.js';
import { fetchFaces } from './faces.js';
import { Side } from './side.js';

/** Both sides as they print, and how each text fits: what changes of that is said when typing rests. */
export function Preview(props: {
  readonly desk: Desk;
  readonly card: CardKey;
  readonly sides: CardSides | null;
}) {
  const { desk, card, sides } = props;
  const art = useArt(desk, card, sides?.front?.art === 'picture' || sides?.back?.art === 'picture');
  useEffect(() => {
    if (sides) fetchFaces(desk, sides);
  }, [sides]);
  useSaidFits(sides?.fits ?? null);
  return (
    <section class="panel" aria-labelledby="preview-title">
      <h2 id="preview-title">As it prints</h2>
      {sides === null && <p>It cannot be set until the file can be read.</p>}
      {sides?.why != null && <p>{sides.why}</p>}
      {sides && <Fits id="fits" fits={sides.fits.filter(isFirst)} />}
      <div class="sides">
        {sides?.back && <Side side={sides.back} label="Back" art={art} />}
        {sides?.front && <Side side={sides.front} label="Front" art={art} />}
      </div>
      {sides && (
        <details>
          <summary>How the other texts fit</summary>
          <Fits id="other-fits" fits={sides.fits.filter((fit) => !isFirst(fit))} />
        </details>
      )}
    </section>
  );
}

/** What a writer looks at first: the bio, and whatever does not fit. */
function isFirst({ zone, fits }: ZoneFit): boolean {
  return zone === 'bio' || !fits;
}

function Fits({ id, fits }: { readonly id: string; readonly fits: readonly ZoneFit[] }) {
  return (
    <ul class="fits" id={id}>
      {fits.map((fit) => (
        <li key={`${fit.side} ${fit.zone}`} class={classOf(fit)}>
          <strong>
            {fit.zone} on the {fit.side}
          </strong>
          : {fit.says}
          {fit.wordsToCut > 0 && `, ${counted(fit.wordsToCut, 'word')} too many`}
          {fit.shrunk && `, set smaller at ${Math.round(fit.size * 100) / 100} pt`}
        </li>
      ))}
    </ul>
  );
}

function classOf({ fits }: ZoneFit): string {
  return fits ? '' : 'bad';
}

/** The address of the card's picture in this page. */
function useArt(desk: Desk, card: CardKey, isThere: boolean): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (!isThere) return;
    let made: string | null = null;
    let isGone = false;
    void desk.art(card).then(
      (blob) => {
        if (!blob || isGone) return;
        made = URL.createObjectURL(blob);
        setAddress(made);
      },
      () => undefined, // the side is drawn without it
    );
    return () => {
      isGone = true;
      if (made !== null) URL.revokeObjectURL(made);
      setAddress(null);
    };
  }, [card, isThere]);
  return address;
}

function useSaidFits(fits: readonly ZoneFit[] | null): void {
  const before = useRef<ReadonlyMap<string, string> | null>(null);
  useEffect(() => {
    if (!fits) return;
    const now = new Map(fits.map(({ side, zone, says }) => [`${side} ${zone}`, says]));
    const changed = fits.filter(({ side, zone, says }) => {
      const was = before.current?.get(`${side} ${zone}`);
      return was !== undefined && was !== says;
    });
    before.current = now;
    if (changed.length > 0) saySoon(changed.map(({ zone, says }) => `${zone}: ${says}`).join('. '));
  }, [fits]);
}
