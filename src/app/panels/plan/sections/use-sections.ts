import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import {
  type ConfirmedPlan,
  type DrawnSections,
  drawnSections,
  type NamedSite,
  namedSites,
} from '../../../state/plan/sections/drawn-sections.ts';
import {
  type PlanDrawing,
  type SectionsPlanning,
  sectionsPlanningOf,
} from '../../../state/plan/sections/sections-planning.ts';
import { type SectionsQuestion, sectionsQuestion } from '../../../state/plan/sections/sections-question.ts';
import { blankRows, type PlanRow, sectionRows } from '../../../state/plan/sections/sections-rows.ts';
import { type SectionsLook, sectionsLookOf } from '../../../state/plan/sections/sections-state.ts';
import { useSession, useStore } from '../../use-store.ts';

/** Asks for the sections of the family's plan; what is on its way goes on when the component is there no more. */
export function useSectionsQuestion(family: Family): SectionsQuestion | null {
  const planning = useSectionsPlanning();
  const question = useMemo(() => sectionsQuestion(family), [family]);
  useEffect(() => planning.ask(question), [planning, question]);
  return question;
}

/** While the component is there and `isRead`, a plan that rests is searched for less by itself; nothing changes else. */
export function useWatch(isRead: boolean): void {
  const planning = useSectionsPlanning();
  useEffect(() => {
    planning.watch(isRead);
    return () => planning.watch(false);
  }, [planning, isRead]);
}

/** The planning of the window. */
export function useSectionsPlanning(): SectionsPlanning {
  return sectionsPlanningOf(useSession());
}

/** The same value however far a drawing has come: a large plan has thousands of cells that say nothing of that. */
const ON_ITS_WAY: PlanDrawing = { phase: 'drawing', done: 0, total: 1 };

/** What was found for the plan as it is now; null while there is nothing. */
export interface FoundSections {
  readonly question: SectionsQuestion;
  readonly found: WardPlan;
  readonly drawing: PlanDrawing;
  readonly sections: readonly PlanRow[];
  readonly blanks: readonly PlanRow[];
  /** Whether a site may have more than one depth. */
  readonly several: boolean;
  /** The plan drawn and confirmed; null where it is not, or not yet. */
  readonly confirmed: ConfirmedPlan | null;
  readonly drawn: DrawnSections | null;
  /** The sites in the order in which they are shown. */
  readonly named: readonly NamedSite[];
}

/** See {@link FoundSections}; only what belongs to the family's plan as it is now. */
export function useFoundSections(family: Family): FoundSections | null {
  const planning = useSectionsPlanning();
  const question = useMemo(() => sectionsQuestion(family), [family]);
  const asked = useStore(planning.store, (s) => s.asked);
  const found = useStore(planning.store, (s) => s.found);
  const drawing = useStore(planning.store, (s) => (s.drawing.phase === 'drawing' ? ON_ITS_WAY : s.drawing));
  return useMemo(() => {
    if (!question || !found || asked !== question) return null;
    const [sections, blanks] = [sectionRows(question, found), blankRows(question, found)];
    const confirmed = drawing.phase === 'done' && drawing.answer.ok ? drawing.answer : null;
    const drawn = confirmed && drawnSections(confirmed);
    const named = namedSites(found.sites, confirmed?.report.sites ?? null, question.layout);
    return { question, found, drawing, sections, blanks, several: question.plan.depths > 1, confirmed, drawn, named };
  }, [question, asked, found, drawing]);
}

/** What is looked at; the picks lie within what was found. */
export function useSectionsLook(found: FoundSections | null): SectionsLook {
  const look = useStore(sectionsLookOf(useSession()), (s) => s);
  if (!found) return look;
  const within = (place: number, count: number) => Math.max(0, Math.min(place, count - 1));
  const section = within(look.section, found.sections.length);
  const blank = within(look.blank, found.blanks.length);
  return section === look.section && blank === look.blank ? look : { ...look, section, blank };
}
