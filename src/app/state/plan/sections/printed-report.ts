import type { Family } from '../../../../family/family.ts';
import { alikeWords } from '../../../../family/guard-margin.ts';
import { readingText, type Units, wearLengthText } from '../../../../family/length-text.ts';
import type { Access } from '../../../../plan/access.ts';
import type { PlanPair } from '../../../../plan/drawn-plan.ts';
import { sayConfirmed } from '../../../../plan/say-confirmed.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { thinnestWeb } from '../../../../profile/thinnest-web.ts';
import type { Material } from '../../../../strength/materials.ts';
import type { GuardState } from '../../guarding.ts';
import type { Fact } from '../../profile-facts.ts';
import { limitText, materialText } from '../strength/strength-words.ts';
import type { ConfirmedPlan } from './drawn-sections.ts';
import type { PlanStrength } from './plan-strength.ts';
import type { PrintSource } from './print-source.ts';
import { NO_TOLERANCE, planReadings } from './report-readings.ts';
import type { SectionsQuestion } from './sections-question.ts';

/** What was found when the plan was drawn. */
export function drawnReport(confirmed: ConfirmedPlan, access: Access, units: Units): Fact[] {
  const { report, profiles } = confirmed;
  const { clearance, guard, pairs } = report;
  const names = new Map(profiles.map(({ id, name }) => [id, name]));
  const pairText = ({ blank, opening, alike }: PlanPair) =>
    `${names.get(blank) ?? blank} in ${names.get(opening) ?? opening}${alikeWords({ alike })}`;
  const { sections, blanks } = access;
  return [
    { term: 'Pairs judged by their outlines', value: `${pairs.wanted} enter, ${pairs.forbidden} stay out` },
    {
      term: 'Smallest clearance',
      value: clearance ? `${readingText(clearance.length, units)}, ${pairText(clearance)}` : 'none',
    },
    {
      term: 'Guard margin, wear of both parts',
      value: guard ? `${wearLengthText(guard.length, units)}, ${pairText(guard)}` : 'no wear lets any pair in',
    },
    ...planReadings(report, access).map(({ what, kind, place, figure }) => ({
      term: what,
      value: `${figure(units)}, ${(kind === 'blank' ? blanks : sections)[place]?.name ?? ''}`,
    })),
  ];
}

/** What the report takes for granted, and what else was confirmed. */
export function printedNotes(source: PrintSource, { gap }: Pick<SectionsQuestion, 'gap'>, units: Units): string[] {
  if (source.from === 'family')
    return [...(gap.tolerance === 0 ? [NO_TOLERANCE] : []), 'Pairs are judged as drawn, upright.'];
  const within = `All pairs were judged for all parts within ${readingText(gap.tolerance, units)} of their drawing to either side.`;
  const exact = [gap.tolerance === 0 ? NO_TOLERANCE : within];
  const { report, profiles } = source.confirmed;
  const names = new Map(profiles.map(({ id, name }) => [id, name]));
  return [...exact, ...sayConfirmed(report, (id) => names.get(id) ?? id)];
}

/** What is known of the planned sections that the family holds. */
export function heldReport(
  { document, fits, guard }: Extract<PrintSource, { from: 'family' }>,
  blanks: readonly Profile[],
  openings: readonly Profile[],
  units: Units,
): Fact[] {
  const facts: Fact[] = [];
  const ids = new Set(openings.map(({ id }) => id));
  let least: { length: number; pair: string } | null = null;
  for (const blank of blanks) {
    const row = fits?.fits[fits.profiles.indexOf(blank.id)];
    for (const [i, fit] of row?.entries() ?? []) {
      const opening = fits?.openings[i] ?? '';
      if (!fit || fit.verdict === 'blocked' || !ids.has(opening)) continue;
      const name = openings.find(({ id }) => id === opening)?.name ?? opening;
      if (!least || fit.clearance < least.length) least = { length: fit.clearance, pair: `${blank.name} in ${name}` };
    }
  }
  facts.push({
    term: 'Smallest clearance',
    value: least ? `${readingText(least.length, units)}, ${least.pair}` : 'not judged yet',
  });
  facts.push(guardFact(document.family, guard, units));
  const webs = blanks.flatMap(({ name, milled }) => {
    const web = milled && thinnestWeb(milled);
    return web ? [{ name, thickness: web.thickness }] : [];
  });
  const thinnest = webs.sort((a, b) => a.thickness - b.thickness)[0];
  if (thinnest)
    facts.push({ term: 'Thinnest web', value: `${readingText(thinnest.thickness, units)}, ${thinnest.name}` });
  return facts;
}

/** The guard margin of the whole family: what else it holds counts too. */
function guardFact({ profiles }: Family, { phase, margins }: GuardState, units: Units): Fact {
  const names = new Map(profiles.map(({ id, name }) => [id, name]));
  const nameOf = (id: string) => names.get(id) ?? id;
  const pair = margins?.guard;
  const none = phase === 'known' ? 'no wear lets any pair in' : 'not measured yet';
  return {
    term: 'Guard margin of the family, wear of both parts',
    value: pair
      ? `${wearLengthText(pair.length, units)}, ${nameOf(pair.profile)} in ${nameOf(pair.opening)}${alikeWords(pair)}`
      : none,
  };
}

/** What the blanks bear in one material, as a table. */
export interface PrintedStrength {
  /** Named in the heading. */
  readonly material: string;
  /** How many blanks are examined so far, or that some could not be; empty once all are. */
  readonly wait: string;
  /** The blank that yields first; empty while not all are examined. */
  readonly weakest: string;
  readonly rows: readonly { readonly name: string; readonly yields: string; readonly twists: string }[];
}

/**
 * The strength of the blanks that are printed, a row for each.
 *
 * @check tests/unit/app/printed-plan.test.ts
 */
export function printedStrength(
  blanks: readonly Profile[],
  { limits, troubles, done, weakest }: PlanStrength,
  material: Material,
  units: Units,
): PrintedStrength {
  return {
    material: materialText(material),
    wait: waitText(blanks.length, done, troubles.filter((trouble) => trouble !== '').length),
    weakest: blanks[weakest]?.name ?? '',
    rows: blanks.map(({ name }, i) => {
      const limit = limits[i];
      const missing = troubles[i] ? 'could not be examined' : 'not examined yet';
      const text = (range: 'yieldNm' | 'plasticNm') => (limit ? limitText(limit[range], units) : missing);
      return { name, yields: text('yieldNm'), twists: text('plasticNm') };
    }),
  };
}

function waitText(all: number, done: number, failed: number): string {
  if (done === all) return '';
  const known = `${done} of ${all} blanks are examined`;
  return done + failed < all ? `${known} so far.` : `${known}; the others could not be.`;
}
