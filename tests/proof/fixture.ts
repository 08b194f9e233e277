import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { view, type Audience, type View } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import type { ProofOptions } from '../../pipeline/out/proof/index.js';
import { diskFolder, readProperty, type PropertyReading } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { openFace, type Faces } from '../../pipeline/typeset/index.js';
import { fewerCards } from '../demo/fewer.js';

/** A day before anything of the set has lifted. */
export const DAY = instantOf('2026-12-01T10:00:00+00:00[Europe/London]');

const WHOLE = readProperty(diskFolder('content'));

/** The demo with the first cards of each subset. */
export const DEMO: PropertyReading = { ...WHOLE, content: fewerCards(WHOLE.content) };

const require = createRequire(import.meta.url);

function face(file: string): Faces['regular'] {
  return openFace(readFileSync(require.resolve(`@fontsource/alegreya-sans/files/${file}`)), file);
}

const bold = face('alegreya-sans-latin-700-normal.woff');

export const CHROME: Faces = {
  regular: face('alegreya-sans-latin-400-normal.woff'),
  italic: face('alegreya-sans-latin-400-italic.woff'),
  bold,
  boldItalic: bold,
};

export const OPTIONS: ProofOptions = {
  kind: 'annotated',
  paper: 'a4',
  fonts: DEMO.fonts,
  chrome: CHROME,
  art: () => null,
  made: DAY,
};

export const HOUSE: Audience = { kind: 'house' };

/** A property as an audience sees it. */
export function seenBy(audience: Audience, { content }: PropertyReading = DEMO): View {
  const released = select(content);
  if (!released) throw new Error(`faults: ${JSON.stringify(content.faults, null, 1)}`);
  const seen = view(released, audience);
  if (!seen) throw new Error('nothing is seen');
  return seen;
}

/** Somebody of people.yaml on the day. */
export function person(id: string, { content }: PropertyReading = DEMO): Audience {
  const found = content.people?.value.people.find((each) => each.id === id);
  if (!found) throw new Error(`nobody is called ${id}`);
  return { kind: 'person', person: found, at: DAY };
}
