import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { view } from '../../pipeline/gate/index.js';
import { loadFonts, ownTheme, publicData, renderSite } from '../../pipeline/out/site/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { inTurn, wallTime, type Result } from './measure.js';

/** The Eleventy stage beside a bare Eleventy that writes the same tree from finished strings. */
export async function benchSite(content: string): Promise<Result> {
  const { content: read } = readProperty(diskFolder(content));
  const released = select(read);
  const seen = released && view(released, { kind: 'public', at: DEMO_NOW });
  if (!seen) throw new Error('the bench property cannot be released');
  const data = publicData(seen, new Map(), false);
  const fonts = (await loadFonts()).map(({ face }) => face);
  const job = () => renderSite(data, { theme: ownTheme(), fonts });
  const pages = await job();
  const bare = prepareBare(pages);
  try {
    const times = await inTurn(3, job, () => runBare(bare), wallTime);
    return {
      name: `Eleventy stage, ${String(pages.size)} files`,
      milliseconds: times.job,
      floor: 'bare Eleventy, same tree',
      floorMilliseconds: times.floor,
      goal: 2,
    };
  } finally {
    rmSync(bare, { recursive: true, force: true });
  }
}

const modules = fileURLToPath(new URL('../../node_modules', import.meta.url));

const BARE_TEMPLATE = `export default class {
  data() {
    return { pagination: { data: 'files', size: 1, alias: 'file' }, permalink: ({ file }) => file.path };
  }
  render({ file }) {
    return file.text;
  }
}
`;

const BARE_RUN = `import Eleventy from '@11ty/eleventy';
import { readFileSync } from 'node:fs';
const files = JSON.parse(readFileSync('files.json', 'utf8'));
const eleventy = new Eleventy('input', 'output', {
  configPath: false,
  quietMode: true,
  config: (config) => config.addGlobalData('files', files),
});
eleventy.disableLogger();
await eleventy.write();
`;

function prepareBare(pages: ReadonlyMap<string, Uint8Array>): string {
  const folder = mkdtempSync(join(tmpdir(), 'bare-'));
  const files = [...pages].map(([path, bytes]) => ({
    path,
    text: new TextDecoder().decode(bytes),
  }));
  mkdirSync(join(folder, 'input'));
  writeFileSync(join(folder, 'package.json'), '{"type":"module"}');
  writeFileSync(join(folder, 'files.json'), JSON.stringify(files));
  writeFileSync(join(folder, 'run.js'), BARE_RUN);
  writeFileSync(join(folder, 'input', 'all.11ty.js'), BARE_TEMPLATE);
  symlinkSync(modules, join(folder, 'node_modules'));
  return folder;
}

function runBare(folder: string): void {
  rmSync(join(folder, 'output'), { recursive: true, force: true });
  const run = spawnSync(process.execPath, ['run.js'], {
    cwd: folder,
    env: { ELEVENTY_SKIP_ESM_RESOLVER: '1' },
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
}
