import type { GrowReport } from '../../src/plan/grow.ts';
import { type GrowInput, growFamily } from '../../src/plan/grow-family.ts';
import { finish } from './traced.ts';

/** The room of a family: the search run to its end, with what is usual where nothing else is asked. */
export function roomOf(input: Pick<GrowInput, 'family'> & Partial<GrowInput>): GrowReport {
  return finish(growFamily({ allowed: [], between: null, top: 'blank', stops: 1, ...input }));
}
