import type { ToolCover } from '../../../gauge/cover-tools.ts';
import type { ToolTable } from '../../../gauge/tool-table.ts';
import type { CoverQuestion } from '../../../jobs/cover-openings.ts';
import type { ToolsQuestion } from '../../../jobs/table-tools.ts';
import type { Profile } from '../../../profile/profile.ts';
import { AskedJob, makeAskedJobs } from '../asked-job.ts';

/** Outlines and curves are values: unchanged ones are the same objects. */
function isSameTable(a: ToolsQuestion, b: ToolsQuestion): boolean {
  return (
    a.runningClearance === b.runningClearance &&
    isSameShapes(a.tools, b.tools) &&
    isSameShapes(a.openings, b.openings) &&
    a.curves.length === b.curves.length &&
    a.curves.every((curve, i) => curve.knots === b.curves[i].knots && curve.openingId === b.curves[i].openingId)
  );
}

function isSameShapes(a: readonly Profile[], b: readonly Profile[]): boolean {
  return a.length === b.length && a.every(({ id, ring }, i) => id === b[i].id && ring === b[i].ring);
}

function isSameCover(a: CoverQuestion, b: CoverQuestion): boolean {
  return a.table === b.table && String(a.chosen) === String(b.chosen);
}

/** The judging of tools in a window. */
export const tablingOf = makeAskedJobs<ToolsQuestion, ToolTable>(
  ({ doors }) => new AskedJob((input, tell) => doors.gauge.tableTools(input, tell), isSameTable),
);

/** The search for the fewest tools in a window. */
export const coveringOf = makeAskedJobs<CoverQuestion, ToolCover>(
  ({ doors }) => new AskedJob((input, tell) => doors.gauge.coverOpenings(input, tell), isSameCover),
);

/** Whether these tools were asked for in these keyways, with outlines as they are now; curves and clearance aside. */
export function isTableOf(question: ToolsQuestion, tools: readonly Profile[], openings: readonly Profile[]): boolean {
  return isSameShapes(question.tools, tools) && isSameShapes(question.openings, openings);
}
