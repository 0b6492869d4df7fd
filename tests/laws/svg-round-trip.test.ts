// What is written as SVG and read again is the same outline: straight ones to the nanometre, arcs to a hundredth of the
// micrometre that is promised.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Point } from '../../src/geom/point.ts';
import { arcOf, makeDrawn, type Vertex, vertexAt } from '../../src/geom/vertex.ts';
import type { Drawing } from '../../src/interchange/drawing.ts';
import { readSvg } from '../../src/interchange/svg/read.ts';
import { writeSvg } from '../../src/interchange/svg/write.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { SVG_CASES, svgText } from '../cases/drawings/svg-cases.ts';
import { drawnBox, edgesOf, pointOnEdge } from '../kit/measure-drawn.ts';

const RUNS = { numRuns: 150 };
const ARC_WITHIN = 10;

/** An outline round its middle: at growing angles, at any distance from 1 to 5 mm, so that it never crosses itself. */
const spokes = fc.array(fc.record({ gap: fc.integer({ min: 1, max: 9 }), out: fc.integer({ min: 1e6, max: 5e6 }) }), {
  minLength: 3,
  maxLength: 14,
});

const bulges = fc.oneof(
  { weight: 3, arbitrary: fc.constant(0) },
  { weight: 2, arbitrary: fc.double({ min: -1.2, max: 1.2, noNaN: true }) },
  { weight: 1, arbitrary: fc.constantFrom(1, -1, 0.999999, 1.000001, 1e-9, 0.7673, 2.4142, 9.5) },
);

function star(arms: readonly { gap: number; out: number }[], middle: Point, bulge: readonly number[]): Vertex[] {
  const whole = arms.reduce((sum, { gap }) => sum + gap, 0);
  let angle = 0;
  return arms.map(({ gap, out }, i) => {
    angle += (gap / whole) * 2 * Math.PI;
    const x = Math.round(middle.x + out * Math.cos(angle));
    return vertexAt(x, Math.round(middle.y + out * Math.sin(angle)), bulge[i] ?? 0);
  });
}

const middles = fc.record({ x: fc.integer({ min: -40e6, max: 40e6 }), y: fc.integer({ min: -40e6, max: 40e6 }) });
const straight = fc.tuple(spokes, middles).map(([arms, middle]) => star(arms, middle, []));
const curved = fc
  .tuple(spokes, middles, fc.array(bulges, { minLength: 14, maxLength: 14 }))
  .map(([arms, middle, bulge]) => star(arms, middle, bulge));
const units = fc.constantFrom('mm' as const, 'in' as const);

function profileOf(vertices: readonly Vertex[], id = 'reed', name = 'Reed'): Profile | null {
  const made = makeDrawn(vertices);
  return made.ok ? { id, kind: 'blank', name, ring: made.ring, drawn: made.drawn } : null;
}

