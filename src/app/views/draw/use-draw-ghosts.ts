import { useEffect, useMemo, useRef } from 'react';
import { type Family, openingsOf } from '../../../family/family.ts';
import type { KnownFits } from '../../../family/known-fits.ts';
import { type PlugFace, plugFace } from '../../../family/plug-face.ts';
import type { Fit } from '../../../fit/fit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { usePickedPair } from '../../panels/use-family.ts';
import { useSession, useStore } from '../../panels/use-store.ts';
import { rowOf } from '../../state/fits-lookup.ts';
import { type Ghost, ghostOf } from '../../tools/draw/ghosts.ts';

/** What lies under the edited outline. */
export interface UnderOutline {
  readonly ghosts: readonly Ghost[];
  /** The plug's end, with the keyway that it was drawn round; null for a blank. */
  readonly face: { readonly face: PlugFace; readonly round: Profile } | null;
}

/**
 * The counterpart in its best placement and the other chosen ghosts; round a keyway the plug's end. While a hand has hold
 * of the outline they stand still, though the best placement would be another one at every step; what an operation
 * would come to they follow.
 */
function useUnderOutline(family: Family, profile: Profile): UnderOutline {
  const session = useSession();
  const { entrant, opening } = usePickedPair();
  const counterpartOn = useStore(session.draw, (s) => s.counterpart);
  const chosen = useStore(session.draw, (s) => s.ghosts);
  const previewing = useStore(session.draw, (s) => s.edit?.kind === 'preview');
  // Of the outline, or from elsewhere, such as a dragged groove.
  const editing = useStore(session.documents, (s) => s.editedFrom !== null);
  const fits = useStore(session.results, (s) => s.fits);
  const other = profile.kind === 'opening' ? entrant : opening;
  const now = useMemo((): UnderOutline => {
    const wanted = [
      ...(counterpartOn && other ? [other] : []),
      ...family.profiles.filter(
        ({ id }) => chosen.includes(id) && id !== profile.id && (id !== other?.id || !counterpartOn),
      ),
    ];
    const placementOf = (ghost: Profile) => fitOf(fits, profile, ghost)?.placement ?? null;
    const ghosts = wanted.map((ghost) => ghostOf(profile, ghost, placementOf(ghost), ghost.id === other?.id));
    const face = profile.kind === 'opening' ? { face: plugFace(openingsOf(family)), round: profile } : null;
    return { ghosts, face };
  }, [family, profile, other, counterpartOn, chosen, fits]);
  const pair = `${profile.id} ${other?.id}`;
  const still = useRef({ pair, shown: now });
  // Until the fit of an outline that is only shown is known, its counterpart lies where it lay.
  const isOut = previewing && counterpartOn && other !== null && !fitOf(fits, profile, other);
  const holds = (previewing ? isOut : editing) && still.current.pair === pair;
  useEffect(() => {
    if (!holds) still.current = { pair, shown: now };
  });
  return holds ? still.current.shown : now;
}

/**
 * What lies under the sheet: under an edited outline what {@link useUnderOutline} says; under a section that is not
 * there yet only what was chosen to lie there, each in its own frame.
 */
export function useUnderSheet(family: Family, profile: Profile, isNew: boolean): UnderOutline {
  const { draw } = useSession();
  const chosen = useStore(draw, (s) => s.ghosts);
  const under = useUnderOutline(family, profile);
  const alone = useMemo((): UnderOutline => {
    const ghosts = family.profiles.filter(({ id }) => chosen.includes(id));
    return { ghosts: ghosts.map((ghost) => ghostOf(ghost, ghost, null, false)), face: null };
  }, [family, chosen]);
  return isNew ? alone : under;
}

function fitOf(fits: KnownFits | null, profile: Profile, other: Profile): Fit | undefined {
  const [blade, keyway] = profile.kind === 'opening' ? [other, profile] : [profile, other];
  return rowOf(fits, blade.id).get(keyway.id);
}
