import type { Family } from '../../../../family/family.ts';
import type { GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import { AskedJob, makeAskedJobs } from '../../asked-job.ts';

/** Whether two questions have the same answer: outlines are values, an unchanged one is the same object. */
function isSame(a: GrowInput, b: GrowInput): boolean {
  return (
    a.top === b.top &&
    a.stops === b.stops &&
    String(a.between) === String(b.between) &&
    String(a.allowed) === String(b.allowed) &&
    isSameGround(a.family, b.family)
  );
}

function isSameGround(a: Family, b: Family): boolean {
  return (
    a === b ||
    (a.runningClearance === b.runningClearance &&
      a.tolerance === b.tolerance &&
      a.profiles.length === b.profiles.length &&
      a.profiles.every((profile, i) => {
        const other = b.profiles[i];
        const { id, kind, ring, tolerance } = profile;
        return id === other.id && kind === other.kind && ring === other.ring && tolerance === other.tolerance;
      }))
  );
}

/** The search of a window. */
export const growFindingOf = makeAskedJobs<GrowInput, GrowReport>(
  ({ doors }) => new AskedJob((input, tell) => doors.grow.growFamily(input, tell), isSame),
);
