import { readingText, type Units } from '../../../../family/length-text.ts';
import { middleOf } from '../../../../family/plug-face.ts';
import { clashPlace } from '../../../../teach/clash-place.ts';
import { keepApart } from '../../../../teach/keep-apart.ts';
import type { Doors } from '../../../state/doors.ts';
import { halfSizeOf } from '../../../state/teach/half-size.ts';
import type { TaughtPair } from '../use-teaching.ts';
import styles from './slide.module.css';

/** Where a mark points, and what its plate says, in pixels of the picture. */
interface Plate {
  readonly x: number;
  readonly y: number;
  readonly onLeft: boolean;
  readonly words: string;
  /** In one line, or in two where there is little room. */
  readonly figure: readonly string[];
  readonly blocks: boolean;
  /** Middle of the plate. */
  top: number;
}

/** A room takes in two reasons at once, not more. */
const MOST_PLATES = 2;

interface PairMarksProps {
  readonly pair: TaughtPair;
  readonly pxPerMm: number;
  readonly width: number;
  readonly height: number;
  /** Height of a line of type, in pixels. */
  readonly line: number;
  readonly units: Units;
  readonly partName: Doors['partName'];
}

/** A letter of a bold line is about so wide, as a share of its height. */
const LETTER = 0.54;

/** What bites, or where the gap is narrowest: a ring round the place and a plate beside the keyway. */
export function PairMarks(props: PairMarksProps) {
  const { pair, pxPerMm, width, height, line } = props;
  const plates = platesOf(props);
  const away = halfSizeOf(pair.opening).x * pxPerMm + 2.2 * line;
  const whole = widthOf(plates.flatMap(({ words, figure }) => [words, figure.join(' ')])) * line;
  // Where there is no room beside the keyway, the figure goes in two lines.
  const isNarrow = whole > width / 2 - away - 4;
  const wide = isNarrow ? widthOf(plates.flatMap(({ words, figure }) => [words, ...figure])) * line : whole;
  const lines = isNarrow ? Math.max(...plates.map(({ figure }) => figure.length)) : 1;
  const tall = line * (1.5 + 1.2 * lines);
  return (
    <svg className={styles.marks} width={width} height={height} aria-hidden="true">
      {plates.map(({ x, y, onLeft, words, figure, blocks, top }) => {
        const left = onLeft ? Math.max(4, width / 2 - away - wide) : Math.min(width - wide - 4, width / 2 + away);
        return (
          <g key={`${words} ${x} ${y}`} data-blocks={blocks}>
            <path className={styles.leader} d={`M${x} ${y}L${onLeft ? left + wide : left} ${top}`} />
            <rect className={styles.plate} x={left} y={top - tall / 2} width={wide} height={tall} />
            <text className={styles.plateWords} x={left + line * 0.6} y={top - tall / 2 + line * 1.1} fontSize={line}>
              {words}
            </text>
            {(isNarrow ? figure : [figure.join(' ')]).map((part, i) => (
              <text
                key={part}
                className={styles.plateFigure}
                x={left + line * 0.6}
                y={top - tall / 2 + line * (2.3 + 1.2 * i)}
                fontSize={line}
              >
                {part}
              </text>
            ))}
          </g>
        );
      })}
      {plates.map(({ x, y, blocks }) => (
        <g key={`${x} ${y}`} data-blocks={blocks}>
          <circle className={styles.ring} cx={x} cy={y} r={line * 0.62} />
        </g>
      ))}
    </svg>
  );
}

/** How wide a plate with these lines is, in lines of type. */
function widthOf(lines: readonly string[]): number {
  return Math.max(0, ...lines.map((text) => text.length)) * LETTER + 1.1;
}

function platesOf({ pair, pxPerMm, width, height, line, units, partName }: PairMarksProps): Plate[] {
  const { opening, explanation } = pair;
  const middle = middleOf(opening);
  const toX = (nm: number) => width / 2 + (nm / 1e6 - middle.x) * pxPerMm;
  const toY = (nm: number) => height / 2 - (nm / 1e6 - middle.y) * pxPerMm;
  const collisions = explanation.collisions.slice(0, MOST_PLATES).map((collision) => {
    const at = clashPlace(collision);
    const figure = [readingText(collision.depth, units), 'too deep'];
    return { x: toX(at.x), y: toY(at.y), words: partName(collision), figure, blocks: true };
  });
  const [pinch] = explanation.contacts;
  const contacts = pinch
    ? [
        {
          x: (toX(pinch.onBlank.x) + toX(pinch.onOpening.x)) / 2,
          y: (toY(pinch.onBlank.y) + toY(pinch.onOpening.y)) / 2,
          words: 'narrowest gap',
          figure: [readingText(pinch.gap, units)],
          blocks: false,
        },
      ]
    : [];
  const plates = [...collisions, ...contacts].map((mark) => ({ ...mark, onLeft: mark.x < width / 2, top: mark.y }));
  for (const side of [true, false])
    spread(
      plates.filter(({ onLeft }) => onLeft === side),
      line * 4.3,
      height,
    );
  return plates;
}

/** Plates of one side stand below each other, none over the edge. */
function spread(plates: Plate[], step: number, height: number): void {
  plates.sort((a, b) => a.y - b.y);
  const wanted = plates.map(({ top }) => top);
  for (const [i, top] of keepApart(wanted, step, height).entries()) plates[i].top = top;
}
