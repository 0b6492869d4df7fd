import { entrantsOf, type Family, openingsOf } from '../../family/family.ts';
import type { Conditions } from '../../fit/conditions.ts';
import type { Fit } from '../../fit/fit.ts';
import type { Ring } from '../../geom/ring.ts';
import { makeDrawn } from '../../geom/vertex.ts';
import type { Profile, ProfileKind } from '../../profile/profile.ts';
import { conditionsFor } from './conditions-state.ts';
import type { DrawState } from './draw/draw-state.ts';
import type { Session } from './session.ts';

/** What the outline that the pen has begun would go into if it were closed now, or what would go into it. */
export interface PenFits {
  readonly kind: ProfileKind;
  /** How many were tried, of how many, and how many of them go together. */
  readonly tried: number;
  readonly of: number;
  readonly goesIn: number;
  /** The picked one among them. */
  readonly picked: { readonly name: string; readonly fit: Fit } | null;
}

/** A pair with more edges against edges than this would keep the page waiting. */
const MOST_EDGE_PAIRS = 30_000;

/**
 * Tries what the pen has begun in the family, closed as it stands: the picked counterpart at once, then one a frame.
 *
 * @param show is told what is known so far; null where the outline would not be sound.
 * @returns how to stop.
 * @check tests/unit/app/pen-fits.test.ts
 */
export function judgePen(session: Session, show: (fits: PenFits | null) => void): () => void {
  const trial = trialOf(session);
  show(trial && { kind: trial.kind, tried: 0, of: trial.others.length, goesIn: 0, picked: null });
  if (!trial) return () => {};
  let fits: PenFits = { kind: trial.kind, tried: 0, of: trial.others.length, goesIn: 0, picked: null };
  let drop = () => {};
  const next = () => {
    const other = trial.others[fits.tried];
    if (!other) return;
    const fit = fitOf(session, trial, other);
    const goesIn = fits.goesIn + (fit && fit.verdict !== 'blocked' ? 1 : 0);
    const picked = fit && other.id === trial.pickedId ? { name: other.name, fit } : fits.picked;
    fits = { ...fits, tried: fits.tried + 1, goesIn, picked };
    show(fits);
    drop = session.doors.pace.frame(next);
  };
  next();
  return () => drop();
}

interface Trial {
  readonly kind: ProfileKind;
  readonly ring: Ring;
  /** The picked one first. */
  readonly others: readonly Profile[];
  readonly pickedId: string | null;
  readonly conditions: Conditions;
}

function trialOf({ draw, documents, selection, conditions }: Session): Trial | null {
  const family = documents.getState().document?.family;
  const { pen } = draw.getState();
  const kind = family && kindOf(family, draw.getState());
  if (!family || !pen || !kind) return null;
  const made = makeDrawn(pen);
  if (!made.ok) return null;
  const { entrantId, openingId } = selection.getState();
  const pickedId = kind === 'opening' ? entrantId : openingId;
  const others = kind === 'opening' ? entrantsOf(family) : openingsOf(family);
  const sorted = [...others].sort((a, b) => Number(b.id === pickedId) - Number(a.id === pickedId));
  // The search over tilts takes longer than a frame.
  const upright = { ...conditionsFor(conditions.getState(), family), tiltLimit: 0 };
  return { kind, ring: made.ring, others: sorted, pickedId, conditions: upright };
}

function kindOf({ profiles }: Family, { penFor }: DrawState): ProfileKind | null {
  if (!penFor) return null;
  if ('head' in penFor) return penFor.head.kind;
  return profiles.find(({ id }) => id === penFor.id)?.kind ?? null;
}

function fitOf({ doors }: Session, { kind, ring, conditions }: Trial, other: Profile): Fit | null {
  if (ring.length * other.ring.length > MOST_EDGE_PAIRS) return null;
  const [opening, entrant] = kind === 'opening' ? [ring, other.ring] : [other.ring, ring];
  return doors.judgeNow(opening, entrant, conditions);
}
