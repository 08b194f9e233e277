import fc from 'fast-check';
import type { Static } from 'typebox';

import type { BackFile, NamesFile, PeopleFile, Person, PropertyFile } from '../../schema/index.js';
import { anyHold, openHold, setWith } from './generate-sets.js';
import {
  DAY,
  ZONE,
  day,
  instantText,
  level,
  name,
  phrase,
  present,
  sometimes,
  word,
} from './generate-words.js';
import { momentOf, type Eye } from './held.js';
import type { Plain } from './plain.js';

/** Whole contents, generated: two sets, four levels of which one is absent, embargoes of all kinds. */

const shows = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.constant({ bio: 'full', art: 'front', facts: 'full', credits: 'full' } as const),
  },
  {
    weight: 3,
    arbitrary: fc
      .record({
        bio: fc.constantFrom(undefined, 'none', 'full'),
        art: fc.constantFrom(undefined, 'none', 'front', 'both'),
        facts: fc.constantFrom(undefined, 'none', 'full'),
        credits: fc.constantFrom(undefined, 'none', 'full'),
      })
      .map(present),
  },
  { weight: 2, arbitrary: fc.constantFrom('none' as const, undefined) },
);

const property: fc.Arbitrary<PropertyFile> = fc
  .record({
    lifts: fc
      .tuple(day, day, day, day, day, day)
      .map(([a, b, c, ...rest]) => [...[a, b, c].sort((x, y) => x - y), ...rest]),
    unsetTop: fc.nat(3).map((n) => n === 0),
    announceSpring: fc.constantFrom(undefined, false, true),
    announceFinale: fc.constantFrom(undefined, false),
    vanishedUnset: fc.boolean(),
    printed: sometimes(fc.constant(-3)),
    legal: sometimes(phrase, 3),
    site: shows,
    accent: sometimes(fc.constantFrom('#0b6e69', '#112233'), 3),
    siteTitle: sometimes(phrase, 3),
    dataTerms: sometimes(phrase, 3),
    address: sometimes(fc.constant('https://cards.example/lake/'), 2),
    title: word,
  })
  .map(({ lifts, site, accent, legal, ...made }) => {
    const [shops = 0, spring = 0, finale = 0, fair = 0, vanished = 0, quiet = 0] = lifts;
    const finaleLift = made.unsetTop ? 'unset' : instantText(finale);
    return {
      id: 'ferrywrights',
      title: made.title,
      zone: ZONE,
      since: instantText(0),
      levels: [
        { id: 'open', label: 'Known' },
        present({
          id: 'shops',
          label: 'First',
          lift: instantText(shops),
          print: made.printed === undefined ? undefined : instantText(shops + made.printed),
        }),
        present({ id: 'spring', lift: instantText(spring), announce: made.announceSpring }),
        present({
          id: 'finale',
          label: 'Last',
          lift: finaleLift,
          held: 'absent',
          announce: made.announceFinale,
        }),
      ],
      embargoes: [
        { id: 'fair', label: 'The fair', lift: instantText(fair) },
        { id: 'undated', lift: 'unset' },
        {
          id: 'vanished',
          lift: made.vanishedUnset ? 'unset' : instantText(vanished),
          held: 'absent',
        },
        { id: 'quiet', lift: instantText(quiet), announce: false },
      ],
      cuts: [{ id: 'cut-6', received: '2026-07-20' }],
      documents: [
        { id: 'script-4', title: 'Script', level: 'spring' },
        { id: 'diary', title: 'Diary' },
        { id: 'bible', title: 'Bible', level: 'finale' },
      ],
      approvals: 'none',
      beats: [{ at: '1/1', says: 'The rise', level: 'open' }],
      ...(legal === undefined
        ? {}
        : {
            legal: { line: legal, depicts: [{ name: 'Ines Albarran', line: 'By leave of I. A.' }] },
          }),
      review: { workingDays: 10 },
      site: present({
        shows: site,
        title: made.siteTitle,
        address: made.address,
        dataTerms: made.dataTerms,
        look: accent === undefined ? undefined : { accent },
      }),
    };
  });

