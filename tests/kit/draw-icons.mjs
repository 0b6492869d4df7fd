// Draws the icons of the installed app from the project's own mark, the one of the page's tab:
// node tests/kit/draw-icons.mjs writes src/app/offline/icons/*.png.

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { crc32, deflateSync } from 'node:zlib';
import { PROJECT_ROOT } from './install-when-needed.mjs';

const GROUND = [0x20, 0x30, 0x38];
const MARK = [0xf4, 0xef, 0xe4];

/** The mark is drawn on a square of 32: a keyway with a ward to each side, as upright rectangles. */
const SQUARE = 32;
const CORNER = 6;
const BARS = [
  { x0: 12, y0: 4, x1: 20, y1: 12 },
  { x0: 12, y0: 12, x1: 16, y1: 16 },
  { x0: 16, y0: 16, x1: 20, y1: 28 },
  { x0: 12, y0: 21, x1: 16, y1: 28 },
];

/** Points looked at along each side of a pixel. */
const SAMPLES = 4;

/** @param {number} x @param {number} y */
function onMark(x, y) {
  return BARS.some((bar) => x >= bar.x0 && x < bar.x1 && y >= bar.y0 && y < bar.y1);
}

/** @param {number} x @param {number} y */
function onGround(x, y) {
  const dx = Math.max(CORNER - x, x - (SQUARE - CORNER), 0);
  const dy = Math.max(CORNER - y, y - (SQUARE - CORNER), 0);
  return Math.hypot(dx, dy) <= CORNER;
}

/** @param {number} x @param {number} y @param {boolean} fullBleed @returns {number[] | null} */
function colourAt(x, y, fullBleed) {
  if (onMark(x, y)) return MARK;
  return fullBleed || onGround(x, y) ? GROUND : null;
}

/** The colour of a pixel, four bytes, seen at several points. @param {number[][]} points @param {boolean} fullBleed */
function pixelAt(points, fullBleed) {
  const seen = points.flatMap(([x, y]) => [colourAt(x, y, fullBleed)].filter((colour) => colour !== null));
  const mean = [0, 1, 2].map((i) => Math.round(seen.reduce((sum, c) => sum + c[i], 0) / Math.max(1, seen.length)));
  return [...mean, Math.round((255 * seen.length) / points.length)];
}

/** @param {string} name @param {Uint8Array} data */
function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/**
 * The icon as a PNG file of `size` pixels a side (ISO/IEC 15948: 8 bits, red, green, blue and opacity); without
 * rounded corners where a system cuts its own shape out of it.
 * @param {number} size
 * @param {boolean} fullBleed
 */
export function drawIcon(size, fullBleed) {
  const places = Array.from({ length: SAMPLES }, (_, i) => (i + 0.5) / SAMPLES);
  const rows = Array.from({ length: size }, (_row, row) => {
    const pixels = Array.from({ length: size }, (_column, column) => {
      const points = places.flatMap((dy) =>
        places.map((dx) => [((column + dx) * SQUARE) / size, ((row + dy) * SQUARE) / size]),
      );
      return pixelAt(points, fullBleed);
    });
    return [0, ...pixels.flat()];
  });
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const data = deflateSync(Uint8Array.from(rows.flat()), { level: 9 });
  return Buffer.concat([signature, chunk('IHDR', header), chunk('IDAT', data), chunk('IEND', Buffer.alloc(0))]);
}

/** Every icon, by the name of its file. */
export const ICONS = [
  { name: 'icon-192.png', size: 192, fullBleed: false },
  { name: 'icon-512.png', size: 512, fullBleed: false },
  { name: 'icon-whole-512.png', size: 512, fullBleed: true },
];

/** Where the icons are kept. */
export const ICON_FOLDER = join(PROJECT_ROOT, 'src', 'app', 'offline', 'icons');

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  mkdirSync(ICON_FOLDER, { recursive: true });
  for (const { name, size, fullBleed } of ICONS) writeFileSync(join(ICON_FOLDER, name), drawIcon(size, fullBleed));
}
