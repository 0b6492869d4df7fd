import type { Family } from '../family/family.ts';
import { loadTypeface } from '../lettering/typeface.ts';
import { buildSet } from '../print3d/build-display-set.ts';
import type { DisplaySet } from '../print3d/display-set.ts';
import { type DisplaySetup, setupFaults } from '../print3d/display-setup.ts';
import { openWorkshop } from '../print3d/solids.ts';
import { type Job, JobRefused, runInSlices } from './job.ts';

/** A family and how its display set is made. */
export interface DisplayOrder {
  readonly family: Family;
  readonly setup: DisplaySetup;
}

/**
 * The solids of a display set and what was found out about printing them; cancelled between two parts.
 *
 * @throws JobRefused where the setup has a fault, or where a library cannot be loaded.
 * @check tests/unit/print3d/build-display-set.test.ts
 */
export const buildDisplaySet: Job<DisplayOrder, DisplaySet> = async ({ family, setup }, context) => {
  const [fault] = setupFaults(family, setup);
  if (fault) throw new JobRefused(fault.message);
  const [workshop, letters] = await loadAll();
  const bench = { workshop, setup, letters: setup.letters ? letters : null };
  try {
    return await runInSlices(buildSet(family, bench), context);
  } finally {
    workshop.clear();
  }
};

async function loadAll() {
  try {
    return await Promise.all([openWorkshop(), loadTypeface()]);
  } catch (error) {
    const words = error instanceof Error ? error.message : String(error);
    throw new JobRefused(`What makes solids could not be loaded (${words}). Reload the page and try again.`);
  }
}
