import type { FieldChange, FieldPath, FieldValue } from '../../protocol.js';

/** Front matter as typed, by key. */
export type Fields = Readonly<Record<string, FieldValue>>;

/**
 * The fewest changes that make one front matter of another: what is not named stays as it is, to the
 * byte. A list of another length is changed from its end where that is enough, else put whole.
 */
export function fieldChanges(before: Fields, after: Fields): readonly FieldChange[] {
  return mapChanges(before, after, []);
}

function mapChanges(before: Fields, after: Fields, path: FieldPath): FieldChange[] {
  const keys = [...new Set([...Object.keys(before), ...Object.keys(after)])];
  return keys.flatMap((key) => valueChanges(before[key], after[key], [...path, key]));
}

function valueChanges(
  before: FieldValue | undefined,
  after: FieldValue | undefined,
  path: FieldPath,
): FieldChange[] {
  if (after === undefined) return before === undefined ? [] : [{ path, value: null }];
  if (before === undefined || isSame(before, after)) {
    return before === undefined ? [{ path, value: after }] : [];
  }
  if (isList(before) && isList(after)) return listChanges(before, after, path);
  if (isMap(before) && isMap(after)) return mapChanges(before, after, path);
  return [{ path, value: after }];
}

function listChanges(
  before: readonly FieldValue[],
  after: readonly FieldValue[],
  path: FieldPath,
): FieldChange[] {
  if (before.length === after.length) {
    return after.flatMap((value, at) => valueChanges(before[at], value, [...path, at]));
  }
  const gone = onlyMissing(before, after);
  if (gone !== null) return [{ path: [...path, gone], value: null }];
  const grows = before.every((value, at) => isSame(value, after[at]));
  if (!grows) return [{ path, value: after }];
  return after
    .slice(before.length)
    .map((value, more) => ({ path: [...path, before.length + more], value }));
}

/** The place of the one item that is no longer there, if nothing else differs. */
function onlyMissing(before: readonly FieldValue[], after: readonly FieldValue[]): number | null {
  if (after.length !== before.length - 1) return null;
  const first = before.findIndex((value, at) => !isSame(value, after[at]));
  const isRestSame = after.slice(first).every((value, at) => isSame(before[first + 1 + at], value));
  return isRestSame && after.length > 0 ? first : null;
}

export function isSame(one: FieldValue | undefined, other: FieldValue | undefined): boolean {
  if (one === undefined || other === undefined) return one === other;
  if (isList(one)) {
    return (
      isList(other) &&
      one.length === other.length &&
      one.every((item, at) => isSame(item, other[at]))
    );
  }
  if (!isMap(one)) return one === other;
  if (!isMap(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && isSame(one[key], other[key]))
  );
}

export function isList(value: FieldValue | undefined): value is readonly FieldValue[] {
  return Array.isArray(value);
}

export function isMap(value: FieldValue | undefined): value is Fields {
  return typeof value === 'object' && !isList(value);
}
