// Closed forms of the inner-fit region R = {t : blank + t inside opening}.
// Convex container: R is the container with every side moved inwards by the blank's support function, hence rectangle
// in rectangle, regular hexagons R and r turned alike -> hexagon R - r, similar triangles; standard facts of erosion,
// e.g. J. Serra, "Image Analysis and Mathematical Morphology", 1982 (from memory). A slot exactly as wide as the
// tongue leaves a segment, a shape equal to its hole a point: both are fits. L and T junction circles 1.171573 and
// 1.25: Roark & Young, "Formulas for Stress and Strain", junction formulas (from memory; plain geometry).
// The cases with their arithmetic: tests/cases/plain-fits.ts, contact-fits.ts, blocked-fits.ts.

import { describe, expect, test, vi } from 'vitest';
import { boxOf, type Point } from '../../src/geom/point.ts';
import { blockedFits } from '../cases/blocked-fits.ts';
import { contactFits } from '../cases/contact-fits.ts';
import { mm, plainOpening } from '../cases/fit-case.ts';
import { plainFits } from '../cases/plain-fits.ts';
import { polygonPair } from '../cases/polygon-pairs.ts';
import { type RandomNumbers, randomNumbers } from '../cases/random-numbers.ts';
import { rewritings, rewritten } from '../cases/rewritten-outlines.ts';
import { isSimpleOutline } from '../cases/simple-outline.ts';
import { type CoreAnswer, coreAnswer } from '../kit/engines/core-answer.ts';
import { knownFaults, witnessFaults } from '../kit/engines/disagreements.ts';
import { jstsInscribedCircle, jstsPolygon } from '../kit/engines/jsts-shapes.ts';

// Two slow cores shared with other work must not fail a correct answer.
vi.setConfig({ testTimeout: 120_000 });

const namedFits = [...plainFits, ...contactFits, ...blockedFits];

describe('named fits', () => {
  test.each(namedFits)('$name', (fitCase) => {
    const answer = coreAnswer(fitCase);
    expect(knownFaults(fitCase, answer)).toEqual([]);
    expect(witnessFaults(fitCase, answer)).toEqual([]);
  });

  test.each(namedFits.filter(({ known }) => known.region && known.area === 0))(
    '$name: the corners of the contact',
    (fitCase) => {
      const byPlace = (a: Point, b: Point): number => a.x - b.x || a.y - b.y;
      const corners = coreAnswer(fitCase)
        .region.contacts.map(({ x, y }) => ({ x, y }))
        .sort(byPlace);
      expect(corners).toEqual([...(fitCase.known.region ?? [])].sort(byPlace));
    },
  );

  test('two chambers exactly as large as the blank: both places are found', () => {
    const fitCase = contactFits.find(({ name }) => name.startsWith('two chambers'));
    expect(fitCase).toBeDefined();
    if (!fitCase) return;
    const places = coreAnswer(fitCase)
      .region.contacts.map((p) => p.x)
      .sort((a, b) => a - b);
    expect(places).toEqual([0, 4_000_000]);
  });
});

describe.each(rewritings)('the same outlines $name', (rewriting) => {
  test.each(namedFits)('$name', (fitCase) => {
    const answer = coreAnswer(rewritten(fitCase, rewriting));
    expect(knownFaults(fitCase, answer)).toEqual([]);
  });
});

describe('contact is tight, never blocked and never enters with a running clearance', () => {
  test.each(contactFits.filter(({ known }) => known.outcome === 'contact'))('$name', (fitCase) => {
    expect(coreAnswer(fitCase, 40_000).fit.verdict).toBe('tight');
  });
});

describe('convex containers: each side moved in by the support function', () => {
  const cases = Array.from({ length: 60 }, (_, seed) => convexContainerCase(seed)).filter(
    ({ region }) => region.length >= 3,
  );

  test('most of the generated blanks fit', () => expect(cases.length).toBeGreaterThan(40));

  test.each(cases)('$name', ({ name, container, blank, region }) => {
    const answer = coreAnswer({ opening: plainOpening(container), blank });
    const box = boxOf(region);
    const circle = jstsInscribedCircle(jstsPolygon(region), 20);
    expect(Math.abs(answer.area - areaOf(region)), name).toBeLessThan(1e-9 * areaOf(region) + box.maxX - box.minX);
    expect(answer.fit.play.lateral).toBeCloseTo(box.maxX - box.minX, 0);
    expect(answer.fit.play.vertical).toBeCloseTo(box.maxY - box.minY, 0);
    expect(answer.fit.clearance).toBeGreaterThan(circle.radius - answer.fit.accuracy - 1);
    expect(answer.fit.clearance).toBeLessThan(circle.radius + 21);
  });
});

