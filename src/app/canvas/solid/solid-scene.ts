import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  EdgesGeometry,
  Group,
  HemisphereLight,
  Matrix4,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Raycaster,
  Scene,
  Vector2,
  Vector3,
  WebGLRenderer,
} from 'three';
import { LineMaterial } from 'three/addons/lines/LineMaterial.js';
import { LineSegments2 } from 'three/addons/lines/LineSegments2.js';
import { LineSegmentsGeometry } from 'three/addons/lines/LineSegmentsGeometry.js';
import { bedLines } from './bed-lines.ts';
import { ClashSigns } from './clash-signs.ts';
import { fitEye, LENS_DEGREES } from './fit-eye.ts';
import { letterTops } from './letter-tops.ts';
import { loopLines } from './loop-lines.ts';
import type { ShownSolid, SolidColours, SolidMesh, SolidPicture } from './solid-picture.ts';
import type { TurnedView } from './turned-view.ts';
import { withoutLetters } from './without-letters.ts';

/** Faces that meet at more than this are seen to meet in an edge, degrees; chords of an arc meet at less. */
const EDGE_DEGREES = 28;
const THIN = 1.3;
const HEAVY = 3;
/** How much is seen of what is seen through. */
const FAINT = 0.35;
/** At most so many pixels of the screen a CSS pixel. */
const MOST_DENSE = 2;

/** Which of the two ends along each axis. */
const CORNERS = [0, 1, 2, 3, 4, 5, 6, 7].map((n) => [n & 1, n & 2, n & 4] as const);

interface Drawn {
  readonly group: Group;
  readonly mesh: Mesh<BufferGeometry, [body: MeshLambertMaterial, letters: MeshLambertMaterial]>;
  readonly lines: LineSegments2;
}

/** A place on the canvas, CSS pixels from its upper left corner. */
export interface ScreenPlace {
  readonly x: number;
  readonly y: number;
}

/**
 * Solids on a canvas. It draws when told to, never by itself. Built apart from the page's start: only what imports this
 * file loads the library.
 */
export class SolidScene {
  private readonly renderer: WebGLRenderer;
  private readonly scene = new Scene();
  private readonly camera = new PerspectiveCamera(LENS_DEGREES);
  private readonly lamp = new DirectionalLight(0xffffff, 1.7);
  private readonly drawn = new Map<string, Drawn>();
  private readonly shapes = new WeakMap<SolidMesh, { faces: BufferGeometry; edges: LineSegmentsGeometry }>();
  private readonly thin = new LineMaterial({ linewidth: THIN });
  private readonly heavy = new LineMaterial({ linewidth: HEAVY });
  private readonly bed = new LineSegments2(new LineSegmentsGeometry(), new LineMaterial({ linewidth: 1 }));
  private readonly target = new LineSegments2(new LineSegmentsGeometry(), this.heavy);
  private readonly clashes = new ClashSigns();
  private bedSizes = '';
  private aimed = '';
  private width = 1;
  private height = 1;

  /** Throws where the browser gives the canvas no WebGL. */
  constructor(canvas: HTMLCanvasElement) {
    const context = canvas.getContext('webgl2', { antialias: true, alpha: false });
    if (!context) throw new Error('no WebGL');
    this.renderer = new WebGLRenderer({ canvas, context, antialias: true });
    this.camera.add(this.lamp);
    this.scene.add(this.camera, new HemisphereLight(0xffffff, 0xa8a8a8, 1.9));
    this.scene.add(this.bed, this.target, this.clashes.group);
    // Over the left shoulder, as on a technical drawing.
    this.lamp.position.set(-0.5, 0.8, 1);
    this.scene.add(this.lamp.target);
    this.target.matrixAutoUpdate = false;
  }

  /** The size of the picture in CSS pixels. */
  resize(width: number, height: number): void {
    this.width = Math.max(1, width);
    this.height = Math.max(1, height);
    this.renderer.setPixelRatio(Math.min(MOST_DENSE, devicePixelRatio || 1));
    this.renderer.setSize(this.width, this.height, false);
  }

  paint(colours: SolidColours): void {
    this.scene.background = new Color(colours.ground);
    this.thin.color.set(colours.edge);
    this.heavy.color.set(colours.pick);
    this.bed.material.color.set(colours.bed);
    this.clashes.paint(colours);
  }

