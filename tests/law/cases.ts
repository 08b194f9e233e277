import fc from 'fast-check';

import { diceOf, edited } from './edit.js';
import type { Eye } from './held.js';
import { editsFor } from './hidden-edits.js';
import type { Plain } from './plain.js';
import { looking } from './property.js';

/** A content with what hidden edits make of it: what the law is tried on where it must fail. */
export interface Case {
  readonly plain: Plain;
  readonly eye: Eye;
  readonly edits: readonly { readonly name: string; readonly draft: Plain }[];
}

/** The same cases in every run: contents, somebody who looks, and one edit of every kind. */
export function casesFor(kind: 'public' | 'person', count: number): readonly Case[] {
  return fc.sample(looking(kind), { numRuns: count, seed: 20270604 }).map(({ plain, eye }, at) => ({
    plain,
    eye,
    edits: editsFor(kind).flatMap((edit) => {
      const draft = edited(edit, plain, eye, diceOf(at, edit.name));
      return draft ? [{ name: edit.name, draft }] : [];
    }),
  }));
}
