import fc from 'fast-check';
import { expect, test } from 'vitest';

import { RULES, sampleWith, type Files } from '../../pipeline/checks/index.js';
import { fixContent } from '../../pipeline/mend/index.js';
import { memoryFolder } from '../../pipeline/read/index.js';

const FAILING: readonly Files[] = RULES.flatMap((rule) =>
  rule.examples.fails.map(({ files }) => files),
);

/** Ways in which a text is stored and spoilt that leave it the same text to its writer. */
const SPOILINGS: readonly ((text: string) => string)[] = [
  (text) => text,
  (text) => text.replaceAll('\n', '\r\n'),
  (text) => `\ufeff${text}`,
  (text) => text.replace(/^spoiler:/m, 'Spoiler:'),
  (text) => text.replace(/^name: (.)/m, 'name: $1\u200b'),
  (text) => text.replace(/^number: "(\d)/m, 'number: "0$1'),
  (text) => text.replace('water', 'wa\u2060ter'),
];

const contents = fc
  .tuple(
    fc.array(fc.constantFrom(...FAILING), { maxLength: 4 }),
    fc.array(fc.tuple(fc.constantFrom(...SPOILINGS), fc.nat(20)), { maxLength: 5 }),
  )
  .map(([examples, spoilings]) => {
    const files = new Map(
      sampleWith(examples.reduce<Files>((sum, each) => ({ ...sum, ...each }), {})),
    );
    const paths = [...files.keys()].sort();
    for (const [spoil, at] of spoilings) {
      const path = paths[at % paths.length] ?? '';
      files.set(path, spoil(files.get(path) ?? ''));
    }
    return files;
  });

function fixing(files: ReadonlyMap<string, string | Uint8Array>) {
  return fixContent({ folder: memoryFolder(files), wants: () => true, mayWrite: () => true });
}

test('fixed twice is fixed once, and nothing certain stays that stands alone', () => {
  let made = 0;
  fc.assert(
    fc.property(contents, (files) => {
      const first = fixing(files);
      const after = new Map<string, string | Uint8Array>(files);
      for (const [path, change] of first.files) after.set(path, change.after);
      const second = fixing(after);
      expect(second.files.size).toBe(0);
      expect(second.patch).toBe('');
      expect(second.was.report).toEqual(first.now.report);
      const errors = (report: typeof first.was.report): number =>
        report.findings.filter(({ certain, accepted }) => certain && accepted === undefined).length;
      if (first.worse.length === 0) expect(errors(first.now.report)).toBe(first.crowded.length);
      made += first.made;
    }),
    { numRuns: 60 },
  );
  expect(made).toBeGreaterThan(30);
});

test('what is not fixed keeps its bytes: line ends, marks, and every other line', () => {
  const ENDS = /\r\n|\r|\n/g;
  const read = (bytes: Uint8Array | null): string =>
    new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes ?? new Uint8Array());
  let untouched = 0;
  fc.assert(
    fc.property(contents, (files) => {
      const fixed = fixing(files);
      const certain = fixed.was.report.findings.filter((finding) => finding.certain);
      for (const [path, { before, after }] of fixed.files) {
        const [was, now] = [read(before), read(after)];
        const kinds = new Set(was.match(ENDS));
        expect((now.match(ENDS) ?? []).filter((end) => !kinds.has(end))).toEqual([]);
        expect(now.startsWith('\ufeff')).toBe(was.startsWith('\ufeff'));
        // What was mended may have shown more to mend, in lines that are not known here.
        if (fixed.made > certain.length) continue;
        const own = certain.filter(({ file }) => file === path);
        const lines = was
          .split(ENDS)
          .filter((_, at) => own.every(({ line, endLine }) => at + 1 < line || at + 1 > endLine));
        const left = now.split(ENDS);
        let from = 0;
        for (const line of lines) {
          const at = left.indexOf(line, from);
          expect(at, `${path}: ${line}`).toBeGreaterThanOrEqual(from);
          from = at + 1;
          untouched += 1;
        }
      }
    }),
    { numRuns: 40 },
  );
  expect(untouched).toBeGreaterThan(50);
});
