import type { TextMeasure } from '../lettering/text-measure.ts';
import { type PlacedTiers, placeTiers } from '../teach/place-tiers.ts';
import { type TierPlate, type TierRows, tierRows } from '../teach/tier-rows.ts';
import { type Block, placeBlock, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { LEADING, layOutParagraph } from './paragraph.ts';
import { sectionPicture, sizeOfRing } from './section-picture.ts';
import { type Extent, LEAST_TYPE, type SlideGround } from './slides-frame.ts';
import { drawn, polyline } from './strokes.ts';

/** Type, room for the lines between two rows, and the most height of a row, millimetres. */
const SIZE = 5.2;
const LINES = 6;
const HIGHEST = 64;

/** So much of a low row's share of the height its lines have at most, so that pictures and names keep theirs. */
const MOST_LINES = 0.2;

/** So much of it the type of names has at most, however small that is. */
const MOST_TYPE = 0.35;

/** Least height of a picture over a name of two lines, and the room between picture and name, millimetres. */
const LEAST_PICTURE = 2;
const OVER_NAME = 0.6;

interface TierLayout extends PlacedTiers {
  readonly size: number;
  /** Room at the left for the words of a row. */
  readonly side: number;
  readonly scale: number;
  /** Lines that a name has room for. */
  readonly nameLines: number;
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
  const marks: Mark[] = [
    ...linesOf(layout, shown),
    ...layout.plates
      .filter(({ row }) => row < shown)
      .flatMap(({ plate, x, top, wide }) => {
        const block = plateBlock(plate, wide, layout, measure);
        return placeBlock(block, layout.side + x - block.width / 2, top);
      }),
  ];
  for (const [row, { words }] of tiers.rows.slice(0, shown).entries()) {
    const style = { width: layout.side - 4, size: layout.size, bold: true, most: 3 } as const;
    const block = layOutParagraph(words, style, measure);
    marks.push(...placeBlock(block, 0, layout.tops[row] + (layout.high - block.height) / 2));
    if (layout.more[row] > 0) marks.push(...moreMarks(row, layout, room, measure));
  }
  return { ...room, marks };
}

function moreMarks(row: number, { size, tops, high, more }: TierLayout, room: Extent, measure: TextMeasure): Mark[] {
  const block = layOutParagraph(`and ${more[row]} more`, { width: size * 5, size, most: 2, align: 'end' }, measure);
  return placeBlock(block, room.width - block.width, tops[row] + (high - block.height) / 2);
}

/** The picture of a plate's first blank over its name. */
function plateBlock(
  plate: TierPlate,
  width: number,
  { scale, size, nameLines }: TierLayout,
  measure: TextMeasure,
): Block {
  const picture = sectionPicture(plate.profile, { scale, line: 0.3 });
  const style = { width, size, bold: true, align: 'middle', most: nameLines } as const;
  const name = layOutParagraph(plate.name, style, measure);
  const centred = { ...picture, width, marks: placeBlock(picture, (width - picture.width) / 2, 0) };
  return stackBlocks([centred, name], OVER_NAME);
}

/** The lines of the rows shown, clear of what they lead to. */
function linesOf({ lines, side }: TierLayout, shown: number): Mark[] {
  const strokes = lines
    .filter(({ row }) => row < shown)
    .map(({ points }) => polyline(...points.map(([x, y]): [number, number] => [side + x, y])));
  return strokes.length === 0 ? [] : [drawn(strokes, 'soft', 0.6)];
}

/** Rows of equal height, the lowest at the foot, and how large the sections are drawn, all at one scale. */
function layRows(tiers: TierRows, room: Extent, measure: TextMeasure): TierLayout {
  const share = room.height / tiers.rows.length;
  const size = Math.min(SIZE, MOST_TYPE * share, Math.max(LEAST_TYPE * 0.6, share / 6.2));
  const side = size * 7;
  const placed = placeTiers(tiers, {
    width: room.width - side,
    height: room.height,
    type: size,
    widthOf: (text) => measure.width(text, size, true),
    between: Math.min(LINES, MOST_LINES * share),
    highest: HIGHEST,
  });
  const sizes = placed.plates.map(({ plate }) => sizeOfRing(plate.profile.ring));
  const long = placed.plates.some(({ plate, wide }) => measure.width(plate.name, size, true) > wide);
  const pictureOver = (lines: number) => placed.high - lines * size * LEADING - OVER_NAME;
  const nameLines = long && pictureOver(2) >= LEAST_PICTURE ? 2 : 1;
  const high = Math.max(0.1, pictureOver(nameLines));
  const scale = Math.min(
    high / Math.max(...sizes.map(({ height }) => height)),
    Math.min(...placed.plates.map(({ wide }) => wide)) / Math.max(...sizes.map(({ width }) => width)),
  );
  return { ...placed, size, side, scale, nameLines };
}

/** "1 keyway: Heron, Smew." for each row, from the lowest. */
export function toldTiers({ rows }: TierRows, shown: number): string[] {
  return rows.slice(0, shown).map(({ words, plates }) => `${words}: ${plates.map(({ name }) => name).join(', ')}.`);
}
