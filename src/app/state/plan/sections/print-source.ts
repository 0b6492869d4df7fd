import type { KnownFits } from '../../../../family/known-fits.ts';
import type { FamilyDocument } from '../../../../interchange/json/read.ts';
import type { WardPlan } from '../../../../plan/ward-plan.ts';
import type { GuardState } from '../../guarding.ts';
import type { ConfirmedPlan } from './drawn-sections.ts';

/** What is printed: sections as they are drawn now, or those that the family holds. */
export type PrintSource =
  | { readonly from: 'drawn'; readonly confirmed: ConfirmedPlan; readonly found: WardPlan }
  | {
      readonly from: 'family';
      readonly document: FamilyDocument;
      readonly fits: KnownFits | null;
      readonly guard: GuardState;
    };
