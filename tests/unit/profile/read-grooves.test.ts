import { describe, expect, test } from 'vitest';
import { signedArea } from '../../../src/geom/signed-area.ts';
import { millOutline } from '../../../src/profile/mill-outline.ts';
import type { Milled } from '../../../src/profile/profile.ts';
import { readGrooves } from '../../../src/profile/read-grooves.ts';
import { unexplainedParts } from '../../../src/profile/unexplained-parts.ts';
import { ringOfMm, soundRing } from '../../kit/shapes.ts';

const MM = 1e6;
const UM = 1e3;

/** A ring of `count` vertices about the origin at the radii that `radius` gives, millimetres. */
const roundRing = (count: number, radius: (i: number) => number, turn = 0) =>
  soundRing(
    Array.from({ length: count }, (_, i) => {
      const angle = turn + (2 * Math.PI * i) / count;
      return { x: radius(i) * MM * Math.cos(angle), y: radius(i) * MM * Math.sin(angle) };
    }),
  );

const blade: Milled = {
  thickness: 2 * MM,
  height: 8.4 * MM,
  backRadius: 0.35 * MM,
  grooves: [
    { side: 'left', bottom: 1.95 * MM, width: 0.7 * MM, depth: 0.6 * MM, flank: Math.PI / 12, rootRadius: 0.08 * MM },
    { side: 'right', bottom: 0, width: 1.1 * MM, depth: 0.45 * MM, flank: 0, rootRadius: 0.1 * MM },
    { side: 'left', bottom: 6.9 * MM, width: 1.5 * MM, depth: 0.3 * MM, flank: 0, rootRadius: 0 },
  ],
};

function outlineOf(milled: Milled) {
  const points = millOutline(milled);
  if (!Array.isArray(points)) throw new Error(points.message);
  return points;
}

