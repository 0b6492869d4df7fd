import type { Ring } from '../geom/ring.ts';
import { blankFromOpening } from '../profile/opening-from-blank.ts';
import type { CodeRules } from './free-codes.ts';
import type { GrowJudge, Part } from './grow-judge.ts';
import type { FamilyParts } from './grow-kinds.ts';
import { type GrowGround, type GrowSite, keywayOf } from './grow-sites.ts';

/** What new sections are made to. */
export interface GrowMaking {
  readonly judge: GrowJudge;
  /** The gap of a new blank in its keyway, and the tolerance of both; nanometres. */
  readonly gap: number;
  readonly band: number;
}

/** A new section before it has a name. */
export interface DrawnSection {
  readonly code: readonly number[];
  readonly keyway: Part;
  readonly blank: Part;
}

/** Draws the keyway of a code and its widest blank; null where one of the two is none. */
export function drawSection(
  ground: GrowGround,
  code: readonly number[],
  { gap, band }: GrowMaking,
): DrawnSection | null {
  const ring = keywayOf(ground, code);
  const blank = ring && widestBlank(ring, gap);
  if (!ring || !blank) return null;
  return { code, keyway: { id: '', ring, band }, blank: { id: '', ring: blank, band } };
}

function widestBlank(ring: Ring, gap: number): Ring | null {
  const made = blankFromOpening({ name: '', ring }, gap);
  return made.ok && made.made.told.length === 0 ? made.made.ring : null;
}

type Steps<Value> = Generator<{ done: number; total: number }, Value, void>;

/**
 * The ground with only those wards that serve: the all-section blanks enter a keyway with all of them, and each level of a
 * site by itself stops a blank that has the groove for the level below only, whatever parts within their tolerance are taken.
 *
 * @returns with no sites where none serves.
 */
export function* soundGround(ground: GrowGround, tops: readonly Part[], making: GrowMaking): Steps<GrowGround> {
  const byUse = ground.sites
    .map((site, i) => ({ site, i, used: site.wards.reduce((sum, { keyways }) => sum + keyways.length, 0) }))
    .sort((a, b) => b.used - a.used || a.i - b.i);
  const taken = new Map<number, GrowSite>();
  for (const [n, { site, i }] of byUse.entries()) {
    const wards = site.wards.filter((ward) => {
      const trial = [...taken.values(), { ...site, wards: [ward] }];
      return entersAll({ ...ground, sites: trial }, tops, making);
    });
    if (wards.length > 0) taken.set(i, { ...site, wards });
    yield { done: n + 1, total: 2 * byUse.length };
  }
  let sound: GrowGround = { ...ground, sites: ground.sites.flatMap((_, i) => taken.get(i) ?? []) };
  for (let site = sound.sites.length - 1; site >= 0; site--) {
    sound = withSoundLevels(sound, site, making);
    yield { done: 2 * byUse.length - site, total: 2 * byUse.length };
  }
  return sound;
}

function full({ sites }: GrowGround): number[] {
  return sites.map(({ wards }) => wards.length);
}

function entersAll(ground: GrowGround, tops: readonly Part[], making: GrowMaking): boolean {
  const keyway = keywayOf(ground, full(ground));
  return keyway !== null && tops.every((top) => making.judge.enters(asPart(keyway, making), top).ok);
}

function asPart(ring: Ring, { band }: GrowMaking): Part {
  return { id: '', ring, band };
}

/** A site without the levels that do not stop the level below; without the site where none is left. */
function withSoundLevels(ground: GrowGround, site: number, making: GrowMaking): GrowGround {
  let { wards } = ground.sites[site];
  const replaced = () => ({
    ...ground,
    sites:
      wards.length > 0 ? ground.sites.with(site, { ...ground.sites[site], wards }) : ground.sites.toSpliced(site, 1),
  });
  for (let level = 1; level <= wards.length; ) {
    const now = replaced();
    const keyway = keywayOf(now, alone(now, site, level));
    const blank = drawSection(now, full(now).with(site, level - 1), making)?.blank;
    if (keyway && blank && making.judge.stops(asPart(keyway, making), blank)) level++;
    else wards = wards.toSpliced(level - 1, 1);
  }
  return replaced();
}

function alone({ sites }: GrowGround, site: number, level: number): number[] {
  return sites.map((_, i) => (i === site ? level : 0));
}

/**
 * What each site does by itself: from which ward on it stops a blank that must stay out of new keyways, and up to which
 * groove of a new blank an existing keyway stops that. Both are asked of the fit core with everything else out of the way:
 * wards elsewhere can only stop a blank too, and a blank with fewer grooves elsewhere is stopped all the more.
 *
 * @param kept the blanks that must stay out of new keyways.
 */
export function* growRules(
  ground: GrowGround,
  parts: FamilyParts,
  kept: readonly Part[],
  stops: number,
  making: GrowMaking,
): Steps<CodeRules> {
  const { judge } = making;
  const levels = full(ground);
  const total = ground.sites.length;
  const stoppedFrom = kept.map(() => [] as number[]);
  const stopsUpTo = parts.keyways.map(() => [] as number[]);
  for (const [site, most] of levels.entries()) {
    const keyways = Array.from({ length: most }, (_, i) => keywayOf(ground, alone(ground, site, i + 1)));
    const blanks = Array.from({ length: most }, (_, i) => drawSection(ground, levels.with(site, i), making)?.blank);
    for (const [k, blank] of kept.entries()) {
      const from = keyways.findIndex((ring) => ring !== null && judge.stops(asPart(ring, making), blank));
      stoppedFrom[k].push(from < 0 ? most + 1 : from + 1);
    }
    for (const [k, keyway] of parts.keyways.entries()) {
      const upTo = blanks.findLastIndex((blank) => blank && judge.stops(keyway, blank));
      stopsUpTo[k].push(upTo);
      yield { done: site + (k + 1) / parts.keyways.length, total };
    }
  }
  return { space: { levels }, stoppedFrom, stopsUpTo, stops };
}
