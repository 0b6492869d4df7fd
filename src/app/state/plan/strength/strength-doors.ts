import type { ExaminedBlade } from '../../../../jobs/examine-blades.ts';
import type { StrengthQuestion } from '../../../../strength/find-strength.ts';
import type { JobOnItsWay } from '../../job-on-its-way.ts';

/** What finds the strength of sections; main.tsx names the real one. */
export interface StrengthDoors {
  /** Several in one thread of their own, which a cancel ends: a first answer for each, then the last one for each. */
  examineBlades(questions: readonly StrengthQuestion[], onPart: (blade: ExaminedBlade) => void): JobOnItsWay<number>;
}
