import type { Command } from 'commander';

import type { RevealsReport } from '../../schema/index.js';
import { writeInstant, type Instant } from '../model/index.js';
import { readProperty } from '../read/index.js';
import { select, type Released } from '../select/index.js';
import {
  ALWAYS,
  differenceIn,
  differenceText,
  timeline,
  timelineCalendar,
  timelinePicture,
  timelineText,
  type Changes,
  type Stretch,
} from '../status/index.js';
import { FINE, REFUSED, UsageError, type Io } from './io.js';
import { contentOf, instantFrom, oneOf, type Common } from './options.js';
import { countedFolder, withProgress, type Working } from './progress.js';

const FORMATS = ['text', 'json', 'ics', 'svg'] as const;
type Format = (typeof FORMATS)[number];

interface RevealsFlags extends Common {
  readonly format: Format;
  readonly from?: string;
  readonly to?: string;
}

/** `holdback reveals`: what opens at which lift. */
export function addReveals(program: Command, io: Io, finish: (code: number) => void): void {
  program
    .command('reveals')
    .description('what opens at which lift (for the house)')
    .option('--from <instant>', 'what opens after it')
    .option('--to <instant>', 'what opens up to it; with --from, the difference of the two')
    .option(
      '--format <format>',
      'text, json, ics (a calendar) or svg (a picture)',
      oneOf('format', FORMATS),
      'text',
    )
    .action(async (_flags: unknown, command: Command) => {
      const flags = command.optsWithGlobals<RevealsFlags>();
      finish(
        await withProgress(io, (progress, whole) => runReveals(flags, io, { progress, whole })),
      );
    });
}

async function runReveals(
  flags: RevealsFlags,
  io: Io,
  { progress, whole }: Working,
): Promise<number> {
  const within = stretchOf(flags, io);
  const { folder } = contentOf(flags, io);
  const released = await whole(() => select(readProperty(countedFolder(folder, progress)).content));
  if (!released) {
    io.err('some files cannot be read: run `holdback check` first\n');
    return REFUSED;
  }
  io.out(await whole(() => inFormat(flags.format, released, within, io.now)));
  return FINE;
}

function stretchOf({ from, to }: RevealsFlags, io: Io): Stretch {
  const within = {
    from: from === undefined ? ALWAYS.from : instantFrom(from, io, 'from'),
    to: to === undefined ? ALWAYS.to : instantFrom(to, io, 'to'),
  };
  if (within.from >= within.to) throw new UsageError('--from must be earlier than --to');
  return within;
}

/** With both ends given, text and JSON tell the exact difference between them. */
function inFormat(format: Format, released: Released, within: Stretch, now: Instant): string {
  const { property } = released;
  const steps = timeline(released, within);
  const isBetween = within.from !== ALWAYS.from && within.to !== ALWAYS.to;
  const difference = isBetween ? differenceIn(released, within) : null;
  switch (format) {
    case 'text':
      return difference
        ? differenceText(difference, within, property.zone)
        : timelineText(steps, property.zone);
    case 'json': {
      const say = (at: Instant): string => writeInstant(at, property.zone);
      const between = difference && {
        from: say(within.from),
        to: say(within.to),
        ...mutable(difference),
      };
      const report: RevealsReport = {
        steps: steps.map((step) => ({
          ...step,
          ...mutable(step),
          at: say(step.at),
          opens: [...step.opens],
          inShops: [...step.inShops],
        })),
        difference: between,
      };
      return `${JSON.stringify(report, null, 2)}\n`;
    }
    case 'ics':
      return timelineCalendar(steps, property, now);
    case 'svg':
      return timelinePicture(steps, property);
  }
}

function mutable({
  titles,
  names,
  cards,
}: Changes): Pick<RevealsReport['steps'][number], keyof Changes> {
  return {
    titles: [...titles],
    names: [...names],
    cards: cards.map((card) => ({ ...card, fields: [...card.fields] })),
  };
}
