import { useEffect, useMemo } from 'react';
import { entrantsOf, type Family } from '../../../../family/family.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { type ExaminingStrength, examiningOf } from '../../../state/plan/strength/examining-strength.ts';
import { type StrengthRow, strengthRows } from '../../../state/plan/strength/strength-rows.ts';
import {
  materialOf,
  type StrengthSettings,
  strengthSettings,
  strengthStateOf,
} from '../../../state/plan/strength/strength-state.ts';
import { useSession, useStore } from '../../use-store.ts';

/** The settings of the Strength sheet for a family. */
export function useStrengthSettings(family: Family): StrengthSettings {
  return strengthSettings(
    useStore(strengthStateOf(useSession()), (all) => all),
    family.name,
  );
}

/** Has blades examined as long as the component is there, one of them first. */
export function useExamined(blades: readonly Profile[], first: Profile | null): ExaminingStrength {
  const examining = examiningOf(useSession());
  useEffect(() => examining.follow(blades, first), [examining, blades, first]);
  // Apart, so that other blades of the same outlines do not end what is on its way.
  useEffect(() => () => examining.follow([], null), [examining]);
  return examining;
}

/** Has the blades of a family examined as long as the component is there, the picked one first. */
export function useExamining(family: Family): ExaminingStrength {
  const picked = useStore(useSession().selection, (s) => s.entrantId);
  const blades = useMemo(() => entrantsOf(family), [family]);
  return useExamined(blades, blades.find(({ id }) => id === picked) ?? null);
}

/** The blades of a family with what is known of each in the chosen material. */
export function useStrengthRows(family: Family): readonly StrengthRow[] {
  const session = useSession();
  const known = useStore(examiningOf(session).store, (s) => s.known);
  const failed = useStore(examiningOf(session).store, (s) => s.failed);
  const settings = useStrengthSettings(family);
  const { torqueNm } = settings;
  const material = materialOf(settings);
  return useMemo(
    () => strengthRows(family, { known, failed }, material, torqueNm),
    [family, known, failed, material, torqueNm],
  );
}

/** The row of the picked blade; the first one where none is picked. */
export function usePickedRow(rows: readonly StrengthRow[]): StrengthRow | null {
  const picked = useStore(useSession().selection, (s) => s.entrantId);
  return rows.find(({ profile }) => profile.id === picked) ?? rows[0] ?? null;
}
