import type { RulePage } from '../checks/index.js';
import {
  fileLines,
  findingLines,
  sayAcceptable,
  sayFixes,
  saySeverity,
  visible,
} from './rule-lines.js';

const HEAD = `# The rules

What \`holdback check\` asks of a set, by subject. Each page says why the rule is there, shows copy that passes and copy that does not, and what you will read when it finds something. \`holdback explain RULE\` prints the same page in a terminal, with every example whole.

An **error** stops a release and makes \`check\` exit with 1; a **warning** does neither. Some rules are milder while a set is in *planning* or *writing* and become errors when it is *locked*. The examples are the rules’ own tests, so what stands here is what the tool does. Of a long file only the lines that matter are shown; \`^^^\` marks the words that a finding points at.
`;

/** All rules as one Markdown document. */
export function rulesMarkdown(pages: readonly RulePage[]): string {
  const subjects = [...new Set(pages.map(({ about }) => about))];
  const own = (subject: string): readonly RulePage[] =>
    pages.filter(({ about }) => about === subject);
  const contents = subjects.map(
    (subject) =>
      `- **${capital(subject)}**: ${own(subject)
        .map(({ id }) => `[${id}](#${id})`)
        .join(', ')}\n`,
  );
  const chapters = subjects.map((subject) =>
    [`## ${capital(subject)}\n`, ...own(subject).map(ruleMarkdown)].join('\n'),
  );
  return [HEAD, contents.join(''), ...chapters].join('\n');
}

/**
 * The page of a rule as Markdown, under a heading of the third level: an example that passes and one
 * that does not, whole, and the others in a line each.
 */
export function ruleMarkdown(page: RulePage): string {
  const passing = page.passes.find(({ files }) => files.length > 0) ?? page.passes[0];
  const [failing, ...others] = page.fails;
  return [
    `### ${page.id}\n`,
    `${page.why}\n`,
    `*${capital(saySeverity(page))}.* ${sayAcceptable(page)} ${sayFixes(page)}\n`,
    ...(passing === undefined ? [] : [exampleOf('Passes', passing)]),
    ...listOf(
      'Passes too',
      page.passes.filter((each) => each !== passing).map(({ says }) => says),
    ),
    ...(failing === undefined
      ? []
      : [exampleOf('Does not pass', failing), 'What you read:\n', block(findingLines(failing))]),
    ...listOf('Does not pass either', others.map(sayFailing)),
  ].join('\n');
}

function exampleOf(title: string, { says, files }: RulePage['passes'][number]): string {
  const end = files.length === 0 ? '.' : ':';
  return [`**${title}:** ${says}${end}\n`, ...files.map(fileBlock)].join('\n');
}

function sayFailing({ says, finding }: RulePage['fails'][number]): string {
  return `${says}: “${escaped(visible(finding.message))}”`;
}

/** Words as Markdown, with code in them left as code. */
function escaped(words: string): string {
  return words
    .split(/(`[^`]*`)/)
    .map((part) => (part.startsWith('`') ? part : part.replace(/[\\*_[\]<>`]/g, '\\$&')))
    .join('');
}

function listOf(title: string, items: readonly string[]): readonly string[] {
  return items.length === 0
    ? []
    : [`**${title}:**\n\n${items.map((item) => `- ${item}\n`).join('')}`];
}

function fileBlock(file: RulePage['passes'][number]['files'][number]): string {
  return `\`${file.path}\`\n\n${block(fileLines(file))}`;
}

/** A fence that nothing within it closes. */
function block(lines: readonly string[]): string {
  const fence = lines.some((line) => line.includes('```')) ? '````' : '```';
  return [`${fence}text`, ...lines.map((line) => line.trimEnd()), fence]
    .map((line) => `${line}\n`)
    .join('');
}

function capital(words: string): string {
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}`;
}
