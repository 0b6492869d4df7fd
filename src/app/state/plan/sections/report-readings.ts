import { readingText, type Units } from '../../../../family/length-text.ts';
import type { Access } from '../../../../plan/access.ts';
import type { PlanReport } from '../../../../plan/drawn-plan.ts';

/** What a plan without a tolerance leaves out. */
export const NO_TOLERANCE =
  'The tolerance is 0: every part is taken as made exactly to its drawing. Set one on the sheet Blade before metal is cut.';

/** One figure of a report, with the section or blank that sets it. */
export interface PlanReading {
  readonly what: string;
  readonly kind: 'section' | 'blank';
  /** Its place in the plan. */
  readonly place: number;
  figure(units: Units): string;
}

/**
 * The figures of a report that set its limits: the thinnest web of each rank of blank, the longest ward and the widest and
 * narrowest line of sight.
 *
 * @check tests/unit/app/drawn-sections.test.ts
 */
export function planReadings({ webs, sights }: PlanReport, { blanks }: Access): PlanReading[] {
  const readings: PlanReading[] = [];
  for (const [rank, what] of RANKS) {
    const place = least(webs.map(({ thickness }, b) => (blanks[b]?.rank === rank ? thickness : Number.NaN)));
    if (place >= 0)
      readings.push({ what, kind: 'blank', place, figure: (units) => readingText(webs[place].thickness, units) });
  }
  const reaching = least(sights.map(({ left, right }) => -Math.max(left, right)));
  if (reaching >= 0) {
    const { left, right } = sights[reaching];
    const reach = Math.max(left, right);
    const words = reach > 0 ? 'past the middle: paracentric' : 'short of the middle';
    readings.push({
      what: 'Longest ward',
      kind: 'section',
      place: reaching,
      figure: (units) => `${readingText(reach, units)} ${words}`,
    });
  }
  const widest = least(sights.map(({ strip }) => -strip));
  const narrowest = least(sights.map(({ strip }) => strip));
  for (const [what, place] of [
    ['Widest line of sight', widest],
    ['Narrowest line of sight', narrowest],
  ] as const)
    if (place >= 0)
      readings.push({ what, kind: 'section', place, figure: (units) => stripText(sights[place].strip, units) });
  return readings;
}

const RANKS = [
  ['base', 'Thinnest web, base blanks'],
  ['group', 'Thinnest web, group blanks'],
  ['all-section', 'Thinnest web, all-section blank'],
] as const;

/** The strip that can be looked through: its width, or by how much wards pass each other. */
export function stripText(strip: number, units: Units): string {
  return strip > 0 ? `${readingText(strip, units)} wide` : `none: wards pass by ${readingText(strip, units)}`;
}

/** The place of the least number; -1 where there is none. */
function least(numbers: readonly number[]): number {
  let best = -1;
  for (const [i, number] of numbers.entries())
    if (!Number.isNaN(number) && (best < 0 || number < numbers[best])) best = i;
  return best;
}
