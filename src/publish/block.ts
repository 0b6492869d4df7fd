import type { GroupMark, Mark, Spot, Stroke } from './page.ts';

/** Marks with the room that they take: millimetres from their upper left corner, x right, y down. */
export interface Block {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly Mark[];
}

/** A block that draws nothing. */
export function emptyBlock(width: number, height: number): Block {
  return { width, height, marks: [] };
}

/** The marks of a block with its upper left corner at (x, y). */
export function placeBlock(block: Block, x: number, y: number): Mark[] {
  return x === 0 && y === 0 ? [...block.marks] : block.marks.map((mark) => moveMark(mark, x, y));
}

/** Blocks one under the other, left sides in line. */
export function stackBlocks(blocks: readonly Block[], gap = 0): Block {
  let y = 0;
  const marks: Mark[] = [];
  for (const [i, block] of blocks.entries()) {
    if (i > 0) y += gap;
    marks.push(...placeBlock(block, 0, y));
    y += block.height;
  }
  return { width: Math.max(0, ...blocks.map(({ width }) => width)), height: y, marks };
}

/** Blocks side by side, middles in line. */
export function rowOfBlocks(blocks: readonly Block[], gap = 0): Block {
  const height = Math.max(0, ...blocks.map((block) => block.height));
  let x = 0;
  const marks: Mark[] = [];
  for (const [i, block] of blocks.entries()) {
    if (i > 0) x += gap;
    marks.push(...placeBlock(block, x, (height - block.height) / 2));
    x += block.width;
  }
  return { width: x, height, marks };
}

/** The block with its marks as one group, under a label for whoever cannot see them. */
export function labelledBlock(block: Block, label: string): Block {
  return { ...block, marks: [{ kind: 'group', label, marks: block.marks }] };
}

/** Marks as a part of a table. */
export function tablePart(part: NonNullable<GroupMark['part']>, marks: readonly Mark[]): GroupMark {
  return { kind: 'group', part, marks };
}

/** A mark moved right and down, with all that is in it. */
function moveMark(mark: Mark, dx: number, dy: number): Mark {
  const spot = ([x, y]: Spot): Spot => [x + dx, y + dy];
  const stroke = ({ spots, closed }: Stroke): Stroke => ({ spots: spots.map(spot), closed });
  switch (mark.kind) {
    case 'path':
      return { ...mark, strokes: mark.strokes.map(stroke) };
    case 'text':
      return { ...mark, spot: spot(mark.spot) };
    case 'group': {
      const moved = { ...mark, marks: mark.marks.map((inner) => moveMark(inner, dx, dy)) };
      return mark.clip ? { ...moved, clip: mark.clip.map(stroke) } : moved;
    }
  }
}
