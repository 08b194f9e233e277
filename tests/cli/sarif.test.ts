import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';

import { RULES, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { REST, discreetReport } from '../../pipeline/release/discreet.js';
import { annotations, sarifLog } from '../../pipeline/status/index.js';
import type { CheckReport, Finding } from '../../schema/index.js';
import { DEMO_NOW } from '../demo/day.js';
import { placeContent } from '../demo/copy.js';
import { contentWith } from '../checks/look.js';
import { runMain } from './run-main.js';

const LAMP = 'one/cards/base/a2.md';
const FILES: Files = {
  [LAMP]: `---
number: "02"
name: The\u200b Lamp
spoiler: open
story: 1/4
accepted: [{ rule: control-character, words: "U+200B, zero width space", why: it is so, by: jonah }]
---
A lamp that nobody lit is burning.
`,
  'one/cards/base/a3.md':
    '---\nnumber: "1"\nname: The 5% Sill\nspoiler: open\nstory: 1/5\n---\nA sill.\n',
};

/**
 * The part of the SARIF 2.1.0 schema that a log of ours is held to, written from memory of the
 * OASIS standard: required properties, enumerations, regions that count from 1 (sections 3.13 to
 * 3.30, 3.55), and nothing that the objects do not have.
 */
const text = {
  type: 'object',
  required: ['text'],
  properties: { text: { type: 'string' }, markdown: { type: 'string' } },
  additionalProperties: false,
};
const from1 = { type: 'integer', minimum: 1 };
const region = {
  type: 'object',
  properties: { startLine: from1, startColumn: from1, endLine: from1, endColumn: from1 },
  required: ['startLine'],
  additionalProperties: false,
};
const artifactLocation = {
  type: 'object',
  properties: { uri: { type: 'string', pattern: '^[^\\s\\\\]+$' }, uriBaseId: { type: 'string' } },
  additionalProperties: false,
};
const location = {
  type: 'object',
  properties: {
    id: { type: 'integer', minimum: -1 },
    physicalLocation: {
      type: 'object',
      properties: { artifactLocation, region },
      required: ['artifactLocation'],
      additionalProperties: false,
    },
    logicalLocations: {
      type: 'array',
      items: { type: 'object', required: ['fullyQualifiedName'] },
    },
    message: text,
  },
  additionalProperties: false,
};
const level = { enum: ['none', 'note', 'warning', 'error'] };
const SARIF = {
  type: 'object',
  required: ['version', 'runs'],
  properties: {
    $schema: { type: 'string' },
    version: { const: '2.1.0' },
    runs: {
      type: 'array',
      items: {
        type: 'object',
        required: ['tool', 'results'],
        additionalProperties: false,
        properties: {
          tool: {
            type: 'object',
            required: ['driver'],
            properties: {
              driver: {
                type: 'object',
                required: ['name', 'version', 'rules'],
                properties: {
                  name: { const: 'holdback' },
                  version: { type: 'string', pattern: '^\\d+\\.\\d+\\.\\d+' },
                  semanticVersion: { type: 'string' },
                  rules: {
                    type: 'array',
                    uniqueItems: true,
                    items: {
                      type: 'object',
                      required: [
                        'id',
                        'shortDescription',
                        'fullDescription',
                        'defaultConfiguration',
                      ],
                      properties: {
                        id: { type: 'string' },
                        shortDescription: text,
                        fullDescription: text,
                        help: text,
                        defaultConfiguration: {
                          type: 'object',
                          required: ['level'],
                          properties: { level },
                        },
                        properties: { type: 'object' },
                      },
                      additionalProperties: false,
                    },
                  },
                },
                additionalProperties: false,
              },
            },
          },
          columnKind: { enum: ['utf16CodeUnits', 'unicodeCodePoints'] },
          originalUriBaseIds: { type: 'object' },
          invocations: {
            type: 'array',
            items: { type: 'object', required: ['executionSuccessful'] },
          },
          results: {
            type: 'array',
            items: {
              type: 'object',
              required: ['ruleId', 'ruleIndex', 'level', 'message', 'locations'],
              additionalProperties: false,
              properties: {
                ruleId: { type: 'string' },
                ruleIndex: { type: 'integer', minimum: 0 },
                level,
                message: text,
                locations: { type: 'array', minItems: 1, items: location },
                relatedLocations: { type: 'array', items: location },
                fixes: {
                  type: 'array',
                  items: {
                    type: 'object',
                    required: ['artifactChanges'],
                    properties: {
                      description: text,
                      artifactChanges: {
                        type: 'array',
                        minItems: 1,
                        items: {
                          type: 'object',
                          required: ['artifactLocation', 'replacements'],
                          properties: {
                            artifactLocation,
                            replacements: {
                              type: 'array',
                              minItems: 1,
                              items: {
                                type: 'object',
                                required: ['deletedRegion'],
                                properties: { deletedRegion: region, insertedContent: text },
                                additionalProperties: false,
                              },
                            },
                          },
                          additionalProperties: false,
                        },
                      },
                    },
                    additionalProperties: false,
                  },
                },
                suppressions: {
                  type: 'array',
                  items: {
                    type: 'object',
                    required: ['kind'],
                    properties: {
                      kind: { enum: ['inSource', 'external'] },
                      status: { enum: ['accepted', 'underReview', 'rejected'] },
                      justification: { type: 'string' },
                    },
                    additionalProperties: false,
                  },
                },
                partialFingerprints: { type: 'object', additionalProperties: { type: 'string' } },
              },
            },
          },
        },
      },
    },
  },
};
const isSarif = new Ajv2020({ strict: false, allErrors: true }).compile(SARIF);

/** What a log has to say, as far as these tests look into it. */
interface Log {
  readonly runs: readonly [
    {
      readonly tool: { readonly driver: { readonly rules: readonly { readonly id: string }[] } };
      readonly results: readonly Record<string, unknown>[];
    },
  ];
}

async function output(format: string, env: Readonly<Record<string, string>> = {}, files = FILES) {
  await using placed = await placeContent(new Map(sampleWith(files)));
  return await runMain(['check', '--format', format], placed.root, env);
}

describe('check --format sarif', () => {
  test('is a log of SARIF 2.1.0, the same bytes each time', async () => {
    const run = await output('sarif');
    const log: Log = JSON.parse(run.stdout);
    expect(run).toMatchObject({ code: 1, stderr: '' });
    expect(isSarif(log), JSON.stringify(isSarif.errors)).toBe(true);
    expect(log.runs[0].tool.driver.rules.map(({ id }) => id)).toEqual(RULES.map(({ id }) => id));
    expect(await output('sarif')).toEqual(run);
  });

  test('has every finding, its place, its fix, and what was accepted', async () => {
    const log: Log = JSON.parse((await output('sarif')).stdout);
    const { rules } = log.runs[0].tool.driver;
    const index = (rule: string): number => rules.findIndex(({ id }) => id === rule);
    const at = { uri: `content/${LAMP}`, uriBaseId: '%SRCROOT%' };
    const region = { startLine: 2, startColumn: 9, endLine: 2, endColumn: 13 };
    const print = expect.stringMatching(/^[0-9a-f]{32}:1$/);
    const own = (rule: string) => log.runs[0].results.filter(({ ruleId }) => ruleId === rule);
    expect(own('number-form')).toEqual([
      {
        ruleId: 'number-form',
        ruleIndex: index('number-form'),
        level: 'error',
        message: {
          text: 'the number 02 is not written as those of `base` are; found 02; expected 2',
        },
        locations: [{ physicalLocation: { artifactLocation: at, region } }],
        fixes: [
          {
            description: { text: 'Write "2"' },
            artifactChanges: [
              {
                artifactLocation: at,
                replacements: [{ deletedRegion: region, insertedContent: { text: '"2"' } }],
              },
            ],
          },
        ],
        suppressions: [],
        partialFingerprints: { 'holdback/v1': print },
      },
    ]);
    expect(own('control-character')).toMatchObject([
      {
        suppressions: [{ kind: 'inSource', status: 'accepted', justification: 'it is so (jonah)' }],
      },
    ]);
    expect(own('number-duplicate')).toMatchObject([
      {
        relatedLocations: [
          {
            id: 1,
            physicalLocation: {
              artifactLocation: { uri: 'content/one/cards/base/a1.md' },
              region: { startLine: 2, startColumn: 9 },
            },
          },
        ],
      },
    ]);
  });

  test('every rule’s failing examples give a log that is one', () => {
    const finding = (rule: string, at: number): Finding => ({
      rule,
      severity: 'warning',
      message: 'm',
      set: null,
      card: null,
      file: `a b/${String(at)}#%.md`,
      line: 1,
      column: 1,
      endLine: 1,
      endColumn: 1,
      related: [],
    });
    const findings = [
      ...RULES.map(({ id }, at) => finding(id, at)),
      finding('leak', 0),
      finding('leak', 0),
    ];
    const counts = { sets: 1, cards: 1, errors: 0, warnings: findings.length, accepted: 0 };
    const report: CheckReport = { ok: true, counts, findings };
    const log = sarifLog(report, {
      version: '1.2.3',
      rules: [],
      placed: (file) => file,
      fixText: () => null,
    });
    const told = JSON.stringify(log);
    expect(told).toContain('"uri":"a%20b/0%23%25.md"');
    expect(told).toMatch(/[0-9a-f]{32}:2"/);
  });

  test('fingerprints do not move with the lines', async () => {
    const prints = (log: Log): unknown[] =>
      log.runs[0].results.map(({ partialFingerprints }) => partialFingerprints);
    const one: Log = JSON.parse((await output('sarif')).stdout);
    const moved = { ...FILES, [LAMP]: String(FILES[LAMP]).replace('---\n', '---\n# a remark\n') };
    const two: Log = JSON.parse((await output('sarif', {}, moved)).stdout);
    expect(prints(two)).toEqual(prints(one));
    expect(two.runs[0].results).not.toEqual(one.runs[0].results);
  });
});

describe('check --format github', () => {
  test('annotates each finding where it stands, by its path in the repository', async () => {
    expect(await output('github')).toEqual({
      code: 1,
      stdout:
        '::error file=content/one/cards/base/a2.md,line=2,endLine=2,col=9,endColumn=13,title=number-form' +
        '::the number 02 is not written as those of `base` are; found 02; expected 2\n' +
        '::error file=content/one/cards/base/a3.md,line=2,endLine=2,col=9,endColumn=12,title=number-duplicate' +
        '::card base/a1 has the number 1 too; found 1; expected a number of its own, or `variation` if it is the same card told apart\n' +
        '4 cards in 1 set: 2 errors, 0 warnings, 1 accepted\n',
      stderr: '',
    });
  });

  test('escapes what would end a line, a property or a command', () => {
    const finding: Finding = {
      rule: 'a-rule',
      severity: 'warning',
      message: '50%\r\nof: a, b',
      set: null,
      card: null,
      file: 'a,b/c:d%.md',
      line: 1,
      column: 2,
      endLine: 3,
      endColumn: 1,
      related: [],
    };
    const counts = { sets: 1, cards: 1, errors: 0, warnings: 1, accepted: 0 };
    expect(annotations({ ok: true, counts, findings: [finding] }, (file) => file)).toBe(
      '::warning file=a%2Cb/c%3Ad%25.md,line=1,endLine=3,title=a-rule::50%25%0D%0Aof: a, b\n',
    );
  });

  test('from within the content folder names the files alone', async () => {
    await using placed = await placeContent(new Map(sampleWith(FILES)));
    const run = await runMain(['check', '--format', 'github', '--content', '.'], placed.content);
    expect(run.stdout).toContain('::error file=one/cards/base/a2.md,');
  });
});

describe('where others read the log', () => {
  const held: Files = {
    [LAMP]: '---\nnumber: "02"\nname: The Drowned Bell\nspoiler: later\nstory: 1/4\n---\nA bell.\n',
  };
  const open: Files = {
    [LAMP]: String(FILES[LAMP])
      .replace('"02"', '"2"')
      .replace(/^accepted.*\n/m, ''),
  };

  test.each(['sarif', 'github'])('%s says one sentence of what is held', async (format) => {
    const run = await output(format, { CI: 'true' }, held);
    expect(run.code).toBe(1);
    expect(run.stdout).toContain(REST);
    expect(run.stdout).not.toContain('Drowned');
    if (format === 'sarif') {
      const log: Log = JSON.parse(run.stdout);
      expect(isSarif(log)).toBe(true);
      expect(log.runs[0].results).toEqual([]);
    } else expect(run.stdout).toBe(`::error::${REST}\n`);
    const other = { [LAMP]: String(held[LAMP]).replaceAll('Bell', 'Ninth Gate') };
    expect(await output(format, { CI: 'true' }, other)).toEqual(run);
  });

  test('what is public is annotated by its number and paragraph, without a file', async () => {
    expect(discreetReport(contentWith(open), DEMO_NOW, true).findings.length).toBe(1);
    const run = await output('github', { CI: 'true' }, open);
    expect(run.stdout).toBe(
      `::error title=control-character::one/base 2, name\n::error::${REST}\n`,
    );
    const log = await output('sarif', { CI: 'true' }, open);
    const parsed: Log = JSON.parse(log.stdout);
    expect(isSarif(parsed), JSON.stringify(isSarif.errors)).toBe(true);
    expect(parsed.runs[0].results).toMatchObject([
      {
        ruleId: 'control-character',
        message: { text: 'one/base 2, name: control-character' },
        locations: [{ logicalLocations: [{ fullyQualifiedName: 'one/base/2' }] }],
      },
    ]);
    expect(JSON.stringify(parsed.runs[0].results)).not.toMatch(/a2|content|Line/);
  });
});
