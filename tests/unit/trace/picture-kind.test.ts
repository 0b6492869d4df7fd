import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { pictureKind } from '../../../src/trace/picture-kind.ts';

const bytes = (...parts: (string | number[])[]): Uint8Array =>
  Uint8Array.from(parts.flatMap((part) => (typeof part === 'string' ? [...part].map((c) => c.charCodeAt(0)) : part)));

test('a PNG tells its size', () => {
  expect(pictureKind(new Uint8Array(readFileSync('profiles-demo/scans/knot-blank.png')))).toMatchObject({
    use: 'kept',
    size: { width: 840, height: 800 },
  });
});

test('a JPEG tells it in its frame header, after other segments', () => {
  const app = [0xff, 0xe0, 0x00, 0x06, 1, 2, 3, 4];
  const frame = [0xff, 0xc0, 0x00, 0x11, 8, 0x0b, 0xb8, 0x0f, 0xa0, 3, 1, 0x11, 0];
  expect(pictureKind(bytes([0xff, 0xd8], app, frame))).toMatchObject({
    use: 'kept',
    size: { width: 4000, height: 3000 },
  });
});

test('a JPEG that is cut off, or tells nonsense, is a picture without a size', () => {
  expect(pictureKind(bytes([0xff, 0xd8]))).toMatchObject({ use: 'kept', size: null });
  expect(pictureKind(bytes([0xff, 0xd8], '              '))).toMatchObject({ use: 'kept', size: null });
});

test('a WebP tells it where it is extended', () => {
  const head = bytes('RIFF', [0, 0, 0, 0], 'WEBPVP8X', [10, 0, 0, 0, 0, 0, 0, 0], [0x8f, 0x0c, 0], [0x57, 0x02, 0]);
  expect(pictureKind(head)).toMatchObject({ use: 'kept', size: { width: 0x0c90, height: 0x0258 } });
});

test.each([
  ['nothing', new Uint8Array(), /empty/],
  ['a PDF', bytes('%PDF-1.7'), /PDF/],
  ['a HEIC photograph', bytes([0, 0, 0, 24], 'ftypheic'), /HEIC/],
  ['a TIFF', bytes('II*\0'), /TIFF/],
  ['a drawing with script', bytes('<?xml version="1.0"?><svg onload="alert(1)">'), /SVG/],
  ['a text', bytes('x,y\n1,2\n'), /no picture/],
])('%s is refused with a cure', (_name, head, words) => {
  const kind = pictureKind(head);
  expect(kind.use).toBe('refused');
  expect(kind.what).toMatch(words);
  expect(kind.cure.length).toBeGreaterThan(10);
});

test.each([
  ['GIF', bytes('GIF89a')],
  ['BMP', bytes('BM')],
  ['AVIF', bytes([0, 0, 0, 24], 'ftypavif')],
])('%s is read, but kept as something else', (_name, head) => {
  expect(pictureKind(head).use).toBe('readable');
});
