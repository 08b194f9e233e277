import { posix } from 'node:path';
import { importsOf, parse, type Import } from './imports.js';
import { impurities } from './purity.js';
import { floorOf, ONLY_ROOMS, PACKAGES, PURE, roomOf, TYPES_FOR_SITE, wayIn } from './rooms.js';

/**
 * What a file of schema, pipeline or site does that its room may not, one sentence each.
 * @param path relative to the project, with slashes
 */
export function wallsBroken(path: string, text: string): string[] {
  const room = roomOf(path);
  if (room === undefined) return [`${path}: stands in no room`];
  const file = parse(path, text);
  const at = (line: number, what: string): string => `${path}:${String(line)}: ${what}`;
  const imports = importsOf(file).flatMap((each) => {
    const what = whyForbidden(path, room, each);
    return what === undefined ? [] : [at(each.line, what)];
  });
  const reached = PURE.has(room) ? impurities(file) : [];
  return [...imports, ...reached.map(({ what, line }) => at(line, `${room} is pure: no ${what}`))];
}

function whyForbidden(path: string, room: string, each: Import): string | undefined {
  const { from, typeOnly } = each;
  if (from === undefined) return 'imports something that cannot be read from the text';
  if (!from.startsWith('.')) return whyPackageForbidden(room, from, each.names);
  const target = sourceOf(posix.join(posix.dirname(path), from));
  const other = roomOf(target);
  if (other === room) return undefined;
  if (other === undefined || floorOf(other) < 0) return `${room} may not import ${target}`;
  if (!isOpenTo(room, other, typeOnly)) return `${room} may not import ${other}`;
  return target === wayIn(other) ? undefined : `${target} is not the way into ${other}`;
}

/** `./x.js` is written `x.ts`, except in site/, where files are JavaScript as they stand. */
function sourceOf(target: string): string {
  return target.startsWith('site/') ? target : target.replace(/[.]js$/, '.ts');
}

function isOpenTo(room: string, other: string, typeOnly: boolean): boolean {
  if (room === 'site') return typeOnly && TYPES_FOR_SITE.has(other);
  const only = ONLY_ROOMS[room];
  return only ? only.includes(other) : floorOf(other) < floorOf(room);
}

function whyPackageForbidden(
  room: string,
  from: string,
  names: readonly string[] | undefined,
): string | undefined {
  const name = packageOf(from);
  const allowed = PACKAGES[room] ?? [];
  if (allowed.includes(name)) return undefined;
  const isAllowed = names?.every((each) => allowed.includes(`${from}#${each}`)) ?? false;
  if (isAllowed && names?.length !== 0) return undefined;
  const pure = PURE.has(room) && name.startsWith('node:');
  return pure ? `${room} is pure: no ${name}` : `${room} may not import ${name}`;
}

/** `@a/b/c` and `b/c` are files of the packages `@a/b` and `b`; `node:fs/promises` of `node:fs`. */
export function packageOf(from: string): string {
  return from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');
}
