import { undividedNames, type Card, type Content } from '../model/index.js';
import { fitText, setText, type Fit, type FontShelf, type Setting } from '../typeset/index.js';
import { filledZones, wordsOf, type FilledZone } from './filled-zones.js';
import { groundOf, type Ground } from './ground.js';
import { subjectOf, type Subject } from './subject.js';
import { NO_DICTIONARIES } from '../text/index.js';

/** A text in its zone, with how it fits; its lines are not kept, since ten thousand cards have many. */
export interface FittedZone extends FilledZone {
  readonly fit: Fit;
  /** Sets it once more, for its lines. */
  readonly set: () => Setting;
}

const known = new WeakMap<Subject, readonly FittedZone[]>();

/** Every text of every printed card, set in its zone; several rules ask, so it is done once. */
export function fittedZones(subject: Subject): readonly FittedZone[] {
  const before = known.get(subject);
  if (before) return before;
  const undivided = undividedNames(subject.content.names?.value ?? null);
  const ground = groundOf(subject);
  const fitted = [...filledZones(subject)].map((filled) => {
    const text = [filled.text, filled.zone, filled.faces, { undivided }] as const;
    const fit = fitOf(filled, ground, () => fitText(...text));
    return { ...filled, fit, set: () => setText(...text) };
  });
  known.set(subject, fitted);
  return fitted;
}

/** A fit, and what it was made of besides the card. A zone is another when its layout was read anew. */
interface KnownFit extends Pick<FilledZone, 'zone' | 'faces'> {
  readonly ground: Ground;
  /** Of a text that is not of the card, its words; null for the card's own. */
  readonly words: string | null;
  readonly fit: Fit;
}

const fits = new WeakMap<Card, Map<string, KnownFit>>();

function fitOf(filled: FilledZone, ground: Ground, fit: () => Fit): Fit {
  const { card, side, name, zone, faces, text, isShared } = filled;
  const words = isShared ? wordsOf(text) : null;
  const ofCard = fits.get(card) ?? new Map<string, KnownFit>();
  fits.set(card, ofCard);
  const key = `${side} ${name}`;
  const before = ofCard.get(key);
  if (
    before?.ground === ground &&
    before.zone === zone &&
    before.faces === faces &&
    before.words === words
  ) {
    return before.fit;
  }
  const now = fit();
  ofCard.set(key, { ground, zone, faces, words, fit: now });
  return now;
}

/** How the bio of every printed card fits its zone on the back. */
export function bioFits(content: Content, fonts: FontShelf): ReadonlyMap<Card, Fit> {
  const subject = subjectOf(content, { fonts, dictionaries: NO_DICTIONARIES });
  const bios = subject
    ? fittedZones(subject).filter(({ name, side }) => name === 'bio' && side === 'zones')
    : [];
  return new Map(bios.map(({ card, fit }) => [card, fit]));
}

/** "`bio`", or "`name` on the front". */
export function sayZone({ name, side }: FilledZone): string {
  return `\`${name}\`${side === 'front' ? ' on the front' : ''}`;
}
