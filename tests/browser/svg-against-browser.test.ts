// Chromium's own SVG geometry against ours, both ways: every drawing of the corpus is put into a page, points along what
// the browser shows are held to what we read, and points along what we read to what the browser shows; and what we write
// is measured by it. Chromium keeps path coordinates in 32-bit floats (their last digit is 6e-8 of the largest one) and
// draws an arc of a path as cubic curves of up to 90 degrees, 2.7e-4 of the radius too far out between their ends
// (its circles, ellipses and rectangles are exact). Where that is more than the 1 um asked for, the case says so.
import { readdirSync, readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Point } from '../../src/geom/point.ts';
import { makeDrawn, type Vertex } from '../../src/geom/vertex.ts';
import type { DrawnPath } from '../../src/interchange/drawing.ts';
import { readSvg } from '../../src/interchange/svg/read.ts';
import { writeSvg } from '../../src/interchange/svg/write.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { SVG_CASES, svgText } from '../cases/drawings/svg-cases.ts';
import { drawnBox, edgesOf, pointOnEdge } from '../kit/measure-drawn.ts';
import { browserOfThisLane } from '../kit/open-app.ts';

const NM_PER_PIXEL = 25.4e6 / 96;
const WITHIN = 1_000;

/** Cases whose tolerance is the browser's own, in nanometres, and why. */
const BROWSER_WITHIN: Readonly<Record<string, number>> = {
  // Laid out in 64ths of a pixel, half of which is 2 um here: 30 mm drawn 10 units wide, 2 of them used.
  'size-in-style': 3 * WITHIN,
  // An arc of radius 6 mm as one cubic curve.
  matrix: WITHIN + 2.8e-4 * 6e6,
  'turned-ellipse': WITHIN + 2.8e-4 * 6e6,
};

/** What a style sheet hides, we show: said in a note, not held to the browser. */
const NOT_ALIKE = new Set(['text-and-pictures']);

/** What a style moves, we leave out: only what we read is looked for in the browser. */
const LEFT_OUT = new Set(['moved-by-style']);

/** A size that is left open is the window's in a browser; here it is set to what we guess. */
const OPEN_SIZE: Readonly<Record<string, Readonly<Record<string, string>>>> = {
  'viewbox-without-size': { width: '96px', height: '96px' },
  'size-in-percent': { width: '96px', height: '96px' },
  'width-only': { height: '80mm' },
};

/** A size in a style is heeded by the browser at the outermost svg only, so these are put there. */
const OUTERMOST = new Set(['size-in-style']);

/** What the browser says of a sheet; lengths in pixels of the screen from the sheet's corner, y down. */
interface Shown {
  /** Points along every shape that it shows. */
  readonly points: readonly Point[];
  /** For each `use`: its box in its own user units, and the map from those to the screen. */
  readonly uses: readonly { readonly box: readonly number[]; readonly map: readonly number[] }[];
}

let page: Page;

beforeAll(async () => {
  page = await (await browserOfThisLane()).newPage({ viewport: { width: 1000, height: 1000 } });
  await page.setContent('<!doctype html><html><body style="margin:0"></body></html>');
});

afterAll(() => page.close());

/**
 * Puts a sheet into the page, as the only child of a sheet without a scale of its own: the outermost svg of a page is laid
 * out in 64ths of a pixel (up to 4 um), a nested one is not.
 */
async function put(text: string, sides: Readonly<Record<string, string>> = {}, nested = true): Promise<void> {
  await page.evaluate(
    ([source, given, inside]) => {
      // Without a namespace it is a drawing only where the page's own language is read.
      const inPage = !source.includes('http://www.w3.org/2000/svg');
      const parsed = new DOMParser().parseFromString(
        inPage ? `<body>${source}` : source,
        inPage ? 'text/html' : 'image/svg+xml',
      );
      const sheet = inPage ? parsed.querySelector('svg') : parsed.documentElement;
      if (!sheet || parsed.querySelector('parsererror')) throw new Error(`not a drawing: ${source}`);
      document.body.innerHTML = '<svg width="1000" height="1000" style="position:absolute;left:0;top:0"></svg>';
      const outer = document.body.firstElementChild as SVGSVGElement;
      const inner = outer.appendChild(document.importNode(sheet, true)) as SVGSVGElement;
      if (!inside) {
        outer.replaceWith(inner);
        inner.style.position = 'absolute';
        inner.style.left = '0';
        inner.style.top = '0';
      }
      for (const [name, side] of Object.entries(given)) inner.setAttribute(name, side);
    },
    [text.replace(/^\uFEFF?\s*/, ''), sides, nested] as const,
  );
}

