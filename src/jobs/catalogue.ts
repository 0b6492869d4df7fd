import { askFamily } from './ask-family.ts';
import { buildDisplaySet } from './build-display-set.ts';
import { checkFamilyClaims } from './check-family-claims.ts';
import { countCapacity } from './count-capacity.ts';
import { countConceptsJob } from './count-concepts.ts';
import { coverOpenings } from './cover-openings.ts';
import { describeFamily } from './describe-family.ts';
import { describeTiers } from './describe-tiers.ts';
import { drawParts } from './draw-parts.ts';
import { drawPlan } from './draw-plan.ts';
import { examineBlades } from './examine-blades.ts';
import { findNearestPlans } from './find-nearest-plans.ts';
import { findPassage } from './find-passage.ts';
import { findStrength } from './find-strength.ts';
import { fitFamily } from './fit-family.ts';
import { gaugeFamily } from './gauge-family.ts';
import { growFamily } from './grow-family.ts';
import { guardFamily } from './guard-family.ts';
import { identifyOutline } from './identify-outline.ts';
import { judgeDetails } from './judge-details.ts';
import { judgePairs } from './judge-pairs.ts';
import { judgeTolerances } from './judge-tolerances.ts';
import { layOutTiers } from './lay-out-tiers.ts';
import { listNames } from './list-names.ts';
import { millPassage } from './mill-passage.ts';
import { publishSheets } from './publish-sheets.ts';
import { readDrawing } from './read-drawing.ts';
import { solvePlan } from './solve-plan.ts';
import { tableTools } from './table-tools.ts';
import { tracePictureJob } from './trace-picture.ts';
import { verifyFamily } from './verify-family.ts';
import { writeDisplaySet } from './write-display-set.ts';

/** Every operation by name: one list behind the app's workers, the command line and the tests. */
export const catalogue = {
  fitFamily,
  verifyFamily,
  growFamily,
  gaugeFamily,
  tableTools,
  coverOpenings,
  guardFamily,
  identifyOutline,
  judgePairs,
  describeFamily,
  judgeDetails,
  judgeTolerances,
  checkFamilyClaims,
  askFamily,
  listNames,
  drawParts,
  drawPlan,
  findPassage,
  millPassage,
  findStrength,
  examineBlades,
  readDrawing,
  tracePicture: tracePictureJob,
  layOutTiers,
  describeTiers,
  countConcepts: countConceptsJob,
  solvePlan,
  findNearestPlans,
  countCapacity,
  buildDisplaySet,
  writeDisplaySet,
  publishSheets,
};

/** The name of an operation. */
export type JobName = keyof typeof catalogue;

/** What the operation takes. */
export type JobInput<N extends JobName> = Parameters<(typeof catalogue)[N]>[0];

/** What the operation gives. */
export type JobOutput<N extends JobName> = Awaited<ReturnType<(typeof catalogue)[N]>>;
