import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

import { view, type Audience, type View } from '../../pipeline/gate/index.js';
import { instantOf } from '../../pipeline/model/index.js';
import type { ProofOptions } from '../../pipeline/out/proof/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { select } from '../../pipeline/select/index.js';
import { openFace, type Faces } from '../../pipeline/typeset/index.js';

export const DAY = instantOf('2026-12-01T10:00:00+00:00[Europe/London]');

const { content, fonts } = readProperty(diskFolder('content'));

export { fonts };

const require = createRequire(import.meta.url);

function face(file: string): Faces['regular'] {
  return openFace(readFileSync(require.resolve(`@fontsource/alegreya-sans/files/${file}`)), file);
}

const bold = face('alegreya-sans-latin-700-normal.woff');

export const chrome: Faces = {
  regular: face('alegreya-sans-latin-400-normal.woff'),
  italic: face('alegreya-sans-latin-400-italic.woff'),
  bold,
  boldItalic: bold,
};

export const OPTIONS: ProofOptions = {
  kind: 'annotated',
  paper: 'a4',
  fonts,
  chrome,
  art: () => null,
  made: DAY,
};

/** The demo as an audience sees it. */
export function demo(audience: Audience = { kind: 'house' }): View {
  const released = select(content);
  if (!released) throw new Error('the demo has faults');
  const seen = view(released, audience);
  if (!seen) throw new Error('nothing is seen');
  return seen;
}

/** The demo as a person of people.yaml sees it. */
export function demoFor(id: string): View {
  const person = content.people?.value.people.find((each) => each.id === id);
  if (!person) throw new Error(`nobody is called ${id}`);
  return demo({ kind: 'person', person, at: DAY });
}
