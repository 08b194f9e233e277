import { spotOf, type Sourced, type YamlPath } from '../model/index.js';
import { lettersOnly, nearest } from '../text/index.js';
import { formsOf } from './names/forms.js';
import { ofCard, type Remark, type Rule } from './rule.js';
import { edited } from './sample.js';
import type { Subject } from './subject.js';

const NAMES = `names:
  - { name: Odalys Thrane, kind: character, aliases: [Captain Thrane], avoid: [{ form: Miss Thrane, use: Captain Thrane }], level: open }
  - { name: Ines Albarran, kind: performer, level: open }
`;

function shown(who: string, ...changes: readonly [from: string, to: string][]) {
  return {
    'names.yaml': NAMES,
    'one/art/a2.svg': '<svg/>',
    ...edited(
      'one/cards/base/a2.md',
      ['story: 1/4', `story: 1/4\nimage: { file: art/a2.svg, depicts: [${who}] }`],
      ...changes,
    ),
  };
}

const PERSON = 'people:\n  - { id: jonah, name: Jonah Prewett, role: writer, clearance: last';

/** A name by which cards are picked, lines owed or roles signed, and that names.yaml does not know. */
export const depictsUnknown: Rule = {
  id: 'depicts-unknown',
  about: 'names',
  severity: 'error',
  why: 'A face under a wrong name is shown to nobody who must approve it.',
  look: unknownFaces,
  examples: {
    passes: [
      { says: 'a known name', files: shown('Odalys Thrane') },
      { says: 'a known form of it', files: shown('Captain Thrane') },
      {
        says: 'whoever sees only cards of somebody who is on one',
        files: {
          ...shown('Ines Albarran'),
          'people.yaml': `${PERSON}, sees: { depicts: [Ines Albarran] } }\n`,
        },
      },
    ],
    fails: [
      {
        says: 'a letter wrong in whom a picture shows',
        files: shown('Odalis Thrane'),
        gives: {
          at: 'one/cards/base/a2.md:6:38',
          covers: 'Odalis Thrane',
          message: 'names.yaml does not know whom the picture shows',
          found: 'Odalis Thrane',
          expected: '`Odalys Thrane`',
          fix: 'Odalys Thrane',
        },
      },
      {
        says: 'a form that is no longer used',
        files: shown('Miss Thrane'),
        gives: {
          at: 'one/cards/base/a2.md:6:38',
          covers: 'Miss Thrane',
          message: 'names.yaml does not know whom the picture shows',
          found: 'Miss Thrane',
          expected: '`Captain Thrane`',
          fix: 'Captain Thrane',
          certain: true,
        },
      },
      {
        says: 'a condition that matches no card',
        files: {
          ...shown('Odalys Thrane'),
          'people.yaml': `${PERSON}, sees: { depicts: [Ines Albarran] } }\n`,
        },
        gives: {
          at: 'people.yaml:2:88',
          covers: 'Ines Albarran',
          message: 'no card has a picture that shows Ines Albarran',
          found: 'Ines Albarran',
          expected: 'a name as it stands in `depicts` of a card',
        },
      },
    ],
  },
};

/** A place where a name of the cast must stand. */
interface Place {
  readonly name: string;
  readonly says: string;
  readonly path: YamlPath;
  readonly of: Sourced<unknown>;
  readonly owner: Pick<Remark, 'set' | 'card'>;
  /** Whether it picks cards by whom their pictures show. */
  readonly picks: boolean;
}

function* unknownFaces(subject: Subject): Generator<Remark> {
  const { names } = subject.content;
  if (!names) return;
  const known = new Set(names.value.names.flatMap(formsOf).map(composed));
  const shown = new Set(subject.cards.flatMap(({ front }) => front.image?.depicts ?? []));
  const allRead = subject.content.faults.length === 0;
  for (const place of placesIn(subject)) {
    if (!known.has(composed(place.name))) yield unknownName(place, subject);
    else if (place.picks && allRead && !shown.has(place.name)) yield unshownName(place, shown);
  }
}

function composed(name: string): string {
  return name.normalize('NFC');
}

function* placesIn({ content, property, cards }: Subject): Generator<Place> {
  for (const card of cards) {
    const { front, source } = card;
    const around = { of: { source, value: front }, owner: ofCard(card), picks: false };
    for (const [at, name] of (front.image?.depicts ?? []).entries()) {
      yield { name, says: 'whom the picture shows', path: ['image', 'depicts', at], ...around };
    }
    for (const [at, { as }] of (front.signers ?? []).entries()) {
      if (as === undefined) continue;
      yield { name: as, says: 'whom this signer plays', path: ['signers', at, 'as'], ...around };
    }
  }
  if (content.property) {
    const around = { of: content.property, owner: {}, picks: false };
    const says = 'whom this picks cards by';
    const lines = property.approvals === 'none' ? [] : property.approvals;
    for (const [at, { where }] of lines.entries()) {
      for (const [index, name] of (where?.depicts ?? []).entries()) {
        const path = ['approvals', at, 'where', 'depicts', index];
        yield { name, says, path, ...around, picks: true };
      }
    }
    for (const [at, { names = [] }] of (property.cuts ?? []).entries()) {
      for (const [index, name] of names.entries()) {
        yield { name, says: 'whom the cut renames', path: ['cuts', at, 'names', index], ...around };
      }
    }
    for (const [at, { name }] of (property.legal?.depicts ?? []).entries()) {
      const path = ['legal', 'depicts', at, 'name'];
      yield { name, says: 'to whom this line is owed', path, ...around };
    }
  }
  if (!content.people) return;
  for (const [at, { sees }] of content.people.value.people.entries()) {
    for (const [index, name] of (sees?.depicts ?? []).entries()) {
      const path = ['people', at, 'sees', 'depicts', index];
      const says = 'whom this picks cards by';
      yield { name, says, path, of: content.people, owner: {}, picks: true };
    }
  }
}

function unknownName({ name, says, path, of, owner }: Place, { content }: Subject): Remark {
  const names = content.names?.value.names ?? [];
  const avoided = names
    .flatMap(({ avoid = [] }) => avoid)
    .find(({ form }) => composed(form) === composed(name));
  const forms = names.flatMap(formsOf);
  const same = forms.find((form) => lettersOnly(form) === lettersOnly(name));
  const offered = avoided?.use ?? same ?? nearest(name, forms);
  const spot = spotOf(of.source, path);
  const typed = spot.source.text.slice(spot.from, spot.to) === name;
  return {
    ...owner,
    spot,
    message: `names.yaml does not know ${says}`,
    found: name,
    expected: offered === null ? 'a name or an alias of names.yaml' : `\`${offered}\``,
    ...(offered !== null && typed ? { fix: offered } : {}),
    ...(typed && (avoided ?? same) !== undefined ? { certain: true } : {}),
  };
}

function unshownName({ name, path, of, owner }: Place, shown: ReadonlySet<string>): Remark {
  const spot = spotOf(of.source, path);
  const near = nearest(name, shown);
  const typed = spot.source.text.slice(spot.from, spot.to) === name;
  return {
    ...owner,
    spot,
    message: `no card has a picture that shows ${name}`,
    found: name,
    expected: near === null ? 'a name as it stands in `depicts` of a card' : `\`${near}\``,
    ...(near !== null && typed ? { fix: near } : {}),
  };
}
