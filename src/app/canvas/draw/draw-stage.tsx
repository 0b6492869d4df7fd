import type { ReactNode } from 'react';
import type { Units } from '../../../family/length-text.ts';
import { middleOf, type PlugFace, plugFacePath } from '../../../family/plug-face.ts';
import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Ghost } from '../../tools/draw/ghosts.ts';
import type { Snapped } from '../../tools/draw/snap-point.ts';
import type { UnderPointer } from '../../tools/draw/under-pointer.ts';
import { toPixels } from '../../tools/drawing-view.ts';
import type { DrawingSheet } from '../drawing-sheet.ts';
import { Layer, Path, Stage } from '../konva-parts.ts';
import { DrawGhosts } from './draw-ghosts.tsx';
import { DrawGrid, DrawRuler } from './draw-grid.tsx';
import { DrawHandles, DrawOutline } from './draw-outline.tsx';
import { DrawPen, type PenScene } from './draw-pen.tsx';
import { DrawReadOut, PickBox, SnapMark } from './draw-read-out.tsx';
import { DrawRefused } from './draw-refused.tsx';

const NM_PER_MM = 1e6;

/** What the Draw view shows. */
export interface DrawScene {
  readonly profile: Profile;
  readonly vertices: readonly Vertex[];
  /** False while a section is drawn that is not there yet: the picked one is none of its business. */
  readonly outlined: boolean;
  /** Whether vertices have handles: not while the pen is in hand, nor while grooves are edited. */
  readonly handles: boolean;
  readonly chosen: readonly number[];
  readonly under: UnderPointer;
  readonly ghosts: readonly Ghost[];
  /** The plug's end round an edited keyway as it was when the keyway was picked; null for a blank. */
  readonly face: { readonly face: PlugFace; readonly round: Profile } | null;
  readonly refused: { readonly outline: readonly Point[]; readonly at: readonly Point[] } | null;
  readonly box: { readonly corner: Point; readonly to: Point } | null;
  readonly snapped: Snapped | null;
  /** What is read where the hand is; null while nothing is dragged. */
  readonly readOut: { readonly at: Point; readonly lines: readonly string[] } | null;
  readonly pen: PenScene | null;
}

interface DrawStageProps {
  readonly scene: DrawScene;
  readonly units: Units;
  readonly step: number | null;
  readonly sheet: DrawingSheet;
  /** What lies under everything, such as a picture to trace. */
  readonly underlay?: ReactNode;
  /** What is drawn on top, such as the handles of grooves. */
  readonly children?: ReactNode;
}

/** The canvas of the Draw view: a layer that stands still and one that moves. What it shows is told in words beside it. */
export function DrawStage({ scene, units, step, sheet, underlay, children }: DrawStageProps) {
  const { profile, vertices, refused, box, snapped, readOut, pen } = scene;
  return (
    <div aria-hidden="true">
      <Stage width={sheet.size.width} height={sheet.size.height} listening={false}>
        <Layer listening={false}>
          {underlay}
          {scene.face && <Face {...scene.face} filled={!underlay} sheet={sheet} />}
          <DrawGrid units={units} step={step} sheet={sheet} />
          <DrawGhosts ghosts={scene.ghosts} sheet={sheet} />
        </Layer>
        <Layer listening={false}>
          {scene.outlined && (
            <DrawOutline kind={profile.kind} ring={profile.ring} faint={!!pen || !!underlay} sheet={sheet} />
          )}
          {scene.handles && <DrawHandles vertices={vertices} chosen={scene.chosen} under={scene.under} sheet={sheet} />}
          {refused && <DrawRefused outline={refused.outline} closed crossings={refused.at} sheet={sheet} />}
          {pen && <DrawPen pen={pen} sheet={sheet} />}
          {box && <PickBox {...box} sheet={sheet} />}
          {snapped && <SnapMark snapped={snapped} sheet={sheet} />}
          {children}
          <DrawRuler units={units} sheet={sheet} />
          {readOut && <DrawReadOut {...readOut} sheet={sheet} />}
        </Layer>
      </Stage>
    </div>
  );
}

interface FaceProps {
  readonly face: PlugFace;
  readonly round: Profile;
  /** False over a picture, which it would hide. */
  readonly filled: boolean;
  readonly sheet: DrawingSheet;
}

function Face({ face, round, filled, sheet }: FaceProps) {
  const { view, palette } = sheet;
  const middle = middleOf(round);
  const { px, py } = toPixels(view, { x: middle.x * NM_PER_MM, y: middle.y * NM_PER_MM });
  const scale = view.scale * NM_PER_MM;
  return (
    <Path
      data={plugFacePath(face)}
      x={px}
      y={py}
      scaleX={scale}
      scaleY={-scale}
      strokeScaleEnabled={false}
      fill={filled ? palette.plug : undefined}
      stroke={palette.plugEdge}
      strokeWidth={2}
    />
  );
}
