import type { Units } from '../../../family/length-text.ts';
import type { PlugFace } from '../../../family/plug-face.ts';
import type { Explanation } from '../../../fit/explain-placement.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Stage } from '../konva-parts.ts';
import { BlankLayer, type BlankScene } from './blank-layer.tsx';
import { KeywayLayer } from './keyway-layer.tsx';
import { LitWard, type LitWardShapes } from './lit-ward.tsx';

interface CompareStageProps {
  readonly opening: Profile;
  readonly face: PlugFace;
  readonly scene: BlankScene;
  /** The ward that is pointed at in the readings; null for none. */
  readonly litWard: LitWardShapes | null;
  readonly units: Units;
  readonly sheet: DrawingSheet;
  partName(part: Explanation['collisions'][number] | Explanation['contacts'][number]): string;
}

/** The canvas of Compare: a layer that stands still and one that moves. What it shows is told in words beside it. */
export function CompareStage({ opening, face, scene, litWard, units, sheet, partName }: CompareStageProps) {
  return (
    <div aria-hidden="true">
      <Stage width={sheet.size.width} height={sheet.size.height} listening={false}>
        <KeywayLayer opening={opening} region={scene.shapes.opening} face={face} sheet={sheet} />
        <BlankLayer scene={scene} units={units} sheet={sheet} partName={partName} />
        {litWard && <LitWard shapes={litWard} sheet={sheet} />}
      </Stage>
    </div>
  );
}
