import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { drawIcon, ICON_FOLDER, ICONS } from '../../kit/draw-icons.mjs';

/** What is in an icon, as the PNG standard says: rows of four bytes a pixel, each after a filter byte. */
function rowsOf(png: Buffer): Buffer {
  return inflateSync(png.subarray(41, 41 + png.readUInt32BE(33)));
}

function pixel(png: Buffer, size: number, x: number, y: number): number[] {
  return [
    ...rowsOf(png)
      .subarray(y * (size * 4 + 1) + 1 + x * 4)
      .subarray(0, 4),
  ];
}

test.each(ICONS)('$name is what the script draws, in the size that the manifest says', ({ name, size, fullBleed }) => {
  const kept = readFileSync(join(ICON_FOLDER, name));
  // How it is packed is the packer's affair.
  expect(rowsOf(kept).equals(rowsOf(drawIcon(size, fullBleed)))).toBe(true);
  expect([kept.readUInt32BE(16), kept.readUInt32BE(20)]).toEqual([size, size]);
  // The mark is light on a dark ground; the corner is open where the icon is round.
  expect(pixel(kept, size, size / 2 - 8, Math.round(size / 4))).toEqual([0xf4, 0xef, 0xe4, 255]);
  expect(pixel(kept, size, 8, size / 2)).toEqual([0x20, 0x30, 0x38, 255]);
  expect(pixel(kept, size, 0, 0)[3]).toBe(fullBleed ? 255 : 0);
});
