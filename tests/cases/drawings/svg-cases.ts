import { readFileSync } from 'node:fs';

/** What a path of a case should come out as; lengths in millimetres, y up, worked out by hand or by a closed form. */
export interface ExpectedPath {
  readonly label?: string;
  /** Enclosed area, mm2; absent for an open path. */
  readonly area?: number;
  /** Left, bottom, width and height of its box; left and bottom absent where only the size is worked out. */
  readonly box: readonly [left: number | null, bottom: number | null, width: number, height: number];
  readonly vertices?: number;
  /** How many of its edges are arcs. */
  readonly arcs?: number;
  /** Set where the outline is drawn with chords, so that area and box fall short by their height. */
  readonly chords?: true;
}

/** A drawing of the corpus and what should be read from it. */
export interface SvgCase {
  /** Name of the file without its ending. */
  readonly file: string;
  readonly paths: readonly ExpectedPath[];
  /** Nanometres in a user unit; default: a millimetre. */
  readonly nmPerUnit?: number;
  /** Default: true. */
  readonly unitsStated?: boolean;
  /** What the notes say, in order; default: nothing. */
  readonly notes?: readonly RegExp[];
}

const { PI, SQRT2, cos, sin, asin, sqrt, hypot } = Math;
const PIXEL = 25.4e6 / 96;
const GUESS = /does not say its true size/;

const SLOT: ExpectedPath = { label: 'slot', area: 16, box: [0, -8, 2, 8], vertices: 4 };
const INCH: ExpectedPath = { label: 'inch', area: 25.4 ** 2, box: [0, -25.4, 25.4, 25.4] };
const unmarked = { nmPerUnit: PIXEL, unitsStated: false, notes: [GUESS] };

/** Half the angle, seen from a unit circle, of the tenth of a millimetre that `turned-ellipse` leaves open. */
const OPENING = asin(hypot((0.1 * cos(PI / 6)) / 6, (0.1 * sin(PI / 6)) / 3) / 2);

