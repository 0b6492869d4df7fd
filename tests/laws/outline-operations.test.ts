import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkOutline } from '../../src/geom/check-outline.ts';
import { difference } from '../../src/geom/clip.ts';
import type { Point } from '../../src/geom/point.ts';
import { type Region, regionOf } from '../../src/geom/region.ts';
import { nearestOnSegment } from '../../src/geom/segment-distance.ts';
import { signedArea } from '../../src/geom/signed-area.ts';
import { type DrawnResult, makeDrawn, type Vertex, vertexAt } from '../../src/geom/vertex.ts';
import { setBulge } from '../../src/profile/bend-edge.ts';
import { deleteVertices, moveVertices, putVertex } from '../../src/profile/edit-vertices.ts';
import { insertAt } from '../../src/profile/insert-vertex.ts';
import { mirrorOutline } from '../../src/profile/mirror-outline.ts';
import { OFFSET_ERROR, offsetOutline } from '../../src/profile/offset-outline.ts';
import { roundVertex } from '../../src/profile/round-vertex.ts';
import { simplifyDrawn } from '../../src/profile/simplify-drawn.ts';
import { turnOutline } from '../../src/profile/turn-outline.ts';
import { bladePair } from './blade-pairs.ts';

const UM = 1e3;
const MM = 1e6;
type Sound = Extract<DrawnResult, { ok: true }>;

/** Outlines of blades and keyways, some edges bowed where the outline stays sound. */
const outline: fc.Arbitrary<Sound> = fc
  .tuple(bladePair, fc.array(fc.tuple(fc.nat(99), fc.integer({ min: -60, max: 60 })), { maxLength: 4 }))
  .map(([{ opening, blank }, bows]) => {
    const start: readonly Vertex[] = bows.length % 2 === 0 ? opening : blank;
    const plain = soundOf(start);
    return bows.reduce<Sound>((now, [edge, bulge]) => {
      const bowed = makeDrawn(setBulge(now.drawn, edge % now.drawn.length, bulge / 100));
      return bowed.ok ? bowed : now;
    }, plain);
  })
  .filter(({ drawn }) => drawn.length < 200);

function soundOf(vertices: readonly Vertex[]): Sound {
  const made = makeDrawn(vertices);
  if (!made.ok) throw new Error(made.fault.message);
  return made;
}

/** Checks a law on random outlines and something else that is drawn; the seed is fixed. */
function holds<Other>(other: fc.Arbitrary<Other>, law: (outline: Sound, other: Other) => void, numRuns: number): void {
  fc.assert(fc.property(outline, other, law), { seed: 20_261_125, numRuns, endOnFailure: true });
}

/** The greatest distance of a point of one closed line from another, over corners and what lies between them. */
function furthest(from: readonly Point[], to: readonly Point[]): number {
  let worst = 0;
  for (const [i, a] of from.entries()) {
    const b = from[(i + 1) % from.length];
    for (const p of [a, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }]) worst = Math.max(worst, distanceTo(p, to));
  }
  return worst;
}

function distanceTo(p: Point, line: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, a] of line.entries()) {
    const near = nearestOnSegment(p, a, line[(i + 1) % line.length]);
    least = Math.min(least, Math.hypot(near.x - p.x, near.y - p.y));
  }
  return least;
}

const areaOf = (region: Region) =>
  region.reduce((sum, { outer, holes }) => sum + [outer, ...holes].reduce((part, l) => part + signedArea(l), 0), 0);

test('mirroring twice brings every vertex back, and a mirrored outline is sound with the same area', () => {
  holds(
    fc.constantFrom('left-right' as const, 'top-bottom' as const),
    ({ drawn, ring }, way) => {
      const once = mirrorOutline(drawn, way);
      expect(mirrorOutline(once, way)).toEqual(drawn);
      // Chords of an arc are rounded to whole nanometres on either side.
      expect(Math.abs(signedArea(soundOf(once).ring) / signedArea(ring) - 1)).toBeLessThan(1e-6);
    },
    100,
  );
});

test('turning and turning back moves no coordinate by more than a nanometre', () => {
  holds(
    fc.tuple(fc.double({ min: -7, max: 7, noNaN: true }), fc.integer({ min: -9e6, max: 9e6 })),
    ({ drawn }, [angle, x]) => {
      const about = { x, y: x / 3 };
      const back = turnOutline(turnOutline(drawn, angle, about), -angle, about);
      for (const [i, v] of back.entries()) {
        expect(Math.max(Math.abs(v.x - drawn[i].x), Math.abs(v.y - drawn[i].y))).toBeLessThanOrEqual(1);
        expect(v.bulge).toBe(drawn[i].bulge);
      }
    },
    100,
  );
});

test('a vertex inserted into an edge, straight or bowed, leaves the outline where it was within a micrometre', () => {
  holds(
    fc.tuple(fc.nat(999), fc.double({ min: 0.05, max: 0.95, noNaN: true })),
    ({ drawn, ring }, [edge, share]) => {
      const split = makeDrawn(insertAt(drawn, edge % drawn.length, share));
      // An edge of a few nanometres has no room for another vertex.
      if (!split.ok) return;
      expect(Math.max(furthest(split.ring, ring), furthest(ring, split.ring))).toBeLessThan(UM);
    },
    100,
  );
});

