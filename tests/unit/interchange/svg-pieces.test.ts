import { describe, expect, test } from 'vitest';
import { type Affine, compose, mapPoint } from '../../../src/geom/affine.ts';
import { arcOf, type Vertex } from '../../../src/geom/vertex.ts';
import { drawParts } from '../../../src/interchange/svg/draw-parts.ts';
import { isPhysical, readLength, readViewBox, toPixels, viewBoxMap } from '../../../src/interchange/svg/measures.ts';
import { readPathData } from '../../../src/interchange/svg/path-data.ts';
import type { PathPart } from '../../../src/interchange/svg/path-part.ts';
import { readSvg } from '../../../src/interchange/svg/read.ts';
import { readTransform } from '../../../src/interchange/svg/read-transform.ts';

const MM: Affine = [1e6, 0, 0, -1e6, 0, 0];

function mapOf(text: string): Affine {
  const map = readTransform(text);
  if (typeof map === 'string') throw new Error(map);
  return map;
}

function partsOf(data: string): readonly PathPart[] {
  const read = readPathData(data);
  if (!read.ok) throw new Error(read.what);
  return read.parts;
}

function verticesOf(data: string, map: Affine = MM): readonly Vertex[] {
  const drawn = drawParts(partsOf(data), map, 100_000);
  if (drawn.kind !== 'chains') throw new Error(drawn.kind);
  return drawn.chains[0].vertices;
}

describe('transforms', () => {
  test('the last function is applied first', () => {
    expect(mapPoint(mapOf('translate(10,20) scale(2)'), 1, 1)).toEqual({ x: 12, y: 22 });
    expect(mapPoint(mapOf('scale(2) translate(10,20)'), 1, 1)).toEqual({ x: 22, y: 42 });
  });

  test('right angles are exact, also about a centre and backwards', () => {
    expect(mapPoint(mapOf('rotate(90)'), 3, 0)).toEqual({ x: 0, y: 3 });
    expect(mapPoint(mapOf('rotate(-270 1 1)'), 2, 1)).toEqual({ x: 1, y: 2 });
    expect(mapPoint(mapOf('rotate(540)'), 3, 1)).toEqual({ x: -3, y: -1 });
  });

  test('signs part numbers, commas and gaps are free', () => {
    expect(mapOf('translate(10-20)')).toEqual([1, 0, 0, 1, 10, -20]);
    expect(mapOf(' matrix( 1 ,2 3,4\n5 6 ) ')).toEqual([1, 2, 3, 4, 5, 6]);
    expect(mapOf('none')).toEqual([1, 0, 0, 1, 0, 0]);
    expect(mapOf('scale(.5)scale(4e-1,1)')).toEqual([0.2, 0, 0, 0.5, 0, 0]);
  });

  test.each([
    'rotate(45deg)',
    'matrix(1 0 0 1 0)',
    'translate()',
    'rotate(1 2)',
    'scale(1 2 3)',
    'turn(1)',
    '1',
    'skewX(1)x',
  ])('%s is refused', (text) => expect(typeof readTransform(text)).toBe('string'));

  test('maps compose as functions do', () => {
    const [outer, inner] = [mapOf('rotate(30) skewX(10)'), mapOf('scale(2 3) translate(5 7)')];
    const once = mapPoint(inner, 1.5, -2);
    const twice = mapPoint(outer, once.x, once.y);
    const whole = mapPoint(compose(outer, inner), 1.5, -2);
    expect(whole.x).toBeCloseTo(twice.x, 12);
    expect(whole.y).toBeCloseTo(twice.y, 12);
  });
});

