import { writeInstant } from '../model/index.js';
import { appended, ledgerText } from '../review/index.js';
import { writeAll } from '../write/index.js';
import { readGround } from './ground.js';
import { HOUSE_ROLES } from './house.js';
import { octetsOf } from './kept-files.js';
import { LEDGER, locked, refused, type Place, type Refused } from './lock.js';

/** A packet on which no more decisions are to be taken. */
export interface WithdrawOrder extends Place {
  readonly packet: string;
  /** Who withdraws it, by id: a person of the house. */
  readonly by: string;
  readonly why: string;
}

/** Puts into the ledger that a packet was withdrawn. */
export function withdrawPacket(order: WithdrawOrder): Promise<{ readonly done: true } | Refused> {
  const { contentPath, packet, by, now } = order;
  return locked(order, (disk) => {
    const ground = readGround(contentPath);
    if ('done' in ground) return ground;
    const why = order.why.trim();
    const wrong = wrongWith(ground, { packet, by, why });
    if (wrong !== null) return refused(wrong);
    const at = writeInstant(now, ground.property.zone);
    const ledger = appended(ground.review.ledger, [{ kind: 'withdrawn', at, packet, by, why }]);
    writeAll(disk, contentPath, new Map([[LEDGER, octetsOf(ledgerText(ledger))]]));
    return { done: true };
  });
}

function wrongWith(
  { review, content }: Exclude<ReturnType<typeof readGround>, Refused>,
  { packet, by, why }: { readonly packet: string; readonly by: string; readonly why: string },
): string | null {
  const about = review.ledger.entries.filter(
    (entry) => 'packet' in entry && entry.packet === packet,
  );
  const person = content.people?.value.people.find(({ id }) => id === by);
  if (!about.some(({ kind }) => kind === 'submitted')) return `no packet ${packet} was sent`;
  if (about.some(({ kind }) => kind === 'withdrawn')) return `${packet} was withdrawn already`;
  if (!person) return `people.yaml knows no ${by}`;
  if (!HOUSE_ROLES.includes(person.role)) return `${by} is not of the house: --by names who is`;
  return why === '' ? '--why says nothing: say why it is withdrawn' : null;
}
