import type { DisplaySet } from '../../../print3d/display-set.ts';
import { AskedJob, makeAskedJobs } from '../asked-job.ts';
import type { BlockOrder } from './block-doors.ts';
import { makeMakings } from './making-file.ts';

/** The building of display sets. */
export type BlockBuilding = AskedJob<BlockOrder, DisplaySet>;

/** Whether two orders give the same set: outlines are values, an unchanged one is the same object. */
function isSame(a: BlockOrder, b: BlockOrder): boolean {
  return isSameGround(a, b) && JSON.stringify(a.setup) === JSON.stringify(b.setup);
}

function isSameGround({ family: a }: BlockOrder, { family: b }: BlockOrder): boolean {
  if (a === b) return true;
  return (
    a.runningClearance === b.runningClearance &&
    a.profiles.length === b.profiles.length &&
    a.profiles.every(({ id, name, ring }, i) => {
      const other = b.profiles[i];
      return id === other.id && name === other.name && ring === other.ring;
    })
  );
}

/** The building of a window. */
export const blockBuildingOf = makeAskedJobs<BlockOrder, DisplaySet>(
  ({ doors }) => new AskedJob((order, tell) => doors.block.buildDisplaySet(order, tell), isSame),
);

/** What makes the files of a display set of a window. */
export const blockMakingOf = makeMakings();
