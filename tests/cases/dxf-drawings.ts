import { readFileSync } from 'node:fs';
import { arcSegment } from './drawn-shape.ts';

/** A closed line that a drawing holds; lengths in millimetres, from closed forms. */
export interface ExpectedLoop {
  readonly label?: string;
  readonly area: number;
  readonly width?: number;
  readonly height?: number;
  /** Left and bottom of its box. */
  readonly x?: number;
  readonly y?: number;
  /** How many vertices with a bulge; of a flattened curve none. */
  readonly arcs?: number;
  /** Whether it is a curve that chords stand for. */
  readonly flattened?: boolean;
}

/** A drawing of the corpus and what is to be read from it. */
export interface DrawingCase {
  readonly file: string;
  readonly loops: readonly ExpectedLoop[];
  readonly open?: number;
  /** Nanometres in one unit; a millimetre where not given. */
  readonly nmPerUnit?: number;
  /** False where the drawing does not state its unit. */
  readonly stated?: boolean;
  /** What the notes say, in any order; none others may be there. */
  readonly notes?: readonly RegExp[];
}

const INCH = 25.4;

const FOOT = 304.8;

const SURVEY_FOOT = 1_200_000 / 3937;

/** The rectangle that most drawings hold: 2.0 x 8.4 mm. */
const PLAIN: ExpectedLoop = { area: 2 * 8.4, width: 2, height: 8.4, x: 0, y: 0, arcs: 0 };

const rectangle = (width: number, height: number): ExpectedLoop => ({ area: width * height, width, height, arcs: 0 });

const rounded = (w: number, h: number, r: number): ExpectedLoop => {
  return { area: w * h - (4 - Math.PI) * r * r, width: w, height: h, x: 0, y: 0, arcs: 4 };
};

/** The L with a bowed flank that the drawings with blocks hold: 3 x 5 mm. */
const BOWED_AREA = 7 + arcSegment(4, 0.5);

const BOWED: ExpectedLoop = { area: BOWED_AREA, width: 3, height: 5, arcs: 1 };

const NO_UNIT = { stated: false };

/** A cubic with control points (0, 0), (0, 5), (4, 5), (4, 0): 3/5 of its box of 4 x 5, its top at 3/4 of the height. */
const ARCH: ExpectedLoop = { area: 0.6 * 4 * 5, width: 4, height: 3.75, x: 0, y: 0, flattened: true };

/**
 * A closed uniform cubic B-spline round a square of 4 mm: the integral of x dy, with the products of two B-splines and
 * derivatives of them being values of B-splines of higher order (I. J. Schoenberg), is (245 - 1) / 360 of the square. It
 * reaches to 2/3 of the way from the centre to a side: at a knot (1, 4, 1) / 6 of three corners, and there at most.
 */
const ROUND_SQUARE: ExpectedLoop = { area: (244 / 360) * 16, flattened: true };

/** A circle of which (1 - cos) matters: r from chord and bulge. */
const radius = (chord: number, bulge: number) => (chord * (1 + bulge * bulge)) / (4 * bulge);

