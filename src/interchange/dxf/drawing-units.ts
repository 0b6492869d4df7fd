import { NM_PER_INCH, NM_PER_MM } from '../../geom/point.ts';

const NM_PER_METRE = 1e9;

/** A foot of the United States survey: 1200/3937 m. */
const NM_PER_SURVEY_FOOT = (1200 / 3937) * NM_PER_METRE;

/**
 * Nanometres in one unit, by the code of the header variable `$INSUNITS`.
 *
 * @source DXF reference, "HEADER section", $INSUNITS 0 to 24 (from memory); astronomical unit 149,597,870,700 m, light
 *   year 9,460,730,472,580,800 m, parsec 648,000 / pi astronomical units (IAU; from memory).
 */
const NM_PER_CODE: readonly (number | null)[] = [
  null,
  NM_PER_INCH,
  12 * NM_PER_INCH,
  63_360 * NM_PER_INCH,
  NM_PER_MM,
  1e7,
  NM_PER_METRE,
  1e12,
  25.4,
  25_400,
  36 * NM_PER_INCH,
  0.1,
  1,
  1e3,
  1e8,
  1e10,
  1e11,
  1e18,
  149_597_870_700 * NM_PER_METRE,
  9_460_730_472_580_800 * NM_PER_METRE,
  ((149_597_870_700 * 648_000) / Math.PI) * NM_PER_METRE,
  NM_PER_SURVEY_FOOT,
  NM_PER_SURVEY_FOOT / 12,
  3 * NM_PER_SURVEY_FOOT,
  5280 * NM_PER_SURVEY_FOOT,
];

/** Nanometres in one unit of a drawing, or null where its header does not say or says a unit that is not known. */
export function unitOfCode(code: string | undefined): number | null {
  return /^\d{1,2}$/.test(code ?? '') ? (NM_PER_CODE[Number(code)] ?? null) : null;
}