describe('lengths and view boxes', () => {
  // CSS Values and Units Level 3, section 6.2: 1in = 2.54cm = 96px, 1cm = 96px/2.54, 1mm = 1/10cm, 1Q = 1/40cm, 1pt = 1/72in, 1pc = 1/6in.
  test.each([
    ['1in', 96],
    ['2.54cm', 96],
    ['25.4mm', 96],
    ['101.6Q', 96],
    ['72pt', 96],
    ['6PC', 96],
    ['96px', 96],
    [' +9.6e1 ', 96],
    ['50%', 48],
  ])('%s', (text, pixels) => {
    const length = readLength(text);
    expect(length && toPixels(length, 96)).toBeCloseTo(pixels, 12);
  });

  test.each(['', 'auto', 'NaN', '1em', '1e999', '1 2', '1mmm', '0x10', '%', 'constructor'])(
    '%j is no length',
    (text) => {
      expect(readLength(text)).toBeNull();
    },
  );

  test('units of the workshop state a size, pixels do not', () => {
    const physical = (text: string) => isPhysical(readLength(text) ?? { number: 0, unit: '' });
    expect(['1mm', '1in', '1pt', '1Q'].every(physical)).toBe(true);
    expect(['1', '1px', '1%'].some(physical)).toBe(false);
  });

  test('view boxes take commas and gaps, four numbers, no size below zero', () => {
    expect(readViewBox(' -1,2 3e1\n4.5 ')).toEqual({ x: -1, y: 2, width: 30, height: 4.5 });
    for (const bad of ['', '0 0 1', '0 0 1 1 1', '0 0 -1 1', '0 0 a 1', '0 0 1px 1'])
      expect(readViewBox(bad)).toBeNull();
  });

  test.each([
    ['', [2, 0, 0, 2, 0, 10]],
    ['xMidYMid meet', [2, 0, 0, 2, 0, 10]],
    ['xMaxYMin', [2, 0, 0, 2, 0, 0]],
    ['xMidYMax', [2, 0, 0, 2, 0, 20]],
    ['xMidYMin slice', [4, 0, 0, 4, -10, 0]],
    ['xMaxYMid slice', [4, 0, 0, 4, -20, 0]],
    ['none', [2, 0, 0, 4, 0, 0]],
    ['none slice', [2, 0, 0, 4, 0, 0]],
    ['nonsense', [2, 0, 0, 2, 0, 10]],
  ])('a box of 10 by 10 in a viewport of 20 by 40, %j', (aspect, map) => {
    const found = viewBoxMap({ x: 0, y: 0, width: 10, height: 10 }, 20, 40, aspect);
    expect(found.map((number) => number + 0)).toEqual(map);
  });
});

describe('path data', () => {
  test('long runs come out as short ones would', () => {
    const points = Array.from({ length: 5_000 }, (_, i) => [i % 97, i % 89] as const);
    const run = points.map(([x, y]) => `${x} ${y}`).join(' ');
    const single = points.map(([x, y]) => `L${x} ${y}`).join('');
    expect(partsOf(`M${run}`)).toEqual(partsOf(`M${single.slice(1)}`));
    const relative = points.map(([x, y]) => `l${x} ${y}`).join('');
    expect(partsOf(`m${run}`)).toEqual(partsOf(`m${relative.slice(1)}`));
    const curves = points
      .slice(0, 4_998)
      .map(([x, y]) => `${x},${y}`)
      .join(',');
    expect(partsOf(`M0 0c${curves}`)).toHaveLength(1 + 4_998 / 3);
    expect(readPathData(`M0 0c${curves} 1`).ok).toBe(false);
  });

  test('a short curve mirrors the one before it, or nothing', () => {
    expect(partsOf('M0 0C1 2 3 4 5 6S9 9 10 10')[2]).toEqual(['C', 7, 8, 9, 9, 10, 10]);
    expect(partsOf('M0 0L5 6S9 9 10 10')[2]).toEqual(['C', 5, 6, 9, 9, 10, 10]);
    expect(partsOf('M0 0q1 2 4 0t4 0')[2]).toEqual(['Q', 7, -2, 8, 0]);
  });
});

