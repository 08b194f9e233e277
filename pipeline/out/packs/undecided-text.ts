import type { PacksSet } from '../../../schema/index.js';
import { counted, grouped, mixed } from './say.js';
import { right, tableText } from './table.js';

/** Most numbers of cases that text lists; the figures have all. */
const MOST = 24;

/** What numbers of cases would come out whole. */
export function undecidedText({
  title,
  from,
  to,
  counts,
}: PacksSet['undecided'][number]): readonly string[] {
  const whole = counts.filter(({ divides }) => divides);
  const head = `${title}: nobody has decided how many cases are made. Of ${grouped(from)} to ${grouped(to)}, ${counted(whole.length, 'number')} of cases ${whole.length === 1 ? 'comes' : 'come'} out whole`;
  if (counts.length === 0 || whole.length === 0) return [head];
  const rows = whole
    .slice(0, MOST)
    .map(({ cases, left: free, base, eachBase }) => [
      grouped(cases),
      grouped(free),
      base === null ? 'not known' : grouped(base),
      eachBase === null ? '' : mixed(eachBase),
    ]);
  const columns = [
    right('cases'),
    right('places left'),
    right('base cards in all'),
    right('of each'),
  ];
  const more = whole.length > MOST ? [`and ${counted(whole.length - MOST, 'more', 'more')}`] : [];
  const lines = [...tableText(columns, rows), ...more];
  return [[`${head}:`, ...lines.map((line) => `  ${line}`)].join('\n')];
}