const people: fc.Arbitrary<PeopleFile> = fc
  .array(
    fc
      .record({
        name,
        role: fc.constantFrom('writer', 'licensor', 'likeness'),
        clearance: fc.constantFrom('open', 'shops', 'spring', 'finale'),
        knows: fc.option(fc.subarray(['fair', 'undated', 'vanished', 'quiet']), { nil: undefined }),
        sees: sometimes(
          fc.constantFrom<Static<typeof Person>['sees'][]>(
            { depicts: ['Ines Albarran'] },
            { subset: ['crew', 'secret'] },
            { group: ['base'], depicts: ['Tove Lindqvist', 'Ines Albarran'] },
          ),
          2,
        ),
      })
      .map(present),
    { minLength: 2, maxLength: 4 },
  )
  .map((list) => ({ people: list.map((person, index) => ({ id: `p${index}`, ...person })) }));

const names: fc.Arbitrary<NamesFile> = fc
  .array(
    fc
      .record({
        name,
        kind: fc.constantFrom('character', 'place'),
        level,
        publicName: sometimes(name),
        embargo: sometimes(fc.constant<string[]>(['fair']), 4),
        say: sometimes(name),
        former: sometimes(fc.nat(9), 2),
        aliases: sometimes(
          fc.array(fc.oneof(name, fc.record({ form: name, level })), { maxLength: 2 }),
        ),
      })
      .map(({ former, ...made }) =>
        present({
          ...made,
          avoid:
            former === undefined
              ? undefined
              : [{ form: `Former${String(former)}`, use: made.name }],
        }),
      ),
    { minLength: 1, maxLength: 4 },
  )
  .map((list) => ({
    names: list,
    secrets: [{ id: 'siblings', level: 'finale', says: 'Kin', allOf: [['Odalys'], ['brother']] }],
  }));

function layout(id: string): fc.Arbitrary<BackFile> {
  return fc
    .record({
      shared: sometimes(fc.record({ caption: phrase }), 3),
      paper: sometimes(fc.constant('#ffffff')),
    })
    .map((more) => ({
      id,
      trim: { width: 63.5, height: 88.9 },
      bleed: 3.175,
      safe: 3.175,
      fonts: { body: { regular: 'body.ttf' } },
      zones: {
        bio: { x: 5, y: 32, width: 53.5, height: 24, font: 'body', size: 6.8, leading: 8.4 },
      },
      ...present(more),
    }));
}

const setHold = fc.oneof(
  { weight: 1, arbitrary: openHold },
  { weight: 1, arbitrary: anyHold },
  {
    weight: 3,
    arbitrary: fc.constantFrom<{ spoiler?: string; embargo?: string[] }[]>(
      { spoiler: 'finale' },
      { spoiler: 'finale' },
      { embargo: ['vanished'] },
      { spoiler: 'spring' },
    ),
  },
);

/** A whole content of twenty cards or more, with parallels and sales texts. */
export const plainContent: fc.Arbitrary<Plain> = fc
  .record({
    property,
    names,
    people,
    layouts: fc.tuple(layout('standard'), layout('ornate'), layout('spare')),
    alder: setWith('alder', openHold, 2),
    birch: setWith('birch', setHold, 0),
  })
  .map(({ alder, birch, ...made }) => ({ ...made, sets: [alder, birch] }));

/** Instants that matter to a content: at, just before and just after each of its dates. */
export function instantsOf({ property: { since, levels, embargoes }, sets }: Plain): number[] {
  const texts = [
    ...[...levels, ...(embargoes ?? [])].flatMap(({ lift }) => lift ?? []),
    ...sets.flatMap(({ plan: { street } }) =>
      street === undefined ? [] : typeof street === 'string' ? [street] : Object.values(street),
    ),
  ].filter((text) => text !== 'unset');
  const from = momentOf(since);
  const moments = texts.map(momentOf).flatMap((at) => [at - 1000, at, at + DAY / 2]);
  return [from, ...moments.filter((at) => at >= from)].sort((a, b) => a - b);
}

/** A content and somebody who looks at it: the public, or one of its people. */
export function looking(kind: 'public' | 'person'): fc.Arbitrary<{ plain: Plain; eye: Eye }> {
  return fc.tuple(plainContent, fc.nat(), fc.nat()).map(([plain, when, who]) => {
    const instants = instantsOf(plain);
    const { people: list } = plain.people;
    const at = instants[Math.floor(when ** 0.5) % instants.length] ?? 0;
    return {
      plain,
      eye: { at, person: kind === 'person' ? (list[who % list.length] ?? null) : null },
    };
  });
}
