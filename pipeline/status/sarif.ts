import type { CheckReport, DiscreetReport, Finding } from '../../schema/index.js';
import type { RulePage } from '../checks/index.js';
import { sha256 } from '../review/index.js';
import { findingWords } from './finding-words.js';
import { ruleMarkdown } from './rule-markdown.js';
import { saySeverity } from './rule-lines.js';
import { ruleText } from './rule-text.js';

/** What a log is made with, besides its findings. */
export interface SarifGround {
  readonly version: string;
  readonly rules: readonly RulePage[];
  /** The path of a file as the repository knows it. */
  readonly placed: (file: string) => string;
  /** The exact text that a finding's fix puts in its place; null for one without a fix. */
  readonly fixText: (finding: Finding) => string | null;
}

const SCHEMA =
  'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json';

/** The folder that the command ran in; whoever reads the log knows where that is. */
const BASE = '%SRCROOT%';

/**
 * Findings as a log of the Static Analysis Results Interchange Format (OASIS SARIF 2.1.0): every
 * finding, those that were accepted as suppressed. The same findings give the same bytes.
 */
export function sarifLog(report: CheckReport, ground: SarifGround): object {
  const fingerprints = fingerprintsOf(report.findings);
  return logOf(ground, {
    results: report.findings.map((finding) => ({
      ...resultOf(finding, ground),
      partialFingerprints: { 'holdback/v1': fingerprints.get(finding) },
    })),
  });
}

/** What of it the public may know: no file, no line of a file; one sentence for the rest. */
export function discreetSarif(
  { findings, rest }: DiscreetReport,
  ground: Pick<SarifGround, 'version' | 'rules'>,
): object {
  return logOf(ground, {
    invocations: [
      {
        executionSuccessful: true,
        toolExecutionNotifications:
          rest === null ? [] : [{ level: 'error', message: { text: rest } }],
      },
    ],
    results: findings.map(({ rule, severity, set, subset, number, line }) => {
      const where = line === 0 ? 'name' : `paragraph ${String(line)}`;
      return {
        ...ruleOf(rule, ground),
        level: severity,
        message: { text: `${set}/${subset} ${number}, ${where}: ${rule}` },
        locations: [
          {
            logicalLocations: [
              { fullyQualifiedName: `${set}/${subset}/${number}`, kind: 'object' },
            ],
          },
        ],
      };
    }),
  });
}

function logOf({ version, rules }: Pick<SarifGround, 'version' | 'rules'>, run: object): object {
  return {
    $schema: SCHEMA,
    version: '2.1.0',
    runs: [
      {
        tool: {
          driver: { name: 'holdback', version, semanticVersion: version, rules: rules.map(ofRule) },
        },
        columnKind: 'utf16CodeUnits',
        originalUriBaseIds: {
          [BASE]: { description: { text: 'The folder that the command ran in.' } },
        },
        ...run,
      },
    ],
  };
}

function ofRule(page: RulePage): object {
  const { id, about, why, severity, passes, fails } = page;
  const told = [
    ...passes.map(({ says }) => `Passes: ${says}.`),
    ...fails.map(({ says }) => `Does not pass: ${says}.`),
  ];
  return {
    id,
    shortDescription: { text: why },
    fullDescription: { text: [why, `${saySeverity(page)}.`, ...told].join(' ') },
    help: { text: ruleText(page), markdown: ruleMarkdown(page) },
    defaultConfiguration: { level: severity },
    properties: { tags: [about] },
  };
}

function ruleOf(id: string, { rules }: Pick<SarifGround, 'rules'>): object {
  const index = rules.findIndex((rule) => rule.id === id);
  return { ruleId: id, ...(index < 0 ? {} : { ruleIndex: index }) };
}

function resultOf(finding: Finding, ground: SarifGround): object {
  const { severity, related, accepted } = finding;
  return {
    ...ruleOf(finding.rule, ground),
    level: severity,
    message: { text: findingWords(finding) },
    locations: [{ physicalLocation: placeOf(finding.file, regionOf(finding), ground) }],
    ...(related.length === 0
      ? {}
      : {
          relatedLocations: related.map(({ message, file, line, column }, at) => ({
            id: at + 1,
            physicalLocation: placeOf(file, { startLine: line, startColumn: column }, ground),
            message: { text: message },
          })),
        }),
    ...fixesOf(finding, ground),
    // Of one run either all results state this or none does (section 3.27.23, from memory).
    suppressions:
      accepted === undefined
        ? []
        : [{ kind: 'inSource', status: 'accepted', justification: accepted }],
  };
}

/** The end of a region is the column after its last character, as it is in a finding. */
function regionOf({ line, column, endLine, endColumn }: Finding): object {
  return { startLine: line, startColumn: column, endLine, endColumn };
}

function placeOf(file: string, region: object, { placed }: SarifGround): object {
  return { artifactLocation: artifactOf(placed(file)), region };
}

function artifactOf(path: string): object {
  return { uri: path.split('/').map(encodeURIComponent).join('/'), uriBaseId: BASE };
}

function fixesOf(finding: Finding, { placed, fixText }: SarifGround): object {
  const text = fixText(finding);
  if (text === null) return {};
  const replacement = { deletedRegion: regionOf(finding), insertedContent: { text } };
  return {
    fixes: [
      {
        description: { text: text === '' ? 'Take it out.' : `Write ${text}` },
        artifactChanges: [
          { artifactLocation: artifactOf(placed(finding.file)), replacements: [replacement] },
        ],
      },
    ],
  };
}

/** Not of lines, which move: of rule, file and words; equal ones are told apart by their order. */
function fingerprintsOf(findings: readonly Finding[]): ReadonlyMap<Finding, string> {
  const times = new Map<string, number>();
  return new Map(
    findings.map((finding) => {
      const { rule, file, found, message } = finding;
      const digest = sha256(JSON.stringify([rule, file, found ?? message])).slice(0, 32);
      const time = (times.get(digest) ?? 0) + 1;
      times.set(digest, time);
      return [finding, `${digest}:${String(time)}`];
    }),
  );
}
