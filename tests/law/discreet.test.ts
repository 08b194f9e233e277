import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { main } from '../../pipeline/cli/index.js';
import { REST } from '../../pipeline/release/index.js';
import { placeContent } from '../demo/copy.js';
import { broken, toldOf, whileRulesSpeak, withFonts } from './discreet.js';
import { diceOf, draftOf, inSomeOrder } from './edit.js';
import type { Eye } from './held.js';
import { editsFor } from './hidden-edits.js';
import { filesOf, type Plain } from './plain.js';
import { looking } from './property.js';

/** So many kinds of edits are made on top of one another. */
const TOGETHER = 40;

const FINE: Said = { code: 0, out: 'nothing found\n', err: '' };
const TOLD: Said = { code: 1, out: `${REST}\n`, err: '' };
const REFUSED: Said = {
  code: 1,
  out: '',
  err: 'nothing was published: something has a finding; run the check in private\n',
};

/** What comes through of a finding about something held. */
const SAID = {
  nothing: { check: FINE, strict: FINE, published: true },
  /** An error that stops no release, since it is about words that are not shown. */
  elsewhere: { check: TOLD, strict: TOLD, published: true },
  warning: { check: FINE, strict: TOLD, published: true },
  error: { check: TOLD, strict: TOLD, published: false },
} as const;

/** The second card of the sample property is a placeholder then. */
const LAKE_NOW = Date.parse('2027-01-01T00:00:00Z');

const FRONT = 'number: "2"\nname: The Lamp\nspoiler: later\nstory: 1/4\n';
const card = (more: string, bio: string) => `---\n${FRONT}${more}---\n${bio}\n`;
const BIO = 'A lamp that nobody lit is burning.';

/** Files of a card that is held, and what of them comes through. */
const HELD_CARDS = {
  'nothing wrong': { body: card('', BIO), stage: 'locked', says: 'nothing' },
  'other words, and keys of the house': {
    body: card('state: draft\nremark: To be redrawn\n', 'The bell is under the lake.'),
    stage: 'writing',
    says: 'nothing',
  },
  'no words': { body: card('', ''), stage: 'locked', says: 'elsewhere' },
  'no words yet': { body: card('', ''), stage: 'writing', says: 'warning' },
  'an unknown writer': { body: card('writer: nobody\n', BIO), stage: 'locked', says: 'error' },
  'an unknown key': { body: card('rermark: So\n', BIO), stage: 'locked', says: 'error' },
  'markup that no copy may have': {
    body: card('', '<b>A lamp</b>'),
    stage: 'locked',
    says: 'error',
  },
  'a file that is no card': { body: 'A lamp', stage: 'writing', says: 'error' },
} satisfies Record<string, { body: string; stage: 'writing' | 'locked'; says: keyof typeof SAID }>;

describe('where others read the log', () => {
  test('a check says the same after hidden edits', () => {
    let told = 0;
    fc.assert(
      fc.property(looking('public'), fc.nat(), ({ plain, eye }, seed) => {
        const bad = broken(plain, eye, diceOf(seed, 'broken'));
        const before = whileRulesSpeak(() => toldOf(bad, eye.at));
        const after = whileRulesSpeak(() => toldOf(hiddenlyEdited(bad, eye, seed), eye.at));
        expect(after).toEqual(before);
        told += before.findings.length;
      }),
      { numRuns: 6, endOnFailure: true },
    );
    expect(told).toBeGreaterThan(10);
  });

  test('the commands say the same after hidden edits, and end alike', async () => {
    const cases = fc.sample(looking('public'), { numRuns: 2, seed: 20270604 });
    for (const [seed, { plain, eye }] of cases.entries()) {
      const bad = broken(plain, eye, diceOf(seed, 'broken'));
      const before = await saidOf(filesOf(withFonts(bad)), eye.at);
      const after = await saidOf(filesOf(withFonts(hiddenlyEdited(bad, eye, seed))), eye.at);
      expect(after).toEqual(before);
      expect(before.check).toMatchObject({ code: 1, err: '' });
      expect(before.check.out).toContain(REST);
    }
  }, 120_000);
});

describe('of something held the commands tell one bit: whether it makes them fail', () => {
  let usual: Said;
  beforeAll(async () => {
    const { body, stage } = HELD_CARDS['nothing wrong'];
    usual = (await saidOf(lake(body, stage), LAKE_NOW)).publish;
    expect(usual).toMatchObject({ code: 0, err: '' });
    expect(usual.out).toMatch(/^published: \d+ files as of 2026-09-01T\S+ in site\n$/);
  });

  test.each(Object.entries(HELD_CARDS))('%s', async (_, { body, stage, says }) => {
    const said = await saidOf(lake(body, stage), LAKE_NOW);
    const { check, strict, published } = SAID[says];
    expect(said.check).toEqual(check);
    expect(said.strict).toEqual(strict);
    expect(said.publish).toEqual(published ? usual : REFUSED);
  });
});

describe('where something public is wrong as well', () => {
  const odd = `one/base 1, name: mixed-script\n${REST}\n`;

  test('it is told, and beside it no more than whether a file cannot be read', async () => {
    const outs = await Promise.all(
      Object.values(HELD_CARDS).map(async ({ body, stage, says }) => {
        const files = new Map(lake(body, stage));
        const first = files.get('one/cards/base/a1.md') ?? '';
        files.set('one/cards/base/a1.md', first.replace('The Quay', 'The Qu\u0430y'));
        const { check, strict, json } = await saidOf(files, LAKE_NOW);
        expect([check.code, strict, json.code]).toEqual([1, check, 1]);
        return [says, check.out];
      }),
    );
    const whole = outs.filter(([says]) => says !== 'error').map(([, out]) => out);
    expect(new Set(whole)).toEqual(new Set([odd]));
    expect(new Set(outs.map(([, out]) => out))).toEqual(new Set([odd, `${REST}\n`]));
  });
});

/** The content after hidden edits of several kinds. */
function hiddenlyEdited(plain: Plain, eye: Eye, seed: number): Plain {
  const draft = draftOf(plain);
  for (const { change, name } of inSomeOrder(editsFor('public'), seed).slice(0, TOGETHER)) {
    change(draft, eye, diceOf(seed, name));
  }
  return draft;
}

interface Said {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

type Commands = Readonly<Record<'check' | 'strict' | 'json' | 'publish', Said>>;

/** What the commands say of a content folder on a build machine, at an instant. */
async function saidOf(files: ReadonlyMap<string, string>, now: number): Promise<Commands> {
  await using placed = await placeContent(files);
  const run = async (...argv: string[]): Promise<Said> => {
    const said = { out: '', err: '' };
    const code = await main(argv, {
      now,
      cwd: placed.root,
      env: { CI: 'true' },
      elapsed: () => 0,
      random: (octets) => new Uint8Array(octets),
      terminal: false,
      out: (text) => void (said.out += text),
      err: (text) => void (said.err += text),
    });
    return { code, ...said };
  };
  return {
    check: await run('check'),
    strict: await run('check', '--strict'),
    json: await run('check', '--format', 'json'),
    publish: await run('publish', '--out', 'site'),
  };
}

function lake(body: string, stage: 'writing' | 'locked'): ReadonlyMap<string, string> {
  const files = sampleWith({ 'one/cards/base/a2.md': body });
  const plan = files.get('one/plan.yaml') ?? '';
  return new Map(files).set('one/plan.yaml', plan.replace('stage: locked', `stage: ${stage}`));
}
