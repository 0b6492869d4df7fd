import grades from '../../shared/tolerance-grades.json';
import { NM_PER_MM, NM_PER_UM } from '../geom/point.ts';

/** A published tolerance that the tolerance of an outline can be taken from. */
export interface TolerancePreset {
  /** Name to choose it by, such as "ISO 286 IT7" or "ISO 2768 m". */
  readonly name: string;
  /** What its table holds, in words. */
  readonly title: string;
  /** Where the values are published. */
  readonly source: string;
}

/** A tolerance in nanometres to either side, or why the standard gives none. */
export type PresetTolerance =
  | { readonly ok: true; readonly tolerance: number }
  | { readonly ok: false; readonly what: string; readonly cure: string };

/** One column of a preset: a tolerance for whole sizes from `least` to `most`, both included, in nanometres. */
interface SizeRange {
  readonly least: number;
  readonly most: number;
  /** Null where the standard leaves the cell empty. */
  readonly tolerance: number | null;
}

/** A row of a table: its values for the size ranges, and the size above which alone it is used. */
interface GradeRow {
  readonly name: string;
  readonly um: readonly (number | null)[];
  readonly aboveMm?: number;
}

/** A table of shared/tolerance-grades.json. */
type GradeTable = Omit<(typeof grades.tables)[number], 'grades'> & { readonly grades: readonly GradeRow[] };

const TABLES: readonly GradeTable[] = grades.tables;

const PRESETS = TABLES.flatMap((table) =>
  table.grades.map((row) => ({
    name: `${table.standard} ${row.name}`,
    title: table.title,
    source: table.source,
    ranges: row.um.map((_, i) => rangeOf(table, row, i)),
  })),
);

function rangeOf({ gives, leastMm, upToMm }: GradeTable, { um, aboveMm = 0 }: GradeRow, i: number): SizeRange {
  const value = um[i];
  const endBefore = i > 0 ? upToMm[i - 1] : aboveMm;
  return {
    least: Math.max(leastMm * NM_PER_MM, endBefore * NM_PER_MM + 1),
    most: upToMm[i] * NM_PER_MM,
    tolerance: value === null ? null : (gives === 'band' ? value / 2 : value) * NM_PER_UM,
  };
}

/** Every preset, the finest of each standard first. */
export const TOLERANCE_PRESETS: readonly TolerancePreset[] = PRESETS.map(({ name, title, source }) => ({
  name,
  title,
  source,
}));

/**
 * The uniform tolerance of an outline, to either side, that a preset gives for a size: half of an IT grade, the plus or
 * minus value of a general tolerance.
 *
 * Each edge is taken as placed by a size from one datum, so that it may lie off by the whole deviation of that size.
 * Where two edges bound one size and share its deviation, as the faces of a slot do, half of this is enough, and the
 * preset errs to the careful side.
 *
 * @param name of one of {@link TOLERANCE_PRESETS}.
 * @param nominal the size concerned, such as the height of the blade, in nanometres.
 * @returns nanometres to either side; a fault for an unknown name and for a size that the standard says nothing about.
 * @source ISO 286-1:2010 and ISO 2768-1:1989, as shared/tolerance-grades.json says of each table
 * @check tests/outside/tolerance-grades.test.ts, tests/unit/profile/tolerance-grades.test.ts
 */
export function presetTolerance(name: string, nominal: number): PresetTolerance {
  const preset = PRESETS.find((p) => p.name === name);
  if (!preset)
    return {
      ok: false,
      what: `there is no tolerance named "${name}"`,
      cure: `Choose one of ${PRESETS.map((p) => p.name).join(', ')}.`,
    };
  const range = preset.ranges.find(({ least, most }) => nominal >= least && nominal <= most);
  if (range && range.tolerance !== null) return { ok: true, tolerance: range.tolerance };
  return {
    ok: false,
    what: `${name} gives no tolerance for a size of ${nominal / NM_PER_MM} mm`,
    cure: `Choose ${sayGiven(preset.ranges)}, or state the deviation in micrometres.`,
  };
}

/** The sizes that a preset is given for, in words. */
function sayGiven(ranges: readonly SizeRange[]): string {
  const given = ranges.filter(({ tolerance }) => tolerance !== null);
  const [{ least }, { most }] = [given[0], given[given.length - 1]];
  const lower = least % NM_PER_UM === 0 ? `from ${least / NM_PER_MM}` : `above ${(least - 1) / NM_PER_MM}`;
  return `a size ${lower} up to ${most / NM_PER_MM} mm`;
}
