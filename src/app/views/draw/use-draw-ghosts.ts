import { useEffect, useMemo, useRef } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import type { Profile } from '../../../profile/profile.ts';
import { usePickedPair } from '../../panels/use-family.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { rowOf } from '../../state/fits-lookup.ts';
import { type PlugFace, plugFace } from '../../state/plug-face.ts';
import { type Ghost, ghostOf } from '../../tools/draw/ghosts.ts';

/** What lies under the edited outline. */
export interface UnderOutline {
  readonly ghosts: readonly Ghost[];
  /** The plug's end, with the keyway that it was drawn round; null for a blank. */
  readonly face: { readonly face: PlugFace; readonly round: Profile } | null;
}

/**
 * The counterpart in its best placement and the other chosen ghosts; round a keyway the plug's end. While the outline is
 * edited they stand still, though the best placement would be another one at every step.
 */
export function useUnderOutline(family: Family, profile: Profile): UnderOutline {
  const session = useSession();
  const { entrant, opening } = usePickedPair();
  const counterpartOn = useStore(session.draw, (s) => s.counterpart);
  const chosen = useStore(session.draw, (s) => s.ghosts);
  const editing = useStore(session.draw, (s) => s.edit !== null);
  // An edit from elsewhere too, such as a dragged groove.
  const previewed = useStore(session.documents, (s) => s.editedFrom !== null);
  const fits = useStore(session.results, (s) => s.fits);
  const other = profile.kind === 'opening' ? entrant : opening;
  const now = useMemo((): UnderOutline => {
    const wanted = [
      ...(counterpartOn && other ? [other] : []),
      ...family.profiles.filter(
        ({ id }) => chosen.includes(id) && id !== profile.id && (id !== other?.id || !counterpartOn),
      ),
    ];
    const placementOf = (ghost: Profile) => {
      const [blade, keyway] = profile.kind === 'opening' ? [ghost, profile] : [profile, ghost];
      return rowOf(fits, blade.id).get(keyway.id)?.placement ?? null;
    };
    const ghosts = wanted.map((ghost) => ghostOf(profile, ghost, placementOf(ghost), ghost.id === other?.id));
    const face = profile.kind === 'opening' ? { face: plugFace(openingsOf(family)), round: profile } : null;
    return { ghosts, face };
  }, [family, profile, other, counterpartOn, chosen, fits]);
  const still = useRef({ id: profile.id, shown: now });
  const holds = (editing || previewed) && still.current.id === profile.id;
  useEffect(() => {
    if (!holds) still.current = { id: profile.id, shown: now };
  });
  return holds ? still.current.shown : now;
}
