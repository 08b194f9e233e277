import { HOLDING_SENTENCE, type Brief } from './brief.js';

/** A brief as plain text. */
export function briefText(brief: Brief): string {
  const sets = brief.sets.map(({ title, sentences, subsets }) =>
    [
      title,
      ...sentences.map((sentence) => `  ${sentence}`),
      ...subsets.map((subset) => `  ${subset.title}: ${subset.sentence}`),
    ].join('\n'),
  );
  const names = brief.names.map(({ name, aliases, say }) => {
    const also = aliases.length === 0 ? '' : `, also ${aliases.join(', ')}`;
    return `  ${name}${say === null ? '' : ` (${say})`}${also}`;
  });
  const blocks = [
    `What may be said of ${brief.title} from ${brief.from} (${brief.zone}) on`,
    ...(brief.preview ? [NOT_YET] : []),
    ...sets,
    ...(names.length === 0 ? [] : [['Names', ...names].join('\n')]),
    ...(brief.openings.length === 0
      ? []
      : [['More is revealed', ...brief.openings.map((at) => `  ${at}`)].join('\n')]),
    `About everything else say\n  ${HOLDING_SENTENCE}`,
  ];
  return `${blocks.join('\n\n')}\n`;
}

/** On everything that is about an instant to come. */
export const NOT_YET = 'Not to be passed on before that.';
