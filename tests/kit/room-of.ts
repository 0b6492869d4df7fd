import type { GrowReport } from '../../src/plan/grow.ts';
import { type GrowInput, growFamily } from '../../src/plan/grow-family.ts';

/** The room of a family: the search run to its end, with what is usual where nothing else is asked. */
export function roomOf(input: Pick<GrowInput, 'family'> & Partial<GrowInput>): GrowReport {
  const search = growFamily({ allowed: [], between: null, top: 'blank', stops: 1, ...input });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
