import type { StrengthQuestion } from '../../../strength/find-strength.ts';
import type { SectionStrength } from '../../../strength/strength.ts';
import type { JobOnItsWay } from '../job-on-its-way.ts';

/** What finds the strength of a section; main.tsx names the real one. */
export interface StrengthDoors {
  /** In a thread of its own, which a cancel ends. */
  findStrength(question: StrengthQuestion): JobOnItsWay<SectionStrength>;
}
