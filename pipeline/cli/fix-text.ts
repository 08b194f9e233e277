import type { Fixing } from '../mend/index.js';
import { count, findingsText } from './report-text.js';

/** Where a diff would be read by others. */
export const NO_FIX_HERE =
  '--fix shows the text that it changes, and others may read this log: nothing was changed. Run it in private, or with --no-discreet.\n';

/** How much is written, or would be. */
export function fixedText({ made, files }: Fixing, isDryRun: boolean): string {
  if (made === 0) return 'nothing can be fixed for certain\n';
  const what = `${count(made, 'fix', 'fixes')} in ${count(files.size, 'file')}`;
  return isDryRun ? `${what}; nothing is written: --dry-run\n` : `${what} written\n`;
}

/** What could be fixed and is left to a person, with the reason. */
export function leftText({ crowded, linked, worse }: Fixing): string {
  return [
    ...(crowded.length === 0
      ? []
      : [
          `these fixes overlap or touch one another, so none of them is made:\n${findingsText(crowded)}`,
        ]),
    ...(linked.length === 0
      ? []
      : [
          `these stand in a file that is a link, which is not written to:\n${findingsText(linked)}`,
        ]),
    ...(worse.length === 0
      ? []
      : [`other fixes are not made, since \`check\` would then find:\n${findingsText(worse)}`]),
  ].join('');
}
