import { isMap, isSeq } from 'yaml';

import type { Finding } from '../../schema/index.js';
import { RULES } from '../checks/index.js';
import { parseYaml, type SourceFile } from '../model/index.js';
import type { Change } from '../edit/index.js';
import { shapeOf } from './file-shapes.js';
import { yamlIn } from './yaml-place.js';

/** Whether somebody may let a finding stand, and its own file is where that is written. */
export function isAcceptable(finding: Finding): boolean {
  const rule = RULES.find(({ id }) => id === finding.rule);
  const kind = shapeOf(finding.file)?.kind;
  const takes = kind === 'card' || kind === 'sales' || kind === 'plan';
  return rule !== undefined && rule.acceptable !== false && takes && finding.set !== null;
}

/**
 * The change that lets a finding stand. Why, and who says so, is left empty to be filled in: until
 * then the file says what is missing. Null where its YAML cannot be read, or is written in a way
 * that nothing can be put into.
 */
export function acceptance(source: SourceFile, finding: Finding): Change | null {
  const range = yamlIn(source.file, source.text);
  if (!range) return null;
  const yaml = source.text.slice(range.from, range.to);
  const document = parseYaml(yaml);
  const top = document.contents;
  if (document.errors.length > 0 || !isMap(top) || top.flow === true) return null;
  const words = JSON.stringify(finding.found ?? finding.message);
  const entry = `{ rule: ${finding.rule}, words: ${words}, why: "", by: "" }`;
  const end = /\r\n|\n|\r/.exec(source.text)?.[0] ?? '\n';
  const list: unknown = top.get('accepted', true);
  const at = (offset: number, text: string): Change => {
    const place = range.from + offset;
    return { spot: { source, from: place, to: place }, text };
  };
  if (!top.has('accepted')) {
    const last = yaml.length === 0 || /[\r\n]$/.test(yaml) ? '' : end;
    return at(yaml.length, `${last}accepted: [${entry}]${end}`);
  }
  const last: unknown = isSeq(list) ? list.items.at(-1) : null;
  if (!isSeq(list) || !isMap(last)) return null;
  const [from = 0, to = 0] = last.range ?? [];
  if (list.flow === true) return at(to, `, ${entry}`);
  const indent = /[^\r\n]*$/.exec(yaml.slice(0, from))?.[0] ?? '';
  if (!/^ *- +$/.test(indent)) return null;
  const stop = yaml.slice(0, to).trimEnd().length;
  return at(stop, `${end}${indent}${entry}`);
}
