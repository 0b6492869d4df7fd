import { useEffect, useMemo } from 'react';
import type { Family } from '../../../family/family.ts';
import { diagramNodes } from '../../state/tiers/diagram-nodes.ts';
import type { LaidOut } from '../../state/tiers/laying-out.ts';
import { nodeOf, onlyNodes, reachOf } from '../../state/tiers/tier-reach.ts';
import { useSession, useStore } from '../use-store.ts';
import { useProfiles, useTiers } from './use-tiers.ts';

/** With more nodes than this a diagram begins with what stands above and below the picked blank. */
const MOST_AT_ONCE = 40;

/** Frames that differ by less are set alike, so that a drag of the splitter does not lay out at every pixel. */
const ROOM_STEP = 60;

/** What the diagram shows, and of how much. */
export interface DiagramShown {
  /** What was laid out last; null before the first. */
  readonly drawn: LaidOut | null;
  /** Nodes of the whole family; 0 while not all is judged. */
  readonly whole: number;
  readonly neighboursOnly: boolean;
}

/** Has the diagram of the open family laid out for a frame of so many pixels, and gives what there is of it. */
export function useDiagram(family: Family, width: number): DiagramShown {
  const { selection, tiers: store, layingOut } = useSession();
  const known = useTiers();
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
  const room = Math.floor(width / ROOM_STEP) * ROOM_STEP;
  const openings = known?.table.openings.length ?? 0;
  useEffect(() => {
    const nodes = tiers && room > 0 ? diagramNodes({ nodes: tiers.nodes, openings }, profiles, room) : null;
    if (tiers && nodes) layingOut.follow({ tiers, nodes });
  }, [layingOut, tiers, openings, profiles, room]);
  return { drawn: useStore(layingOut.store, (s) => s.drawn), whole, neighboursOnly };
}
