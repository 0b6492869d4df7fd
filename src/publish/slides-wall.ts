import { VERDICT_WORDS } from '../family/margin-text.ts';
import { type PlugFace, plugFace } from '../family/plug-face.ts';
import type { Verdict } from '../fit/fit.ts';
import type { Profile } from '../profile/profile.ts';
import { pickShown, restWords } from '../teach/shown-wall.ts';
import { shortNameOf } from '../teach/teaching-knowledge.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { LEADING, layOutLine, layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { type Extent, LEAST_TYPE, type SlideGround } from './slides-frame.ts';
import { verdictMark } from './verdict-sign.ts';

/** Type under a picture, millimetres; plugs drawn smaller than this many times their size cannot be told apart. */
const TYPE = 5.6;
const LEAST_SCALE = 1.8;

/** How the cells of a wall stand. */
interface WallGrid {
  readonly columns: number;
  readonly places: number;
  readonly scale: number;
  readonly cell: Extent;
  readonly size: number;
  /** Lines that a name has room for. */
  readonly lines: number;
}

/** One blank in many keyways at once: picture, name, mark and word of each; what there is no room for is counted. */
export function wallPicture({ ground, knowledge, parts }: SlideGround, room: Extent): Block {
  const { blank, openings } = parts;
  const { measure } = ground;
  if (!blank || openings.length === 0) return { ...room, marks: [] };
  const face = plugFace(openings);
  const names = openings.map((opening) => measure.width(shortNameOf(opening), 1, true));
  const grid = wallGrid(openings.length, room, face, Math.max(...names));
  const shown = pickShown(knowledge, blank, openings, grid.places);
  const marks = shown.flatMap((opening, i): Mark[] => {
    const row = Math.floor(i / grid.columns);
    const inRow = Math.min(grid.columns, shown.length - row * grid.columns);
    // A row that is not full stands in the middle.
    const left = (room.width - inRow * grid.cell.width) / 2 + (i % grid.columns) * grid.cell.width;
    const fit = knowledge.fitOf(blank.id, opening.id);
    if (!fit) return [];
    const picture = plugPicture(opening, { profile: blank, fit }, { face, scale: grid.scale, line: 0.3 });
    return placeBlock(wallCell(picture, opening, fit.verdict, grid, measure), left, row * grid.cell.height);
  });
  const rest = openings.filter((opening) => !shown.includes(opening));
  const used = Math.ceil(shown.length / grid.columns) * grid.cell.height;
  if (rest.length === 0) return { width: room.width, height: used, marks };
  const style = { width: room.width, size: LEAST_TYPE, bold: true, align: 'middle', most: 1 } as const;
  const words = layOutParagraph(restWords(knowledge, blank, rest), style, measure);
  return stackBlocks([{ width: room.width, height: used, marks }, words]);
}

function wallCell(
  picture: Block,
  opening: Profile,
  verdict: Verdict,
  { cell, size, lines }: WallGrid,
  measure: SlideGround['ground']['measure'],
): Block {
  const style = { width: cell.width - 2, size, bold: true, align: 'middle', most: lines } as const;
  const name = layOutParagraph(shortNameOf(opening), style, measure);
  const word = layOutLine(VERDICT_WORDS[verdict], { size, bold: verdict !== 'blocked', ink: verdict }, measure);
  const sign = rowOfBlocks([verdictMark(verdict, size), word], size * 0.35);
  return {
    ...cell,
    marks: [
      ...placeBlock(picture, (cell.width - picture.width) / 2, 1),
      ...placeBlock(name, 1, picture.height + 1.5),
      ...placeBlock(sign, (cell.width - sign.width) / 2, picture.height + 1.5 + name.height),
    ],
  };
}

/** The grid that shows so many plugs largest with two lines of type under each, or as many as can be told apart. */
function wallGrid(count: number, room: Extent, face: PlugFace, longest: number): WallGrid {
  let best: WallGrid | null = null;
  for (const size of [TYPE, LEAST_TYPE]) {
    const most = Math.max(1, Math.min(count, Math.floor(room.width / (size * 5.6))));
    for (let columns = 1; columns <= most; columns++) {
      const grid = gridOf(columns, Math.ceil(count / columns), room, { face, size, longest }, count);
      if (!best || grid.scale > best.scale + 1e-9) best = grid;
    }
    if (best && best.scale >= LEAST_SCALE) return best;
  }
  const lower = { ...room, height: room.height - LEAST_TYPE * LEADING };
  const columns = Math.max(1, Math.floor(room.width / (LEAST_TYPE * 5.6)));
  const lines = longest * LEAST_TYPE > room.width / columns - 2 ? 2 : 1;
  const tall = LEAST_SCALE * 2 * face.radius + textHeight(LEAST_TYPE, lines);
  const rows = Math.max(1, Math.floor(lower.height / tall));
  return gridOf(columns, rows, lower, { face, size: LEAST_TYPE, longest }, columns * rows);
}

/** The name, the word, and the room round them. */
function textHeight(size: number, lines: number): number {
  return (lines + 1) * size * LEADING + 3.5;
}

/** What a grid is made for; `longest` is the width of the longest name, in heights of the em. */
interface GridStyle {
  readonly face: PlugFace;
  readonly size: number;
  readonly longest: number;
}

function gridOf(
  columns: number,
  rows: number,
  room: Extent,
  { face, size, longest }: GridStyle,
  places: number,
): WallGrid {
  const cell = { width: room.width / columns, height: room.height / rows };
  const lines = longest * size > cell.width - 2 ? 2 : 1;
  const high = Math.max(1, cell.height - textHeight(size, lines));
  const scale = Math.min((cell.width - 2) / (2 * face.half), high / (2 * face.radius));
  const height = 2 * face.radius * scale + textHeight(size, lines);
  return { columns, places, scale, cell: { ...cell, height }, size, lines };
}

/** "Heron: enters; Smew: blocked." */
export function toldWall({ knowledge, parts: { blank, openings } }: SlideGround): string {
  if (!blank) return '';
  const answers = openings.map((opening) => {
    const fit = knowledge.fitOf(blank.id, opening.id);
    return `${shortNameOf(opening)}: ${fit ? VERDICT_WORDS[fit.verdict] : 'not judged'}`;
  });
  return `${answers.join('; ')}.`;
}
