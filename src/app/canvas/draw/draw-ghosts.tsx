import { memo } from 'react';
import type { Point } from '../../../geom/point.ts';
import type { Ghost } from '../../tools/draw/ghosts.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Group, Label, Line, Tag, Text } from '../konva-parts.ts';
import { TYPE } from '../palette.ts';

/** Other outlines under the edited one, dashed, each with its name at its top. */
export const DrawGhosts = memo(function DrawGhosts({
  ghosts,
  sheet,
}: {
  ghosts: readonly Ghost[];
  sheet: DrawingSheet;
}) {
  return (
    <Group>
      {ghosts.map(({ id, ring, kind, counterpart }) => (
        <GhostLine key={id} points={ring} blade={kind !== 'opening'} strong={counterpart} sheet={sheet} />
      ))}
      {ghosts.map(({ id, name, corner }, i) => (
        <GhostName key={id} name={name} corner={corner} row={i} sheet={sheet} />
      ))}
    </Group>
  );
});

interface GhostLineProps {
  readonly points: readonly Point[];
  readonly blade: boolean;
  readonly strong: boolean;
  readonly sheet: DrawingSheet;
}

function GhostLine({ points, blade, strong, sheet }: GhostLineProps) {
  const { palette, view } = sheet;
  const pixels = pixelsOf(points, view);
  return (
    <>
      {strong && <Line points={pixels} closed fill={blade ? palette.brass : palette.voidFill} opacity={0.12} />}
      <Line points={pixels} closed stroke={palette.paperLit} strokeWidth={3} opacity={0.7} />
      <Line points={pixels} closed stroke={palette.inkSoft} strokeWidth={1.5} dash={blade ? [3, 4] : [10, 5]} />
    </>
  );
}

/** Above it are the keys that zoom, in pixels. */
const TOP = 58;

/** Longer names are cut, in letters. */
const LONGEST = 26;

/** The names stand one under the other to the right of their outlines. */
function GhostName({ name, corner, row, sheet }: { name: string; corner: Point; row: number; sheet: DrawingSheet }) {
  const { palette, view, size } = sheet;
  const { px, py } = toPixels(view, corner);
  const y = Math.min(size.height - 80, Math.max(TOP, py)) + row * 24;
  return (
    <Label x={Math.min(size.width - 190, px + 10)} y={y}>
      <Tag fill={palette.paperLit} opacity={0.85} />
      <Text
        text={name.length > LONGEST ? `${name.slice(0, LONGEST - 1)}…` : name}
        wrap="none"
        padding={3}
        fontFamily={TYPE}
        fontSize={14}
        fontStyle="italic"
        fill={palette.inkSoft}
      />
    </Label>
  );
}