export const SVG_CASES: readonly SvgCase[] = [
  { file: 'plain-mm', paths: [SLOT] },
  {
    file: 'inches',
    nmPerUnit: 25.4e6,
    paths: [{ label: 'slot', area: 2.54 * 7.62, box: [2.54, -10.16, 2.54, 7.62] }],
  },
  {
    file: 'points-and-picas',
    nmPerUnit: 25.4e6 / 72,
    paths: [{ label: '', area: 12.7 * 25.4, box: [0, -25.4, 12.7, 25.4] }],
  },
  // The half disk bows to the right; mirrored, to the left.
  { file: 'mirrored', paths: [{ label: 'half', area: 2 * PI, box: [8, -14, 2, 4], vertices: 2, arcs: 1 }] },
  { file: 'nested-transforms', paths: [{ label: 'bar', area: 16, box: [2, -12, 8, 2] }] },
  {
    file: 'turned-about-a-centre',
    paths: [{ label: 'diamond', area: 4, box: [5 - SQRT2, -5 - SQRT2, 2 * SQRT2, 2 * SQRT2] }],
  },
  {
    file: 'skewed',
    paths: [
      { label: 'leaning', area: 4, box: [0, -2, 4, 2] },
      // A shear keeps the area of the unit circle; its widest point is where x + y is greatest.
      { label: 'sheared', area: PI, box: [-SQRT2, -1, 2 * SQRT2, 2], chords: true },
      { label: 'rising', area: 4, box: [0, -4, 2, 4] },
    ],
  },
  { file: 'matrix', paths: [{ label: 'quarter', area: 9 * PI, box: [3, -7, 6, 6], arcs: 1 }] },
  { file: 'transforms-in-a-row', paths: [{ label: 'row', area: 9, box: [3.5, -6.5, 3, 3] }] },
  { file: 'viewbox-huge', nmPerUnit: 10, paths: [{ label: 'slot', area: 16, box: [1, -9, 2, 8] }] },
  { file: 'viewbox-offset', paths: [{ label: 'far', area: 16, box: [10, -18, 2, 8] }] },
  {
    file: 'no-size',
    ...unmarked,
    paths: [{ label: 'pixels', area: 25.4 * 50.8, box: [0, -50.8, 25.4, 50.8] }],
  },
  { file: 'viewbox-without-size', ...unmarked, paths: [INCH] },
  {
    file: 'size-in-pixels',
    ...unmarked,
    nmPerUnit: 2 * PIXEL,
    paths: [{ label: 'two-inches', area: 50.8 ** 2, box: [0, -50.8, 50.8, 50.8] }],
  },
  { file: 'size-in-percent', ...unmarked, paths: [INCH] },
  { file: 'width-only', nmPerUnit: 2e6, paths: [{ label: 'double', area: 16, box: [0, -8, 2, 8] }] },
  { file: 'size-in-style', nmPerUnit: 3e6, paths: [{ label: 'triple', area: 18, box: [0, -6, 3, 6] }] },
  {
    file: 'physical-attributes',
    ...unmarked,
    paths: [
      { label: 'box', area: 254, box: [10, -38.1, 10, 25.4] },
      { label: 'disc', area: PI * 12.7 ** 2, box: [37.3, -62.7, 25.4, 25.4], arcs: 2 },
      { label: 'rule', box: [0, -25.4, 10, 25.4], vertices: 2 },
    ],
  },
  {
    file: 'percentages',
    paths: [
      { label: 'half', area: 5000, box: [20, -60, 100, 50] },
      // A tenth of the diagonal over the square root of two: 15.811 mm.
      {
        label: 'tenth',
        area: 250 * PI,
        box: [100 - sqrt(250), -50 - sqrt(250), 2 * sqrt(250), 2 * sqrt(250)],
        arcs: 2,
      },
    ],
  },
  {
    file: 'aspect-none',
    nmPerUnit: sqrt(8) * 1e6,
    paths: [
      { label: 'stretched', area: 200 * PI, box: [0, -40, 20, 40], chords: true },
      { label: 'bent-back', area: 4 * PI, box: [6, -6, 4, 4], arcs: 2 },
    ],
  },
  { file: 'aspect-slice', nmPerUnit: 4e6, paths: [{ label: 'sliced', area: 1600, box: [-20, -40, 40, 40] }] },
  {
    file: 'aspect-nested',
    paths: [
      { label: 'low', area: 400, box: [5, -45, 20, 20] },
      { label: 'middle', area: 400, box: [60, -25, 20, 20] },
    ],
  },
  {
    file: 'nested-viewport',
    paths: [
      { label: 'inner', area: 16, box: [82, -12, 8, 2] },
      { label: 'plain', area: 200, box: [1, -22, 10, 20] },
    ],
  },
  { file: 'use-symbol', paths: [{ label: 'placed', area: 144, box: [13, -47, 6, 24] }] },
  {
    file: 'use-chain',
    paths: [
      { label: 'first', area: 16, box: [22, -17, 8, 2] },
      { label: 'a', area: 64, box: [0, -116, 4, 16] },
    ],
  },
  { file: 'duplicates', paths: ['one', 'two', 'three'].map((label) => ({ ...SLOT, label })) },
  {
    file: 'open-with-gaps',
    paths: [
      { label: 'left', box: [0, -8, 0, 8], vertices: 2 },
      { label: 'foot', box: [0.01, -8, 1.99, 0], vertices: 2 },
      { label: 'right', box: [0.01, -7.99, 1.99, 7.99], vertices: 3 },
      // Ends half a micrometre from where it began, so it is closed.
      { label: 'nearly', area: 16, box: [4, -8, 2, 8], vertices: 4 },
      // Ends 1.5 um from there, so it is open.
      { label: 'open', box: [7, -8, 2, 8], vertices: 5 },
    ],
  },
  {
    file: 'hidden',
    paths: [
      { label: 'shown', area: 6, box: [0, -3, 2, 3] },
      { label: 'seen', area: 20, box: [10, -5, 4, 5] },
    ],
  },
  { file: 'cdata-and-comments', paths: [{ ...SLOT, label: 'Reed & <rush>' }] },
  { file: 'byte-order-mark', paths: [SLOT] },
  { file: 'prefixed', paths: [SLOT] },
  { file: 'no-namespace', paths: [SLOT] },
  { file: 'editor-metadata', paths: [{ ...SLOT, label: 'layer' }] },
  {
    file: 'relative-soup',
    paths: [
      { label: 'soup', area: 8, box: [1, -5, 2, 4], vertices: 4 },
      { label: 'soup', area: 12, box: [11, -5, 3, 4], vertices: 6 },
      { label: 'soup', area: 0.5, box: [11, -1, 1, 1], vertices: 3 },
      { label: 'soup', area: 0.5, box: [21, -22, 1, 1], vertices: 3 },
    ],
  },
  {
    file: 'arc-flags-together',
    paths: [
      { label: 'disc', area: 4 * PI, box: [5, -9, 4, 4], vertices: 2, arcs: 2 },
      { label: 'ring', area: 4 * PI, box: [12, -9, 4, 4], vertices: 2, arcs: 2 },
    ],
  },
  {
    file: 'number-shapes',
    paths: [
      { label: 'numbers', area: ((9.5 + 10) / 2) * 9.5, box: [0.5, -10, 10, 9.5] },
      { label: 'list', area: 25, box: [-5, -10, 19, 9] },
    ],
  },
  {
    file: 'several-subpaths',
    paths: [
      { label: 'many', area: 100, box: [0, -10, 10, 10] },
      { label: 'many', area: 36, box: [2, -8, 6, 6] },
      { label: 'many', area: 2, box: [20, -2, 2, 2], vertices: 3 },
      { label: 'many', area: 2, box: [19, -4, 1, 4], vertices: 3 },
    ],
  },
  {
    file: 'round-rectangles',
    paths: [
      { label: 'corners', area: 200 - (4 - PI) * 4, box: [0, -20, 10, 20], vertices: 8, arcs: 4 },
      { label: 'stadium', area: 40 - (4 - PI) * 4, box: [20, -10, 4, 10], vertices: 6, arcs: 4 },
      { label: 'oval-corners', area: 100 - (4 - PI) * 6, box: [30, -10, 10, 10], chords: true },
      { label: 'only-ry', area: 100 - (4 - PI), box: [45, -10, 10, 10], vertices: 8, arcs: 4 },
    ],
  },
  {
    file: 'circles-and-ellipses',
    paths: [
      { label: 'circle', area: 16 * PI, box: [6, -14, 8, 8], arcs: 2 },
      {
        label: 'round',
        area: 9 * PI,
        box: [30 * cos(PI / 6) - 5 - 3, -(15 + 10 * cos(PI / 6)) - 3, 6, 6],
        arcs: 2,
      },
      { label: 'made-round', area: 4 * PI, box: [8, -32, 4, 4], arcs: 2 },
      { label: 'oval', area: 16 * PI, box: [32, -42, 16, 4], chords: true },
      { label: 'auto', area: 9 * PI, box: [7, -53, 6, 6], arcs: 2 },
    ],
  },
  {
    file: 'cubic',
    paths: [
      // x = 12 t^2 - 8 t^3, y = 12 t (1 - t): the integral of y dx is 288/30.
      { label: 'arch', area: 9.6, box: [0, -3, 4, 3], chords: true },
      { label: 'wave', box: [10, -11.5, 4, 3], chords: true },
    ],
  },
  {
    file: 'quadratic',
    paths: [
      // Archimedes: two thirds of the box.
      { label: 'parabola', area: 16 / 3, box: [0, -2, 4, 2], chords: true },
      { label: 'waves', box: [10, -12, 6, 4], chords: true },
      { label: 'lone', area: 8 + 16 / 3, box: [10, -6, 6, 4], chords: true },
    ],
  },
  {
    file: 'large-arc',
    paths: [
      { label: 'three-quarters', area: 3 * PI, box: [8, -12, 4, 4], vertices: 3, arcs: 1 },
      // All but 10 um of a circle of radius 3: its centre lies the root of 9 - 0.005^2 to the left of the opening.
      {
        label: 'nearly-all',
        area: 9 * PI,
        box: [13 - sqrt(9 - 0.005 ** 2), -12.995, 3 + sqrt(9 - 0.005 ** 2), 6],
        vertices: 3,
        arcs: 2,
      },
    ],
  },
  {
    file: 'radii-too-small',
    paths: [
      { label: 'grown', area: 2 * PI, box: [0, -4, 4, 2], vertices: 2, arcs: 1 },
      { label: 'negative', area: 2 * PI, box: [10, -4, 4, 2], vertices: 2, arcs: 1 },
      { label: 'no-radius', area: 4, box: [0, -12, 4, 2], vertices: 3, arcs: 0 },
      { label: 'going-nowhere', area: 4, box: [10, -12, 4, 2], vertices: 3, arcs: 0 },
    ],
  },
  {
    file: 'turned-ellipse',
    paths: [
      // The opening is level, so it takes from the height only.
      {
        label: 'turned',
        area: 18 * PI,
        box: [null, null, 2 * hypot(6 * cos(PI / 6), 3 / 2), hypot(3, 3 * cos(PI / 6)) * (1 + cos(OPENING))],
        chords: true,
      },
      { label: 'half-oval', area: 2 * PI, box: [2, -14, 8, 1], chords: true },
    ],
  },
  {
    file: 'lines-and-polygons',
    paths: [
      { label: 'line', box: [1, -6, 3, 4], vertices: 2 },
      { label: 'open', box: [0, -2, 2, 2], vertices: 3 },
      { label: 'meeting', area: 2, box: [5, -2, 2, 2], vertices: 3 },
      { label: 'triangle', area: 6, box: [10, -3, 4, 3], vertices: 3 },
    ],
  },
  { file: 'switch', paths: [{ ...SLOT, label: 'english' }] },
  {
    file: 'titles-and-ids',
    paths: ['Sheet', 'reed', 'Reed blank', 'Rush blank', 'Sedge', 'Sedge'].map((label, i) => ({
      label,
      area: 0.5,
      box: [5 * i, -1, 1, 1] as const,
    })),
  },
  { file: 'root-transform', paths: [{ label: 'doubled', area: 24, box: [null, null, 4, 6] }] },
  {
    file: 'text-and-pictures',
    paths: [SLOT],
    notes: [/^1 style sheet is/, /^2 texts are/, /^1 picture is/, /^1 foreign object is/],
  },
  {
    file: 'pointless',
    paths: [SLOT],
    notes: [/fewer than two different points.*4 shapes/, /no width or no height/, /no radius/],
  },
  {
    file: 'clipped',
    paths: [SLOT, { label: 'masked', area: 16, box: [10, -8, 2, 8] }],
    notes: [/in part only \(clip-path\)/, /in part only \(mask\)/],
  },
  {
    file: 'moved-by-style',
    paths: [{ ...SLOT, label: 'plain' }],
    notes: [/by transform, and left out/, /by transform-origin, and left out/],
  },
];

/** The text of a drawing of the corpus. */
export function svgText(file: string): string {
  return readFileSync(new URL(`./svg/${file}.svg`, import.meta.url), 'utf8');
}
