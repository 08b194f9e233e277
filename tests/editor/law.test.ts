import fc from 'fast-check';
import { describe, expect, test } from 'vitest';

import { RULES, check, sampleWith } from '../../pipeline/checks/index.js';
import { Checker, EditedFolder, Reader } from '../../pipeline/editor/index.js';
import {
  approvalsOf,
  keptDictionaries,
  memoryFolder,
  readProperty,
  readReview,
} from '../../pipeline/read/index.js';
import type { Finding } from '../../schema/index.js';

type Files = Map<string, string>;

/** What `check` finds in these files, as the command runs it. */
function checked(files: ReadonlyMap<string, string>): readonly Finding[] {
  const folder = memoryFolder(files);
  const { content, fonts } = readProperty(folder);
  const approvals = approvalsOf(folder, content, fonts, readReview(folder));
  return check(content, { fonts, dictionaries: keptDictionaries, approvals }).findings;
}

function unreadable(files: ReadonlyMap<string, string>): ReadonlySet<string> {
  const reader = new Reader(new EditedFolder(memoryFolder(files)));
  return reader.read().unreadable;
}

/** What an editor shows: of files that cannot be read their faults, of others what was readable last. */
function expected(files: Files, good: Files): readonly Finding[] {
  const broken = [...unreadable(files)];
  for (const path of good.keys()) if (!files.has(path)) good.delete(path);
  for (const [path, text] of files) if (!broken.includes(path)) good.set(path, text);
  const older = broken.filter((path) => good.has(path));
  const seen = new Map([...files, ...older.map((path) => [path, good.get(path) ?? ''] as const)]);
  const faults = checked(files).filter(({ file }) => older.includes(file));
  return [...checked(seen).filter(({ file }) => !older.includes(file)), ...faults];
}

function sorted(findings: readonly Finding[]): string[] {
  return findings.map((finding) => JSON.stringify(finding)).sort();
}

function settled(checker: Checker): readonly Finding[] {
  checker.read();
  const steps = checker.settle();
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value.findings;
}

/** Something that is done to one file. */
type Edit =
  | { readonly does: 'type'; readonly at: number; readonly cut: number; readonly text: string }
  | { readonly does: 'lay'; readonly example: number }
  | { readonly does: 'take away' }
  | { readonly does: 'swap'; readonly other: number };

const typed = fc.constantFrom(
  'x',
  ' ',
  '\n',
  '---\n',
  ': ',
  '[',
  ']',
  '{',
  '"',
  "'",
  '#',
  '*',
  'Odalys',
  'later',
  'open',
  'spoiler: later\n',
  'name: The Lamp\n',
  'number: "2"\n',
  '[a lamp](held:later)',
  '\u202e',
  '\r\n',
  '',
);
const edit: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      does: fc.constant('type' as const),
      at: fc.nat(),
      cut: fc.nat(3),
      text: typed,
    }),
  },
  { weight: 3, arbitrary: fc.record({ does: fc.constant('lay' as const), example: fc.nat() }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('take away' as const) }) },
  { weight: 1, arbitrary: fc.record({ does: fc.constant('swap' as const), other: fc.nat() }) },
);

const examples = RULES.flatMap((rule) => [...rule.examples.fails, ...rule.examples.passes]).map(
  (example) => example.files,
);

function done(files: Files, which: number, each: Edit): Files {
  const paths = [...files.keys()].sort();
  const path = paths[which % paths.length] ?? '';
  const text = files.get(path) ?? '';
  const after = new Map(files);
  if (each.does === 'type') {
    const at = each.at % (text.length + 1);
    after.set(path, text.slice(0, at) + each.text + text.slice(at + each.cut));
  } else if (each.does === 'take away') after.delete(path);
  else if (each.does === 'swap') {
    const other = paths[each.other % paths.length] ?? '';
    after.set(path, files.get(other) ?? '').set(other, text);
  } else {
    for (const [file, laid] of Object.entries(examples[each.example % examples.length] ?? {})) {
      if (laid === null) after.delete(file);
      else after.set(file, laid);
    }
  }
  return after;
}

/** A folder of values that change under whoever reads it. */
class Shelf {
  files: Files;
  readonly edited: EditedFolder;
  readonly reader: Reader;
  readonly checker: Checker;

  constructor(files: Files) {
    this.files = files;
    this.edited = new EditedFolder({
      list: () => memoryFolder(this.files).list(),
      read: (path) => memoryFolder(this.files).read(path),
    });
    this.reader = new Reader(this.edited);
    this.checker = new Checker(this.reader);
  }

  /** As an editor does it: the words of documents that are open, the rest on the disk. */
  change(after: Files, inDocuments: boolean): void {
    const paths = new Set([...this.files.keys(), ...after.keys()]);
    const changed = [...paths].filter((path) => this.files.get(path) !== after.get(path));
    if (!inDocuments) this.files = after;
    else this.files = new Map([...after]);
    for (const path of changed) {
      const text = after.get(path);
      if (inDocuments && text !== undefined) this.edited.show(path, text);
      else {
        this.edited.hide(path);
        this.edited.changed(path);
      }
      this.reader.forget(path);
    }
  }
}

describe('whatever is done to the files of a folder', () => {
  test('what is found step by step is what `check` finds', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat(), edit, fc.boolean()), { minLength: 1, maxLength: 6 }),
        (edits) => {
          const shelf = new Shelf(new Map(sampleWith({})));
          const good: Files = new Map();
          expect(sorted(settled(shelf.checker))).toEqual(sorted(expected(shelf.files, good)));
          for (const [which, each, inDocuments] of edits) {
            const after = done(shelf.files, which, each);
            shelf.change(after, inDocuments);
            expect(sorted(settled(shelf.checker))).toEqual(sorted(expected(after, good)));
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
