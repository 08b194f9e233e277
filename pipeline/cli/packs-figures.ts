import type { PacksReport } from '../../schema/index.js';
import { check, packedOf, RULES } from '../checks/index.js';
import type { Content } from '../model/index.js';
import { packsSet } from '../out/packs/index.js';
import { keptDictionaries } from '../read/index.js';
import type { FontShelf } from '../typeset/index.js';

/** What `packs` reads. */
export interface PacksSource {
  readonly content: Content;
  readonly fonts: FontShelf;
  /** The label of the highest level in it; null if it is not known. */
  readonly highest: string | null;
}

/** The packs of every set that says what is in them, or of one. */
export function packsOf({ content, fonts, highest }: PacksSource, only?: string): PacksReport {
  const asked = RULES.filter(({ about }) => about === 'packs').map(({ id }) => id);
  const { findings } = check(content, { fonts, dictionaries: keptDictionaries, only: asked });
  const sets = content.sets
    .filter(({ id }) => only === undefined || id === only)
    .flatMap((set) => {
      const packed = packedOf(set);
      if (packed === null) return [];
      return packsSet({
        id: set.id,
        title: set.plan.value.title,
        plan: packed.plan,
        report: packed.report,
        said: packed.odds,
        findings: findings.filter((finding) => finding.set === set.id),
      });
    });
  return { internal: highest === null ? 'INTERNAL' : `INTERNAL, up to: ${highest}`, sets };
}
