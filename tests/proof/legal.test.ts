import { expect, test } from 'vitest';

import { sampleWith } from '../../pipeline/checks/index.js';
import { WITH_LAYOUT } from '../../pipeline/checks/fit-sample.js';
import { edited } from '../../pipeline/checks/sample.js';
import { proofSheets } from '../../pipeline/out/proof/index.js';
import { memoryFolder, readProperty } from '../../pipeline/read/index.js';
import { HOUSE, OPTIONS, person, seenBy } from './fixture.js';
import { pageLines } from './tools.js';

const OWED = 'Likeness by leave of I. Albarran';
const PICTURE =
  'image: { file: art/b1.svg, alt: A hand on a chart, depicts: [Ines Albarran] }\nspoiler: open';

const reading = readProperty(
  memoryFolder(
    sampleWith({
      ...WITH_LAYOUT,
      ...edited('one/cards/extra/b1.md', ['spoiler: open', PICTURE]),
      ...edited('property.yaml', [
        'Lantern & Oar" }',
        `Lantern & Oar", depicts: [{ name: Ines Albarran, line: "${OWED}" }] }`,
      ]),
    }),
  ),
);
const options = { ...OPTIONS, fonts: reading.fonts, kind: 'annotated' } as const;

test('the line owed to whoever is shown is drawn after the legal line', async () => {
  const { pdf } = await proofSheets(seenBy(HOUSE, reading), { ...options, subset: 'extra' });
  expect(pageLines(pdf).join(' ')).toContain(`© 2027 Lantern & Oar ${OWED}`);
});

test('a person’s sheet has the line too, if they may know who is shown', async () => {
  const view = seenBy(person('jonah', reading), reading);
  const cut = await proofSheets(view, { ...options, subset: 'extra' });
  expect(pageLines(cut.pdf).join(' ')).toContain(`© 2027 Lantern & Oar ${OWED}`);
});
