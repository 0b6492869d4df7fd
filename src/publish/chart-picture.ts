import type { Verdict } from '../fit/fit.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, placeBlock, stackBlocks } from './block.ts';
import type { ChartPart } from './chart-parts.ts';
import type { ChartColumn, ChartRow } from './chart-rows.ts';
import {
  baseName,
  type ChartSizes,
  columnName,
  MARK,
  PICTURE_GAP,
  picturedIn,
  picturesSize,
  rowWords,
} from './chart-sizes.ts';
import type { Mark, Spot } from './page.ts';
import { layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { sectionPicture } from './section-picture.ts';
import { circle, drawn, filled, polyline, rectangle } from './strokes.ts';
import { verdictMark } from './verdict-sign.ts';

/** What a part is drawn from beside itself. */
export interface ChartDrawing {
  readonly part: ChartPart;
  readonly sizes: ChartSizes;
  /** Where a line goes on to: "pages 2 and 3"; '' where all of it is here. */
  readonly goesOn: (row: ChartRow) => string;
  readonly measure: TextMeasure;
  /** Height that it may take; lines are spread over it. */
  readonly height: number;
}

/** A line at its height. */
interface PlacedRow {
  readonly row: ChartRow;
  readonly top: number;
  readonly height: number;
}

/**
 * One page of a chart: plugs at the foot, over each what enters it alone, then a line for each blank that enters several,
 * with a mark on the post of each keyway that it enters.
 */
export function chartPicture(drawing: ChartDrawing): Block {
  const { part, sizes, height } = drawing;
  const { columns, heights } = part;
  const spare = Math.max(0, height - heights.total);
  const each = Math.min(5 * sizes.unit, spare / Math.max(1, heights.rows.length + 2));
  const rows = placedRows(part, each);
  const rowsEnd = rows.length > 0 ? rows[0].top + rows[0].height : 0;
  const baseTop = rowsEnd + each;
  const betweenTop = baseTop + heights.base;
  const plugTop = betweenTop + heights.between;
  const x = columnPlaces(sizes, columns.length);
  const tops = columns.map(({ isInBetween }) => (isInBetween ? betweenTop : plugTop));
  const base = { baseTop, part, sizes, measure: drawing.measure, names: baseNamesHeight(drawing) };
  const marks = [
    ...tierBands(rows, sizes, drawing.measure, baseTop, heights.base),
    ...baseWords(drawing, baseTop),
    ...rows.flatMap((placed) => rail(placed, drawing, x)),
    ...posts(drawing, rows, x, { tops, baseTop }),
    ...rows.flatMap((placed) => [...railMarks(placed, drawing, x), ...rowHead(placed, drawing)]),
    ...columns.flatMap((column, i) => baseMarks(column, x[i], base)),
    ...columns.flatMap((column, i) => keywayMarks(column, x[i], tops[i], drawing)),
  ];
  const end = plugTop + heights.keyways;
  return { width: (x.at(-1) ?? 0) + sizes.pitch / 2 + sizes.right, height: end, marks };
}

/** Where each column's post stands. */
function columnPlaces({ band, gutter, pitch }: ChartSizes, count: number): number[] {
  return Array.from({ length: count }, (_, i) => band + gutter + (i + 0.5) * pitch);
}

/** The lines, the last of the part at the top. */
function placedRows({ rows, heights }: ChartPart, each: number): PlacedRow[] {
  const placed: PlacedRow[] = [];
  let top = 0;
  for (let i = rows.length - 1; i >= 0; i--) {
    const height = heights.rows[i] + each;
    placed.unshift({ row: rows[i], top, height });
    top += height;
  }
  return placed;
}

const middle = ({ top, height }: PlacedRow) => top + height / 2;

/** A strip at the left with the name of each tier, and a rule between tiers. */
function tierBands(
  rows: readonly PlacedRow[],
  { unit, band, gutter }: ChartSizes,
  measure: TextMeasure,
  baseTop: number,
  baseHeight: number,
): Mark[] {
  const spans = new Map<string, [top: number, end: number]>();
  const span = (name: string, top: number, end: number) => {
    const [from, to] = spans.get(name) ?? [top, end];
    spans.set(name, [Math.min(from, top), Math.max(to, end)]);
  };
  for (const { row, top, height } of rows) span(bandName(row), top, top + height);
  if (baseHeight > 0) span('Base', baseTop, baseTop + baseHeight);
  return [...spans].flatMap(([name, [top, end]]): Mark[] => {
    const size = 2.4 * unit;
    const long = measure.width(name, size, true);
    const strip = filled([rectangle(0, top + 0.3 * unit, band - 1.2 * unit, end - top - 0.6 * unit)], 'faint');
    const rule = drawn([polyline([0, top], [band + gutter - unit, top])], 'faint', 0.2 * unit);
    if (long > end - top - unit) return [strip, rule];
    const spot: Spot = [(band - 1.2 * unit) / 2 + size * 0.33, (top + end) / 2];
    return [strip, rule, { kind: 'text', spot, text: name, size, bold: true, align: 'middle', turned: -90 }];
  });
}

function bandName(row: ChartRow): string {
  if (row.marks.filter((mark) => mark !== null).length === 1) return 'Base';
  return row.rank === 'all' ? 'All' : `Tier ${row.tier + 1}`;
}

/** What the base row is, in words at its left. */
function baseWords({ part, sizes, measure }: ChartDrawing, top: number): Mark[] {
  const { unit, band, gutter } = sizes;
  if (part.heights.base === 0) return [];
  const width = gutter - 3 * unit;
  const words = stackBlocks([
    layOutParagraph('Base blanks', { width, size: 2.8 * unit, bold: true }, measure),
    layOutParagraph('each enters the keyway below it, and no other', { width, size: 2.4 * unit, ink: 'soft' }, measure),
  ]);
  return placeBlock(words, band, top + (part.heights.base - words.height) / 2);
}

/** Numbers of the first and last column of this part that a line has a mark in. */
function reach(marks: readonly (Verdict | null)[]): readonly [first: number, last: number] {
  return [marks.findIndex((mark) => mark !== null), marks.findLastIndex((mark) => mark !== null)];
}

function marksHere(row: ChartRow, { from, to }: ChartPart): readonly (Verdict | null)[] {
  return row.marks.slice(from, to);
}

/**
 * First and last number of each run of neighbouring keyways that a line enters.
 *
 * @check tests/unit/publish/chart.test.ts
 */
export function enteredRuns(marks: readonly (Verdict | null)[]): readonly (readonly [from: number, to: number])[] {
  const runs: [from: number, to: number][] = [];
  for (const [i, mark] of marks.entries()) {
    if (mark === null) continue;
    const run = runs.at(-1);
    if (run?.[1] === i - 1) run[1] = i;
    else runs.push([i, i]);
  }
  return runs;
}

/** The line of a blank: thick between neighbouring keyways that it enters, else dotted; an arrow where it goes on. */
function rail(placed: PlacedRow, { part, sizes, goesOn }: ChartDrawing, x: readonly number[]): Mark[] {
  const { unit, band, gutter, pitch } = sizes;
  const { row } = placed;
  const y = middle(placed);
  const here = marksHere(row, part);
  const [first, last] = reach(here);
  const start = band + gutter;
  const runs = enteredRuns(here);
  const between = runs.slice(1).map(([from], i) => polyline([x[runs[i][1]], y], [x[from], y]));
  const thick = runs.filter(([from, to]) => from < to).map(([from, to]) => polyline([x[from], y], [x[to], y]));
  const marks: Mark[] = [
    drawn([polyline([start - 0.5 * unit, y], [x[first], y])], 'rule', 0.25 * unit, [0.6 * unit, 0.9 * unit]),
  ];
  if (between.length > 0) marks.push(drawn(between, 'rule', 0.25 * unit, [0.6 * unit, 0.9 * unit]));
  if (thick.length > 0) marks.push(drawn(thick, 'soft', 0.8 * unit));
  const told = goesOn(row);
  if (told === '') return marks;
  const edge = x[x.length - 1] + pitch / 2 + 0.5 * unit;
  const size = 2 * unit;
  const arrow: Spot[] = [
    [edge, y - 1.1 * unit],
    [edge + 1.9 * unit, y],
    [edge, y + 1.1 * unit],
  ];
  marks.push(
    drawn([polyline([x[last], y], [edge, y])], 'rule', 0.25 * unit, [0.6 * unit, 0.9 * unit]),
    filled([{ spots: arrow, closed: true }], 'soft'),
  );
  const lines = told.split('\n');
  for (const [i, text] of lines.entries()) {
    const spot: Spot = [edge + 2.6 * unit, y + size * (0.35 + (i - (lines.length - 1) / 2) * 1.2)];
    marks.push({ kind: 'text', spot, text, size, ink: 'soft' });
  }
  return marks;
}

/** Upright lines from the plugs to the highest mark over them; they pass over the lines that do not enter. */
function posts(
  { part, sizes }: ChartDrawing,
  rows: readonly PlacedRow[],
  x: readonly number[],
  { tops, baseTop }: { readonly tops: readonly number[]; readonly baseTop: number },
): Mark[] {
  const { unit } = sizes;
  const marks: Mark[] = [];
  for (const [i, column] of part.columns.entries()) {
    const entered = rows.filter(({ row }) => marksHere(row, part)[i] !== null);
    const highest = Math.min(baseTop + part.heights.base, ...entered.map(middle));
    const top = part.goesOnAbove ? 0 : topOfPost(column, entered.length > 0, { highest, baseTop, plug: tops[i] });
    const passed = rows.filter(({ row }) => {
      const here = marksHere(row, part);
      const [first, last] = reach(here);
      return here[i] === null && first < i && i < last;
    });
    for (const placed of passed.filter((one) => middle(one) > top))
      marks.push(drawn([polyline([x[i], middle(placed) - unit], [x[i], middle(placed) + unit])], 'paper', 2 * unit));
    if (top < tops[i]) marks.push(drawn([polyline([x[i], top], [x[i], tops[i]])], 'rule', 0.3 * unit));
  }
  return marks;
}

/** Where a post ends: at the highest mark over it, else at what enters its keyway alone, else at the plug. */
function topOfPost(
  { base }: ChartColumn,
  isEntered: boolean,
  { highest, baseTop, plug }: { readonly highest: number; readonly baseTop: number; readonly plug: number },
): number {
  if (isEntered) return highest;
  return base ? baseTop : plug;
}

/** The marks on a line. */
function railMarks(placed: PlacedRow, { part, sizes }: ChartDrawing, x: readonly number[]): Mark[] {
  const y = middle(placed);
  return marksHere(placed.row, part).flatMap((verdict, i) => (verdict ? markAt(verdict, x[i], y, sizes.unit) : []));
}

function markAt(verdict: Verdict, x: number, y: number, unit: number): Mark[] {
  const size = MARK * unit;
  return [
    filled([circle(x, y, size / 2)], 'paper'),
    ...placeBlock(verdictMark(verdict, size), x - size / 2, y - size / 2),
  ];
}

/** Pictures, name and words of a line. */
function rowHead(placed: PlacedRow, { sizes, measure }: ChartDrawing): Mark[] {
  const { row } = placed;
  const { unit, band, scale } = sizes;
  const marks: Mark[] = [];
  let left = band;
  for (const profile of picturedIn(row)) {
    const picture = sectionPicture(profile, { scale, line: 0.15 * unit });
    marks.push(...placeBlock(picture, left, middle(placed) - picture.height / 2));
    left += picture.width + PICTURE_GAP * unit;
  }
  const words = rowWords(row, sizes, measure);
  marks.push(
    ...placeBlock(words, band + picturesSize(row, sizes).width + 1.8 * unit, middle(placed) - words.height / 2),
  );
  return marks;
}

/** How high the names over the keyways are at most; 0 where they stand upright beside their pictures. */
function baseNamesHeight({ part, sizes, measure }: ChartDrawing): number {
  if (sizes.upright) return 0;
  return Math.max(0, ...part.columns.map((column) => baseName(column, sizes, measure)?.height ?? 0));
}

/** Where the base row stands. */
interface BasePlace extends Pick<ChartDrawing, 'part' | 'sizes' | 'measure'> {
  readonly baseTop: number;
  /** Room for the names under the pictures: these stand in one line however many lines their names have. */
  readonly names: number;
}

/** What enters one keyway alone: its picture over the keyway, its name, and the mark on the post below. */
function baseMarks(column: ChartColumn, x: number, { baseTop, part, sizes, measure, names }: BasePlace): Mark[] {
  const { base } = column;
  const name = baseName(column, sizes, measure);
  if (!base || !name) return [];
  const { unit, scale, upright } = sizes;
  const verdict = base.marks.find((mark) => mark !== null);
  const markY = baseTop + part.heights.base - (MARK / 2 + 1) * unit;
  const end = markY - (MARK / 2 + 1) * unit;
  const picture = sectionPicture(base.pictured[0], { scale, line: 0.15 * unit });
  const bottom = end - names;
  const marks: Mark[] = [];
  if (!upright) {
    // The post stays behind the name.
    marks.push(filled([rectangle(x - name.width / 2, bottom, name.width, name.height)], 'paper'));
    marks.push(...placeBlock(name, x - name.width / 2, bottom));
  } else {
    marks.push(...placeBlock(name, x + Math.max(picture.width / 2, 0.3 * unit) + 0.4 * unit, end - name.height));
  }
  marks.push(...placeBlock(picture, x - picture.width / 2, bottom - picture.height));
  return verdict ? [...marks, ...markAt(verdict, x, markY, unit)] : marks;
}

/** The plug of a keyway with its name under it. */
function keywayMarks(column: ChartColumn, x: number, top: number, { sizes, measure }: ChartDrawing): Mark[] {
  const { unit, scale, face } = sizes;
  const plug = plugPicture(column.opening, null, { face, scale, line: 0.15 * unit });
  const name = columnName(column, sizes, measure);
  const under = top + plug.height + 0.8 * unit;
  return [...placeBlock(plug, x - plug.width / 2, top), ...placeBlock(name, x - name.width / 2, under)];
}