test('an outline grown by a gap contains what is left of it after shrinking again, and is no further off than the gap', () => {
  holds(
    fc.tuple(fc.integer({ min: 5, max: 120 }), fc.constantFrom('round' as const, 'sharp' as const)),
    ({ drawn, ring }, [um, corners]) => {
      const gap = um * UM;
      const out = offsetOutline(drawn, gap, corners);
      if (!out.ok) return;
      const grown = soundOf(out.vertices).ring;
      const perimeter = grown.reduce((sum, p, i) => {
        const q = grown[(i + 1) % grown.length];
        return sum + Math.hypot(q.x - p.x, q.y - p.y);
      }, 0);
      // What lies outside of the grown outline is at most a hair of the stated error along its whole length.
      expect(areaOf(difference(regionOf(ring), regionOf(grown)))).toBeLessThan(perimeter);
      for (const p of ring) expect(distanceTo(p, grown)).toBeGreaterThan(gap - OFFSET_ERROR - UM);
      if (corners === 'round') for (const p of grown) expect(distanceTo(p, ring)).toBeLessThan(gap + OFFSET_ERROR + UM);
      const back = offsetOutline(out.vertices, -gap, corners);
      if (!back.ok) return;
      const again = soundOf(back.vertices).ring;
      // Growing and shrinking closes narrow slots and never takes anything away.
      expect(areaOf(difference(regionOf(ring), regionOf(again)))).toBeLessThan(2 * OFFSET_ERROR * perimeter);
    },
    80,
  );
});

test('a simplified outline strays by no more than the tolerance, and by no more than it says', () => {
  holds(
    fc.tuple(fc.integer({ min: 1, max: 60 }), fc.boolean()),
    ({ drawn, ring }, [um, arcs]) => {
      const simpler = simplifyDrawn(drawn, um * UM, arcs);
      if (!simpler.ok) throw new Error(simpler.fault.what);
      expect(simpler.vertices.length).toBeLessThanOrEqual(drawn.length);
      expect(simpler.deviation).toBeLessThanOrEqual(um * UM);
      const { ring: after } = soundOf(simpler.vertices);
      // Both rings draw arcs as chords within half a micrometre.
      const strays = Math.max(furthest(after, ring), furthest(ring, after));
      expect(strays).toBeLessThan(simpler.deviation + 1.01 * UM);
    },
    100,
  );
});

/** One random edit, given as numbers. */
const edit = fc.record({
  kind: fc.nat(8),
  at: fc.nat(9_999),
  x: fc.integer({ min: -400, max: 400 }),
  y: fc.integer({ min: -400, max: 400 }),
  share: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
});

function wanted(
  now: readonly Vertex[],
  { kind, at, x, y, share }: typeof edit extends fc.Arbitrary<infer V> ? V : never,
) {
  const i = at % now.length;
  const by = { x: x * UM, y: y * UM };
  switch (kind) {
    case 0:
      return moveVertices(now, [i], by);
    case 1:
      return moveVertices(now, [i, (i + 1) % now.length], by);
    case 2:
      return putVertex(now, i, { x: now[i].x + by.y, y: now[i].y + by.x });
    case 3:
      return insertAt(now, i, share);
    case 4:
      return setBulge(now, i, x / 400);
    case 5: {
      const left = deleteVertices(now, [i]);
      return left.ok ? left.vertices : now;
    }
    case 6: {
      const round = roundVertex(now, i, Math.abs(x) * UM, String);
      return round.ok ? round.vertices : now;
    }
    case 7:
      return mirrorOutline(now, x > 0 ? 'left-right' : 'top-bottom');
    default:
      return turnOutline(now, x / 100, now[i]);
  }
}

test('10,000 random edits: every outline that is taken is sound, whole and counter-clockwise', () => {
  const start = soundOf([vertexAt(0, 0), vertexAt(2 * MM, 0), vertexAt(2 * MM, 8 * MM), vertexAt(0, 8 * MM)]);
  let taken = 0;
  let tried = 0;
  fc.assert(
    fc.property(fc.array(edit, { minLength: 100, maxLength: 100 }), (edits) => {
      let now = start;
      for (const one of edits) {
        const made = makeDrawn(wanted(now.drawn, one));
        tried++;
        if (!made.ok) continue;
        taken++;
        now = made;
        expect(checkOutline(now.ring)).toBeNull();
        expect(signedArea(now.ring)).toBeGreaterThan(0);
        expect(now.drawn.every(({ x, y }) => Number.isInteger(x) && Number.isInteger(y))).toBe(true);
        // Made once more it is the same: what is taken is what is kept.
        expect(makeDrawn(now.drawn)).toEqual(now);
      }
    }),
    { seed: 20_261_125, numRuns: 100, endOnFailure: true },
  );
  expect(tried).toBe(10_000);
  expect(taken).toBeGreaterThan(4_000);
});