  /** Puts the solids of a picture in, takes others out; what is there already is only moved. */
  show(picture: SolidPicture): void {
    const left = new Set(this.drawn.keys());
    for (const solid of picture.solids) {
      this.put(solid);
      left.delete(solid.id);
    }
    for (const id of left) this.take(id);
    this.layBeds(picture.beds);
    this.aimAt(picture.target);
    this.clashes.show(picture.clashes);
  }

  /** Draws once, from where a view says. */
  draw(picture: SolidPicture, view: TurnedView): void {
    const aspect = this.width / this.height;
    const eye = fitEye(picture.room, view, aspect);
    this.camera.aspect = aspect;
    this.camera.zoom = eye.zoom;
    this.camera.near = eye.near;
    this.camera.far = eye.far;
    this.camera.position.set(...eye.at);
    this.camera.up.set(...eye.up);
    this.camera.lookAt(new Vector3(...eye.towards));
    this.camera.updateProjectionMatrix();
    this.lamp.target.position.set(...eye.towards);
    this.renderer.render(this.scene, this.camera);
  }

  /** The solid under a place of the canvas, CSS pixels from its upper left corner; null where there is none. */
  solidAt(x: number, y: number): string | null {
    const caster = new Raycaster();
    caster.setFromCamera(new Vector2((x / this.width) * 2 - 1, 1 - (y / this.height) * 2), this.camera);
    const [hit] = caster.intersectObjects(
      [...this.drawn.values()].map(({ mesh }) => mesh),
      false,
    );
    return hit ? hit.object.name : null;
  }

  /** The middle of the upper end of a solid on the canvas as last drawn; null where it is not shown. */
  placeOf(id: string): ScreenPlace | null {
    const drawn = this.drawn.get(id);
    const box = drawn?.mesh.geometry.boundingBox;
    if (!drawn || !box) return null;
    const { min, max } = box;
    const corners = CORNERS.map(([x, y, z]) => new Vector3(x ? max.x : min.x, y ? max.y : min.y, z ? max.z : min.z));
    const places = corners.map((corner) => this.pixelOf(corner.applyMatrix4(drawn.group.matrix)));
    const xs = places.map(({ x }) => x);
    return { x: (Math.min(...xs) + Math.max(...xs)) / 2, y: Math.min(...places.map(({ y }) => y)) };
  }

  /** How far a millimetre along a direction at the middle of a solid is on the screen, CSS pixels, y down. */
  pixelsAlong(id: string, direction: readonly [number, number, number]): ScreenPlace | null {
    const drawn = this.drawn.get(id);
    const box = drawn?.mesh.geometry.boundingBox;
    if (!drawn || !box) return null;
    const middle = box.getCenter(new Vector3()).applyMatrix4(drawn.group.matrix);
    const from = this.pixelOf(middle.clone());
    const to = this.pixelOf(middle.add(new Vector3(...direction)));
    return { x: to.x - from.x, y: to.y - from.y };
  }

  /** The picture as last drawn, in a size of its own, as PNG; null where the browser gives none. */
  async still(picture: SolidPicture, view: TurnedView, width: number, height: number): Promise<Blob | null> {
    const before = [this.width, this.height] as const;
    this.width = width;
    this.height = height;
    this.renderer.setPixelRatio(1);
    this.renderer.setSize(width, height, false);
    this.draw(picture, view);
    const canvas = this.renderer.domElement;
    // The bits are taken before the browser clears them for the next frame.
    const blob = new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    this.resize(...before);
    this.draw(picture, view);
    return blob;
  }

  /** Gives back what the graphics card holds. */
  dispose(): void {
    for (const id of [...this.drawn.keys()]) this.take(id);
    this.clashes.dispose();
    for (const { geometry } of [this.bed, this.target]) geometry.dispose();
    this.renderer.dispose();
  }

  private pixelOf(point: Vector3): ScreenPlace {
    const at = point.project(this.camera);
    return { x: ((at.x + 1) / 2) * this.width, y: ((1 - at.y) / 2) * this.height };
  }