function readBack(text: string): Drawing {
  const read = readSvg(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.drawing;
}

const whole = ({ x, y }: Point) => ({ x: Math.round(x) + 0, y: Math.round(y) + 0 });

/** Where a vertex of the original must be found again, when the first one is where it is. */
function shiftBetween(original: readonly Vertex[], read: readonly Vertex[]): Point {
  const first = whole(read[0]);
  return { x: first.x - original[0].x, y: first.y - original[0].y };
}

/** Greatest distance of a read edge's points from the edge that was written. */
function offArc(
  from: Vertex,
  to: Vertex,
  shift: Point,
  edges: readonly { from: Point; to: Point; bulge: number }[],
): number {
  const arc = arcOf(from, to);
  const points = edges.flatMap((edge) =>
    [0.2, 0.5, 0.8].map((share) => pointOnEdge(edge.from, edge.to, edge.bulge, share)),
  );
  return Math.max(
    ...points.map(({ x, y }) => {
      const p = { x: x - shift.x, y: y - shift.y };
      if (arc) return Math.abs(Math.hypot(p.x - arc.centre.x, p.y - arc.centre.y) - arc.radius);
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      return Math.abs((to.x - from.x) * (p.y - from.y) - (to.y - from.y) * (p.x - from.x)) / length;
    }),
  );
}

describe('written and read again', () => {
  test('an outline of straight edges is the same to the nanometre, in mm and in inches', () => {
    fc.assert(
      fc.property(straight, units, (vertices, unit) => {
        const profile = profileOf(vertices);
        fc.pre(profile !== null);
        const { paths, unitsStated, notes } = readBack(writeSvg([profile as Profile], { units: unit }));
        expect({ count: paths.length, unitsStated, notes }).toEqual({ count: 1, unitsStated: true, notes: [] });
        const original = (profile as Profile).drawn ?? [];
        const shift = shiftBetween(original, paths[0].vertices);
        expect(paths[0].closed).toBe(true);
        expect(paths[0].vertices.map(whole)).toEqual(original.map(({ x, y }) => ({ x: x + shift.x, y: y + shift.y })));
      }),
      RUNS,
    );
  });

  test('an outline with arcs has the same vertices, and its arcs the same way', () => {
    let arcs = 0;
    fc.assert(
      fc.property(curved, units, (vertices, unit) => {
        const profile = profileOf(vertices);
        fc.pre(profile !== null);
        const original = (profile as Profile).drawn ?? [];
        const [path] = readBack(writeSvg([profile as Profile], { units: unit })).paths;
        const shift = shiftBetween(original, path.vertices);
        const edges = edgesOf(path);
        let k = 0;
        for (const [i, from] of original.entries()) {
          const to = original[(i + 1) % original.length];
          const end = { x: to.x + shift.x, y: to.y + shift.y };
          const begin = k;
          while (k < edges.length && JSON.stringify(whole(edges[k].to)) !== JSON.stringify(end)) k++;
          k++;
          const own = edges.slice(begin, k);
          expect(own.length).toBeLessThanOrEqual(2);
          expect(offArc(from, to, shift, own)).toBeLessThan(ARC_WITHIN);
          const turn = 4 * Math.atan(from.bulge ?? 0);
          const found = own.reduce((sum, { bulge }) => sum + 4 * Math.atan(bulge), 0);
          expect(Math.abs(found - turn)).toBeLessThan(1e-4);
          if (from.bulge) arcs++;
        }
        expect(k).toBe(edges.length);
      }),
      RUNS,
    );
    expect(arcs).toBeGreaterThan(50);
  });

  test('what was read, made and written again does not drift', () => {
    fc.assert(
      fc.property(curved, units, (vertices, unit) => {
        const profile = profileOf(vertices);
        fc.pre(profile !== null);
        const once = writeSvg([profile as Profile], { units: unit });
        const { vertices: read } = readBack(once).paths[0];
        const { x, y } = shiftBetween((profile as Profile).drawn ?? [], read);
        // Back in its own place: on the sheet a large one may lie farther out than the core takes.
        const again = profileOf(read.map((vertex) => ({ ...vertex, x: vertex.x - x, y: vertex.y - y })));
        expect(again).not.toBeNull();
        const twice = writeSvg([again as Profile], { units: unit });
        const [a, b] = [once, twice].map((text) => drawnBox(readBack(text).paths[0]));
        // The place on the sheet comes from chords, which a halved arc changes a little; the size does not.
        expect(Math.abs(a.maxX - a.minX - (b.maxX - b.minX))).toBeLessThan(ARC_WITHIN);
        expect(Math.abs(a.maxY - a.minY - (b.maxY - b.minY))).toBeLessThan(ARC_WITHIN);
      }),
      RUNS,
    );
  });
});

describe('a sheet of several', () => {
  const names = fc.string({ unit: 'binary', maxLength: 20 });
  /** A name as XML can hold it, on one line. */
  const plainName = (name: string) =>
    name
      .replace(/\p{Cs}/gu, '\ufffd')
      // biome-ignore lint/suspicious/noControlCharactersInRegex: XML has no place for them.
      .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '')
      .replace(/\s+/g, ' ')
      .trim();

  test('nothing overlaps, everything is inside, names come back', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(curved, names), { minLength: 1, maxLength: 5 }), units, (list, unit) => {
        const profiles = list.flatMap(([vertices, name], i) => profileOf(vertices, `p${i}`, name) ?? []);
        fc.pre(profiles.length > 0);
        const gap = 2e6;
        const text = writeSvg(profiles, { units: unit, gap });
        const { paths } = readBack(text);
        expect(paths.map(({ label }) => label)).toEqual(profiles.map(({ id, name }) => plainName(name) || id));
        const boxes = paths.map(drawnBox);
        const [width, height] = (/viewBox="0 0 (\S+) (\S+)"/.exec(text) ?? [])
          .slice(1)
          .map((n) => Number(n) * (unit === 'mm' ? 1e6 : 25.4e6));
        for (const [i, box] of boxes.entries()) {
          const before = boxes[i - 1]?.maxX ?? 0;
          // A box is taken from chords, half a micrometre within their arcs.
          expect(box.minX - before).toBeGreaterThan(gap - 1_001);
          expect(Math.min(-box.maxY, height + box.minY, width - box.maxX)).toBeGreaterThan(gap - 1_001);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('names and ids with signs of the language, controls and halves of pairs make a sound file', () => {
    const profile = profileOf([
      { x: 0, y: 0 },
      { x: 2e6, y: 0 },
      { x: 2e6, y: 8e6 },
    ]) as Profile;
    const name = `<b>&"'\u0000\u0007\ud800 ]]> --> é 𝄞`;
    const twice = [
      { ...profile, id: 'a b', name },
      { ...profile, id: 'a b', name },
      { ...profile, id: '"><script>', name },
      { ...profile, id: ' ', name },
    ];
    const text = writeSvg(twice, { units: 'mm' });
    expect(readBack(text).paths.map(({ label }) => label)).toEqual(Array(4).fill(`<b>&"'\ufffd ]]> --> é 𝄞`));
    const untitled = text.replace(/<title>.*?<\/title>/g, '');
    expect(readBack(untitled).paths.map(({ label }) => label)).toEqual(['a-b', 'a-b-2', '"><script>', 'profile']);
    expect(text).not.toMatch(/<script>|<b>/);
  });

  test('without profiles it is an empty sheet, and the reader says so', () => {
    const read = readSvg(writeSvg([], { units: 'mm' }));
    expect(read).toMatchObject({ ok: false, faults: [{ what: 'the drawing shows no line that can be read' }] });
  });
});

describe('whatever is put into a drawing', () => {
  const rubbish = fc.oneof(
    fc.constantFrom(
      '<',
      '>',
      '"',
      '&',
      '/',
      '-',
      '.',
      'e',
      'NaN',
      '1e308',
      '<g>',
      '</g>',
      '%',
      'Z',
      'A1 1 0 1',
      ']]>',
      '<?',
      ',',
    ),
    fc.string({ unit: 'binary', maxLength: 3 }),
  );
  const change = fc.record({ at: fc.nat(5_000), cut: fc.nat(6), put: rubbish });

  test('it is read to numbers or refused with words, never thrown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...SVG_CASES),
        fc.array(change, { minLength: 1, maxLength: 4 }),
        ({ file }, changes) => {
          const text = changes.reduce((whole, { at, cut, put }) => {
            const from = at % whole.length;
            return whole.slice(0, from) + put + whole.slice(from + cut);
          }, svgText(file));
          const read = readSvg(text);
          if (!read.ok) for (const { path, what, cure } of read.faults) expect(path && what && cure).not.toBe('');
          else
            for (const { vertices } of read.drawing.paths) {
              expect(vertices.length).toBeGreaterThan(1);
              for (const { x, y, bulge = 0 } of vertices) expect(Number.isFinite(x + y + bulge)).toBe(true);
            }
        },
      ),
      { numRuns: 500 },
    );
  });
});
