import type { Command } from 'commander';

import { readProperty } from '../read/index.js';
import { select } from '../select/index.js';
import { timeline, timelineText } from '../status/index.js';
import { FINE, REFUSED, type Io } from './io.js';
import { contentOf, type Common } from './options.js';

/** `holdback reveals`: what opens at which lift. */
export function addReveals(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('reveals')
    .description('what opens at which lift (for the house)')
    .option('--format <format>', 'text or json', 'text')
    .action((_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<Common & { readonly format: string }>();
      const { content } = readProperty(contentOf(flags, io).folder);
      const released = select(content);
      if (!released) {
        io.err('some files cannot be read: run `holdback check` first\n');
        finish(REFUSED);
        return;
      }
      const steps = timeline(released);
      io.out(
        flags.format === 'json'
          ? `${JSON.stringify({ steps }, null, 2)}\n`
          : timelineText(steps, released.property.zone),
      );
      finish(FINE);
    });
}
