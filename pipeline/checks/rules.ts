import { alike } from './alike.js';
import { absentGap } from './absent-gap.js';
import { acceptedUnused } from './accepted-unused.js';
import { approvalMissing } from './approval-missing.js';
import { approvalStale } from './approval-stale.js';
import { artMissing } from './art-missing.js';
import { controlCharacter } from './control-character.js';
import { copyCharacters } from './copy-characters.js';
import { copyEmpty } from './copy-empty.js';
import { copyMarkup } from './copy-markup.js';
import { copyWords } from './copy-words.js';
import { earlyPrint } from './early-print.js';
import { frontMatter } from './front-matter.js';
import { heldSpan } from './held-span.js';
import { depictsUnknown } from './depicts-unknown.js';
import { nameAvoided } from './name-avoided.js';
import { nameNear } from './name-near.js';
import { nameStyle } from './name-style.js';
import { nameUnknown } from './name-unknown.js';
import { nameVaries } from './name-varies.js';
import { signerWithdrawn } from './signer-withdrawn.js';
import { depictsHeld } from './depicts-held.js';
import { idTells } from './id-tells.js';
import { idUnknown } from './id-unknown.js';
import { leak } from './leak.js';
import { levelOrder } from './level-order.js';
import { levelUnknown } from './level-unknown.js';
import { liftMissing } from './lift-missing.js';
import { misplacedCard } from './misplaced-card.js';
import { mixedScript } from './mixed-script.js';
import { nameHeld } from './name-held.js';
import { numberDuplicate } from './number-duplicate.js';
import { numberForm } from './number-form.js';
import { numberGap } from './number-gap.js';
import { numberOrder } from './number-order.js';
import { numberRange } from './number-range.js';
import { numberTells } from './number-tells.js';
import { overset } from './overset.js';
import { pathOutside } from './path-outside.js';
import { contrast } from './contrast.js';
import { fitTight } from './fit-tight.js';
import { glyphMissing } from './glyph-missing.js';
import { typeSmall } from './type-small.js';
import { zoneOutside } from './zone-outside.js';
import { zoneOverlap } from './zone-overlap.js';
import { cutStale } from './cut-stale.js';
import { factUnsourced } from './fact-unsourced.js';
import { sourceWithdrawn } from './source-withdrawn.js';
import { quoteUnsourced } from './quote-unsourced.js';
import { legalForm } from './legal-form.js';
import { legalMissing } from './legal-missing.js';
import { statementMissing } from './statement-missing.js';
import { packPlaces } from './pack-places.js';
import { packDivides } from './pack-divides.js';
import { packGuarantee } from './pack-guarantee.js';
import { oddsStated } from './odds-stated.js';
import { oddsTell } from './odds-tell.js';
import { redemptionTerms } from './redemption-terms.js';
import type { Rule } from './rule.js';
import { schema } from './schema.js';
import { secret } from './secret.js';
import { readability } from './readability.js';
import { repeatedWord } from './repeated-word.js';
import { houseStyle } from './house-style.js';
import { spelling } from './spelling.js';
import { storyCoverage } from './story-coverage.js';
import { storyOrder } from './story-order.js';
import { countClaim } from './count-claim.js';
import { printedList } from './printed-list.js';
import { promiseChanged } from './promise-changed.js';
import { subsetCount } from './subset-count.js';
import { total } from './total.js';
import { totalUndefined } from './total-undefined.js';
import { unknownKey } from './unknown-key.js';

/** Every rule, in the order in which lists show them. */
export const RULES: readonly Rule[] = [
  schema,
  unknownKey,
  frontMatter,
  misplacedCard,
  artMissing,
  pathOutside,
  idUnknown,
  acceptedUnused,
  idTells,

  levelUnknown,
  levelOrder,
  liftMissing,

  numberGap,
  numberDuplicate,
  numberRange,
  numberForm,
  numberOrder,
  numberTells,

  subsetCount,
  total,
  totalUndefined,
  countClaim,
  printedList,
  promiseChanged,

  copyEmpty,
  copyWords,
  copyCharacters,
  copyMarkup,
  controlCharacter,
  mixedScript,

  overset,
  fitTight,
  glyphMissing,
  zoneOutside,
  zoneOverlap,
  typeSmall,
  contrast,

  leak,
  secret,
  earlyPrint,
  storyOrder,
  storyCoverage,
  nameHeld,
  heldSpan,
  absentGap,
  depictsHeld,

  nameAvoided,
  nameNear,
  nameUnknown,
  nameVaries,
  nameStyle,
  depictsUnknown,
  signerWithdrawn,

  cutStale,
  factUnsourced,
  sourceWithdrawn,
  quoteUnsourced,

  spelling,
  repeatedWord,
  houseStyle,
  readability,
  alike,

  legalMissing,
  legalForm,
  statementMissing,

  packPlaces,
  packDivides,
  packGuarantee,
  oddsStated,
  oddsTell,
  redemptionTerms,

  approvalMissing,
  approvalStale,
];