describe('the play is that of the piece that holds the best placement', () => {
  test('of two chambers the roomier one', () => {
    const answer: CoreAnswer = coreAnswer({
      opening: plainOpening(
        mm([
          [0, 0],
          [3, 0],
          [3, 1],
          [5, 1],
          [5, 0],
          [8.5, 0],
          [8.5, 3],
          [5, 3],
          [5, 2],
          [3, 2],
          [3, 3.5],
          [0, 3.5],
        ]),
      ),
      blank: mm([
        [0, 0],
        [2, 0],
        [2, 2],
        [0, 2],
      ]),
    });
    // Left 1 x 1.5, right 1.5 x 1: equal circles of 0.5; whichever is chosen, the play must be its own.
    const left = answer.fit.placement.x < 2e6;
    expect(answer.fit.play).toEqual(left ? { lateral: 1e6, vertical: 1.5e6 } : { lateral: 1.5e6, vertical: 1e6 });
  });
});

interface ConvexContainerCase {
  readonly name: string;
  readonly container: Point[];
  readonly blank: readonly Point[];
  readonly region: Point[];
}

/** A convex polygon with corners on an ellipse, and the blank of a polygon pair. */
function convexContainerCase(seed: number): ConvexContainerCase {
  const random = randomNumbers(seed + 900);
  const container = convexContainer(random);
  const blank = polygonPair(seed + 300).blank;
  return { name: `convex container ${seed}`, container, blank, region: movedSides(container, blank) };
}

function convexContainer(random: RandomNumbers): Point[] {
  const count = random.whole(3, 12);
  const [wide, high] = [random.between(3, 9) * 1e6, random.between(3, 9) * 1e6];
  for (;;) {
    const angles = Array.from({ length: count }, (_, i) => ((i + random.between(-0.3, 0.3)) * 2 * Math.PI) / count);
    const outline = angles.map((a) => ({ x: Math.round(wide * Math.cos(a)), y: Math.round(high * Math.sin(a)) }));
    if (isSimpleOutline(outline)) return outline;
  }
}

/** The container cut down, side after side, to where the blank's furthest point in the side's direction still fits. */
function movedSides(container: readonly Point[], blank: readonly Point[]): Point[] {
  let region = boxCorners(5e7);
  for (let i = 0; i < container.length; i++) {
    const [p, q] = [container[i], container[(i + 1) % container.length]];
    const normal = { x: q.y - p.y, y: p.x - q.x };
    const along = (v: Point): number => normal.x * v.x + normal.y * v.y;
    region = cutByHalfPlane(region, (v) => along(p) - Math.max(...blank.map(along)) - along(v));
  }
  return region;
}

function boxCorners(reach: number): Point[] {
  return [
    { x: -reach, y: -reach },
    { x: reach, y: -reach },
    { x: reach, y: reach },
    { x: -reach, y: reach },
  ];
}

/** The part of a convex polygon where `room` is not negative (Sutherland & Hodgman 1974). */
function cutByHalfPlane(outline: readonly Point[], room: (p: Point) => number): Point[] {
  return outline.flatMap((p, i) => {
    const q = outline[(i + 1) % outline.length];
    const [a, b] = [room(p), room(q)];
    const kept = a >= 0 ? [p] : [];
    if (a * b >= 0) return kept;
    const share = a / (a - b);
    return [...kept, { x: p.x + share * (q.x - p.x), y: p.y + share * (q.y - p.y) }];
  });
}

function areaOf(outline: readonly Point[]): number {
  return outline.reduce(
    (sum, p, i) => sum + (p.x * outline[(i + 1) % outline.length].y - p.y * outline[(i + 1) % outline.length].x) / 2,
    0,
  );
}
