import type { Finding } from '../../schema/index.js';
import { memoryFolder } from '../read/index.js';
import { answerOf, withAnswer, type Answers, type Ground, type Key } from './new-set-answers.js';
import { filesOf } from './new-set-files.js';
import { freeId } from './new-set-ids.js';
import { questionsFor, unreadIn } from './new-set-questions.js';
import { look } from './look.js';
import { bytesOf } from './texts.js';
import { noSuch } from './renumber.js';
import { newErrors } from './worse.js';

/** The answers with one more, or every reason why it cannot be one. */
export type Answered =
  | { readonly ok: true; readonly answers: Answers }
  | { readonly ok: false; readonly why: readonly string[] };

/**
 * Takes an answer, after `check` has looked at what all answers come to so far: its errors are the
 * reasons, in its own words.
 */
export function answered(
  answers: Answers,
  key: Key,
  texts: readonly string[],
  ground: Ground,
): Answered {
  const next = withAnswer(answers, key, texts);
  const unread = unreadIn(key, next, ground);
  if (unread.length > 0) return { ok: false, why: unread };
  const errors = errorsOf(withPlaces(next, ground), ground);
  if (errors.length === 0) return { ok: true, answers: next };
  return { ok: false, why: [...new Set(errors.map(sayFinding))] };
}

/** Ids that tell nothing hold the place of those that were not asked for yet: a title may be held. */
function withPlaces(answers: Answers, { taken }: Ground): Answers {
  let all = answers;
  if (!all.has('id')) all = withAnswer(all, 'id', [freeId('set-1', taken)]);
  if (!all.has('property-id')) all = withAnswer(all, 'property-id', ['property']);
  // Cards that are not there yet are looked at when all is said.
  if (LATER_STAGES.includes(answerOf(all, 'stage') ?? ''))
    all = withAnswer(all, 'stage', ['planning']);
  return all;
}

const LATER_STAGES: readonly string[] = ['writing', 'locked'];

/** What `check` says of these answers, in a property without its other sets. */
function errorsOf(answers: Answers, ground: Ground): readonly Finding[] {
  const files = new Map(ground.files);
  for (const [path, text] of filesOf(answers, ground)) files.set(path, bytesOf({ text }));
  const now = look(memoryFolder(files));
  return newErrors(ground.was, now, new Set());
}

/** A finding without its place: the file is not there yet. */
export function sayFinding({ message, found, expected }: Finding): string {
  return [
    message,
    ...(found === undefined ? [] : [`found ${found}`]),
    ...(expected === undefined ? [] : [`expected ${expected}`]),
  ].join('; ');
}

/** Everything that was answered at once, by the names of options, and every reason why it cannot stand. */
export function answeredAll(
  given: Answers,
  ground: Ground,
): { readonly answers: Answers; readonly why: readonly string[] } {
  let answers: Answers = new Map();
  const why: string[] = [];
  const asked = questionsFor(ground).map(({ key }) => key);
  for (const [key, texts] of given)
    if (!asked.includes(key)) why.push(...misplaced(key, texts, ground));
  const writer = ground.home === null ? undefined : given.get('writer');
  if (writer) answers = withAnswer(answers, 'writer', writer);
  for (const key of asked) {
    const texts = given.get(key);
    if (texts === undefined) continue;
    const outcome = answered(answers, key, texts, ground);
    if (outcome.ok) answers = outcome.answers;
    else why.push(...outcome.why.map((line) => `--${key} ${texts.join(' ')}: ${line}`));
  }
  return { answers, why };
}

/** Of a property that is there, only who writes the stubs can be said. */
function misplaced(key: Key, texts: readonly string[], { home }: Ground): readonly string[] {
  if (key !== 'writer') {
    return [`--${key} is of a new property, and there is one: change it in property.yaml`];
  }
  const [id = ''] = texts;
  const known = home?.people ?? [];
  return known.includes(id) ? [] : [`--writer ${id}: ${noSuch('person', id, known)}`];
}

/** Questions that need an answer, have none among those that stand or were given, and whose answer follows from no other. */
export function unanswered(
  answers: Answers,
  ground: Ground,
  given: Answers = answers,
): readonly Key[] {
  // Of a street date that cannot stand it was said already why.
  const isSaid = (key: Key): boolean =>
    given.has(key) || (key === 'since' && given.has('street') && !answers.has('street'));
  return questionsFor(ground)
    .filter(({ key, needed }) => needed === true && !isSaid(key))
    .filter(({ usual }) => usual(answers, ground) === null)
    .map(({ key }) => key);
}

/**
 * The answer that is offered: the usual one, unless `check` would not have it. Then an id is
 * neutral, since a title may tell what is held.
 */
export function offered(key: Key, answers: Answers, ground: Ground): string | null {
  const usual = questionsFor(ground)
    .find((question) => question.key === key)
    ?.usual(answers, ground);
  if (usual === undefined || usual === null) return null;
  if (!key.endsWith('id') || answered(answers, key, [usual], ground).ok) return usual;
  for (let at = 1; at < 100; at += 1) {
    const neutral = `${key === 'id' ? 'set' : 'property'}-${String(at)}`;
    if (answered(answers, key, [neutral], ground).ok) return neutral;
  }
  return null;
}
