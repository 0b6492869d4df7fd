import { useMemo } from 'react';
import type { Explanation } from '../../fit/explain-placement.ts';
import type { Placement } from '../../fit/fit.ts';
import type { Profile } from '../../profile/profile.ts';
import type { Units } from '../state/length-text.ts';
import { standing } from '../tools/placed-points.ts';
import { ClashTags } from './clash-tags.tsx';
import { type DrawingSheet, pixelsOf } from './drawing-sheet.ts';
import { HatchedRegion } from './hatched-region.tsx';
import { HeightRuler } from './height-ruler.tsx';
import { Layer, Line } from './konva-parts.ts';
import { PinchMarks } from './pinch-marks.tsx';
import { ScaleBar } from './scale-bar.tsx';

interface BlankLayerProps {
  readonly opening: Profile;
  readonly entrant: Profile;
  readonly placement: Placement;
  readonly explanation: Explanation;
  readonly units: Units;
  readonly sheet: DrawingSheet;
  partName(part: Explanation['collisions'][number] | Explanation['contacts'][number]): string;
}

/** What moves in Compare: the blank, what it collides with, the pinch, and the ruler that stands on its back. */
export function BlankLayer({ opening, entrant, placement, explanation, units, sheet, partName }: BlankLayerProps) {
  const { view, palette } = sheet;
  const { points, blankBox, openingBox } = useMemo(
    () => standing(opening.ring, entrant.ring, placement),
    [opening, entrant, placement],
  );
  const fill = entrant.kind === 'tool' ? palette.steel : palette.brass;
  return (
    <Layer listening={false}>
      <Line
        points={pixelsOf(points, view)}
        closed
        fill={fill}
        stroke={palette.brassEdge}
        strokeWidth={2.5}
        lineJoin="round"
      />
      {explanation.collisions.map((collision, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: collisions have no identity from one placement to the next
        <HatchedRegion key={i} region={collision.region} sheet={sheet} />
      ))}
      <HeightRuler
        blankBox={blankBox}
        openingLeft={openingBox.minX}
        collisions={explanation.collisions}
        units={units}
        sheet={sheet}
      />
      <PinchMarks contacts={explanation.contacts} openingRight={openingBox.maxX} units={units} sheet={sheet} />
      <ClashTags
        collisions={explanation.collisions}
        openingBox={openingBox}
        units={units}
        sheet={sheet}
        partName={partName}
      />
      <ScaleBar units={units} sheet={sheet} />
    </Layer>
  );
}
