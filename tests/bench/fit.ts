import { create, type Font } from 'fontkit';

import { zoneTexts } from '../../pipeline/model/index.js';
import { diskFolder, readProperty } from '../../pipeline/read/index.js';
import { fitText, openFace, setText, type Faces } from '../../pipeline/typeset/index.js';
import { inTurn, processorTime, type Result } from './measure.js';

type Bio = Parameters<typeof fitText>[0];

/** The bios of a bench property, with the zone and the faces that they are set in. */
function biosOf(content: string) {
  const { content: read, fonts } = readProperty(diskFolder(content));
  const [layout] = read.layouts.values();
  const zone = layout?.value.zones['bio'];
  const faces = layout && zone ? fonts.get(layout.value.id)?.get(zone.font) : undefined;
  if (!zone || !faces) throw new Error('the bench property has no layout with a bio');
  const bios = read.sets.flatMap(({ cards }) => cards.map(({ bio }) => wordsOf(bio)));
  return { zone, faces, bios };
}

function wordsOf(bio: Bio): Bio {
  const rest = { number: null, name: '', facts: [], texts: {}, credits: [], shared: {} };
  return zoneTexts({ ...rest, bio, legal: null, statement: null }).get('bio') ?? [];
}

/** Fit of every bio, fonts opened anew, beside the font library's layout of each whole bio. */
export async function benchFit(content: string): Promise<Result> {
  const { zone, faces, bios } = biosOf(content);
  const texts = bios.map((bio) =>
    bio
      .flat()
      .map(({ text }) => text)
      .join(''),
  );
  const job = () => {
    const opened = openedAnew(faces);
    for (const bio of bios) fitText(bio, zone, opened);
  };
  const floor = () => {
    const font = opened(faces.regular.bytes);
    for (const text of texts) font.layout(text);
  };
  const times = await inTurn(3, job, floor);
  return {
    name: `fit of ${String(bios.length)} bios`,
    milliseconds: times.job,
    floor: 'the font library’s layout of each',
    floorMilliseconds: times.floor,
    goal: 0.5,
  };
}

/** Milliseconds, on average, in which a bio with a word changed is set anew. */
export function benchChangedBio(content: string): number {
  const { zone, faces, bios } = biosOf(content);
  const changed = bios
    .slice(0, 1000)
    .map((bio, at) => bio.map((runs) => [...runs, { ...PLAIN, text: ` changed${String(at)}` }]));
  const start = processorTime();
  for (const bio of changed) setText(bio, zone, faces);
  return (processorTime() - start) / changed.length;
}

const PLAIN = { italic: false, bold: false };

function openedAnew({ regular, italic, bold, boldItalic }: Faces): Faces {
  return {
    regular: openFace(regular.bytes, regular.name),
    italic: openFace(italic.bytes, italic.name),
    bold: openFace(bold.bytes, bold.name),
    boldItalic: openFace(boldItalic.bytes, boldItalic.name),
  };
}

function opened(bytes: Uint8Array): Font {
  const font = create(Buffer.from(bytes));
  if (!('layout' in font)) throw new Error('a collection of fonts is no font');
  return font;
}
