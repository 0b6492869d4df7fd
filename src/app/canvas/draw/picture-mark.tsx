import type { MarkName } from '../../state/draw/underlay-state.ts';
import type { PlacedMark } from '../../tools/draw/placing-marks.ts';
import { Circle, Group, Line, Text } from '../konva-parts.ts';
import { type Palette, TYPE } from '../palette.ts';

/** What is written beside a mark. */
export const MARK_LETTERS: Readonly<Record<MarkName, string>> = {
  ...{ scaleFrom: 'A', scaleTo: 'B', lineFrom: 'A', lineTo: 'B' },
  ...{ corner1: '1', corner2: '2', corner3: '3', corner4: '4' },
};

/** From where to where a hair of the cross runs, pixels from the middle: the middle stays free for what is marked. */
const HAIR = { from: 4, to: 15 } as const;

const HAIRS = [
  [HAIR.from, 0, HAIR.to, 0],
  [-HAIR.from, 0, -HAIR.to, 0],
  [0, HAIR.from, 0, HAIR.to],
  [0, -HAIR.from, 0, -HAIR.to],
];

/** A mark on a picture: a cross that leaves its middle free, with its letter. */
export function PictureMark({ mark, held, palette }: { mark: PlacedMark; held: boolean; palette: Palette }) {
  const { px, py } = mark.pixel;
  const letter = MARK_LETTERS[mark.name];
  return (
    <Group x={px} y={py}>
      {HAIRS.map((points) => (
        <Line key={points.join(' ')} points={points} stroke={palette.paperLit} strokeWidth={5} />
      ))}
      {HAIRS.map((points) => (
        <Line key={points.join(' ')} points={points} stroke={palette.ink} strokeWidth={1.5} />
      ))}
      <Circle
        x={19}
        y={-19}
        radius={11}
        fill={held ? palette.brass : palette.paperLit}
        stroke={palette.ink}
        strokeWidth={1.5}
      />
      <Text
        x={8}
        y={-27}
        width={22}
        align="center"
        text={letter}
        fontFamily={TYPE}
        fontSize={16}
        fontStyle="bold"
        fill={held ? palette.brassEdge : palette.ink}
      />
    </Group>
  );
}
