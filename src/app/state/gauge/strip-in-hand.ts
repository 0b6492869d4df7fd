import { type Family, openingsOf } from '../../../family/family.ts';
import type { Verdict } from '../../../fit/fit.ts';
import { judgeStrip } from '../../../gauge/judge-strip.ts';
import { type Pinch, pinchOnCurve } from '../../../gauge/pinch.ts';
import { straightTool } from '../../../gauge/straight-tool.ts';
import type { Strip, ThicknessCurve } from '../../../gauge/thickness-curve.ts';
import { type Box, boxOf, NM_PER_MM } from '../../../geom/point.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { Session } from '../session.ts';

/** The tilt that is tried first where a family states none, degrees. */
const FIRST_TILT_DEG = 2;

/** The tilt limit of a family for strips, radians. */
export function usualTilt({ tiltLimit }: Family): number {
  return tiltLimit > 0 ? tiltLimit : (FIRST_TILT_DEG * Math.PI) / 180;
}

/** The tools of a family, in chart order. */
export function toolsOf(family: Family): Profile[] {
  return family.profiles.filter(({ kind }) => kind === 'tool');
}

/** The upright box of a profile, nanometres. */
export function boxAround({ ring }: Profile): Box {
  return boxOf(ring);
}

/** Upright size of a profile over all, nanometres. */
export function sizeOf({ ring }: Profile): { readonly thickness: number; readonly height: number } {
  const box = boxOf(ring);
  return { thickness: box.maxX - box.minX, height: box.maxY - box.minY };
}

/** Part of the lowest keyway that a strip is asked about where the family has no tool. */
const USUAL_SHARE = 0.7;

/**
 * The height that is asked about first: that of the first tool, else seven tenths of the lowest keyway in tenths of a
 * millimetre; nanometres.
 *
 * @check tests/unit/app/gauge-strip.test.ts
 */
export function usualHeight(family: Family): number {
  const [tool] = toolsOf(family);
  if (tool) return sizeOf(tool).height;
  const heights = openingsOf(family).map((opening) => sizeOf(opening).height);
  if (heights.length === 0) return 5 * NM_PER_MM;
  const tenth = NM_PER_MM / 10;
  return Math.max(tenth, Math.floor((USUAL_SHARE * Math.min(...heights)) / tenth) * tenth);
}

const pinches = new WeakMap<ThicknessCurve, { readonly height: number; readonly pinch: Pinch | null }>();

/**
 * The thickest strip of a height in the keyway of a curve, and what holds it; found once for all who show that height.
 *
 * @returns null where no strip so tall goes in.
 * @check tests/unit/app/gauge-strip.test.ts
 */
export function pinchInHand(curve: ThicknessCurve, { ring }: Profile, height: number): Pinch | null {
  const before = pinches.get(curve);
  if (before?.height === height) return before.pinch;
  const pinch = pinchOnCurve(curve, ring, height);
  pinches.set(curve, { height, pinch });
  return pinch;
}

const judged = new WeakMap<
  ThicknessCurve,
  { readonly strip: Strip; readonly gap: number; readonly verdict: Verdict }
>();

/**
 * What a strip does in the keyway of a curve; found once for all who show that strip.
 *
 * @param gap the running clearance, nanometres.
 * @check tests/unit/app/gauge-strip.test.ts
 */
export function verdictInHand(curve: ThicknessCurve, { ring }: Profile, strip: Strip, gap: number): Verdict {
  const before = judged.get(curve);
  if (before?.gap === gap && before.strip.height === strip.height && before.strip.thickness === strip.thickness)
    return before.verdict;
  const verdict = judgeStrip(curve, ring, strip, gap);
  judged.set(curve, { strip, gap, verdict });
  return verdict;
}

/** Picks a tool and takes its size in hand; a shaped one only gives its height over all. */
export function holdTool({ selection, gauge }: Session, family: Family, id: string): void {
  const tool = family.profiles.find((profile) => profile.id === id);
  if (!tool) return;
  const straight = straightTool(tool.ring);
  selection.setState({ entrantId: id, part: 'entrant' });
  gauge.setState(straight ? { ...straight } : { height: sizeOf(tool).height, thickness: null });
}
