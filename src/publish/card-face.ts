import type { PlugFace } from '../family/plug-face.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import { type Block, emptyBlock, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import type { CardContent, CardDoor } from './card-content.ts';
import type { Mark } from './page.ts';
import { layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { sectionPicture, sizeOfRing } from './section-picture.ts';
import { drawn, polyline, rectangle } from './strokes.ts';
import { verdictMark } from './verdict-sign.ts';

/** How cards are set. */
export interface CardStyle {
  /** Millimetres. */
  readonly width: number;
  /** Most height of a card, millimetres. */
  readonly most: number;
  /** What type and pictures are measured in: 1 mm at the usual size. */
  readonly unit: number;
  /** Doors side by side. */
  readonly columns: number;
  /** Height of the plug pictures in units; 0: none. */
  readonly picture: number;
  readonly face: PlugFace;
  /** Small print at the foot: family and date. */
  readonly foot: string;
  readonly measure: TextMeasure;
}

/** Room between the edge of a card and what stands on it, in units. */
const PADDING = 4;

/**
 * One card, or several where its doors have no room on one: who carries the blank, its picture, the doors that it enters
 * and those that it does not, each with a mark and, where asked for, a picture of the blank in the keyway.
 *
 * @returns blocks of the style's width, none higher than its most but where one row of doors is.
 * @check tests/unit/publish/card.test.ts
 */
export function cardFaces(content: CardContent, style: CardStyle): Block[] {
  const { unit, width, measure } = style;
  const inner = width - 2 * PADDING * unit;
  const foot = layOutParagraph(style.foot, { width: inner, size: 1.9 * unit, ink: 'soft', most: 1 }, measure);
  const notes = content.notes.map((text) =>
    layOutParagraph(text, { width: inner, size: 2.2 * unit, bold: true }, measure),
  );
  const rows = [
    ...doorRows('Your blank enters', content.enters, content, style, inner),
    ...outRows(content, style, inner),
    ...notes.map((block) => ({ block, keep: false, gap: 1.4 * unit })),
  ];
  const headOf = (piece: string) => cardHead(content, piece, style, inner);
  const room = style.most - 2 * PADDING * unit - headOf(' (10 of 10)').height - foot.height - 2.4 * unit;
  const pieces = partRows(rows, room);
  return pieces.map((piece, i) => {
    const head = headOf(pieces.length > 1 ? ` (${i + 1} of ${pieces.length})` : '');
    return framed(stackBlocks([head, piece], 1 * unit), foot, style);
  });
}

/** A row of a card; what is kept stays with the next one. */
interface CardRow {
  readonly block: Block;
  readonly keep: boolean;
  readonly gap: number;
}

/** Rows one under the other, in pieces that are no higher than the room. */
function partRows(rows: readonly CardRow[], room: number): Block[] {
  const pieces: CardRow[][] = [[]];
  const heightOf = (piece: readonly CardRow[]) => piece.reduce((sum, { block, gap }) => sum + block.height + gap, 0);
  for (const [i, row] of rows.entries()) {
    const piece = pieces[pieces.length - 1];
    const next = row.keep ? (rows[i + 1]?.block.height ?? 0) : 0;
    if (piece.length > 0 && heightOf(piece) + row.gap + row.block.height + next > room) pieces.push([row]);
    else piece.push(row);
  }
  return pieces.map((piece) => stackBlocks(piece.flatMap(({ block, gap }) => [emptyBlock(0, gap), block])));
}

function cardHead({ title, carries, blank }: CardContent, piece: string, style: CardStyle, inner: number): Block {
  const { unit, measure } = style;
  const picture = blank
    ? sectionPicture(blank, { scale: scaleFor(blank, 13 * unit, 16 * unit), line: 0.15 * unit })
    : emptyBlock(0, 0);
  const width = inner - picture.width - (blank ? 3 * unit : 0);
  const words = stackBlocks([
    layOutParagraph(title + piece, { width, size: 4.6 * unit, bold: true, most: 3, heading: 2 }, measure),
    ...(carries === '' ? [] : [layOutParagraph(carries, { width, size: 2.7 * unit, ink: 'soft', most: 2 }, measure)]),
  ]);
  const height = Math.max(words.height, picture.height) + 1.6 * unit;
  const marks: Mark[] = [
    ...placeBlock(words, 0, 0),
    ...placeBlock(picture, inner - picture.width, 0),
    drawn([polyline([0, height], [inner, height])], 'ink', 0.3 * unit),
  ];
  return { width: inner, height, marks };
}

/** The scale at which a section is as high as there is room, or as wide. */
function scaleFor(
  { ring }: { readonly ring: Parameters<typeof sizeOfRing>[0] },
  height: number,
  width: number,
): number {
  const size = sizeOfRing(ring);
  return Math.min(height / size.height, width / size.width);
}

function headingRow(text: string, { unit, measure }: CardStyle, inner: number): CardRow {
  const block = layOutParagraph(text, { width: inner, size: 3.1 * unit, bold: true, heading: 3 }, measure);
  return { block, keep: true, gap: 1.6 * unit };
}

function outRows(content: CardContent, style: CardStyle, inner: number): CardRow[] {
  if (content.staysOut.length === 0) return [];
  return doorRows('It does not enter', content.staysOut, content, style, inner);
}

function doorRows(
  heading: string,
  doors: readonly CardDoor[],
  content: CardContent,
  style: CardStyle,
  inner: number,
): CardRow[] {
  const { columns, unit } = style;
  const head = headingRow(doors.length > 0 ? heading : `${heading} no door`, style, inner);
  const gap = 2 * unit;
  const width = (inner - gap * (columns - 1)) / columns;
  const cells = doors.map((door) => doorCell(door, content, { ...style, width }));
  const rows = Array.from({ length: Math.ceil(cells.length / columns) }, (_, i): CardRow => {
    const row = cells.slice(i * columns, (i + 1) * columns);
    const height = Math.max(...row.map((cell) => cell.height));
    const marks = row.flatMap((cell, k) => placeBlock(cell, k * (width + gap), (height - cell.height) / 2));
    return { block: { width: inner, height, marks }, keep: false, gap: 1.1 * unit };
  });
  return [{ ...head, keep: rows.length > 0 }, ...rows];
}

/** A door: the blank in its keyway, the mark, its name and its section. */
function doorCell(door: CardDoor, { blank }: CardContent, style: CardStyle): Block {
  const { unit, picture, face, measure, width } = style;
  const tried = door.tried && blank ? { profile: blank, fit: door.tried.fit } : null;
  const plug =
    picture > 0 && door.tried
      ? plugPicture(door.tried.opening, tried, { face, scale: (picture * unit) / (2 * face.radius), line: 0.12 * unit })
      : null;
  const mark = verdictMark(door.verdict, 3.6 * unit);
  const gap = 1.2 * unit;
  const left = (plug ? plug.width + gap : 0) + mark.width + gap;
  const room = Math.max(8 * unit, width - left);
  const aside = door.verdict === 'tight' ? [door.aside, 'tight'].filter((text) => text !== '').join(', ') : door.aside;
  const words = stackBlocks([
    layOutParagraph(door.name, { width: room, size: 2.6 * unit, most: 4 }, measure),
    ...(aside === '' ? [] : [layOutParagraph(aside, { width: room, size: 2.1 * unit, ink: 'soft', most: 2 }, measure)]),
  ]);
  return rowOfBlocks([...(plug ? [plug] : []), mark, words], gap);
}

/** A card with its edge, its words and its foot. */
function framed(body: Block, foot: Block, { width, unit }: CardStyle): Block {
  const pad = PADDING * unit;
  const height = 2 * pad + body.height + 2.4 * unit + foot.height;
  return {
    width,
    height,
    marks: [...placeBlock(body, pad, pad), ...placeBlock(foot, pad, height - pad - foot.height)],
  };
}

/** Length of a cut mark and its distance from the card, millimetres. */
const CUT = { long: 2.4, off: 0.5 };

/** A card at its place with a thin edge, and marks at its corners to cut along. */
export function cutCard(card: Block, height: number): Block {
  const { width } = card;
  const { long, off } = CUT;
  const marks = [0, width].flatMap((x) =>
    [0, height].flatMap((y) => {
      const out = { x: x === 0 ? -1 : 1, y: y === 0 ? -1 : 1 };
      return [
        polyline([x + out.x * off, y], [x + out.x * (off + long), y]),
        polyline([x, y + out.y * off], [x, y + out.y * (off + long)]),
      ];
    }),
  );
  const edge = drawn([rectangle(0, 0, width, height)], 'faint', 0.2);
  const foot = placeBlock({ ...card, marks: card.marks.slice(-1) }, 0, height - card.height);
  return { width, height, marks: [edge, ...card.marks.slice(0, -1), ...foot, drawn(marks, 'ink', 0.12)] };
}
