import { readFileSync } from 'node:fs';
import { PNG } from 'pngjs';
import type { Point } from '../../src/geom/point.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import { randomNumbers } from '../cases/random-numbers.ts';
import { coverage } from './coverage.ts';

/**
 * The demo scan: an invented scene of known sizes, drawn without any part of the program that traces it. A sawn and inked
 * face of the Knot blank lies on a sheet with a frame of 14 x 11 mm (outer edges) and a bar of 10 mm; the sheet lies a
 * little turned and tipped under the lens, the light is uneven, the sensor has grain.
 *
 * The places are worked out in closed form (a projective map of straight lines), coverage of pixels exactly, blur and
 * light in linear light, stored with the sRGB curve.
 */
export const SCAN = { file: 'profiles-demo/scans/knot-blank.png', width: 840, height: 800 } as const;

/** The profile whose outline the scan shows. */
export const SCANNED_PROFILE = 'knot-blank';

/** Sizes on the sheet, millimetres. */
export const SHEET = { frame: { width: 14, height: 11 }, bar: 10 } as const;

/** Pixels a millimetre, as of 1,200 dots an inch. */
const SCALE = 1200 / 25.4;

/** How the sheet lies: turned by so many degrees, and tipped so that a millimetre changes the scale by these shares. */
const LIES = { degrees: 3.4, tipX: 0.0021, tipY: -0.0016 } as const;

/** Light of paper and ink, 0 to 1, linear. */
const PAPER = 0.8;
const INK = 0.035;

/** The lens: standard deviation of its blur, pixels. */
const BLUR = 0.8;

/** Where a place on the sheet (millimetres, y up, the frame's middle at the origin) lies in the picture, pixels. */
function onScan(x: number, y: number): Point {
  const turn = (LIES.degrees * Math.PI) / 180;
  const w = 1 + LIES.tipX * x + LIES.tipY * y;
  const u = (Math.cos(turn) * x - Math.sin(turn) * y) / w;
  const v = (Math.sin(turn) * x + Math.cos(turn) * y) / w;
  return { x: SCAN.width / 2 + SCALE * u, y: SCAN.height / 2 - 34 - SCALE * v };
}

/** Where the marks of the sheet lie in the picture: the bar's ends and the frame's outer corners. */
export function scanMarks() {
  const { width, height } = SHEET.frame;
  return {
    bar: [onScan(-SHEET.bar / 2, BAR_Y), onScan(SHEET.bar / 2, BAR_Y)] as const,
    corners: [
      onScan(-width / 2, height / 2),
      onScan(width / 2, height / 2),
      onScan(width / 2, -height / 2),
      onScan(-width / 2, -height / 2),
    ] as const,
  };
}

/** The true outline, nanometres. */
export function scannedOutline(): readonly Point[] {
  const read = readFamily(readFileSync('profiles-demo/polderwick.json', 'utf8'));
  const profile = read.ok && read.document.family.profiles.find(({ id }) => id === SCANNED_PROFILE);
  if (!profile) throw new Error('The demo family has no such profile.');
  return profile.ring;
}

const BAR_Y = -6.9;

type Ring = readonly Point[];

/** A rectangle on the sheet; `hole` runs the other way round. */
function box(x: number, y: number, wide: number, tall: number, hole = false): Ring {
  const corners = [
    { x, y },
    { x: x + wide, y },
    { x: x + wide, y: y + tall },
    { x, y: y + tall },
  ];
  return hole ? corners.reverse() : corners;
}

/** Everything inked on the sheet, millimetres, outer rings counter-clockwise. */
function inked(): Ring[] {
  const { width, height } = SHEET.frame;
  const line = 0.25;
  const frame = [
    box(-width / 2, -height / 2, width, height),
    box(-width / 2 + line, -height / 2 + line, width - 2 * line, height - 2 * line, true),
  ];
  // The blank stands off the frame's middle, as somebody puts it down.
  const blank = scannedOutline().map(({ x, y }) => ({ x: x / 1e6 - 1.6, y: y / 1e6 - 4.15 }));
  return [...frame, blank, ...bar(), ...lettering(SHEET.bar / 2 + 0.5, BAR_Y - 0.05)];
}

