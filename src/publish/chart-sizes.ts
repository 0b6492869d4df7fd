import { type PlugFace, plugFace } from '../family/plug-face.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, stackBlocks } from './block.ts';
import type { ChartColumn, ChartContent, ChartRow } from './chart-rows.ts';
import { layOutParagraph } from './paragraph.ts';
import { sizeOfRing } from './section-picture.ts';
import { shortenText } from './wrap-text.ts';

/** How large everything on a chart is; millimetres of paper, where not said otherwise. */
export interface ChartSizes {
  /** What all type, marks and gaps are measured in: 1 mm on A4, more on a poster, less where it must be. */
  readonly unit: number;
  /** How many times their true size sections are drawn. */
  readonly scale: number;
  readonly face: PlugFace;
  /** From one keyway to the next. */
  readonly pitch: number;
  /** Names and pictures of the lines, at the left. */
  readonly gutter: number;
  /** Names of tiers, left of that. */
  readonly band: number;
  /** Where lines go on to, at the right. */
  readonly right: number;
  /** Names of keyways stand upright where they have no room across. */
  readonly upright: boolean;
}

/** Sizes in units. */
export const MARK = 4.2;
const ROW_PAD = 1.4;
export const PICTURE_GAP = 1.6;
const NAME = 2.8;
const ROW_WORDS = 2.4;
const COLUMN_NAME = 2.7;
const BASE_NAME = 2.2;
/** Most height of an upright name, and most lines of one across. */
const UPRIGHT = 34;
const MOST_LINES = 4;

/** Most pictures beside one line. */
const MOST_PICTURES = 3;

/** The pictures that stand beside a line: of as many outlines as there is room for. */
export function picturedIn({ pictured }: ChartRow): readonly Profile[] {
  return pictured.slice(0, MOST_PICTURES);
}

/** Width and height of the pictures beside a line. */
export function picturesSize(row: ChartRow, { scale, unit }: Pick<ChartSizes, 'scale' | 'unit'>) {
  const sizes = picturedIn(row).map(({ ring }) => sizeOfRing(ring));
  return {
    width:
      sizes.reduce((sum, { width }) => sum + width * scale, 0) + PICTURE_GAP * unit * Math.max(0, sizes.length - 1),
    height: Math.max(0, ...sizes.map(({ height }) => height * scale)),
  };
}

/** Name and words of a line, in the room that its pictures leave. */
export function rowWords(row: ChartRow, sizes: ChartSizes, measure: TextMeasure): Block {
  const { unit, gutter } = sizes;
  const width = Math.max(12 * unit, gutter - picturesSize(row, sizes).width - 3 * unit);
  return stackBlocks([
    layOutParagraph(row.name, { width, size: NAME * unit, bold: true, most: 3 }, measure),
    layOutParagraph(row.words, { width, size: ROW_WORDS * unit, ink: 'soft', most: 5 }, measure),
  ]);
}

/** The name of a keyway under its plug. */
export function columnName({ name }: ChartColumn, sizes: ChartSizes, measure: TextMeasure): Block {
  return columnText(name, { size: COLUMN_NAME * sizes.unit, bold: true }, sizes, measure);
}

/** The name of what enters a keyway alone, at its picture. */
export function baseName({ base }: ChartColumn, sizes: ChartSizes, measure: TextMeasure): Block | null {
  return base ? columnText(base.name, { size: BASE_NAME * sizes.unit, bold: false }, sizes, measure) : null;
}

function columnText(
  text: string,
  { size, bold }: { readonly size: number; readonly bold: boolean },
  { pitch, unit, upright }: ChartSizes,
  measure: TextMeasure,
): Block {
  if (!upright)
    return layOutParagraph(text, { width: pitch - unit, size, bold, align: 'middle', most: MOST_LINES }, measure);
  const shown = shortenText(text, { width: UPRIGHT * unit, size, bold }, measure);
  const width = size * 1.2;
  const height = measure.width(shown, size, bold);
  const spot = [size * 0.95, height] as const;
  return { width, height, marks: [{ kind: 'text', spot, text: shown, size, turned: -90, ...(bold && { bold }) }] };
}

/** Heights of the parts of a chart from the foot up. */
export interface ChartHeights {
  /** Plugs with their names. */
  readonly keyways: number;
  /** How much higher the plugs of sections in between stand. */
  readonly between: number;
  /** What enters one keyway alone, with the room for its marks below. */
  readonly base: number;
  /** The lines, from the lowest. */
  readonly rows: readonly number[];
  readonly total: number;
}

/** What some columns and lines take at given sizes. */
export function chartHeights(
  columns: readonly ChartColumn[],
  rows: readonly ChartRow[],
  sizes: ChartSizes,
  measure: TextMeasure,
): ChartHeights {
  const { unit, scale, face, upright } = sizes;
  const names = (of: readonly ChartColumn[]) =>
    Math.max(0, ...of.map((column) => columnName(column, sizes, measure).height));
  const plug = 2 * face.radius * scale;
  const plugs = (of: readonly ChartColumn[]) => (of.length > 0 ? plug + names(of) + 2.5 * unit : 0);
  const based = columns.filter((column) => column.base !== null);
  const picture = Math.max(0, ...based.map(({ base }) => (base ? picturesSize(base, sizes).height : 0)));
  const label = Math.max(0, ...based.map((column) => baseName(column, sizes, measure)?.height ?? 0));
  const base = based.length > 0 ? (upright ? Math.max(picture, label) : picture + label) + (MARK + 4) * unit : 0;
  const tall = rows.map(
    (row) =>
      Math.max(picturesSize(row, sizes).height, rowWords(row, sizes, measure).height, (MARK + 1) * unit) +
      2 * ROW_PAD * unit,
  );
  const keyways = plugs(columns);
  // Sections in between stand in columns of their own: half a plug higher is enough to tell them.
  const hasBetween = columns.some(({ isInBetween }) => isInBetween);
  const between = hasBetween ? plug / 2 + unit : 0;
  const total = keyways + between + base + tall.reduce((sum, height) => sum + height, 0);
  return { keyways, between, base, rows: tall, total };
}

/** Widths for so many columns side by side. */
export function chartWidths(
  content: ChartContent,
  count: number,
  { width, unit, goesOn }: { readonly width: number; readonly unit: number; readonly goesOn: boolean },
  measure: TextMeasure,
): Omit<ChartSizes, 'scale'> {
  const band = 5 * unit;
  const right = (goesOn ? 17 : 2) * unit;
  const gutter = content.rows.length > 0 ? Math.min(78 * unit, Math.max(48 * unit, 0.26 * width)) : 24 * unit;
  const pitch = Math.min(64 * unit, (width - band - gutter - right) / Math.max(1, count));
  const widest = Math.max(
    0,
    ...content.columns.flatMap(({ name }) =>
      name.split(/\s+/).map((word) => measure.width(word, COLUMN_NAME * unit, true)),
    ),
  );
  const face = plugFace(content.columns.map(({ opening }) => opening));
  return { unit, face, pitch, gutter, band, right, upright: widest > pitch - unit };
}
