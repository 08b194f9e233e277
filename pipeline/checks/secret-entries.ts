import type { NamesFile } from '../../schema/index.js';
import type { Hold } from '../model/index.js';
import type { NameIndex } from '../text/index.js';
import type { Bearer } from './cast.js';
import { knownHold } from './known-hold.js';
import type { Subject } from './subject.js';

export type Secret = NonNullable<NamesFile['secrets']>[number];

/** What an entry of a secret stands for: the bearers of a name, or words in their forms. */
export interface SecretEntry {
  readonly bearers: readonly string[];
  /** Empty for a name. */
  readonly word: string;
}

/** A secret with what its entries stand for. */
export interface AskedSecret {
  readonly secret: Secret;
  /** Its position in the file. */
  readonly at: number;
  readonly groups: readonly (readonly SecretEntry[])[];
  /** Null if it names a level or an embargo that is not there. */
  readonly hold: Hold | null;
}

export function entriesOf(
  { content, schedule }: Subject,
  names: NameIndex<Bearer>,
): readonly AskedSecret[] {
  return (content.names?.value.secrets ?? []).map((secret, at) => ({
    secret,
    at,
    groups: secret.allOf.map((group) => group.map((entry) => entryOf(entry, names))),
    hold: knownHold(schedule, secret),
  }));
}

function entryOf(entry: string, names: NameIndex<Bearer>): SecretEntry {
  const [match] = names.find(entry);
  const whole = match?.from === 0 && match.to === entry.length && match.doubt === null;
  const bearers = whole ? match.of.filter(({ surname }) => !surname) : [];
  if (bearers.length > 0) return { bearers: bearers.map(({ name }) => name), word: '' };
  return { bearers: [], word: entry };
}
