import type { Finding } from '../../schema/index.js';
import { memoryFolder, type Folder } from '../read/index.js';
import { look, type LookOptions } from './look.js';
import { newCards } from './new-cards.js';
import { offered } from './new-set-answer.js';
import { answerOf, withAnswer, type Answers, type Ground } from './new-set-answers.js';
import { filesOf, idOf } from './new-set-files.js';
import { isYes, questionsFor } from './new-set-questions.js';
import { subsetsOf } from './new-set-subsets.js';
import { bytesOf } from './texts.js';
import { newErrors } from './worse.js';
import type { FileChange } from './write.js';

/** Files and folders of a property that belong to no set. */
const OF_PROPERTY = /^(?:property\.yaml|names\.yaml|people\.yaml|backs\/.*|fonts\/.*)$/;

/**
 * What is there before a set is started in a content folder, which may be empty.
 * @throws what the folder throws when the disk fails.
 */
export function groundOf(
  folder: Folder,
  now: number,
): { readonly ok: true; readonly ground: Ground } | { readonly ok: false; readonly why: string } {
  const paths = folder.list().filter(({ outside }) => !outside);
  const taken = new Set(folder.list().map(({ path }) => (path.split('/')[0] ?? '').toLowerCase()));
  const files = new Map(
    paths
      .filter(({ path }) => OF_PROPERTY.test(path))
      .map(({ path }) => [path, folder.read(path)] as const),
  );
  const was = look(memoryFolder(files));
  const { property, people, layouts } = was.content;
  if (property) {
    const home = {
      zone: property.value.zone,
      levels: property.value.levels.map(({ id }) => id),
      layouts: [...layouts.keys()],
      people: people?.value.people.map(({ id }) => id) ?? [],
    };
    return { ok: true, ground: { now, home, taken, files, was } };
  }
  if (files.has('property.yaml')) {
    return {
      ok: false,
      why: 'property.yaml cannot be read: run `holdback check`, and mend it first',
    };
  }
  // Nobody is told that a property is missing which is about to be made.
  const nothing = { ...was, report: { ...was.report, findings: [] } };
  return { ok: true, ground: { now, home: null, taken, files, was: nothing } };
}

/** What a new set comes to, or every reason why there is none. */
export type NewSet =
  | {
      readonly ok: true;
      readonly id: string;
      readonly files: ReadonlyMap<string, FileChange>;
      /** How many of them are stubs of cards. */
      readonly stubs: number;
      /** What `check` will say of it, errors excepted: there are none. */
      readonly warnings: readonly Finding[];
    }
  | { readonly ok: false; readonly why: readonly string[]; readonly worse: readonly Finding[] };

/**
 * Makes the files of a new set, and of its property if there is none. Writes nothing, and makes no
 * file that is there already.
 */
export function newSet(
  said: Answers,
  folder: Folder,
  ground: Ground,
  options: LookOptions = {},
): NewSet {
  const answers = withOffers(said, ground);
  const texts = new Map(filesOf(answers, ground));
  const wantsStubs = isYes(answerOf(answers, 'stubs') ?? 'no') === true;
  const stubs = wantsStubs ? stubsFor(answers, folder, ground, texts) : { files: [], why: [] };
  for (const [path, text] of stubs.files) texts.set(path, text);
  const there = new Set(folder.list().map(({ path }) => path));
  const why = [
    ...stubs.why,
    ...[...texts.keys()]
      .filter((path) => there.has(path))
      .map((path) => `${path} is there already: it stays as it is`),
  ];
  if (why.length > 0) return { ok: false, why, worse: [] };
  const [was, now] = [
    ground.home === null ? ground.was : look(folder, options),
    look(overlay(folder, texts), options),
  ];
  const worse = newErrors(was, now, new Set());
  if (worse.length > 0) {
    return { ok: false, why: ['`check` would find more errors than before:'], worse };
  }
  return {
    ok: true,
    id: idOf(answers),
    files: new Map(
      [...texts].map(([path, text]) => [path, { before: null, after: bytesOf({ text }) }]),
    ),
    stubs: stubs.files.length,
    warnings: now.report.findings.filter(({ set }) => set === idOf(answers)),
  };
}

/** What was not answered is as it would have been offered, as far as files depend on it. */
function withOffers(said: Answers, ground: Ground): Answers {
  let answers = said;
  for (const { key } of questionsFor(ground)) {
    if (!key.endsWith('id') || answers.has(key)) continue;
    const id = offered(key, answers, ground);
    if (id !== null) answers = withAnswer(answers, key, [id]);
  }
  return answers;
}

/** A file for each number of each subset, made as `new cards` makes them. */
function stubsFor(
  answers: Answers,
  folder: Folder,
  ground: Ground,
  texts: ReadonlyMap<string, string>,
): { readonly files: (readonly [path: string, text: string])[]; readonly why: readonly string[] } {
  const files: (readonly [string, string])[] = [];
  const why: string[] = [];
  const laid = overlay(folder, texts);
  const writer = writerOf(answers, ground, laid);
  for (const { id, numbers } of subsetsOf(answers, ground).subsets) {
    if (numbers === 'none') continue;
    const order = { folder: laid, set: idOf(answers), subset: id };
    const made = newCards(writer === null ? order : { ...order, writer });
    if (!made.ok) why.push(...made.why);
    else {
      for (const [path, { after }] of made.files) {
        files.push([path, new TextDecoder().decode(after)]);
      }
    }
  }
  return { files, why: [...new Set(why)] };
}

/** In a new property the writer is a name that was given; in another, an id of its people. */
function writerOf(answers: Answers, { home }: Ground, laid: Folder): string | null {
  const said = answerOf(answers, 'writer');
  if (said === null || home !== null) return said;
  const people = look(laid, { only: [] }).content.people?.value.people ?? [];
  return people.find(({ name, role }) => name === said && role === 'writer')?.id ?? null;
}

/** The folder with new files beside those that are there. */
function overlay(folder: Folder, texts: ReadonlyMap<string, string>): Folder {
  const added = [...texts.keys()].map((path) => ({ path, outside: false }));
  return {
    list: () =>
      [...folder.list(), ...added].sort((a, b) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0)),
    read: (path) => {
      const text = texts.get(path);
      return text === undefined ? folder.read(path) : bytesOf({ text });
    },
  };
}