describe('arcs', () => {
  test('an arc keeps its radius and its side, whatever turns or mirrors it', () => {
    for (const text of ['rotate(17)', 'scale(-1 1)', 'scale(3) rotate(200 4 5)', 'matrix(0 -2 -2 0 7 8)']) {
      const map = compose(MM, mapOf(text));
      const [from, to] = verticesOf('M3 1A2.5 2.5 0 0 1 4 3', map);
      const arc = arcOf(from, to);
      const scale = Math.hypot(map[0], map[1]);
      expect((arc?.radius ?? 0) / (2.5 * scale)).toBeCloseTo(1, 12);
      const middle = arcOf(from, to)?.centre ?? { x: 0, y: 0 };
      // The centre by appendix F.6.5 of SVG 1.1: half the chord is sqrt(1.25), the centre sqrt(5) off its middle.
      const centre = mapPoint(map, 3.5 - 2, 2 + 1);
      expect(Math.hypot(middle.x - centre.x, middle.y - centre.y)).toBeLessThan(0.01);
    }
  });

  test('chords of an ellipse end on it and stay within half a micrometre', () => {
    const vertices = verticesOf('M4 0A4 1 0 0 1-4 0');
    for (const [i, { x, y }] of vertices.entries()) {
      expect((x / 4e6) ** 2 + (y / 1e6) ** 2).toBeCloseTo(1, 9);
      const next = vertices[i + 1] ?? { x, y };
      // The greatest distance from an affine image of a circle's chord is that of the mapped sagitta.
      const [u, v] = [(x + next.x) / 8e6, (y + next.y) / 2e6];
      const length = Math.hypot(u, v);
      expect(Math.hypot((u / length - u) * 4e6, (v / length - v) * 1e6)).toBeLessThan(500.001);
    }
    expect(vertices.length).toBeLessThan(110);
  });

  test('chords of a curve stay within half a micrometre at any scale', () => {
    for (const scale of [0.01, 1, 100]) {
      const map: Affine = [scale * 1e6, 0, 0, -scale * 1e6, 0, 0];
      const vertices = verticesOf('M0 0C0 3 4 3 4 0', map);
      for (let i = 0; i < vertices.length - 1; i++) {
        const share = (i + 0.5) / (vertices.length - 1);
        const x = (9 * 0 + 12 * share * share * (1 - share) + 4 * share ** 3) * scale * 1e6;
        const y = -9 * share * (1 - share) * scale * 1e6;
        const [a, b] = [vertices[i], vertices[i + 1]];
        const off = Math.abs((b.x - a.x) * (y - a.y) - (b.y - a.y) * (x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
        expect(off).toBeLessThan(500.001);
      }
    }
  });
});

describe('the size that is asked for', () => {
  const text = '<svg width="10mm" height="10mm" viewBox="0 0 10 10"><path d="M1 1H3V9H1Z"/></svg>';

  test('goes before the size that the drawing states', () => {
    const read = readSvg(text, { nmPerUnit: 25.4e6 });
    if (!read.ok) throw new Error('not read');
    expect(read.drawing.nmPerUnit).toBe(25.4e6);
    expect(read.drawing.paths[0].vertices.map(({ x, y }) => [Math.round(x), Math.round(y)])).toEqual([
      [25_400_000, -25_400_000],
      [76_200_000, -25_400_000],
      [76_200_000, -228_600_000],
      [25_400_000, -228_600_000],
    ]);
  });

  test('takes the place of a guess, and of the note about it', () => {
    const read = readSvg(text.replace(/width="10mm" height="10mm"/, ''), { nmPerUnit: 1e6 });
    expect(read).toMatchObject({ ok: true, drawing: { nmPerUnit: 1e6, unitsStated: false, notes: [] } });
  });

  test('is that of the outermost svg, whatever stands inside', () => {
    const inner =
      '<svg viewBox="0 0 96 96"><svg width="48" height="48" viewBox="0 0 4 4"><rect width="4" height="4"/></svg></svg>';
    const read = readSvg(inner, { nmPerUnit: 1000 });
    if (!read.ok) throw new Error('not read');
    expect(read.drawing.paths[0].vertices[2].x).toBeCloseTo(48_000, 6);
  });
});
