import type { PlannedBlank } from '../../../../plan/access.ts';
import { plannedNames } from '../../../../plan/planned-names.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import type { NamedSite } from './drawn-sections.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** A section or a blank of a plan as a row of a table. */
export interface PlanRow {
  readonly key: string;
  readonly name: string;
  /** The name of its keyway or blank in the family. */
  readonly full: string;
  /** Areas of a section, holders of a blank. */
  readonly aside: string;
  /** Depths of its wards, or grooves, site by site; 0 for none. */
  readonly depths: readonly number[];
  /** Kept for a section that is still to come. */
  readonly reserve: boolean;
}

const RANK_WORDS: Readonly<Record<PlannedBlank['rank'], string>> = {
  base: 'base blank',
  group: 'group blank',
  'all-section': 'all-section blank',
};

/**
 * The sections of a plan with their wards, those in reserve last.
 *
 * @check tests/unit/app/sections-planning.test.ts
 */
export function sectionRows({ access, plan, table }: SectionsQuestion, found: WardPlan): PlanRow[] {
  const names = new Map(plan.areas.map(({ id, name }) => [id, name]));
  const { openings } = plannedNames(access);
  return table.map((_, s) => {
    const section = access.sections[s];
    const reserve = section === undefined;
    return {
      key: `s${s}`,
      name: section?.name ?? reserveName(s - access.sections.length),
      full: openings[s]?.name ?? reserveName(s - access.sections.length),
      aside: reserve ? 'for a section to come' : section.areas.map((id) => names.get(id) ?? id).join(', '),
      depths: found.wards[s] ?? [],
      reserve,
    };
  });
}

/** The blanks of a plan with their grooves, base blanks of the reserve last. */
export function blankRows({ access, plan, table }: SectionsQuestion, found: WardPlan): PlanRow[] {
  const holders = new Map(plan.holders.map(({ id, name }) => [id, name]));
  const { blanks } = plannedNames(access);
  return (table[0] ?? []).map((_, b) => {
    const blank = access.blanks[b];
    const reserve = blank === undefined;
    const name = blanks[b]?.name ?? `${reserveName(b - access.blanks.length)} blank`;
    return {
      key: `b${b}`,
      name,
      full: name,
      aside: reserve ? 'base blank to come' : blankAside(blank, holders),
      depths: found.grooves[b] ?? [],
      reserve,
    };
  });
}

function reserveName(place: number): string {
  return `Reserve ${place + 1}`;
}

function blankAside({ rank, holders }: PlannedBlank, names: ReadonlyMap<string, string>): string {
  const carried = holders.map((id) => names.get(id) ?? id);
  return carried.length === 0 ? RANK_WORDS[rank] : `${RANK_WORDS[rank]}: ${carried.join(', ')}`;
}

/** "2, 5 and 7", with depths where there are several: "2 (depth 1) and 5 (depth 3)"; "none". */
export function siteWords(depths: readonly number[], sites: readonly NamedSite[], several: boolean): string {
  const at = sites.flatMap(({ at, name }) => {
    const depth = depths[at] ?? 0;
    return depth > 0 ? [several ? `${name} (depth ${depth})` : name] : [];
  });
  if (at.length === 0) return 'none';
  return at.length === 1 ? at[0] : `${at.slice(0, -1).join(', ')} and ${at[at.length - 1]}`;
}

/** What the plan asks of a pair. */
export type WantedPair = 'must' | 'not' | 'free';

const WANTED: Readonly<Record<'1' | '0' | 'null', WantedPair>> = { 1: 'must', 0: 'not', null: 'free' };

/** What a cell of the table asks of its pair. */
export function wantedOf(cell: 0 | 1 | null | undefined): WantedPair {
  return WANTED[`${cell ?? null}`];
}

/** The sites, by name, at which a blank is stopped in a keyway: the ward stands deeper than the groove. */
export function stoppingSites(
  wards: readonly number[],
  grooves: readonly number[],
  sites: readonly NamedSite[],
): string[] {
  return sites.flatMap(({ at, name }) => ((wards[at] ?? 0) > (grooves[at] ?? 0) ? [name] : []));
}
