import { useEffect, useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { ToolCover } from '../../../gauge/cover-tools.ts';
import type { ToolTable } from '../../../gauge/tool-table.ts';
import type { CoverQuestion } from '../../../jobs/cover-openings.ts';
import type { Profile } from '../../../profile/profile.ts';
import { toolsOf } from '../../state/gauge/strip-in-hand.ts';
import { coveringOf, isTableOf, tablingOf } from '../../state/gauge/tabling-tools.ts';
import { type ShownTool, shownTools, sortedTools } from '../../state/gauge/tool-rows.ts';
import { useSession, useStore } from '../use-store.ts';
import type { ShownGauge } from './use-gauge.ts';

/** The tools of a family, with its blanks where they are wanted. */
export function useTools(family: Family, withBlanks: boolean): readonly Profile[] {
  return useMemo(() => (withBlanks ? entrantsOf(family) : toolsOf(family)), [family, withBlanks]);
}

/** Has tools judged in all keyways as long as the component is there, once their curves are known. */
export function useAskedTools(family: Family, gauge: ShownGauge, withBlanks: boolean): void {
  const tabling = tablingOf(useSession());
  const tools = useTools(family, withBlanks);
  const { complete, openings, curves } = gauge;
  const { runningClearance } = family;
  const question = useMemo(
    () => (complete && tools.length > 0 ? { tools, openings, curves: [...curves.values()], runningClearance } : null),
    [complete, tools, openings, curves, runningClearance],
  );
  useEffect(() => tabling.ask(question), [tabling, question]);
  useEffect(() => () => tabling.ask(null), [tabling]);
}

/** The table of these tools in the keyways of the family; null while it is looked for. */
function useToolTable(family: Family, tools: readonly Profile[]): ToolTable | null {
  const { phase, found } = useStore(tablingOf(useSession()).store, (s) => s);
  return phase === 'found' && found && isTableOf(found.input, tools, openingsOf(family)) ? found.output : null;
}

/** The tools with what is known of them. */
export function useShownTools(family: Family, withBlanks: boolean): readonly ShownTool[] {
  const tools = useTools(family, withBlanks);
  const table = useToolTable(family, tools);
  return useMemo(() => shownTools(tools, table), [tools, table]);
}

/** Ids of the keyways to be covered. */
export function useTicked(openings: readonly Profile[]): readonly string[] {
  const ticked = useStore(useSession().gauge, (s) => s.ticked);
  return useMemo(() => {
    const ids = openings.map(({ id }) => id);
    return ticked === null ? ids : ids.filter((id) => ticked.includes(id));
  }, [openings, ticked]);
}

/** Has the fewest tools for the ticked keyways found as long as the component is there. */
export function useAskedCover(family: Family, chosen: readonly string[]): void {
  const covering = coveringOf(useSession());
  const question = useCoverQuestion(family, chosen);
  useEffect(() => covering.ask(question), [covering, question]);
  useEffect(() => () => covering.ask(null), [covering]);
}

/** The fewest tools for what is ticked now; null while they are looked for. */
export function useCover(family: Family, chosen: readonly string[]): ToolCover | null {
  const covering = coveringOf(useSession());
  useStore(covering.store, (s) => s);
  return covering.answerTo(useCoverQuestion(family, chosen))?.output ?? null;
}

/** What is asked of the tools that the sheet shows; null until they are tried. */
function useCoverQuestion(family: Family, chosen: readonly string[]): CoverQuestion | null {
  const withBlanks = useStore(useSession().gauge, (s) => s.withBlanks);
  const table = useToolTable(family, useTools(family, withBlanks));
  return useMemo(() => (table ? { table, chosen } : null), [table, chosen]);
}

/** The tools in the order of the table. */
export function useOrderedTools(family: Family, withBlanks: boolean): readonly ShownTool[] {
  const rows = useShownTools(family, withBlanks);
  const order = useStore(useSession().gauge, (s) => s.order);
  return useMemo(() => sortedTools(rows, order), [rows, order]);
}
