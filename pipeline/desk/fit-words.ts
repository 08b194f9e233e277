import type { Fit } from '../typeset/index.js';
import type { ZoneFit } from './protocol.js';

/** How a text fits, in the words of the house. */
export function zoneFit(zone: string, side: ZoneFit['side'], fit: Fit): ZoneFit {
  return {
    zone,
    side,
    says: sayFit(fit),
    fits: fit.fits,
    oversetLines: fit.overset,
    freeLines: fit.free,
    wordsToCut: fit.wordsToCut,
    size: fit.size,
    shrunk: fit.shrunk,
  };
}

function sayFit({ overset, wide, free, lineCount }: Fit): string {
  const over = overset > 0 ? [`overset by ${lines(overset)}`] : [];
  const sticking = wide > 0 ? [`${lines(wide)} wider than the zone`] : [];
  const faults = [...over, ...sticking];
  if (faults.length > 0) return faults.join(', ');
  if (lineCount === 0) return 'empty';
  return free === 0 ? 'no line free' : `${lines(free)} free`;
}

function lines(count: number): string {
  return `${String(count)} ${count === 1 ? 'line' : 'lines'}`;
}
