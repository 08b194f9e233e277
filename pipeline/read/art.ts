import type { Folder } from './folder.js';

/** A picture that cannot be used, said in a writer's words. */
export class ArtError extends Error {
  override readonly name = 'ArtError';
}

/** A raster picture without any metadata. */
export interface Raster {
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}

const SVG_ELEMENTS = new Set([
  'svg',
  'g',
  'path',
  'rect',
  'circle',
  'ellipse',
  'line',
  'polyline',
  'polygon',
  'defs',
  'clipPath',
  'mask',
  'pattern',
  'linearGradient',
  'radialGradient',
  'stop',
  'use',
  'symbol',
  'style',
]);

/**
 * Reads a picture of the content folder. SVG is held to a list of elements and to references
 * inside itself, since a renderer would follow others.
 * @throws ArtError if it is not there, or is none of SVG, PNG, JPEG and WebP.
 */
export function readArt(folder: Folder, path: string): Uint8Array {
  const bytes = readBytes(folder, path);
  const text = looksLikeSvg(bytes);
  if (text !== null) checkSvg(text, path);
  else if (!isRaster(bytes)) throw new ArtError(`${path} is no SVG, PNG, JPEG or WebP picture`);
  return bytes;
}

function readBytes(folder: Folder, path: string): Uint8Array {
  try {
    return folder.read(path);
  } catch {
    throw new ArtError(`${path} is not there`);
  }
}

function looksLikeSvg(bytes: Uint8Array): string | null {
  const start = new TextDecoder().decode(bytes.slice(0, 200)).trimStart();
  return start.startsWith('<svg') || start.startsWith('<?xml')
    ? new TextDecoder().decode(bytes)
    : null;
}

function checkSvg(svg: string, path: string): void {
  for (const [, element = ''] of svg.matchAll(/<\s*([A-Za-z][\w:.-]*)/g)) {
    if (!SVG_ELEMENTS.has(element))
      throw new ArtError(`${path} has a <${element}>, which is not allowed`);
  }
  const references = [
    ...svg.matchAll(/\bhref\s*=\s*["']\s*([^"']*)/gi),
    ...svg.matchAll(/url\(\s*["']?\s*([^"')]*)/gi),
  ];
  const outside = references.find(([, target = '']) => !target.startsWith('#'));
  if (outside) throw new ArtError(`${path} refers to ${outside[1] ?? ''}, outside itself`);
  if (/@import|<!ENTITY|<!DOCTYPE|\bon\w+\s*=/i.test(svg)) {
    throw new ArtError(`${path} has a script, an entity or an import, which is not allowed`);
  }
}

function isRaster(bytes: Uint8Array): boolean {
  const hex = [...bytes.slice(0, 12)].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return (
    hex.startsWith('89504e470d0a1a0a') ||
    hex.startsWith('ffd8ff') ||
    /^52494646.{8}57454250/.test(hex)
  );
}

/**
 * Draws a picture at a width in pixels, upright and in sRGB, without metadata. A raster picture is
 * never made larger than it is.
 * @throws ArtError if the picture is damaged.
 */
export async function rasterise(
  art: Uint8Array,
  width: number,
  format: 'png' | 'webp' | 'jpeg',
): Promise<Raster> {
  const { default: sharp } = await import('sharp');
  try {
    const vector = looksLikeSvg(art) !== null;
    const native = vector ? await sharp(art).metadata() : null;
    const density = native ? Math.min(2400, Math.max(1, (72 * width) / native.width)) : 72;
    const picture = sharp(art, { density })
      .autoOrient()
      .resize({ width, withoutEnlargement: !vector })
      .toFormat(format, format === 'png' ? { compressionLevel: 9 } : { quality: 82 });
    const { data, info } = await picture.toBuffer({ resolveWithObject: true });
    return { bytes: new Uint8Array(data), width: info.width, height: info.height };
  } catch (error) {
    throw new ArtError(`a picture is damaged: ${error instanceof Error ? error.message : ''}`);
  }
}

/** What `rasterise` draws with, by version. */
export async function drawnBy(): Promise<string> {
  const { default: sharp } = await import('sharp');
  return `sharp ${sharp.versions.sharp} vips ${sharp.versions.vips}`;
}
