import type { BladeLimits } from '../family/plan.ts';
import { NM_PER_UM } from '../geom/point.ts';
import { type SayLength, sayMillimetres } from '../profile/check-milled.ts';
import type { LimitField, LimitWord } from './limit-word.ts';
import { gapAllRound, leastStop, leastWebOf, type PlanGap } from './plan-gap.ts';
import { leastLand, leastTip, rootReach, rootWidth, siteBand, siteDepths, tipWidth, wardInset } from './site-shape.ts';

interface Asked {
  readonly blade: BladeLimits;
  readonly gap: PlanGap;
  readonly depths: number;
  readonly say: SayLength;
}

/**
 * Why no ward site of a blade can be made, or would stop anything; empty where sites can be laid out.
 *
 * @param depths how many depths a ward may have at one site.
 * @check tests/unit/plan/ward-sites.test.ts
 */
export function bladeFaults(
  blade: BladeLimits,
  gap: PlanGap,
  depths: number,
  say: SayLength = sayMillimetres,
): LimitWord[] {
  const asked = { blade, gap, depths, say };
  return [...gapFaults(asked), ...depthFaults(asked), ...shapeFaults(asked), ...heightFaults(asked)];
}

function fault(field: LimitField, words: string, cure: string): LimitWord {
  return { field, kind: 'fault', words, cure };
}

function gapFaults({ blade, gap, say }: Asked): LimitWord[] {
  const found: LimitWord[] = [];
  if (gapAllRound(gap) < NM_PER_UM)
    found.push(
      fault('runningClearance', 'There is no gap to run in', `Give a running clearance, such as ${say(40_000)}.`),
    );
  if (blade.backRadius > blade.thickness / 2)
    found.push(
      fault(
        'backRadius',
        `The back radius ${say(blade.backRadius)} is more than half of the thickness`,
        `Give at most ${say(blade.thickness / 2)}.`,
      ),
    );
  return found;
}

/** Whether every step of depth stops a blade, and leaves a web. */
function depthFaults({ blade, gap, depths, say }: Asked): LimitWord[] {
  const found: LimitWord[] = [];
  const { thickness, grooveDepth, depthStep } = blade;
  const [need, web] = [leastStop(gap), leastWebOf(gap)];
  const why = `The play of the blade and the tolerance of both parts take ${say(need)}`;
  if (thickness - grooveDepth < web)
    found.push(
      fault(
        'grooveDepth',
        `A groove ${say(grooveDepth)} deep leaves ${say(Math.max(0, thickness - grooveDepth))} of a blade ${say(thickness)} thick; the least web is ${say(web)}`,
        thickness > web ? `Give at most ${say(thickness - web)}, or a thicker blade.` : 'Give a thicker blade.',
      ),
    );
  if (grooveDepth <= need)
    found.push(
      fault(
        'grooveDepth',
        `A ward ${say(grooveDepth)} deep would not stop a blade for certain. ${why}`,
        `Give more than ${say(need)}, or less running clearance or tolerance.`,
      ),
    );
  else if (depths > 1 && depthStep <= need)
    found.push(
      fault(
        'depthStep',
        `A ward one step of ${say(depthStep)} deeper would not stop a blade for certain. ${why}`,
        `Give more than ${say(need)}, or plan with one depth.`,
      ),
    );
  else if (siteDepths(blade, depths)[0] <= need)
    found.push(
      fault(
        'depths',
        `With ${depths} depths the shallowest ward is ${say(Math.max(0, siteDepths(blade, depths)[0]))} deep and would not stop a blade. ${why}`,
        'Plan with fewer depths, or make the steps smaller or the grooves deeper.',
      ),
    );
  return found;
}

/** Whether a groove and its ward have the shape that the cutter asks for. */
function shapeFaults({ blade, gap, depths, say }: Asked): LimitWord[] {
  const { grooveDepth, grooveWidth, rootRadius, flank } = blade;
  const root = rootWidth(blade, grooveDepth);
  if (root <= 0)
    return [
      fault(
        'flank',
        `The flanks meet before the root: a groove ${say(grooveWidth)} wide loses ${say(Math.round(grooveWidth - root))} down to ${say(grooveDepth)}`,
        'Give a smaller flank angle, or a wider or shallower groove.',
      ),
    ];
  const found: LimitWord[] = [];
  const [tip, least] = [tipWidth(blade, gap, grooveDepth), leastTip(gap)];
  if (tip < least)
    found.push(
      fault(
        'grooveWidth',
        `A ward for this groove would be ${say(Math.max(0, Math.round(tip)))} wide at its tip, less than ${say(least)}`,
        `Give at least ${say(roundUp(grooveWidth + least - tip))}, or a smaller flank angle or gap.`,
      ),
    );
  const [steps] = siteDepths(blade, depths);
  // Steps that leave no depth at all are a fault of their own.
  const shallowest = steps > 0 ? steps : grooveDepth;
  const room = Math.min(root / 2, shallowest / Math.cos(flank));
  if (rootReach(blade) > room)
    found.push(
      fault(
        'rootRadius',
        `The root radius ${say(rootRadius)} has no room in a groove ${say(grooveWidth)} wide and ${say(shallowest)} deep`,
        `Give at most ${say(roundDown((room * rootRadius) / rootReach(blade)))}, or a wider or deeper groove.`,
      ),
    );
  return found;
}

/** Whether grooves have room above each other. */
function heightFaults({ blade, gap, say }: Asked): LimitWord[] {
  const { grooveWidth, heightStep } = blade;
  const found: LimitWord[] = [];
  const land = leastLand(gap);
  const ride = gapAllRound(gap) + wardInset(blade, gap) + 4 * gap.tolerance;
  if (heightStep < grooveWidth + land)
    found.push(
      fault(
        'heightStep',
        heightStep <= grooveWidth
          ? `Grooves ${say(grooveWidth)} wide in steps of ${say(heightStep)} run into each other`
          : `Only ${say(heightStep - grooveWidth)} would stay between two grooves of a face`,
        `Give at least ${say(grooveWidth + land)}, so that a land of ${say(land)} stays.`,
      ),
    );
  else if (heightStep <= ride)
    found.push(
      fault(
        'heightStep',
        `A blade could ride up by a step of ${say(heightStep)}: its play comes to ${say(Math.round(ride))}`,
        `Give more than ${say(roundUp(ride))}, or less running clearance or tolerance.`,
      ),
    );
  const { from, to } = siteBand(blade, gap);
  if (to - from < grooveWidth)
    found.push(
      fault(
        'cutZone',
        `Between ${say(from)} and ${say(to)} there is no room for a groove ${say(grooveWidth)} wide`,
        'Keep less height free for the cuts or at the back, or give a higher blade.',
      ),
    );
  return found;
}

/** Up to a hundredth of a millimetre. */
function roundUp(nm: number): number {
  return Math.ceil(nm / (10 * NM_PER_UM)) * 10 * NM_PER_UM;
}

function roundDown(nm: number): number {
  return Math.floor(nm / (10 * NM_PER_UM)) * 10 * NM_PER_UM;
}
