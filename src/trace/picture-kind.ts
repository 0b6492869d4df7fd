import type { PictureSize } from './picture-scale.ts';

/** What a file is by its first bytes, and its size in pixels where they tell. */
export interface PictureKind {
  /** `readable`: a picture that browsers decode; `kept`: one of those that a family file may hold. */
  readonly use: 'kept' | 'readable' | 'refused';
  readonly size: PictureSize | null;
  /** Why it is refused and what to do; empty where it is not. */
  readonly what: string;
  readonly cure: string;
}

/** How many of a file's first bytes {@link pictureKind} wants to see. */
export const BYTES_LOOKED_AT = 256 * 1024;

/**
 * Tells pictures from other files by their first bytes, whatever their name says.
 *
 * @source PNG (W3C, 2003) section 11.2.2; JPEG (ITU-T T.81) B.2.2; WebP container (RFC 9649); the rest by their well-known
 *   signatures, from memory.
 * @check tests/unit/trace/picture-kind.test.ts
 */
export function pictureKind(bytes: Uint8Array): PictureKind {
  if (startsWith(bytes, '\x89PNG\r\n\x1a\n')) return kept(pngSize(bytes));
  if (bytes[0] === 0xff && bytes[1] === 0xd8) return kept(jpegSize(bytes));
  if (startsWith(bytes, 'RIFF') && textAt(bytes, 8, 4) === 'WEBP') return kept(webpSize(bytes));
  if (startsWith(bytes, 'GIF8') || startsWith(bytes, 'BM') || isBrand(bytes, /^avi[fs]$/))
    return { use: 'readable', size: null, what: '', cure: '' };
  return refused(bytes);
}

function kept(size: PictureSize | null): PictureKind {
  return { use: 'kept', size, what: '', cure: '' };
}

function refused(bytes: Uint8Array): PictureKind {
  const [what, cure] = refusal(bytes);
  return { use: 'refused', size: null, what, cure };
}

function refusal(bytes: Uint8Array): [string, string] {
  if (bytes.length === 0) return ['is empty', 'Choose another file.'];
  if (startsWith(bytes, '%PDF')) return ['is a PDF, no picture', 'Save its page as PNG, at its full size.'];
  if (isBrand(bytes, /^(hei[cxfs]|hev[cx]|mif1|msf1)$/))
    return ['is a HEIC photograph, which browsers cannot read', 'Hand it over as JPEG.'];
  if (startsWith(bytes, 'II*\0') || startsWith(bytes, 'MM\0*'))
    return ['is a TIFF, which browsers cannot read', 'Save it as PNG.'];
  if (/<svg[\s>]/i.test(textAt(bytes, 0, 4096))) return ['is a drawing (SVG), no picture', 'Import it as an outline.'];
  return ['is no picture that can be read', 'Choose a PNG, JPEG or WebP file.'];
}

function textAt(bytes: Uint8Array, at: number, length: number): string {
  return String.fromCharCode(...bytes.subarray(at, at + length));
}

function startsWith(bytes: Uint8Array, text: string): boolean {
  return textAt(bytes, 0, text.length) === text;
}

/** The brand of a file of boxes, as HEIC and AVIF are. */
function isBrand(bytes: Uint8Array, wanted: RegExp): boolean {
  return textAt(bytes, 4, 4) === 'ftyp' && wanted.test(textAt(bytes, 8, 4));
}

function sizeOf(width: number, height: number): PictureSize | null {
  return width > 0 && height > 0 ? { width, height } : null;
}

function pngSize(bytes: Uint8Array): PictureSize | null {
  if (bytes.length < 24) return null;
  const view = new DataView(bytes.buffer, bytes.byteOffset);
  return sizeOf(view.getUint32(16), view.getUint32(20));
}

/** The size in the first frame header; segments before it are stepped over by their lengths. */
function jpegSize(bytes: Uint8Array): PictureSize | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  for (let at = 2; at + 9 < bytes.length; ) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1];
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return sizeOf(view.getUint16(at + 7), view.getUint16(at + 5));
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return null;
}

function webpSize(bytes: Uint8Array): PictureSize | null {
  if (bytes.length < 30 || textAt(bytes, 12, 4) !== 'VP8X') return null;
  const threeBytes = (at: number) => bytes[at] + 256 * bytes[at + 1] + 65_536 * bytes[at + 2] + 1;
  return sizeOf(threeBytes(24), threeBytes(27));
}
