import type { Finding } from '../../schema/index.js';

/** A finding in one sentence: its message, what was found and what was expected. */
export function findingWords({ message, found, expected }: Finding): string {
  return [
    message,
    ...(found === undefined ? [] : [`found ${found}`]),
    ...(expected === undefined ? [] : [`expected ${expected}`]),
  ].join('; ');
}
