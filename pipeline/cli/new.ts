import type { Command } from 'commander';

import type { Io } from './io.js';
import { addNewCards } from './new-cards.js';
import { addNewSet } from './new-set.js';

/** `holdback new`: what there is to start from. */
export function addNew(program: Command, io: Io, finish: (code: number) => void): void {
  const group = program.command('new').description('files to start from (for the house)');
  for (const add of [addNewSet, addNewCards]) add(group, io, finish);
}
