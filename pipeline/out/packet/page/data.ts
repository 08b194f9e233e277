import { fontPlace } from '../font-prefix.js';
import type { OpenSetter, PageData } from '../page-data.js';
import { octetsOf } from '../octets.js';
import { byId } from './dom.js';

declare global {
  interface DocumentEventMap {
    setterready: CustomEvent<OpenSetter>;
  }
}

/** What the page was given. It was sealed with the page, so that its outline is enough. */
export async function readData(): Promise<PageData> {
  const value: unknown = JSON.parse(await packedText('packet'));
  if (isData(value)) return value;
  throw new Error('the page has no packet');
}

function isData(value: unknown): value is PageData {
  return typeof value === 'object' && value !== null && 'cards' in value && 'fonts' in value;
}

/** The text that stands packed in the page. */
export async function packedText(id: string): Promise<string> {
  return new TextDecoder().decode(await unpacked(textIn(id)));
}

/** Fills in the card, and the pictures on it. */
export function fill(place: HTMLElement, html: string): void {
  place.innerHTML = html;
  for (const image of place.querySelectorAll<SVGImageElement>('image[data-picture]')) {
    image.setAttribute('href', textIn(image.dataset['picture'] ?? ''));
  }
}

function textIn(id: string): string {
  return byId(id, HTMLTemplateElement).content.textContent;
}

/** The font files of the page, unpacked, by key. */
export async function unpackFonts(
  fonts: PageData['fonts'],
): Promise<ReadonlyMap<string, Uint8Array<ArrayBuffer>>> {
  const files = fonts.map(async (key) => [key, await unpacked(textIn(fontPlace(key)))] as const);
  return new Map(await Promise.all(files));
}

async function unpacked(text: string): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([octetsOf(text)])
    .stream()
    .pipeThrough(new DecompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}
