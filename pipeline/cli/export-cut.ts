import type { Audience } from '../gate/index.js';
import { readProperty } from '../read/index.js';
import { select, type Released } from '../select/index.js';
import type { FontShelf } from '../typeset/index.js';
import { audienceOf } from './audience.js';
import { UsageError, type Io } from './io.js';
import { contentOf, instantFrom, type Common } from './options.js';
import { countedFolder, type Progress, type Working } from './progress.js';

export interface CutFlags extends Common {
  readonly for?: string;
  readonly at?: string;
  readonly preview?: boolean;
}

/** A property and whom an export of it is for. */
export interface Cutting {
  readonly released: Released;
  readonly fonts: FontShelf;
  readonly audience: Audience;
  /** It is of an instant to come. */
  readonly preview: boolean;
}

/** What an export is made from and with. */
export interface Making {
  readonly cutting: Cutting;
  readonly io: Io;
  readonly working: Working;
}

/**
 * Reads the property for an export, or says why there is none.
 * @throws UsageError for options that do not go together.
 */
export function cuttingOf(
  flags: CutFlags,
  io: Io,
  progress: Progress,
): Cutting | { readonly refused: string } {
  if (flags.for !== undefined && flags.at !== undefined) {
    throw new UsageError('--for and --at: a file is for a person or for the public');
  }
  const at = flags.at === undefined ? null : instantFrom(flags.at, io);
  const preview = at !== null && at > io.now;
  if (preview && flags.preview !== true) {
    return {
      refused: 'that instant is still to come: --preview writes it, and says so in the file',
    };
  }
  const { content, fonts } = readProperty(countedFolder(contentOf(flags, io).folder, progress));
  const released = select(content);
  if (!released) {
    return {
      refused: 'some files cannot be read, so there is no export: run `holdback check` first',
    };
  }
  const audience: Audience =
    at === null ? audienceOf(flags.for, released, io) : { kind: 'public', at };
  return { released, fonts, audience, preview };
}
