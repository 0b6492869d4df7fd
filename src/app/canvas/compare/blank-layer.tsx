import { useMemo } from 'react';
import type { Units } from '../../../family/length-text.ts';
import type { Explanation } from '../../../fit/explain-placement.ts';
import type { Placement } from '../../../fit/fit.ts';
import type { Region } from '../../../geom/region.ts';
import type { Ring } from '../../../geom/ring.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import type { Pushed } from '../../tools/compare/pushing.ts';
import { standing } from '../../tools/placed-points.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { HatchedRegion } from '../hatched-region.tsx';
import { Group, Layer } from '../konva-parts.ts';
import { ScaleBar } from '../scale-bar.tsx';
import { BandLines, type BandLinesShapes } from './band-lines.tsx';
import { ClashTags } from './clash-tags.tsx';
import { CornerHandles, type ShownCorners } from './corner-handles.tsx';
import { HeightRuler } from './height-ruler.tsx';
import { PinchMarks } from './pinch-marks.tsx';
import { PushedBlank } from './pushed-blank.tsx';

/** What the moving layer of Compare shows. */
export interface BlankScene {
  readonly kind: ProfileKind;
  /** As the conditions leave them. */
  readonly shapes: { readonly opening: Region; readonly entrant: readonly Ring[] };
  readonly placement: Placement;
  readonly explanation: Explanation;
  /** The outlines at the ends of the tolerance bands with half the width of each; null where there are no bands. */
  readonly bands: { readonly shapes: BandLinesShapes; readonly blank: number; readonly opening: number } | null;
  readonly corners: ShownCorners | null;
  /** The push that is under way or has ended, with the seat that it ends in; null where none was begun. */
  readonly push: { readonly pushed: Pushed; readonly seat: Placement } | null;
}

interface BlankLayerProps {
  readonly scene: BlankScene;
  readonly units: Units;
  readonly sheet: DrawingSheet;
  partName(part: Explanation['collisions'][number] | Explanation['contacts'][number]): string;
}

/** What moves in Compare: the blank, what it collides with, what limits it, and the ruler on which collisions are barred. */
export function BlankLayer({ scene, units, sheet, partName }: BlankLayerProps) {
  const { kind, shapes, placement, explanation, bands, corners, push } = scene;
  const { outlines, blankBox, openingBox } = useMemo(
    () => standing(outersOf(shapes.opening), shapes.entrant, placement),
    [shapes, placement],
  );
  const pushed = push?.pushed ?? null;
  const explained = pushed === null || pushed.phase === 'stopped';
  const lit = pushed === null || (pushed.phase === 'stopped' && pushed.lit);
  return (
    <Layer listening={false}>
      <PushedBlank
        outlines={push && pushed?.phase === 'in' ? seated(scene, push.seat, pushed.down) : outlines}
        pushed={pushed}
        fill={kind === 'tool' ? sheet.palette.steel : sheet.palette.brass}
        sheet={sheet}
      />
      {lit &&
        explanation.collisions.map((collision, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: collisions have no identity from one placement to the next
          <HatchedRegion key={i} region={collision.region} sheet={sheet} />
        ))}
      {bands && !push && <BandLines {...bands} placement={placement} sheet={sheet} />}
      <HeightRuler
        blankBox={blankBox}
        openingBox={openingBox}
        collisions={explained ? explanation.collisions : []}
        units={units}
        sheet={sheet}
      />
      {explained && (
        <Group>
          <PinchMarks contacts={explanation.contacts} openingRight={openingBox.maxX} units={units} sheet={sheet} />
          <ClashTags
            collisions={explanation.collisions}
            openingBox={openingBox}
            units={units}
            sheet={sheet}
            partName={partName}
          />
        </Group>
      )}
      {corners && <CornerHandles corners={corners} sheet={sheet} />}
      <ScaleBar units={units} sheet={sheet} />
    </Layer>
  );
}

function outersOf(region: Region): Ring[] {
  return region.map(({ outer }) => outer);
}

/** The outlines on their way from where they were pushed in to the seat. */
function seated({ shapes, placement }: BlankScene, seat: Placement, down: number) {
  const between = (from: number, to: number) => from + (to - from) * down;
  const at = { ...placement, x: between(placement.x, seat.x), y: between(placement.y, seat.y) };
  return standing(outersOf(shapes.opening), shapes.entrant, at).outlines;
}