export const DXF_DRAWINGS: readonly DrawingCase[] = [
  { file: 'polyline-mm', loops: [{ ...PLAIN, label: 'Dunlin' }] },
  { file: 'polyline-inches', nmPerUnit: 25.4e6, loops: [rectangle(0.08 * INCH, 0.32 * INCH)] },
  { file: 'polyline-feet', nmPerUnit: 304.8e6, loops: [rectangle(0.0075 * FOOT, 0.0275 * FOOT)] },
  {
    file: 'polyline-survey-feet',
    nmPerUnit: SURVEY_FOOT * 1e6,
    loops: [rectangle(0.0075 * SURVEY_FOOT, 0.0275 * SURVEY_FOOT)],
  },
  { file: 'polyline-micrometres', nmPerUnit: 1e3, loops: [{ ...PLAIN, x: -1 }] },
  { file: 'polyline-metres-exponents', nmPerUnit: 1e9, loops: [PLAIN] },
  { file: 'polyline-centimetres-crlf', nmPerUnit: 1e7, loops: [PLAIN] },
  { file: 'polyline-unitless', ...NO_UNIT, loops: [PLAIN] },
  { file: 'polyline-unknown-unit', ...NO_UNIT, loops: [PLAIN], notes: [/unit that is not known.*77/] },
  { file: 'polyline-old-line-ends', loops: [PLAIN] },
  { file: 'polyline-far-away', loops: [{ ...PLAIN, x: 1e6, y: -2e6 }] },
  { file: 'polyline-repeated-end', loops: [PLAIN] },
  { file: 'polyline-open-but-meets', loops: [PLAIN] },
  { file: 'slot-bulges', loops: [{ area: 2 * 6 + Math.PI, width: 2, height: 8, x: -1, y: 0, arcs: 2 }] },
  {
    file: 'bulge-over-one',
    loops: [{ area: arcSegment(2, 2), width: 2 * radius(2, 2), height: 2, arcs: 1 }],
  },
  { file: 'bulge-clockwise', loops: [{ area: Math.PI * 1.5 ** 2, width: 3, height: 3, arcs: 2 }] },
  {
    file: 'bulge-nearly-full',
    loops: [{ area: Math.PI * radius(0.004, 500) ** 2, width: 2 * radius(0.004, 500), arcs: 2 }],
  },
  { file: 'old-polyline', ...NO_UNIT, loops: [{ area: 2 * 8.4 + Math.PI / 2, width: 2, height: 9.4, arcs: 1 }] },
  { file: 'old-polyline-smoothed', loops: [rectangle(2, 4)] },
  { file: 'old-lines-only', ...NO_UNIT, loops: [PLAIN] },
  { file: 'lines-shuffled', loops: [PLAIN] },
  { file: 'lines-and-arcs-shuffled', loops: [rounded(2, 8.4, 0.5)] },
  {
    file: 'lines-and-arcs-inches',
    nmPerUnit: 25.4e6,
    loops: [rounded(0.08 * INCH, 0.32 * INCH, 0.02 * INCH)],
  },
  { file: 'tiny-arcs', loops: [rounded(2, 8.4, 0.005)] },
  { file: 'gap-half-micrometre', loops: [{ area: 2 * 8.4 - 0.00025, width: 2, height: 8.4 }] },
  {
    file: 'gap-six-micrometres',
    loops: [{ area: 2 * 8.4 - 0.003, width: 2, height: 8.4 }],
    notes: [/gap of 6\.0 um at \(2, 0\) mm was closed/],
  },
  { file: 'gap-fifty-micrometres', loops: [], open: 1, notes: [/is open, its ends are 0\.0500 mm apart/] },
  { file: 'duplicate-lines', loops: [PLAIN], notes: [/lies exactly on another line; left out \(4 times\)/] },
  {
    file: 'duplicate-loops',
    loops: [PLAIN, { area: Math.PI / 4, width: 1, height: 1, arcs: 4 }, { area: Math.PI / 16, width: 0.5, arcs: 2 }],
    notes: [/lies exactly on another line; left out \(3 times\)/],
  },
  { file: 'stray-line-at-a-corner', loops: [PLAIN], open: 1, notes: [/from \(2, 0\) mm to \(4, -1\) mm is open/] },
  {
    file: 'circles-inside-each-other',
    loops: [
      { area: 16 * Math.PI, width: 8, height: 8, x: -4, y: -4, arcs: 4 },
      { area: Math.PI, width: 2, height: 2, x: -1, y: -1, arcs: 4 },
    ],
  },
  { file: 'arc-through-zero', loops: [{ area: (Math.PI / 6) * 4, width: 2, height: 2, x: 0, y: -1, arcs: 1 }] },
  {
    file: 'ellipse-whole',
    loops: [{ area: 4 * Math.PI, width: 2, height: 8, x: 0, y: -2, flattened: true }],
  },
  {
    file: 'ellipse-half-closed-by-line',
    loops: [{ area: (Math.PI * 3 * 1.5) / 2, width: 6, height: 1.5, x: -3, y: 0, flattened: true }],
  },
  {
    file: 'ellipse-facing-down',
    loops: [{ area: (Math.PI * 3 * 1.5) / 4, width: 3, height: 1.5, x: 0, y: -1.5, flattened: true }],
  },
  { file: 'spline-arch', loops: [ARCH] },
  {
    file: 'spline-rational-circle',
    loops: [{ area: 9 * Math.PI, width: 6, height: 6, x: -3, y: -3, flattened: true }],
  },
  { file: 'spline-periodic', loops: [ROUND_SQUARE] },
  { file: 'spline-fit-points-only', loops: [PLAIN], notes: [/spline with fit points only/] },
  {
    file: 'spline-sound-and-broken',
    loops: [PLAIN],
    notes: [/it has 6 knots, must be 8/, /a weight is not above 0/],
  },
  { file: 'insert-mirrored', loops: [{ ...BOWED, width: 5, height: 3, x: 6, y: 18, label: 'WARD' }] },
  { file: 'insert-nested', loops: [{ area: BOWED_AREA, arcs: 1, label: 'INNER' }] },
  {
    file: 'insert-array',
    loops: [0, 1, 2].flatMap((row) =>
      [0, 1].map((column) => ({ ...BOWED, width: 5, height: 3, x: -6 * row - 5, y: 4 * column })),
    ),
  },
  {
    file: 'insert-stretched-circle',
    loops: [
      {
        area: Math.PI,
        width: 2 * Math.hypot(2 * Math.cos(Math.PI / 6), 0.5 * Math.sin(Math.PI / 6)),
        height: 2 * Math.hypot(2 * Math.sin(Math.PI / 6), 0.5 * Math.cos(Math.PI / 6)),
        flattened: true,
      },
    ],
  },
  {
    file: 'insert-stretched-bulges',
    loops: [{ area: (2 * 6 + Math.PI) / 2, width: 2, height: 4, x: -1, y: 0, flattened: true }],
  },
  { file: 'insert-of-itself', loops: [BOWED], notes: [/"LOOP" holds itself/] },
  { file: 'insert-in-a-circle', loops: [BOWED], notes: [/"A" holds itself/] },
  { file: 'insert-of-nothing', loops: [PLAIN], notes: [/"MISSING", which is not in the file/] },
  { file: 'insert-facing-down', loops: [{ ...BOWED, x: -13, y: 20 }] },
  { file: 'polyline-facing-down', loops: [{ ...BOWED, x: -3, y: 0 }] },
  {
    file: 'polyline-tilted',
    loops: [{ area: 16 * Math.PI, width: 8, height: 8, arcs: 4 }],
    notes: [/LWPOLYLINE lies in a tilted plane/],
  },
  { file: 'line-rising', loops: [{ area: 3, width: 2, height: 3 }], notes: [/LINE rises out of the plane.*2 times/] },
  {
    file: 'layers-frozen-and-off',
    loops: [
      { label: 'Shown', area: Math.PI, x: 23, y: -1 },
      { ...PLAIN, label: 'Shown' },
    ],
    notes: [/"FROZEN", which is frozen/, /"off", which is switched off/, /"Off", which is switched off/, /is hidden/],
  },
  { file: 'paper-space', loops: [PLAIN], notes: [/on a sheet \(paper space\)/] },
  { file: 'text-and-hatch', loops: [PLAIN], notes: [/^TEXT is not a line.*2 times/, /^HATCH/, /^DIMENSION/] },
  {
    file: 'names-that-mislead',
    loops: [
      { label: 'LAYER', area: 1, x: 5, y: 0 },
      { ...PLAIN, label: 'ENDBLK' },
    ],
  },
  { file: 'names-escaped', loops: [{ ...PLAIN, label: 'Blässhuhn' }] },
  {
    file: 'two-sections',
    loops: [
      { ...PLAIN, label: 'Dunlin keyway' },
      { ...rectangle(1.8, 8.2), label: 'Dunlin blank', x: 5, y: 0 },
    ],
    open: 1,
    notes: [/the line on "Centre line"/],
  },
  {
    file: 'block-names',
    loops: [
      { ...PLAIN, label: 'Sanderling' },
      { ...PLAIN, label: 'Right', x: 6 },
    ],
  },
  { file: 'unclosed-sections', loops: [PLAIN], notes: [/has no end \(EOF\)/] },
];

/** The text of a drawing of the corpus. */
export function dxfDrawing(file: string): string {
  return readFileSync(dxfDrawingFile(file), 'utf8');
}

/** Where a drawing of the corpus lies. */
export function dxfDrawingFile(file: string): string {
  return new URL(`./drawings/dxf/${file}.dxf`, import.meta.url).pathname;
}
