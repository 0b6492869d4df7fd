import fc from 'fast-check';
import { makeDrawn, type Vertex, vertexAt } from '../../src/geom/vertex.ts';
import type { Profile } from '../../src/profile/profile.ts';

/** Corners round a centre at whole nanometres, edges straight or bowed either way. */
const vertices = fc
  .array(
    fc.record({
      reach: fc.integer({ min: 1_000_000, max: 6_000_000 }),
      turn: fc.double({ min: 0.1, max: 0.9, noNaN: true }),
      bulge: fc.oneof(fc.constant(0), fc.double({ min: -0.4, max: 1.2, noNaN: true })),
    }),
    { minLength: 3, maxLength: 24 },
  )
  .chain((corners) =>
    fc.record({
      corners: fc.constant(corners),
      x: fc.integer({ min: -40_000_000, max: 40_000_000 }),
      y: fc.integer({ min: -40_000_000, max: 40_000_000 }),
    }),
  )
  .map(({ corners, x, y }): Vertex[] =>
    corners.map(({ reach, turn, bulge }, i) => {
      const angle = (2 * Math.PI * (i + turn)) / corners.length;
      return vertexAt(Math.round(x + reach * Math.cos(angle)), Math.round(y + reach * Math.sin(angle)), bulge);
    }),
  );

/** Names as people and programs give them. */
const name = fc.oneof(
  fc.constantFrom('Dunlin', '=1+1', '@home', '-Ruff', 'Smew; keyway', 'a,b "c"', '0', "'quoted", 'Blässhuhn', '1.5'),
  fc.string({ maxLength: 20 }),
);

/** A drawn profile that the core accepts. */
const drawnProfile = fc.record({ name, vertices }).chain(({ name, vertices }) => {
  const made = makeDrawn(vertices);
  return made.ok ? fc.constant({ name, drawn: made.drawn, ring: made.ring }) : fc.constant(null);
});

/** One to four profiles; some share a name. */
export const drawnProfiles: fc.Arbitrary<Profile[]> = fc
  .array(drawnProfile, { minLength: 1, maxLength: 6 })
  .map((found) => found.filter((profile) => profile !== null).slice(0, 4))
  .filter((found) => found.length > 0)
  .map((found) => found.map((profile, i) => ({ ...profile, id: `p${i}`, kind: 'blank' as const })));

/** Vertices seen from the first of them, to the whole nanometre; bulges as they are. */
export function fromFirst(list: readonly Vertex[]): (readonly [number, number, number])[] {
  const [first] = list;
  return list.map(({ x, y, bulge = 0 }) => [Math.round(x - first.x) + 0, Math.round(y - first.y) + 0, bulge]);
}
