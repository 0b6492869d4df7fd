import type { Fit } from '../../../fit/fit.ts';
import type { ThreeWay } from '../../../fit/judge-tolerance.ts';
import type { Ring } from '../../../geom/ring.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { Among, Identification } from '../../../identify/identify.ts';
import { USUAL_ERROR } from '../../../identify/judge-likeness.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { makeStore, type Store } from '../store.ts';

/** Where an unknown outline comes from. */
export type UnknownSource = 'family' | 'file' | 'traced';

/** An outline of which is asked what it is. It is no part of the family unless somebody adds it. */
export interface UnknownOutline {
  readonly name: string;
  readonly kind: ProfileKind;
  /** Sound, counter-clockwise, nanometres. */
  readonly vertices: readonly Vertex[];
  readonly ring: Ring;
  readonly source: UnknownSource;
  /** The profile of the family that it is, which is left out of the comparison. */
  readonly profileId: string | null;
}

/** How the comparison stands. */
export type IdentifyRun =
  | { readonly phase: 'none' | 'stopped' }
  | { readonly phase: 'running'; readonly done: number; readonly total: number }
  | { readonly phase: 'done'; readonly answer: Identification; readonly profiles: readonly Profile[] }
  | { readonly phase: 'failed'; readonly trouble: string };

/** What the unknown would enter, as it lies on a section. */
export interface KeywayAnswer {
  readonly openingId: string;
  readonly fit: Fit;
  /** The answer for every outline within the drawing error and the tolerance of the keyway. */
  readonly threeWay: ThreeWay;
}

/** The unknown tried in the keyways. */
export type KeywayRun =
  | { readonly phase: 'none' }
  | { readonly phase: 'running' }
  | { readonly phase: 'done'; readonly answers: readonly KeywayAnswer[] }
  | { readonly phase: 'failed'; readonly trouble: string };

/** What the Identify sheet knows. */
export interface IdentifyState {
  readonly unknown: UnknownOutline | null;
  readonly among: Among;
  /** By how much the unknown may be wrong either way at each place, nanometres. */
  readonly error: number;
  /** Whether it is tried mirrored, and turned. */
  readonly mirrored: boolean;
  readonly turned: boolean;
  readonly run: IdentifyRun;
  /** The number of the candidate that is looked at. */
  readonly picked: number;
  readonly keyways: KeywayRun;
  /** What the last key did, in words. */
  readonly told: string;
}

/** A sheet without an unknown outline. */
export const NO_UNKNOWN: IdentifyState = {
  unknown: null,
  among: 'entrants',
  error: USUAL_ERROR.outside,
  mirrored: true,
  turned: true,
  run: { phase: 'none' },
  picked: 0,
  keyways: { phase: 'none' },
  told: '',
};

/** A store in which nothing is asked. */
export function makeIdentifyStore(): Store<IdentifyState> {
  return makeStore(NO_UNKNOWN);
}
