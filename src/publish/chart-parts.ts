import type { TextMeasure } from '../lettering/text-measure.ts';
import type { ChartColumn, ChartContent, ChartRow } from './chart-rows.ts';
import { type ChartHeights, type ChartSizes, chartHeights, chartWidths } from './chart-sizes.ts';
import { sizeOfRing } from './section-picture.ts';

/** What stands on one page of a chart. */
export interface ChartPart {
  /** Numbers of the first column and of the one after the last. */
  readonly from: number;
  readonly to: number;
  readonly columns: readonly ChartColumn[];
  /** Lines from the lowest up. */
  readonly rows: readonly ChartRow[];
  /** Whether lines over the same keyways stand on the page after, or on the page before. */
  readonly goesOnAbove: boolean;
  readonly goesOnBelow: boolean;
  readonly heights: ChartHeights;
}

/** A chart parted into pages, all at the same sizes. */
export interface ChartPlan {
  readonly sizes: ChartSizes;
  readonly parts: readonly ChartPart[];
}

/** What there is room for. */
export interface ChartRoom {
  readonly width: number;
  /** For lines and keyways together; what is told above them is taken off. */
  readonly height: (unit: number) => number;
  readonly zoom: number;
  readonly onePage: boolean;
}

/** Least room between two keyways, in units. */
const LEAST_PITCH = 8.6;

/** Room between two keyways that several pages are parted for, in units. */
const ROOMY_PITCH = 11;

/**
 * What is tried for one page before a chart is parted: units as shares of the paper's own, and the least height of the
 * tallest picture in units. Pictures give way before type becomes small.
 */
const TRIED: readonly (readonly [share: number, picture: number])[] = [
  ...[1.5, 1.35, 1.2, 1.1, 1, 0.95].map((share) => [share, 18] as const),
  ...[1.1, 1, 0.93].map((share) => [share, 13] as const),
  ...[1, 0.93, 0.86].map((share) => [share, 8] as const),
];

/**
 * Parts a chart into pages: on one page where it has room in type that can be read, or where one page is asked for; else
 * runs of keyways, and over each the lines that enter one of them.
 *
 * @check tests/unit/publish/chart.test.ts
 */
export function planChart(content: ChartContent, room: ChartRoom, measure: TextMeasure): ChartPlan {
  for (const [share, picture] of TRIED) {
    const plan = onOnePage(content, room, { unit: share * room.zoom, picture }, measure);
    if (plan) return plan;
  }
  if (room.onePage)
    for (let unit = 0.8 * room.zoom; unit > 1e-3; unit *= 0.94) {
      const plan = onOnePage(content, room, { unit, picture: 7 }, measure);
      if (plan) return plan;
    }
  return onSeveralPages(content, room, measure);
}

/** The unit, and the least height of the tallest picture in units. */
interface TriedSize {
  readonly unit: number;
  readonly picture: number;
}

function onOnePage(
  content: ChartContent,
  room: ChartRoom,
  { unit, picture }: TriedSize,
  measure: TextMeasure,
): ChartPlan | null {
  const widths = chartWidths(content, content.columns.length, { width: room.width, unit, goesOn: false }, measure);
  if (widths.pitch < LEAST_PITCH * unit) return null;
  const whole = { columns: content.columns, rows: content.rows };
  const height = room.height(unit);
  const scale = greatestScale(widths, content, [picture, MOST_PICTURE], (sizes) => {
    return chartHeights(whole.columns, whole.rows, sizes, measure).total <= height;
  });
  if (scale === null) return null;
  const sizes = { ...widths, scale };
  const heights = chartHeights(whole.columns, whole.rows, sizes, measure);
  const ends = { from: 0, to: content.columns.length, goesOnAbove: false, goesOnBelow: false };
  return { sizes, parts: [{ ...ends, ...whole, heights }] };
}

/** Most height of the tallest section, in units, on one page and on several, and most enlargement. */
const MOST_PICTURE = 40;
const SMALL_PICTURE = [7, 11] as const;
const MOST_SCALE = 5;

