import { undividedNames } from '../model/index.js';
import { setText, type Setting } from '../typeset/index.js';
import { filledZones, type FilledZone } from './filled-zones.js';
import type { Subject } from './subject.js';

/** A text in its zone, set. */
export interface FittedZone extends FilledZone {
  readonly setting: Setting;
}

const known = new WeakMap<Subject, readonly FittedZone[]>();

/** Every text of every printed card, set in its zone; several rules ask, so it is done once. */
export function fittedZones(subject: Subject): readonly FittedZone[] {
  const before = known.get(subject);
  if (before) return before;
  const undivided = undividedNames(subject.content.names?.value ?? null);
  const fitted = [...filledZones(subject)].map((filled) => ({
    ...filled,
    setting: setText(filled.text, filled.zone, filled.faces, { undivided }),
  }));
  known.set(subject, fitted);
  return fitted;
}

/** "`bio`", or "`name` on the front". */
export function sayZone({ name, side }: FilledZone): string {
  return `\`${name}\`${side === 'front' ? ' on the front' : ''}`;
}
