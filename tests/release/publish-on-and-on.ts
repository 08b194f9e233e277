import { join } from 'node:path';

import { sendOut } from '../../pipeline/release/send-out.js';
import { realDisk, takeLock, thisProcess } from '../../pipeline/write/index.js';
import { LARGE, LARGER, recordOf, siteOf } from './small-site.js';

// Publishes two sites in turn into the folder that is named, until it is killed.
const root = process.argv[2] ?? '';
const out = join(root, 'site');
for (let times = 0; ; times += 1) {
  const data = times % 2 === 0 ? LARGE : LARGER;
  const lock = takeLock(realDisk, out, thisProcess, times);
  if (!lock.free) throw new Error('locked');
  sendOut(
    realDisk,
    {
      contentPath: join(root, 'content'),
      out,
      plain: false,
      at: 0,
      earlier: true,
      takeBack: false,
      mayKeep: () => true,
    },
    recordOf(data, times % 2 === 0 ? 'large' : 'larger'),
    siteOf(data),
  );
  lock.release();
  if (times === 1) process.stdout.write('going\n');
}