describe('reading grooves', () => {
  test('finds a leaning groove, a step at the back and one at the top, and the back radius', () => {
    const read = readGrooves(soundRing(outlineOf(blade).map((p) => ({ x: p.x - 3 * MM, y: p.y + MM }))));
    if (!read.ok) throw new Error(read.what);
    expect(read.shift).toEqual({ x: -3 * MM, y: MM });
    expect(read.milled.grooves).toHaveLength(3);
    expect({ ...read.milled, grooves: [] }).toEqual({ ...blade, grooves: [] });
    expect(read.milled.grooves.map((g) => [g.side, g.bottom, g.width, g.depth])).toEqual(
      [blade.grooves[0], blade.grooves[2], blade.grooves[1]].map((g) => [g.side, g.bottom, g.width, g.depth]),
    );
    expect(read.unexplained).toEqual([]);
    expect(read.off).toBeLessThan(10);
  });

  test('reads roots given as few long chords within a tolerance', () => {
    // The root's corners by three chords each, as a drawing may have them: 8 um off the arc.
    const r = 0.3;
    const arc = (cx: number, cy: number, from: number) =>
      [0, 30, 60, 90].map((d): [number, number] => {
        const a = ((from + d) * Math.PI) / 180;
        return [cx + r * Math.cos(a), cy + r * Math.sin(a)];
      });
    const ring = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 8],
      [0, 8],
      [0, 4],
      ...arc(0.8 - r, 4 - r, 0).reverse(),
      ...arc(0.8 - r, 3 + r, 270).reverse(),
      [0, 3],
    ]);
    const read = readGrooves(ring, 12 * UM);
    if (!read.ok) throw new Error(read.what);
    expect(read.milled.grooves).toHaveLength(1);
    const [groove] = read.milled.grooves;
    expect(Math.abs(groove.rootRadius - r * MM)).toBeLessThan(40 * UM);
    expect(Math.abs(groove.depth - 0.8 * MM)).toBeLessThan(4 * UM);
    expect(read.unexplained).toEqual([]);
  });

  test('shows what it cannot explain: a spur on the face', () => {
    const nicked = outlineOf({ ...blade, grooves: [] });
    const at = nicked.findIndex((p) => p.x === 2 * MM && p.y === 8.4 * MM);
    const nick = [
      { x: 2 * MM, y: 4 * MM },
      { x: 2_030_000, y: 4_050_000 },
      { x: 2 * MM, y: 4.1 * MM },
    ];
    // A spur further out than the tolerance is no face either.
    for (const tolerance of [2, 10, 20]) {
      const read = readGrooves(soundRing(nicked.toSpliced(at, 0, ...nick)), tolerance * UM);
      if (!read.ok) throw new Error(read.what);
      expect(read.milled.grooves).toEqual([]);
      expect(read.milled.thickness).toBe(2 * MM);
      expect(read.unexplained).toHaveLength(1);
      expect(read.unexplained[0]).toMatchObject({ extra: true, at: { x: 2_030_000, y: 4_050_000 } });
      expect(Math.abs(read.unexplained[0].off - 0.03 * MM)).toBeLessThan(UM);
    }
  });

  test('shows what the drawing lacks of a blade as well as what it has too much', () => {
    const whole = outlineOf({ ...blade, grooves: [] });
    const at = whole.findIndex((p) => p.x === 2 * MM && p.y === 8.4 * MM);
    // A notch 0.1 mm deep, 0.2 mm tall, on the right face.
    const notch = [
      { x: 2 * MM, y: 4 * MM },
      { x: 1.9 * MM, y: 4 * MM },
      { x: 1.9 * MM, y: 4.2 * MM },
      { x: 2 * MM, y: 4.2 * MM },
    ];
    const parts = unexplainedParts(soundRing(whole.toSpliced(at, 0, ...notch)), soundRing(whole), 2 * UM);
    expect(parts).toMatchObject([{ extra: false, off: 0.1 * MM }]);
    expect(Math.abs(signedArea(parts[0].patch.outer))).toBeCloseTo(0.02 * MM * MM, -4);
  });

  test('a spur that leans like a roof is no face, however tall', () => {
    const ring = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 4],
      [2.2, 4.2],
      [2, 4.4],
      [2, 8],
      [0, 8],
    ]);
    for (const tolerance of [2, 10, 25]) {
      const read = readGrooves(ring, tolerance * UM);
      if (!read.ok) throw new Error(read.what);
      expect(read.milled).toMatchObject({ thickness: 2 * MM, height: 8 * MM, grooves: [] });
      expect(read.unexplained).toHaveLength(1);
    }
  });

  test('an undercut groove is read with the parts that no cutter of this kind leaves', () => {
    const ring = ringOfMm([
      [0, 0],
      [2, 0],
      [2, 8],
      [0, 8],
      [0, 4],
      [0.6, 4.15],
      [0.6, 2.85],
      [0, 3],
    ]);
    const read = readGrooves(ring, 10 * UM);
    if (!read.ok) throw new Error(read.what);
    expect(read.milled.grooves).toHaveLength(1);
    expect(read.unexplained.length).toBeGreaterThanOrEqual(2);
    expect(read.unexplained[0].off).toBeGreaterThan(30 * UM);
  });

  test.each([
    ['circle', roundRing(200, () => 2)],
    ['circle of 64 edges', roundRing(64, () => 2, 0.03)],
    ['star', roundRing(10, (i) => (i % 2 ? 1 : 3))],
    ['turned star', roundRing(10, (i) => (i % 2 ? 1 : 3), 0.3)],
    ['triangle', roundRing(3, () => 3)],
    ['hexagon', roundRing(6, () => 2, Math.PI / 6)],
    ['turned square', roundRing(4, () => 2, Math.PI / 4 + 0.1)],
    ['cogwheel', roundRing(40, (i) => 2 + ((i * 7919) % 13) * 0.05)],
  ])('a %s is no milled blade at any tolerance', (_, ring) => {
    for (const tolerance of [2, 10, 25, 50, 100]) {
      const read = readGrooves(ring, tolerance * UM);
      expect(read.ok, `${tolerance} um`).toBe(false);
      if (!read.ok) expect(read.cure).not.toBe('');
    }
  });

  test('a tolerance as large as the outline is refused', () => {
    const read = readGrooves(soundRing(outlineOf({ ...blade, grooves: [] })), MM);
    expect(read).toMatchObject({ ok: false, cure: 'Give a smaller tolerance.' });
  });
});
