import { entrantsOf, type Family } from '../../../../family/family.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { type BladeWeb, bladeWeb } from '../../../../strength/blade-web.ts';
import { MATERIALS, type Material } from '../../../../strength/materials.ts';
import type { SectionStrength } from '../../../../strength/strength.ts';
import {
  materialsThatDo,
  type TorqueLimits,
  type TorqueVerdict,
  torqueLimits,
  torqueVerdict,
} from '../../../../strength/torque-limits.ts';
import { type ExaminingState, outlineKey } from './examining-strength.ts';

/** A blade of the table: what is known of it so far. */
export interface StrengthRow {
  readonly profile: Profile;
  readonly web: BladeWeb;
  readonly section: SectionStrength | null;
  /** Why it could not be examined; empty otherwise. */
  readonly trouble: string;
  readonly limits: TorqueLimits | null;
  readonly verdict: TorqueVerdict | null;
  /** How many materials of the table bear the torque without yielding, and how many before they twist through. */
  readonly doing: { readonly elastic: number; readonly partPlastic: number } | null;
}

const webs = new WeakMap<Profile, BladeWeb>();

function webOf(profile: Profile): BladeWeb {
  const known = webs.get(profile) ?? bladeWeb(profile);
  webs.set(profile, known);
  return known;
}

/** What a row is made from, besides its profile. */
interface RowSource {
  readonly section: SectionStrength | null;
  readonly trouble: string;
  readonly material: Material;
  readonly torqueNm: number;
}

const rows = new WeakMap<Profile, { readonly from: RowSource; readonly row: StrengthRow }>();

/**
 * Every blank and tool of a family in chart order, with what its blade bears in a material; a row is the same value until
 * something of it changes.
 *
 * @check tests/unit/app/examining-strength.test.ts
 */
export function strengthRows(
  family: Family,
  { known, failed }: Pick<ExaminingState, 'known' | 'failed'>,
  material: Material,
  torqueNm: number,
): StrengthRow[] {
  return entrantsOf(family).map((profile) => {
    const key = outlineKey(profile);
    return rowOf(profile, { section: known.get(key) ?? null, trouble: failed.get(key) ?? '', material, torqueNm });
  });
}

function rowOf(profile: Profile, from: RowSource): StrengthRow {
  const before = rows.get(profile);
  if (before && isSame(before.from, from)) return before.row;
  const row = makeRow(profile, from);
  rows.set(profile, { from, row });
  return row;
}

function isSame(a: RowSource, b: RowSource): boolean {
  return a.section === b.section && a.trouble === b.trouble && a.material === b.material && a.torqueNm === b.torqueNm;
}

function makeRow(profile: Profile, { section, trouble, material, torqueNm }: RowSource): StrengthRow {
  const limits = section && torqueLimits(section, material);
  return {
    profile,
    web: webOf(profile),
    section,
    trouble,
    limits,
    verdict: limits && torqueVerdict(limits, torqueNm),
    doing: section && doingOf(section, torqueNm),
  };
}

function doingOf(section: SectionStrength, torqueNm: number) {
  const verdicts = materialsThatDo(section, MATERIALS, torqueNm).map(({ verdict }) => verdict);
  const count = (wanted: TorqueVerdict) => verdicts.filter((verdict) => verdict === wanted).length;
  return { elastic: count('elastic'), partPlastic: count('part-plastic') };
}

/** The right end of the bars: the greatest torque that some blade bears, and the one compared with, with some air. */
export function barEnd(rows: readonly StrengthRow[], torqueNm: number): number {
  return 1.05 * Math.max(torqueNm * 1.2, ...rows.map(({ limits }) => limits?.plasticNm.high ?? 0));
}

/** The line over the table: how many blades bear the torque, of those that are solved. */
export function strengthHeadline(rows: readonly StrengthRow[], torque: string): string {
  const known = rows.filter(({ verdict }) => verdict !== null);
  if (known.length === 0) return 'Strength of the blades';
  const bearing = known.filter(({ verdict }) => verdict === 'elastic').length;
  const lost = known.filter(({ verdict }) => verdict === 'too-much').length;
  const all = known.length === rows.length;
  const some = `${bearing === 0 ? 'none' : bearing} of ${known.length} ${known.length === 1 ? 'blade' : 'blades'}`;
  const rest = lost === 0 ? 'none twists through' : `${lost} ${lost === 1 ? 'twists' : 'twist'} through`;
  const start = all ? some.charAt(0).toUpperCase() + some.slice(1) : `So far ${some}`;
  return `${start} ${bearing > 1 ? 'bear' : 'bears'} ${torque} without yielding; ${rest}`;
}
