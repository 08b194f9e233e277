import { Type, type Static, type TSchema } from 'typebox';

import { validate } from '../read/index.js';
import type { Edit, FieldValue } from './protocol.js';
import { badRequest } from './refusal.js';

/** Shapes of what a page sends: a key that is not listed is refused. */

const strict = { additionalProperties: false } as const;
const Key = Type.String({ minLength: 1, maxLength: 300 });
const Words = Type.String({ maxLength: 1_000_000 });
const Digest = Type.String({ pattern: '^[0-9a-f]{64}$' });
const Sequence = Type.Integer({ minimum: 0 });

const Step = Type.Union([
  Type.String({ maxLength: 300 }),
  Type.Integer({ minimum: 0, maximum: 10_000 }),
]);
const Change = Type.Object(
  { path: Type.Array(Step, { minItems: 1, maxItems: 8 }), value: Type.Unknown() },
  strict,
);
const EditShape = Type.Object(
  {
    text: Type.Optional(Words),
    copy: Type.Optional(Words),
    fields: Type.Optional(Type.Array(Change, { maxItems: 200 })),
  },
  strict,
);

export const CARD = Type.Object({ card: Key }, strict);
export const BASE = Type.Object({ card: Key, base: Digest }, strict);
export const SAVE = Type.Object({ card: Key, base: Digest, edit: EditShape }, strict);
export const DRAFT = Type.Object(
  { card: Key, base: Digest, edit: EditShape, sequence: Sequence },
  strict,
);
export const FIX = Type.Object(
  { card: Key, base: Digest, edit: EditShape, sequence: Sequence, finding: Key },
  strict,
);
export const PROOF = Type.Object(
  {
    set: Type.Optional(Key),
    subset: Type.Optional(Key),
    card: Type.Optional(Key),
    kind: Type.Optional(Type.Enum(['annotated', 'nine-up', 'deck', 'overset'])),
    paper: Type.Optional(Type.Enum(['a4', 'letter'])),
  },
  strict,
);
export const PREVIEW = Type.Object(
  {
    at: Key,
    policy: Type.Optional(Type.Enum(['refuse', 'hold', 'last-approved'])),
  },
  strict,
);
export const CANCEL = Type.Object({ job: Key }, strict);
export const NOTHING = Type.Object({}, strict);

/** @throws Refusal with what is wrong. */
export function read<S extends TSchema>(shape: S, value: unknown): Static<S> {
  const valid = validate(shape, value);
  if (valid.ok) return valid.value;
  const [first] = valid.faults;
  throw badRequest(`this request cannot be understood: ${first?.message ?? ''}`);
}

/** @throws Refusal for an edit that is both of the whole text and of parts, and for other values. */
export function editOf({ text, copy, fields }: Static<typeof EditShape>): Edit {
  if (text !== undefined) {
    if (copy !== undefined || fields !== undefined)
      throw badRequest('send text, or copy and fields');
    return { text };
  }
  return {
    ...(copy === undefined ? {} : { copy }),
    ...(fields === undefined
      ? {}
      : {
          fields: fields.map(({ path, value }) => ({
            path,
            value: value === null ? null : valueOf(value, 0),
          })),
        }),
  };
}

/** Deepest nesting of a value: no key of a card goes deeper. */
const DEEPEST = 8;

function valueOf(value: unknown, depth: number): FieldValue {
  if (typeof value === 'string') return value;
  if (depth < DEEPEST && Array.isArray(value)) return value.map((each) => valueOf(each, depth + 1));
  if (depth < DEEPEST && typeof value === 'object' && value !== null) {
    return Object.fromEntries(
      Object.entries(value).map(([key, each]: [string, unknown]) => [
        key,
        valueOf(each, depth + 1),
      ]),
    );
  }
  throw badRequest('a value is text, a list or a map of texts');
}
