import type { TestSpecification } from 'vitest/node';
import { BaseSequencer } from 'vitest/node';

/**
 * The test files that take longest, the longest first. They are begun first, so that none of them
 * runs alone at the end while other processors have nothing to do.
 */
export const LONGEST: readonly string[] = [
  'tests/law/sites.test.ts',
  'tests/demo/edits.test.ts',
  'tests/demo/instants.test.ts',
  'tests/law/law.test.ts',
  'tests/cli/final-proof.test.ts',
  'tests/cli/cli.test.ts',
  'tests/release/publish.test.ts',
  'tests/site/browser.test.ts',
  'tests/cli/recipes.test.ts',
  'tests/demo/broken.test.ts',
  'tests/law/mutants.test.ts',
  'tests/desk/page/with-desk.test.ts',
  'tests/release/rehearse.test.ts',
  'tests/site/checklist/take-out.test.ts',
  'tests/packet/access.test.ts',
  'tests/cli/cancelled.test.ts',
  'tests/audit/demo.test.ts',
  'tests/cli/publish.test.ts',
];

/** The longest test files first, then the others as Vitest sorts them. */
export default class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    const place = ({ moduleId }: TestSpecification): number => {
      const at = LONGEST.findIndex((path) => moduleId.endsWith(`/${path}`));
      return at < 0 ? LONGEST.length : at;
    };
    return sorted.toSorted((one, other) => place(one) - place(other));
  }
}