  private put(solid: ShownSolid): void {
    const known = this.drawn.get(solid.id);
    const shape = this.shapeOf(solid.mesh);
    const drawn = known && known.mesh.geometry === shape.faces ? known : this.make(solid.id, shape);
    const { mesh, lines, group } = drawn;
    mesh.material.forEach((material, i) => {
      material.color.set(i === 0 ? solid.fill : solid.letterFill);
      // The library makes another program of it.
      if (material.transparent !== Boolean(solid.faint)) material.needsUpdate = true;
      material.transparent = Boolean(solid.faint);
      material.opacity = solid.faint ? FAINT : 1;
      material.depthWrite = !solid.faint;
    });
    lines.material = solid.picked ? this.heavy : this.thin;
    lines.renderOrder = solid.picked ? 2 : 1;
    group.matrix.copy(new Matrix4().fromArray([...solid.pose]));
    group.matrixWorldNeedsUpdate = true;
  }

  private make(id: string, shape: { faces: BufferGeometry; edges: LineSegmentsGeometry }): Drawn {
    this.take(id);
    const drawn: Drawn = {
      group: new Group(),
      mesh: new Mesh(shape.faces, [faceMaterial(), faceMaterial()]),
      lines: new LineSegments2(shape.edges, this.thin),
    };
    drawn.mesh.name = id;
    drawn.group.matrixAutoUpdate = false;
    drawn.group.add(drawn.mesh, drawn.lines);
    this.scene.add(drawn.group);
    this.drawn.set(id, drawn);
    return drawn;
  }

  private take(id: string): void {
    const drawn = this.drawn.get(id);
    if (!drawn) return;
    this.scene.remove(drawn.group);
    for (const material of drawn.mesh.material) material.dispose();
    drawn.mesh.geometry.dispose();
    drawn.lines.geometry.dispose();
    this.drawn.delete(id);
  }

  /** Faces and edges of a mesh, made once; the card's copies are made again where they were given back. */
  private shapeOf(mesh: SolidMesh): { faces: BufferGeometry; edges: LineSegmentsGeometry } {
    const known = this.shapes.get(mesh);
    if (known) return known;
    const faces = new BufferGeometry();
    faces.setAttribute('position', new BufferAttribute(mesh.positions, 3));
    const { triangles, topsFrom } = letterTops(mesh);
    faces.setIndex(new BufferAttribute(triangles, 1));
    faces.addGroup(0, topsFrom * 3, 0);
    faces.addGroup(topsFrom * 3, triangles.length - topsFrom * 3, 1);
    faces.computeBoundingBox();
    faces.computeBoundingSphere();
    // Most triangles are those of letters, and none of their edges is drawn.
    const body = new BufferGeometry();
    body.setAttribute('position', faces.getAttribute('position'));
    body.setIndex(new BufferAttribute(mesh.triangles.subarray(0, 3 * mesh.lettersFrom), 1));
    const sharp = new EdgesGeometry(body, EDGE_DEGREES);
    const edges = new LineSegmentsGeometry();
    edges.setPositions(withoutLetters(sharp.getAttribute('position').array, mesh));
    sharp.dispose();
    const made = { faces, edges };
    this.shapes.set(mesh, made);
    return made;
  }

  private aimAt(target: SolidPicture['target']): void {
    this.target.visible = target !== null;
    if (!target) return;
    const loops = JSON.stringify(target.loops);
    if (loops !== this.aimed) {
      this.aimed = loops;
      this.target.geometry.dispose();
      this.target.geometry = new LineSegmentsGeometry();
      this.target.geometry.setPositions(target.loops.flatMap(loopLines));
    }
    this.target.matrix.copy(new Matrix4().fromArray([...target.pose]));
    this.target.matrixWorldNeedsUpdate = true;
  }

  private layBeds(beds: SolidPicture['beds']): void {
    this.bed.visible = beds.length > 0;
    const sizes = JSON.stringify(beds);
    if (beds.length === 0 || sizes === this.bedSizes) return;
    this.bedSizes = sizes;
    this.bed.geometry.dispose();
    this.bed.geometry = new LineSegmentsGeometry();
    this.bed.geometry.setPositions(beds.flatMap(bedLines));
  }
}

/** Faces lie a hair behind the lines that are their edges. */
function faceMaterial(): MeshLambertMaterial {
  return new MeshLambertMaterial({
    flatShading: true,
    polygonOffset: true,
    polygonOffsetFactor: 1,
    polygonOffsetUnits: 1,
  });
}
