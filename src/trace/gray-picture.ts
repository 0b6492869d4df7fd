/**
 * A raster of light: one number a pixel, row by row from the top, in proportion to the light (linear, not as stored):
 * 0 black, 65,535 white.
 */
export interface GrayPicture {
  readonly width: number;
  readonly height: number;
  readonly light: Uint16Array;
}

/** Light of a white pixel. */
export const WHITE = 65_535;

/** Shares of red, green and blue in the luminance of linear light. */
const SHARES = { red: 0.2126, green: 0.7152, blue: 0.0722 } as const;

/** Linear light, 0 to 1, of each stored value 0 to 255. */
const LINEAR = Float64Array.from({ length: 256 }, (_, stored) => linearOf(stored / 255));

/** Linear light, 0 to 1, of a stored value of the sRGB curve, 0 to 1. */
function linearOf(stored: number): number {
  return stored <= 0.04045 ? stored / 12.92 : ((stored + 0.055) / 1.055) ** 2.4;
}

/**
 * The light of a decoded picture: stored values are taken as sRGB and made linear, then weighed to luminance; what is
 * transparent shows white paper behind it.
 *
 * @param rgba four bytes a pixel, row by row from the top.
 * @accuracy one part in 65,535.
 * @source IEC 61966-2-1 (the sRGB curve), ITU-R BT.709 (the weights); both from memory.
 * @check tests/unit/trace/gray-picture.test.ts
 */
export function lightOfPixels(rgba: Uint8ClampedArray, width: number, height: number): GrayPicture {
  const light = new Uint16Array(width * height);
  for (let i = 0; i < light.length; i++) {
    const at = 4 * i;
    const luminance =
      SHARES.red * LINEAR[rgba[at]] + SHARES.green * LINEAR[rgba[at + 1]] + SHARES.blue * LINEAR[rgba[at + 2]];
    const cover = rgba[at + 3] / 255;
    light[i] = Math.round(WHITE * (cover * luminance + 1 - cover));
  }
  return { width, height, light };
}

/** The light of a stored grey value, 0 to 1: what a slider that looks even is set to. */
export function lightOfGrey(grey: number): number {
  return WHITE * linearOf(Math.min(1, Math.max(0, grey)));
}

/** The stored grey value, 0 to 1, of a light. */
export function greyOfLight(light: number): number {
  const linear = Math.min(1, Math.max(0, light / WHITE));
  return linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
}
