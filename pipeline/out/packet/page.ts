import type { View, ViewSales, ViewSet } from '../../gate/index.js';
import { sayInstant } from '../../model/index.js';
import type { FontShelf } from '../../typeset/index.js';
import { escapeMarkup } from '../../text/index.js';
import { listCards, type Listed } from '../card/index.js';
import { pageCard, pageSales, type Making } from './page-card.js';
import { FaceList } from './faces.js';
import { fontPlace } from './font-prefix.js';
import { PictureList } from './picture.js';
import type { PageCard, PageData, PageLayout } from './page-data.js';
import { packed } from './packed.js';
import { BODY } from './page-body.js';
import { STYLE } from './page-style.js';
import type { Submission } from './submission.js';

export interface PacketOptions {
  /** The fonts of the layouts. */
  readonly fonts: FontShelf;
  /** JPEG, PNG or WebP bytes of a card's art; null where there is none yet. */
  readonly art: (source: string) => Uint8Array | null;
  /** The texts of the page's scripts; `seal` must be given the same. */
  readonly scripts: { readonly page: string; readonly setter: string };
}

/** The files of the page's scripts, beside this room's compiled `index.js`. */
export const PACKET_SCRIPTS = ['packet-page.js', 'packet-setter.js'] as const;

/**
 * A submission as one page that asks for nothing else, to be sealed: each text as it will print, what
 * changed, and what its reviewer decides. All that is shown of a card is the view's.
 * @throws RangeError for a view that is not a person's, for a text that the view has not, and for
 *   scripts that cannot stand in a page.
 */
export function packetPage(view: View, submission: Submission, options: PacketOptions): string {
  if (view.audience !== 'person') throw new RangeError('a packet is made of a person’s view alone');
  const { fonts, art, scripts } = options;
  const faces = new FaceList();
  const pictures = new PictureList(art);
  const making: Making = { view, submission, fonts, pictures, faces };
  const cards = cardsOf(making);
  const title = `Submission ${String(submission.round)} for ${submission.person.name}`;
  const zone = view.property.zone;
  const data: PageData = {
    packet: submission.id,
    property: submission.property,
    person: submission.person.id,
    expires: submission.expires,
    privateKey: submission.privateKey,
    names: view.names.map(({ name }) => name),
    cards,
    layouts: layoutsOf(view, making, cards),
    fonts: faces.keys,
  };
  const until = `Made ${sayInstant(submission.made, zone)}; open for decisions until ${sayInstant(submission.expires, zone)} (${zone}).`;
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="robots" content="noindex">
<title>${escapeMarkup(title)}</title>
<style>${STYLE}</style>
</head>
<body>
<header class="top">
<h1>${escapeMarkup(view.property.title)} <small>${escapeMarkup(title)}</small></h1>
<p class="until">${escapeMarkup(until)}</p>
${BODY}
<template id="packet">${packed(JSON.stringify(data))}</template>
<template id="setter">${packed(scripts.setter)}</template>
${templatesOf(faces.packed(), fontPlace)}
${templatesOf(pictures.addresses(), (key) => key)}
<script>${scriptText(scripts.page)}</script>
</body>
</html>
`;
}

/** The texts of the submission in its own order. */
function cardsOf(making: Making): readonly PageCard[] {
  const { view, submission } = making;
  const cards = new Map<string, Listed>();
  for (const listed of listCards(view, {})) {
    const { identity } = listed.card;
    if (identity !== null) cards.set(`${listed.set.id}/${identity}`, listed);
  }
  const sales: ReadonlyMap<string, { readonly set: ViewSet; readonly text: ViewSales }> = new Map(
    view.sets.flatMap((set) =>
      set.sales.map((text) => [`${set.id}/sales/${text.id}`, { set, text }] as const),
    ),
  );
  return submission.texts.map((text) => {
    const listed = cards.get(text.key);
    if (listed) return pageCard(making, listed, text);
    const found = sales.get(text.key);
    if (found) return pageSales(making, found.set, found.text, text);
    throw new RangeError(`${text.key} is not in the view`);
  });
}

/** The layouts of all cards whose words can be rewritten. */
function layoutsOf(
  { layouts }: View,
  { fonts, faces }: Making,
  cards: readonly PageCard[],
): Record<string, PageLayout> {
  const used = new Set(cards.flatMap(({ words }) => words?.layout ?? []));
  const all = [...used].flatMap((id) => {
    const layout = layouts.get(id);
    const families = fonts.get(id);
    if (!layout || !families) return [];
    const keys = [...families].map(([name, each]) => [name, faces.keysOf(each)] as const);
    return [[id, { layout, faces: Object.fromEntries(keys) }] as const];
  });
  return Object.fromEntries(all);
}

/** What the page takes up when it first needs it, each in a place of its own. */
function templatesOf(
  contents: readonly (readonly [key: string, text: string])[],
  place: (key: string) => string,
): string {
  return contents
    .map(([key, text]) => `<template id="${place(key)}">${text}</template>`)
    .join('\n');
}

function scriptText(script: string): string {
  if (/<\/script|<!--/i.test(script)) {
    throw new RangeError('the text of a script would end its element');
  }
  return script;
}
