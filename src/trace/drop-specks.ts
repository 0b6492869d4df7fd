import type { GrayPicture } from './gray-picture.ts';

/** A picture without specks, and how many there were. */
export interface Despeckled {
  readonly picture: GrayPicture;
  readonly dropped: number;
}

/** A speck inside a speck takes a second look; deeper nests are left to the contour. */
const LOOKS = 2;

/** Rows that are done between two looks at the clock. */
const ROWS = 64;

/**
 * Wipes away every patch of pixels on one side of a threshold that is smaller than `leastPixels`: it takes the light of
 * the other side at the threshold, so that no contour is drawn round it. Patches hang together by their pixels' sides.
 *
 * @param threshold a light; what is as light or lighter is one side.
 * @yields after each few rows.
 * @check tests/unit/trace/gray-picture.test.ts
 */
export function* dropSpecks(
  picture: GrayPicture,
  threshold: number,
  leastPixels: number,
): Generator<void, Despeckled, void> {
  const { width, height } = picture;
  const light = picture.light.slice();
  let dropped = 0;
  for (let look = 0; look < LOOKS; look++) {
    const roots = yield* patchesOf(light, width, height, threshold);
    const found = wipe(light, roots, threshold, leastPixels);
    dropped += found;
    if (found === 0) break;
    yield;
  }
  return { picture: { width, height, light }, dropped };
}

/** For each pixel the first pixel of its patch: joined by union and find. */
function* patchesOf(
  light: Uint16Array,
  width: number,
  height: number,
  threshold: number,
): Generator<void, Int32Array, void> {
  const parent = Int32Array.from({ length: light.length }, (_, i) => i);
  const isSame = (i: number, k: number) => light[i] >= threshold === light[k] >= threshold;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (x > 0 && isSame(i, i - 1)) join(parent, i, i - 1);
      if (y > 0 && isSame(i, i - width)) join(parent, i, i - width);
    }
    if (y % ROWS === 0) yield;
  }
  for (let i = 0; i < parent.length; i++) parent[i] = rootOf(parent, i);
  return parent;
}

function rootOf(parent: Int32Array, i: number): number {
  let at = i;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]];
    at = parent[at];
  }
  return at;
}

function join(parent: Int32Array, i: number, k: number): void {
  const [a, b] = [rootOf(parent, i), rootOf(parent, k)];
  if (a < b) parent[b] = a;
  else parent[a] = b;
}

/** Gives small patches the light of the other side; returns how many there were. */
function wipe(light: Uint16Array, roots: Int32Array, threshold: number, leastPixels: number): number {
  const counts = new Int32Array(light.length);
  for (const root of roots) counts[root]++;
  const at = Math.ceil(threshold);
  let specks = 0;
  for (let i = 0; i < light.length; i++) {
    const root = roots[i];
    if (counts[root] >= leastPixels) continue;
    if (root === i) specks++;
    light[i] = light[i] >= threshold ? Math.max(0, at - 1) : at;
  }
  return specks;
}
