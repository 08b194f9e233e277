import type { Command } from 'commander';
import { createColors } from 'picocolors';

import { bioFits, check } from '../checks/index.js';
import { readProperty } from '../read/index.js';
import { readRehearsal } from '../release/index.js';
import { select } from '../select/index.js';
import { statusSheet, statusText } from '../status/index.js';
import { FINE, REFUSED, type Io } from './io.js';
import { contentOf, inColour, type Common } from './options.js';

/** `holdback status`: the status sheet. */
export function addStatus(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('status')
    .description('the state of each subset, and what opens when (for the house)')
    .option('--format <format>', 'text or json', 'text')
    .action((_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<Common & { readonly format: string }>();
      const { path, folder } = contentOf(flags, io);
      const { content, fonts } = readProperty(folder);
      const released = select(content);
      if (!released) {
        io.err('some files cannot be read: run `holdback check` first\n');
        finish(REFUSED);
        return;
      }
      const sheet = statusSheet(
        released,
        check(content, { fonts }),
        bioFits(content, fonts),
        readRehearsal(path, folder),
        io.now,
      );
      io.out(
        flags.format === 'json'
          ? `${JSON.stringify(sheet, null, 2)}\n`
          : statusText(sheet, released.property.zone, createColors(inColour(io)).red),
      );
      finish(FINE);
    });
}
