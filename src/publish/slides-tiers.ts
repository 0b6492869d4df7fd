import { keepApart } from '../teach/keep-apart.ts';
import { type TierPlate, type TierRows, tierRows } from '../teach/tier-rows.ts';
import { type Block, placeBlock, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { LEADING, layOutParagraph } from './paragraph.ts';
import { sectionPicture, sizeOfRing } from './section-picture.ts';
import { type Extent, LEAST_TYPE, type SlideGround } from './slides-frame.ts';
import { drawn, filled, polyline, rectangle } from './strokes.ts';

/** Type, room for the lines between two rows, and the most height of a row, millimetres. */
const SIZE = 5.2;
const LINES = 9;
const HIGHEST = 46;
/** Between two names, millimetres. */
const NAME_GAP = 3;

interface Placed {
  readonly plate: TierPlate;
  readonly row: number;
  readonly wide: number;
  /** Middle of the plate. */
  readonly x: number;
  readonly top: number;
}

interface TierLayout {
  readonly placed: readonly Placed[];
  readonly rowHeight: number;
  readonly size: number;
  readonly side: number;
  readonly scale: number;
  /** Lines that a name has room for. */
  readonly lines: number;
  /** Top of a row. */
  top(row: number): number;
}

/** The rows of a tiers step. */
export function shownTiers({ ground, step }: SlideGround): TierRows {
  return tierRows(ground.family, ground.fits, step.blank);
}

/** The lowest `shown` rows of the tiers, lines from a blank to those it stands on; the places are those of all rows. */
export function tiersPicture(tiers: TierRows, shown: number, { ground }: SlideGround, room: Extent): Block {
  const { measure } = ground;
  if (tiers.rows.length === 0) {
    const words = 'No blank of this family goes into any keyway.';
    return layOutParagraph(words, { width: room.width, size: SIZE, align: 'middle' }, measure);
  }
  const layout = layRows(tiers, room, measure);
  const seen = layout.placed.filter(({ row }) => row < shown);
  const plates = seen.map((placed) => ({ placed, block: plateBlock(placed, layout, measure) }));
  const bottom = new Map(plates.map(({ placed, block }) => [placed.plate.id, placed.top + block.height] as const));
  const marks: Mark[] = [
    ...linesOf(seen, bottom),
    ...plates.flatMap(({ placed, block }) => [
      filled([rectangle(placed.x - block.width / 2, placed.top, block.width, block.height)], 'paper'),
      ...placeBlock(block, placed.x - block.width / 2, placed.top),
    ]),
  ];
  for (const [row, { words }] of tiers.rows.slice(0, shown).entries()) {
    const style = { width: layout.side - 4, size: layout.size, bold: true, most: 3 } as const;
    const block = layOutParagraph(words, style, measure);
    marks.push(...placeBlock(block, 0, layout.top(row) + (layout.rowHeight - LINES - block.height) / 2));
    const more = tiers.rows[row].plates.length - seen.filter((placed) => placed.row === row).length;
    if (more > 0) marks.push(...moreMarks(more, row, layout, room, measure));
  }
  return { ...room, marks };
}

function moreMarks(
  more: number,
  row: number,
  { size, top, rowHeight }: TierLayout,
  room: Extent,
  measure: SlideGround['ground']['measure'],
): Mark[] {
  const block = layOutParagraph(`and ${more} more`, { width: size * 5, size, most: 2, align: 'end' }, measure);
  return placeBlock(block, room.width - block.width, top(row) + (rowHeight - LINES - block.height) / 2);
}

/** The picture of a plate's first blank over its name. */
function plateBlock(
  { plate, wide }: Placed,
  { scale, size, lines }: TierLayout,
  measure: SlideGround['ground']['measure'],
): Block {
  const picture = sectionPicture(plate.profile, { scale, line: 0.3 });
  const style = { width: wide - NAME_GAP, size, bold: true, align: 'middle', most: lines } as const;
  const name = layOutParagraph(plate.name, style, measure);
  const centred = {
    ...picture,
    width: wide - NAME_GAP,
    marks: placeBlock(picture, (wide - NAME_GAP - picture.width) / 2, 0),
  };
  return stackBlocks([centred, name], 0.6);
}

/** From the top of each blank down to the foot of what it stands on, and no further. */
function linesOf(seen: readonly Placed[], bottom: ReadonlyMap<string, number>): Mark[] {
  const byId = new Map(seen.map((placed) => [placed.plate.id, placed]));
  const strokes = seen.flatMap((to) =>
    to.plate.onto.flatMap((id) => {
      const from = byId.get(id);
      if (!from) return [];
      return [polyline([from.x, from.top - 0.5], [to.x, (bottom.get(to.plate.id) ?? to.top) + 0.5])];
    }),
  );
  return strokes.length === 0 ? [] : [drawn(strokes, 'soft', 0.6)];
}

/** Rows of equal height, the lowest at the foot; the lowest evenly spread, the others over what they stand on. */
function layRows({ rows }: TierRows, room: Extent, measure: SlideGround['ground']['measure']): TierLayout {
  const rowHeight = Math.min(room.height / rows.length, HIGHEST);
  const size = Math.min(SIZE, Math.max(LEAST_TYPE * 0.6, rowHeight / 6));
  const side = size * 7;
  const base = (room.height + rowHeight * rows.length) / 2;
  const top = (row: number) => base - rowHeight * (row + 1);
  const width = room.width - side;
  const capacity = Math.max(1, Math.floor(width / (size * 4.2)));
  const centre = new Map<string, number>();
  const placed = rows.flatMap(({ plates }, row): Placed[] => {
    const crowded = plates.length > capacity;
    const kept = crowded ? plates.slice(0, Math.max(1, capacity - 2)) : plates;
    const within = crowded ? width - size * 5.5 : width;
    const wanted = kept.map(({ onto }, i) => {
      const under = onto.flatMap((id) => centre.get(id) ?? []);
      return under.length === 0 ? ((i + 0.5) * within) / kept.length : sum(under) / under.length;
    });
    const wide = Math.min(within / kept.length, size * 9);
    const xs = keepApart(wanted, wide, within);
    return kept.map((plate, i) => {
      centre.set(plate.id, xs[i]);
      return { plate, row, wide, x: side + xs[i], top: top(row) };
    });
  });
  return { placed, rowHeight, size, side, top, ...pictureRoom(placed, rowHeight, size, measure) };
}

/** How large the sections are drawn, all at one scale, and how many lines of their names stand under them. */
function pictureRoom(
  placed: readonly Placed[],
  rowHeight: number,
  size: number,
  measure: SlideGround['ground']['measure'],
): { readonly scale: number; readonly lines: number } {
  const sizes = placed.map(({ plate }) => sizeOfRing(plate.profile.ring));
  const lines = placed.some(({ plate, wide }) => measure.width(plate.name, size, true) > wide - NAME_GAP) ? 2 : 1;
  const high = Math.max(2, rowHeight - LINES - lines * size * LEADING);
  const narrowest = Math.min(...placed.map(({ wide }) => wide));
  const scale = Math.min(
    high / Math.max(...sizes.map(({ height }) => height)),
    (narrowest - NAME_GAP) / Math.max(...sizes.map(({ width }) => width)),
  );
  return { scale, lines };
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}

/** "1 keyway: Heron, Smew." for each row, from the lowest. */
export function toldTiers({ rows }: TierRows, shown: number): string[] {
  return rows.slice(0, shown).map(({ words, plates }) => `${words}: ${plates.map(({ name }) => name).join(', ')}.`);
}
