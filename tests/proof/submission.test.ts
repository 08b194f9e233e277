import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

import { beforeAll, describe, expect, test } from 'vitest';

import { audit, type AuditFinding, type Eyes } from '../../pipeline/audit/index.js';
import { identityOf } from '../../pipeline/model/index.js';
import {
  proofSheets,
  type Proof,
  type ProofOptions,
  type SubmissionSheets,
} from '../../pipeline/out/proof/index.js';
import { programPath } from '../setup/programs.mjs';
import { sampleWith } from '../../pipeline/checks/index.js';
import { memoryFolder, readProperty } from '../../pipeline/read/index.js';
import { DAY, DEMO, HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { ask, pageLines } from './tools.js';

const OPEN = 'K7Q2M-00ABC-XYZ12-34567';
const OWNER = '9f86d081884c7d659a2feaa0c55ad015';
const TOBIT = seenBy(person('tobit'));
const BOXES =
  'approved approved with changes approved as noted revise and resubmit rejected on hold';
const PARTS = ['copy', 'image', 'layout'];

const LONG_HEAD = `---
title: A long sheet
kind: sell-sheet
goes: "2026-12-01T10:00:00+00:00[Europe/London]"
spoiler: open
---
`;

const keys = DEMO.content.sets.flatMap(({ cards }) =>
  cards.map((card) => `${card.set}/${identityOf(card)}`),
);
/** One card is not for him to decide on. */
const LEFT_OUT = 'high-water/crew/c002';
/** An outward text that he may decide on; of the other he is not asked. */
const SHEET = 'high-water/sales/sell-sheet';
const NOT_ISSUED = 'relics/re04';
/** Held by an embargo that he knows of, which the audit is not told. */
const KNOWN = 'high-water/promos/pr02';
const KNOWN_LABEL = 'the label of fair';
const SUBMISSION: SubmissionSheets = {
  round: 2,
  person: 'Tobit Crane',
  decides: new Map([
    ...keys.filter((key) => key !== LEFT_OUT).map((key) => [key, PARTS] as const),
    [SHEET, ['sales']],
  ]),
};
const SHEETS: ProofOptions = {
  ...OPTIONS,
  kind: 'submission',
  submission: SUBMISSION,
  password: { open: OPEN, owner: OWNER },
};

/** No picture is in them: nobody looks. */
const EYES: Eyes = {
  art: () => null,
  draw: () => Promise.reject(new Error('there is no picture')),
  digest: async (bytes) =>
    new Uint8Array(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))),
};

