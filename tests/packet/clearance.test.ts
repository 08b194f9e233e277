import { inflateRawSync } from 'node:zlib';

import { describe, expect, it } from 'vitest';

import { audit, type AuditFinding, type Eyes } from '../../pipeline/audit/index.js';
import type { View } from '../../pipeline/gate/index.js';
import { packetPage } from '../../pipeline/out/packet/index.js';
import { DAY, DEMO, person, seenBy } from '../proof/fixture.js';
import { SCRIPTS, submissionOf, submitted } from './fixture.js';

/** No picture is in them: nobody looks. */
const EYES: Eyes = {
  art: () => null,
  draw: () => Promise.reject(new Error('there is no picture')),
  digest: async (bytes) =>
    new Uint8Array(await crypto.subtle.digest('SHA-256', new Uint8Array(bytes))),
};

/** What a view's page has in it once it is opened: itself, and every text that is packed in it. */
function opened(view: View): ReadonlyMap<string, Uint8Array> {
  const keys = view.sets.flatMap((set) =>
    set.subsets.flatMap(({ cards }) =>
      cards.flatMap(({ state, identity }) =>
        state === 'shown' && identity !== null ? [`${set.id}/${identity}`] : [],
      ),
    ),
  );
  const submission = submissionOf(keys.map((key) => submitted(key)));
  const page = packetPage(view, submission, {
    fonts: DEMO.fonts,
    art: () => null,
    scripts: SCRIPTS,
  });
  const [, text = ''] = /<template id="packet">([^<]*)</.exec(page) ?? [];
  const bytes = new TextEncoder().encode(page);
  return new Map([
    ['page.html', bytes],
    ['packet.json', new Uint8Array(inflateRawSync(Buffer.from(text, 'base64')))],
  ]);
}

/** A person as they would be if they knew of no embargo: an audit goes by the level alone. */
function seenWithout(id: string): View {
  const audience = person(id);
  if (audience.kind !== 'person') throw new Error('a person');
  return seenBy({ ...audience, person: { ...audience.person, knows: [] } });
}

const audited = (view: View, clearance: string): Promise<readonly AuditFinding[]> =>
  audit(opened(view), DEMO.content, { at: DAY, clearance }, EYES);

describe('an opened packet tells nothing above its reviewer’s clearance', () => {
  it.each([
    ['tobit', 'premiere'],
    ['ines-desk', 'open'],
  ])('that of %s, who is cleared for %s', async (id, clearance) => {
    const files = opened(seenWithout(id));
    expect(new TextDecoder().decode(files.get('packet.json'))).toContain('Ines Albarran');
    expect(await audited(seenWithout(id), clearance)).toEqual([]);
  });

  it('and the same audit finds what a page of somebody else would tell them', async () => {
    const found = await audited(seenBy(person('amara')), 'premiere');
    expect(found.length).toBeGreaterThan(5);
    expect(new Set(found.map(({ file }) => file))).toContain('packet.json');
  });
});
