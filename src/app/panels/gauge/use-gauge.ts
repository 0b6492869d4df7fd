import { useEffect, useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Verdict } from '../../../fit/fit.ts';
import { type ThicknessCurve, thicknessAt } from '../../../gauge/thickness-curve.ts';
import type { Profile } from '../../../profile/profile.ts';
import { type Gauging, gaugingOf } from '../../state/gauge/gauging.ts';
import { type ShownCurves, shownCurves } from '../../state/gauge/shown-gauge.ts';
import { usualHeight, verdictInHand } from '../../state/gauge/strip-in-hand.ts';
import { type TightRow, tightRows } from '../../state/gauge/tight-rows.ts';
import { useSession, useStore } from '../use-store.ts';

const NONE: readonly ThicknessCurve[] = [];

/** What the sheets of the Gauge view show of a family. */
export interface ShownGauge extends ShownCurves {
  /** The strip in hand, nanometres; no thickness where only the thickest is asked for. */
  readonly height: number;
  readonly thickness: number | null;
  /** The thickest of that height that enters all, nanometres; null until all curves are there. */
  readonly most: number | null;
  readonly picked: Profile | null;
  /** What a strip of that thickness does in each keyway whose curve is known, in chart order; empty where no thickness is in hand. */
  readonly verdicts: ReadonlyMap<string, Verdict>;
}

/** The height of the strip in hand, nanometres. */
export function useStripHeight(family: Family): number {
  const height = useStore(useSession().gauge, (s) => s.height);
  return useMemo(() => height ?? usualHeight(family), [family, height]);
}

/** Has the curves of a family found as long as the component is there. */
export function useAskedCurves(family: Family): Gauging {
  const session = useSession();
  const gauging = gaugingOf(session);
  const tiltLimit = useStore(session.gauge, (s) => s.tiltLimit);
  useEffect(() => gauging.ask(family, tiltLimit), [gauging, family, tiltLimit]);
  // Apart, so that another question does not end what was found.
  useEffect(() => () => gauging.ask(null, 0), [gauging]);
  return gauging;
}

/** The curves that are known, with the strip and the keyway in hand. */
export function useGauge(family: Family): ShownGauge {
  const session = useSession();
  const known = useStore(gaugingOf(session).store, (s) => (s.asked?.family === family ? s.curves : NONE));
  const thickness = useStore(session.gauge, (s) => s.thickness);
  const openingId = useStore(session.selection, (s) => s.openingId);
  const height = useStripHeight(family);
  const { runningClearance } = family;
  const shown = useMemo(() => shownCurves(family, known), [family, known]);
  return useMemo(() => {
    const most = shown.complete ? Math.min(...known.map((curve) => thicknessAt(curve, height))) : null;
    const picked = shown.openings.find(({ id }) => id === openingId) ?? shown.openings[0] ?? null;
    const verdicts = verdictsOf(shown, height, thickness, runningClearance);
    return { ...shown, height, thickness, most, picked, verdicts };
  }, [shown, known, height, thickness, openingId, runningClearance]);
}

function verdictsOf(
  { openings, curves }: ShownCurves,
  height: number,
  thickness: number | null,
  runningClearance: number,
): ReadonlyMap<string, Verdict> {
  if (thickness === null) return new Map();
  return new Map(
    openings.flatMap((opening): [string, Verdict][] => {
      const curve = curves.get(opening.id);
      return curve ? [[opening.id, verdictInHand(curve, opening, { thickness, height }, runningClearance)]] : [];
    }),
  );
}

/** The keyways from tight to wide by the chosen measure, as far as they are known. */
export function useTightRows({ openings, curves, height }: ShownGauge): readonly TightRow[] {
  const by = useStore(useSession().gauge, (s) => s.measure);
  return useMemo(() => tightRows(openings, [...curves.values()], by, height), [openings, curves, by, height]);
}
