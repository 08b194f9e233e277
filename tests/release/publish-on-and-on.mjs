// node publish-on-and-on.mjs <folder> <file of sites>: publishes the sites of a JSON file in turn
// into the folder, by what is built, until it is killed.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const [root = '', sitesFile = ''] = process.argv.slice(2);
/** @param {string} path */
const built = (path) => import(new URL(`../../dist/pipeline/${path}`, import.meta.url).href);
const [{ sendOut }, { realDisk, takeLock, thisProcess }] = await Promise.all([
  built('release/send-out.js'),
  built('write/index.js'),
]);

/** @type {{ record: object, files: Record<string, string> }[]} */
const stated = JSON.parse(readFileSync(sitesFile, 'utf8'));
const sites = stated.map(({ record, files }) => ({
  record,
  files: new Map(Object.entries(files).map(([path, text]) => [path, Buffer.from(text)])),
}));
const out = join(root, 'site');
const order = { contentPath: join(root, 'content'), out, plain: false, at: 0 };
for (let times = 0; ; times += 1) {
  const { record, files } = sites[times % sites.length] ?? { record: {}, files: new Map() };
  const lock = takeLock(realDisk, out, thisProcess, times);
  if (!lock.free) throw new Error('locked');
  const how = { earlier: true, takeBack: false, mayKeep: () => true };
  sendOut(realDisk, { ...order, ...how }, record, files);
  lock.release();
  if (times === 1) process.stdout.write('going\n');
}
