import { depthsOf, stopsOf } from '../../../src/app/state/plan/sections/near-plans.ts';
import { type SectionsQuestion, sectionsQuestion } from '../../../src/app/state/plan/sections/sections-question.ts';
import type { FamilyDocument } from '../../../src/interchange/json/read.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { drawWardPlan } from '../../../src/plan/draw-plan.ts';
import type { DrawnPlan } from '../../../src/plan/drawn-plan.ts';
import { solveAtOnce } from '../../../src/plan/solve.ts';
import type { WardPlan } from '../../../src/plan/ward-plan.ts';

/** Blades with room for ten sites. */
export const BLADE = {
  thickness: 2,
  height: 8.4,
  backRadius: 0.4,
  cutZone: 3,
  backZone: 0.5,
  grooveWidth: 0.6,
  heightStep: 0.9,
  grooveDepth: 0.6,
  depthStep: 0.2,
  flankDeg: 10,
  rootRadius: 0.1,
  sides: 'both' as const,
};

/** Two groups of two areas, a holder for each group and a gardener; everything is invented. */
export const CAMPUS = {
  format: 'sectionary-family',
  version: 1,
  name: 'Two yards',
  units: 'mm',
  runningClearance: 0.03,
  tolerance: 0.01,
  profiles: [] as readonly object[],
  plan: {
    areas: [
      { id: 'north', name: 'North yard' },
      { id: 'heron', name: 'Heron House', section: 'Heron', parent: 'north' },
      { id: 'smew', name: 'Smew House', section: 'Smew', parent: 'north' },
      { id: 'south', name: 'South yard' },
      { id: 'knot', name: 'Knot House', section: 'Knot', parent: 'south' },
      { id: 'rail', name: 'Rail House', section: 'Rail', parent: 'south' },
    ],
    holders: [
      { id: 'warden', name: 'Warden', enters: ['north'] },
      { id: 'gardener', name: 'Gardener', enters: ['heron', 'knot'], free: ['smew'] },
    ],
    blade: BLADE,
  },
};

/** Reads a value as a family. */
export function documentOf(file: object): FamilyDocument {
  const read = readFamily(JSON.stringify(file));
  if (!read.ok) throw new Error(read.faults.map(({ path, what }) => `${path} ${what}`).join('; '));
  return read.document;
}

/** What the plan of a family value asks. */
export function questionOf(file: object): SectionsQuestion {
  const question = sectionsQuestion(documentOf(file).family);
  if (!question) throw new Error('there is no plan');
  return question;
}

/** The answer at once. */
export function solved({ table, plan, layout }: SectionsQuestion): WardPlan {
  const options = {
    stops: stopsOf(plan.stops),
    depths: depthsOf(plan.depths),
    mostSites: layout.sites.length,
    seconds: 0,
  };
  const found = solveAtOnce(table, options);
  if (!found) throw new Error('the table is none');
  return found;
}

/** The answer drawn and judged. */
export function drawn({ plan, access, gap }: SectionsQuestion, wardPlan: WardPlan): DrawnPlan {
  const steps = drawWardPlan({ plan, access, wardPlan, gap });
  for (let step = steps.next(); ; step = steps.next()) if (step.done) return step.value;
}
