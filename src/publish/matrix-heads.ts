import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { type Block, placeBlock } from './block.ts';
import type { Mark } from './page.ts';
import { ASCENT, LEADING, layOutParagraph } from './paragraph.ts';
import { sectionPicture } from './section-picture.ts';
import { wrapText, wrapUpTo } from './wrap-text.ts';

/** Most lines of a name beside its row, and of one that stands over its column. */
const MOST_ROW_LINES = 5;
const MOST_LEVEL_LINES = 3;

/** Room at the sides of a head, in heights of the em. */
export const HEAD_PAD = 0.4;

/** How heads are set; millimetres. */
export interface HeadStyle {
  readonly size: number;
  readonly measure: TextMeasure;
  /** How many times the true size sections are drawn. */
  readonly scale: number;
  /** Room for the largest picture. */
  readonly picture: { readonly width: number; readonly height: number };
}

/** The head of a row: picture, name, and under it how many keyways it goes into. As high as its words. */
export function rowHead(
  profile: Profile,
  count: string,
  width: number,
  { size, measure, scale, picture }: HeadStyle,
): Block {
  const left = HEAD_PAD * size;
  const textLeft = left + picture.width + HEAD_PAD * size;
  const room = width - textLeft - HEAD_PAD * size;
  const name = layOutParagraph(profile.name, { width: room, size, bold: true, most: MOST_ROW_LINES }, measure);
  const note = layOutParagraph(count, { width: room, size: size * 0.92, ink: 'soft' }, measure);
  const words = name.height + note.height;
  const height = Math.max(words, picture.height) + 0.5 * size;
  const drawn = sectionPicture(profile, { scale, line: size * 0.06 });
  const top = (height - words) / 2;
  return {
    width,
    height,
    marks: [
      ...placeBlock(drawn, left + (picture.width - drawn.width) / 2, (height - drawn.height) / 2),
      ...placeBlock(name, textLeft, top),
      ...placeBlock(note, textLeft, top + name.height),
    ],
  };
}

/** The heads of columns: pictures over names, all level where every name has room, else all turned. */
export interface ColumnHeads {
  readonly height: number;
  readonly blocks: readonly Block[];
}

/**
 * The heads of columns of one width. Names stand level where none of their words is broken and none needs more than three
 * lines, else they are turned to be read from the right.
 *
 * @param names what the keyways are called, in the order of `openings`.
 * @param longest how high a turned name may be, millimetres; a longer one is wrapped, at last shortened.
 */
export function columnHeads(
  openings: readonly Profile[],
  names: readonly string[],
  width: number,
  longest: number,
  style: HeadStyle,
): ColumnHeads {
  const { size, measure, picture } = style;
  const inner = width - 2 * HEAD_PAD * size;
  const level = names.every((name) => standsLevel(name, inner, size, measure));
  const words = names.map((name) =>
    level
      ? layOutParagraph(name, { width: inner, size, bold: true, align: 'middle' }, measure)
      : turnedName(name, width, longest, size, measure),
  );
  const tallest = Math.max(0, ...words.map(({ height }) => height));
  const height = picture.height + tallest + 1.1 * size;
  const blocks = openings.map((opening, k): Block => {
    const drawn = sectionPicture(opening, { scale: style.scale, line: size * 0.06, metal: 0.3 * size });
    const under = height - 0.35 * size - words[k].height;
    const marks = [
      ...placeBlock(drawn, (width - drawn.width) / 2, 0.35 * size + (picture.height - drawn.height) / 2),
      ...placeBlock(words[k], (width - words[k].width) / 2, under),
    ];
    return { width, height, marks };
  });
  return { height, blocks };
}

function standsLevel(name: string, width: number, size: number, measure: TextMeasure): boolean {
  const room = { width, size, bold: true };
  const widest = Math.max(...name.split(/\s+/).map((word) => measure.width(word, size, true)));
  return widest <= width && wrapText(name, room, measure).length <= MOST_LEVEL_LINES;
}

/** A name read from the bottom up, in as many lines as the column is wide. */
function turnedName(name: string, width: number, longest: number, size: number, measure: TextMeasure): Block {
  const most = Math.max(1, Math.floor(width / (LEADING * size)));
  const lines = wrapUpTo(most, name, { width: longest, size, bold: true }, measure);
  const height = Math.max(...lines.map((line) => measure.width(line, size, true)));
  const marks = lines.map((text, i): Mark => {
    const spot = [size * (ASCENT + i * LEADING), height] as const;
    return { kind: 'text', spot, text, size, bold: true, turned: -90 };
  });
  return { width: lines.length * LEADING * size, height, marks };
}
