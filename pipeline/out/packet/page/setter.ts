import { zoneTexts } from '../../../model/index.js';
import { openFace, type Face, type Faces } from '../../../typeset/index.js';
import { mm, setSides, sizeInMm, type CardText } from '../../card/index.js';
import { backSvg, frontSvg } from '../card-sides.js';
import type { FaceKeys, OpenSetter, PageLayout, PageWords, SetAnew } from '../page-data.js';
import type { SideDrawing } from '../side-svg.js';

/** Opens each face once, and knows the key of each. */
class Fonts {
  readonly #byKey = new Map<string, Face>();
  readonly #keys = new Map<Face, string>();

  constructor(readonly files: ReadonlyMap<string, Uint8Array>) {}

  family({ regular, italic, bold, boldItalic }: FaceKeys): Faces {
    return {
      regular: this.#face(regular),
      italic: this.#face(italic),
      bold: this.#face(bold),
      boldItalic: this.#face(boldItalic),
    };
  }

  keyOf(face: Face): string {
    return this.#keys.get(face) ?? '';
  }

  #face(key: string): Face {
    const known = this.#byKey.get(key);
    if (known) return known;
    const face = openFace(this.files.get(key) ?? new Uint8Array(), key);
    this.#byKey.set(key, face);
    this.#keys.set(face, key);
    return face;
  }
}

function setWith(
  fonts: Fonts,
  { layout, faces }: PageLayout,
  { bio, rest }: PageWords,
  address: string | null,
): SetAnew {
  const families = Object.entries(faces).map(([name, keys]) => [name, fonts.family(keys)] as const);
  const text = setSides(layout, zoneTexts({ ...rest, bio }), new Map(families));
  const { trim, bleed } = layout;
  const size = { trim: sizeInMm(trim.width, trim.height), bleed: mm(bleed) };
  const keyOf: SideDrawing['keyOf'] = (face) => fonts.keyOf(face);
  const art = address === null ? { hatched: 'Art to come' } : { address };
  return {
    front: layout.front ? frontSvg(size, layout, text, art, keyOf) : '',
    back: layout.blank === true ? '' : backSvg(size, layout, text, keyOf),
    faults: faultsOf(text),
  };
}

/** What keeps texts from printing, as the proof says it. */
function faultsOf({ front, back }: CardText): readonly string[] {
  return [...front, ...back].flatMap(({ name, setting }) => {
    const { overset, wide, missing } = setting;
    const what = name === 'bio' ? 'The bio' : `The ${name}`;
    return [
      ...(overset > 0 ? [`${what} is overset by ${lines(overset)}.`] : []),
      ...(wide > 0 ? [`${what} has ${lines(wide)} wider than the zone.`] : []),
      ...missing.map(({ character }) => `${what} has “${character}”, which the font has not.`),
    ];
  });
}

function lines(count: number): string {
  return count === 1 ? '1 line' : `${String(count)} lines`;
}

const detail: OpenSetter = ({ layouts }, files) => {
  const fonts = new Fonts(files);
  return {
    set: (words, art) => {
      const layout = words.layout === null ? undefined : layouts[words.layout];
      return layout ? setWith(fonts, layout, words, art) : { front: '', back: '', faults: [] };
    },
  };
};

document.dispatchEvent(new CustomEvent('setterready', { detail }));
