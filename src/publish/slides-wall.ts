import { VERDICT_WORDS } from '../family/margin-text.ts';
import { type PlugFace, plugFace } from '../family/plug-face.ts';
import type { Verdict } from '../fit/fit.ts';
import type { Profile } from '../profile/profile.ts';
import { pickShown, restWords } from '../teach/shown-wall.ts';
import { shortNameOf } from '../teach/teaching-knowledge.ts';
import { type WallGrid, wallGrid } from '../teach/wall-grid.ts';
import { type Block, placeBlock, rowOfBlocks, stackBlocks } from './block.ts';
import type { Mark } from './page.ts';
import { LEADING, layOutLine, layOutParagraph } from './paragraph.ts';
import { plugPicture } from './plug-picture.ts';
import { type Extent, LEAST_TYPE, type SlideGround } from './slides-frame.ts';
import { verdictMark } from './verdict-sign.ts';

/** Type under a picture, millimetres; plugs drawn smaller than this many times their size cannot be told apart. */
const TYPE = 5.6;
const LEAST_SCALE = 1.8;

/** How the cells of a wall stand, and what is set in them. */
interface SetWall {
  readonly grid: WallGrid;
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
  const wall = setWall(openings.length, room, face, Math.max(...names));
  const { grid, cell } = wall;
  const shown = pickShown(knowledge, blank, openings, grid.places);
  const marks = shown.flatMap((opening, i): Mark[] => {
    const row = Math.floor(i / grid.columns);
    const inRow = Math.min(grid.columns, shown.length - row * grid.columns);
    // A row that is not full stands in the middle.
    const left = (room.width - inRow * cell.width) / 2 + (i % grid.columns) * cell.width;
    const fit = knowledge.fitOf(blank.id, opening.id);
    if (!fit) return [];
    const picture = plugPicture(opening, { profile: blank, fit }, { face, scale: grid.scale, line: 0.3 });
    return placeBlock(wallCell(picture, opening, fit.verdict, wall, measure), left, row * cell.height);
  });
  const rest = openings.filter((opening) => !shown.includes(opening));
  const used = Math.ceil(shown.length / grid.columns) * cell.height;
  if (rest.length === 0) return { width: room.width, height: used, marks };
  const style = { width: room.width, size: LEAST_TYPE, bold: true, align: 'middle', most: 1 } as const;
  const words = layOutParagraph(restWords(knowledge, blank, rest), style, measure);
  return stackBlocks([{ width: room.width, height: used, marks }, words]);
}

function wallCell(
  picture: Block,
  opening: Profile,
  verdict: Verdict,
  { cell, size, lines }: SetWall,
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

/** The wall in the largest type that lets all plugs be told apart, else as many of them as can be. */
function setWall(count: number, room: Extent, face: PlugFace, longest: number): SetWall {
  const [large, small] = [TYPE, LEAST_TYPE].map((size) => wallOf(size, count, room, face, longest));
  return large.grid.places < count ? small : large;
}

/** @param longest width of the longest name, in heights of the em. */
function wallOf(size: number, count: number, room: Extent, face: PlugFace, longest: number): SetWall {
  const linesIn = (width: number) => (longest * size > width - 2 ? 2 : 1);
  const under = (width: number) => textHeight(size, linesIn(width));
  const sizes = { leastWidth: size * 5.6, leastScale: LEAST_SCALE, beside: 2, rest: LEAST_TYPE * LEADING };
  const grid = wallGrid(count, room, { face, under, ...sizes });
  const cell = { width: grid.width, height: 2 * face.radius * grid.scale + under(grid.width) };
  return { grid, cell, size, lines: linesIn(grid.width) };
}

/** The name, the word, and the room round them. */
function textHeight(size: number, lines: number): number {
  return (lines + 1) * size * LEADING + 3.5;
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
