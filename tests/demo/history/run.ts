import { cpSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { makeHistory } from './make.js';

/** `npm run history`: makes the demo's approval history anew, and puts it into `content/review`. */
const root = fileURLToPath(new URL('../../../', import.meta.url));
const built: typeof import('../../../pipeline/cli/index.js') = await import(
  new URL('../../../dist/pipeline/cli/index.js', import.meta.url).href
);
const made = await makeHistory(built.main, join(root, 'content'), join(root, 'out', 'history'));
const place = join(root, 'content', 'review');
rmSync(place, { recursive: true, force: true });
cpSync(made, place, { recursive: true });
process.stdout.write('content/review was made anew\n');
