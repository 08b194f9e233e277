import { Type, type TSchema } from 'typebox';
import { Memory } from 'typebox/system';

/**
 * Values that several files share. `title` says in a writer's words what is allowed: it ends up in
 * error messages after "expected". `description` is what an editor shows beside the key.
 */

/** A plain object: a key that is not listed is an error. */
export function shape<T extends Record<string, TSchema>>(properties: T, description: string) {
  return Type.Object(properties, { additionalProperties: false, description });
}

/** A value that several keys share, with what is to be said of it at this one. */
export function said<T extends TSchema>(value: T, description: string): T {
  return Object.assign(Memory.Clone(value), { description });
}

/** One of a few words. */
export function oneOf<T extends string[]>(words: [...T], description: string) {
  return Type.Enum(words, { description, type: 'string' });
}

export const Format = Type.Literal(1, {
  title: '1, the only format this version knows',
  description: 'Version of the file format.',
});

export const Id = Type.String({
  pattern: '^[a-z0-9]+(-[a-z0-9]+)*$',
  maxLength: 64,
  title: 'an id of small letters, digits and single hyphens, such as high-water',
});

export const Text = Type.String({ minLength: 1, title: 'some text' });

export const Instant = Type.String({
  format: 'instant',
  title: 'an instant with offset and zone, such as "2027-04-16T09:00:00+01:00[Europe/London]"',
  description: 'An RFC 9557 instant. An offset that contradicts the zone is refused.',
});

export const Unset = Type.Literal('unset', { title: 'unset', description: 'No date is known.' });

export const InstantOrUnset = Type.Union([Instant, Unset], {
  title: 'an instant such as "2027-04-16T09:00:00+01:00[Europe/London]", or unset',
});

export const PlainDate = Type.String({
  format: 'date',
  title: 'a date such as "2027-01-15"',
});

export const Zone = Type.String({
  format: 'time-zone',
  title: 'a time zone of the IANA list, such as Europe/London',
});

export const Scene = Type.String({
  pattern: '^[1-9][0-9]{0,3}/[1-9][0-9]{0,3}$',
  title: 'an episode and a scene, such as 2/14',
});

export const SceneSpan = Type.String({
  pattern: '^[1-9][0-9]{0,3}/[1-9][0-9]{0,3}(-[1-9][0-9]{0,3}/[1-9][0-9]{0,3})?$',
  title: 'a scene such as 3/2, or a run of scenes such as 2/11-2/14',
});

export const Colour = Type.String({
  pattern: '^#[0-9a-f]{6}$',
  title: 'a colour of six hexadecimal digits, such as "#0b6e69"',
});

export const Embargoes = Type.Array(Id, {
  description: 'Embargoes that hold this besides its level.',
});

export const ContentPath = Type.String({
  minLength: 1,
  maxLength: 256,
  title: 'a path with / inside the content folder, such as art/c017.svg',
});

export const Positive = Type.Number({ exclusiveMinimum: 0, title: 'a number above 0' });
export const Whole = Type.Integer({ minimum: 0, maximum: 1_000_000_000, title: 'a whole number' });
export const Counting = Type.Integer({
  minimum: 1,
  maximum: 1_000_000_000,
  title: 'a whole number from 1',
});

export const Role = oneOf(
  ['writer', 'editor', 'publisher', 'licensor', 'likeness', 'host'],
  'What a person does for the set.',
);

export const Part = oneOf(
  ['copy', 'image', 'layout', 'web', 'sales'],
  'A part of a card that is approved by itself.',
);

export const Accepted = Type.Array(
  shape(
    {
      rule: said(Id, 'The rule that found it, by its id.'),
      words: said(Text, 'The exact words that were found; any others are found again.'),
      why: said(Text, 'The reason for which it may stand. Never leaves the house.'),
      by: said(Id, 'Who says so, by their id in people.yaml.'),
    },
    'A finding that stands for a reason. It is bound to the rule and to the exact words.',
  ),
  { description: 'Findings that stand for a reason; one that is found no more is an error.' },
);
