import type { Plan } from '../family/plan.ts';
import type { Milled, ProfileKind } from '../profile/profile.ts';
import type { LimitWord } from './limit-word.ts';
import type { PlanGap } from './plan-gap.ts';
import type { Access } from './planned-access.ts';
import type { SightLine } from './sight-line.ts';
import type { WardPlan } from './ward-plan.ts';
import type { WardSite } from './ward-sites.ts';

/** What a plan is drawn from. */
export interface DrawPlanInput {
  readonly plan: Plan;
  readonly access: Access;
  /** Rows and columns of the access first; those kept in reserve behind them are drawn to be confirmed, and not given. */
  readonly wardPlan: WardPlan;
  readonly gap: PlanGap;
  /** Names for the sections in their order, where they are not to be those of the access. */
  readonly names?: readonly (string | undefined)[];
}

/** A section made from a plan. */
export interface PlannedProfile {
  /** The same for the same section or set of sections. */
  readonly id: string;
  readonly kind: ProfileKind;
  readonly name: string;
  readonly section?: string;
  readonly milled: Milled;
}

/** A pair by the ids of its two parts, and the length that it sets, nanometres. */
export interface PlanPair {
  readonly blank: string;
  readonly opening: string;
  readonly length: number;
  /** How many other pairs set the same length, where they were counted; absent where none does. */
  readonly alike?: number;
}

/** A pair that did not come out as it must: by how much, in words. */
export interface PairFault {
  readonly blank: string;
  readonly opening: string;
  readonly kind: 'stays-out' | 'too-tight' | 'goes-in';
  readonly words: string;
}

/** Forbidden pairs at the least guard margin, looked at tilted. */
export interface TiltedPairs {
  /** Greatest tilt either way, radians. */
  readonly limit: number;
  /** How many pairs were looked at, of how many at the margin. */
  readonly looked: number;
  readonly ofPairs: number;
  /** One that goes in tilted as the leanest blank in the widest keyway; null where none does. `length` is the guard margin. */
  readonly loosest: PlanPair | null;
}

/** The web of a blank. */
export interface PlanWeb {
  readonly id: string;
  /** The thinnest, in any direction; nanometres. */
  readonly thickness: number;
}

/** What was found when a drawn plan was judged. Lengths in nanometres. */
export interface PlanReport {
  /** The real site of each site of the ward plan, and the best that placing them could find, in words. */
  readonly sites: readonly WardSite[];
  readonly placed: string;
  /** The gap all round that keyways were drawn with. */
  readonly gap: number;
  /** Greatest deviation of the parts, to either side, within which every pair was judged. */
  readonly tolerance: number;
  readonly pairs: { readonly wanted: number; readonly forbidden: number; readonly free: number };
  /** The smallest clearance over pairs that must enter; null where there is none. */
  readonly clearance: PlanPair | null;
  /** The least wear of both parts at which a forbidden pair goes in; null where none does, or there is none. */
  readonly guard: PlanPair | null;
  /** Forbidden pairs at that margin, tilted; null where the family looks at no tilt, or nothing is forbidden. */
  readonly tilted: TiltedPairs | null;
  /** Sections kept in reserve that were drawn with a blank of their own and confirmed with all others; they are not given. */
  readonly reserve: number;
  /** The blanks, in order. */
  readonly webs: readonly PlanWeb[];
  /** The openings, in order. */
  readonly sights: readonly SightLine[];
}

/** A plan drawn and confirmed, or why there is none. */
export type DrawnPlan =
  | { readonly ok: true; readonly profiles: readonly PlannedProfile[]; readonly report: PlanReport }
  | {
      readonly ok: false;
      /** What binds, the most helpful first. */
      readonly why: readonly LimitWord[];
      /** Pairs that were not confirmed, the first ones; empty where none was judged. */
      readonly pairs: readonly PairFault[];
      /** What would do, in words. */
      readonly nearest?: string;
    };
