import type { Placement } from '../../../fit/fit.ts';
import type { Point } from '../../../geom/point.ts';
import type { Region } from '../../../geom/region.ts';
import { placed } from '../../tools/placed-points.ts';
import { type DrawingSheet, pixelsOf } from '../drawing-sheet.ts';
import { Group, Line } from '../konva-parts.ts';

/** Outlines at the ends of the tolerance bands. */
export interface BandLinesShapes {
  readonly fullest: readonly (readonly Point[])[];
  readonly leanest: readonly (readonly Point[])[];
  readonly widest: Region;
  readonly narrowest: Region;
}

interface BandLinesProps {
  readonly shapes: BandLinesShapes;
  /** Half the width of each band, nanometres. */
  readonly blank: number;
  readonly opening: number;
  readonly placement: Placement;
  readonly sheet: DrawingSheet;
}

/** The fullest and leanest blank and the widest and narrowest keyway, as thin dashed outlines. */
export function BandLines({ shapes, blank, opening, placement, sheet }: BandLinesProps) {
  const { palette } = sheet;
  const entrant = blank > 0 ? [...shapes.fullest, ...shapes.leanest].map((ring) => placed(ring, placement)) : [];
  const keyway =
    opening > 0 ? [...shapes.widest, ...shapes.narrowest].flatMap((patch) => [patch.outer, ...patch.holes]) : [];
  return (
    <Group>
      {keyway.map((loop, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the outlines of a band have no identity
        <Dashed key={`keyway ${i}`} loop={loop} colour={palette.ink} dash={[9, 6]} sheet={sheet} />
      ))}
      {entrant.map((loop, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the outlines of a band have no identity
        <Dashed key={`blank ${i}`} loop={loop} colour={palette.ink} dash={[3, 4]} sheet={sheet} />
      ))}
    </Group>
  );
}

interface DashedProps {
  readonly loop: readonly Point[];
  readonly colour: string;
  readonly dash: number[];
  readonly sheet: DrawingSheet;
}

/** A dashed line on a paler ground line, so that it shows on metal, on the blade and in the keyway alike. */
function Dashed({ loop, colour, dash, sheet }: DashedProps) {
  const points = pixelsOf(loop, sheet.view);
  return (
    <>
      <Line points={points} closed stroke={sheet.palette.paperLit} strokeWidth={2.5} />
      <Line points={points} closed stroke={colour} strokeWidth={1.5} dash={dash} />
    </>
  );
}