/** The same PDF without its password, by another program. */
function opened(pdf: Uint8Array): Uint8Array {
  const folder = mkdtempSync(join(tmpdir(), 'submission-'));
  const [from, to] = [join(folder, 'from.pdf'), join(folder, 'to.pdf')];
  try {
    writeFileSync(from, pdf);
    execFileSync(programPath('qpdf'), [`--password=${OPEN}`, '--decrypt', from, to]);
    return new Uint8Array(readFileSync(to));
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const audited = (pdf: Uint8Array): Promise<readonly AuditFinding[]> =>
  audit(new Map([['submission.pdf', pdf]]), DEMO.content, { at: DAY, clearance: 'premiere' }, EYES);

describe('the sheets of a submission', () => {
  let proof: Proof;
  let plain: Uint8Array;
  let pages: readonly string[];

  beforeAll(async () => {
    proof = await proofSheets(TOBIT, SHEETS);
    plain = opened(proof.pdf);
    pages = pageLines(plain);
  }, 60_000);

  test('open with their password, and only so', () => {
    expect(ask('qpdf', [`--password=${OPEN}`, '--check', 'FILE'], proof.pdf)).toContain(
      'No syntax or stream encoding errors found',
    );
    expect(() => ask('qpdf', ['--check', 'FILE'], proof.pdf)).toThrow('invalid password');
    expect(() => ask('qpdf', [`--password=${OPEN}8`, '--check', 'FILE'], proof.pdf)).toThrow(
      'invalid password',
    );
    expect(() => ask('pdftotext', ['FILE', '-'], proof.pdf)).toThrow('Incorrect password');
    const said = ask('pdftotext', ['-upw', OPEN, '-raw', 'FILE', '-'], proof.pdf);
    expect(
      said
        .split('\f')
        .slice(0, -1)
        .map((page) => page.replace(/\s+/g, ' ')),
    ).toEqual(pages);
  });

  test('are sealed by AES-256 in all their parts', () => {
    const said = ask('qpdf', [`--password=${OPEN}`, '--show-encryption', 'FILE'], proof.pdf);
    for (const what of ['stream', 'string', 'file']) {
      expect(said).toContain(`${what} encryption method: AESv3`);
    }
  });

  test('hold no clear text', () => {
    const octets = Buffer.from(proof.pdf);
    const told = ['Ferrywrights', 'High Water', 'Odalys', 'Crew and Craft', 'To return'];
    const ways = (word: string): readonly Buffer[] => [
      Buffer.from(word),
      Buffer.from(word, 'utf16le'),
      Buffer.from(word, 'utf16le').swap16(),
      Buffer.from(hexOf(word)),
    ];
    // They are all in the file that is opened, so that not to find them says something.
    const bare = Buffer.from(ask('qpdf', ['--qdf', 'FILE', '-'], plain), 'utf8');
    expect(told.filter((word) => !ways(word).some((way) => bare.includes(way)))).toEqual([]);
    const words = [...told, 'Tobit', 'Crane'];
    expect(words.filter((word) => ways(word).some((way) => octets.includes(way)))).toEqual([]);
  });

  test('carry the person and the submission on each page, and beside and on each card', () => {
    for (const page of pages) expect(page).toContain('For Tobit Crane · submission 2');
    const fronts = proof.placed.filter(({ side }) => side === 'front');
    expect(fronts.length).toBeGreaterThan(40);
    const written = pages.map((page) => page.replace(/ /g, '').split('TobitCrane,submission2'));
    const due = pages.map((_, at) => {
      const sides = proof.placed.filter(({ page }) => page === at + 1);
      return sides.length + sides.filter(({ side }) => side === 'back').length;
    });
    // Across each side, below each card, at the foot of the last three pages, below the sales text.
    expect(written.map((parts) => parts.length - 1)).toEqual([...due.slice(0, -3), 1, 2, 1]);
  });

  test('have a row of boxes for each card that can be decided on, and for no other', () => {
    const all = pages.join(' ');
    const cards = proof.placed.filter(({ side }) => side === 'back');
    const due = cards.filter(
      ({ set, identity }) =>
        identity !== NOT_ISSUED && SUBMISSION.decides.has(`${set}/${identity ?? ''}`),
    );
    expect(due.length).toBeGreaterThan(40);
    expect(cards.length - due.length).toBeGreaterThan(0);
    expect(all.split(BOXES).length - 1).toBe(due.length + 1);
    expect(
      all.split('decide on copy, image and layout · Tobit Crane, submission 2').length - 1,
    ).toBe(due.length);
    expect(all.split('nothing to decide here').length - 1).toBe(cards.length - due.length);
    expect(all.split('Initials').length - 1).toBe(due.length + 1);
  });

  test('have the odds and runs that they may know, with no box to mark', () => {
    const page = pages.at(-3) ?? '';
    expect(page).toContain('What collectors will be told of odds and runs');
    expect(page).toContain('There is no box to mark here; remarks go on the last page.');
    expect(page).toContain('Lake Charts 1:4');
    expect(page).not.toContain('Letters from the Drowned Street');
    expect(page).not.toContain(BOXES);
    expect(pages.at(-1)).toContain('Remarks on all of it');
  });

  test('have the outward texts that can be decided on, and no other', () => {
    const page = pages.at(-2) ?? '';
    expect(page).toContain('High Water: what is in the box sell-sheet The lake is coming up');
    expect(page).toContain(
      'High Water: what is in the box: decide on sales · Tobit Crane, submission 2',
    );
    expect(page).toContain(BOXES);
    expect(pages.join(' ')).not.toContain('Hobby wrapper');
  });

  test('of a long outward text go on over as many pages as it takes', async () => {
    const text = Array.from({ length: 150 }, (_, at) => `Line ${String(at)} of the lake.`);
    const long = readProperty(
      memoryFolder(sampleWith({ 'one/sales/long.md': `${LONG_HEAD}${text.join('\n\n')}\n` })),
    );
    const jonah = seenBy(person('jonah', long), long);
    const decides = new Map([['one/sales/long', ['sales']]]);
    const submission = { round: 1, person: 'Jonah Prewett', decides };
    const { pdf } = await proofSheets(jonah, { ...SHEETS, submission, fonts: long.fonts });
    const own = pageLines(opened(pdf)).filter((page) => page.includes('A long sheet'));
    expect(own.length).toBeGreaterThan(3);
    const found = own.join(' ').match(/Line \d+ of the lake\./g);
    expect(found).toEqual(text);
    expect(own.map((page) => page.includes(BOXES))).toEqual(
      own.map((_, at) => at === own.length - 1),
    );
  });

  test('have an identifier in the clear that tells nothing of what is in them', async () => {
    const idOf = (pdf: Uint8Array): string =>
      /\/ID \[<([0-9a-f]+)>/.exec(Buffer.from(pdf).toString('latin1'))?.[1] ?? 'none';
    const other = { ...SUBMISSION, round: 3 };
    const { pdf } = await proofSheets(TOBIT, { ...SHEETS, subset: 'promos', submission: other });
    expect(idOf(pdf)).toMatch(/^[0-9a-f]{32}$/);
    expect(idOf(pdf)).toBe(idOf(proof.pdf));
  });

  test('end by saying how they are returned', () => {
    expect(pages.at(-1)).toContain('Please return this by mail to whoever sent it');
    expect(pages.filter((page) => page.includes('Please return this'))).toHaveLength(1);
    expect(pages.at(-1)).toContain(`${String(pages.length)} of ${String(pages.length)}`);
  });

  test('tell nothing above the person’s clearance', async () => {
    const found = await audited(plain);
    expect(found.filter(({ card, from }) => card !== KNOWN && from !== KNOWN_LABEL)).toEqual([]);
    // The audit is no use if it cannot read them: the house's own sheets are full of findings.
    const house = await proofSheets(seenBy(HOUSE), OPTIONS);
    expect((await audited(house.pdf)).length).toBeGreaterThan(20);
    const sealed = await audited(proof.pdf);
    expect(sealed.map(({ from }) => from).join()).toContain('something');
  }, 60_000);
});

function hexOf(word: string): string {
  return Buffer.from(word).toString('hex');
}

describe('a submission is refused', () => {
  const refused = async (view = TOBIT, more: Partial<ProofOptions> = {}): Promise<string> => {
    const options = { ...SHEETS, subset: 'promos', ...more };
    return proofSheets(view, options).then(
      () => 'made',
      (error: unknown) => (error instanceof RangeError ? error.message : 'another error'),
    );
  };

  test('of any view but its person’s', async () => {
    const said = 'a submission is made of its person’s view alone';
    expect(await refused()).toBe('made');
    expect(await refused(seenBy(HOUSE))).toBe(said);
    expect(await refused(seenBy(person('lucan')))).toBe(said);
    const other = { ...SUBMISSION, person: 'Amara Linde' };
    expect(await refused(TOBIT, { submission: other })).toBe(said);
  });

  test('without a password, or with a weak one', async () => {
    const open: ProofOptions = { ...OPTIONS, kind: 'submission', submission: SUBMISSION };
    await expect(proofSheets(TOBIT, open)).rejects.toThrow(
      'a submission is sealed with a password',
    );
    expect(await refused(TOBIT, { password: { open: 'K7Q2M-00ABC', owner: OWNER } })).toBe(
      'a password has at least 16 letters',
    );
    expect(await refused(TOBIT, { password: { open: OPEN, owner: OPEN } })).toBe(
      'the owner has a password of their own',
    );
  });

  test('without whose it is', async () => {
    const bare: ProofOptions = { ...OPTIONS, kind: 'submission' };
    const said = 'a submission needs to be said whose and which it is';
    await expect(proofSheets(TOBIT, bare)).rejects.toThrow(said);
    expect(await refused(TOBIT, { kind: 'annotated' })).toBe(said);
  });
});
