import type { Family } from '../../../family/family.ts';
import type { Verdict } from '../../../fit/fit.ts';
import { thicknessAt } from '../../../gauge/thickness-curve.ts';
import type { Profile } from '../../../profile/profile.ts';
import type { ShownCurves } from './shown-gauge.ts';
import { sizeOf, straightSize, toolsOf } from './strip-in-hand.ts';

/** A tool in the chart: where it lies, and what the family says to it. */
export interface ToolDot {
  readonly tool: Profile;
  readonly height: number;
  readonly thickness: number;
  readonly straight: boolean;
  /** Whether it enters all; null until that is known. */
  readonly verdict: Verdict | null;
  /** Spare thickness in the tightest keyway, nanometres; null for a shaped one. */
  readonly spare: number | null;
  readonly enters: number;
  readonly of: number;
}

/** The tools of a family as dots. */
export function toolDots(family: Family, { curves, complete }: ShownCurves): ToolDot[] {
  return toolsOf(family).map((tool) => {
    const size = straightSize(tool.ring);
    const { height, thickness } = size ?? sizeOf(tool);
    const spares = [...curves.values()].map((curve) => thicknessAt(curve, height) - thickness);
    const enters = spares.filter((spare) => spare >= 0).length;
    const spare = complete && size ? Math.min(...spares) : null;
    const verdict = spare === null ? null : goesIn(spare);
    return { tool, height, thickness, straight: size !== null, verdict, spare, enters, of: curves.size };
  });
}

function goesIn(spare: number): Verdict {
  return spare >= 0 ? 'enters' : 'blocked';
}
