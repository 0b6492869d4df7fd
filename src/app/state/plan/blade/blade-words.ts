import { readingText, type Units } from '../../../../family/length-text.ts';
import type { BladeLimits } from '../../../../family/plan.ts';
import { NM_PER_INCH } from '../../../../geom/point.ts';
import type { Arrangement } from '../../../../plan/lay-out-sites.ts';
import type { MoreRoom } from '../../../../plan/one-more-site.ts';
import { gapAllRound, leastStop, leastWebOf, type PlanGap } from '../../../../plan/plan-gap.ts';
import { slantingWeb } from '../../../../plan/slanting-web.ts';
import type { SiteLayout, WardSite } from '../../../../plan/ward-sites.ts';
import { lengthText } from '../../draw/mill-words.ts';
import type { Fact } from '../../profile-facts.ts';

/** "10 sites: 5 on the left, 5 on the right". */
export function countWords({ sites }: Pick<SiteLayout, 'sites'>): string {
  const left = sites.filter(({ side }) => side === 'left').length;
  const right = sites.length - left;
  const all = `${sites.length} ward ${sites.length === 1 ? 'site' : 'sites'}`;
  return sites.length === 0 ? 'No ward site' : `${all}: ${left} on the left, ${right} on the right`;
}

/** How the faces stand to each other, and why. */
export function arrangementWords(arrangement: Arrangement): string {
  switch (arrangement) {
    case 'level':
      return 'Sites of the two faces stand level: grooves opposite each other leave the least web.';
    case 'staggered':
      return 'Sites of the right face stand between those of the left: so the web between them is thicker, with as many sites.';
    case 'thinned':
      return 'The faces take turns: grooves opposite each other would leave less than the least web.';
    case 'one-face':
      return 'Only one face is milled.';
  }
}

/** Names of the limits in the middle of a sentence. */
const FIELD_WORDS: Readonly<Record<MoreRoom['field'], string>> = {
  thickness: 'thickness',
  height: 'height',
  backRadius: 'back radius',
  cutZone: 'height for the cuts',
  backZone: 'height at the back',
  grooveWidth: 'groove width',
  heightStep: 'height step',
  grooveDepth: 'groove depth',
  depthStep: 'depth step',
  flank: 'flank angle',
  rootRadius: 'root radius',
  sides: 'faces',
  leastWeb: 'least web',
};

/** A length of the blade: as typed, to a micrometre or a ten thousandth of an inch: "0.6 mm", "0.024 in". */
export function bladeText(nm: number, units: Units): string {
  const step = units === 'in' ? NM_PER_INCH / 10_000 : 1_000;
  return lengthText(Math.round(nm / step) * step, units);
}

/** As a reading in millimetres, in inches as all of the blade. */
function gapLengthText(nm: number, units: Units): string {
  return units === 'in' ? bladeText(nm, units) : readingText(nm, units);
}

/** "0.14 mm more height: 12 sites". */
export function moreRoomWords({ field, by, sites }: MoreRoom, units: Units): string {
  if (field === 'sides') return `Both faces: ${sites} sites`;
  return `${bladeText(Math.abs(by), units)} ${by > 0 ? 'more' : 'less'} ${FIELD_WORDS[field]}: ${sites} sites`;
}

/** What the gap comes to. */
export function gapFacts(gap: PlanGap, layout: SiteLayout, units: Units): Fact[] {
  const facts = [
    { term: 'Gap all round a blade', value: gapLengthText(gapAllRound(gap), units) },
    { term: 'A ward must be deeper by', value: gapLengthText(leastStop(gap), units) },
    { term: 'Least web', value: gapLengthText(leastWebOf(gap), units) },
  ];
  if (layout.sites.length === 0) return facts;
  return [...facts, { term: 'Web, all grooves at full depth', value: gapLengthText(layout.web, units) }];
}

/** What is kept besides gaps and tolerances where a ward is to stop a blade. */
export function chordsText(gap: PlanGap, units: Units): string {
  return gapLengthText(leastStop(gap) - 2 * gapAllRound(gap) - 4 * gap.tolerance, units);
}

/** The number of a site, for people: lowest first. */
export function siteName(place: number): string {
  return `Site ${place + 1}`;
}

/** "Site 3, left face, 1.54 to 2.14 mm". */
export function siteLabel(place: number, { side, bottom }: WardSite, { grooveWidth }: BladeLimits, units: Units) {
  return `${siteName(place)}, ${side} face, ${bladeText(bottom, units)} to ${bladeText(bottom + grooveWidth, units)}`;
}

/** What is to be said of one site. */
export function siteFacts(blade: BladeLimits, gap: PlanGap, layout: SiteLayout, place: number, units: Units): Fact[] {
  const site = layout.sites[place];
  const n = (nm: number) => bladeText(nm, units);
  const deepest = site.depths[site.depths.length - 1];
  const past = deepest - gapAllRound(gap) - blade.thickness / 2;
  return [
    { term: 'Face', value: site.side },
    { term: 'Groove', value: `${n(site.bottom)} to ${n(site.bottom + blade.grooveWidth)}` },
    { term: site.depths.length > 1 ? 'Depths' : 'Depth', value: site.depths.map(n).join(', ') },
    { term: past > 0 ? 'Ward, past the centre line' : 'Ward, short of the centre line', value: n(Math.abs(past)) },
    { term: 'Stops by, at full depth', value: n(deepest - 2 * gapAllRound(gap)) },
    ...nearestFact(blade, layout, place, n),
  ];
}

function nearestFact(blade: BladeLimits, { sites }: SiteLayout, place: number, n: (nm: number) => string): Fact[] {
  const { side, bottom } = sites[place];
  const others = sites.filter((other) => other.side !== side);
  if (others.length === 0) return [];
  const rise = Math.min(...others.map((other) => Math.abs(other.bottom - bottom)));
  const web = slantingWeb(blade, blade.grooveDepth, blade.grooveDepth, rise);
  return [{ term: 'Web to the other face', value: n(web) }];
}

const STEPS: Readonly<Record<string, readonly [number, boolean]>> = {
  ArrowUp: [1, false],
  ArrowDown: [-1, false],
  ArrowLeft: [0, true],
  ArrowRight: [0, true],
};

/** The site that a key leads to: up and down on one face, left and right to the nearest on the other; null for other keys. */
export function siteByKey(sites: readonly WardSite[], place: number, key: string): number | null {
  if (key === 'Home') return 0;
  if (key === 'End') return sites.length - 1;
  const way = STEPS[key];
  const from = sites[place];
  if (!way || !from) return null;
  const [step, across] = way;
  const numbered = sites.map((site, i) => ({ ...site, i }));
  if (!across) {
    const face = numbered.filter(({ side }) => side === from.side);
    const at = face.findIndex(({ i }) => i === place) + step;
    return face[at]?.i ?? place;
  }
  const wanted = key === 'ArrowLeft' ? 'left' : 'right';
  if (from.side === wanted) return place;
  const off = (bottom: number) => Math.abs(bottom - from.bottom);
  const other = numbered.filter(({ side }) => side === wanted).sort((a, b) => off(a.bottom) - off(b.bottom));
  return other[0]?.i ?? place;
}
