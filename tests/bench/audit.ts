import { mkdirSync, readFileSync, readdirSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { parse } from 'parse5';

import { auditSite } from '../../pipeline/audit/index.js';
import { view } from '../../pipeline/gate/index.js';
import { buildSite, publicData } from '../../pipeline/out/site/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { inTurn, type Result } from './measure.js';

/** The audit of a site of a thousand pages beside reading it and parsing its HTML once. */
export async function benchAudit(content: string): Promise<Result> {
  const { content: read } = readProperty(diskFolder(content));
  const released = select(read);
  const seen = released && view(released, { kind: 'public', at: DEMO_NOW });
  if (!seen) throw new Error('the bench property cannot be released');
  const data = publicData(seen, [], new Map(), false);
  const site = await buildSite(data, { images: new Map(), inThisProcess: true });
  const place = `${content}-site`;
  placeSite(place, site);
  const pages = [...site.keys()].filter((path) => path.endsWith('.html')).length;
  const audit = (): void => {
    const found = auditSite(readSite(place), read, DEMO_NOW);
    if (found.length > 0) throw new Error(JSON.stringify(found[0]));
  };
  const times = await inTurn(6, audit, () => parseAll(place));
  return {
    name: `audit, ${String(pages)} pages`,
    milliseconds: times.job,
    floor: 'reading, parsing the HTML once',
    floorMilliseconds: times.floor,
    goal: 3,
  };
}

function placeSite(place: string, site: ReadonlyMap<string, Uint8Array>): void {
  rmSync(place, { recursive: true, force: true });
  for (const [path, bytes] of site) {
    mkdirSync(dirname(join(place, path)), { recursive: true });
    writeFileSync(join(place, path), bytes);
  }
}

function readSite(place: string): Map<string, Uint8Array> {
  const walk = (at: string): string[] =>
    readdirSync(at)
      .map((name) => join(at, name))
      .flatMap((path) => (statSync(path).isDirectory() ? walk(path) : [path]));
  return new Map(walk(place).map((path) => [relative(place, path), readFileSync(path)]));
}

/** Whoever looks at finished pages must at least do this. */
function parseAll(place: string): void {
  for (const [path, bytes] of readSite(place)) {
    if (path.endsWith('.html')) parse(new TextDecoder().decode(bytes));
  }
}
