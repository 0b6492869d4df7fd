import type { BladeLimits } from '../family/plan.ts';
import { type SayLength, sayMillimetres } from '../profile/check-milled.ts';
import type { GrooveSide } from '../profile/profile.ts';
import { bladeFaults } from './blade-faults.ts';
import { type Arranged, type Arrangement, layOutSites } from './lay-out-sites.ts';
import type { LimitWord } from './limit-word.ts';
import { leastWebOf, type PlanGap } from './plan-gap.ts';
import { siteDepths } from './site-shape.ts';

/** A place where the keyways of a family may have a ward and its blanks a groove. */
export interface WardSite {
  readonly side: GrooveSide;
  /** Height of the groove's lower edge above the back of the blade, nanometres. */
  readonly bottom: number;
  /** Depths that a ward may have here, nanometres, shallowest first, one a step. */
  readonly depths: readonly number[];
}

/** All places for wards that one blade has room for at once, lowest first, and what keeps them from being more. */
export interface SiteLayout {
  readonly sites: readonly WardSite[];
  readonly limits: readonly LimitWord[];
  /** How the two faces stand to each other; null where no site can be made. */
  readonly arrangement: Arrangement | null;
  /** The thinnest web of a blade with every groove at full depth, nanometres; 0 where no site can be made. */
  readonly web: number;
}

/**
 * The ward sites that a blade has room for.
 *
 * The blank that enters all keyways has every groove that is used, so all sites must leave the least web between them
 * at once; the gap, its play and the tolerance decide what depth stops a blade for certain.
 *
 * @param depths how many depths a ward may have at one site.
 * @param say how lengths are written in words.
 * @returns no sites, and the faults, where blades cannot be made so; else the sites and the limits that bind.
 * @check tests/unit/plan/ward-sites.test.ts, tests/laws/ward-sites.test.ts
 */
export function wardSites(
  blade: BladeLimits,
  gap: PlanGap,
  depths: number,
  say: SayLength = sayMillimetres,
): SiteLayout {
  const faults = bladeFaults(blade, gap, depths, say);
  if (faults.length > 0) return { sites: [], limits: faults, arrangement: null, web: 0 };
  const arranged = layOutSites(blade, gap);
  const ofSite = siteDepths(blade, depths);
  const sites = arranged.places.map(({ side, bottom }) => ({ side, bottom, depths: ofSite }));
  const limits = [...bindingWords(blade, arranged, gap, say), ...notes(gap, say)];
  return { sites, limits, arrangement: arranged.arrangement, web: Math.round(arranged.web) };
}

function bindingWords(blade: BladeLimits, arranged: Arranged, gap: PlanGap, say: SayLength): LimitWord[] {
  const { heightStep, sides, cutZone } = blade;
  const found: LimitWord[] = [
    {
      field: 'heightStep',
      kind: 'binds',
      words: `The height between back zone and cut zone has room for ${faceCount(arranged)} in steps of ${say(heightStep)}`,
      cure: `A higher blade, a cut zone of less than ${say(cutZone)} or smaller steps give more.`,
    },
  ];
  if (sides !== 'both')
    found.push({
      field: 'sides',
      kind: 'binds',
      words: `Only the ${sides} face may be milled`,
      cure: 'Allow both faces.',
    });
  if (arranged.arrangement === 'thinned')
    found.unshift({
      field: 'grooveDepth',
      kind: 'binds',
      words: `Two grooves ${say(blade.grooveDepth)} deep at one height, or close to it, leave less than the least web of ${say(leastWebOf(gap))} of a blade ${say(blade.thickness)} thick, so sites of opposite faces stand apart`,
      cure: 'A thicker blade, shallower grooves or a smaller least web give more.',
    });
  return found;
}

function faceCount({ places }: Arranged): string {
  const left = places.filter(({ side }) => side === 'left').length;
  const right = places.length - left;
  if (left === 0 || right === 0) return `${left + right} ${left + right === 1 ? 'site' : 'sites'}`;
  return `${left} sites on the left and ${right} on the right`;
}

function notes({ leastWeb }: PlanGap, say: SayLength): LimitWord[] {
  if (leastWeb !== undefined) return [];
  const words = `The family sets no least web; ${say(leastWebOf({ runningClearance: 0, tolerance: 0 }))} is kept`;
  return [{ field: 'leastWeb', kind: 'note', words, cure: 'Set one that suits the metal.' }];
}
