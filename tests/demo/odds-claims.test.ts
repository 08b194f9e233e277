import { describe, expect, it } from 'vitest';

import { withEdits } from './apply.js';
import { CopyChecker } from './check-copies.js';
import { demoFiles } from './copy.js';
import { findingOf } from './edits/index.js';
import { ODDS_CLAIM_EDITS } from './edits/odds-claims.js';

const files = demoFiles({ art: true });
const copies = new CopyChecker();
const WRAPPER = 'high-water/sales/wrapper-hobby.md';
const DRIPS = '*The Ferrywrights* drips.';

describe('odds that a text of the demo says', () => {
  it.each(ODDS_CLAIM_EDITS.map((edit) => [edit.says, edit] as const))('%s', (_, edit) => {
    const content = withEdits(files, edit.files);
    expect(copies.findingsOf(content)).toEqual([findingOf(edit, content)]);
  });

  it('give no finding where they are the truth', () => {
    const words = `${DRIPS} On average there is a Lake Chart in one pack of four. In every box there is one signature, and in every case one sketch card.`;
    const content = withEdits(files, { [WRAPPER]: [[DRIPS, words]] });
    expect(copies.findingsOf(content)).toEqual([]);
  });
});
