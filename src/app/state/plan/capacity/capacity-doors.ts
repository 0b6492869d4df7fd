import type { Capacity, CapacityInput } from '../../../../capacity/capacity.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';

/** What counts keys; main.tsx names the real one. */
export interface CapacityDoors {
  /** In a thread of its own, which a cancel ends. */
  countCapacity(input: CapacityInput, onProgress: (done: number, total: number) => void): JobOnItsWay<Capacity>;
}
