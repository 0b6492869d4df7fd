import { memo, useId } from 'react';
import { type Ink, inkColour, type Palette } from '../../../publish/inks.ts';
import type { GroupMark, Mark, Page, PathMark, Stroke, TextMark } from '../../../publish/page.ts';
import styles from './page-picture.module.css';

interface PagePictureProps {
  readonly page: Page;
  readonly palette: Palette;
  /** How large it is shown, in any unit of CSS; its true size where not given. */
  readonly width?: string;
  readonly height?: string;
}

/** A page as it will be on paper: white in either theme, lines and letters, no picture points. */
export const PagePicture = memo(function PagePicture({ page, palette, width, height }: PagePictureProps) {
  return (
    <svg
      className={styles.page}
      viewBox={`0 0 ${page.width} ${page.height}`}
      width={width ?? `${page.width}mm`}
      height={height ?? `${page.height}mm`}
      role="img"
      aria-label={page.title}
      xmlSpace="preserve"
      strokeLinejoin="round"
      // Else browsers round the width of each letter to whole points of the screen.
      textRendering="geometricPrecision"
    >
      <rect width={page.width} height={page.height} fill={inkColour('paper', palette)} />
      <Marks marks={page.marks} palette={palette} />
    </svg>
  );
});

interface MarksProps {
  readonly marks: readonly Mark[];
  readonly palette: Palette;
}

function Marks({ marks, palette }: MarksProps) {
  return marks.map((mark, i) => {
    if (mark.kind === 'path')
      // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a page have no name and keep their order
      return <PathPicture key={i} mark={mark} palette={palette} />;
    if (mark.kind === 'text')
      // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a page have no name and keep their order
      return <TextPicture key={i} mark={mark} palette={palette} />;
    // biome-ignore lint/suspicious/noArrayIndexKey: the marks of a page have no name and keep their order
    return <GroupPicture key={i} mark={mark} palette={palette} />;
  });
}

function PathPicture({ mark: { strokes, fill, line }, palette }: { mark: PathMark; palette: Palette }) {
  const colour = (ink: Ink) => inkColour(ink, palette);
  return (
    <path
      d={pathData(strokes)}
      fill={fill ? colour(fill) : 'none'}
      fillRule="evenodd"
      stroke={line ? colour(line.ink) : undefined}
      strokeWidth={line?.width}
      strokeDasharray={line?.dashes?.join(' ')}
    />
  );
}

function TextPicture({ mark, palette }: { mark: TextMark; palette: Palette }) {
  const [x, y] = mark.spot;
  return (
    <text
      x={x}
      y={y}
      fontSize={mark.size}
      fontWeight={mark.bold ? 700 : 400}
      textAnchor={mark.align ?? 'start'}
      fill={inkColour(mark.ink ?? 'ink', palette)}
      transform={mark.turned ? `rotate(${mark.turned} ${x} ${y})` : undefined}
    >
      {mark.text}
    </text>
  );
}

function GroupPicture({ mark, palette }: { mark: GroupMark; palette: Palette }) {
  const id = useId();
  if (!mark.clip)
    return (
      <g>
        <Marks marks={mark.marks} palette={palette} />
      </g>
    );
  return (
    <g clipPath={`url(#${id})`}>
      <clipPath id={id}>
        <path d={pathData(mark.clip)} clipRule="evenodd" />
      </clipPath>
      <Marks marks={mark.marks} palette={palette} />
    </g>
  );
}

/** Strokes as SVG path data, millimetres with three decimals. */
function pathData(strokes: readonly Stroke[]): string {
  const number = (value: number) => Number(value.toFixed(3));
  return strokes
    .map(({ spots, closed }) => `M${spots.map(([x, y]) => `${number(x)} ${number(y)}`).join('L')}${closed ? 'Z' : ''}`)
    .join('');
}
