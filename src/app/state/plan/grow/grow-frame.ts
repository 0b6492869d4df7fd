import { sizeText, type Units } from '../../../../family/length-text.ts';
import { type Box, boxOf, NM_PER_MM, type Point } from '../../../../geom/point.ts';
import type { GrowProposal } from '../../../../plan/grow.ts';

/** How a keyway and its blank lie in a picture: pixels a millimetre, and SVG transforms in millimetres. */
export interface GrowFrame {
  readonly keyway: string;
  readonly blank: string;
}

/** Room round the keyway, millimetres. */
const MARGIN = 0.5;

/** The frame in which a keyway fills a picture, its blank in the middle of it. */
export function growFrame(
  { keyway, blank }: Pick<GrowProposal, 'keyway' | 'blank'>,
  width: number,
  height: number,
): GrowFrame {
  const box = boxOf(keyway.ring);
  const size = { x: (box.maxX - box.minX) / NM_PER_MM + 2 * MARGIN, y: (box.maxY - box.minY) / NM_PER_MM + 2 * MARGIN };
  const scale = Math.min(width / size.x, height / size.y);
  const [at, own] = [middleOf(box), middleOf(boxOf(blank.ring))];
  return {
    keyway: `translate(${width / 2} ${height / 2}) scale(${scale} ${-scale}) translate(${-at.x} ${-at.y})`,
    blank: `translate(${at.x - own.x} ${at.y - own.y})`,
  };
}

function middleOf({ minX, maxX, minY, maxY }: Box): Point {
  return { x: (minX + maxX) / 2 / NM_PER_MM, y: (minY + maxY) / 2 / NM_PER_MM };
}

/** The size of a proposed blank. */
export function blankSize({ blank }: Pick<GrowProposal, 'blank'>, units: Units): string {
  const { minX, maxX, minY, maxY } = boxOf(blank.ring);
  return sizeText(maxX - minX, maxY - minY, units);
}
