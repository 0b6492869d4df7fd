import { boundariesOf, type Region } from './region.ts';
import { signedArea } from './signed-area.ts';

/**
 * Area of a region, holes taken off, square nanometres.
 *
 * @check tests/laws/passage.test.ts
 */
export function regionArea(region: Region): number {
  return boundariesOf(region).reduce((sum, boundary) => sum + signedArea(boundary), 0);
}
