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

/**
 * Writes the colour of the pixel whose corner is at (x, y), `side` wide, into four bytes: the mean of several points.
 * @param {Uint8Array} pixel @param {number} x @param {number} y @param {number} side @param {boolean} fullBleed
 */
function paint(pixel, x, y, side, fullBleed) {
  let [marked, seen] = [0, 0];
  for (let i = 0; i < SAMPLES * SAMPLES; i++) {
    const px = x + (((i % SAMPLES) + 0.5) / SAMPLES) * side;
    const py = y + ((Math.floor(i / SAMPLES) + 0.5) / SAMPLES) * side;
    if (onMark(px, py)) marked++;
    if (fullBleed || onGround(px, py)) seen++;
  }
  const share = marked / Math.max(1, seen);
  for (const channel of [0, 1, 2])
    pixel[channel] = Math.round(GROUND[channel] + share * (MARK[channel] - GROUND[channel]));
  pixel[3] = Math.round((255 * seen) / (SAMPLES * SAMPLES));
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
  const line = size * 4 + 1;
  const rows = new Uint8Array(size * line);
  for (let row = 0; row < size; row++)
    for (let column = 0; column < size; column++) {
      const pixel = rows.subarray(row * line + 1 + column * 4).subarray(0, 4);
      paint(pixel, (column * SQUARE) / size, (row * SQUARE) / size, SQUARE / size, fullBleed);
    }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  header.set([8, 6, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const data = deflateSync(rows, { level: 9 });
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