/** The greatest scale at which something holds; null where it does not hold for pictures that can still be seen. */
function greatestScale(
  widths: Omit<ChartSizes, 'scale'>,
  { columns, rows }: ChartContent,
  [leastPicture, mostPicture]: readonly [least: number, most: number],
  holds: (sizes: ChartSizes) => boolean,
): number | null {
  const { unit, pitch, face, gutter } = widths;
  const profiles = [
    ...columns.flatMap(({ opening, base }) => [opening, ...(base?.pictured ?? [])]),
    ...rows.flatMap(({ pictured }) => pictured),
  ];
  const tallest = Math.max(0.01, ...profiles.map(({ ring }) => sizeOfRing(ring).height));
  const widest = Math.max(0.01, ...profiles.map(({ ring }) => sizeOfRing(ring).width));
  const most = Math.min(
    MOST_SCALE,
    (mostPicture * unit) / tallest,
    (pitch * 0.9) / (2 * face.half),
    (gutter * 0.14) / widest,
  );
  const least = Math.min(most, (leastPicture * unit) / tallest);
  const fits = (scale: number) => holds({ ...widths, scale });
  if (fits(most)) return most;
  if (!fits(least)) return null;
  let [low, high] = [least, most];
  // What is drawn smaller takes no more room: halving finds the limit, to within a hundredth of it.
  while (high - low > 0.01 * high) {
    const middle = (low + high) / 2;
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}

/** Most of a page's height that keyways and what enters one alone may take where lines run over several pages. */
const FOOT_SHARE = 0.6;

function onSeveralPages(content: ChartContent, room: ChartRoom, measure: TextMeasure): ChartPlan {
  const unit = room.zoom;
  const widthsFor = (count: number) => chartWidths(content, count, { width: room.width, unit, goesOn: true }, measure);
  const { band, gutter, right } = widthsFor(1);
  const most = Math.max(1, Math.floor((room.width - band - gutter - right) / (ROOMY_PITCH * unit)));
  const pages = Math.ceil(content.columns.length / most);
  const inEach = Math.max(1, Math.ceil(content.columns.length / pages));
  const widths = widthsFor(inEach);
  const height = room.height(unit);
  const footFits = (sizes: ChartSizes) =>
    chartHeights(content.columns, [], sizes, measure).total <= FOOT_SHARE * height &&
    Math.max(0, ...chartHeights([], content.rows, sizes, measure).rows) <= (1 - FOOT_SHARE) * height;
  const scale = greatestScale(widths, content, SMALL_PICTURE, footFits) ?? leastScale(widths, content);
  const sizes = { ...widths, scale };
  const parts: ChartPart[] = [];
  for (let from = 0; from < content.columns.length; from += inEach)
    parts.push(...partsOver(content, [from, Math.min(content.columns.length, from + inEach)], sizes, height, measure));
  return { sizes, parts };
}

/** The scale at which pictures can just be seen. */
function leastScale({ unit }: Pick<ChartSizes, 'unit'>, { columns }: ChartContent): number {
  return (SMALL_PICTURE[0] * unit) / Math.max(0.01, ...columns.map(({ opening }) => sizeOfRing(opening.ring).height));
}

/** The pages over a run of keyways, the lowest lines first: every line that enters one of them. */
function partsOver(
  content: ChartContent,
  [from, to]: readonly [number, number],
  sizes: ChartSizes,
  height: number,
  measure: TextMeasure,
): ChartPart[] {
  const columns = content.columns.slice(from, to);
  const bare = columns.map((column) => ({ ...column, base: null }));
  const rows = content.rows.filter(({ marks }) => marks.slice(from, to).some((mark) => mark !== null));
  const tall = chartHeights([], rows, sizes, measure).rows;
  const rooms = [columns, bare].map((of) => height - chartHeights(of, [], sizes, measure).total);
  const runs = evenRuns(tall, rooms[0], rooms[1]);
  return runs.map(([first, end], i) => {
    const shown = i === 0 ? columns : bare;
    const those = rows.slice(first, end);
    const heights = chartHeights(shown, those, sizes, measure);
    return { from, to, columns: shown, rows: those, goesOnAbove: i < runs.length - 1, goesOnBelow: i > 0, heights };
  });
}

/** Heights in runs that fit, the first room for the first run; as few as can be, and none much fuller than the others. */
function evenRuns(tall: readonly number[], first: number, later: number): [number, number][] {
  const fill = (share: number): [number, number][] => {
    const runs: [number, number][] = [[0, 0]];
    let used = 0;
    for (const [i, height] of tall.entries()) {
      const room = (runs.length === 1 ? first : later) * share;
      if (used + height > room + 1e-6 && (used > 0 || runs.length === 1)) {
        runs.push([i, i]);
        used = 0;
      }
      used += height;
      runs[runs.length - 1][1] = i + 1;
    }
    return runs;
  };
  const least = fill(1).length;
  const share = [0.5, 0.6, 0.7, 0.8, 0.9].find((tried) => fill(tried).length === least);
  return fill(share ?? 1);
}