/** Asks the browser for points along its shapes, and for the boxes of what `use` brings in. */
function ask(): Promise<Shown> {
  return page.evaluate(() => {
    const root = document.body.firstElementChild as SVGSVGElement;
    const around = (element: Element | null): Element[] => (element ? [element, ...around(element.parentElement)] : []);
    const shapes = [...root.querySelectorAll('*')].filter(
      (element): element is SVGGeometryElement =>
        element instanceof SVGGeometryElement &&
        element.checkVisibility({ visibilityProperty: true }) &&
        !around(element).some((one) => getComputedStyle(one).display === 'none') &&
        element.getTotalLength() > 0 &&
        !element.closest('defs, symbol, clipPath, mask, marker, pattern'),
    );
    const place = (element: SVGGraphicsElement, point: DOMPoint | SVGPoint) => {
      const map = element.getScreenCTM() as DOMMatrix;
      return { x: map.a * point.x + map.c * point.y + map.e, y: map.b * point.x + map.d * point.y + map.f };
    };
    const points = shapes.flatMap((shape) => {
      const length = shape.getTotalLength();
      return Array.from({ length: 150 }, (_, i) => place(shape, shape.getPointAtLength((length * i) / 150)));
    });
    const uses = [...root.querySelectorAll('use')]
      .filter((use) => !use.closest('defs'))
      .map((use) => {
        const { x, y, width, height } = use.getBBox();
        const map = use.getScreenCTM() as DOMMatrix;
        return { box: [x, y, x + width, y + height], map: [map.a, map.b, map.c, map.d, map.e, map.f] };
      });
    return { points, uses };
  });
}

/** For each point, pixels of the screen: how far it is from the nearest shape that the browser shows. */
function distancesFromShown(points: readonly Point[]): Promise<number[]> {
  return page.evaluate((asked) => {
    const root = document.body.firstElementChild as SVGSVGElement;
    const around = (element: Element | null): Element[] => (element ? [element, ...around(element.parentElement)] : []);
    const shapes = [...root.querySelectorAll('*')].filter(
      (element): element is SVGGeometryElement =>
        element instanceof SVGGeometryElement &&
        element.checkVisibility({ visibilityProperty: true }) &&
        !around(element).some((one) => getComputedStyle(one).display === 'none') &&
        element.getTotalLength() > 0 &&
        !element.closest('defs, symbol, clipPath, mask, marker, pattern'),
    );
    const courses = shapes.map((shape) => {
      const map = shape.getScreenCTM() as DOMMatrix;
      const total = shape.getTotalLength();
      const at = (length: number) => {
        const { x, y } = shape.getPointAtLength(length);
        return { x: map.a * x + map.c * y + map.e, y: map.b * x + map.d * y + map.f };
      };
      const step = total / 300;
      return { at, total, step, coarse: Array.from({ length: 301 }, (_, i) => at(i * step)) };
    });
    return asked.map((p) => {
      const off = (q: { x: number; y: number }) => Math.hypot(p.x - q.x, p.y - q.y);
      const starts = courses.flatMap(({ at, total, step, coarse }) =>
        coarse.map((q, i) => ({ at, total, step, length: i * step, off: off(q) })),
      );
      const best = starts.sort((a, b) => a.off - b.off).slice(0, 2);
      return Math.min(
        ...best.map(({ at, total, step, length }) => {
          let [low, high] = [Math.max(0, length - step), Math.min(total, length + step)];
          for (let k = 0; k < 24; k++) {
            const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
            if (off(at(a)) <= off(at(b))) high = b;
            else low = a;
          }
          return Math.min(off(at(low)), off(at((low + high) / 2)), off(at(high)), off(at(length)));
        }),
      );
    });
  }, points as Point[]);
}

function pathsOf(text: string): readonly DrawnPath[] {
  const read = readSvg(text);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.drawing.paths;
}

const toScreen = ({ x, y }: Point): Point => ({ x: x / NM_PER_PIXEL, y: -y / NM_PER_PIXEL });

