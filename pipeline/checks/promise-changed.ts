import { changedPromise } from './claims/remarks.js';
import { countedTexts } from './claims/claims.js';
import type { Files, Remark, Rule } from './rule.js';
import type { Subject } from './subject.js';

function sent(words: string): Files {
  return {
    'one/sales/a.md': `---\nkind: web\ngoes: "2027-05-01T09:00:00+01:00[Europe/London]"\nsent: "2027-05-01"\nspoiler: open\n---\n${words}\n\n© 2027 Lantern & Oar\n`,
  };
}

/** A claim of a sales text that has gone, and no longer holds. */
export const promiseChanged: Rule = {
  id: 'promise-changed',
  about: 'counts',
  severity: 'error',
  why: 'Shops ordered by what they were told; what has changed must be said to them.',
  look: changedPromises,
  examples: {
    passes: [
      { says: 'a promise that is kept', files: sent('There are [2](count:base) base cards.') },
    ],
    fails: [
      {
        says: 'a base card that went after the text had gone',
        files: sent('There are [three](count:base) base cards.'),
        gives: {
          at: 'one/sales/a.md:7:12',
          covers: 'three',
          message: 'since 1 May 2027 this is a promise, and it no longer holds',
          found: 'three: the subset `base`',
          expected: '2, the subset `base`',
        },
      },
    ],
  },
};

function* changedPromises(subject: Subject): Generator<Remark> {
  for (const { text, claims } of countedTexts(subject)) {
    const sentOn = text.sales?.front.sent;
    if (sentOn === undefined) continue;
    for (const claim of claims) {
      if (claim.verdict === 'wrong') yield changedPromise(claim, sentOn);
    }
  }
}
