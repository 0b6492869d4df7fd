import { readingText, type Units } from '../family/length-text.ts';
import { explainPlacement } from '../fit/explain-placement.ts';
import type { Fit } from '../fit/fit.ts';
import { partName } from '../fit/fit-sentence.ts';
import type { Point } from '../geom/point.ts';
import type { TextMeasure } from '../lettering/text-measure.ts';
import type { Profile } from '../profile/profile.ts';
import { clashPlace } from '../teach/clash-place.ts';
import { keepApart } from '../teach/keep-apart.ts';
import type { Ink } from './inks.ts';
import type { Mark, Spot } from './page.ts';
import { ASCENT, LEADING } from './paragraph.ts';
import { onPaper, type PartView, sizeOfRing } from './section-picture.ts';
import { circle, drawn, filled, polyline, rectangle } from './strokes.ts';

/** A room takes in two reasons at once, not more. */
const MOST_PLATES = 2;

/** Where a mark points, and what its plate says. */
interface Plate {
  readonly at: Spot;
  readonly onLeft: boolean;
  readonly lines: readonly string[];
  readonly ink: Ink;
  /** Middle of the plate. */
  y: number;
}

/** A pair as its marks are set. */
export interface MarkedPair {
  readonly entrant: Profile;
  readonly opening: Profile;
  readonly fit: Fit;
  readonly view: PartView;
  /** The picture's size, millimetres; its keyway stands in the middle. */
  readonly width: number;
  readonly height: number;
  readonly units: Units;
  /** Height of the em. */
  readonly size: number;
  readonly measure: TextMeasure;
}

/** What bites, or where the gap is narrowest: a ring round the place and a plate beside the keyway. */
export function pairMarks(pair: MarkedPair): Mark[] {
  const { width, height, size, measure, opening, view } = pair;
  const plates = platesOf(pair);
  const away = (sizeOfRing(opening.ring).width / 2) * view.scale + 2 * size;
  const widest = Math.max(0, ...plates.flatMap(({ lines }) => lines).map((line) => measure.width(line, size, true)));
  // Where there is not room enough beside the keyway, the plate's type gives way.
  const type = Math.min(size, (size * (width / 2 - away - 2)) / (widest + 1.2 * size));
  const tall = type * (2 * LEADING + 0.7);
  for (const side of [true, false])
    spread(
      plates.filter(({ onLeft }) => onLeft === side),
      tall + 0.5 * type,
      height,
    );
  return [
    ...plates.flatMap((plate) => plateMarks(plate, { type, tall, width, away, measure })),
    ...plates.flatMap(({ at, ink }) => {
      const ring = [circle(at[0], at[1], size * 0.62)];
      return [drawn(ring, 'paper', 2), drawn(ring, ink, 0.9)];
    }),
  ];
}

interface PlateStyle {
  readonly type: number;
  readonly tall: number;
  readonly width: number;
  readonly away: number;
  readonly measure: TextMeasure;
}

function plateMarks({ at, onLeft, lines, ink, y }: Plate, { type, tall, width, away, measure }: PlateStyle): Mark[] {
  const wide = Math.max(...lines.map((line) => measure.width(line, type, true))) + 1.2 * type;
  const left = onLeft ? width / 2 - away - wide : width / 2 + away;
  const top = y - tall / 2;
  return [
    drawn([polyline(at, [onLeft ? left + wide : left, y])], 'paper', 1.6),
    drawn([polyline(at, [onLeft ? left + wide : left, y])], ink, 0.7),
    filled([rectangle(left, top, wide, tall)], 'paper', { ink, width: 0.6 }),
    ...lines.map((text, i): Mark => {
      const spot = [left + 0.6 * type, top + 0.35 * type + type * (ASCENT + i * LEADING)] as const;
      return { kind: 'text', spot, text, size: type, bold: i === 1 };
    }),
  ];
}

function platesOf({ entrant, opening, fit, view, width, units }: MarkedPair): Plate[] {
  const { collisions, contacts } = explainPlacement(opening.ring, entrant.ring, fit.placement);
  const plate = (point: Point, lines: readonly string[], ink: Ink): Plate => {
    const at = onPaper(point, view);
    return { at, onLeft: at[0] < width / 2, lines, ink, y: at[1] };
  };
  const clashes = collisions
    .slice(0, MOST_PLATES)
    .map((clash) =>
      plate(clashPlace(clash), [partName(clash), `${readingText(clash.depth, units)} too deep`], 'blocked'),
    );
  const [pinch] = contacts;
  if (!pinch) return clashes;
  const { onBlank: a, onOpening: b } = pinch;
  return [plate({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }, ['narrowest gap', readingText(pinch.gap, units)], 'ink')];
}

/** Plates of one side stand below each other, none over the edge. */
function spread(plates: Plate[], step: number, height: number): void {
  plates.sort((a, b) => a.y - b.y);
  const wanted = plates.map(({ y }) => y);
  for (const [i, y] of keepApart(wanted, step, height).entries()) plates[i].y = y;
}
