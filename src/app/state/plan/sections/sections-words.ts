import { countWord } from '../../../../family/count-word.ts';
import { readingText, type Units } from '../../../../family/length-text.ts';
import { nameList } from '../../../../family/name-list.ts';
import type { Plan } from '../../../../family/plan.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import { tallyPairs } from '../access/access-words.ts';
import type { PlanChange } from './near-plans.ts';
import type { PlanningState } from './sections-planning.ts';
import type { SectionsQuestion } from './sections-question.ts';

/**
 * What was found in one line: "9 sites, proved fewest", "10 sites; at least 9 are needed", "Needs 9 sites, the blade has 7".
 *
 * @param room how many sites the blade has room for.
 * @check tests/unit/app/sections-words.test.ts
 */
export function foundWords({ sites, lowerBound, proved }: WardPlan, room: number): string {
  const isProved = proved || lowerBound >= sites;
  if (sites === 0) return 'No site is needed: nothing is to be kept apart';
  if (sites > room) {
    const needs =
      isProved || lowerBound > room
        ? `Needs ${countWord(Math.max(lowerBound, 1), 'site')}`
        : `Takes ${countWord(sites, 'site')}`;
    const has = room === 0 ? 'the blade has none' : `the blade has ${room}`;
    if (isProved || lowerBound > room) return `${needs}, ${has}`;
    return `${needs} so far, ${has}; at least ${lowerBound} are needed`;
  }
  if (isProved) return `${countWord(sites, 'site')}, proved fewest`;
  if (lowerBound <= 0) return `${countWord(sites, 'site')}; how few would do is not known yet`;
  return `${countWord(sites, 'site')}; at least ${lowerBound} ${lowerBound === 1 ? 'is' : 'are'} needed`;
}

const BOUND_WORDS: Readonly<Record<WardPlan['bound'], string>> = {
  sperner:
    'by Sperner’s theorem, group by group: fewer sites have too few codes for blanks, and for groups of them, that are kept apart',
  fooling: 'by pairs of which no two can be stopped at one site',
  search: 'by an exact search that found no plan with fewer',
  none: '',
};

/** What shows that fewer sites do not do; empty where nothing does. */
export function boundWords({ bound, lowerBound }: WardPlan): string {
  return lowerBound > 0 ? BOUND_WORDS[bound] : '';
}

/** What the wards are for: "8 sections, 11 blanks: 20 pairs must enter, 68 are stopped by at least 1 ward each". */
export function demandWords(question: SectionsQuestion): string {
  const { access, plan } = question;
  const { must, not, free } = tallyPairs(question);
  const reserve = plan.reserve > 0 ? ` and ${plan.reserve} in reserve` : '';
  const more = (question.table[0]?.length ?? 0) - access.blanks.length;
  const blanks = `${countWord(access.blanks.length, 'blank')}${more > 0 ? ` and ${more} in reserve` : ''}`;
  const stopped = `${countWord(not, 'pair')} ${not === 1 ? 'is' : 'are'} stopped by at least ${countWord(plan.stops, 'ward')}${not === 1 ? '' : ' each'}`;
  const either = free > 0 ? `, ${countWord(free, 'pair')} may do either (don’t care)` : '';
  return `${countWord(access.sections.length, 'section')}${reserve}, ${blanks}: ${countWord(must, 'pair')} must enter, ${stopped}${either}.`;
}

/** How much is milled in all blanks together. */
export function millingWords({ grooved, grooves }: WardPlan): string {
  const several = grooves.some((row) => row.some((depth) => depth > 1));
  return several ? `${countWord(grooved, 'step')} of groove depth` : countWord(grooved, 'groove');
}

/** What is being done now, for the line with the progress; empty at rest. */
export function workWords({ phase, found, better, drawing }: PlanningState): string {
  if (phase === 'waiting' || phase === 'answering') return 'Laying out wards';
  if (phase === 'improving' || phase === 'searching') {
    if (!found) return 'Looking for wards';
    const best = better ?? found;
    return `Looking for less: best so far ${countWord(best.sites, 'site')}, ${best.proved ? 'proved fewest' : `at least ${best.lowerBound} needed`}, ${millingWords(best)}`;
  }
  if (drawing.phase === 'drawing') return 'Drawing the sections and judging every pair';
  return '';
}

/** What a change of a plan is called on its key, and what it is. */
export function changeWords(
  { options, blade, shared, without }: PlanChange,
  plan: Pick<Plan, 'blade'>,
  units: Units,
): { readonly key: string; readonly what: string } {
  if (options?.depths !== undefined)
    return { key: `Use ${options.depths} depths per site`, what: `With ${options.depths} depths at each site` };
  if (options?.stops !== undefined)
    return {
      key: `Stop by ${countWord(options.stops, 'ward')}`,
      what: `With ${countWord(options.stops, 'ward')} in the way of each`,
    };
  if (shared) return { key: 'Share these sections', what: sharedWords(shared) };
  if (without) {
    const sections = countWord(without.length, 'section');
    return { key: '', what: `With ${sections} fewer, such as without ${nameList(without, MOST_NAMES)}` };
  }
  if (options?.reserve !== undefined) return { key: 'Keep no reserve', what: 'Without room for sections to come' };
  if (blade?.sides !== undefined) return { key: 'Mill both faces', what: 'With grooves on both faces' };
  for (const [field, name, keyOf] of CHANGED_LENGTHS) {
    const to = blade?.[field];
    if (to === undefined) continue;
    const larger = field === 'height' ? 'higher' : 'larger';
    const more = to > plan.blade[field] ? larger : 'smaller';
    const by = readingText(Math.abs(to - plan.blade[field]), units);
    return { key: keyOf(readingText(to, units)), what: `With a ${name} ${by} ${more}` };
  }
  return { key: 'Change the blade', what: 'With another blade' };
}

/** Whoever enters one of the areas then enters all that share its section. */
function sharedWords(shared: readonly (readonly string[])[]): string {
  const fewer = shared.reduce((sum, group) => sum + group.length - 1, 0);
  const groups = shared.slice(0, MOST_GROUPS).map((group) => nameList(group, MOST_NAMES));
  const more = shared.length > MOST_GROUPS ? `; and ${countWord(shared.length - MOST_GROUPS, 'group')} more` : '';
  return `With ${countWord(fewer, 'section')} fewer, one for ${groups.join('; one for ')}${more}; who enters one of them enters all`;
}

const MOST_GROUPS = 3;
const MOST_NAMES = 3;

type ChangedLength = keyof Pick<Plan['blade'], 'height' | 'cutZone' | 'heightStep'>;

const CHANGED_LENGTHS: readonly (readonly [ChangedLength, string, (length: string) => string])[] = [
  ['height', 'blade', (length) => `Make the blade ${length} high`],
  ['cutZone', 'zone kept for the cuts', (length) => `Keep ${length} for the cuts`],
  ['heightStep', 'step from groove to groove', (length) => `Step by ${length}`],
];
