import { useEffect, useMemo } from 'react';
import { entrantsOf, type Family, openingsOf } from '../../../family/family.ts';
import type { Explanation } from '../../../fit/explain-placement.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { DisplaySet } from '../../../print3d/display-set.ts';
import { type DisplaySetup, setupFaults } from '../../../print3d/display-setup.ts';
import { AS_DRAWN, conditionsFor } from '../../state/conditions-state.ts';
import { pairSentence } from '../../state/pair-sentence.ts';
import { type BlockBuilding, blockBuildingOf } from '../../state/publish/block-building.ts';
import { type BlockPair, blockPair } from '../../state/publish/block-pair.ts';
import { blockSetup } from '../../state/publish/block-settings.ts';
import { type BlockLook, blockLookOf } from '../../state/publish/block-state.ts';
import type { Store } from '../../state/store.ts';
import { useSession, useStore } from '../use-store.ts';

/** What is chosen and looked at on the Display block sheet, and the store of it. */
export function useBlockLook(): readonly [BlockLook, Store<BlockLook>] {
  const store = blockLookOf(useSession());
  return [useStore(store, (s) => s), store];
}

/** The setup as it stands. */
export function useBlockSetup(family: Family): DisplaySetup {
  const { blockSettings } = useSession();
  const settings = useStore(blockSettings, (s) => s);
  const [{ openings, blanks, columns }] = useBlockLook();
  return useMemo(
    () => blockSetup(family, settings, { openings, blanks, columns }),
    [family, settings, openings, blanks, columns],
  );
}

/** A display set as far as it is built. */
export interface ShownBlock {
  readonly building: BlockBuilding;
  /** The set that is asked for; null until it is there, or where the setup has a fault. */
  readonly set: DisplaySet | null;
  /** The one built last, which stays in sight while another is made. */
  readonly seen: DisplaySet | null;
}

/** So long after the last change another set is begun, milliseconds. */
const TYPING_MS = 350;

/** Has the set of a family built as long as the component is there. */
export function useAskedBlock(family: Family): ShownBlock {
  const building = blockBuildingOf(useSession());
  const setup = useBlockSetup(family);
  const order = useMemo(() => (setupFaults(family, setup).length === 0 ? { family, setup } : null), [family, setup]);
  useEffect(() => {
    // While somebody types, a set is not begun with every digit.
    const wait = building.store.getState().asked === null ? 0 : TYPING_MS;
    const timer = setTimeout(() => building.ask(order), wait);
    return () => clearTimeout(timer);
  }, [building, order]);
  useEffect(() => () => building.ask(null), [building]);
  const { seen } = useBlock();
  return { building, set: building.answerTo(order)?.output ?? null, seen };
}

/** The same for a component beside the one that asks. */
export function useBlock(): Pick<ShownBlock, 'seen'> {
  const found = useStore(blockBuildingOf(useSession()).store, (s) => s.found);
  return { seen: found?.output ?? null };
}

/** Whether a family has anything that a set could be made of. */
export function hasSolids(family: Family): boolean {
  return openingsOf(family).length + entrantsOf(family).length > 0;
}

/** The picked pair in the set, judged as drawn: new and upright. */
export interface JudgedPair extends BlockPair {
  readonly fit: Fit;
  readonly explanation: Explanation;
  readonly sentence: string;
}

/** See {@link JudgedPair}; null where the family lacks one of the two. */
export function useBlockPair(family: Family, set: DisplaySet | null): JudgedPair | null {
  const { doors, selection, settings } = useSession();
  const units = useStore(settings, (s) => s.units);
  const entrantId = useStore(selection, (s) => s.entrantId);
  const openingId = useStore(selection, (s) => s.openingId);
  return useMemo(() => {
    const pair = set && blockPair(family, set, { entrantId, openingId });
    if (!pair) return null;
    const conditions = conditionsFor(AS_DRAWN, family);
    const { entrant, opening } = pair;
    const fit = doors.judgeNow(opening.ring, entrant.ring, conditions);
    const explanation = doors.explainPlacement(opening.ring, entrant.ring, fit.placement);
    const sentence = pairSentence(doors, { entrant, opening, fit, conditions }, units);
    return { ...pair, fit, explanation, sentence };
  }, [doors, family, set, entrantId, openingId, units]);
}
