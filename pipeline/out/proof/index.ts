import type { View } from '../../gate/index.js';
import { listCards, mm } from '../card/index.js';
import { drawAnnotated } from './annotated.js';
import { block, draw } from './chrome.js';
import { INK } from './colours.js';
import { drawDeck } from './deck.js';
import { PAPERS } from './geometry.js';
import { drawNineUp } from './nine-up.js';
import { drawOverset } from './overset.js';
import { Pen } from './pen.js';
import { saysForWhom } from './strips.js';
import { MARGIN } from './template.js';
import type { Proof, ProofOptions } from './types.js';

const DRAWN = {
  annotated: drawAnnotated,
  'nine-up': drawNineUp,
  deck: drawDeck,
  overset: drawOverset,
  submission: drawAnnotated,
} as const;
const TITLES = {
  annotated: 'annotated proof',
  'nine-up': 'nine-up proof',
  deck: 'copy deck',
  overset: 'overset sheet',
  submission: 'submission',
} as const;

/**
 * Proof sheets of a view, as a PDF: values in, bytes out, the same bytes for the same input. Each
 * card is set anew from the view in the fonts of its layout. A view without a card gives one page
 * that says so.
 *
 * @throws RangeError for a view of the public, which has no layouts; for the overset sheet of a
 *   person's view, whose texts are not set as they will print; for a submission of any view but
 *   that person's, or without a password made by chance.
 * @throws ProofError where a card's art is no PNG or JPEG.
 */
export async function proofSheets(view: View, options: ProofOptions): Promise<Proof> {
  if (view.audience === 'public') throw new RangeError('a proof is for the house or for a person');
  const { kind, made } = options;
  if (kind === 'overset' && view.audience !== 'house') {
    throw new RangeError('the overset sheet is for the house');
  }
  refuseUnsealed(view, options);
  const whom = saysForWhom(view, options);
  const { password } = options;
  // The clear part of a sealed file has a digest of its title, by which a guess could be checked.
  const title = password ? SEALED_TITLE : `${view.property.title}: ${TITLES[kind]} (${whom})`;
  const pen = new Pen(title, made, password);
  const { placed, labels } = DRAWN[kind](pen, view, listCards(view, options), options);
  if (pen.pages === 0) drawEmpty(pen, `${whom}. ${EMPTY[kind]}`, options);
  return { pdf: await pen.finish(labels), placed };
}

const SEALED_TITLE = 'Submission';
/** 80 bits, if they are made by chance of 32 letters and digits. */
const FEWEST_LETTERS = 16;

function refuseUnsealed(view: View, { kind, submission, password }: ProofOptions): void {
  if (password && password.open.length < FEWEST_LETTERS) {
    throw new RangeError(`a password has at least ${String(FEWEST_LETTERS)} letters`);
  }
  if (password?.owner === password?.open && password) {
    throw new RangeError('the owner has a password of their own');
  }
  if ((kind === 'submission') !== (submission !== undefined)) {
    throw new RangeError('a submission needs to be said whose and which it is');
  }
  if (!submission) return;
  if (!password) throw new RangeError('a submission is sealed with a password');
  if (view.audience !== 'person' || view.person !== submission.person) {
    throw new RangeError('a submission is made of its person’s view alone');
  }
}

/** Where the art of the cards is that a proof shows: what its `art` will be asked for, each once. */
export function proofArt(
  view: View,
  which: Pick<ProofOptions, 'set' | 'subset'> = {},
): readonly string[] {
  const sources = listCards(view, which).flatMap(({ card }) => card.image?.source ?? []);
  return [...new Set(sources)];
}

const EMPTY = {
  annotated: 'There is no card to show.',
  'nine-up': 'There is no card to show.',
  deck: 'There is no card to show.',
  overset: 'Every text fits its zone.',
  submission: 'There is no card to decide on.',
} as const;

function drawEmpty(pen: Pen, sentence: string, { paper, chrome }: ProofOptions): void {
  pen.addPage(PAPERS[paper]);
  const style = { size: 11, leading: 16, colour: INK };
  const words = block(
    sentence,
    { x: MARGIN, y: mm(20) },
    PAPERS[paper].width - 2 * MARGIN,
    style,
    chrome,
  );
  pen.reads(pen.section('Nothing to show'), 'P', () => draw(pen, words));
}

export type { Paper as ProofPaper } from './geometry.js';
export {
  ProofError,
  type PlacedSide,
  type PdfPasswords,
  type PlacedWord,
  type Proof,
  type ProofKind,
  type ProofOptions,
  type SubmissionSheets,
} from './types.js';
