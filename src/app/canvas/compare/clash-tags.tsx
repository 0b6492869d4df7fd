import { gapText, type Units } from '../../../family/length-text.ts';
import type { Collision } from '../../../fit/fit.ts';
import type { Box } from '../../../geom/point.ts';
import { pointInside } from '../../../profile/point-inside.ts';
import { clashLetter } from '../../state/pair-words.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Circle, Group, Label, Line, Tag, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';

/** A plate with letter, part and depth; on a narrow canvas the letter alone, which the readings spell out. */
const FULL = { wide: 168, tall: 54 } as const;
const SMALL = { wide: 34, tall: 32 } as const;
const NARROW_CANVAS = 760;
/** Pixels at the foot of the canvas that the scale bar needs. */
const FOOT = 54;

const MOST_TAGS = 6;

interface ClashTagsProps {
  readonly collisions: readonly Collision[];
  readonly openingBox: Box;
  readonly units: Units;
  readonly sheet: DrawingSheet;
  partName(part: Collision): string;
}

interface Tagged {
  readonly collision: Collision;
  readonly letter: string;
  readonly x: number;
  readonly y: number;
  /** Top left corner of the plate. */
  readonly left: number;
  top: number;
}

/** A plate for each of the deepest collisions, beside the keyway on its side: letter, part, depth. */
export function ClashTags({ collisions, openingBox, units, sheet, partName }: ClashTagsProps) {
  const { palette } = sheet;
  const plate = plateOf(sheet);
  return (
    <Group>
      {placeTags(collisions, openingBox, sheet).map(({ collision, letter, x, y, left, top }) => (
        <Group key={letter}>
          <Line
            points={[x, y, left > x ? left : left + plate.wide, top + plate.tall / 2]}
            stroke={palette.blocked}
            strokeWidth={2}
          />
          <Circle x={x} y={y} radius={5} fill={palette.paperLit} stroke={palette.clashEdge} strokeWidth={2.5} />
          <Label x={left} y={top}>
            <Tag fill={palette.paperLit} stroke={palette.blocked} strokeWidth={2} />
            <Text
              text={
                plate === SMALL
                  ? letter
                  : `${letter}  ${partName(collision)}\n${gapText(collision.depth, units)} too deep`
              }
              width={plate.wide}
              height={plate.tall}
              padding={7}
              align={plate === SMALL ? 'center' : 'left'}
              wrap="none"
              lineHeight={1.18}
              fontFamily={TYPE}
              fontSize={16}
              fill={palette.ink}
            />
          </Label>
        </Group>
      ))}
    </Group>
  );
}

/** Plates stand in a column at either side, at the height of their collision, pushed apart where they would overlap. */
function placeTags(collisions: readonly Collision[], openingBox: Box, sheet: DrawingSheet): Tagged[] {
  const { view, size } = sheet;
  const { wide, tall } = plateOf(sheet);
  const middle = (openingBox.minX + openingBox.maxX) / 2;
  const leftColumn = Math.max(8, toPixels(view, { x: openingBox.minX, y: 0 }).px - 120 - wide);
  const rightColumn = Math.min(size.width - wide - 8, toPixels(view, { x: openingBox.maxX, y: 0 }).px + 60);
  const tags = collisions.slice(0, MOST_TAGS).map((collision, i): Tagged => {
    const anchor = pointInside(collision.region[0].outer);
    const { px, py } = toPixels(view, anchor);
    const onLeft = collision.side === 'left' || (collision.side !== 'right' && anchor.x < middle);
    return {
      collision,
      letter: clashLetter(i),
      x: px,
      y: py,
      left: onLeft ? leftColumn : rightColumn,
      top: py - tall / 2,
    };
  });
  spread(
    tags.filter((t) => t.left === leftColumn),
    size.height,
    tall,
  );
  spread(
    tags.filter((t) => t.left === rightColumn),
    size.height,
    tall,
  );
  return tags;
}

function plateOf({ size }: DrawingSheet): typeof FULL | typeof SMALL {
  return size.width < NARROW_CANVAS ? SMALL : FULL;
}

function spread(column: Tagged[], height: number, tall: number): void {
  column.sort((a, b) => a.y - b.y);
  let free = 8;
  for (const tag of column) {
    tag.top = Math.max(free, Math.min(tag.top, height - tall - FOOT));
    free = tag.top + tall + 6;
  }
  let floor = height - FOOT;
  for (const tag of column.reverse()) {
    tag.top = Math.min(tag.top, floor - tall);
    floor = tag.top - 6;
  }
}
