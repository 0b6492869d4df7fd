import type { Ring } from '../../src/geom/ring.ts';
import { commonPassage } from '../../src/passage/find-passage.ts';
import type { Passage } from '../../src/passage/passage.ts';

/** The passage of keyways by name, those of `others` only tried: the search run to its end. */
export function findPassage(
  chosen: Readonly<Record<string, Ring>>,
  runningClearance: number,
  others: Readonly<Record<string, Ring>> = {},
): Passage {
  const openings = Object.entries({ ...chosen, ...others }).map(([id, ring]) => ({ id, ring }));
  const search = commonPassage({ openings, chosen: Object.keys(chosen), runningClearance });
  for (;;) {
    const step = search.next();
    if (step.done) return step.value;
  }
}
