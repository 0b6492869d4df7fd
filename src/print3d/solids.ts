// The one file that imports manifold-3d.
import type { Manifold, ManifoldToplevel } from 'manifold-3d';
import type { Place } from './display-set.ts';

/** A closed outline in millimetres, its first corner not repeated. */
export type Loop = readonly (readonly [x: number, y: number])[];

/** A solid in the workshop; closed and oriented whatever is done to it. */
export type Solid = Manifold;

/** The surface of a solid. */
export interface Surface {
  readonly positions: Float32Array;
  readonly triangles: Uint32Array;
  /** Number of the first triangle that was made by {@link SolidWorkshop.letters}; they are the last ones. */
  readonly lettersFrom: number;
}

/** Makes solids; everything that it made is gone after `clear`. */
export interface SolidWorkshop {
  /**
   * A prism between two heights. Outer outlines run counter-clockwise, holes clockwise; where they overlap they are
   * joined.
   */
  prism(outlines: readonly Loop[], bottom: number, top: number): Solid;
  /** The same of letters: outlines that run either way round, filled by the non-zero rule. */
  letters(outlines: readonly Loop[], bottom: number, top: number): Solid;
  /** Turned so that x becomes y, y becomes z and z becomes x: what lay on the bed stands on its edge, seen from the right. */
  stood(solid: Solid): Solid;
  moved(solid: Solid, by: Place): Solid;
  joined(solids: readonly Solid[]): Solid;
  /** What of `solid` is not in the others. */
  without(solid: Solid, others: readonly Solid[]): Solid;
  /** What of `solid` is in `other` as well. */
  within(solid: Solid, other: Solid): Solid;
  /** The same solid, worked out now: joining and the like wait until their result is asked for. */
  settled(solid: Solid): Solid;
  surface(solid: Solid): Surface;
  /** Forgets every solid that was made since the last time. */
  clear(): void;
}

/** The library, once it is there or on its way. */
let library: Promise<ManifoldToplevel> | null = null;

/**
 * Loads the library when it is first asked for.
 *
 * @throws Error where it cannot be loaded; the next call tries again.
 * @source manifold-3d, Lalish and others: booleans of solids whose result is closed and oriented by construction.
 * @check tests/unit/print3d/solids.test.ts
 */
export async function openWorkshop(): Promise<SolidWorkshop> {
  library ??= loadLibrary().catch((error) => {
    library = null;
    throw error;
  });
  return workshopOf(await library);
}

async function loadLibrary(): Promise<ManifoldToplevel> {
  const { default: load } = await import('manifold-3d');
  const made = await load();
  made.setup();
  return made;
}

function workshopOf({ Manifold, CrossSection }: ManifoldToplevel): SolidWorkshop {
  let made: { delete(): void }[] = [];
  const lettered = new Set<number>();
  const keep = <Thing extends { delete(): void }>(thing: Thing): Thing => {
    made.push(thing);
    return thing;
  };
  const extruded = (outlines: readonly Loop[], rule: 'Positive' | 'NonZero', bottom: number, top: number) => {
    const section = keep(
      new CrossSection(
        outlines.map((loop) => loop.map(([x, y]): [number, number] => [x, y])),
        rule,
      ),
    );
    const solid = keep(Manifold.extrude(section, top - bottom));
    return bottom === 0 ? solid : keep(keep(solid.translate([0, 0, bottom])).asOriginal());
  };
  return {
    prism: (outlines, bottom, top) => extruded(outlines, 'Positive', bottom, top),
    letters: (outlines, bottom, top) => {
      const solid = extruded(outlines, 'NonZero', bottom, top);
      lettered.add(solid.originalID());
      return solid;
    },
    stood: (solid) => keep(solid.transform([0, 1, 0, 0, 0, 0, 1, 0, 1, 0, 0, 0, 0, 0, 0, 1])),
    moved: (solid, [x, y, z]) => keep(solid.translate([x, y, z])),
    joined: (solids) => keep(Manifold.union(solids.slice())),
    without: (solid, others) => keep(Manifold.difference([solid, ...others])),
    within: (solid, other) => keep(solid.intersect(other)),
    settled: (solid) => {
      solid.numTri();
      return solid;
    },
    surface: (solid) => surfaceOf(solid, lettered),
    clear: () => {
      for (const thing of made) thing.delete();
      made = [];
      lettered.clear();
    },
  };
}

function surfaceOf(solid: Solid, lettered: ReadonlySet<number>): Surface {
  const mesh = solid.getMesh();
  const plain: number[] = [];
  const raised: number[] = [];
  mesh.runOriginalID.forEach((id, run) => {
    const into = lettered.has(id) ? raised : plain;
    for (let at = mesh.runIndex[run]; at < mesh.runIndex[run + 1]; at++) into.push(mesh.triVerts[at]);
  });
  const { numProp, vertProperties } = mesh;
  const positions = new Float32Array((vertProperties.length / numProp) * 3);
  for (let corner = 0; corner * numProp < vertProperties.length; corner++)
    positions.set(vertProperties.subarray(corner * numProp, corner * numProp + 3), corner * 3);
  return { positions, triangles: Uint32Array.from([...plain, ...raised]), lettersFrom: plain.length / 3 };
}
