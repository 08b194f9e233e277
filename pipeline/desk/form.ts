import type { TSchema } from 'typebox';

import { CardFront } from '../../schema/index.js';
import {
  choicesOf,
  kindOfKeys,
  kindOfValue,
  wordsOf,
  type Ground,
  type ValueKind,
} from '../editor/index.js';
import { branches, keysAt, optionsAt, topOf } from '../read/index.js';
import type { FieldChoice, FieldModel, FieldShape } from './protocol.js';

type Path = readonly (string | number)[];

/** Kinds of things that are in other files: what is not there is an error. */
const CLOSED: ReadonlySet<ValueKind> = new Set([
  'level',
  'embargo',
  'hold',
  'document',
  'cut',
  'person',
  'layout',
  'rule',
]);

/** The form of a card: a field for each key of its schema, with what may stand there. */
export function cardForm(ground: Ground): readonly FieldModel[] {
  return fieldsOf(topOf(CardFront), [], ground);
}

function fieldsOf(schemas: readonly TSchema[], path: Path, ground: Ground): readonly FieldModel[] {
  const required = new Set(branches(schemas).flatMap((schema) => wordsIn(schema, 'required')));
  return keysAt(schemas).map((key) => {
    const own = optionsAt(schemas, key);
    const { description, expected } = wordsOf(own);
    const shape = shapeOf(own, [...path, key], ground);
    return { key, required: required.has(key), description, expected, shape };
  });
}

function shapeOf(schemas: readonly TSchema[], path: Path, ground: Ground): FieldShape {
  const all = branches(schemas);
  const types = all.map((schema) => keywordOf(schema, 'type'));
  const { choices, expected } = wordsOf(schemas);
  if (types.includes('array')) {
    const items = shapeOf(optionsAt(schemas, 0), [...path, 0], ground);
    return { type: 'list', items, expected };
  }
  if (keysAt(schemas).length > 0) return { type: 'group', fields: fieldsOf(schemas, path, ground) };
  if (types.includes('object')) return recordOf(schemas, path, ground);
  const kind = kindOfValue('card', path);
  const known = kind === null ? [] : choicesOf(kind, ground).map(choiceOf);
  if (kind !== null && CLOSED.has(kind)) return { type: 'choice', choices: known };
  const isOpen = all.some(
    (schema) => choices.length === 0 || wordsOf([schema]).choices.length === 0,
  );
  if (!isOpen) return { type: 'choice', choices: choices.map(plainChoice) };
  const suggestions = [...known, ...choices.map(plainChoice)];
  if (all.some((schema) => keywordOf(schema, 'format') === 'instant')) {
    return { type: 'instant', suggestions };
  }
  const isNumber = types.includes('integer') || types.includes('number');
  return { type: isNumber ? 'number' : 'text', suggestions };
}

/** A map of which the schema says what its values are, and other files what its keys are. */
function recordOf(schemas: readonly TSchema[], path: Path, ground: Ground): FieldShape {
  const kind = kindOfKeys('card', path);
  const keys = kind === null ? [] : choicesOf(kind, ground).map(choiceOf);
  const [first] = keys;
  const values = optionsAt(schemas, first?.text ?? 'key');
  return { type: 'record', keys, values: shapeOf(values, [...path, first?.text ?? 'key'], ground) };
}

function choiceOf(choice: {
  readonly text: string;
  readonly detail: string;
  readonly label?: string;
}): FieldChoice {
  const { text, detail, label } = choice;
  return { text, label: label ?? null, detail };
}

function plainChoice(text: string): FieldChoice {
  return { text, label: null, detail: null };
}

function keywordOf(schema: TSchema, keyword: string): unknown {
  return Object.entries(schema).find(([key]) => key === keyword)?.[1];
}

function wordsIn(schema: TSchema, keyword: string): readonly string[] {
  const words = keywordOf(schema, keyword);
  return Array.isArray(words) ? words.filter((word) => typeof word === 'string') : [];
}
