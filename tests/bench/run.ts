import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

import { RULES, check } from '../../pipeline/checks/index.js';
import type { CheckReport } from '../../schema/index.js';
import {
  diskFolder,
  readContent,
  readProperty,
  keptDictionaries,
} from '../../pipeline/read/index.js';
import { benchAudit } from './audit.js';
import { benchDesk } from './desk.js';
import { benchChangedBio, benchFit } from './fit.js';
import { benchFilter } from './filter.js';
import { readingFloor } from './floor.js';
import { benchTyping } from './lsp.js';
import { inTurn, sayResult, type Result } from './measure.js';
import { benchPacket } from './packet.js';
import { benchPacks } from './packs.js';
import { benchProof } from './proof.js';
import { benchProperty } from './property.js';
import { benchSecondPublish, benchStage, partsOfRelease, stageGrowth } from './publish.js';

/**
 * `npm run bench`: every figure is a ratio to a floor or a peer in the same run, since machines are
 * noisy. Exit 1 if a goal is missed. `npm run bench -- check` runs one part.
 */
const place = fileURLToPath(new URL('../../out/bench/', import.meta.url));
const BASIC = new Set(['files', 'levels', 'numbers', 'counts']);
/** To know that an acceptance is unused every other rule must have looked: it is left out here. */
const basicRules = RULES.filter(
  ({ id, about }) => BASIC.has(about) && id !== 'accepted-unused',
).map((rule) => rule.id);

function placeProperty(cards: number): string {
  const content = join(place, String(cards));
  rmSync(content, { recursive: true, force: true });
  for (const [path, text] of benchProperty(cards)) {
    mkdirSync(dirname(join(content, path)), { recursive: true });
    writeFileSync(join(content, path), text);
  }
  return content;
}

/** The rules that need no fonts, and so none are opened. */
function checkBasics(content: string): void {
  const read = readContent(diskFolder(content));
  expectNothing(
    check(read, { fonts: new Map(), dictionaries: keptDictionaries, only: basicRules }),
  );
}

function checkAll(content: string): void {
  const { content: read, fonts } = readProperty(diskFolder(content));
  expectNothing(check(read, { fonts, dictionaries: keptDictionaries }));
}

function expectNothing(report: CheckReport): void {
  if (report.findings.length > 0) throw new Error(JSON.stringify(report.findings[0]));
}

async function benchCheck(): Promise<{ results: Result[]; growth: number; megabytes: number }> {
  const results: Result[] = [];
  const whole: number[] = [];
  for (const [cards, rounds] of [
    [1000, 12],
    [10_000, 4],
  ] as const) {
    const content = placeProperty(cards);
    const floor = () => {
      readingFloor(content);
    };
    const basic = await inTurn(rounds, () => checkBasics(content), floor);
    const every = await inTurn(rounds, () => checkAll(content), floor);
    const common = { floor: 'reading and parsing' } as const;
    results.push(
      {
        ...common,
        name: `check, files to counts, ${String(cards)} cards`,
        milliseconds: basic.job,
        floorMilliseconds: basic.floor,
        goal: 1.3,
      },
      {
        ...common,
        name: `check, every rule, ${String(cards)} cards`,
        milliseconds: every.job,
        floorMilliseconds: every.floor,
        goal: 2,
      },
    );
    whole.push(every.job);
  }
  return { results, growth: (whole[1] ?? 0) / (whole[0] ?? 1), megabytes: peakMemory() };
}

/** Peak resident memory in MB of one check of 10,000 cards, in a process of its own. */
function peakMemory(): number {
  const script = fileURLToPath(new URL('memory.ts', import.meta.url));
  const run = spawnSync(process.execPath, ['--import', 'tsx', script, join(place, '10000')], {
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(run.stderr);
  return Number(run.stdout);
}

const asked = process.argv[2];
const wants = (part: string): boolean => asked === undefined || asked === part;
const say = (line: string, met: boolean): void => {
  process.stdout.write(`${line}\n`);
  if (!met) process.exitCode = 1;
};
const sayAll = (results: readonly Result[]): void => {
  for (const result of results) {
    say(sayResult(result), result.milliseconds / result.floorMilliseconds <= result.goal);
  }
};

if (wants('check')) {
  const { results, growth, megabytes } = await benchCheck();
  sayAll(results);
  say(
    `check, 10,000 cards beside 1,000                ${growth.toFixed(2)}  goal 12.00`,
    growth <= 12,
  );
  say(
    `check, 10,000 cards: peak memory                ${megabytes.toFixed(0)} MB  goal 500 MB`,
    megabytes < 500,
  );
}
if (wants('fit')) {
  const content = placeProperty(10_000);
  sayAll([await benchFit(content)]);
  const milliseconds = benchChangedBio(content);
  say(
    `a changed bio set anew                          ${milliseconds.toFixed(2)} ms  goal 5 ms`,
    milliseconds < 5,
  );
}
if (wants('site')) {
  const content = placeProperty(1000);
  sayAll([await benchStage(content), await benchSecondPublish(content)]);
  for (const [name, milliseconds] of await partsOfRelease(content)) {
    say(`  ${name.padEnd(46)} ${milliseconds.toFixed(0)} ms`, true);
  }
  const growth = await stageGrowth(content, placeProperty(10_000));
  say(
    `Eleventy stage, 10,000 cards beside 1,000       ${growth.toFixed(2)}  goal 12.00`,
    growth <= 12,
  );
}
if (wants('filter')) {
  const { milliseconds, beside } = await benchFilter();
  say(
    `a keystroke in the find box, script alone       ${milliseconds.toFixed(2)} ms  goal 16 ms`,
    milliseconds < 16,
  );
  sayAll([beside]);
}
if (wants('lsp')) {
  const { typing, beside } = await benchTyping(placeProperty(1000));
  say(
    `a typed letter to its diagnostics, 1,000 cards  ${typing.median.toFixed(1)} ms, p95 ${typing.p95.toFixed(1)} ms  goal 50 ms`,
    typing.median <= 50,
  );
  sayAll([beside]);
}
if (wants('desk')) {
  const { median: middle, p95, beside } = await benchDesk(placeProperty(1000));
  say(
    `a letter typed at the desk, 1,000 cards         ${middle.toFixed(1)} ms, p95 ${p95.toFixed(1)} ms  goal 50 ms`,
    p95 <= 50,
  );
  sayAll([beside]);
}
if (wants('audit')) sayAll([await benchAudit(placeProperty(1000))]);
if (wants('proof')) sayAll([await benchProof(placeProperty(300))]);
if (wants('packet')) {
  const { megabytes, opening } = await benchPacket(placeProperty(200));
  say(
    `packet of 200 cards, sealed                     ${megabytes.toFixed(2)} MB  goal 3 MB`,
    megabytes < 3,
  );
  sayAll([opening]);
}
if (wants('packs')) {
  const { completing, report } = await benchPacks();
  for (const [name, { job, floor }, goal] of [
    ['682 cards in fives, whole                      ', completing, 50],
    ['print run of 20,000 cases, whole report        ', report, 1000],
  ] as const) {
    say(
      `${name} ${job.toFixed(1)} ms  goal ${String(goal)} ms  beside ${floor.toFixed(1)} ms (plain sums)`,
      job < goal,
    );
  }
}
