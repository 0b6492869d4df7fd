import {
  CanvasTexture,
  Color,
  DoubleSide,
  Group,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
  Path,
  RepeatWrapping,
  Shape,
  ShapeGeometry,
  SRGBColorSpace,
  Vector2,
} from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import { loopLines } from './loop-lines.ts';
import type { ShownClash, SolidColours, SolidPicture } from './solid-picture.ts';

/** A stripe and a gap of the hatch, millimetres as printed. */
const HATCH_MM = 1.6;
const TEXTURE = 64;

/** Overlaps, hatched and outlined, seen through whatever lies before them. */
export class ClashSigns {
  readonly group = new Group();
  private readonly hatch = new CanvasTexture(document.createElement('canvas'));
  private readonly fill = new MeshBasicMaterial({ map: this.hatch, side: DoubleSide, depthTest: false });
  private readonly edge = new LineMaterial({ linewidth: 2.5, depthTest: false });

  constructor() {
    this.group.matrixAutoUpdate = false;
    this.hatch.wrapS = RepeatWrapping;
    this.hatch.wrapT = RepeatWrapping;
    this.hatch.colorSpace = SRGBColorSpace;
    // The corners of a flat shape are its places in the picture as well, in millimetres.
    this.hatch.repeat = new Vector2(1 / HATCH_MM, 1 / HATCH_MM);
    this.fill.transparent = true;
    this.edge.transparent = true;
  }

  paint({ clash, clashGround, clashEdge }: SolidColours): void {
    const canvas = this.hatch.image as HTMLCanvasElement;
    canvas.width = TEXTURE;
    canvas.height = TEXTURE;
    const pen = canvas.getContext('2d');
    if (pen) stripe(pen, clash, clashGround);
    this.hatch.dispose();
    this.hatch.needsUpdate = true;
    this.edge.color = new Color(clashEdge);
  }

  show(clashes: SolidPicture['clashes']): void {
    this.empty();
    if (!clashes) return;
    for (const part of clashes.parts) this.add(part);
    this.group.matrix.copy(new Matrix4().fromArray([...clashes.pose]));
    this.group.matrixWorldNeedsUpdate = true;
  }

  dispose(): void {
    this.empty();
    this.hatch.dispose();
    this.fill.dispose();
    this.edge.dispose();
  }

  private add({ outer, holes }: ShownClash): void {
    const shape = new Shape(outer.map(({ x, y }) => new Vector2(x, y)));
    shape.holes = holes.map((hole) => new Path(hole.map(({ x, y }) => new Vector2(x, y))));
    const face = new Mesh(new ShapeGeometry(shape), this.fill);
    face.renderOrder = 10;
    const lines = new LineSegments2(new LineSegmentsGeometry(), this.edge);
    lines.geometry.setPositions([outer, ...holes].flatMap(loopLines));
    lines.renderOrder = 11;
    this.group.add(face, lines);
  }

  private empty(): void {
    for (const child of [...this.group.children]) {
      this.group.remove(child);
      if (child instanceof Mesh) child.geometry.dispose();
    }
  }
}

/** Stripes that go on where the picture repeats. */
function stripe(pen: CanvasRenderingContext2D, clash: string, ground: string): void {
  pen.fillStyle = ground;
  pen.fillRect(0, 0, TEXTURE, TEXTURE);
  pen.strokeStyle = clash;
  pen.lineWidth = TEXTURE * 0.36;
  for (const start of [-1, 0, 1]) {
    pen.beginPath();
    pen.moveTo(start * TEXTURE - TEXTURE / 2, -TEXTURE / 2);
    pen.lineTo(start * TEXTURE + TEXTURE * 1.5, TEXTURE * 1.5);
    pen.stroke();
  }
}
