import { Label, Tag, Text } from './konva-parts.ts';
import { type Palette, TYPE } from './palette.ts';

interface NumberPlateProps {
  /** Its upper left corner, and its width, pixels. */
  readonly x: number;
  readonly y: number;
  readonly wide: number;
  readonly text: string;
  readonly fontSize: number;
  readonly palette: Palette;
  readonly fill?: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
}

/** A length in bold on a plate of its own. */
export function NumberPlate(props: NumberPlateProps) {
  const { x, y, wide, text, fontSize, palette } = props;
  const { fill = palette.paperLit, stroke = palette.ink, strokeWidth = 1.5 } = props;
  return (
    <Label x={x} y={y}>
      <Tag fill={fill} stroke={stroke} strokeWidth={strokeWidth} />
      <Text
        text={text}
        width={wide}
        align="center"
        padding={6}
        wrap="none"
        fontFamily={TYPE}
        fontSize={fontSize}
        fontStyle="bold"
        fill={palette.ink}
      />
    </Label>
  );
}
