import fc from 'fast-check';
import type { Fit } from '../../src/fit/fit.ts';
import { judgeFit } from '../../src/fit/judge-fit.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import type { Point } from '../../src/geom/point.ts';
import type { Region } from '../../src/geom/region.ts';
import { makeRing, type Ring } from '../../src/geom/ring.ts';
import { keywayPair, nearContactPair } from '../cases/keyway-pairs.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { growByMitre, type Notch, type Section, sectionOutline } from '../cases/section-outline.ts';

/** The running clearance of all laws, nanometres. */
export const RUNNING = 40_000;

/** A blank and an opening, as outlines. */
export interface BladePair {
  readonly opening: Ring;
  readonly blank: Ring;
}

const UM = 1e3;
const SLOTS = 3;

/** One notch of a face: which third of the height it is in, and its measures in parts of what there is room for. */
const notch = fc.record({
  side: fc.constantFrom<Notch['side']>('left', 'right'),
  slot: fc.nat(SLOTS - 1),
  at: fc.double({ min: 0, max: 1, noNaN: true }),
  width: fc.double({ min: 0.25, max: 0.6, noNaN: true }),
  depth: fc.double({ min: 0.1, max: 0.42, noNaN: true }),
  lean: fc.constantFrom(0, 0, 0, 120 * UM, -60 * UM),
});
type DrawnNotch = typeof notch extends fc.Arbitrary<infer Value> ? Value : never;

/** A blade as it is milled: up to three grooves a face, never two in one third of it. */
const section = fc
  .record({
    thickness: fc.integer({ min: 160, max: 240 }),
    height: fc.integer({ min: 750, max: 900 }),
    notches: fc.uniqueArray(notch, { maxLength: 5, selector: ({ side, slot }) => `${side} ${slot}` }),
  })
  .map(({ thickness, height, notches }): Section => {
    const [wide, high] = [thickness * 1e4, height * 1e4];
    return { thickness: wide, height: high, notches: notches.map((drawn) => placed(drawn, wide, high)) };
  });

function placed({ side, slot, at, width, depth, lean }: DrawnNotch, thickness: number, height: number): Notch {
  const share = height / SLOTS;
  const size = Math.round(width * share);
  const room = share - size - 2 * 250 * UM;
  return {
    side,
    bottom: Math.round(slot * share + 250 * UM + at * room),
    width: size,
    depth: Math.round(depth * thickness),
    lean,
  };
}

/** The blank's own section, opened up by a gap (or closed in), with what may have been done to its wards. */
const suited = fc
  .record({
    blank: section,
    gap: fc.integer({ min: -30, max: 80 }).map((um) => um * UM),
    nudge: fc.array(
      fc.record({
        depth: fc.integer({ min: -80, max: 40 }),
        bottom: fc.integer({ min: -60, max: 60 }),
        gone: fc.boolean(),
      }),
      { maxLength: 5 },
    ),
  })
  .map(({ blank, gap, nudge }) => {
    const wards = blank.notches.flatMap((n, i) => {
      const { depth, bottom, gone } = nudge[i] ?? { depth: 0, bottom: 0, gone: false };
      return gone ? [] : [{ ...n, depth: Math.max(50 * UM, n.depth + depth * UM), bottom: n.bottom + bottom * UM }];
    });
    return pairOf(growByMitre(sectionOutline({ ...blank, notches: wards }), gap), sectionOutline(blank));
  });

/** Two sections that have nothing to do with each other. */
const strangers = fc
  .tuple(section, section)
  .map(([opening, blank]) => pairOf(sectionOutline(opening), sectionOutline(blank)));

/** Pairs with fillets, near contacts and shapes that are no blades at all. */
const generated = fc.tuple(fc.constantFrom('keyway', 'near', 'polygon'), fc.nat(1_000_000)).map(([kind, seed]) => {
  const { opening, blank } = drawnBy(kind, seed);
  return pairOf(opening.outer, blank);
});

function drawnBy(kind: string, seed: number) {
  if (kind === 'keyway') return keywayPair(seed, 60);
  return kind === 'near' ? nearContactPair(seed, 20) : polygonPair(seed);
}

function pairOf(opening: readonly Point[], blank: readonly Point[]): BladePair | null {
  const [o, b] = [makeRing(opening), makeRing(blank)];
  return o.ok && b.ok ? { opening: o.ring, blank: b.ring } : null;
}

/** Pairs of all kinds, about half of which go in. */
export const bladePair: fc.Arbitrary<BladePair> = fc
  .oneof({ arbitrary: suited, weight: 4 }, { arbitrary: strangers, weight: 1 }, { arbitrary: generated, weight: 3 })
  .filter((pair) => pair !== null);

/** Checks a law on random pairs; the seed is fixed, so a run can be repeated. A broken law is shown as it is, not shrunk. */
export function holds(law: (pair: BladePair) => void, numRuns: number): void {
  fc.assert(fc.property(bladePair, law), { seed: 20_260_101, numRuns, endOnFailure: true });
}

/** Checks a law on random pairs and something else that is drawn. */
export function holdsWith<Other>(
  other: fc.Arbitrary<Other>,
  law: (pair: BladePair, other: Other) => void,
  numRuns: number,
) {
  fc.assert(fc.property(bladePair, other, law), { seed: 20_260_102, numRuns, endOnFailure: true });
}

/** The fit of outlines, regions or parts. */
export function fitOf(opening: Ring | Region, blank: Ring | readonly Ring[]): Fit {
  return judgeFit(prepareOpening(opening), prepareBlank(blank), RUNNING);
}

/** The ring with every point mapped, turned round where the map mirrors. */
export function mapped(ring: Ring, map: (p: Point) => Point): Ring {
  const made = makeRing(ring.map(map));
  if (!made.ok) throw new Error(made.fault.message);
  return made.ring;
}