/** Distance of a place from an edge; from an arc, by the nearest of 65 points of it and halving from there. */
function distanceFromEdge(p: Point, from: Point, to: Point, bulge: number): number {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const square = dx * dx + dy * dy;
  const along = ((p.x - from.x) * dx + (p.y - from.y) * dy) / square;
  if (bulge === 0) {
    const share = Math.min(1, Math.max(0, along));
    return Math.hypot(p.x - from.x - share * dx, p.y - from.y - share * dy);
  }
  let best = { share: 0, off: Infinity };
  const off = (share: number) => {
    const q = pointOnEdge(from, to, bulge, share);
    return Math.hypot(p.x - q.x, p.y - q.y);
  };
  for (let k = 0; k <= 64; k++) if (off(k / 64) < best.off) best = { share: k / 64, off: off(k / 64) };
  for (let size = 1 / 64; size > 1e-9; size /= 2)
    for (const share of [best.share - size, best.share + size])
      if (share >= 0 && share <= 1 && off(share) < best.off) best = { share, off: off(share) };
  return best.off;
}

/** How far the points that the browser shows are from what we read, at most, in nanometres. */
function farthestShown(points: readonly Point[], paths: readonly DrawnPath[]): number {
  const edges = paths.flatMap(edgesOf);
  return Math.max(
    ...points.map(({ x, y }) => {
      const p = { x: x * NM_PER_PIXEL, y: -y * NM_PER_PIXEL };
      return Math.min(...edges.map(({ from, to, bulge }) => distanceFromEdge(p, from, to, bulge)));
    }),
  );
}

/** Our vertices and points along our edges, at most 100 of them, in pixels of the screen. */
function ownPoints(paths: readonly DrawnPath[]): Point[] {
  const all = paths
    .flatMap(edgesOf)
    .flatMap(({ from, to, bulge }) => [0, 0.3, 0.7, 1].map((share) => toScreen(pointOnEdge(from, to, bulge, share))));
  const stride = Math.ceil(all.length / 100);
  return all.filter((_, i) => i % stride === 0);
}

/** What we read of a `use`, in the user units of the browser's own box for it. */
function boxInside(path: DrawnPath, [a, b, c, d, e, f]: readonly number[]): number[] {
  const det = a * d - b * c;
  const back = ({ x, y }: Point) => ({ x: (d * (x - e) - c * (y - f)) / det, y: (a * (y - f) - b * (x - e)) / det });
  const { minX, minY, maxX, maxY } = drawnBox({
    ...path,
    vertices: path.vertices.map((vertex) => back(toScreen(vertex))),
  });
  return [minX, minY, maxX, maxY];
}

const GOOD = SVG_CASES.map(({ file }) => file).filter((file) => !NOT_ALIKE.has(file));

describe('what we read is what the browser shows', () => {
  test.each(GOOD)('%s', async (file) => {
    const paths = pathsOf(svgText(file));
    await put(svgText(file), OPEN_SIZE[file], !OUTERMOST.has(file));
    const shown = await ask();
    const within = BROWSER_WITHIN[file] ?? WITHIN;
    for (const [i, use] of shown.uses.entries()) {
      const unit = Math.hypot(use.map[0], use.map[1]) * NM_PER_PIXEL;
      for (const [k, side] of boxInside(paths[i], use.map).entries())
        expect(Math.abs(side - use.box[k]) * unit, `side ${k} of use ${i}`).toBeLessThan(within);
    }
    if (shown.uses.length > 0) return;
    expect(shown.points.length).toBeGreaterThan(0);
    if (!LEFT_OUT.has(file)) expect(farthestShown(shown.points, paths), 'shown, not read').toBeLessThan(within);
    const distances = await distancesFromShown(ownPoints(paths));
    expect(Math.max(...distances) * NM_PER_PIXEL, 'read, not shown').toBeLessThan(within);
  });
});

describe('the samples for users', () => {
  const folder = new URL('../../profiles-demo/imports/', import.meta.url);
  const files = readdirSync(folder).filter((name) => name.endsWith('.svg'));

  test.each(files)('%s', async (file) => {
    const text = readFileSync(new URL(file, folder), 'utf8');
    const paths = pathsOf(text);
    await put(text);
    const { points, uses } = await ask();
    expect(points.length).toBeGreaterThan(0);
    expect(farthestShown(points, paths)).toBeLessThan(WITHIN);
    const plain = paths.slice(uses.length);
    expect(Math.max(...(await distancesFromShown(ownPoints(plain)))) * NM_PER_PIXEL).toBeLessThan(WITHIN);
  });
});

