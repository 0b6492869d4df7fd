import type { GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';

/** The search for room to grow; main.tsx names the real one. */
export interface GrowDoors {
  /** In a thread of its own, which a cancel ends. */
  growFamily(input: GrowInput, onProgress: (done: number, total: number) => void): JobOnItsWay<GrowReport>;
}
