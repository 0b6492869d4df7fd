import { Colors, DxfWriter, LWPolylineFlags, point2d, Units } from '@tarikjabiri/dxf';
import type { FileUnits } from '../../family/family.ts';
import { NM_PER_UNIT } from '../../family/file-length.ts';
import { boxOf, NM_PER_MM } from '../../geom/point.ts';
import { edgePoints, type Vertex, vertexAt } from '../../geom/vertex.ts';
import type { Profile } from '../../profile/profile.ts';
import { uniqueNames } from '../unique-names.ts';
import { layerName } from './layer-name.ts';

/** How profiles are written. */
export interface DxfWriting {
  readonly units: FileUnits;
  /** Room between outlines, nanometres. Default: 5 mm. */
  readonly gap?: number;
}

const DEFAULT_GAP = 5 * NM_PER_MM;

/** Digits behind the point that tell every whole nanometre, with some to spare in inches. */
const DIGITS: Readonly<Record<FileUnits, number>> = { mm: 6, in: 11 };

const INSERT_UNITS = { mm: Units.Millimeters, in: Units.Inches } as const;

/**
 * A DXF drawing (ASCII, R2007) with the outlines of profiles in a row on a common line, at true size: one closed
 * LWPOLYLINE each, arcs as bulges, on a layer with the profile's name. The header states the unit.
 *
 * @param profiles in the order of the row; each keeps its own shape and way round.
 * @accuracy whole nanometres and bulges come back as they were.
 * @source Autodesk, DXF Reference: LWPOLYLINE, $INSUNITS (from memory); written by @tarikjabiri/dxf.
 * @check tests/laws/dxf-round-trip.test.ts, tests/outside/dxf-readers.test.ts
 */
export function writeDxf(profiles: readonly Profile[], { units, gap = DEFAULT_GAP }: DxfWriting): string {
  const writer = new DxfWriter();
  writer.setUnits(INSERT_UNITS[units]);
  const names = uniqueNames(profiles, layerName);
  const say = (nm: number) => Number((nm / NM_PER_UNIT[units]).toFixed(DIGITS[units]));
  for (const [i, vertices] of layOut(profiles, Math.round(gap)).entries()) {
    writer.addLayer(names[i], Colors.White, 'Continuous');
    const written = vertices.map(({ x, y, bulge }) => ({ point: point2d(say(x), say(y)), bulge }));
    writer.addLWPolyline(written, { flags: LWPolylineFlags.Closed, layerName: names[i] });
  }
  return writer.stringify();
}

/** The outlines side by side, their lowest points on y = 0, the first one's left edge on x = 0. */
function layOut(profiles: readonly Profile[], gap: number): Vertex[][] {
  let left = 0;
  return profiles.map(({ drawn, ring }) => {
    const outline: readonly Vertex[] = drawn ?? ring;
    const { minX, minY, maxX } = boxOf(outline.flatMap((v, i) => edgePoints(v, outline[(i + 1) % outline.length])));
    const [right, up] = [left - minX, -minY];
    left += maxX - minX + gap;
    return outline.map(({ x, y, bulge }) => vertexAt(x + right, y + up, bulge));
  });
}