/** The bar: a rule from end to end whose strokes stand inside of it, every millimetre; long ones at the ends and half way. */
function bar(): Ring[] {
  const strokes = Array.from({ length: SHEET.bar + 1 }, (_, mm) => {
    const tall = mm % 5 === 0 ? 0.8 : 0.5;
    const inset = Math.min(0.06, mm * 0.06);
    const x = -SHEET.bar / 2 + mm - (mm === SHEET.bar ? 0.12 : inset);
    return box(x, BAR_Y + 0.12, 0.12, tall - 0.12);
  });
  return [box(-SHEET.bar / 2, BAR_Y, SHEET.bar, 0.12), ...strokes];
}

/** "10 mm" in strokes. */
function lettering(x: number, y: number): Ring[] {
  const stroke = 0.12;
  const tall = 0.8;
  const one = [box(x, y, stroke, tall)];
  const zero = [
    box(x + 0.3, y, 0.5, tall),
    box(x + 0.3 + stroke, y + stroke, 0.5 - 2 * stroke, tall - 2 * stroke, true),
  ];
  const m = (at: number) => [
    box(at, y + 0.43, 0.6, stroke),
    ...[0, 0.24, 0.48].map((leg) => box(at + leg, y, stroke, 0.43)),
  ];
  return [...one, ...zero, ...m(x + 1.15), ...m(x + 1.95)];
}

/** The picture as stored grey values, row by row from the top. */
export function drawScan(): Uint8Array {
  const { width, height } = SCAN;
  const covered = coverage(
    inked().map((ring) => ring.map(({ x, y }) => onScan(x, y))),
    width,
    height,
  );
  const random = randomNumbers(1918);
  const light = Float64Array.from(covered, (share, i) => {
    const [x, y] = [i % width, Math.floor(i / width)];
    // Saw marks in the ink, and light that falls off to the lower right.
    const ink = INK * (1 + 0.35 * Math.sin(y / 3.1 + Math.sin(x / 57)));
    const lamp = 1.06 - 0.16 * (x / width) - 0.1 * (y / height) ** 2;
    return lamp * (PAPER * (1 - share) + ink * share);
  });
  const blurred = blur(light, width, height);
  return Uint8Array.from(blurred, (value) => {
    const grain = 0.008 * Math.sqrt(value + 0.02) * bell(random.next(), random.next());
    return Math.round(255 * stored(Math.min(1, Math.max(0, value + grain))));
  });
}

/** A normally distributed number of two even ones (Box and Muller 1958). */
function bell(u: number, v: number): number {
  return Math.sqrt(-2 * Math.log(1 - u)) * Math.cos(2 * Math.PI * v);
}

/** The sRGB curve. */
function stored(linear: number): number {
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}

/** The blur of the lens, along rows and columns. */
function blur(light: Float64Array, width: number, height: number): Float64Array {
  const weights = [-3, -2, -1, 0, 1, 2, 3].map((k) => Math.exp((-k * k) / (2 * BLUR * BLUR)));
  const whole = weights.reduce((sum, weight) => sum + weight, 0);
  const along = (from: Float64Array, length: number, step: number, placeOf: (i: number) => number) =>
    from.map((_, i) => {
      const place = placeOf(i);
      return weights.reduce((sum, weight, k) => {
        const to = Math.min(length - 1, Math.max(0, place + k - 3));
        return sum + (weight / whole) * from[i + (to - place) * step];
      }, 0);
    });
  const rows = along(light, width, 1, (i) => i % width);
  return along(rows, height, width, (i) => Math.floor(i / width));
}

/** Stored grey values, row by row from the top, as a PNG file. */
export function encodeGrey(grey: Uint8Array, width: number, height: number): Buffer {
  const png = new PNG({ width, height, colorType: 0, inputColorType: 0, inputHasAlpha: false, bitDepth: 8 });
  png.data = Buffer.from(grey);
  return PNG.sync.write(png, { colorType: 0, inputColorType: 0, inputHasAlpha: false, bitDepth: 8, deflateLevel: 9 });
}

/** The pixels of a PNG file, four bytes each, as an independent reader has them. */
export function decodePng(file: Buffer): { width: number; height: number; rgba: Uint8ClampedArray } {
  const { width, height, data } = PNG.sync.read(file);
  return { width, height, rgba: new Uint8ClampedArray(data) };
}
