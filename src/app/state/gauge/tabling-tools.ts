import type { ToolCover } from '../../../gauge/cover-tools.ts';
import type { ToolTable } from '../../../gauge/tool-table.ts';
import type { CoverQuestion } from '../../../jobs/cover-openings.ts';
import type { ToolsQuestion } from '../../../jobs/table-tools.ts';
import type { Profile } from '../../../profile/profile.ts';
import { AskedJob } from '../asked-job.ts';
import type { Session } from '../session.ts';

/** The judging of tools in keyways. */
export type TablingTools = AskedJob<ToolsQuestion, ToolTable>;

/** The search for the fewest tools. */
export type CoveringOpenings = AskedJob<CoverQuestion, ToolCover>;

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

const tablings = new WeakMap<Session, TablingTools>();
const coverings = new WeakMap<Session, CoveringOpenings>();

/** The judging of tools in a window. */
export function tablingOf(session: Session): TablingTools {
  const { gauge } = session.doors;
  const known = tablings.get(session) ?? new AskedJob((input, tell) => gauge.tableTools(input, tell), isSameTable);
  tablings.set(session, known);
  return known;
}

/** The search for the fewest tools in a window. */
export function coveringOf(session: Session): CoveringOpenings {
  const { gauge } = session.doors;
  const known = coverings.get(session) ?? new AskedJob((input, tell) => gauge.coverOpenings(input, tell), isSameCover);
  coverings.set(session, known);
  return known;
}