/** A blade with a round back, a round groove, a nearly half-round one, and an arc over most of a circle. */
const BLADE: readonly Vertex[] = [
  { x: 0, y: 1e6, bulge: 1 },
  { x: 2e6, y: 1e6 },
  { x: 2e6, y: 3e6, bulge: -0.98 },
  { x: 2e6, y: 4e6 },
  { x: 2e6, y: 8.1e6, bulge: 2.2 },
  { x: 0.7e6, y: 8.1e6 },
  { x: 0, y: 8e6 },
  { x: 0, y: 5_000_001, bulge: -0.3 },
  { x: 0, y: 4_000_003 },
];

function profileOf(id: string, vertices: readonly Vertex[]): Profile {
  const made = makeDrawn(vertices);
  if (!made.ok) throw new Error(made.fault.message);
  return { id, kind: 'blank', name: id, ring: made.ring, drawn: made.drawn };
}

describe('what we write is shown at true size', () => {
  const bar = profileOf('bar', [
    { x: -1e6, y: -1e6 },
    { x: 1.1e6, y: -1e6 },
    { x: 1.1e6, y: 7.5e6 },
    { x: -1e6, y: 7.5e6 },
  ]);

  test.each(['mm', 'in'] as const)('a bar of 2.1 by 8.5 mm, written in %s', async (units) => {
    await put(writeSvg([bar], { units, gap: 2e6 }));
    const box = await page.evaluate(() => {
      const { width, height } = (document.querySelector('path') as SVGPathElement).getBBox();
      const map = (document.querySelector('path') as SVGPathElement).getScreenCTM() as DOMMatrix;
      return [width * map.a, height * map.d];
    });
    // 1 inch is 96 pixels of CSS and 25.4 mm.
    expect(Math.abs((box[0] / 96) * 25.4 - 2.1)).toBeLessThan(0.001);
    expect(Math.abs((box[1] / 96) * 25.4 - 8.5)).toBeLessThan(0.001);
  });

  test.each(['mm', 'in'] as const)('the sheet is as large as it says, written in %s', async (units) => {
    const text = writeSvg([bar], { units, gap: 2e6 });
    const size = await page.evaluate(
      (source) => {
        document.body.innerHTML = source;
        const { width, height } = (document.querySelector('svg') as SVGSVGElement).getBoundingClientRect();
        return [width, height];
      },
      text.replace(/^<\?.*\?>/, ''),
    );
    // 2 mm all round; the page's layout counts in 64ths of a pixel.
    expect(Math.abs(size[0] - (6.1 / 25.4) * 96)).toBeLessThan(1 / 32);
    expect(Math.abs(size[1] - (12.5 / 25.4) * 96)).toBeLessThan(1 / 32);
  });

  test.each(['mm', 'in'] as const)('arcs of every kind in a row of three, written in %s', async (units) => {
    const row = [
      profileOf('blade', BLADE),
      bar,
      profileOf(
        'again',
        BLADE.map((v) => ({ ...v, x: v.x - 7e6, y: v.y + 9e6 })),
      ),
    ];
    const text = writeSvg(row, { units });
    await put(text);
    const { points } = await ask();
    const titles = await page.evaluate(() =>
      [...document.querySelectorAll('path')].map((path) => path.querySelector('title')?.textContent),
    );
    expect(titles).toEqual(['blade', 'bar', 'again']);
    // Against the profiles themselves, put where the sheet has them by their left and lower edges; not against our reader.
    const left = [5e6, 5e6 + width(row[0]) + 5e6, 5e6 + width(row[0]) + 5e6 + width(row[1]) + 5e6];
    const tallest = Math.max(...row.map((profile) => height(profile)));
    const placed = row.map((profile, i): DrawnPath => {
      const { minX, minY } = boxOfProfile(profile);
      const up = -(5e6 + tallest) - minY;
      return {
        closed: true,
        label: '',
        vertices: (profile.drawn ?? []).map((v) => ({ ...v, x: v.x - minX + left[i], y: v.y + up })),
      };
    });
    // A micrometre, and half of one for boxes that the sheet takes from chords, twice.
    expect(farthestShown(points, placed)).toBeLessThan(2 * WITHIN);
    const own = ownPoints(placed);
    expect(Math.max(...(await distancesFromShown(own))) * NM_PER_PIXEL).toBeLessThan(2 * WITHIN);
    expect(farthestShown(points, pathsOf(text))).toBeLessThan(WITHIN);
  });
});

function boxOfProfile(profile: Profile) {
  return drawnBox({ closed: true, label: '', vertices: profile.drawn ?? profile.ring });
}

const width = (profile: Profile) => boxOfProfile(profile).maxX - boxOfProfile(profile).minX;
const height = (profile: Profile) => boxOfProfile(profile).maxY - boxOfProfile(profile).minY;
