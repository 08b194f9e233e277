import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** The terms of schema.org as `@vocabulary/schema` has them, by their names. */
export interface Terms {
  readonly classes: ReadonlySet<string>;
  /** The types that a property may stand on, and those that its value may be of. */
  readonly domains: ReadonlyMap<string, ReadonlySet<string>>;
  readonly ranges: ReadonlyMap<string, ReadonlySet<string>>;
  /** A type with all the types that it is one of. */
  ancestry(type: string): ReadonlySet<string>;
}

const LINE = /^<http:\/\/schema\.org\/([^>]+)> <([^>]+)> <([^>]+)> /;
const HOME = 'http://schema.org/';

export function schemaTerms(): Terms {
  const file = new URL('schema.nq', import.meta.resolve('@vocabulary/schema'));
  const classes = new Set<string>();
  const parents = new Map<string, Set<string>>();
  const domains = new Map<string, Set<string>>();
  const ranges = new Map<string, Set<string>>();
  for (const line of readFileSync(fileURLToPath(file), 'utf8').split('\n')) {
    const [, subject = '', predicate = '', object = ''] = LINE.exec(line) ?? [];
    const name = object.replace(HOME, '');
    if (predicate.endsWith('#type') && object.endsWith('rdf-schema#Class')) classes.add(subject);
    if (predicate.endsWith('#subClassOf')) addTo(parents, subject, name);
    if (predicate === `${HOME}domainIncludes`) addTo(domains, subject, name);
    if (predicate === `${HOME}rangeIncludes`) addTo(ranges, subject, name);
  }
  const ancestry = (type: string): ReadonlySet<string> =>
    new Set([type, ...[...(parents.get(type) ?? [])].flatMap((one) => [...ancestry(one)])]);
  return { classes, domains, ranges, ancestry };
}

function addTo(map: Map<string, Set<string>>, key: string, value: string): void {
  map.set(key, (map.get(key) ?? new Set()).add(value));
}
