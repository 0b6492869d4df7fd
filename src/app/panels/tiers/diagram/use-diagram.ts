import { useEffect, useMemo } from 'react';
import type { Family } from '../../../../family/family.ts';
import { nodeOf, onlyNodes, reachOf } from '../../../../family/tier-reach.ts';
import { diagramNodes, tierGap } from '../../../state/tiers/diagram-nodes.ts';
import type { PixelSize } from '../../../state/tiers/diagram-view.ts';
import type { LaidOut } from '../../../state/tiers/laying-out.ts';
import { useSession, useStore } from '../../use-store.ts';
import { useProfiles, useShownTiers } from '../use-tiers.ts';

/** With more nodes than this a diagram begins with what stands above and below the picked blank. */
const MOST_AT_ONCE = 40;

/** Frames that differ by less are set alike, so that a drag of the splitter does not lay out at every pixel. */
const ROOM_STEP = 12;

/** What the diagram shows, and of how much. */
export interface DiagramShown {
  /** What was laid out last; null before the first. */
  readonly drawn: LaidOut | null;
  /** Nodes of the whole family; 0 while not all is judged. */
  readonly whole: number;
  readonly neighboursOnly: boolean;
}

/** Has the diagram of the open family laid out for a frame of so many pixels, and gives what there is of it. */
export function useDiagram(family: Family, size: PixelSize | null): DiagramShown {
  const { selection, tiers: store, layingOut } = useSession();
  const known = useShownTiers(family);
  const profiles = useProfiles(family);
  const entrantId = useStore(selection, (s) => s.entrantId);
  const asked = useStore(store, (s) => s.neighboursOnly);
  const whole = known?.tiers.nodes.length ?? 0;
  const neighboursOnly = asked ?? whole > MOST_AT_ONCE;
  const picked = known ? nodeOf(known.tiers, entrantId) : -1;
  const centre = neighboursOnly ? picked : -1;
  const tiers = useMemo(() => {
    if (!known || centre < 0) return known?.tiers ?? null;
    const { above, below } = reachOf(known.tiers, centre);
    return onlyNodes(known.tiers, new Set([centre, ...above, ...below]));
  }, [known, centre]);
  const width = Math.floor((size?.width ?? 0) / ROOM_STEP) * ROOM_STEP;
  const height = Math.floor((size?.height ?? 0) / ROOM_STEP) * ROOM_STEP;
  const openings = known?.table.openings.length ?? 0;
  useEffect(() => {
    const frame = { width, height };
    const nodes = tiers && width > 0 ? diagramNodes({ ...tiers, openings }, profiles, frame) : null;
    if (tiers && nodes) layingOut.follow({ tiers, nodes, gap: tierGap(nodes, frame) });
  }, [layingOut, tiers, openings, profiles, width, height]);
  return { drawn: useStore(layingOut.store, (s) => s.drawn), whole, neighboursOnly };
}
